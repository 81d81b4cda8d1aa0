// What a task wants on a sheet, as plain data. Hosts only apply it.
import type { Cell } from '../core/kinds';

/** What a cell is for; a host turns the role into its looks. */
export type Role = 'title' | 'heading' | 'text' | 'label' | 'input' | 'unit' | 'note' | 'result' | 'header' | 'caution';

export interface PlanCell {
  /** `B4`: column letters and row number. */
  readonly at: string;
  readonly value?: Cell;
  /** A formula with its equals sign, in the form every spreadsheet host reads: `=ENCL.BOSS.OD(B4, B5)`. */
  readonly formula?: string;
  readonly role: Role;
  /** A spreadsheet number format: `0.00`. */
  readonly format?: string;
  /** A note shown with the cell. */
  readonly note?: string;
}

export interface SheetPlan {
  /** Letters, digits and spaces only: other characters are trouble in some programs. */
  readonly name: string;
  /** Column widths in characters of the default font, from column A. */
  readonly widths: readonly number[];
  readonly frozenRows?: number;
  readonly cells: readonly PlanCell[];
  /** Ranges (`A1:F1`) that are one cell. */
  readonly merged?: readonly string[];
  /** Ranges in which a state word (pass, look, fail, not checked) gets its colour. */
  readonly stateRanges?: readonly string[];
}

export interface WorkbookPlan {
  readonly name: string;
  readonly sheets: readonly SheetPlan[];
}
