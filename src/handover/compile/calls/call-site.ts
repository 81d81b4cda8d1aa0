// A call of ours where it stands, and where its results stand on the hand-over.
import type { Card } from '../../../core/card';
import type { Cell } from '../../../core/kinds';
import type { FormulaNode } from '../../../sheet/formula';

export interface CallBlock {
  /** The cells with the results, row by row; a word that never changes stands in quotes. */
  readonly cells: readonly string[];
  /** What the cells hold, where that is not what the call gave at home. */
  readonly values?: readonly Cell[];
  readonly live: boolean;
  /** All of it as one range, titles included, where the cells lie as they are shown. */
  readonly range?: string;
}

export interface CallSite {
  readonly card: Card;
  readonly node: FormulaNode;
  readonly formula: string;
  readonly sheet: string;
  readonly at: string;
}
