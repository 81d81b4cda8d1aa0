// Calls of ours that stand outside cells: conditions, validations, names, columns of tables, charts, sparklines, pivot tables;
// and how each is replaced or taken out with what it stands in.
import { without } from './cut';
import { Draft } from './draft';
import { type FormulaPlace, formulaPlaces } from './formula-places';
import type { UserPackage } from './read';
import { attribute, childOf, descendants, escapedText, type Splice, withAttributes, type XmlElement } from './xml';

export type ElsewhereKind =
  | 'condition'
  | 'validation'
  | 'name'
  /** A name that a program has put in for a function that it does not know. */
  | 'placeholder'
  | 'column'
  | 'totals'
  | 'sparkline'
  | 'chart'
  | 'pivot'
  | 'other';

/** `A1:A9 on Bosses`, `od of Parts on S`. */
export interface FormulaSpot {
  readonly what: string;
  readonly table?: string;
  readonly sheet?: string | undefined;
}

export interface Elsewhere {
  readonly kind: ElsewhereKind;
  readonly part: string;
  readonly spot: FormulaSpot;
  readonly formula: string;
  /** It can be taken out with the rule, the name or the like that it stands in. */
  readonly canGo: boolean;
  readonly place: FormulaPlace;
}

/** `out`: with what it stands in. */
export type ElsewhereChange = { readonly formula: string } | 'out';

/** The element that goes with a formula. */
const GOES: Readonly<Partial<Record<ElsewhereKind, string>>> = {
  condition: 'cfRule',
  validation: 'dataValidation',
  name: 'definedName',
  placeholder: 'definedName',
  column: 'calculatedColumnFormula',
  totals: 'totalsRowFormula',
  sparkline: 'sparkline',
};
/** What goes as well when nothing is left in it. */
const HOLDERS: ReadonlySet<string> = new Set(
  'conditionalFormatting conditionalFormattings dataValidations definedNames sparklines sparklineGroup sparklineGroups ext extLst'.split(
    ' ',
  ),
);

const BY_ROOT: Readonly<Record<string, ElsewhereKind>> = {
  chartSpace: 'chart',
  pivotCacheDefinition: 'pivot',
  pivotTableDefinition: 'pivot',
};
const BY_ELEMENT: Readonly<Record<string, ElsewhereKind>> = {
  cfRule: 'condition',
  dataValidation: 'validation',
  definedName: 'name',
  calculatedColumnFormula: 'column',
  totalsRowFormula: 'totals',
  sparklineGroup: 'sparkline',
};

const isPlaceholder = ({ element }: FormulaPlace): boolean => /^_xldudf_/i.test(attribute(element, 'name') ?? '');

function kindOf(place: FormulaPlace): ElsewhereKind {
  const { element, around } = place;
  const within = [...around, element].reverse().find(({ local }) => local in BY_ELEMENT);
  const kind = (within && BY_ELEMENT[within.local]) ?? BY_ROOT[around[0]?.local ?? ''] ?? 'other';
  return kind === 'name' && isPlaceholder(place) ? 'placeholder' : kind;
}

const goer = (kind: ElsewhereKind, { element, around }: FormulaPlace): XmlElement | undefined =>
  [...around, element].find(({ local }) => local === GOES[kind]);

/** Whether both stand in one rule or name, so that neither stays without the other. */
export const goesWith = (one: Elsewhere, other: Elsewhere): boolean => {
  const from = goer(one.kind, one.place)?.from;
  return from !== undefined && one.part === other.part && from === goer(other.kind, other.place)?.from;
};

/** The cells to which a rule belongs, in either of the two forms. */
function cellsOf({ around }: FormulaPlace): string {
  for (const element of [...around].reverse()) {
    const said = attribute(element, 'sqref') ?? childOf(element, 'sqref')?.text;
    if (said !== undefined) return said.trim();
  }
  return '';
}

function spotOf(kind: ElsewhereKind, place: FormulaPlace, sheet: string | undefined): FormulaSpot {
  const { element, around, part } = place;
  const named = (of: XmlElement | undefined): string => (of && (attribute(of, 'displayName') ?? attribute(of, 'name'))) ?? '';
  if (kind === 'condition' || kind === 'validation' || kind === 'sparkline') return { what: cellsOf(place), sheet };
  if (kind === 'name' || kind === 'placeholder') return { what: named(element), sheet };
  if (kind === 'column' || kind === 'totals') return { what: named(around[around.length - 1]), table: named(around[0]), sheet };
  if (kind === 'pivot') return { what: named(element), sheet };
  return { what: part, sheet };
}

export const spotInWords = ({ what, table, sheet }: FormulaSpot): string =>
  `${what}${table === undefined ? '' : ` of ${table}`}${sheet === undefined ? '' : ` on ${sheet}`}`;

/** `condition A1:A9 on Bosses`. */
export const placeInWords = (place: FormulaPlace, sheet: string | undefined): string =>
  `${kindOf(place).replace('other', 'part')} ${spotInWords(spotOf(kindOf(place), place, sheet))}`;

/** The sheet that leads to each part. */
export function sheetsOfParts(draft: Draft, sheets: readonly { readonly name: string; readonly part: string }[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { name, part: sheet } of sheets) {
    const open = [sheet];
    for (let part = open.pop(); part !== undefined; part = open.pop()) {
      if (found.has(part)) continue;
      found.set(part, name);
      open.push(...draft.links(part).flatMap(({ target, isOutside }) => (isOutside || !draft.has(target) ? [] : [target])));
    }
  }
  return found;
}

export function elsewhereOf(from: UserPackage, isOurs: (formula: string) => boolean): Elsewhere[] {
  const draft = new Draft(from.parts);
  const on = sheetsOfParts(draft, from.sheets);
  const sheetOf = ({ part, element }: FormulaPlace): string | undefined =>
    on.get(part) ?? from.sheetNames[Number(attribute(element, 'localSheetId') ?? NaN)];
  return [...formulaPlaces(draft)].flatMap(place => {
    const kind = kindOf(place);
    if (!isOurs(kind === 'placeholder' ? `${attribute(place.element, 'name') ?? ''}()` : place.text)) return [];
    const { part, text: formula } = place;
    return [{ kind, part, spot: spotOf(kind, place, sheetOf(place)), formula, canGo: goer(kind, place) !== undefined, place }];
  });
}

/** Rules that go by the same mark as one that goes: the two forms of one rule. */
function twins(root: XmlElement, going: Iterable<XmlElement>): XmlElement[] {
  const rules = descendants(root).filter(({ local }) => local === 'cfRule');
  const mark = (rule: XmlElement): string | undefined =>
    attribute(rule, 'id') ?? descendants(rule).find(({ local, uri }) => local === 'id' && /\/2009\/9\/main$/.test(uri))?.text;
  const marks = new Set([...going].flatMap(rule => (rule.local === 'cfRule' ? [mark(rule)] : [])).filter(id => id !== undefined));
  return rules.filter(rule => marks.has(mark(rule) ?? ''));
}

function replaced(text: string, { element, attribute: name }: FormulaPlace, formula: string): Splice {
  if (name === undefined) return { from: element.to, to: element.inner, text: escapedText(formula) };
  return { from: element.from, to: element.to, text: withAttributes(text.slice(element.from, element.to), { [name]: formula }) };
}

/** On parts in which nothing else has changed. */
export function changeElsewhere(draft: Draft, changes: ReadonlyMap<Elsewhere, ElsewhereChange>): void {
  for (const part of new Set([...changes.keys()].map(elsewhere => elsewhere.part))) {
    draft.change(part, text => {
      const root = draft.tree(part);
      const elements = new Map([root, ...descendants(root)].map(element => [element.from, element]));
      const going = new Set<XmlElement>();
      const splices: Splice[] = [];
      for (const [{ kind, place, spot, part: of }, change] of changes) {
        if (of !== part) continue;
        const goes = change === 'out' ? goer(kind, place) : undefined;
        const now = goes && elements.get(goes.from);
        if (change !== 'out') splices.push(replaced(text, place, change.formula));
        else if (now === undefined) throw new RangeError(`${spotInWords(spot)}: this formula cannot be taken out`);
        else going.add(now);
      }
      for (const twin of twins(root, going)) going.add(twin);
      const columns = descendants(root).filter(
        ({ children, ...column }) => attribute(column, 'totalsRowFunction') === 'custom' && children.some(child => going.has(child)),
      );
      return [
        ...splices.filter(({ from }) => ![...going].some(gone => from >= gone.from && from < gone.end)),
        ...columns.map(({ from, to }) => ({ from, to, text: withAttributes(text.slice(from, to), { totalsRowFunction: undefined }) })),
        ...without(text, root, going, HOLDERS),
      ];
    });
  }
}
