// Ribs, the lip at the rim, the junction of wall and rib, cooling and shrinkage.
import { cbrt, ln, PI, sqrt, sum, sumSquaredDifferences, tanDeg } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';

export function ribTipMm(baseMm: number, heightMm: number, draftDeg: number): number {
  return baseMm - 2 * heightMm * tanDeg(draftDeg);
}

export function ribBaseMm(tipMm: number, heightMm: number, draftDeg: number): number {
  return tipMm + 2 * heightMm * tanDeg(draftDeg);
}

/** The flat plate of the same width and stiffness. */
export function equivalentThicknessMm(secondMomentMm4: number, widthMm: number): number {
  return cbrt((12 * secondMomentMm4) / widthMm);
}

/** A strip of wall with one tapered rib on it; the centroid is measured from the outer face, the modulus is that of the rib's tip. */
export function ribSection(widthMm: number, wallMm: number, baseMm: number, tipMm: number, heightMm: number): (string | number)[][] {
  const wallAreaMm2 = widthMm * wallMm;
  const ribAreaMm2 = (heightMm * (baseMm + tipMm)) / 2;
  const ribCentroidMm = wallMm + (heightMm * (baseMm + 2 * tipMm)) / (3 * (baseMm + tipMm));
  const areaMm2 = wallAreaMm2 + ribAreaMm2;
  const centroidMm = ((wallAreaMm2 * wallMm) / 2 + ribAreaMm2 * ribCentroidMm) / areaMm2;
  const wallMomentMm4 = (widthMm * wallMm ** 3) / 12 + wallAreaMm2 * (centroidMm - wallMm / 2) ** 2;
  const ribOwnMomentMm4 = (heightMm ** 3 * (baseMm ** 2 + 4 * baseMm * tipMm + tipMm ** 2)) / (36 * (baseMm + tipMm));
  const ribMomentMm4 = ribOwnMomentMm4 + ribAreaMm2 * (ribCentroidMm - centroidMm) ** 2;
  const secondMomentMm4 = wallMomentMm4 + ribMomentMm4;
  const tipDistanceMm = wallMm + heightMm - centroidMm;
  return [
    ['area', areaMm2, 'mm²'],
    ['centroid from the outer face', centroidMm, 'mm'],
    ['second moment of area', secondMomentMm4, 'mm⁴'],
    ['section modulus at the tip', secondMomentMm4 / tipDistanceMm, 'mm³'],
    ['equivalent flat thickness', equivalentThicknessMm(secondMomentMm4, widthMm), 'mm'],
  ];
}

export function lipSkinMm(wallMm: number, lipMm: number, clearanceMm: number, gaps: number): number {
  return wallMm - lipMm - gaps * clearanceMm;
}

/** Per side. The lip grows into the gap, the groove away from it. */
export function lipFitMm(clearanceMm: number, lipTol: Deviation, grooveTol: Deviation, mismatchMm: number): number[] {
  return [
    clearanceMm - lipTol.upperMm + grooveTol.lowerMm - mismatchMm,
    clearanceMm,
    clearanceMm - lipTol.lowerMm + grooveTol.upperMm + mismatchMm,
  ];
}

export function rimGapMm(bossStackMm: number, rimStackMm: number): number {
  return bossStackMm - rimStackMm;
}

export function rimGapLimitsMm(
  bossLayersMm: readonly number[],
  bossTolerances: Deviations,
  rimLayersMm: readonly number[],
  rimTolerances: Deviations,
): number[] {
  const gapMm = rimGapMm(sum(bossLayersMm), sum(rimLayersMm));
  const squaredWidths =
    sumSquaredDifferences(bossTolerances.upperMm, bossTolerances.lowerMm) +
    sumSquaredDifferences(rimTolerances.upperMm, rimTolerances.lowerMm);
  return [
    gapMm + sum(bossTolerances.lowerMm) - sum(rimTolerances.upperMm),
    gapMm,
    gapMm + sum(bossTolerances.upperMm) - sum(rimTolerances.lowerMm),
    sqrt(squaredWidths) / 2,
  ];
}

/** It touches the outer face and both fillets; in a rib too wide for that, both flanks. */
export function junctionCircleMm(wallMm: number, ribMm: number, filletMm: number): number {
  const touchesFillets = ribMm / 2 <= wallMm + filletMm;
  return touchesFillets ? ((ribMm / 2 + filletMm) ** 2 + wallMm ** 2 + 2 * filletMm * wallMm) / (wallMm + 2 * filletMm) : ribMm;
}

export function junctionRatio(wallMm: number, ribMm: number, filletMm: number): number {
  return junctionCircleMm(wallMm, ribMm, filletMm) / wallMm;
}

export type CoolingCriterion = 'centre' | 'mean';

/** First term of the series for a plate: its centre, or its mean over the thickness. */
export function coolingShape(criterion: CoolingCriterion): number {
  return criterion === 'centre' ? 4 / PI : 8 / PI ** 2;
}

export function coolingTimeS(
  thicknessMm: number,
  diffusivityMm2PerS: number,
  meltC: number,
  mouldC: number,
  ejectC: number,
  criterion: CoolingCriterion,
): number {
  const excessRatio = (meltC - mouldC) / (ejectC - mouldC);
  return (thicknessMm ** 2 / (PI ** 2 * diffusivityMm2PerS)) * ln(coolingShape(criterion) * excessRatio);
}

/** Shrinkage refers to the cavity. */
export function cavitySizeMm(partMm: number, shrinkage: number): number {
  return partMm / (1 - shrinkage);
}
