/** What happened to one cell: a call of ours, a formula that not every program reads, or something that had to change. */
export interface HandoverFinding {
  readonly sheet: string;
  /** Undefined where it is about the whole sheet. */
  readonly at: string;
  readonly what: 'live' | 'value, not live' | 'not in every program' | 'another add-in' | 'not worked out here' | 'error' | 'changed';
  readonly words: string;
  /** How many values of ours: a table has many. */
  readonly values?: number;
}
