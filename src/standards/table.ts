// What a published table is: its columns, rows and what it says of itself; and one value read from it.

/** How a value is held: `read in N secondary copies`, `from memory`, `computed from …`, `common practice`. */
export type Held = string;

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
