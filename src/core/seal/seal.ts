// The rim between its screws, and a cord or a ring that seals it.
import { max, PI, sqrt } from '../maths';
import type { Deviation } from '../read/deviation';

/** Beyond a tenth of its pitch a rim is no longer bent a little. */
export const LARGEST_RIM_SAG = 0.1;

/** Ends of a rim at its screws: clamped where it goes on beyond them, simple where it hinges. */
export type RimEnds = 'clamped' | 'simple';

/**
 * How many times as far as between clamped ends a rim opens.
 * ends clamped or simple.
 * Limits: as RIM.SAG has them. Source: Roark’s Formulas for Stress and Strain, 7th ed., table 8.1, cases 2d and 2e (from memory).
 */
export function rimEndsFactor(ends: RimEnds): number {
  return ends === 'clamped' ? 1 : 5;
}

/**
 * Opening y of a rim half way between two screws under an even load, mm: an estimate.
 * L pitch of the screws, mm; q line load, N/mm; E modulus, MPa; I second moment of area of the rim, mm⁴; ends clamped or simple.
 * RIM.SAG accepts L above 0 mm; q above 0 N/mm; E above 0 MPa; I above 0 mm⁴; an opening of more than a tenth of L is refused.
 * Source: Roark’s Formulas for Stress and Strain, 7th ed., table 8.1, cases 2d and 2e (from memory).
 */
export function rimSagMm(pitchMm: number, lineLoadNPerMm: number, modulusMpa: number, secondMomentMm4: number, ends: RimEnds): number {
  return (rimEndsFactor(ends) * lineLoadNPerMm * pitchMm ** 4) / (384 * modulusMpa * secondMomentMm4);
}

/**
 * Screw pitch L at which a rim opens so far, mm: an estimate.
 * y opening half way between two screws, mm; q line load, N/mm; E modulus, MPa; I second moment of area of the rim, mm⁴;
 * ends clamped or simple.
 * RIM.PITCH accepts y above 0 mm; q above 0 N/mm; E above 0 MPa; I above 0 mm⁴; a y of more than a tenth of the pitch is refused.
 * Source: Roark’s Formulas for Stress and Strain, 7th ed., table 8.1, cases 2d and 2e (from memory).
 */
export function rimPitchMm(sagMm: number, lineLoadNPerMm: number, modulusMpa: number, secondMomentMm4: number, ends: RimEnds): number {
  return sqrt(sqrt((384 * modulusMpa * secondMomentMm4 * sagMm) / (rimEndsFactor(ends) * lineLoadNPerMm)));
}

/**
 * Share of its thickness by which a cord is squeezed. A gap below 0 counts as 0; a stretched cord is thinner.
 * d cord, mm; h groove depth, mm; g gap of the faces, mm; s stretch.
 * Limits: as SEAL.SQUEEZE has them. Source: plane geometry (derived); rubber keeps its volume: the cord thins by 1/√(1 + stretch)
 * (derived).
 */
export function squeezeShare(cordMm: number, grooveDepthMm: number, gapMm: number, stretch: number): number {
  return 1 - ((grooveDepthMm + max(0, gapMm)) * sqrt(1 + stretch)) / cordMm;
}

/**
 * The same with the thinnest cord in the deepest groove at the widest gap. Negative: the cord does not touch.
 * d cord, mm; t_d its tolerance, mm; h groove depth, mm; t_h its tolerance, mm; g gap of the faces, mm; t_g its tolerance, mm; s stretch.
 * Limits: as SEAL.SQUEEZE has them. Source: plane geometry (derived); rubber keeps its volume: the cord thins by 1/√(1 + stretch)
 * (derived).
 */
export function leastSqueeze(
  cordMm: number,
  cordTol: Deviation,
  grooveDepthMm: number,
  depthTol: Deviation,
  gapMm: number,
  gapTol: Deviation,
  stretch: number,
): number {
  return squeezeShare(cordMm + cordTol.lowerMm, grooveDepthMm + depthTol.upperMm, gapMm + gapTol.upperMm, stretch);
}

/**
 * Least, nominal and largest squeeze of a cord, shares of its thickness, by worst case. A gap below 0 counts as 0.
 * d cord, mm; t_d its tolerance, mm; h groove depth, mm; t_h its tolerance, mm; g gap of the faces, mm; t_g its tolerance, mm; s stretch.
 * SEAL.SQUEEZE accepts d, h above 0 mm; s at least 0 and at most 1; tolerances that leave no cord or no groove, and a cord that does not
 * touch at worst, are refused. Source: plane geometry (derived); rubber keeps its volume: the cord thins by 1/√(1 + stretch) (derived).
 */
export function sealSqueeze(
  cordMm: number,
  cordTol: Deviation,
  grooveDepthMm: number,
  depthTol: Deviation,
  gapMm: number,
  gapTol: Deviation,
  stretch: number,
): number[] {
  return [
    leastSqueeze(cordMm, cordTol, grooveDepthMm, depthTol, gapMm, gapTol, stretch),
    squeezeShare(cordMm, grooveDepthMm, gapMm, stretch),
    squeezeShare(cordMm + cordTol.upperMm, grooveDepthMm + depthTol.lowerMm, gapMm + gapTol.lowerMm, stretch),
  ];
}

/**
 * Largest share of a rectangular groove that a round cord fills.
 * d cord, mm; b groove width, mm; h groove depth, mm; t_d tolerance of the cord, mm; t_b of the width, mm; t_h of the depth, mm.
 * SEAL.FILL accepts d, b, h above 0 mm; tolerances that leave nothing, and a groove filled solid, are refused.
 * Source: plane geometry (derived).
 */
export function sealFill(
  cordMm: number,
  grooveWidthMm: number,
  grooveDepthMm: number,
  cordTol: Deviation,
  widthTol: Deviation,
  depthTol: Deviation,
): number {
  return (PI * (cordMm + cordTol.upperMm) ** 2) / (4 * (grooveWidthMm + widthTol.lowerMm) * (grooveDepthMm + depthTol.lowerMm));
}

/**
 * Stretch s of a ring in its groove, by their inside diameters; that along the middle of the cord is a little less.
 * d_r inside of the ring, mm; d_g inside of the groove, mm.
 * SEAL.STRETCH accepts d_r above 0 mm; d_g above 0 mm, at least d_r: a loose ring is not stretched.
 * Source: plane geometry (derived).
 */
export function sealStretch(ringInsideMm: number, grooveInsideMm: number): number {
  return grooveInsideMm / ringInsideMm - 1;
}
