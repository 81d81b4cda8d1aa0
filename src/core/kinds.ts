// What passes between cells and functions: values, errors, answers, refusals; and where a card says that it comes from.
import type { Held } from '../standards/table';

/** What a cell can hold. */
export type Cell = number | string | boolean;

/** A range as it was handed in: rows of whatever its cells hold. */
export type CellRange = readonly (readonly unknown[])[];

/** A value of the host that is neither number, text nor error: an entity, a picture. */
export const DATA_TYPE = 'a data type';

/** An error that was handed in, in the words of the spreadsheet, e.g. `#DIV/0!`, or DATA_TYPE. */
export interface CellError {
  readonly cellError: string;
}

/** The codes that the runtime of Excel knows; of any other it drops the code and the message. */
export type ErrorCode = '#VALUE!' | '#N/A' | '#DIV/0!' | '#NUM!' | '#NULL!' | '#NAME?' | '#REF!';

/** Why a call has no result. `#VALUE!`: wrong input. `#N/A`: not in a table. Any other code: an error handed in. */
export interface Refusal {
  readonly ok: false;
  readonly code: ErrorCode;
  readonly message: string;
  readonly argument?: string;
}

export interface Granted<T> {
  readonly ok: true;
  readonly value: T;
  /** Where the value was taken from, when the text named a table or a material: "ISO 7045 dk max". */
  readonly taken?: string;
}

export type Answer<T> = Granted<T> | Refusal;

/** Where a card says that it comes from, with edition, and how that is held. */
export interface Source {
  readonly title: string;
  readonly held: Held;
}

export type CardKind = 'geometry' | 'standard table' | 'handbook formula' | 'common practice';

export interface Limits {
  readonly above?: number | undefined;
  readonly atLeast?: number | undefined;
  readonly below?: number | undefined;
  readonly atMost?: number | undefined;
}
