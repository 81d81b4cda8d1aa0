// A copy of a workbook in which some cells are others. Parts without a change are written with the bytes in which they were
// packed; when a cell changes, the programs are asked to work everything out anew, and the stored order of working out goes.
import { BookStyles } from './book-styles';
import type { Carried } from './carried';
import type { CellChange } from './cell-splices';
import { Draft } from './draft';
import { drop, type Dropped } from './drop/drop';
import { fileEnding, type FileEnding } from './drop/macros';
import { changeElsewhere, type Elsewhere, type ElsewhereChange } from './elsewhere';
import { BoxNumbers } from './note-boxes';
import { noted } from './notes';
import { addOwnSheets, type OwnRows } from './own-sheets';
import type { UserPackage } from './read';
import { forget } from './remembered';
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
  /** A workbook of our own, as `writeWorkbook` writes it, whose sheets stand behind all others. */
  readonly own?: Uint8Array;
  /** Of long sheets of ours the rows that the workbook leaves out, by the names of the sheets. */
  readonly ownRows?: OwnRows;
  /** What is looked for in our parts while they are written. */
  readonly mentions?: RegExp;
}

/** Words that were asked for at a cell that has its own, or on a sheet whose notes are broken. */
export interface UnwrittenNote {
  readonly sheet: string;
  readonly at: string;
}

export interface EditedPackage extends Dropped {
  readonly bytes: Uint8Array;
  /** Names of the parts with another text. */
  readonly touched: readonly string[];
  /** Names of the parts that the package has not had. */
  readonly added: readonly string[];
  /** Names of the parts that are left out. */
  readonly gone: readonly string[];
  /** What the file has to be called, now that macros are in it or not. */
  readonly ending: FileEnding;
  readonly unwrittenNotes: readonly UnwrittenNote[];
  /** Parts of ours that have nothing that was looked for. */
  readonly quiet: ReadonlySet<string>;
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

interface ChangedSheet {
  readonly name: string;
  readonly part: string;
  /** Words at cells, by address. */
  readonly notes: ReadonlyMap<string, string>;
}

function changeCells(draft: Draft, from: UserPackage, cells: PackageEdit['cells']): ChangedSheet[] {
  const styles = new BookStyles(draft, from);
  const changed = [...cells].map(([name, changes]) => {
    const part = from.sheets.find(sheet => sheet.name === name)?.part;
    if (part === undefined) throw new RangeError(`the workbook has no sheet "${name}" with cells`);
    draft.change(part, text => sheetSplices(text, part, changes, (base, look) => styles.like(base, look)));
    const notes = [...changes].flatMap(([at, { mark }]) => (mark?.note === undefined ? [] : [[at, mark.note] as const]));
    return { name, part, notes: new Map(notes) };
  });
  styles.write();
  return changed;
}

export function edited(
  from: UserPackage,
  { cells, elsewhere = new Map(), drop: asked = [], own, ownRows, mentions }: PackageEdit,
): EditedPackage {
  const draft = new Draft(from.parts);
  const book = from.book.part;
  changeElsewhere(draft, elsewhere);
  const changed = changeCells(draft, from, cells);
  let isOther = draft.touched.length > 0 || own !== undefined;
  forget(draft, book);
  // their formulas keep the sheets that they read
  const quiet = own === undefined ? new Set<string>() : addOwnSheets(draft, from.book, own, ownRows, mentions);
  const dropped = drop(draft, from, asked);
  isOther ||= from.sheets.some(({ part }) => !draft.has(part));
  const numbers = new BoxNumbers(draft);
  const unwrittenNotes = changed.flatMap(({ name, part, notes }) =>
    notes.size === 0 || !draft.has(part) ? [] : noted(draft, part, notes, numbers).map(at => ({ sheet: name, at })),
  );
  if (isOther) workedOutAnew(draft, book);
  return {
    bytes: writeZip(draft.packed()),
    touched: draft.touched,
    added: draft.added,
    gone: draft.gone,
    ending: fileEnding(draft, book),
    unwrittenNotes,
    quiet,
    ...dropped,
  };
}
