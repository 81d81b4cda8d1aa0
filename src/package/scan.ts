// One pass over the text of a worksheet: its cells with their places, its rows and columns.
import { cellPosition } from '../sheet/addresses';
import { RichText } from './rich-text';
import { UnreadableFile } from './unreadable';
import { attribute, isSet, type StartTag, walk } from './xml';

const MAIN = /^http:\/\/(schemas\.openxmlformats\.org\/spreadsheetml\/2006\/main|purl\.oclc\.org\/ooxml\/spreadsheetml\/main)$/;
/** Of the vocabulary of workbooks, as Excel writes it or in its strict form. */
export const isMain = ({ uri }: Pick<StartTag, 'uri'>): boolean => MAIN.test(uri);

/** Of a sheet. */
const [MOST_ROWS, MOST_COLUMNS] = [1_048_576, 16_384];

/** Formula, value or text of a cell. */
export interface CellPiece {
  readonly tag: StartTag;
  readonly text: string;
  readonly end: number;
}

interface CellPieces {
  formula?: CellPiece;
  value?: CellPiece;
  /** A text that stands in the cell itself. */
  ownText?: CellPiece;
}

export interface ScannedCell extends Readonly<CellPieces> {
  readonly tag: StartTag;
  readonly row: number;
  readonly column: number;
  readonly inner: number;
  readonly end: number;
}

export interface ScannedRow {
  readonly tag: StartTag;
  readonly row: number;
  readonly inner: number;
  readonly end: number;
}

export interface SheetWalker {
  cell?(cell: ScannedCell): void;
  /** A row, after its cells. */
  row?(row: ScannedRow): void;
  /** The element that holds the rows, after them. */
  data?(tag: StartTag, inner: number, end: number): void;
  /** Any other element outside the rows, at its start. */
  other?(tag: StartTag): void;
  /** An element that stands beside the one that holds the rows, after it. */
  beside?(tag: StartTag, end: number): void;
}

const ROLE: ReadonlyMap<string, keyof CellPieces> = new Map([
  ['f', 'formula'],
  ['v', 'value'],
  ['is', 'ownText'],
]);

class SheetScan {
  /** Elements that hold rows: a sheet has one. */
  places = 0;
  private row = -1;
  private column = -1;
  private data: StartTag | undefined;
  private rowTag: StartTag | undefined;
  private cellTag: StartTag | undefined;
  private pieces: CellPieces = {};
  private piece: StartTag | undefined;
  private plain = '';
  private rich = new RichText();

  constructor(
    private readonly part: string,
    private readonly to: SheetWalker,
  ) {}

  private refuse(words: string): never {
    throw new UnreadableFile('inside', `the part "${this.part}" has ${words}`);
  }

  private openRow(tag: StartTag): void {
    const given = attribute(tag, 'r');
    const row = given === undefined ? this.row + 1 : /^\d{1,7}$/.test(given) ? Number(given) - 1 : MOST_ROWS;
    if (row >= MOST_ROWS) this.refuse(`a row beyond the last of a sheet (${given?.slice(0, 20) ?? row + 1})`);
    if (row <= this.row) this.refuse(`its rows not in their order (${row + 1})`);
    [this.row, this.column] = [row, -1];
    this.rowTag = tag;
  }

  private openCell(tag: StartTag): void {
    const at = attribute(tag, 'r');
    if (at !== undefined && !/^[A-Z]{1,3}[1-9]\d{0,6}$/.test(at)) this.refuse(`a cell with the address "${at.slice(0, 20)}"`);
    const { row, column } = at === undefined ? { row: this.row, column: this.column + 1 } : cellPosition(at);
    if (column >= MOST_COLUMNS) this.refuse(`a cell beyond the last column of a sheet (${at ?? 'without an address'})`);
    if (row !== this.row || column <= this.column) this.refuse(`its cells not in their order (${at ?? ''})`);
    this.column = column;
    this.cellTag = tag;
    this.pieces = {};
  }

  open(tag: StartTag, depth: number): void {
    if (this.piece !== undefined) this.rich.open(tag);
    else if (this.cellTag !== undefined) {
      const role = depth === 4 && isMain(tag) ? ROLE.get(tag.local) : undefined;
      if (role === undefined) return;
      if (this.pieces[role] !== undefined) this.refuse(`a cell with two <${tag.local}>`);
      this.piece = tag;
      this.plain = '';
    } else if (this.rowTag !== undefined) {
      if (depth === 3 && tag.local === 'c' && isMain(tag)) this.openCell(tag);
    } else if (this.data !== undefined) {
      if (depth === 2 && tag.local === 'row' && isMain(tag)) this.openRow(tag);
    } else if (depth === 1 && tag.local === 'sheetData' && isMain(tag)) this.data = tag;
    else this.to.other?.(tag);
  }

  text(text: string): void {
    if (this.piece === undefined) return;
    this.plain += text;
    this.rich.text(text);
  }

  close(tag: StartTag, inner: number, end: number, depth: number): void {
    if (tag === this.piece) {
      const role = ROLE.get(tag.local) ?? 'value';
      this.pieces[role] = { tag, text: role === 'ownText' ? this.rich.taken() : this.plain, end };
      this.piece = undefined;
    } else if (this.piece !== undefined) this.rich.close(tag);
    else if (tag === this.cellTag) {
      this.cellTag = undefined;
      this.to.cell?.({ tag, row: this.row, column: this.column, inner, end, ...this.pieces });
    } else if (tag === this.rowTag) {
      this.rowTag = undefined;
      this.to.row?.({ tag, row: this.row, inner, end });
    } else if (tag === this.data) {
      this.data = undefined;
      this.places++;
      this.to.data?.(tag, inner, end);
    } else if (depth === 1) this.to.beside?.(tag, end);
  }
}

export function scanSheet(text: string, part: string, to: SheetWalker): void {
  const scan = new SheetScan(part, to);
  walk(text, part, { open: scan.open.bind(scan), close: scan.close.bind(scan), text: scan.text.bind(scan) });
  if (scan.places !== 1) throw new UnreadableFile('inside', `the part "${part}" is no sheet with cells`);
}

/** Whether a row or a column is not to be seen: a size of 0 hides it as well. */
export const isHidden = (tag: StartTag, size: 'ht' | 'width'): boolean => isSet(tag, 'hidden') || Number(attribute(tag, size) ?? 1) === 0;
