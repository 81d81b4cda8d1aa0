import { cell } from './cell';

/**
 * Major diameter (outside of the thread) of a screw, mm, from the thread table.
 * @customfunction SCREW.MAJOR
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param [limit] "max", "min" or "nominal"; "max" if omitted
 * @returns Major diameter, mm
 */
export function screwMajor(size: any, limit?: any): any {
  return cell('SCREW.MAJOR', [size, limit]);
}

/**
 * Root diameter (core of the external thread) of a screw, mm, from the thread table.
 * For M threads the flat root is taken at max, the rounded root at min.
 * @customfunction SCREW.ROOT
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param [limit] "max" or "min"; "max" if omitted
 * @returns Root diameter, mm
 */
export function screwRoot(size: any, limit?: any): any {
  return cell('SCREW.ROOT', [size, limit]);
}

/**
 * Pitch of a screw thread, mm.
 * @customfunction SCREW.PITCH
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @returns Pitch, mm
 */
export function screwPitch(size: any): any {
  return cell('SCREW.PITCH', [size]);
}

/**
 * Length at the point that carries no full thread, mm.
 * Machine screws count two pitches.
 * @customfunction SCREW.POINT
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 B", or an own screw; none is held for AB
 * @param [end] "cone" or "flat" end of a tapping screw; "cone" if omitted
 * @returns Length at the point, mm
 */
export function screwPoint(size: any, end?: any): any {
  return cell('SCREW.POINT', [size, end]);
}

/**
 * Diameter of a screw head, mm, from the table of its standard.
 * For a countersunk head the actual edge unless sharp is asked for.
 * @customfunction SCREW.HEAD.DIAMETER
 * @param size Screw in quotes: "M3", "ST2.9", "#4", or an own screw
 * @param head Head: a standard, "ISO 7045", or a trade word, "pan", "countersunk", "socket cap"
 * @param [limit] "max", "min", "nominal", or for countersunk heads "sharp"; "max" if omitted
 * @returns Head diameter, mm
 */
export function screwHeadDiameter(size: any, head: any, limit?: any): any {
  return cell('SCREW.HEAD.DIAMETER', [size, head, limit]);
}

/**
 * Height of a screw head, mm, from the table of its standard.
 * @customfunction SCREW.HEAD.HEIGHT
 * @param size Screw in quotes: "M3", "ST2.9", "#4", or an own screw
 * @param head Head: a standard, "ISO 7045", or a trade word, "pan", "countersunk", "socket cap"
 * @param [limit] "max", "min" or "nominal"; "max" if omitted
 * @returns Head height, mm
 */
export function screwHeadHeight(size: any, head: any, limit?: any): any {
  return cell('SCREW.HEAD.HEIGHT', [size, head, limit]);
}

/**
 * Standard nominal lengths of a screw, mm, shortest first.
 * Spills as one column.
 * @customfunction SCREW.LENGTHS
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @returns Lengths, mm
 */
export function screwLengths(size: any): any[][] {
  return cell('SCREW.LENGTHS', [size]) as any[][];
}

/**
 * Lower and upper deviation of the length of a screw, mm.
 * Spills as one row.
 * @customfunction SCREW.LENGTH.TOL
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param length Nominal length, mm or text with unit
 * @param [end] "cone" or "flat" end of a tapping screw; "cone" if omitted
 * @returns Lower, upper deviation, mm
 */
export function screwLengthTol(size: any, length: any, end?: any): any[][] {
  return cell('SCREW.LENGTH.TOL', [size, length, end]) as any[][];
}

/**
 * All data for one screw and its head: value, unit, limit, standard and where the value comes from.
 * Spills as a table.
 * @customfunction SCREW.CARD
 * @param size Screw in quotes: "M3", "ST2.9", "#4-40", "#4 AB", "#4 B", or an own screw
 * @param head Head: a standard, "ISO 7045", or a trade word, "pan", "countersunk", "socket cap"
 * @returns Table with a header row
 */
export function screwCard(size: any, head: any): any[][] {
  return cell('SCREW.CARD', [size, head]) as any[][];
}

/**
 * Clearance hole for a screw, mm, by ISO 273 (M) or ASME B18.2.8 (#).
 * None is held for ST sizes but the through hole of form C, fit "DIN 74-1".
 * @customfunction HOLE.CLEARANCE
 * @param size Screw in quotes: "M3", "#4"; "ST2.9" only with fit "DIN 74-1"
 * @param [fit] "fine", "medium", "coarse"; for # "close", "normal", "loose"; "medium" if omitted
 * @param [limit] "nominal", "max" or "min"; "nominal" if omitted
 * @returns Clearance hole, mm
 */
export function holeClearance(size: any, fit?: any, limit?: any): any {
  return cell('HOLE.CLEARANCE', [size, fit, limit]);
}

/**
 * One typical value of a plastic in its core unit, a start value: the data sheet of the grade governs.
 * @customfunction MATERIAL
 * @param material Symbol in quotes, "ABS", or your own two columns of quantity and value
 * @param quantity "strength", "modulus", "density", "shrinkage", "thread share", "od ratio" and others
 * @returns Value in the core unit of the quantity
 */
export function material(material: any[][], quantity: any): any {
  return cell('MATERIAL', [material, quantity]);
}

/**
 * Typical, low and high values of a plastic with unit and how each is held.
 * Spills as a table.
 * @customfunction MATERIAL.TABLE
 * @param [material] Symbol in quotes, "ABS", or your own two columns; all materials if omitted
 * @returns Table with a header row
 */
export function materialTable(material?: any[][]): any[][] {
  return cell('MATERIAL.TABLE', [material]) as any[][];
}
