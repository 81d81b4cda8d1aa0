// A copy of a workbook in which some cells are others. Parts without a change are written with the bytes in which they were
// packed; when a cell changes, the programs are asked to work everything out anew, and the stored order of working out goes.
import type { Carried } from './carried';
import type { CellChange } from './cell-splices';
import { Draft } from './draft';
import { drop, type Dropped } from './drop/drop';
import { fileEnding, type FileEnding } from './drop/macros';
import { changeElsewhere, type Elsewhere, type ElsewhereChange } from './elsewhere';
import type { UserPackage } from './read';
import { sheetSplices } from './sheet-splices';
import { childOf, isSet, type Splice, withAttributes, type XmlElement } from './xml';
import { writeZip } from './zip';

export interface PackageEdit {
  /** By the name of the sheet and the address of the cell. */
  readonly cells: ReadonlyMap<string, ReadonlyMap<string, CellChange>>;
  /** Of the formulas outside cells, those that change. */
  readonly elsewhere?: ReadonlyMap<Elsewhere, ElsewhereChange>;
  /** Of what the workbook carries, what shall not go along. */
  readonly drop?: readonly Carried[];
}

export interface EditedPackage extends Dropped {
  readonly bytes: Uint8Array;
  /** Names of the parts with another text. */
  readonly touched: readonly string[];
  /** Names of the parts that are left out. */
  readonly gone: readonly string[];
  /** What the file has to be called, now that macros are in it or not. */
  readonly ending: FileEnding;
}

/** What stands before the settings of calculation, in the order that the format asks for. */
const BEFORE_CALCULATION: ReadonlySet<string> = new Set(['sheets', 'functionGroups', 'externalReferences', 'definedNames']);

function recalculated(text: string, book: XmlElement): Splice[] {
  const settings = childOf(book, 'calcPr');
  if (settings !== undefined && isSet(settings, 'fullCalcOnLoad')) return [];
  if (settings !== undefined) {
    const before = text.slice(settings.from, settings.to);
    return [{ from: settings.from, to: settings.to, text: withAttributes(before, { fullCalcOnLoad: '1' }) }];
  }
  const last = book.children.filter(({ local }) => BEFORE_CALCULATION.has(local)).pop();
  const at = last?.end ?? book.inner;
  const prefix = book.prefix === '' ? '' : `${book.prefix}:`;
  return [{ from: at, to: at, text: `<${prefix}calcPr fullCalcOnLoad="1"/>` }];
}

function workedOutAnew(draft: Draft, book: string): void {
  const links = draft.links(book).filter(({ type, isOutside }) => type === 'calcChain' && !isOutside);
  if (links.length > 0) {
    draft.unlink(book, links);
    draft.leaveOut(new Set(links.map(({ target }) => target)));
  }
  draft.change(book, text => recalculated(text, draft.tree(book)));
}

export function edited(from: UserPackage, { cells, elsewhere = new Map(), drop: asked = [] }: PackageEdit): EditedPackage {
  const draft = new Draft(from.parts);
  changeElsewhere(draft, elsewhere);
  for (const [name, changes] of cells) {
    const sheet = from.sheets.find(candidate => candidate.name === name);
    if (sheet === undefined) throw new RangeError(`the workbook has no sheet "${name}" with cells`);
    draft.change(sheet.part, text => sheetSplices(text, sheet.part, changes));
  }
  const book = from.book.part;
  let isOther = draft.touched.length > 0;
  const dropped = drop(draft, from, asked);
  isOther ||= from.sheets.some(({ part }) => !draft.has(part));
  if (isOther) workedOutAnew(draft, book);
  return { bytes: writeZip(draft.packed()), touched: draft.touched, gone: draft.gone, ending: fileEnding(draft, book), ...dropped };
}
