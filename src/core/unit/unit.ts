// Units: the reader does the work, the formula is the identity.
import type { SizeLimits } from '../read/size-limits';

export function lengthMm(length: number): number {
  return length;
}

export function angleDeg(angle: number): number {
  return angle;
}

export function limitsMm(size: SizeLimits): number[] {
  return [size.nominalMm, size.lowerMm, size.upperMm];
}
