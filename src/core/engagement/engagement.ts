// Grip, penetration and full-thread engagement, nominal and at the limits.
import { sqrt, sum, sumSquaredDifferences } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';
import type { Screw } from '../screw/thread';

export function gripMm(layersMm: readonly number[]): number {
  return sum(layersMm);
}

export function gripMinMm(layersMm: readonly number[], tolerances: Deviations): number {
  return sum(layersMm) + sum(tolerances.lowerMm);
}

export function gripLimitsMm(layersMm: readonly number[], tolerances: Deviations): number[] {
  return [gripMinMm(layersMm, tolerances), sum(layersMm), sum(layersMm) + sum(tolerances.upperMm)];
}

export function penetrationMm(lengthMm: number, layersMm: readonly number[]): number {
  return lengthMm - sum(layersMm);
}

export function engagementMm(lengthMm: number, layersMm: readonly number[], reliefMm: number, pointMm: number): number {
  return penetrationMm(lengthMm, layersMm) - reliefMm - pointMm;
}

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

/** Root sum square of the half widths of every tolerance: half the spread about the middle of the limits. */
export function engagementSpreadMm(lengthTol: Deviation, tolerances: Deviations, reliefTol: Deviation): number {
  return (
    sqrt(
      (lengthTol.upperMm - lengthTol.lowerMm) ** 2 +
        sumSquaredDifferences(tolerances.upperMm, tolerances.lowerMm) +
        (reliefTol.upperMm - reliefTol.lowerMm) ** 2,
    ) / 2
  );
}

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

export function engagementRatio(engagement: number, screw: Screw): number {
  return engagement / screw.nominalMm;
}

/** The deepest a screw can reach below the boss face. */
export function penetrationMaxMm(lengthMm: number, lengthTol: Deviation, layersMm: readonly number[], tolerances: Deviations): number {
  return lengthMm + lengthTol.upperMm - (sum(layersMm) + sum(tolerances.lowerMm));
}

/** Smallest room under the tip; negative: the screw jacks the joint open. */
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
