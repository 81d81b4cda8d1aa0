// The types that everything else speaks: answers, refusals, sources, tables, cards.

/** What a cell can hold. */
export type Cell = number | string | boolean;

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

/** How a value is held: `read in N secondary copies`, `from memory`, `computed from …`, `common practice`. */
export type Held = string;

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

// ---- published tables -------------------------------------------------------------------------------------------

export interface Column {
  /** Short camelCase name used by the core: `dkMax`, `majorMin`, `pitch`. */
  readonly key: string;
  /** What the standard calls it: `head diameter dk`. */
  readonly title: string;
  readonly limit?: 'max' | 'min' | 'nominal' | 'sharp' | 'approx';
  readonly unit: string;
  readonly held: Held;
  readonly note?: string;
}

/** One value of a published table. */
export interface TableValue {
  readonly table: Table;
  readonly row: string;
  readonly key: string;
}

/** A value read from a table, as it stands, times a factor, or a number over it. A sum of them is a result. */
export interface Reading extends TableValue {
  readonly times?: number;
  readonly over?: number;
  /** The row is the band "over … up to" for this argument, counted from 0. */
  readonly bandOf?: number;
  /** The table gives nothing up to this size. */
  readonly above?: number;
}

/** One published table: rows in the order of the source, digits as printed, a gap is null. */
export interface Table {
  readonly standard: string;
  readonly edition: string;
  readonly subject: string;
  readonly table: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly [key: string, ...values: (number | null)[]])[];
  /** Single values that are held in another way than their column. */
  readonly exceptions?: readonly { readonly row: string; readonly key: string; readonly held: Held; readonly note?: string }[];
}
