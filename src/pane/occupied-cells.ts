// What stands where a formula and its table would go.
import type { Cell } from '../core/kinds';
import { address, cellPosition } from '../sheet/addresses';
import { shownCell } from '../help/shown-cell';
import type { Words } from '../words/english';
import type { Grid } from './workbook';

/** A sentence about the cells in the way; undefined where all are free. A formula's own spill is not told from other cells. */
export function occupiedWords(grid: Grid, at: string, answer: Cell | Cell[][] | undefined, W: Words['functions']): string | undefined {
  const { row, column } = cellPosition(at);
  const own = grid[row]?.[column];
  if (own !== undefined && (own.value !== null || own.formula !== undefined)) return W.replaced(at, own.formula ?? shownCell(own.value));
  if (!Array.isArray(answer)) return undefined;
  const used = answer.flatMap((line, r) =>
    line.flatMap((_, c) => ((grid[row + r]?.[column + c]?.value ?? null) === null ? [] : [address(row + r, column + c)])),
  );
  return used.length === 0 ? undefined : W.noRoom(answer.length, answer[0]?.length ?? 0, at, used[0] ?? '');
}
