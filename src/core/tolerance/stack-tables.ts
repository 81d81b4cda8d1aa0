// Tables about a stack: shares, the whole stack with totals, a simulation.
import { sqrt } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';
import type { LimitMm } from '../read/limit';
import { wrongInput } from '../refuse';
import { draws, HALF_WIDTH_IN_DRAWS, type DrawShape } from './draws';
import {
  linkHalfMm,
  linkShare,
  rootSumSquareMm,
  stackLink,
  stackModifiedMm,
  stackNominalMm,
  stackRssMm,
  stackShiftMm,
  stackTotal,
  stackWorstMm,
} from './stack';

type Row = (string | number)[];

const at = (list: readonly number[], i: number): number => list[i] as number;
const toleranceOf = ({ upperMm, lowerMm }: Deviations, i: number): Deviation => ({ upperMm: at(upperMm, i), lowerMm: at(lowerMm, i) });
const halfWidths = (tolerances: Deviations, sensitivities: readonly number[]): number[] =>
  sensitivities.map((a, i) => linkHalfMm(toleranceOf(tolerances, i), a));

/**
 * Share of the variance that each link of a stack has, in one column.
 * t_i tolerances, mm; a_i sensitivities.
 * STACK.SHARE accepts lists of equal counts; tolerances that are all 0 are refused.
 * Source: root sum square of independent deviations (read in several secondary copies).
 */
export function stackShares(tolerances: Deviations, sensitivities: readonly number[]): number[][] {
  const rssMm = rootSumSquareMm(tolerances, sensitivities);
  if (rssMm === 0) throw wrongInput('tolerances: none is above 0, so there is nothing to share', 'tolerances');
  return halfWidths(tolerances, sensitivities).map(halfMm => [linkShare(halfMm, rssMm)]);
}

/**
 * A row a link, then a row a method with the deviations of the whole stack from its nominal, mm.
 * labels of the links; v_i values, mm; t_i tolerances, mm; a_i sensitivities.
 * STACK.TABLE accepts lists of equal counts.
 * Source: Shigley’s Mechanical Engineering Design, 9th ed., p. 20: worst case of a stack (read in 1 secondary copy);
 * root sum square of independent deviations (read in several secondary copies);
 * P. Drake, Dimensioning and Tolerancing Handbook, 1999, ch. 9: computed factor (from memory; agrees with one printed result).
 */
export function stackTable(
  labels: readonly string[],
  valuesMm: readonly number[],
  tolerances: Deviations,
  sensitivities: readonly number[],
): Row[] {
  const rssMm = rootSumSquareMm(tolerances, sensitivities);
  const links = labels.map((label, i): Row => [
    label,
    ...stackLink(at(valuesMm, i), toleranceOf(tolerances, i), at(sensitivities, i), rssMm),
  ]);
  const nominalMm = stackNominalMm(valuesMm, sensitivities);
  const shiftMm = stackShiftMm(tolerances, sensitivities);
  const total = (method: string, halfMm: number): Row => [`total, ${method}`, ...stackTotal(nominalMm, shiftMm, halfMm)];
  return [
    ...links,
    total('worst case', stackWorstMm(tolerances, sensitivities)),
    total('root sum square', stackRssMm(tolerances, sensitivities, 1)),
    total('modified root sum square', stackModifiedMm(tolerances, sensitivities)),
  ];
}

/** So many that a call stays within seconds. */
const MOST_DRAWS = 20_000_000;
const LOW_POINT = 0.00135;
const HIGH_POINT = 0.99865;

/**
 * A simulated stack: mean, standard deviation, 0.135 % and 99.865 % points, mm; share inside; ppm outside.
 * v_i values, mm; t_i tolerances, mm; a_i sensitivities; L limit or "none", mm; U limit or "none", mm; N samples; seed of the draws; shape
 * normal, uniform or triangular.
 * STACK.SIMULATE accepts N at least 1000 and at most 20000000; seed at least 1 and at most 2147483647; lists of equal counts; L or U
 * given; U above L; N times links at most 20000000. Source: generator xoroshiro128+ of 2018, 32 bits a draw (compared with published
 * values); polar method for normal draws, SIAM Review 6, 1964 (from memory).
 */
export function stackSimulated(
  valuesMm: readonly number[],
  tolerances: Deviations,
  sensitivities: readonly number[],
  lower: LimitMm,
  upper: LimitMm,
  samples: number,
  seed: number,
  shape: DrawShape,
): Row[] {
  if (samples * valuesMm.length > MOST_DRAWS)
    throw wrongInput(`samples × links is ${samples * valuesMm.length}; at most ${MOST_DRAWS} are drawn`, 'samples');
  const resultsMm = new Float64Array(samples).fill(stackNominalMm(valuesMm, sensitivities) + stackShiftMm(tolerances, sensitivities));
  const draw = draws(seed, shape);
  for (const halfMm of halfWidths(tolerances, sensitivities)) {
    const scaleMm = halfMm / HALF_WIDTH_IN_DRAWS[shape];
    for (let i = 0; i < samples; i++) (resultsMm[i] as number) += scaleMm * draw();
  }
  return summary(resultsMm.sort(), lower === 'none' ? -Infinity : lower, upper === 'none' ? Infinity : upper);
}

function summary(risingMm: Float64Array, lowerMm: number, upperMm: number): Row[] {
  const samples = risingMm.length;
  const meanMm = risingMm.reduce((total, x) => total + x, 0) / samples;
  const varianceMm2 = risingMm.reduce((total, x) => total + (x - meanMm) ** 2, 0) / (samples - 1);
  const inside = risingMm.reduce((count, x) => (x >= lowerMm && x <= upperMm ? count + 1 : count), 0);
  return [
    ['mean', meanMm, 'mm'],
    ['standard deviation', sqrt(varianceMm2), 'mm'],
    ['0.135 % point', pointMm(risingMm, LOW_POINT), 'mm'],
    ['99.865 % point', pointMm(risingMm, HIGH_POINT), 'mm'],
    ['share inside', inside / samples, '–'],
    ['outside', ((samples - inside) / samples) * 1e6, 'ppm'],
  ];
}

/** Between two neighbours in proportion, the first sample at 0 and the last at 1. */
export function pointMm(risingMm: Float64Array, share: number): number {
  const position = share * (risingMm.length - 1);
  const before = Math.floor(position);
  const [lowMm, highMm] = [risingMm[before] as number, risingMm[before + 1] as number];
  return lowMm + (position - before) * (highMm - lowMm);
}
