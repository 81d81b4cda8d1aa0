// The only mathematics a formula may use: each entry has a printed form for spreadsheets and for words (src/plain).
import erfc from '@stdlib/math-base-special-erfc';

export const tanDeg = (angleDeg: number): number => Math.tan((angleDeg * Math.PI) / 180);
export const atanDeg = (ratio: number): number => (Math.atan(ratio) * 180) / Math.PI;
export const cosDeg = (angleDeg: number): number => Math.cos((angleDeg * Math.PI) / 180);
export const sqrt = Math.sqrt;
export const cbrt = (x: number): number => Math.cbrt(x);
export const abs = Math.abs;
export const ln = Math.log;
export const min = Math.min;
export const max = Math.max;
/** Rounds up; within the margin of limits a whole number stays. */
export const wholeUp = (x: number): number => Math.ceil(x - LIMIT_MARGIN);
export const PI = Math.PI;

export const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);
/** Sum over the rows of (a − b)²: half widths out of upper and lower deviations. */
export const sumSquaredDifferences = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((total, x, i) => total + (x - (b[i] ?? 0)) ** 2, 0);
export const sumProducts = (a: readonly number[], b: readonly number[]): number => a.reduce((total, x, i) => total + x * (b[i] ?? 0), 0);
/** Sums over the rows of a stack: a is the sensitivity, upper − lower the width of the tolerance. */
export const sumWidths = (a: readonly number[], upper: readonly number[], lower: readonly number[]): number =>
  a.reduce((total, x, i) => total + Math.abs(x) * ((upper[i] ?? 0) - (lower[i] ?? 0)), 0);
export const sumSquaredWidths = (a: readonly number[], upper: readonly number[], lower: readonly number[]): number =>
  a.reduce((total, x, i) => total + (x * ((upper[i] ?? 0) - (lower[i] ?? 0))) ** 2, 0);
/** How many rows have a width above 0. */
export const countWidths = (a: readonly number[], upper: readonly number[], lower: readonly number[]): number =>
  a.filter((x, i) => x * ((upper[i] ?? 0) - (lower[i] ?? 0)) !== 0).length;
/** Share of a normal distribution beyond z standard deviations. */
export const normalTail = (z: number): number => erfc(z / Math.SQRT2) / 2;

/** A limit is met within this of the core unit, so that 0.1 + 0.2 is not above 0.3. */
export const LIMIT_MARGIN = 1e-9;
export const atMost = (value: number, limit: number): boolean => value <= limit + LIMIT_MARGIN;
export const atLeast = (value: number, limit: number): boolean => value >= limit - LIMIT_MARGIN;
