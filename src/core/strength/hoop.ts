// A rigid pin pressed into a plastic boss: elastic thick ring, interference on diameter.
import { PI } from '../maths';

/**
 * Hoop stress at the bore ÷ contact pressure of an elastic thick ring.
 * d pin, mm; D outside diameter, mm.
 * Limits: as HOOP.STRESS has them. Source: thick-walled cylinder (Lamé), rigid pin (derived).
 */
export function ringFactor(pinMm: number, odMm: number): number {
  return (odMm ** 2 + pinMm ** 2) / (odMm ** 2 - pinMm ** 2);
}

/**
 * Pressure between a rigid pin and the boss it is pressed into, MPa.
 * i interference on diameter, mm; d pin, mm; D outside diameter, mm; E modulus, MPa; ν Poisson ratio.
 * Limits: as HOOP.STRESS has them. Source: thick-walled cylinder (Lamé), rigid pin (derived).
 */
export function contactPressureMpa(interferenceMm: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  return ((interferenceMm / pinMm) * modulusMpa) / (ringFactor(pinMm, odMm) + poisson);
}

/**
 * Hoop stress σ at the bore of a boss with a pin pressed in, MPa; elastic, short-term.
 * i interference on diameter, mm; d pin, mm; D outside diameter, mm; E modulus, MPa; ν Poisson ratio.
 * HOOP.STRESS accepts i, d above 0 mm; D above 0 mm, above d; E above 0 MPa; ν above 0 and at most 0.5; an i above d/10 is refused.
 * Source: thick-walled cylinder (Lamé), rigid pin (derived); Crawford, Plastics Engineering, 3rd ed., example 2.7 (read in 1 secondary
 * copy; edition from memory).
 */
export function hoopStressMpa(interferenceMm: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  return contactPressureMpa(interferenceMm, pinMm, odMm, modulusMpa, poisson) * ringFactor(pinMm, odMm);
}

/**
 * Largest interference i on diameter for a hoop stress at the bore, mm; elastic, short-term.
 * σ hoop stress, MPa; d pin, mm; D outside diameter, mm; E modulus, MPa; ν Poisson ratio.
 * HOOP.LIMIT accepts σ, E above 0 MPa; d above 0 mm; D above 0 mm, above d; ν above 0 and at most 0.5; an i above d/10 is refused.
 * Source: thick-walled cylinder (Lamé), rigid pin (derived); Crawford, Plastics Engineering, 3rd ed., example 2.7 (read in 1 secondary
 * copy; edition from memory).
 */
export function interferenceLimitMm(stressMpa: number, pinMm: number, odMm: number, modulusMpa: number, poisson: number): number {
  const factor = ringFactor(pinMm, odMm);
  return (stressMpa * pinMm * (factor + poisson)) / (modulusMpa * factor);
}

/** Beyond a tenth of the pin the ring no longer strains a little. */
export const LARGEST_INTERFERENCE = 0.1;

/**
 * Axial force F that pushes a pin out of its boss, N; elastic, short-term.
 * i interference on diameter, mm; d pin, mm; D outside diameter, mm; L length, mm; E modulus, MPa; ν Poisson ratio; μ friction.
 * HOOP.PUSH accepts i, d, L above 0 mm; D above 0 mm, above d; E above 0 MPa; ν above 0 and at most 0.5; μ above 0 and at most 1;
 * an i above d/10 is refused.
 * Source: thick-walled cylinder (Lamé), rigid pin (derived); Crawford, Plastics Engineering, 3rd ed., example 2.7 (read in 1 secondary
 * copy; edition from memory).
 */
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
