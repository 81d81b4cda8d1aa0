// The cells of a worksheet as values and formulas in the form in which the file stores them.
import { address } from '../sheet/addresses';
import { fromStored, RichText } from './rich-text';
import { type CellPiece, isHidden, isMain, type ScannedCell, scanSheet } from './scan';
import { movable, type MovableFormula } from './shared-formula';
import { UnreadableFile } from './unreadable';
import { attribute, walk } from './xml';

/** Of all sheets together. */
const MOST_STORED_CELLS = 2_000_000;
/** Of formulas that the file holds once and many cells share. */
const MOST_SHARED_CHARACTERS = 40_000_000;

export interface StoredError {
  readonly error: string;
}
export type StoredValue = number | string | boolean | StoredError | undefined;

/** `array` works on ranges cell by cell within its area; `dynamic` spills into it. */
export type FormulaKind = 'plain' | 'shared' | 'array' | 'dynamic' | 'dataTable';

export interface StoredFormula {
  readonly kind: FormulaKind;
  /** Without equals sign, with the names of functions as they are stored; of a shared one what it reads in this cell. */
  readonly text: string;
  /** The cells that it fills, or that share it: `A8:C12`. */
  readonly area?: string;
  readonly sharedIndex?: number;
  /** Its entry in the metadata of cells, as stored, from 1. */
  readonly cellMetadata?: number;
}

export interface StoredCell {
  readonly at: string;
  /** What the file says it shows. */
  readonly value: StoredValue;
  readonly formula?: StoredFormula;
}

export interface SheetContent {
  /** Cells with a value or a formula, row by row. */
  readonly cells: readonly StoredCell[];
  readonly hiddenRows: number;
  readonly hiddenColumns: number;
}

/** What the cells of a workbook refer to. */
export interface CellContext {
  readonly texts: readonly string[];
  readonly is1904: boolean;
  readonly spills: (cellMetadata: number) => boolean;
}

export function sharedTexts(text: string, part: string): string[] {
  const texts: string[] = [];
  const rich = new RichText();
  walk(text, part, {
    open: tag => rich.open(tag),
    close: tag => {
      if (tag.local === 'si' && isMain(tag)) texts.push(rich.taken());
      else rich.close(tag);
    },
    text: piece => rich.text(piece),
  });
  return texts;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(E[+-]?\d+)?$/i;
const DAY_MS = 86_400_000;

/** `2026-02-14T12:00:00` as days. */
function serialOf(text: string, is1904: boolean): number {
  const ms = Date.parse(/(Z|[+-]\d\d:\d\d)$/.test(text) || !text.includes('T') ? text : `${text}Z`);
  const days = (ms - (is1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30))) / DAY_MS;
  // the 29 February 1900 that never was
  return !is1904 && days < 61 ? days - 1 : days;
}

/** Reads the cells of one sheet after another, within what all of them may hold. */
export class CellReader {
  private leftCells = MOST_STORED_CELLS;
  private leftCharacters = MOST_SHARED_CHARACTERS;

  constructor(private readonly context: CellContext) {}

  read(text: string, part: string): SheetContent {
    const cells: StoredCell[] = [];
    const shared = new Map<string, MovableFormula>();
    let [hiddenRows, hiddenColumns] = [0, 0];
    scanSheet(text, part, {
      cell: scanned => {
        const at = address(scanned.row, scanned.column);
        const refuse = (words: string): never => {
          throw new UnreadableFile('inside', `the part "${part}", cell ${at}: ${words}`);
        };
        const value = this.value(scanned, refuse);
        const formula = scanned.formula && this.formula(scanned.formula, scanned, at, shared, refuse);
        // programs pad sheets with blank cells down to the last row
        if ((formula !== undefined || (value !== undefined && value !== '')) && --this.leftCells < 0)
          throw new UnreadableFile('tooManyCells', MOST_STORED_CELLS);
        if (formula !== undefined) cells.push({ at, value, formula });
        else if (value !== undefined && value !== '') cells.push({ at, value });
      },
      row: ({ tag }) => {
        if (isHidden(tag, 'ht')) hiddenRows++;
      },
      other: tag => {
        if (tag.local === 'col' && isMain(tag) && isHidden(tag, 'width'))
          hiddenColumns += Math.max(0, Number(attribute(tag, 'max')) - Number(attribute(tag, 'min')) + 1) || 0;
      },
    });
    return { cells, hiddenRows, hiddenColumns };
  }

  private value({ tag, value, ownText }: ScannedCell, refuse: (words: string) => never): StoredValue {
    const type = attribute(tag, 't') ?? 'n';
    if (type === 'inlineStr') return ownText?.text;
    if (value === undefined) return undefined;
    const { text } = value;
    if (type === 'str') return fromStored(text);
    const trimmed = text.trim();
    if (trimmed === '') return undefined;
    switch (type) {
      case 's':
        return (
          (/^\d+$/.test(trimmed) ? this.context.texts[Number(trimmed)] : undefined) ?? refuse(`there is no text "${trimmed.slice(0, 20)}"`)
        );
      case 'b':
        return /^(1|true)$/i.test(trimmed);
      case 'e':
        return { error: trimmed };
      case 'n':
      case 'd': {
        const number = type === 'd' ? serialOf(trimmed, this.context.is1904) : NUMBER.test(trimmed) ? Number(trimmed) : NaN;
        return Number.isFinite(number)
          ? number
          : refuse(`"${trimmed.slice(0, 20)}" is not a ${type === 'd' ? 'date' : 'number'} that a cell can hold`);
      }
      default:
        return refuse(`there is no kind of value "${type.slice(0, 20)}"`);
    }
  }

  private formula(
    { tag, text }: CellPiece,
    { tag: cell, row, column }: ScannedCell,
    at: string,
    shared: Map<string, MovableFormula>,
    refuse: (words: string) => never,
  ): StoredFormula | undefined {
    const [type, area, index, entry] = [
      attribute(tag, 't') ?? 'normal',
      attribute(tag, 'ref'),
      attribute(tag, 'si'),
      attribute(cell, 'cm'),
    ];
    const cellMetadata = entry === undefined ? undefined : Number(entry);
    const stored = { ...(area !== undefined && { area }), ...(cellMetadata !== undefined && { cellMetadata }) };
    if (type === 'shared') {
      if (index === undefined) return refuse('a shared formula without its number');
      if (text !== '') shared.set(index, movable(text, at));
      const first = shared.get(index) ?? refuse(`the shared formula ${index.slice(0, 20)} has no first cell`);
      const own = text === '' ? first({ row, column }) : text;
      this.leftCharacters -= own.length;
      if (this.leftCharacters < 0) throw new UnreadableFile('sharedTooLong', MOST_SHARED_CHARACTERS);
      return { kind: 'shared', text: own, sharedIndex: Number(index), ...stored };
    }
    if (type === 'array')
      return { kind: cellMetadata !== undefined && this.context.spills(cellMetadata) ? 'dynamic' : 'array', text, ...stored };
    if (type === 'dataTable') return { kind: 'dataTable', text, ...stored };
    if (type !== 'normal') return refuse(`there is no kind of formula "${type.slice(0, 20)}"`);
    // an empty one is what some programs leave of a formula that they could not write
    return text === '' ? undefined : { kind: 'plain', text, ...stored };
  }
}
