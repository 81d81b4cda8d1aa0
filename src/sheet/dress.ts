// Looks for cells that are there already, as plain data: nothing in it is written into a cell.
import type { PlanCell } from './plan';

/** Words to choose from; others may be typed as well. */
export interface DropDown {
  readonly range: string;
  readonly choices: readonly string[];
  readonly words: string;
}

export interface Dress {
  readonly sheetName: string;
  /** Cells that get the looks of a role: they have their own again when it is taken off. */
  readonly cells: readonly Pick<PlanCell, 'at' | 'role'>[];
  /** Number formats by range. */
  readonly formats: readonly { readonly range: string; readonly format: string }[];
  readonly stateRanges: readonly string[];
  readonly wrapped: readonly string[];
  readonly dropDowns: readonly DropDown[];
}

/** Excel takes no longer list of words. */
export const LONGEST_CHOICES = 255;
