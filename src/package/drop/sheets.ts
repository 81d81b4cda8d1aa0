// Sheets that go with all that only they lead to, unless something that stays refers to them.
import { takenOut } from '../cut';
import type { Draft } from '../draft';
import type { UserPackage } from '../read';
import { scanSheet } from '../scan';
import { attribute, attributeIn, childOf, childrenOf, descendants, type Splice, walk, withAttributes, type XmlElement } from '../xml';
import { formulasIn, mentioning, referredBy } from './references';
import { cut, unlink, unlinkPart } from './unlink';

/** Functions that find a sheet by its name as a text, or count sheets. */
const BY_TEXT: ReadonlySet<string> = new Set(['INDIRECT', 'SHEET', 'SHEETS']);

interface ListedSheet {
  readonly element: XmlElement;
  readonly name: string;
  readonly part: string;
  readonly sheetId: string;
  readonly isVisible: boolean;
}

export function listedSheets(draft: Draft, book: string): ListedSheet[] {
  const links = new Map(draft.links(book).map(({ id, target }) => [id, target]));
  return childrenOf(childOf(draft.tree(book), 'sheets'), 'sheet').map(element => ({
    element,
    name: attribute(element, 'name') ?? '',
    part: links.get(attributeIn(element, /\/relationships$/, 'id') ?? '') ?? '',
    sheetId: attribute(element, 'sheetId') ?? '',
    isVisible: (attribute(element, 'state') ?? 'visible') === 'visible',
  }));
}

/** What slicers and timelines choose among. */
export const slicerCaches = (draft: Draft, book: string): string[] =>
  draft.links(book).flatMap(({ type, target }) => (/^(slicer|timeline)Cache$/.test(type) && draft.has(target) ? [target] : []));

const lower = (text: string): string => text.toLowerCase();

/** Looks for what keeps sheets: formulas that name them, their tables, or names that stand for their cells. */
class Keepers {
  private readonly sheets: readonly ListedSheet[];
  private readonly tables: ReadonlyMap<string, string>;

  constructor(
    private readonly draft: Draft,
    private readonly from: UserPackage,
  ) {
    this.sheets = listedSheets(draft, from.book.part);
    this.tables = new Map(from.tables.map(({ name, sheet }) => [lower(name), sheet]));
  }

  /** By the part of the sheet, why it stays, of sheets that are to go. */
  of(going: ReadonlySet<string>): Map<string, string> {
    const { draft, from } = this;
    const goers = this.sheets.filter(({ part }) => going.has(part));
    const why = new Map<string, string>();
    const staying = draft.reached(new Set([...going, ...cachesOf(draft, from.book.part, going)]));
    if (goers.length === this.sheets.length || !this.sheets.some(({ part, isVisible }) => isVisible && !going.has(part)))
      for (const { part } of goers) why.set(part, 'no sheet would be left to be seen');
    if (draft.links(from.book.part).some(({ type, target }) => type === 'vbaProject' && draft.has(target)))
      for (const { part } of goers) why.set(part, 'macros that stay may read it');
    for (const sheet of goers) if (this.isSliced(sheet, staying)) why.set(sheet.part, 'slicers belong to it');
    for (const { at, used } of this.uses(goers, staying))
      for (const { part } of used) if (!why.has(part)) why.set(part, `${at} refers to it`);
    return why;
  }

  /** Slicers stand on it, or choose among its tables. */
  private isSliced({ part, sheetId, name }: ListedSheet, staying: ReadonlySet<string>): boolean {
    const { draft } = this;
    if (draft.links(part).some(({ type }) => type === 'slicer' || type === 'timeline')) return true;
    const tables = this.from.tables.filter(({ sheet }) => sheet === name).map(table => attribute(draft.tree(table.part), 'id'));
    return slicerCaches(draft, this.from.book.part).some(
      cache =>
        staying.has(cache) &&
        descendants(draft.tree(cache)).some(
          tag =>
            (tag.local === 'pivotTable' && attribute(tag, 'tabId') === sheetId) ||
            (tag.local === 'tableSlicerCache' && tables.includes(attribute(tag, 'tableId'))),
        ),
    );
  }

  private used(text: string, goers: readonly ListedSheet[], names: ReadonlyMap<string, readonly ListedSheet[]>): ListedSheet[] {
    const { sheets, names: named, functions } = referredBy(text);
    const at = (name: string): number => this.sheets.findIndex(sheet => lower(sheet.name) === lower(name));
    return [
      ...sheets.flatMap(([first, last]) => {
        const [from = 0, to = -1] = [at(first), at(last)].sort((a, b) => a - b);
        return goers.filter(sheet => this.sheets.indexOf(sheet) >= from && this.sheets.indexOf(sheet) <= to);
      }),
      ...named.flatMap(name => names.get(lower(name)) ?? []),
      ...(functions.includes('HYPERLINK') ? goers.filter(({ name }) => lower(text).includes(lower(name))) : []),
    ];
  }

  /** Names, of tables too, that stand for cells of sheets, by themselves or by way of other names. */
  private names(goers: readonly ListedSheet[]): Map<string, readonly ListedSheet[]> {
    const { draft, from } = this;
    const names = new Map<string, readonly ListedSheet[]>();
    for (const [table, sheet] of this.tables) {
      const owner = goers.filter(({ name }) => name === sheet);
      if (owner.length > 0) names.set(table, owner);
    }
    for (let known = -1; known !== names.size;) {
      known = names.size;
      for (const { name, text } of formulasIn(draft, from, new Set([from.book.part]), /(?:)/)) {
        const key = lower(name?.name ?? '');
        const used =
          name === undefined || names.has(key) || goers.some(sheet => sheet === this.sheets[name.sheetIndex ?? -1])
            ? []
            : this.used(text, goers, names);
        if (used.length > 0) names.set(key, used);
      }
    }
    return names;
  }

  /** Where a sheet is referred to. A name alone keeps nothing: what uses the name does. */
  private uses(
    goers: readonly ListedSheet[],
    staying: ReadonlySet<string>,
  ): { readonly at: string; readonly used: readonly ListedSheet[] }[] {
    const names = this.names(goers);
    const mentions = mentioning([...goers.map(({ name }) => name), ...names.keys(), ...BY_TEXT]);
    const isGoing = (index: number | undefined): boolean => goers.some(sheet => sheet === this.sheets[index ?? -1]);
    return [...formulasIn(this.draft, this.from, staying, mentions)].flatMap(({ at, text, name }) => {
      const byText = !isGoing(name?.sheetIndex) && referredBy(text).functions.some(called => BY_TEXT.has(called));
      if (name !== undefined && !byText) return [];
      return [{ at, used: byText ? goers : this.used(text, goers, names) }];
    });
  }

  /** Names that mean nothing any more when sheets go: those of the sheet, and those that stand for its cells. */
  namesGoing(going: ReadonlySet<string>): (name: XmlElement) => boolean {
    const goers = this.sheets.filter(({ part }) => going.has(part));
    const names = this.names(goers);
    return name => {
      const on = attribute(name, 'localSheetId');
      return (on !== undefined && going.has(this.sheets[Number(on)]?.part ?? '')) || this.used(name.text, goers, names).length > 0;
    };
  }
}

/** Stored records that serve nothing but pivot tables on some sheets. */
function cachesOf(draft: Draft, book: string, sheets: ReadonlySet<string>): string[] {
  const tables = [...sheets].flatMap(sheet =>
    draft
      .links(sheet)
      .filter(({ type }) => type === 'pivotTable')
      .map(({ target }) => target),
  );
  const caches = tables.flatMap(table => draft.links(table).map(({ target }) => target));
  return [...new Set(caches)].filter(cache => draft.leadingTo(cache).every(part => part === book || tables.includes(part)));
}

/** Texts that only the sheets that go have shown. */
function emptyTexts(draft: Draft, from: UserPackage, going: ReadonlySet<string>): void {
  const list = from.book.links.find(({ type, target }) => type === 'sharedStrings' && draft.has(target))?.target;
  if (list === undefined) return;
  const [shown, gone] = [new Set<number>(), new Set<number>()];
  for (const { part } of from.sheets)
    if (draft.has(part))
      scanSheet(draft.text(part), part, {
        cell({ tag, value }) {
          if (value !== undefined && attribute(tag, 't') === 's') (going.has(part) ? gone : shown).add(Number(value.text));
        },
      });
  draft.change(list, text => {
    const splices: Splice[] = [];
    let index = -1;
    walk(text, list, {
      close(tag, _, end, depth) {
        if (depth !== 1 || tag.local !== 'si') return;
        const p = tag.prefix === '' ? '' : `${tag.prefix}:`;
        if (gone.has(++index) && !shown.has(index)) splices.push({ from: tag.from, to: end, text: `<${p}si><${p}t/></${p}si>` });
      },
    });
    return splices;
  });
}

/** The workbook counts its sheets from the first: those behind one that goes have another number. */
function countAnew(draft: Draft, book: string, gone: ReadonlySet<number>, sheets: readonly ListedSheet[]): void {
  const moved = (index: number): number => index - [...gone].filter(other => other < index).length;
  const firstSeen = sheets.findIndex(({ isVisible }, i) => isVisible && !gone.has(i));
  const next = (value: string | undefined): string | undefined =>
    value === undefined ? undefined : String(moved(gone.has(Number(value)) ? firstSeen : Number(value)));
  draft.change(book, text => {
    const root = draft.tree(book);
    const tag = (element: XmlElement, changes: Readonly<Record<string, string | undefined>>): Splice => ({
      from: element.from,
      to: element.to,
      text: withAttributes(text.slice(element.from, element.to), changes),
    });
    return [
      ...childrenOf(childOf(root, 'bookViews'), 'workbookView').map(view =>
        tag(view, {
          activeTab: next(attribute(view, 'activeTab') ?? (gone.has(0) ? '0' : undefined)),
          firstSheet: next(attribute(view, 'firstSheet')),
        }),
      ),
      ...childrenOf(childOf(root, 'definedNames'), 'definedName').flatMap(name =>
        attribute(name, 'localSheetId') === undefined ? [] : [tag(name, { localSheetId: next(attribute(name, 'localSheetId')) })],
      ),
      ...childrenOf(childOf(root, 'customWorkbookViews'), 'customWorkbookView').flatMap(view =>
        [...gone].some(index => sheets[index]?.sheetId === attribute(view, 'activeSheetId'))
          ? [tag(view, { activeSheetId: sheets[firstSeen]?.sheetId })]
          : [],
      ),
    ];
  });
}

/** The file says what sheets and names it has: programs write that list anew. */
function forgetTitles(draft: Draft): void {
  const part = draft.links('').find(({ type, target }) => type === 'extended-properties' && draft.has(target))?.target;
  if (part !== undefined)
    draft.change(part, () =>
      takenOut(draft.tree(part).children.filter(({ local }) => local === 'HeadingPairs' || local === 'TitlesOfParts')),
    );
}

/** Takes sheets out; answers why those stay that must. */
export function dropSheets(draft: Draft, from: UserPackage, asked: ReadonlySet<string>): ReadonlyMap<string, string> {
  const book = from.book.part;
  const going = new Set([...asked].filter(part => draft.has(part)));
  if (going.size === 0) return new Map();
  const keepers = new Keepers(draft, from);
  const kept = new Map<string, string>();
  for (let why = keepers.of(going); why.size > 0 && going.size > 0; why = keepers.of(going))
    for (const [part, words] of why) {
      kept.set(part, words);
      going.delete(part);
    }
  if (going.size === 0) return kept;
  const sheets = listedSheets(draft, book);
  const goesByName = keepers.namesGoing(going);
  emptyTexts(draft, from, going);
  for (const cache of cachesOf(draft, book, going)) unlinkPart(draft, cache);
  cut(draft, book, element => element.local === 'definedName' && goesByName(element));
  countAnew(draft, book, new Set(sheets.flatMap(({ part }, i) => (going.has(part) ? [i] : []))), sheets);
  const listed = new Set(sheets.filter(({ part }) => going.has(part)).map(({ sheetId }) => sheetId));
  cut(draft, book, element => element.local === 'sheet' && listed.has(attribute(element, 'sheetId') ?? ''));
  unlink(draft, book, ({ target, isOutside }) => !isOutside && going.has(target));
  forgetTitles(draft);
  return kept;
}
