import { cell } from './cell';

/**
 * Grip of the screw, mm: the sum of all that lies between head seat and boss face.
 * @customfunction GRIP
 * @param layers Layers under the head, a row or column, mm or text with unit, each above 0
 * @returns Grip, mm
 */
export function grip(layers: any[][]): any {
  return cell('GRIP', [layers]);
}

/**
 * Smallest, nominal and largest grip, mm, all tolerances at their worst.
 * Spills as one row.
 * @customfunction GRIP.LIMITS
 * @param layers Layers under the head, a row or column, mm or text with unit
 * @param tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @returns Min, nominal, max, mm
 */
export function gripLimits(layers: any[][], tolerances: any[][]): any[][] {
  return cell('GRIP.LIMITS', [layers, tolerances]) as any[][];
}

/**
 * Length of the screw below the boss face, mm: length − grip.
 * @customfunction PENETRATION
 * @param length Screw length under the head, mm or text with unit
 * @param grip Grip, mm or text, or the range of its layers
 * @returns Length below the boss face, mm
 */
export function penetration(length: any, grip: any[][]): any {
  return cell('PENETRATION', [length, grip]);
}

/**
 * Length of full thread inside the boss, mm; negative where the screw does not reach.
 * @customfunction ENGAGEMENT
 * @param length Screw length under the head, mm or text with unit
 * @param grip Grip, mm or text, or the range of its layers
 * @param [relief] Depth of the relief at the mouth of the boss, mm or text; 0 if omitted
 * @param [point] Length without full thread, mm or text; "ST2.9 cone" reads it; 0 if omitted
 * @returns Full-thread engagement, mm
 */
export function engagement(length: any, grip: any[][], relief?: any, point?: any): any {
  return cell('ENGAGEMENT', [length, grip, relief, point]);
}

/**
 * Worst, nominal and largest engagement and the root-sum-square half spread, mm.
 * Spills as one row.
 * The spread lies about the middle of the limits.
 * @customfunction ENGAGEMENT.LIMITS
 * @param length Screw length under the head, mm or text with unit
 * @param length_tol Its tolerance: ± half width, mm, or "+0/-0.8"; "ST2.9 flat" reads it; a blank is 0
 * @param layers Layers under the head, a row or column, mm or text with unit
 * @param tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @param [relief] Depth of the relief at the mouth of the boss, mm or text; 0 if omitted
 * @param [relief_tol] Tolerance of the relief depth: ± half width, mm, or text; 0 if omitted
 * @param [point] Length without full thread, mm or text; if omitted of the screw in length_tol, or 0; "0 mm": none
 * @returns Worst min, nominal, worst max, half spread, mm
 */
export function engagementLimits(
  length: any,
  length_tol: any,
  layers: any[][],
  tolerances: any[][],
  relief?: any,
  relief_tol?: any,
  point?: any,
): any[][] {
  return cell('ENGAGEMENT.LIMITS', [length, length_tol, layers, tolerances, relief, relief_tol, point]) as any[][];
}

/**
 * Engagement ÷ screw diameter, a ratio.
 * @customfunction ENGAGEMENT.RATIO
 * @param engagement Full-thread engagement, mm or text with unit; a blank is 0
 * @param size Screw in quotes, "ST2.9", or an own screw; its nominal diameter is taken
 * @returns Ratio
 */
export function engagementRatio(engagement: any, size: any): any {
  return cell('ENGAGEMENT.RATIO', [engagement, size]);
}

/**
 * Smallest room under the tip of the screw, mm; negative: the screw bottoms and the parts do not close.
 * @customfunction SCREW.BOTTOM
 * @param hole_depth Depth of the hole from the boss face, mm or text with unit
 * @param depth_tol Tolerance of that depth: ± half width, mm, or "+0.2/-0"; a blank is 0
 * @param length Screw length under the head, mm or text with unit
 * @param length_tol Its tolerance: ± half width, mm, or "+0/-0.8"; "ST2.9 flat" reads it; a blank is 0
 * @param layers Layers under the head, a row or column, mm or text with unit
 * @param tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @returns Room under the tip, mm
 */
export function screwBottom(hole_depth: any, depth_tol: any, length: any, length_tol: any, layers: any[][], tolerances: any[][]): any {
  return cell('SCREW.BOTTOM', [hole_depth, depth_tol, length, length_tol, layers, tolerances]);
}

/**
 * Every standard length with worst engagement, hole depth needed, state and reason, mm.
 * Spills as a table.
 * @customfunction SCREW.LENGTH.TABLE
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param layers Layers under the head, a row or column, mm or text with unit
 * @param tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @param ratio Least worst-case engagement ÷ screw diameter, a number above 0
 * @param hole_depth Depth of the hole from the boss face, mm or text with unit
 * @param bottom_gap Room to leave under the tip, mm or text with unit; a blank is 0
 * @param [relief] Depth of the relief at the mouth of the boss, mm or text; 0 if omitted
 * @param [relief_tol] Tolerance of the relief depth: ± half width, mm, or text; 0 if omitted
 * @param [end] "cone" or "flat" end of a tapping screw; "cone" if omitted
 * @returns Table with a header row
 */
export function screwLengthTable(
  size: any,
  layers: any[][],
  tolerances: any[][],
  ratio: any,
  hole_depth: any,
  bottom_gap: any,
  relief?: any,
  relief_tol?: any,
  end?: any,
): any[][] {
  return cell('SCREW.LENGTH.TABLE', [size, layers, tolerances, ratio, hole_depth, bottom_gap, relief, relief_tol, end]) as any[][];
}

/**
 * Shortest standard length that holds well enough and does not bottom, mm.
 * If there is none the message says which rule stops it.
 * @customfunction SCREW.LENGTH.PICK
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param layers Layers under the head, a row or column, mm or text with unit
 * @param tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @param ratio Least worst-case engagement ÷ screw diameter, a number above 0
 * @param hole_depth Depth of the hole from the boss face, mm or text with unit
 * @param bottom_gap Room to leave under the tip, mm or text with unit; a blank is 0
 * @param [relief] Depth of the relief at the mouth of the boss, mm or text; 0 if omitted
 * @param [relief_tol] Tolerance of the relief depth: ± half width, mm, or text; 0 if omitted
 * @param [end] "cone" or "flat" end of a tapping screw; "cone" if omitted
 * @returns Screw length, mm
 */
export function screwLengthPick(
  size: any,
  layers: any[][],
  tolerances: any[][],
  ratio: any,
  hole_depth: any,
  bottom_gap: any,
  relief?: any,
  relief_tol?: any,
  end?: any,
): any {
  return cell('SCREW.LENGTH.PICK', [size, layers, tolerances, ratio, hole_depth, bottom_gap, relief, relief_tol, end]);
}

/**
 * Every standard length, mm, with the number of joints it passes: one length for several places.
 * Spills as a table.
 * @customfunction SCREW.LENGTH.COMMON
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param grips Grips, one row per joint, mm or text with unit
 * @param grip_tolerances Tolerance of each grip: ± half width, mm, or text; one for all will do
 * @param hole_depths Hole depth of each joint from the boss face, mm or text; one for all will do
 * @param ratio Least worst-case engagement ÷ screw diameter, a number above 0
 * @param bottom_gap Room to leave under the tip, mm or text with unit; a blank is 0
 * @param [relief] Depth of the relief at the mouth of every boss, mm or text; 0 if omitted
 * @param [relief_tol] Tolerance of that depth: ± half width, mm, or text; 0 if omitted
 * @param [end] "cone" or "flat" end of a tapping screw; "cone" if omitted
 * @returns Table with a header row
 */
export function screwLengthCommon(
  size: any,
  grips: any[][],
  grip_tolerances: any[][],
  hole_depths: any[][],
  ratio: any,
  bottom_gap: any,
  relief?: any,
  relief_tol?: any,
  end?: any,
): any[][] {
  return cell('SCREW.LENGTH.COMMON', [size, grips, grip_tolerances, hole_depths, ratio, bottom_gap, relief, relief_tol, end]) as any[][];
}
