// What every part of a conversion works with: the values of the workbook, the sheets that are written, what changed.
import type { FormulaNode } from '../../sheet/formula';
import type { WorkbookValues } from '../../sheet/workbook-values';
import type { SourceWords } from '../words/source-words';
import type { DataSheet } from './data-sheet';
import { StepBlock } from './step-block';
import type { TablesSheet } from './tables-sheet';

/** A cell that held text with units and becomes a number. */
export interface Converted {
  readonly value: number;
  readonly unit: string;
  readonly typed: string;
}

export interface ConversionContext {
  readonly source: WorkbookValues;
  /** The steps of the call that is written. */
  readonly steps: StepBlock;
  readonly tables: TablesSheet;
  readonly data: DataSheet;
  /** In which it is told where a value comes from. */
  readonly sourceWords: SourceWords;
  /** `Sheet!B4` -> the number that takes the place of its text. */
  readonly converted: Map<string, Converted>;
  /** Calls inside arguments, already worked out, by where they stand. */
  readonly inner: ReadonlyMap<FormulaNode, string>;
}

/** What does not change from call to call. */
export type SharedContext = Omit<ConversionContext, 'inner' | 'steps'>;

/** For one call: its fields alone, as there are many calls. */
export const contextOf = (
  { source, tables, data, sourceWords, converted }: SharedContext,
  inner: ConversionContext['inner'],
): ConversionContext => ({
  source,
  tables,
  data,
  sourceWords,
  converted,
  inner,
  steps: new StepBlock(),
});
