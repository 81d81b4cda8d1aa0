// What a variant table and its figures hand to other sheets: cells with formula, value and limits.
import type { Cell } from '../../../core/kinds';
import type { LegendEntry, Section } from '../../../figure/section';

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

/** A variant as a section with letters, and what the letters stand for as values that stay live. */
export interface JointFigure extends Omit<Section, 'legend'> {
  /** What the variant is called beside its inputs. */
  readonly label: string;
  /** The cell with the call: `Variants B18`. */
  readonly from: string;
  readonly state: TableCell;
  readonly reason: TableCell;
  /** Without a cell where there is no value. */
  readonly legend: readonly (LegendEntry & { readonly cell?: TableCell })[];
}

export interface Figures {
  readonly shown: readonly JointFigure[];
  /** Variants that found no room. */
  readonly left: number;
}

export interface JointTable {
  readonly sheet: string;
  /** Row r, column c of the spilled table; row 0 is its header. */
  cell(r: number, c: number): TableCell;
  /** Cell that says whether the inputs of a row without formulas are as they were sent. */
  sentIf(r: number): string | undefined;
}
