import { cell } from './cell';

/**
 * Length in mm, read from text with units: mixed units, fractions of an inch, sums.
 * @customfunction LENGTH.MM
 * @param length Length, mm or text: "1/16 in", "62 mil", "0.167 in + 0.25 mm"; a blank is 0
 * @returns Length, mm
 */
export function lengthMm(length: any): any {
  return cell('LENGTH.MM', [length]);
}

/**
 * Angle in degrees, read from text: degrees, arc minutes or both.
 * @customfunction ANGLE.DEG
 * @param angle Angle, degrees or text: "0.5°", "30'", "0°30'"; a blank is 0
 * @returns Angle, degrees
 */
export function angleDeg(angle: any): any {
  return cell('ANGLE.DEG', [angle]);
}

/**
 * Length as text in mm and inch, 4.24 mm (0.167 in), for a drawing note or a table.
 * Halves are rounded away from zero.
 * @customfunction DUAL
 * @param length Length, mm or text with unit; a blank is 0
 * @param [mm_places] Decimal places of the mm, 1 to 9; 2 if omitted
 * @param [in_places] Decimal places of the inch, 1 to 9; 3 if omitted
 * @returns Text
 */
export function dual(length: any, mm_places?: any, in_places?: any): any {
  return cell('DUAL', [length, mm_places, in_places]);
}

/**
 * Nominal size, lower and upper limit in mm, read from a size with its tolerance.
 * Spills as one row.
 * @customfunction LIMITS
 * @param text Text: "1.6 ±10%", "3.2 +0.1/-0", "10 -0.2/-0.4", "3.4..3.6" (nominal in the middle); with units
 * @returns Nominal, lower, upper, mm
 */
export function limits(text: any): any[][] {
  return cell('LIMITS', [text]) as any[][];
}

/**
 * The word ok, or a sentence when a length looks like inches, metres or a radius.
 * @customfunction UNIT.CHECK
 * @param length Length to check, mm or text with unit
 * @param kind What it is: "wall", "screw", "head", "board edge", "board thickness" or "height"
 * @returns Text
 */
export function unitCheck(length: any, kind: any): any {
  return cell('UNIT.CHECK', [length, kind]);
}
