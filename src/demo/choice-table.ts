// Choices side by side: a row each, its label, what is typed of it, and what follows.
import type { Cell } from '../core/kinds';
import type { PlanCell, Role } from '../sheet/plan';
import { row } from './sheet-rows';

/** The cells of a choice, from its label on, for the row in which it stands; undefined leaves a cell to a table. */
export type ChoiceCells = (row: number) => readonly (Cell | undefined)[];

/** @param inputs how many cells behind the label are typed; the others are worked out. */
export function choiceTable(
  top: number,
  heads: readonly string[],
  inputs: number,
  choices: readonly ChoiceCells[],
  format: string,
): PlanCell[] {
  const header = heads.map((): Role => 'header');
  const roles = heads.map((_, column): Role => (column === 0 ? 'label' : column <= inputs ? 'input' : 'result'));
  return [...row(top, header, heads), ...choices.flatMap((cells, i) => row(top + 1 + i, roles, cells(top + 1 + i), format))];
}
