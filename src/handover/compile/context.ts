// What every part of a conversion works with: the values of the workbook, the sheets that are written, what changed.
import type { FormulaNode } from '../../sheet/formula';
import type { Validation } from '../../sheet/plan';
import type { WorkbookValues } from '../../sheet/workbook-values';
import type { DataSheet } from './data-sheet';
import type { StepsSheet } from './steps-sheet';
import type { TablesSheet } from './tables-sheet';

/** A cell that held text with units and becomes a number. */
export interface Converted {
  readonly value: number;
  readonly unit: string;
  readonly typed: string;
}

export interface ConversionContext {
  readonly source: WorkbookValues;
  readonly steps: StepsSheet;
  readonly tables: TablesSheet;
  readonly data: DataSheet;
  /** `Sheet!B4` -> the number that takes the place of its text. */
  readonly converted: Map<string, Converted>;
  /** What each input cell accepts, by sheet and address. */
  readonly validations: Map<string, Validation>;
  /** Calls inside arguments, already worked out, by where they stand. */
  readonly inner: ReadonlyMap<FormulaNode, string>;
}
