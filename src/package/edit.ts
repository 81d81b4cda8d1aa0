// A copy of a workbook in which some cells are others. Parts without a change are written with the bytes in which they were
// packed; when a cell changes, the programs are asked to work everything out anew, and the stored order of working out goes.
import type { CellChange } from './cell-splices';
import { addOwnSheets, type OpenPackage, type OwnRows } from './own-sheets';
import { CONTENT_TYPES, type PackageParts, relationsPart } from './parts';
import type { BookPart, UserPackage } from './read';
import { sheetSplices } from './sheet-splices';
import { encoded } from './text';
import { attribute, childOf, childrenOf, isSet, type Splice, spliced, tree, withAttributes, type XmlElement } from './xml';
import { packed, type PackedPart, writeZip } from './zip';

export interface PackageEdit {
  /** By the name of the sheet and the address of the cell. */
  readonly cells: ReadonlyMap<string, ReadonlyMap<string, CellChange>>;
  /** A workbook of our own, as `writeWorkbook` writes it, whose sheets stand behind all others. */
  readonly own?: Uint8Array;
  /** Of long sheets of ours the rows that the workbook leaves out, by the names of the sheets. */
  readonly ownRows?: OwnRows;
}

export interface EditedPackage {
  readonly bytes: Uint8Array;
  /** Names of the parts with another text. */
  readonly touched: readonly string[];
  /** Names of the parts that are left out. */
  readonly gone: readonly string[];
  /** Names of the parts that the file has not had. */
  readonly added: readonly string[];
}

/** What stands before the settings of calculation, in the order that the format asks for. */
const BEFORE_CALCULATION: ReadonlySet<string> = new Set(['sheets', 'functionGroups', 'externalReferences', 'definedNames']);

function recalculated(text: string, part: string): Splice[] {
  const book = tree(text, part);
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
class Edit implements OpenPackage {
  private readonly changed = new Map<string, string>();
  private readonly added: PackedPart[] = [];
  readonly gone = new Set<string>();
  readonly parts: PackageParts;
  readonly book: BookPart;

  constructor({ parts, book }: UserPackage) {
    this.parts = parts;
    this.book = book;
  }

  text(part: string): string {
    return this.changed.get(part) ?? this.parts.decoded(part).text;
  }

  /** Writes a part anew, if it becomes another. */
  change(part: string, splicesOf: (text: string) => readonly Splice[]): void {
    const text = this.text(part);
    const next = spliced(text, splicesOf(text));
    if (next !== text) this.changed.set(part, next);
  }

  add(part: PackedPart): void {
    this.added.push(part);
  }

  get touched(): readonly string[] {
    return [...this.changed.keys()];
  }

  get addedNames(): readonly string[] {
    return this.added.map(({ name }) => name);
  }

  /** The part with its type and with the link from the workbook. */
  leaveOut(type: string): void {
    const { parts, book } = this;
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
    const { parts } = this;
    const written = (name: string, part: PackedPart): PackedPart => {
      const text = this.changed.get(name);
      return text === undefined ? part : packed(name, [encoded({ text, encoding: parts.decoded(name).encoding })]);
    };
    return writeZip([...[...parts.packed].flatMap(([name, part]) => (this.gone.has(name) ? [] : [written(name, part)])), ...this.added]);
  }
}

export function edited(from: UserPackage, { cells, own, ownRows }: PackageEdit): EditedPackage {
  const edit = new Edit(from);
  for (const [name, changes] of cells) {
    const sheet = from.sheets.find(candidate => candidate.name === name);
    if (sheet === undefined) throw new RangeError(`the workbook has no sheet "${name}" with cells`);
    edit.change(sheet.part, text => sheetSplices(text, sheet.part, changes));
  }
  if (edit.touched.length > 0 || own !== undefined) {
    edit.leaveOut('calcChain');
    if (own !== undefined) addOwnSheets(edit, own, ownRows);
    edit.change(from.book.part, text => recalculated(text, from.book.part));
  }
  return { bytes: edit.bytes(), touched: edit.touched, gone: [...edit.gone], added: edit.addedNames };
}
