// Clearance holes for screws out of position, and the core pins that form holes.
import { PI, sqrt } from '../maths';

/** The screw passes through holes of both parts; each hole lies in its own zone of this size. */
export function floatingHoleMm(screwMm: number, zoneMm: number): number {
  return screwMm + zoneMm;
}

/** The screw is held by the boss; the boss zone is projected over the part it goes through. */
export function fixedHoleMm(screwMm: number, zoneBossMm: number, zoneHoleMm: number): number {
  return screwMm + zoneBossMm + zoneHoleMm;
}

export function positionZoneMm(dxMm: number, dyMm: number): number {
  return 2 * sqrt(dxMm ** 2 + dyMm ** 2);
}

export function pinRatio(lengthMm: number, diameterMm: number): number {
  return lengthMm / diameterMm;
}

/** Round cantilever under an even load along its length: q·L⁴/(8·E·I). */
/** Beyond a tenth of its length a cantilever is no longer bent a little. */
export const LARGEST_PIN_DEFLECTION = 0.1;

export function pinDeflectionMm(lengthMm: number, diameterMm: number, pressureDifferenceMpa: number, modulusMpa: number): number {
  return (8 * pressureDifferenceMpa * lengthMm ** 4) / (PI * modulusMpa * diameterMm ** 3);
}
