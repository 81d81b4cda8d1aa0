// A formula that a file holds once for many cells, as it reads in each of them.
import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';

/** The formula of a cell with its references counted from there. */
export const fromPlace = (formula: string, at: string): string => translateFormulaToR1C1(formula, at);

/** The same in another cell. What would lie beyond the edge of the sheet is #REF!. */
export const inPlace = (counted: string, at: string): string => translateFormulaToA1(counted, at, { wrapEdges: false });
