// A rigid pin pressed into a plastic boss: elastic thick ring, interference on diameter.
import { PI } from '../maths';

/** Hoop stress at the bore ÷ contact pressure. */
export function ringFactor(pinMm: number, odMm: number): number {
  return (odMm ** 2 + pinMm ** 2) / (odMm ** 2 - pinMm ** 2);
}

export function contactPressureMpa(interferenceMm: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  return ((interferenceMm / pinMm) * modulusMpa) / (ringFactor(pinMm, odMm) + poisson);
}

export function hoopStressMpa(interferenceMm: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  return contactPressureMpa(interferenceMm, pinMm, odMm, modulusMpa, poisson) * ringFactor(pinMm, odMm);
}

export function interferenceLimitMm(stressMpa: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  const factor = ringFactor(pinMm, odMm);
  return (stressMpa * pinMm * (factor + poisson)) / (modulusMpa * factor);
}

/** Beyond a tenth of the pin the ring no longer strains a little. */
export const LARGEST_INTERFERENCE = 0.1;

export function pushForceN(
  interferenceMm: number,
  pinMm: number,
  odMm: number,
  lengthMm: number,
  modulusMpa: number,
  poisson: number,
  friction: number,
): number {
  return PI * pinMm * lengthMm * friction * contactPressureMpa(interferenceMm, pinMm, odMm, modulusMpa, poisson);
}
