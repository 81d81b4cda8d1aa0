// Cells that follow one another in a column, as ranges: a rule for a thousand cells is one rule.
import type { SheetPlan } from './plan';
import { STATE_LOOKS } from './theme';
import { address, cellPosition } from './addresses';

/** Cells by what they have in common; each run of one column is a range. */
function runs(
  cells: readonly (readonly [at: string, key: string])[],
): { readonly range: string; readonly key: string; readonly first: string }[] {
  const placed = cells.map(([at, key]) => ({ at, key, ...cellPosition(at) })).sort((a, b) => a.column - b.column || a.row - b.row);
  const found: { first: string; column: number; top: number; bottom: number; key: string }[] = [];
  for (const { at, key, row, column } of placed) {
    const last = found[found.length - 1];
    if (last !== undefined && last.column === column && last.bottom === row - 1 && last.key === key) last.bottom = row;
    else found.push({ first: at, column, top: row, bottom: row, key });
  }
  return found.map(({ first, column, top, bottom, key }) => ({
    range: top === bottom ? first : `${first}:${address(bottom, column)}`,
    key,
    first,
  }));
}

const STATES: readonly unknown[] = Object.keys(STATE_LOOKS);

/** Gives the sheet the colours of states where a formula gives a state. */
export function withStates(plan: SheetPlan): SheetPlan {
  const states = plan.cells
    .filter(({ formula, value }) => formula !== undefined && STATES.includes(value))
    .map(({ at }) => [at, ''] as const);
  const ranges = [...(plan.stateRanges ?? []), ...runs(states).map(({ range }) => range)];
  return ranges.length === 0 ? plan : { ...plan, stateRanges: [...new Set(ranges)] };
}
