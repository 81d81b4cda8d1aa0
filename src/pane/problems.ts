// What is wrong or worth a second glance in the formulas of a workbook that call our functions.
import { ERROR_CODE } from '../sheet/known';
import type { Param } from '../core/card';
import { LENGTH } from '../core/read/quantity';
import { readAnyQuantity } from '../core/read/read-quantity';
import { address, isOneCell, type Area } from '../sheet/addresses';
import { areaOf, ownFunction, parseFormula, walk, type FormulaNode } from '../sheet/formula';
import { isFault, type WorkbookValues } from '../sheet/workbook-values';
import { call, CARDS } from '../registry';
import type { Selection, SheetCell } from '../sheet/port';
import type { Words } from '../words/english';
import { inWords } from './argument-words';
import { chainIn } from './chains';
import { NAMESPACE } from './function-list';
import { sourceOf, type Grid } from './workbook';

/** As they are told, what does not work first. */
export const PROBLEM_KINDS = ['broken', 'refused', 'state', 'chain', 'blank', 'units', 'constant'] as const;
export type ProblemKind = (typeof PROBLEM_KINDS)[number];

type ProblemWords = Words['check'];

export interface Problem {
  readonly kind: ProblemKind;
  readonly place: Selection;
  readonly words: string;
  /** What a function says is English in every language. */
  readonly isEnglish?: true;
  /** The formula as it is to be entered again. */
  readonly repair?: string;
}

/** How a workbook file names a function while the add-in is not there. */
const FILE_NAME = new RegExp(`_xldudf_${NAMESPACE}_([A-Z0-9_]+)`, 'gi');
const STATES = ['fail', 'review', 'not checked'];

const idInFile = new Map([...CARDS.keys()].map(id => [id.replaceAll('.', '_'), id]));

/** The formula with the names of our functions as they are typed. */
export const retyped = (formula: string): string =>
  formula.replace(FILE_NAME, (whole, name: string) => {
    const id = idInFile.get(name.toUpperCase());
    return id === undefined ? whole : `${NAMESPACE}.${id}`;
  });

interface FormulaCell extends Selection {
  readonly cell: SheetCell;
  readonly formula: string;
  readonly tree: FormulaNode | undefined;
}

const problem = (kind: ProblemKind, { sheetName, at }: Selection, words: string): Problem => ({ kind, place: { sheetName, at }, words });

const ownCalls = (tree: FormulaNode | undefined): { readonly id: string; readonly node: FormulaNode }[] =>
  [...walk(tree ?? null)].flatMap(node => {
    const id = ownFunction(node);
    return id === undefined ? [] : [{ id, node }];
  });

// ---- cells that a newer entry mends --------------------------------------------------------------------------------

function broken({ cell: { value }, formula, tree, ...place }: FormulaCell, { ofCell: W }: ProblemWords): Problem | undefined {
  const typed = retyped(formula);
  if (typed !== formula) return { ...problem('broken', place, W.inFile), repair: typed };
  if (value !== '#NAME?' && value !== '#BUSY!') return undefined;
  const unknown = ownCalls(tree).find(({ id }) => !CARDS.has(id));
  if (unknown !== undefined) return problem('broken', place, W.noFunction(`${NAMESPACE}.${unknown.id}`));
  if (ownCalls(tree).length === 0) return value === '#NAME?' ? problem('broken', place, W.unknownName) : undefined;
  return {
    ...problem('broken', place, value === '#BUSY!' ? W.noAnswer : W.notThere),
    repair: formula,
  };
}

// ---- answers -------------------------------------------------------------------------------------------------------

/** The message of the innermost call that is refused. */
function reason(source: WorkbookValues, sheetName: string, tree: FormulaNode | undefined): string | undefined {
  for (const { id, node } of ownCalls(tree).reverse()) {
    const args = (node.arguments ?? []).map(arg => source.evaluate(arg, sheetName));
    if (args.includes(undefined)) continue;
    const answer = call(id, args);
    if (!answer.ok && !args.some(isFault)) return `${id}: ${answer.message}`;
  }
  return undefined;
}

function refused(place: FormulaCell, source: WorkbookValues, { errors, ofCell }: ProblemWords): Problem | undefined {
  const {
    cell: { value, message },
    tree,
    sheetName,
  } = place;
  const explained: Readonly<Record<string, string>> = errors;
  if (typeof value !== 'string' || !ERROR_CODE.test(value) || ownCalls(tree).length === 0) return undefined;
  const own = message ?? (explained[value] === undefined ? reason(source, sheetName, tree) : undefined);
  if (own !== undefined) return { ...problem('refused', place, own), isEnglish: true };
  return problem('refused', place, explained[value] ?? ofCell.readsFault(value));
}

function state(place: FormulaCell): Problem | undefined {
  const {
    cell: { value },
    tree,
  } = place;
  const isCheck = ownCalls(tree).some(({ id }) => /^CHECK\.(MAX|MIN|WORST)$/.test(id));
  return isCheck && STATES.includes(String(value)) ? { ...problem('state', place, String(value)), isEnglish: true } : undefined;
}

// ---- what goes in --------------------------------------------------------------------------------------------------

/** A count or a number of a row: nothing that is measured. JOINT.CARD reads its variant as any number. */
const isWhole = ({ kind, name }: Param): boolean => kind.is === 'whole' || name === 'variant';

/** Numbers and quantities typed into the formula for an argument; those in a function of the sheet are about that function. */
function constantsIn(node: FormulaNode | null): string[] {
  if (node === null || node.type === 'CallExpression') return [];
  if (node.type === 'Literal') {
    if (typeof node.value === 'number') return node.value === 0 ? [] : [String(node.value)];
    const quantity = typeof node.value === 'string' ? readAnyQuantity(node.value) : undefined;
    return quantity === undefined || quantity.noun === '' || quantity.value === 0 ? [] : [`"${String(node.value)}"`];
  }
  return [...(node.arguments ?? []), ...(node.elements ?? []).flat()].flatMap(constantsIn);
}

function constants(place: FormulaCell, { ofCell }: ProblemWords): Problem | undefined {
  const found = ownCalls(place.tree).flatMap(({ id, node }) =>
    (node.arguments ?? []).flatMap((arg, i) => {
      const param = CARDS.get(id)?.params[i];
      return param === undefined || isWhole(param) ? [] : constantsIn(arg).map(text => ofCell.typed(text, inWords(param.name)));
    }),
  );
  return found.length === 0 ? undefined : problem('constant', place, [...new Set(found)].join(', '));
}

const countsAsZero = ({ blank }: Param): boolean =>
  blank === 'zero' || (typeof blank === 'object' && 'default' in blank && blank.default === 0);

function blanks(place: FormulaCell, source: WorkbookValues, { ofCell }: ProblemWords): Problem | undefined {
  const found = ownCalls(place.tree).flatMap(({ id, node }) =>
    (node.arguments ?? []).flatMap((arg, i) => {
      const param = CARDS.get(id)?.params[i];
      const area = arg === null ? undefined : areaOf(arg, place.sheetName);
      if (param === undefined || !countsAsZero(param) || area === undefined || !isOneCell(area)) return [];
      const at = address(area.top, area.left);
      return source.value(area.sheet, at) === null
        ? [ofCell.zero(`${area.sheet === place.sheetName ? '' : `${area.sheet}!`}${at}`, inWords(param.name))]
        : [];
    }),
  );
  return found.length === 0 ? undefined : problem('blank', place, [...new Set(found)].join('; '));
}

/** The units of a length as it was typed; a number alone is in mm. */
function lengthUnits(value: unknown): string[] {
  if (typeof value === 'number') return ['mm'];
  if (typeof value !== 'string' || readAnyQuantity(value)?.noun !== 'length') return [];
  const tokens: readonly string[] = value.match(/[a-zµμ]+|["″”]/gi) ?? [];
  return Object.keys(LENGTH.units)
    .filter(unit => tokens.includes(unit))
    .map(unit => (unit.length === 1 && /["″”]/.test(unit) ? 'in' : unit));
}

/** A range as its lines of one quantity each: columns, or the row where there is only one. */
function linesOf({ sheet, top, left, bottom, right }: Area): Selection[][] {
  const column = (c: number) => Array.from({ length: bottom - top + 1 }, (_, r) => ({ sheetName: sheet, at: address(top + r, c) }));
  const columns = Array.from({ length: right - left + 1 }, (_, c) => column(left + c));
  return top === bottom ? [columns.flat()] : columns;
}

/** A value of another quantity stands in each row where the first column is names. */
const isListed = (source: WorkbookValues, { sheet, top, left, right }: Area): boolean =>
  right - left === 1 && typeof source.value(sheet, address(top, left)) === 'string';

function units(area: Area, source: WorkbookValues, { ofCell }: ProblemWords): Problem | undefined {
  if (isOneCell(area) || isListed(source, area)) return undefined;
  for (const line of linesOf(area)) {
    const used = line.map(place => ({
      place,
      units: lengthUnits(source.cell(place.sheetName, place.at)?.formula === undefined ? source.value(place.sheetName, place.at) : null),
    }));
    const all = [...new Set(used.flatMap(({ units: some }) => some))];
    const counts = all.map(unit => used.filter(({ units: some }) => some.includes(unit)).length);
    const rare = all[counts.indexOf(Math.min(...counts))];
    const odd = used.find(({ units: some }) => rare !== undefined && some.includes(rare));
    if (all.length > 1 && odd !== undefined) return problem('units', odd.place, ofCell.units(`${line[0]?.at}:${line.at(-1)?.at}`, all));
  }
  return undefined;
}

// ---- the workbook --------------------------------------------------------------------------------------------------

function placesOf(grids: ReadonlyMap<string, Grid>): FormulaCell[] {
  return [...grids].flatMap(([sheetName, grid]) =>
    grid.flatMap((row, r) =>
      row.flatMap((cell, c): FormulaCell[] => {
        const { formula } = cell;
        return formula === undefined ? [] : [{ sheetName, at: address(r, c), cell, formula, tree: parseFormula(formula) }];
      }),
    ),
  );
}

/** Cells one after the other before it is told. */
const LONG_CHAIN = 3;
/** Excel asks for the answers of cells that wait for each other at most twice a second. */
const LINK_S = 0.5;

const chainWords = (chain: readonly Selection[], { ofCell }: ProblemWords): string =>
  ofCell.chain(chain.length, `${chain[0]?.sheetName}!${chain[0]?.at}`, chain.length * LINK_S, LINK_S);

/** Every problem, by sheet and cell. A cell that is broken or refused is told of once. */
export function problemsOf(grids: ReadonlyMap<string, Grid>, W: ProblemWords): Problem[] {
  const source = sourceOf(grids);
  const areas = new Map<string, Area>();
  const found = placesOf(grids).flatMap(place => {
    for (const { node } of ownCalls(place.tree)) {
      for (const arg of node.arguments ?? []) {
        const area = arg === null ? undefined : areaOf(arg, place.sheetName);
        if (area !== undefined) areas.set(JSON.stringify(area), area);
      }
    }
    const fault = broken(place, W) ?? refused(place, source, W);
    return [fault, ...(fault === undefined ? [state(place)] : []), constants(place, W), blanks(place, source, W)].filter(
      one => one !== undefined,
    );
  });
  const chain = chainIn(placesOf(grids));
  const waits = chain.length < LONG_CHAIN ? [] : [problem('chain', chain[chain.length - 1] as Selection, chainWords(chain, W))];
  return [...found, ...waits, ...[...areas.values()].flatMap(area => units(area, source, W) ?? [])];
}
