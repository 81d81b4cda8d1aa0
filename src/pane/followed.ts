// What the selected cell is about, as the pane holds it.
import type { CalculationState, Selection } from '../sheet/port';
import type { JointHere } from './find-joint';
import type { Stack } from './find-stack';
import type { Study } from './find-study';
import type { KnownSheets } from './workbook';

export interface AtSelection {
  readonly found: JointHere;
  readonly stack: Stack | undefined;
  /** The last one that was selected, of the same sheet. */
  readonly study: Study | undefined;
  /** Whether the selected cell is not about another. */
  readonly isOfStudy: boolean;
  readonly calculation: CalculationState;
  /** Cells of the sheet, where it is too large to be read as a whole. */
  readonly largeSheet: number | undefined;
  /** What was read of the workbook, as it was then. */
  readonly known: KnownSheets;
}

/** With the cell itself. */
export interface Followed extends AtSelection {
  readonly selection: Selection | null;
  /** So often cells had another content or value: what was read of them is old. */
  readonly edits: number;
}

export const NOTHING_YET: AtSelection = {
  found: undefined,
  stack: undefined,
  study: undefined,
  isOfStudy: false,
  calculation: 'settled',
  largeSheet: undefined,
  known: new Map(),
};

/** So long after the last cell was worked out the sheet is taken to be at rest. */
export const SETTLED_MS = 250;
