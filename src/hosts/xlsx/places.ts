// Cells and ranges by zero-based row and column.
import { parseCellRef } from 'hucre/xlsx';

export interface Place {
  readonly row: number;
  readonly col: number;
}

export interface Area {
  readonly startRow: number;
  readonly startCol: number;
  readonly endRow: number;
  readonly endCol: number;
}

export const placeOf = (at: string): Place => parseCellRef(at);

export function areaOf(range: string): Area {
  const [from = '', to = from] = range.split(':');
  const start = placeOf(from);
  const end = placeOf(to);
  return { startRow: start.row, startCol: start.col, endRow: end.row, endCol: end.col };
}

export const holds = ({ startRow, startCol, endRow, endCol }: Area, { row, col }: Place): boolean =>
  row >= startRow && row <= endRow && col >= startCol && col <= endCol;

export function placesIn({ startRow, startCol, endRow, endCol }: Area): Place[] {
  const width = endCol - startCol + 1;
  return Array.from({ length: (endRow - startRow + 1) * width }, (_, i) => ({
    row: startRow + Math.floor(i / width),
    col: startCol + (i % width),
  }));
}
