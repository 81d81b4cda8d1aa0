// What a task wants on a sheet, as plain data. Hosts only apply it.
import type { Cell, Limits } from '../core/kinds';

/** What a cell is for; a host turns the role into its looks. */
export type Role = 'title' | 'heading' | 'text' | 'label' | 'input' | 'unit' | 'note' | 'result' | 'header' | 'caution';

/** The cells that one formula fills: it works on ranges cell by cell. */
export interface FilledRange {
  /** `E1:E5` */
  readonly range: string;
  /** The formula sizes it anew, where a program can. */
  readonly isDynamic?: true;
}

export interface PlanCell {
  /** `B4`: column letters and row number. */
  readonly at: string;
  /** The value; beside a formula, the value it has now. */
  readonly value?: Cell;
  /** A formula with its equals sign, in the form every spreadsheet host reads: `=ENCL.BOSS.OD(B4, B5)`. */
  readonly formula?: string;
  /** Of a formula that reads its own row: the same with `ROW` in place of the number of the row. */
  readonly rowForm?: string;
  /** Where it is an array formula. */
  readonly array?: FilledRange;
  readonly role: Role;
  /** A spreadsheet number format: `0.00`. */
  readonly format?: string;
  /** A note shown with the cell. */
  readonly note?: string;
  /** It stays what it is, whatever becomes of what it was worked out from. */
  readonly isFixed?: true;
  /** The sheet to which a click on it leads. */
  readonly link?: string;
}

/** What a cell accepts when someone types into it. */
export interface Validation extends Limits {
  readonly range: string;
  /** Shown when the cell is selected and when an entry is refused. */
  readonly words: string;
  /** A range with the words to choose from, `Data!$A$2:$A$9`. */
  readonly list?: string;
}

export interface Print {
  /** A4 if left out. */
  readonly paper?: 'A4' | 'Letter';
  readonly landscape?: boolean;
  /** Rows repeated on every page, from the first. */
  readonly repeatRows?: number;
  /** Rows, as people count, after which a page ends. */
  readonly breakAfter?: readonly number[];
  /** Made for its paper: read in type of 8 points or more, whatever font the columns are measured by. */
  readonly isScaled?: true;
  /** Words of the page number, `Page` and `of`, in another language. */
  readonly pageWords?: readonly [page: string, of: string];
  /** It is not for paper: a program that prints it all the same prints these words alone. */
  readonly screenOnly?: string;
}

/** A picture over the cells. */
export interface Picture {
  readonly at: string;
  readonly png: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Rows from there on that share its height; without them it lies over whatever is there. */
  readonly rows?: number;
  /** What it shows, for those who do not see it. */
  readonly words: string;
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
  /** Ranges in which a state word (pass, review, fail, not checked) gets its colour. */
  readonly stateRanges?: readonly string[];
  readonly validations?: readonly Validation[];
  /** A guard against slips, without a password: all but the inputs. */
  readonly isLocked?: boolean;
  readonly print?: Print;
  readonly pictures?: readonly Picture[];
  /** Height of a field that is filled in by hand, in points. */
  readonly writingPt?: number;
}

/** A defined name, and what it stands for: `Joint!$B$4`. */
export interface DefinedName {
  readonly name: string;
  readonly meaning: string;
  /** The sheet on which alone it holds. */
  readonly sheet?: string;
}

export interface WorkbookPlan {
  readonly name: string;
  readonly sheets: readonly SheetPlan[];
  readonly names?: readonly DefinedName[];
}
