import { cell } from './cell';

/**
 * Opening of a rim half way between two screws under an even load, mm, an estimate: q·L⁴/(384·E·I).
 * @customfunction RIM.SAG
 * @param pitch Distance between the screws, mm or text with unit
 * @param line_load Even load along the rim, as of a seal, N/mm or text with unit
 * @param modulus Modulus of the plastic, MPa or text, or a material, "ABS"
 * @param second_moment Second moment of area of the rim, mm⁴ or text; RIB.SECTION gives one
 * @param [ends] "clamped" where the rim goes on beyond the screws, or "simple"; "clamped" if omitted
 * @returns Opening, mm
 */
export function rimSag(pitch: any, line_load: any, modulus: any[][], second_moment: any, ends?: any): any {
  return cell('RIM.SAG', [pitch, line_load, modulus, second_moment, ends]);
}

/**
 * Screw pitch at which a rim opens by a given sag between two screws, mm, an estimate.
 * @customfunction RIM.PITCH
 * @param sag Opening that is allowed half way between two screws, mm or text with unit
 * @param line_load Even load along the rim, as of a seal, N/mm or text with unit
 * @param modulus Modulus of the plastic, MPa or text, or a material, "ABS"
 * @param second_moment Second moment of area of the rim, mm⁴ or text; RIB.SECTION gives one
 * @param [ends] "clamped" where the rim goes on beyond the screws, or "simple"; "clamped" if omitted
 * @returns Pitch, mm
 */
export function rimPitch(sag: any, line_load: any, modulus: any[][], second_moment: any, ends?: any): any {
  return cell('RIM.PITCH', [sag, line_load, modulus, second_moment, ends]);
}

/**
 * Least, nominal and largest squeeze of a sealing cord in its groove, shares of its thickness.
 * Spills as one row.
 * @customfunction SEAL.SQUEEZE
 * @param cord Diameter of the cord, mm or text with unit
 * @param cord_tol Its tolerance, ± mm or text; a blank is 0
 * @param groove_depth Depth of the groove, mm or text with unit
 * @param depth_tol Its tolerance, ± mm or text; a blank is 0
 * @param [gap] Gap between the faces beside the groove, mm or text; below 0 counts as 0; 0 if omitted
 * @param [gap_tol] Its tolerance, ± mm or text; 0 if omitted
 * @param [stretch] Stretch of the cord, a fraction or "2 %"; 0 if omitted
 * @returns Least, nominal, largest squeeze, shares
 */
export function sealSqueeze(cord: any, cord_tol: any, groove_depth: any, depth_tol: any, gap?: any, gap_tol?: any, stretch?: any): any[][] {
  return cell('SEAL.SQUEEZE', [cord, cord_tol, groove_depth, depth_tol, gap, gap_tol, stretch]) as any[][];
}

/**
 * Largest share of its groove that a sealing cord fills; a groove filled solid is refused.
 * @customfunction SEAL.FILL
 * @param cord Diameter of the cord, mm or text with unit
 * @param groove_width Width of the groove, mm or text with unit
 * @param groove_depth Depth of the groove, mm or text with unit
 * @param [cord_tol] Tolerance of the cord, ± mm or text; 0 if omitted
 * @param [width_tol] Tolerance of the width, ± mm or text; 0 if omitted
 * @param [depth_tol] Tolerance of the depth, ± mm or text; 0 if omitted
 * @returns Share
 */
export function sealFill(cord: any, groove_width: any, groove_depth: any, cord_tol?: any, width_tol?: any, depth_tol?: any): any {
  return cell('SEAL.FILL', [cord, groove_width, groove_depth, cord_tol, width_tol, depth_tol]);
}

/**
 * Stretch of a sealing ring on its groove, a share: groove inside/ring inside − 1.
 * @customfunction SEAL.STRETCH
 * @param ring_inside Inside diameter of the ring as it lies, mm or text with unit
 * @param groove_inside Inside diameter of the groove, mm or text with unit
 * @returns Stretch, a share
 */
export function sealStretch(ring_inside: any, groove_inside: any): any {
  return cell('SEAL.STRETCH', [ring_inside, groove_inside]);
}
