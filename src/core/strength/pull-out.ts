// What the plastic around a screw holds along its axis: the thread, the boss, the seat under the head.
import { max, min, PI, sqrt, wholeUp } from '../maths';
import type { Screw } from '../screw/thread';

/**
 * Mean of the largest major and root diameters, mm: where the plastic is taken to shear.
 * size of the screw.
 * Limits: as PULLOUT has them. Source: as PULLOUT.
 */
export function threadMeanDiaMm(screw: Screw): number {
  return (screw.majorMaxMm + screw.rootMaxMm) / 2;
}

/**
 * Thread pull-out force F, N: an estimate for a short pull. Below e = 0.5 it falls in proportion to e.
 * size of the screw; L engagement, mm; σ yield stress, MPa; S safety; e share of the flank depth in plastic.
 * PULLOUT accepts L above 0 mm; σ above 0 MPa; S at least 1; e above 0 and at most 1; a machine thread is refused.
 * Source: shear yield σ/√3 (von Mises) (derived); design guides for moulded resins: cylinder at the pitch diameter over the full thread
 * (from memory); where less than half of the flank depth bites, less of the cylinder is plastic: min(1, 2·e) (derived);
 * ISO 1478 and ASME B18.6.3 thread limits (read in secondary copies).
 */
export function pullOutN(screw: Screw, engagementMm: number, yieldStressMpa: number, safety: number, threadShare: number): number {
  const shearStressMpa = yieldStressMpa / sqrt(3);
  const shearedAreaMm2 = PI * threadMeanDiaMm(screw) * engagementMm * min(1, 2 * threadShare);
  return (shearStressMpa * shearedAreaMm2) / safety;
}

/**
 * Force F that tears the boss, N: an estimate, even stress over the ring.
 * D outside diameter, mm; size of the screw; σ yield stress, MPa; S safety.
 * PULLOUT.BOSS accepts D above 0 mm; size a screw with a major diameter below D; σ above 0 MPa; S at least 1.
 * Source: net tension on the ring between outside and thread (derived).
 */
export function bossTearN(odMm: number, screw: Screw, yieldStressMpa: number, safety: number): number {
  const netAreaMm2 = (PI / 4) * (odMm ** 2 - screw.majorMaxMm ** 2);
  return (yieldStressMpa * netAreaMm2) / safety;
}

/**
 * Force F that shears the seat under the head, N: an estimate.
 * d_k head diameter, mm; s seat, mm; σ yield stress, MPa; S safety.
 * PULLOUT.SEAT accepts d_k, s above 0 mm; σ above 0 MPa; S at least 1; a countersunk head is refused.
 * Source: shear yield σ/√3 (von Mises) on the cylinder under the head (derived).
 */
export function seatShearN(headDiameterMm: number, seatMm: number, yieldStressMpa: number, safety: number): number {
  const shearStressMpa = yieldStressMpa / sqrt(3);
  return (shearStressMpa * PI * headDiameterMm * seatMm) / safety;
}

/**
 * Number n of screws that share a load evenly.
 * F load, N; F_p pull-out force of one, N; S safety.
 * SCREW.COUNT accepts F, F_p above 0 N; S at least 1.
 * Source: load shared evenly by the screws (common practice).
 */
export function screwCount(loadN: number, pullOutForceN: number, safety: number): number {
  return max(1, wholeUp((loadN * safety) / pullOutForceN));
}
