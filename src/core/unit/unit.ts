// Units: the reader does the work, the formula is the identity.

export function lengthMm(length: number): number {
  return length;
}

export function angleDeg(angle: number): number {
  return angle;
}
