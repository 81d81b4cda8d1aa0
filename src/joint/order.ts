// In which order the rows of a table are worked out: those that share most follow one another, and what they share is kept.
import type { CellRange } from '../core/kinds';
import type { Header } from './headings';
import { madeOf, slotOf } from './slots';

/** Two rows share the same in either order. */
const TOO_FEW = 3;
/** The first rows tell whether what stands in a column comes again. */
const LOOKED_AT = 32;

/** The places of the rows, grouped by the input on which most is made, within its groups by the next. */
export function workingOrder({ headings, columns }: Header, rows: CellRange): readonly number[] {
  const inTurn = rows.map((_, place) => place);
  if (rows.length < TOO_FEW) return inTurn;
  const first = rows.slice(0, LOOKED_AT);
  const sorting = headings
    .map(({ name }, i) => ({ name, column: columns[i] ?? 0 }))
    .filter(({ column }) => comesAgain(first, column))
    .map(({ name, column }) => ({ column, makes: madeOf(slotOf(name)).slots().length }))
    .sort((a, b) => b.makes - a.makes);
  let groups: readonly (readonly number[])[] = [inTurn];
  for (const { column } of sorting) groups = groups.flatMap(group => split(group, rows, column));
  return groups.flat();
}

/** In several rows, and not everywhere: what hardly comes again is not worth its search. */
function comesAgain(first: CellRange, column: number): boolean {
  const different = new Set(first.map(row => row[column])).size;
  return different > 1 && different <= first.length / 2;
}

function split(group: readonly number[], rows: CellRange, column: number): readonly (readonly number[])[] {
  if (group.length < TOO_FEW) return [group];
  const byCell = new Map<unknown, number[]>();
  for (const place of group) {
    const cell = rows[place]?.[column];
    const same = byCell.get(cell);
    if (same === undefined) byCell.set(cell, [place]);
    else same.push(place);
  }
  return [...byCell.values()];
}
