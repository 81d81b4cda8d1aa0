// A threaded insert in a boss, by its own sizes: what it needs of the plastic, and what holds it there.
import { abs, min, PI, sqrt, sum } from '../maths';

/**
 * Outside diameter D of a boss round an insert, mm.
 * d_i outside diameter of the insert, mm; k ratio.
 * INSERT.BOSS.OD accepts d_i above 0 mm; k above 1.
 * Source: two to three times the insert (common practice, read in 2 secondary copies).
 */
export function insertBossOdMm(insertMm: number, ratio: number): number {
  return ratio * insertMm;
}

/**
 * Depth H of the hole for an insert, mm: room under it for displaced plastic and the tip of the screw.
 * l_i length of the insert, mm; c margin, mm; b insert below the face, mm.
 * INSERT.HOLE.DEPTH accepts l_i above 0 mm; c, b at least 0 mm.
 * Source: room under the insert for displaced plastic and the tip of the screw (common practice, from memory).
 */
export function insertHoleDepthMm(insertLengthMm: number, marginMm: number, belowFaceMm: number): number {
  return insertLengthMm + marginMm + belowFaceMm;
}

/**
 * Full thread L_e in the insert, mm. Negative: the screw does not reach it.
 * L screw length, mm; G grip, or its layers, mm; l_i length of the insert, mm; b insert below the face, mm;
 * y length at the point without full thread, mm.
 * INSERT.ENGAGEMENT accepts L, l_i above 0 mm; G, b, y at least 0 mm.
 * Source: plane geometry (derived).
 */
export function insertEngagementMm(
  lengthMm: number,
  layersMm: readonly number[],
  insertLengthMm: number,
  belowFaceMm: number,
  pointMm: number,
): number {
  return min(lengthMm - sum(layersMm) - pointMm - belowFaceMm, insertLengthMm);
}

/**
 * Ring w of the insert under the mating part, mm. Negative: the screw draws the insert out through the hole.
 * d_i outside diameter of the insert, mm; d_h clearance hole of the mating part, mm.
 * INSERT.LANDING accepts d_i, d_h above 0 mm.
 * Source: plane geometry (derived).
 */
export function insertLandingMm(insertMm: number, holeMm: number): number {
  return (insertMm - holeMm) / 2;
}

/** Beyond a tenth the strain is no longer small. */
export const LARGEST_INSERT_STRAIN = 0.1;

/**
 * Hoop strain ε of the plastic at a moulded-in insert, a share: an estimate, the insert rigid and nothing relaxed.
 * α expansion of the plastic, 1e-6/K; α_i expansion of the insert, 1e-6/K; ΔT temperature change, K; S shrinkage.
 * INSERT.STRAIN accepts α, α_i above 0 1e-6/K; S at least 0 and below 1; a negative ε, or one over a tenth, is refused.
 * Source: shrinkage of the plastic, held back by a rigid insert (derived).
 */
export function insertStrain(
  expansionPpmPerK: number,
  expansionInsertPpmPerK: number,
  temperatureChangeK: number,
  shrinkage: number,
): number {
  return (expansionPpmPerK - expansionInsertPpmPerK) * 1e-6 * abs(temperatureChangeK) + shrinkage;
}

/**
 * Force F that pulls an insert out, N: an estimate, the plastic sheared round it.
 * d_i outside diameter of the insert, mm; l_i its length, mm; σ yield stress, MPa; e share of the surface that holds; S safety.
 * INSERT.PULLOUT accepts d_i, l_i above 0 mm; σ above 0 MPa; e above 0 and at most 1; S at least 1.
 * Source: shear yield σ/√3 (von Mises) on the cylinder round the insert (derived);
 * half of the surface holds (common practice, from memory).
 */
export function insertPullOutN(insertMm: number, insertLengthMm: number, yieldStressMpa: number, share: number, safety: number): number {
  const shearStressMpa = yieldStressMpa / sqrt(3);
  return (shearStressMpa * PI * insertMm * insertLengthMm * share) / safety;
}
