// A table's rows in the order of one of its columns: what is to be written. Formulas move as a copy does.
import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import type { Cell } from '../core/kinds';
import { address, type Area, meet } from './addresses';
import { areaOf, beamOf, parseFormula, walk } from './formula';
import type { CellEntry, SheetCell } from './port';

type Grids = ReadonlyMap<string, readonly (readonly SheetCell[])[]>;

export interface SortWish {
  /** The table with the row of its headings. */
  readonly area: Area;
  /** Of the sheet, from 0. */
  readonly column: number;
  readonly isFalling: boolean;
  /** A text as a number, `0.167 in` in mm; undefined where it is none. */
  numberOf(text: string): number | undefined;
}

export interface Sorted {
  /** Rows of the sheet in their new order, from 0. */
  readonly order: readonly number[];
  readonly entries: readonly CellEntry[];
  /** Formulas of the table that read other rows than their own. */
  readonly otherRows: readonly string[];
  /** Formulas outside that read some of its rows. */
  readonly outside: readonly string[];
}

/** Where a formula fills rows of the table from one of them. */
export interface Filled {
  readonly filledFrom: string;
}

interface Key {
  /** Numbers, then texts, then what is blank. */
  readonly rank: 0 | 1 | 2;
  readonly number: number;
  readonly text: string;
}

const texts = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function keyOf(value: Cell | null, numberOf: SortWish['numberOf']): Key {
  if (value === null || value === '') return { rank: 2, number: 0, text: '' };
  const number = typeof value === 'string' ? numberOf(value) : typeof value === 'number' ? value : undefined;
  return number === undefined ? { rank: 1, number: 0, text: String(value) } : { rank: 0, number, text: '' };
}

/** What is blank is last whatever the direction. */
function compare(a: Key, b: Key, isFalling: boolean): number {
  const isBlank = a.rank === 2 || b.rank === 2;
  const way = a.rank - b.rank || a.number - b.number || texts.compare(a.text, b.text);
  return isFalling && !isBlank ? -way : way;
}

/** A formula as it is after it was copied to another row. */
export const copied = (formula: string, from: string, to: string): string =>
  translateFormulaToA1(translateFormulaToR1C1(formula, from), to);

function areasIn(formula: string, sheet: string): Area[] {
  const tree = parseFormula(formula);
  return tree === undefined ? [] : [...walk(tree)].flatMap(node => areaOf(node, sheet) ?? beamOf(node, sheet) ?? []);
}

/** A relative reference reads another cell wherever its formula is copied to. */
function readsOtherRows(formula: string, row: number, body: Area): boolean {
  const moves = (area: Area, i: number): boolean => {
    const there = areasIn(copied(formula, address(row, 0), address(row + 1, 0)), body.sheet)[i];
    return there === undefined || there.top !== area.top || there.bottom !== area.bottom;
  };
  return areasIn(formula, body.sheet).some(
    (area, i) =>
      (area.top !== row || area.bottom !== row) &&
      (moves(area, i) || (meet(area, body) && area.sheet === body.sheet && isPart(area, body))),
  );
}

/** It has some of the rows, and not all. */
const isPart = (area: Area, body: Area): boolean => area.top > body.top || area.bottom < body.bottom;

export function sortTable(grids: Grids, { area, column, isFalling, numberOf }: SortWish): Sorted | Filled {
  const body: Area = { ...area, top: area.top + 1 };
  const grid = grids.get(area.sheet) ?? [];
  const at = (row: number, c: number): SheetCell => grid[row]?.[c] ?? { value: null };
  const rows = Array.from({ length: body.bottom - body.top + 1 }, (_, r) => body.top + r);
  const columns = Array.from({ length: body.right - body.left + 1 }, (_, c) => body.left + c);
  const places = rows.flatMap(row => columns.map(c => address(row, c)));
  const filledFrom = rows
    .flatMap(row => columns.map(c => at(row, c).spilledFrom))
    .find(from => from !== undefined && places.includes(from));
  if (filledFrom !== undefined) return { filledFrom };

  const keys = new Map(rows.map(row => [row, keyOf(at(row, column).value, numberOf)]));
  const order = [...rows].sort((a, b) => compare(keys.get(a) as Key, keys.get(b) as Key, isFalling));
  const entries = order.flatMap((from, r) => {
    const to = body.top + r;
    return columns.flatMap((c): CellEntry[] => {
      const [old, cell] = [at(to, c), at(from, c)];
      // What a formula fills follows by itself.
      if (from === to || old.spilledFrom !== undefined || cell.spilledFrom !== undefined) return [];
      const content = cell.formula === undefined ? (cell.value ?? '') : copied(cell.formula, address(from, c), address(to, c));
      return content === (old.formula ?? old.value ?? '') ? [] : [{ sheetName: area.sheet, at: address(to, c), content }];
    });
  });
  const otherRows: string[] = [];
  const outside: string[] = [];
  for (const [sheet, lines] of grids)
    lines.forEach((line, row) =>
      line.forEach(({ formula }, c) => {
        if (formula === undefined) return;
        const isInside = sheet === body.sheet && meet(body, { top: row, bottom: row, left: c, right: c });
        if (isInside ? readsOtherRows(formula, row, body) : areasIn(formula, sheet).some(read => isOfSome(read, body)))
          (isInside ? otherRows : outside).push(sheet === body.sheet ? address(row, c) : `${sheet}!${address(row, c)}`);
      }),
    );
  return { order, entries, otherRows, outside };
}

const isOfSome = (read: Area, body: Area): boolean => read.sheet === body.sheet && meet(read, body) && isPart(read, body);
