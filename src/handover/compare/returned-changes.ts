// What a comparison finds.
import type { Measured } from './forms';
import type { Meaning } from './typed-number';

export interface Effect {
  readonly sheet: string;
  readonly at: string;
  readonly label: string;
  readonly before: string;
  readonly after: string;
}

export interface Change {
  readonly sheet: string;
  /** Where it was sent; what was added, where it came back. */
  readonly at: string;
  /** What the cell is called. */
  readonly label: string;
  readonly sent: string;
  readonly returned: string;
}

/** An input that can be taken over. */
export interface ChangedInput extends Change, Meaning {
  /** A program took what was typed for a day or a time: its number is not what was meant. */
  readonly becameDate?: true;
}

/** A row, column, block of cells or sheet as a whole. */
export interface Rearranged {
  readonly sheet: string;
  readonly what: 'row' | 'column' | 'cells' | 'sheet';
  readonly how: 'inserted' | 'deleted' | 'moved' | 'renamed' | 'added' | 'missing';
  readonly words: string;
}

export interface ReturnedChanges {
  readonly changedInputs: readonly ChangedInput[];
  readonly changedFormulas: readonly Change[];
  /** Fields of the cover and of the characteristics that were filled in. */
  readonly answers: readonly Change[];
  readonly results: readonly Measured[];
  readonly comments: readonly Change[];
  readonly colours: readonly Change[];
  readonly rearranged: readonly Rearranged[];
  /** Cells that came back empty. */
  readonly missing: readonly Omit<Change, 'returned'>[];
  /** What all that does: states first, then characteristics, then all else that was worked out. */
  readonly effects: readonly Effect[];
}
