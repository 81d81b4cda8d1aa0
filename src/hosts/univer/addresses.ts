// The engine's ranges and ours: it names the four sides in its own way.
import type { IRange } from '@univerjs/core';
import { deserializeRangeWithSheet, serializeRange } from '@univerjs/preset-sheets-core';
import type { Rectangle } from '../../sheet/addresses';

export const rangeOf = (a1: string): IRange => deserializeRangeWithSheet(a1).range;

/** `B4:D9` */
export const nameOf = ({ startRow, startColumn, endRow, endColumn }: IRange): string =>
  serializeRange({ startRow, startColumn, endRow, endColumn });

export const rectangleOf = ({ startRow, startColumn, endRow, endColumn }: IRange): Rectangle => ({
  top: startRow,
  left: startColumn,
  bottom: endRow,
  right: endColumn,
});
