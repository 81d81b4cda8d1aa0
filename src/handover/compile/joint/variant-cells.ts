// The cells with the inputs of variants, and what is asked of them.
import type { Cell } from '../../../core/kinds';
import type { Output } from '../../../joint/outputs';
import type { Variant } from '../../../joint/variant';
import type { FormulaNode } from '../../../sheet/formula';

export interface CallCell {
  readonly sheet: string;
  readonly at: string;
  readonly node: FormulaNode;
}

/** One variant in its cells: names, and where the value of each stands. */
export interface VariantCells {
  readonly names: readonly string[];
  readonly label: Cell;
  at(i: number): SheetPlace;
}

export interface WantedVariant extends VariantCells {
  readonly variant: Variant;
  readonly outputs: readonly Output[];
  /** What its state is about. */
  readonly judgedWith: readonly Output[];
  /** The call that asks first: `Variants B18`. */
  readonly from: string;
}

export interface SheetPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The cells of a variant. */
export const keyOf = ({ names, at }: VariantCells): string => names.map((_, i) => Object.values(at(i)).join(' ')).join();
