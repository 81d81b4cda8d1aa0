import { cell } from './cell';

/**
 * State of a value against an upper limit: pass, review, fail or not checked.
 * @customfunction CHECK.MAX
 * @param value Value, a number or text with unit; a blank, 0 or error is not checked; "0 mm" for a zero
 * @param limit Upper limit, a number or text with unit; above it the value fails
 * @param [review] Above this the state is review, a number or text with unit; no such band if omitted
 * @returns State
 */
export function checkMax(value: any, limit: any, review?: any): any {
  return cell('CHECK.MAX', [value, limit, review]);
}

/**
 * State of a value against a lower limit: pass, review, fail or not checked.
 * @customfunction CHECK.MIN
 * @param value Value, a number or text with unit; a blank, 0 or error is not checked; "0 mm" for a zero
 * @param limit Lower limit, a number or text with unit; below it the value fails
 * @param [review] Below this the state is review, a number or text with unit; no such band if omitted
 * @returns State
 */
export function checkMin(value: any, limit: any, review?: any): any {
  return cell('CHECK.MIN', [value, limit, review]);
}

/**
 * State of a gap against nothing: below 0 it fails, and touching is no clearance.
 * @customfunction CHECK.CLEAR
 * @param value Gap, a number or text with unit; a blank, 0 or error is not checked; "0 mm" fails
 * @param [review] Up to this the state is review, a number or text with unit; no such band if omitted
 * @returns State
 */
export function checkClear(value: any, review?: any): any {
  return cell('CHECK.CLEAR', [value, review]);
}

/**
 * Worst of several states: fail, then not checked, then review, then pass.
 * @customfunction CHECK.WORST
 * @param states Range of states; blank cells and unknown words count as not checked
 * @returns State
 */
export function checkWorst(states: any[][]): any {
  return cell('CHECK.WORST', [states]);
}

/**
 * Rules for the boss of a joint: value, limit, state, source and remedy of each.
 * Spills as a table.
 * @customfunction CHECK.BOSS
 * @param inputs Joint inputs: two columns of name and value, or a header row and one row of values
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row
 */
export function checkBoss(inputs: any[][], base?: any[][]): any[][] {
  return cell('CHECK.BOSS', [inputs, base]) as any[][];
}

/**
 * All rules of a joint: value, limit, state, source and remedy of each.
 * Spills as a table.
 * @customfunction CHECK.JOINT
 * @param inputs Joint inputs: two columns of name and value, or a header row and one row of values
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row
 */
export function checkJoint(inputs: any[][], base?: any[][]): any[][] {
  return cell('CHECK.JOINT', [inputs, base]) as any[][];
}
