// Stacks of tolerances: an unequal tolerance counts as half its width about its middle.
import { abs, countWidths, min, normalTail, sqrt, sumProducts, sumSquaredWidths, sumWidths } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';
import type { LimitMm } from '../read/limit';

/**
 * Nominal G of a stack, mm.
 * v_i values, mm; a_i sensitivities.
 * STACK.NOMINAL accepts lists of equal counts.
 * Source: Shigley’s Mechanical Engineering Design, 9th ed., p. 20: worst case of a stack (read in 1 secondary copy).
 */
export function stackNominalMm(valuesMm: readonly number[], sensitivities: readonly number[]): number {
  return sumProducts(sensitivities, valuesMm);
}

/**
 * Where the middle of the limits of a stack lies, counted from the nominal, mm.
 * t_i tolerances, mm; a_i sensitivities.
 * Limits: as STACK.TABLE has them. Source: as STACK.TABLE.
 */
export function stackShiftMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return (sumProducts(sensitivities, tolerances.upperMm) + sumProducts(sensitivities, tolerances.lowerMm)) / 2;
}

/**
 * Worst case ± t of a stack, mm. An asymmetric tolerance counts as half its width about its middle.
 * t_i tolerances, mm; a_i sensitivities.
 * STACK.WORST accepts lists of equal counts.
 * Source: Shigley’s Mechanical Engineering Design, 9th ed., p. 20: worst case of a stack (read in 1 secondary copy).
 */
export function stackWorstMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return sumWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm) / 2;
}

/**
 * Root sum square ± t of a stack before inflation and without a bound, mm.
 * t_i tolerances, mm; a_i sensitivities.
 * Limits: as STACK.RSS has them. Source: root sum square of independent deviations (read in several secondary copies).
 */
export function rootSumSquareMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return sqrt(sumSquaredWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm)) / 2;
}

/**
 * Inflated root sum square ± t of a stack, at most its worst case, mm; it takes the dimensions as independent.
 * t_i tolerances, mm; a_i sensitivities; k inflation.
 * STACK.RSS accepts k at least 1; lists of equal counts.
 * Source: root sum square of independent deviations (read in several secondary copies);
 * inflated root sum square: SAE paper 680490, 1968, factor 1.5; others 1.4 to 1.8 (read in 1 secondary copy).
 */
export function stackRssMm(tolerances: Deviations, sensitivities: readonly number[], inflation: number): number {
  return min(inflation * rootSumSquareMm(tolerances, sensitivities), stackWorstMm(tolerances, sensitivities));
}

/**
 * Modified root sum square ± t of a stack, at most its worst case, mm; it takes the dimensions as independent.
 * t_i tolerances, mm; a_i sensitivities.
 * STACK.MODIFIED accepts lists of equal counts.
 * Source: P. Drake, Dimensioning and Tolerancing Handbook, 1999, ch. 9: computed factor (from memory; agrees with one printed result).
 */
export function stackModifiedMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  const worstMm = stackWorstMm(tolerances, sensitivities);
  const rssMm = stackRssMm(tolerances, sensitivities, 1);
  const links = countWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm);
  return links <= 1 ? worstMm : min(rssMm + (0.5 * (worstMm - rssMm)) / (sqrt(links) - 1), worstMm);
}

/**
 * Half the width of the tolerance of one link, as it counts in the stack, mm.
 * t_i tolerance, mm; a_i sensitivity.
 * Limits: as STACK.TABLE has them. Source: as STACK.TABLE.
 */
export function linkHalfMm(tolerance: Deviation, sensitivity: number): number {
  return (abs(sensitivity) * (tolerance.upperMm - tolerance.lowerMm)) / 2;
}

/**
 * Share of the variance of a stack that one link has.
 * t_i half width as it counts, mm; t root sum square of the stack, mm.
 * Limits: as STACK.SHARE has them. Source: as STACK.SHARE.
 */
export function linkShare(halfMm: number, rssMm: number): number {
  return (halfMm / rssMm) ** 2;
}

/**
 * One link of a stack: value, upper and lower deviation, mm, sensitivity, sensitivity × middle and × half width, mm, share of the variance.
 * v_i value, mm; t_i tolerance, mm; a_i sensitivity; t root sum square of the stack, mm.
 * Limits: as STACK.TABLE has them. Source: as STACK.TABLE.
 */
export function stackLink(valueMm: number, tolerance: Deviation, sensitivity: number, rssMm: number): (number | string)[] {
  const middleMm = valueMm + (tolerance.upperMm + tolerance.lowerMm) / 2;
  const halfMm = linkHalfMm(tolerance, sensitivity);
  return [
    valueMm,
    tolerance.upperMm,
    tolerance.lowerMm,
    sensitivity,
    sensitivity * middleMm,
    halfMm,
    rssMm === 0 ? '–' : linkShare(halfMm, rssMm),
  ];
}

/**
 * A whole stack by one method: nominal, upper and lower deviation, mm, no sensitivity, middle and half width, mm, no share.
 * G nominal, mm; where the middle lies, counted from it, mm; ± t of the method, mm.
 * Limits: as STACK.TABLE has them. Source: as STACK.TABLE.
 */
export function stackTotal(nominalMm: number, shiftMm: number, halfMm: number): (number | string)[] {
  return [nominalMm, shiftMm + halfMm, shiftMm - halfMm, '–', nominalMm + shiftMm, halfMm, '–'];
}

/**
 * Parts per million outside the limits; the distribution is taken as normal and steady.
 * μ mean, mm; σ standard deviation, mm; L lower limit or "none", mm; U upper limit or "none", mm.
 * STACK.PPM accepts σ above 0 mm; L or U given; U above L.
 * Source: normal distribution by the complementary error function (compared with published values).
 */
export function ppmOutside(meanMm: number, sigmaMm: number, lowerMm: LimitMm, upperMm: LimitMm): number {
  const shareBelow = lowerMm === 'none' ? 0 : normalTail((meanMm - lowerMm) / sigmaMm);
  const shareAbove = upperMm === 'none' ? 0 : normalTail((upperMm - meanMm) / sigmaMm);
  return 1e6 * (shareBelow + shareAbove);
}

/**
 * Capability index C_pk.
 * μ mean, mm; σ standard deviation, mm; L lower limit or "none", mm; U upper limit or "none", mm.
 * STACK.CPK accepts σ above 0 mm; L or U given; U above L.
 * Source: capability index Cpk (read in 2 secondary copies).
 */
export function capability(meanMm: number, sigmaMm: number, lowerMm: LimitMm, upperMm: LimitMm): number {
  // a limit that is not there is never the nearer one
  const roomBelow = lowerMm === 'none' ? 1e99 : (meanMm - lowerMm) / (3 * sigmaMm);
  const roomAbove = upperMm === 'none' ? 1e99 : (upperMm - meanMm) / (3 * sigmaMm);
  return min(roomBelow, roomAbove);
}
