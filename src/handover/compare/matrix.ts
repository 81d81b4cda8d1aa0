// A formula that fills several cells, and what came back where some of them were written over.
import { cellPosition, holds, rectangleOf } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { FilledRange } from '../../sheet/plan';
import type { PageWords } from '../words/english';
import type { SeenGrid } from './seen';

/** Cells that a formula elsewhere fills, each with the cell of that formula. */
export function filledFrom({ sheet }: SeenGrid): ReadonlyMap<string, string> {
  const from = new Map<string, string>();
  const areas = [...sheet.cells].flatMap(([at, { array }]) => (isMatrix(array) ? [{ at, area: rectangleOf(array.range) }] : []));
  if (areas.length === 0) return from;
  for (const place of sheet.cells.keys()) {
    const found = areas.find(({ at, area }) => at !== place && holds(area, cellPosition(place)));
    if (found !== undefined) from.set(place, found.at);
  }
  return from;
}

/** A call that needs what it fills at the time is no matrix. */
export const isMatrix = (array: FilledRange | undefined): array is FilledRange => array?.range.includes(':') === true;

/** `=D3:D5/5 over B3:B5` */
export function matrixWords(grid: SeenGrid, at: string, { compare }: PageWords): string {
  const { row, column } = cellPosition(at);
  const { formula = '', array } = grid.cell(row, column);
  return cellText(compare.over(formula, array?.range ?? at));
}
