// Cells and rectangles of cells, and how a formula names them: the only place that knows column letters.
import { toCol } from '@borgar/fx';

/** A cell; rows and columns count from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells, all four sides within it. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A rectangle of a named sheet. */
export interface Area extends Rectangle {
  readonly sheet: string;
}

/** The last row and column of a sheet. */
export const LAST_PLACE: Place = { row: 1_048_575, column: 16_383 };

const names: string[] = [];
export const columnName = (column: number): string => (names[column] ??= toCol(column));
/** Of letters that are in capitals, counted from 0. */
export const columnNumber = (letters: string): number => {
  let number = 0;
  for (let i = 0; i < letters.length; i++) number = 26 * number + letters.charCodeAt(i) - 64;
  return number - 1;
};
/** `B4` */
export const address = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

const [BEFORE_A, BEFORE_0] = [64, 47];
/** What is no address is the first cell. */
export function cellPosition(at: string): Place {
  let [i, column, row] = [0, 0, 0];
  for (let letter = at.charCodeAt(0) - BEFORE_A; letter >= 1 && letter <= 26; letter = at.charCodeAt(++i) - BEFORE_A)
    column = 26 * column + letter;
  const letters = i;
  for (let digit = at.charCodeAt(i) - BEFORE_0; digit >= 1 && digit <= 10; digit = at.charCodeAt(++i) - BEFORE_0)
    row = 10 * row + digit - 1;
  return letters === 0 || i === letters || i < at.length ? { row: 0, column: 0 } : { row: row - 1, column: column - 1 };
}

/** Of `B4`, or of `B4:D9`. */
export function rectangleOf(range: string): Rectangle {
  const [from = '', to = from] = range.split(':');
  const [first, last] = [cellPosition(from), cellPosition(to)];
  return { top: first.row, left: first.column, bottom: last.row, right: last.column };
}

export const isOneCell = ({ top, left, bottom, right }: Rectangle): boolean => top === bottom && left === right;
export const cellCount = ({ top, left, bottom, right }: Rectangle): number => (bottom - top + 1) * (right - left + 1);
export const holds = ({ top, left, bottom, right }: Rectangle, { row, column }: Place): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

/** Its cells, row by row. */
export function placesIn({ top, left, bottom, right }: Rectangle): Place[] {
  const width = right - left + 1;
  return Array.from({ length: (bottom - top + 1) * width }, (_, i) => ({ row: top + Math.floor(i / width), column: left + (i % width) }));
}

/** The cells as rectangles, none twice: runs of a row, and equal runs below each other as one. */
export function rectanglesOf(places: readonly Place[]): Rectangle[] {
  const sorted = [...places].sort((a, b) => a.row - b.row || a.column - b.column);
  const runs: Rectangle[] = [];
  for (const { row, column } of sorted) {
    const last = runs[runs.length - 1];
    if (last?.top === row && last.right + 1 === column) runs[runs.length - 1] = { ...last, right: column };
    else if (last?.top !== row || last.right !== column) runs.push({ top: row, left: column, bottom: row, right: column });
  }
  const open = new Map<string, Rectangle>();
  const done: Rectangle[] = [];
  for (const run of runs) {
    const key = `${run.left}:${run.right}`;
    const above = open.get(key);
    const isNext = above?.bottom === run.top - 1;
    if (above !== undefined && !isNext) done.push(above);
    open.set(key, isNext ? { ...above, bottom: run.bottom } : run);
  }
  return [...done, ...open.values()];
}

export const meet = (a: Rectangle, b: Rectangle): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;

/** What both have in common. */
export function common(a: Rectangle, b: Rectangle): Rectangle | undefined {
  if (!meet(a, b)) return undefined;
  return {
    top: Math.max(a.top, b.top),
    left: Math.max(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
  };
}

/** The smallest rectangle round both. */
export const round = (a: Rectangle, b: Rectangle): Rectangle => ({
  top: Math.min(a.top, b.top),
  left: Math.min(a.left, b.left),
  bottom: Math.max(a.bottom, b.bottom),
  right: Math.max(a.right, b.right),
});

/** The last row and the last column of cells. */
export function lastPlace(cells: Iterable<string>): Place {
  let [row, column] = [0, 0];
  for (const at of cells) {
    const place = cellPosition(at);
    row = Math.max(row, place.row);
    column = Math.max(column, place.column);
  }
  return { row, column };
}

const SIMPLE_NAME = /^[A-Za-z_][A-Za-z0-9_]*$/;
export const sheetPrefix = (sheet: string): string => (SIMPLE_NAME.test(sheet) ? `${sheet}!` : `'${sheet.replace(/'/g, "''")}'!`);
/** A cell of another sheet, fixed: `Steps!$C$17`. */
export const fixedCell = (sheet: string, row: number, column: number): string => `${sheetPrefix(sheet)}$${toCol(column)}$${row + 1}`;
export const fixedArea = ({ sheet, top, left, bottom, right }: Area): string =>
  `${fixedCell(sheet, top, left)}:$${toCol(right)}$${bottom + 1}`;
