import { cell } from './cell';

/**
 * Every combination of the values in several lists, a row each.
 * Spills as a table.
 * Lists headed by joint input names make a table for JOINT.TABLE.
 * @customfunction VARIANT.GRID
 * @param list1 Values to combine, a row or column; a joint input name may head it
 * @param [list2] Second list of values; none if omitted
 * @param [list3] Third list of values; none if omitted
 * @param [list4] Fourth list of values; none if omitted
 * @param [list5] Fifth list of values; none if omitted
 * @param [list6] Sixth list of values; none if omitted
 * @param [list7] Seventh list of values; none if omitted
 * @param [list8] Eighth list of values; none if omitted
 * @returns Table, at most 5,000 rows
 */
export function variantGrid(
  list1: any[][],
  list2?: any[][],
  list3?: any[][],
  list4?: any[][],
  list5?: any[][],
  list6?: any[][],
  list7?: any[][],
  list8?: any[][],
): any[][] {
  return cell('VARIANT.GRID', [list1, list2, list3, list4, list5, list6, list7, list8]) as any[][];
}

/**
 * Rank of each variant by a weighted sum of its scaled columns; 1 is best.
 * Spills as one column.
 * @customfunction VARIANT.RANK
 * @param table Numbers to compare, one row per variant, without a header
 * @param directions "max" or "min" for each column: which is better
 * @param weights Weight of each column, a number; one for all will do
 * @param [states] State of each variant: a fail ranks behind all others; ignored if omitted
 * @returns Ranks
 */
export function variantRank(table: any[][], directions: any[][], weights: any[][], states?: any[][]): any[][] {
  return cell('VARIANT.RANK', [table, directions, weights, states]) as any[][];
}

/**
 * TRUE for each variant that no other one beats in every column.
 * Spills as one column.
 * @customfunction VARIANT.FRONT
 * @param table Numbers to compare, one row per variant, without a header
 * @param directions "max" or "min" for each column: which is better
 * @returns TRUE or FALSE
 */
export function variantFront(table: any[][], directions: any[][]): any[][] {
  return cell('VARIANT.FRONT', [table, directions]) as any[][];
}
