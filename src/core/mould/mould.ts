// Ribs, the lip at the rim, the junction of wall and rib, cooling and shrinkage.
import { cbrt, ln, PI, sqrt, sum, sumSquaredDifferences, tanDeg } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';

/**
 * Thickness t_t at the tip of a drafted rib, mm. Negative: the flanks meet below that height.
 * t_b thickness at the base, mm; h height, mm; α draft per side, °.
 * RIB.TIP accepts t_b above 0 mm; h at least 0 mm; α at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function ribTipMm(baseMm: number, heightMm: number, draftDeg: number): number {
  return baseMm - 2 * heightMm * tanDeg(draftDeg);
}

/**
 * Thickness t_b at the base of a drafted rib, mm.
 * t_t thickness at the tip, mm; h height, mm; α draft per side, °.
 * RIB.BASE accepts t_t above 0 mm; h at least 0 mm; α at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function ribBaseMm(tipMm: number, heightMm: number, draftDeg: number): number {
  return tipMm + 2 * heightMm * tanDeg(draftDeg);
}

/**
 * The flat plate of the same width and stiffness, mm.
 * I second moment of area, mm⁴; B width, mm.
 * Limits: as RIB.SECTION has them. Source: R. J. Crawford, Plastics Engineering, 3rd ed. 1998 (edition from memory), pp. 67 and 78:
 * equivalent thickness (read in 1 secondary copy).
 */
export function equivalentThicknessMm(secondMomentMm4: number, widthMm: number): number {
  return cbrt((12 * secondMomentMm4) / widthMm);
}

/**
 * A strip of wall with one tapered rib: area, mm², centroid from the outer face, mm, second moment, mm⁴, modulus at the tip, mm³,
 * equivalent flat, mm.
 * B width, mm; T wall, mm; t_b rib at the base, mm; t_t rib at the tip, mm; h rib height, mm.
 * RIB.SECTION accepts B, T, t_b, t_t, h above 0 mm.
 * Source: plane geometry (derived); R. J. Crawford, Plastics Engineering, 3rd ed. 1998 (edition from memory), pp. 67 and 78: equivalent
 * thickness (read in 1 secondary copy).
 */
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

/**
 * Wall left outside the lip, mm.
 * T wall, mm; t_l lip, mm; g clearance per gap, mm; n gaps, 1 or 2.
 * LIP.SKIN accepts T, t_l above 0 mm; g at least 0 mm; n at least 1 and at most 2; a lip that leaves no wall is refused.
 * Source: plane geometry (derived).
 */
export function lipSkinMm(wallMm: number, lipMm: number, clearanceMm: number, gaps: number): number {
  return wallMm - lipMm - gaps * clearanceMm;
}

/**
 * Fit of lip and groove: min, nominal, max per side, mm. The lip grows into the gap, the groove away from it. Negative: the lip does not
 * enter.
 * g clearance per side, mm; t_l tolerance of the lip, mm; t_g tolerance of the groove, mm; m mismatch of the halves, mm.
 * LIP.FIT accepts g, m at least 0 mm.
 * Source: plane geometry (derived).
 */
export function lipFitMm(clearanceMm: number, lipTol: Deviation, grooveTol: Deviation, mismatchMm: number): number[] {
  return [
    clearanceMm - lipTol.upperMm + grooveTol.lowerMm - mismatchMm,
    clearanceMm,
    clearanceMm - lipTol.lowerMm + grooveTol.upperMm + mismatchMm,
  ];
}

/**
 * Gap at the rim when the bosses touch, mm. Negative: the rim touches first and the boss hangs in tension.
 * b stack at the boss, mm; r stack at the rim, mm.
 * RIM.GAP accepts b, r above 0 mm.
 * Source: plane geometry (derived).
 */
export function rimGapMm(bossStackMm: number, rimStackMm: number): number {
  return bossStackMm - rimStackMm;
}

/**
 * Gap at the rim: min, nominal, max, root-sum-square half spread, mm. Negative: the rim touches first.
 * b_i layers at the boss, mm; t_b their tolerances, mm; r_i layers at the rim, mm; t_r their tolerances, mm.
 * RIM.GAP.LIMITS accepts b_i, r_i at least 0 mm; lists of equal counts at the boss, and at the rim.
 * Source: plane geometry (derived).
 */
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

/**
 * Largest circle D in the junction of wall and rib, mm. It touches the outer face and both fillets;
 * in a rib too wide for that, both flanks.
 * T wall, mm; w rib, mm; R fillet, mm.
 * JUNCTION.CIRCLE accepts T, w above 0 mm; R at least 0 mm.
 * Source: plane geometry (derived).
 */
export function junctionCircleMm(wallMm: number, ribMm: number, filletMm: number): number {
  const touchesFillets = ribMm / 2 <= wallMm + filletMm;
  return touchesFillets ? ((ribMm / 2 + filletMm) ** 2 + wallMm ** 2 + 2 * filletMm * wallMm) / (wallMm + 2 * filletMm) : ribMm;
}

/**
 * Largest circle in the junction of wall and rib ÷ wall.
 * T wall, mm; w rib, mm; R fillet, mm.
 * JUNCTION.RATIO accepts T, w above 0 mm; R at least 0 mm.
 * Source: plane geometry (derived); common practice.
 */
export function junctionRatio(wallMm: number, ribMm: number, filletMm: number): number {
  return junctionCircleMm(wallMm, ribMm, filletMm) / wallMm;
}

/** What of the plate must be cool when it is ejected: its centre, or its mean over the thickness. */
export type CoolingCriterion = 'centre' | 'mean';

/**
 * First term of the series for a plate: its centre, or its mean over the thickness.
 * criterion centre or mean.
 * Limits: as COOLING.TIME has them. Source: cooling of a plate, first term of the series, centre temperature (read in 1 secondary copy);
 * the same for the mean temperature, 8/π² (from memory, compared with the full series).
 */
export function coolingShape(criterion: CoolingCriterion): number {
  return criterion === 'centre' ? 4 / PI : 8 / PI ** 2;
}

/**
 * Cooling time t of a plate, s: an estimate from the first term of the series.
 * s thickness, mm; a diffusivity, mm²/s; T_m melt temperature, °C; T_w mould temperature, °C; T_e ejection temperature, °C;
 * criterion centre or mean.
 * COOLING.TIME accepts s above 0 mm; a above 0 mm²/s; T_e lies between T_w and T_m; a T_e so near T_m that there is no time is refused.
 * Source: cooling of a plate, first term of the series, centre temperature (read in 1 secondary copy);
 * the same for the mean temperature, 8/π² (from memory, compared with the full series).
 */
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

/**
 * Size in the cavity, mm. Shrinkage refers to the cavity.
 * l size of the part, mm; S shrinkage.
 * CAVITY.SIZE accepts l above 0 mm; S at least 0 and below 1.
 * Source: shrinkage referred to the cavity, ISO 294-4 (base of the ratio from memory; read in 1 secondary copy on moulding);
 * shrinkage of the materials (each row of MATERIAL.TABLE says how).
 */
export function cavitySizeMm(partMm: number, shrinkage: number): number {
  return partMm / (1 - shrinkage);
}
