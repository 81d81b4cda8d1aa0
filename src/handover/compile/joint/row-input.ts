// What a row of a variant is given.
import { isBlank } from '../../../core/read/cells';
import type { Known } from '../../../sheet/workbook-values';
import { sameAs } from '../inputs';

export interface RowInput {
  readonly cell: string;
  /** As the cell has it on the hand-over: a text with units is a number there. */
  readonly typed: Known;
  /** Conditions that hold while it is as it was sent. Undefined where that cannot be told. */
  readonly asSent: readonly string[] | undefined;
}

export const rowInput = (cell: string, typed: Known): RowInput => ({ cell, typed, asSent: sameAs(cell, typed) });

export const takesDefault = (typed: Known): boolean =>
  isBlank(typed) || (typeof typed === 'string' && typed.trim().toLowerCase() === 'default');
