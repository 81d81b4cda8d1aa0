// How much of a sheet is read round a cell, and parts of sheets made from a whole one.
import { type Area, cellPosition, common, LAST_PLACE, type Rectangle } from './addresses';
import type { Around, Selection, SheetCell, SheetPart } from './port';

/** Rows and columns to each side of the selected cell. */
const REACH = 40;
/** Rows at the top of a region in which names stand. */
export const HEAD_ROWS = 12;
/** Cells of areas that are read at once without asking. */
export const MOST_CELLS = 20_000;

/** The rectangle round a cell that is read with it. */
export function windowRound(at: string, reach = REACH): Rectangle {
  const { row, column } = cellPosition(at);
  return {
    top: Math.max(0, row - reach),
    left: Math.max(0, column - reach),
    bottom: Math.min(LAST_PLACE.row, row + reach),
    right: Math.min(LAST_PLACE.column, column + reach),
  };
}

/** What must be known round a cell before it is left unread. */
export const heartRound = (at: string): Rectangle => windowRound(at, REACH / 2);

type PartReader = (rectangle: Rectangle) => readonly (readonly SheetCell[])[];

/** A part of a sheet that is at hand as a whole. */
export function partOf(covers: Area, used: Rectangle | null, read: PartReader): SheetPart {
  const filled = used === null ? undefined : common(covers, used);
  return { covers, top: filled?.top ?? 0, left: filled?.left ?? 0, cells: filled === undefined ? [] : read(filled) };
}

/** What stands round a cell of a sheet that is at hand as a whole. */
export function aroundIn({ sheetName, at }: Selection, used: Rectangle | null, read: PartReader): Around {
  const window = windowRound(at);
  const head = { ...window, top: 0, bottom: HEAD_ROWS - 1 };
  const parts = [head, window].map(covers => partOf({ sheet: sheetName, ...covers }, used, read));
  return { parts, used, calculation: 'settled' };
}
