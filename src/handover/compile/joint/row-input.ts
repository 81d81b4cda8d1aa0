// What a row of a variant is given, and how it writes.
import type { Cell } from '../../../core/kinds';
import { isBlank } from '../../../core/read/cells';
import type { PlanCell } from '../../../sheet/plan';
import type { Known } from '../../../sheet/workbook-values';
import { sameAs } from '../inputs';
import type { OfRow } from './row-print';

export interface RowInput {
  readonly cell: string;
  /** As the cell has it on the hand-over: a text with units is a number there. */
  readonly typed: Known;
  /** Conditions that hold while it is as it was sent. Undefined where that cannot be told. */
  readonly asSent: readonly string[] | undefined;
}

/** Puts a formula or value under a title and answers its cell, as the formulas of its row name it: with `ROW`. */
export type WriteCell = (
  title: string,
  words: string,
  formula: string | undefined,
  value: OfRow<Cell | undefined>,
  role?: PlanCell['role'],
) => string;

export const rowInput = (cell: string, typed: Known): RowInput => ({ cell, typed, asSent: sameAs(cell, typed) });

export const takesDefault = (typed: Known): boolean =>
  isBlank(typed) || (typeof typed === 'string' && typed.trim().toLowerCase() === 'default');
