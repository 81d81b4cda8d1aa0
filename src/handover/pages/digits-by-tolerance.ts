// How many digits a size has where it is measured.
import type { Limit } from '../compile/joint/joint-cells';

const FORMATS = ['0.00', '0.000'] as const;

interface Toleranced {
  readonly unit: string;
  readonly nominal: Limit;
  readonly lower?: Limit;
  readonly upper?: Limit;
}

/** As many for size, limits and results as its deviations have, two at least and three at most. */
export function digitsByTolerance({ unit, nominal, lower, upper }: Toleranced): string {
  if (unit === '°') return '0.0#';
  const isExact = [lower, upper].every(limit => limit === undefined || isWhole(100 * (Number(limit.value) - Number(nominal.value))));
  return FORMATS[isExact ? 0 : 1];
}

const isWhole = (hundredths: number): boolean => Math.abs(hundredths - Math.round(hundredths)) < 1e-6;
