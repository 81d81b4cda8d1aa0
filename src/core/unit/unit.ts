// Units: the reader does the work, the formula is the identity.
import type { SizeLimits } from '../read/size-limits';

/**
 * The length itself, mm: reading it from text with units is the work of the argument.
 * l length, mm.
 * LENGTH.MM sets no limits.
 * Source: international inch of 1959: 25.4 mm exactly (from memory).
 */
export function lengthMm(length: number): number {
  return length;
}

/**
 * The angle itself, °: reading it from text with units is the work of the argument.
 * α angle, °.
 * ANGLE.DEG sets no limits.
 * Source: plane geometry (derived).
 */
export function angleDeg(angle: number): number {
  return angle;
}

/**
 * Nominal, lower and upper limit of a size, mm, in one row.
 * text of the size and its limits, mm.
 * LIMITS sets no limits.
 * Source: plane geometry (derived).
 */
export function limitsMm(size: SizeLimits): number[] {
  return [size.nominalMm, size.lowerMm, size.upperMm];
}
