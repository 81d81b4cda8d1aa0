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

/** The last row and column that a sheet may have. */
export const LAST_PLACE: Place = { row: 1_048_575, column: 16_383 };

export const columnName = (column: number): string => toCol(column);
/** Of letters that are in capitals, counted from 0. */
export const columnNumber = (letters: string): number => {
  let number = 0;
  for (let i = 0; i < letters.length; i++) number = 26 * number + letters.charCodeAt(i) - 64;
  return number - 1;
};
/** `B4` */
export const address = (row: number, column: number): string => `${toCol(column)}${row + 1}`;

export function cellPosition(at: string): Place {
  const [, letters = 'A', digits = '1'] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
  return { row: Number(digits) - 1, column: columnNumber(letters) };
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
