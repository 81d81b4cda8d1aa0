// A copy of a workbook in which some cells are others. Parts without a change are written with the bytes in which they were
// packed; when a cell changes, the programs are asked to work everything out anew, and the stored order of working out goes.
import type { ChangingPackage } from './additions';
import { BookStyles } from './book-styles';
import type { CellChange } from './cell-splices';
import { BoxNumbers } from './note-boxes';
import { noted } from './notes';
import { CONTENT_TYPES, relationsPart } from './parts';
import type { UserPackage } from './read';
import { sheetSplices } from './sheet-splices';
import { encoded } from './text';
import { attribute, childOf, childrenOf, isSet, type Splice, spliced, withAttributes, type XmlElement } from './xml';
import { packed, type PackedPart, writeZip } from './zip';

export interface PackageEdit {
  /** By the name of the sheet and the address of the cell. */
  readonly cells: ReadonlyMap<string, ReadonlyMap<string, CellChange>>;
}

/** Words that were asked for at a cell that has its own, or on a sheet whose notes are broken. */
export interface UnwrittenNote {
  readonly sheet: string;
  readonly at: string;
}

export interface EditedPackage {
  readonly bytes: Uint8Array;
  /** Names of the parts with another text. */
  readonly touched: readonly string[];
  /** Names of the parts that the package has not had. */
  readonly added: readonly string[];
  /** Names of the parts that are left out. */
  readonly gone: readonly string[];
  readonly unwrittenNotes: readonly UnwrittenNote[];
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

const takenOut = (elements: readonly XmlElement[]): Splice[] => elements.map(({ from, end }) => ({ from, to: end, text: '' }));

/** Texts of parts as they become, one change after another. */
class Edit implements ChangingPackage {
  private readonly changed = new Map<string, string>();
  private readonly new = new Map<string, string>();
  readonly gone = new Set<string>();

  constructor(private readonly from: UserPackage) {}

  get names(): readonly string[] {
    return [...this.from.parts.packed.keys(), ...this.new.keys()].filter(name => !this.gone.has(name));
  }

  named(part: string): string | undefined {
    const name = this.from.parts.named(part) ?? [...this.new.keys()].find(added => added.toLowerCase() === part.toLowerCase());
    return name !== undefined && this.gone.has(name) ? undefined : name;
  }

  text(part: string): string {
    return this.new.get(part) ?? this.changed.get(part) ?? this.from.parts.decoded(part).text;
  }

  /** Writes a part anew, if it becomes another. */
  change(part: string, splicesOf: (text: string) => readonly Splice[]): void {
    const text = this.text(part);
    const next = spliced(text, splicesOf(text));
    if (next !== text) (this.new.has(part) ? this.new : this.changed).set(part, next);
  }

  add(part: string, text: string): void {
    this.new.set(part, text);
  }

  get added(): readonly string[] {
    return [...this.new.keys()];
  }

  get touched(): readonly string[] {
    return [...this.changed.keys()];
  }

  /** The part with its type and with the link from the workbook. */
  leaveOut(type: string): void {
    const { parts, book } = this.from;
    const links = book.links.filter(link => link.type === type && !link.isOutside);
    if (links.length === 0) return;
    const targets = new Set(links.map(({ target }) => target));
    for (const target of targets) if (parts.packed.has(target)) this.gone.add(target);
    const list = parts.named(relationsPart(book.part));
    if (list !== undefined) this.change(list, () => links.map(({ from, end }) => ({ from, to: end, text: '' })));
    const types = parts.named(CONTENT_TYPES);
    if (types === undefined) return;
    const overrides = childrenOf(parts.tree(types), 'Override');
    this.change(types, () =>
      takenOut(overrides.filter(override => targets.has(parts.named((attribute(override, 'PartName') ?? '').replace(/^\//, '')) ?? ''))),
    );
  }

  bytes(): Uint8Array {
    const { parts } = this.from;
    const written = (name: string, part: PackedPart): PackedPart => {
      const text = this.changed.get(name);
      return text === undefined ? part : packed(name, [encoded({ text, encoding: parts.decoded(name).encoding })]);
    };
    const kept = [...parts.packed].flatMap(([name, part]) => (this.gone.has(name) ? [] : [written(name, part)]));
    const added = [...this.new].map(([name, text]) => packed(name, [encoded({ text, encoding: 'utf-8' })]));
    return writeZip([...kept, ...added]);
  }
}

const notesOf = (changes: ReadonlyMap<string, CellChange>): Map<string, string> =>
  new Map([...changes].flatMap(([at, { mark }]) => (mark?.note === undefined ? [] : [[at, mark.note]])));

export function edited(from: UserPackage, { cells }: PackageEdit): EditedPackage {
  const edit = new Edit(from);
  const styles = new BookStyles(edit, from);
  const changed = [...cells].map(([name, changes]) => {
    const sheet = from.sheets.find(candidate => candidate.name === name);
    if (sheet === undefined) throw new RangeError(`the workbook has no sheet "${name}" with cells`);
    edit.change(sheet.part, text => sheetSplices(text, sheet.part, changes, (base, look) => styles.like(base, look)));
    return { sheet, notes: notesOf(changes) };
  });
  if (edit.touched.length > 0) {
    edit.leaveOut('calcChain');
    edit.change(from.book.part, text => recalculated(text, from.book.root));
  }
  styles.write();
  const numbers = new BoxNumbers(edit);
  const unwrittenNotes = changed.flatMap(({ sheet, notes }) =>
    notes.size === 0 ? [] : noted(edit, sheet.part, notes, numbers).map(at => ({ sheet: sheet.name, at })),
  );
  return { bytes: edit.bytes(), touched: edit.touched, added: edit.added, gone: [...edit.gone], unwrittenNotes };
}
