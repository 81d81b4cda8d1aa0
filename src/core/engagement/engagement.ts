// Grip, penetration and full-thread engagement, nominal and at the limits.
import { sqrt, sum, sumSquaredDifferences } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';
import type { Screw } from '../screw/thread';

/**
 * Grip G, mm: the layers together.
 * s_i layers, mm.
 * GRIP accepts s_i at least 0 mm.
 * Source: plane geometry (derived).
 */
export function gripMm(layersMm: readonly number[]): number {
  return sum(layersMm);
}

/**
 * Least grip, mm: every layer at its thinnest.
 * s_i layers, mm; t_i their tolerances, mm.
 * Limits: as GRIP.LIMITS has them. Source: plane geometry (derived).
 */
export function gripMinMm(layersMm: readonly number[], tolerances: Deviations): number {
  return sum(layersMm) + sum(tolerances.lowerMm);
}

/**
 * Grip at its limits: min, nominal, max, mm.
 * s_i layers, mm; t_i their tolerances, mm.
 * GRIP.LIMITS accepts s_i at least 0 mm; lists of equal counts; a negative least grip is refused.
 * Source: plane geometry (derived).
 */
export function gripLimitsMm(layersMm: readonly number[], tolerances: Deviations): number[] {
  return [gripMinMm(layersMm, tolerances), sum(layersMm), sum(layersMm) + sum(tolerances.upperMm)];
}

/**
 * Length P below the boss face, mm.
 * L screw length, mm; G grip, or its layers, mm.
 * PENETRATION accepts L above 0 mm; G at least 0 mm; a screw that ends before the boss face is refused.
 * Source: plane geometry (derived).
 */
export function penetrationMm(lengthMm: number, layersMm: readonly number[]): number {
  return lengthMm - sum(layersMm);
}

/**
 * Full-thread engagement L_e, mm. Negative: no full thread bites.
 * L screw length, mm; G grip, or its layers, mm; c relief, mm; y length at the point without full thread, mm.
 * ENGAGEMENT accepts L above 0 mm; G, c, y at least 0 mm.
 * Source: plane geometry (derived).
 */
export function engagementMm(lengthMm: number, layersMm: readonly number[], reliefMm: number, pointMm: number): number {
  return penetrationMm(lengthMm, layersMm) - reliefMm - pointMm;
}

/**
 * Full-thread engagement at the worst, mm: shortest screw, thickest layers, deepest relief.
 * L length, mm; t_L its tolerance, mm; s_i layers, mm; t_i their tolerances, mm; c relief, mm; t_c its tolerance, mm; y point, mm.
 * Limits: as ENGAGEMENT.LIMITS has them. Source: plane geometry (derived).
 */
export function engagementMinMm(
  lengthMm: number,
  lengthTol: Deviation,
  layersMm: readonly number[],
  tolerances: Deviations,
  reliefMm: number,
  reliefTol: Deviation,
  pointMm: number,
): number {
  return lengthMm + lengthTol.lowerMm - (sum(layersMm) + sum(tolerances.upperMm)) - (reliefMm + reliefTol.upperMm) - pointMm;
}

/**
 * Full-thread engagement at the most, mm: longest screw, thinnest layers, shallowest relief.
 * L length, mm; t_L its tolerance, mm; s_i layers, mm; t_i their tolerances, mm; c relief, mm; t_c its tolerance, mm; y point, mm.
 * Limits: as ENGAGEMENT.LIMITS has them. Source: plane geometry (derived).
 */
export function engagementMaxMm(
  lengthMm: number,
  lengthTol: Deviation,
  layersMm: readonly number[],
  tolerances: Deviations,
  reliefMm: number,
  reliefTol: Deviation,
  pointMm: number,
): number {
  return lengthMm + lengthTol.upperMm - (sum(layersMm) + sum(tolerances.lowerMm)) - (reliefMm + reliefTol.lowerMm) - pointMm;
}

/**
 * Root sum square of the half widths of every tolerance, mm: half the spread about the middle of the limits.
 * t_L tolerance of the length, mm; t_i tolerances of the layers, mm; t_c tolerance of the relief, mm.
 * Limits: as ENGAGEMENT.LIMITS has them; it takes the tolerances as independent. Source: plane geometry (derived).
 */
export function engagementSpreadMm(lengthTol: Deviation, tolerances: Deviations, reliefTol: Deviation): number {
  return (
    sqrt(
      (lengthTol.upperMm - lengthTol.lowerMm) ** 2 +
        sumSquaredDifferences(tolerances.upperMm, tolerances.lowerMm) +
        (reliefTol.upperMm - reliefTol.lowerMm) ** 2,
    ) / 2
  );
}

/**
 * Full-thread engagement: worst min, nominal, worst max, root-sum-square half spread, mm.
 * L length, mm; t_L its tolerance, mm; s_i layers, mm; t_i their tolerances, mm; c relief, mm; t_c its tolerance, mm; y point, mm.
 * ENGAGEMENT.LIMITS accepts L above 0 mm; s_i, c, y at least 0 mm; lists of equal counts; a negative least grip
 * is refused.
 * Source: plane geometry (derived).
 */
export function engagementLimitsMm(
  lengthMm: number,
  lengthTol: Deviation,
  layersMm: readonly number[],
  tolerances: Deviations,
  reliefMm: number,
  reliefTol: Deviation,
  pointMm: number,
): number[] {
  return [
    engagementMinMm(lengthMm, lengthTol, layersMm, tolerances, reliefMm, reliefTol, pointMm),
    engagementMm(lengthMm, layersMm, reliefMm, pointMm),
    engagementMaxMm(lengthMm, lengthTol, layersMm, tolerances, reliefMm, reliefTol, pointMm),
    engagementSpreadMm(lengthTol, tolerances, reliefTol),
  ];
}

/**
 * Engagement ÷ nominal diameter d of the screw.
 * L_e full-thread engagement, mm; size of the screw, with its d.
 * ENGAGEMENT.RATIO sets no limits.
 * Source: plane geometry (derived).
 */
export function engagementRatio(engagement: number, screw: Screw): number {
  return engagement / screw.nominalMm;
}

/**
 * The deepest a screw can reach below the boss face, mm.
 * L length, mm; t_L its tolerance, mm; s_i layers, mm; t_i their tolerances, mm.
 * Limits: as SCREW.BOTTOM has them. Source: plane geometry (derived).
 */
export function penetrationMaxMm(lengthMm: number, lengthTol: Deviation, layersMm: readonly number[], tolerances: Deviations): number {
  return lengthMm + lengthTol.upperMm - (sum(layersMm) + sum(tolerances.lowerMm));
}

/**
 * Smallest room under the tip, mm. Negative: the screw bottoms and the parts do not close.
 * H hole depth, mm; t_H its tolerance, mm; L screw length, mm; t_L its tolerance, mm; s_i layers, mm; t_i their tolerances, mm.
 * SCREW.BOTTOM accepts H, L above 0 mm; s_i at least 0 mm; lists of equal counts; a negative least grip is refused.
 * Source: plane geometry (derived).
 */
export function bottomRoomMm(
  holeDepthMm: number,
  depthTol: Deviation,
  lengthMm: number,
  lengthTol: Deviation,
  layersMm: readonly number[],
  tolerances: Deviations,
): number {
  return holeDepthMm + depthTol.lowerMm - penetrationMaxMm(lengthMm, lengthTol, layersMm, tolerances);
}
