// The cells with the inputs of variants.
import type { Cell } from '../../../core/kinds';

/** One variant in its cells: names, and where the value of each stands. */
export interface VariantCells {
  readonly names: readonly string[];
  readonly label: Cell;
  at(i: number): SheetPlace;
}

export interface SheetPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The cells of a variant. */
export const keyOf = ({ names, at }: VariantCells): string => names.map((_, i) => Object.values(at(i)).join(' ')).join();
