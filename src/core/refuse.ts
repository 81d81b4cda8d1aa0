// A refusal on its way up: readers, look-ups and formulas throw it, call() turns it into an answer.
import { type CellError, DATA_TYPE, type ErrorCode, type Refusal } from './kinds';

/** No Error: nobody asks from where it was thrown, and to note that takes longer than most formulas. */
export class Refused {
  constructor(
    readonly code: ErrorCode,
    readonly message: string,
    readonly argument?: string,
  ) {}
}

/** Wrong kind of input, or outside the domain. */
export const wrongInput = (message: string, argument?: string): Refused => new Refused('#VALUE!', message, argument);

/** Not in a table. */
export const notInTable = (message: string, argument?: string): Refused => new Refused('#N/A', message, argument);

const MAX_QUOTED = 60;

/** Text of the user inside a message. */
export const cut = (text: string): string => (text.length > MAX_QUOTED ? `${text.slice(0, MAX_QUOTED - 1)}…` : text);
export const quoted = (text: string): string => `"${cut(text)}"`;

// ---- an error handed in --------------------------------------------------------------------------------------------

const KNOWN: readonly string[] = ['#VALUE!', '#N/A', '#DIV/0!', '#NUM!', '#NULL!', '#NAME?', '#REF!'] satisfies readonly ErrorCode[];
const isKnown = (code: string): code is ErrorCode => KNOWN.includes(code);

/** It comes back as that error where the runtime knows its code. */
export const codeOf = ({ cellError }: CellError): ErrorCode => (isKnown(cellError) ? cellError : '#VALUE!');

/** A code is named, in whatever language; no other text of the host is repeated. */
export const errorName = ({ cellError }: CellError): string =>
  cellError === DATA_TYPE || /^#[\p{Lu}\d/_]{1,20}[!?]?$/u.test(cellError) ? cellError : 'an unknown error';

/** "is #DIV/0!", "holds #SPILL!": what stands behind the name of an argument or the number of a row. */
export function errorWords(error: CellError): string {
  if (error.cellError === DATA_TYPE) return `is ${DATA_TYPE}: refer to one of its fields`;
  return `${isKnown(error.cellError) ? 'is' : 'holds'} ${errorName(error)}`;
}

export function asRefusal(fault: Refused): Refusal {
  const { code, message, argument } = fault;
  return argument === undefined ? { ok: false, code, message } : { ok: false, code, message, argument };
}
