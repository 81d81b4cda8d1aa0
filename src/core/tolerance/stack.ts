// Stacks of tolerances: an unequal tolerance counts as half its width about its middle.
import { countWidths, min, normalTail, sqrt, sumProducts, sumSquaredWidths, sumWidths } from '../maths';
import type { Deviations } from '../read/deviation';
import type { LimitMm } from '../read/limit';

export function stackNominalMm(valuesMm: readonly number[], sensitivities: readonly number[]): number {
  return sumProducts(sensitivities, valuesMm);
}

/** Where the middle of the limits lies, counted from the nominal. */
export function stackShiftMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return (sumProducts(sensitivities, tolerances.upperMm) + sumProducts(sensitivities, tolerances.lowerMm)) / 2;
}

export function stackWorstMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return sumWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm) / 2;
}

export function rootSumSquareMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  return sqrt(sumSquaredWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm)) / 2;
}

export function stackRssMm(tolerances: Deviations, sensitivities: readonly number[], inflation: number): number {
  return min(inflation * rootSumSquareMm(tolerances, sensitivities), stackWorstMm(tolerances, sensitivities));
}

export function stackModifiedMm(tolerances: Deviations, sensitivities: readonly number[]): number {
  const worstMm = stackWorstMm(tolerances, sensitivities);
  const rssMm = stackRssMm(tolerances, sensitivities, 1);
  const links = countWidths(sensitivities, tolerances.upperMm, tolerances.lowerMm);
  return links <= 1 ? worstMm : min(rssMm + (0.5 * (worstMm - rssMm)) / (sqrt(links) - 1), worstMm);
}

export function ppmOutside(meanMm: number, sigmaMm: number, lowerMm: LimitMm, upperMm: LimitMm): number {
  const shareBelow = lowerMm === 'none' ? 0 : normalTail((meanMm - lowerMm) / sigmaMm);
  const shareAbove = upperMm === 'none' ? 0 : normalTail((upperMm - meanMm) / sigmaMm);
  return 1e6 * (shareBelow + shareAbove);
}

export function capability(meanMm: number, sigmaMm: number, lowerMm: LimitMm, upperMm: LimitMm): number {
  // a limit that is not there is never the nearer one
  const roomBelow = lowerMm === 'none' ? 1e99 : (meanMm - lowerMm) / (3 * sigmaMm);
  const roomAbove = upperMm === 'none' ? 1e99 : (upperMm - meanMm) / (3 * sigmaMm);
  return min(roomBelow, roomAbove);
}
