// Addresses as a cell shows them, and the engine's counted from zero.
import type { IRange } from '@univerjs/core';
import { deserializeRangeWithSheet, serializeRange } from '@univerjs/preset-sheets-core';

export type Rectangle = Pick<IRange, 'startRow' | 'startColumn' | 'endRow' | 'endColumn'>;

export const rangeOf = (a1: string): IRange => deserializeRangeWithSheet(a1).range;

/** `B4`, or `B4:D9` of a range. */
export const nameOf = ({
  startRow,
  startColumn,
  endRow = startRow,
  endColumn = startColumn,
}: Pick<Rectangle, 'startRow' | 'startColumn'> & Partial<Rectangle>): string =>
  serializeRange({ startRow, startColumn, endRow, endColumn });

export const holds = (range: Rectangle, row: number, column: number): boolean =>
  row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;
