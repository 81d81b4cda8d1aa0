// What a variant table and its figures hand to other sheets: cells with formula, value and limits.
import type { Cell } from '../../../core/kinds';
import type { Section } from '../../../figure/section';
import type { Method } from '../measuring';

/** A formula without the equals sign, and what it is worth. */
export interface Limit {
  readonly formula: string;
  readonly value: Cell;
}

/** One cell of the spilled table: what stands there on the hand-over. */
export interface TableCell {
  /** The output. */
  readonly name: string;
  /** Without the equals sign; undefined where the value does not follow. */
  readonly formula?: string;
  readonly value: Cell;
  readonly unit: string;
  /** What a rule asks of this output. */
  readonly lower?: Limit;
  readonly upper?: Limit;
}

/** What can be measured on a part, with the limits that its tolerance gives. */
export interface MeasuredSize extends TableCell {
  readonly method: Method;
  readonly toleranceMm?: number;
}

export interface VariantLine {
  /** What the variant is called beside its inputs. */
  readonly label: string;
  /** The cell with the call: `Variants B18`. */
  readonly from: string;
  readonly state: TableCell;
  /** All that is wrong with it; some variants have none. */
  readonly reasons?: TableCell;
  readonly isChosen: boolean;
}

/** A variant that the part is made by. */
export interface ChosenVariant extends VariantLine {
  readonly measured: readonly MeasuredSize[];
  /** With numbers in balloons for some names of the joint. */
  readonly drawn: (numbers: ReadonlyMap<string, string>) => Section;
}

export interface JointTable {
  readonly sheet: string;
  /** Row r, column c of the spilled table; row 0 is its header. */
  cell(r: number, c: number): TableCell;
  /** Cell that says whether the inputs of a row without formulas are as they were sent. */
  sentIf(r: number): string | undefined;
}
