// A refusal on its way up: readers, look-ups and formulas throw it, call() turns it into an answer.
import type { Refusal } from './kinds';

export class Refused extends Error {
  constructor(
    readonly code: string,
    message: string,
    readonly argument?: string,
  ) {
    super(message);
  }
}

/** Wrong kind of input, or outside the domain. */
export const wrongInput = (message: string, argument?: string): Refused => new Refused('#VALUE!', message, argument);

/** Not in a table. */
export const notInTable = (message: string, argument?: string): Refused => new Refused('#N/A', message, argument);

export function asRefusal(fault: Refused): Refusal {
  const { code, message, argument } = fault;
  return argument === undefined ? { ok: false, code, message } : { ok: false, code, message, argument };
}
