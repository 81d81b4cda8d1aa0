// Clearance holes for screws out of position, and the core pins that form holes.
import { PI, sqrt } from '../maths';

/**
 * Smallest hole H, mm, where the screw passes through holes of both parts; each hole lies in its own zone of this size.
 * F screw diameter, mm; T position zone, a diameter, mm.
 * HOLE.FLOATING accepts F above 0 mm; T at least 0 mm.
 * Source: ASME Y14.5 (1994 and later), non-mandatory appendix B (read in secondary copies; edition from memory).
 */
export function floatingHoleMm(screwMm: number, zoneMm: number): number {
  return screwMm + zoneMm;
}

/**
 * Smallest hole H, mm, where the screw is held by the boss; the boss zone is projected over the part it goes through.
 * F screw diameter, mm; T1 position zone of the boss, a diameter, mm; T2 position zone of the hole, a diameter, mm.
 * HOLE.FIXED accepts F above 0 mm; T1, T2 at least 0 mm.
 * Source: ASME Y14.5 (1994 and later), non-mandatory appendix B (read in secondary copies; edition from memory).
 */
export function fixedHoleMm(screwMm: number, zoneBossMm: number, zoneHoleMm: number): number {
  return screwMm + zoneBossMm + zoneHoleMm;
}

/**
 * Smallest hole H, mm, where the screw is held by the boss and the boss zone ends with the boss: an axis that leans in it leans on above.
 * F screw diameter, mm; T1 position zone of the boss, a diameter, mm; T2 position zone of the hole, a diameter, mm;
 * P thickness that the screw passes, mm; D least depth of thread, mm.
 * HOLE.PROJECTED accepts F, P, D above 0 mm; T1, T2 at least 0 mm.
 * Source: ASME Y14.5 (1994 and later), non-mandatory appendix B (read in secondary copies; edition from memory).
 */
export function unprojectedHoleMm(screwMm: number, zoneBossMm: number, zoneHoleMm: number, plateMm: number, threadMm: number): number {
  return screwMm + zoneHoleMm + zoneBossMm * (1 + (2 * plateMm) / threadMm);
}

/**
 * Position zone T, a diameter, of a centre that is off by x and y, mm.
 * x deviation along one axis, mm; y deviation along the other, mm.
 * POSITION.ZONE sets no limits.
 * Source: plane geometry (derived).
 */
export function positionZoneMm(dxMm: number, dyMm: number): number {
  return 2 * sqrt(dxMm ** 2 + dyMm ** 2);
}

/**
 * Slenderness of a core pin: length ÷ diameter.
 * L length, mm; d diameter, mm.
 * PIN.RATIO accepts L, d above 0 mm.
 * Source: common practice.
 */
export function pinRatio(lengthMm: number, diameterMm: number): number {
  return lengthMm / diameterMm;
}

/** Beyond a tenth of its length a cantilever is no longer bent a little. */
export const LARGEST_PIN_DEFLECTION = 0.1;

/**
 * Deflection δ of the tip of a core pin, mm: round cantilever under an even load along its length.
 * L length, mm; d diameter, mm; p pressure difference across the pin, MPa; E modulus, MPa.
 * PIN.DEFLECTION accepts L, d above 0 mm; p, E above 0 MPa; a deflection of more than a tenth of L is refused.
 * Source: cantilever under a uniformly distributed load, q·L⁴/(8·E·I) (derived).
 */
export function pinDeflectionMm(lengthMm: number, diameterMm: number, pressureDifferenceMpa: number, modulusMpa: number): number {
  return (8 * pressureDifferenceMpa * lengthMm ** 4) / (PI * modulusMpa * diameterMm ** 3);
}
