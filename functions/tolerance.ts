import { cell } from './cell';

/**
 * Full width of an ISO 286-1 tolerance grade, mm.
 * @customfunction TOL.IT
 * @param size Nominal size, mm or text with unit
 * @param grade Grade: "IT11" or 11
 * @returns Tolerance width, mm
 */
export function tolIt(size: any, grade: any): any {
  return cell('TOL.IT', [size, grade]);
}

/**
 * General tolerance of a length by ISO 2768-1, ± mm.
 * @customfunction TOL.GENERAL
 * @param size Nominal size, mm or text with unit
 * @param tolerance_class Class in quotes: "f", "m", "c" or "v"
 * @returns Half width, mm
 */
export function tolGeneral(size: any, tolerance_class: any): any {
  return cell('TOL.GENERAL', [size, tolerance_class]);
}

/**
 * Tolerance of a moulded length, ± mm, by group or by your own table.
 * @customfunction TOL.MOULDED
 * @param size Nominal size, mm or text with unit
 * @param group "DIN 16901-130", "DIN 16742-TG6", or your table: upper limit of size, ± same, ± across
 * @param [tooling] "same": one mould half holds the size; "across": two do; "across" if omitted
 * @returns Half width, mm
 */
export function tolMoulded(size: any, group: any[][], tooling?: any): any {
  return cell('TOL.MOULDED', [size, group, tooling]);
}

/**
 * Nominal result of a stack, mm: the sum of values × sensitivities.
 * @customfunction STACK.NOMINAL
 * @param values Links of the stack with their sign, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @returns Nominal, mm
 */
export function stackNominal(values: any[][], sensitivities?: any[][]): any {
  return cell('STACK.NOMINAL', [values, sensitivities]);
}

/**
 * Worst-case half width of a stack, mm: every link at its limit.
 * @customfunction STACK.WORST
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @returns Half width, mm
 */
export function stackWorst(tolerances: any[][], sensitivities?: any[][]): any {
  return cell('STACK.WORST', [tolerances, sensitivities]);
}

/**
 * Root-sum-square half width of a stack, mm, never above the worst case.
 * @customfunction STACK.RSS
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @param [inflation] Factor on the result for links that are not centred, a number from 1; 1 if omitted
 * @returns Half width, mm
 */
export function stackRss(tolerances: any[][], sensitivities?: any[][], inflation?: any): any {
  return cell('STACK.RSS', [tolerances, sensitivities, inflation]);
}

/**
 * Modified root-sum-square half width of a stack, mm, between the plain one and the worst case.
 * @customfunction STACK.MODIFIED
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @returns Half width, mm
 */
export function stackModified(tolerances: any[][], sensitivities?: any[][]): any {
  return cell('STACK.MODIFIED', [tolerances, sensitivities]);
}

/**
 * Share of each link in the variance of a stack, a fraction.
 * Spills as one column.
 * @customfunction STACK.SHARE
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @returns Shares, fractions
 */
export function stackShare(tolerances: any[][], sensitivities?: any[][]): any[][] {
  return cell('STACK.SHARE', [tolerances, sensitivities]) as any[][];
}

/**
 * The whole stack with its totals, mm: nominal, worst case, root sum square and shares.
 * Spills as a table.
 * @customfunction STACK.TABLE
 * @param labels Name of each link, a row or column of text
 * @param values Links of the stack with their sign, a row or column, mm or text; "0 mm" for a zero
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param [sensitivities] Sensitivity of each link, +1, −1 or another number; 1 if omitted
 * @returns Table with a header row
 */
export function stackTable(labels: any[][], values: any[][], tolerances: any[][], sensitivities?: any[][]): any[][] {
  return cell('STACK.TABLE', [labels, values, tolerances, sensitivities]) as any[][];
}

/**
 * A stack drawn many times: mean, deviation, end points in mm, share inside, ppm outside.
 * Spills as a table.
 * The same seed gives the same answer everywhere.
 * @customfunction STACK.SIMULATE
 * @param values Links of the stack with their sign, a row or column, mm or text; "0 mm" for a zero
 * @param tolerances ± half widths of the links, a row or column, mm or text; "0 mm" for a zero
 * @param sensitivities Sensitivity of each link, +1, −1 or another number; one for all will do
 * @param lower Lower limit of the result, mm or text, or "none"; a blank is 0
 * @param upper Upper limit of the result, mm or text, or "none"; a blank is 0
 * @param [samples] How many stacks are drawn, a whole number from 1000; 100000 if omitted
 * @param [seed] Start of the random numbers, a whole number; 1 if omitted
 * @param [shape] "normal" (± is 3σ), "uniform" or "triangular"; "normal" if omitted
 * @returns Table with a header row, 7 × 3
 */
export function stackSimulate(
  values: any[][],
  tolerances: any[][],
  sensitivities: any[][],
  lower: any,
  upper: any,
  samples?: any,
  seed?: any,
  shape?: any,
): any[][] {
  return cell('STACK.SIMULATE', [values, tolerances, sensitivities, lower, upper, samples, seed, shape]) as any[][];
}

/**
 * Parts per million of a normal distribution that fall outside two limits.
 * @customfunction STACK.PPM
 * @param mean Mean, mm or text with unit; a blank is 0
 * @param sigma Standard deviation, mm or text with unit
 * @param lower Lower limit, mm or text, or "none"; a blank is 0
 * @param upper Upper limit, mm or text, or "none"; a blank is 0
 * @returns Parts per million
 */
export function stackPpm(mean: any, sigma: any, lower: any, upper: any): any {
  return cell('STACK.PPM', [mean, sigma, lower, upper]);
}

/**
 * Capability index Cpk of a normal distribution between two limits, a ratio.
 * @customfunction STACK.CPK
 * @param mean Mean, mm or text with unit; a blank is 0
 * @param sigma Standard deviation, mm or text with unit
 * @param lower Lower limit, mm or text, or "none"; a blank is 0
 * @param upper Upper limit, mm or text, or "none"; a blank is 0
 * @returns Capability index
 */
export function stackCpk(mean: any, sigma: any, lower: any, upper: any): any {
  return cell('STACK.CPK', [mean, sigma, lower, upper]);
}
