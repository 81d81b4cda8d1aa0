import { cell } from './cell';

/**
 * Smallest gap per side between a board and the walls of its pocket, mm.
 * @customfunction BOARD.GAP
 * @param board Width of the board, mm or text with unit
 * @param board_tol Tolerance of the board's width, ± half width, mm or text; a blank is 0
 * @param inside Clear width of the pocket at its floor, mm or text with unit
 * @param [inside_tol] Tolerance of that width, ± half width, mm or text; 0 if omitted
 * @param [height] Height of the board above the pocket floor, mm or text; 0 if omitted
 * @param [draft] Draft per side of the pocket walls, degrees or text; 0 if omitted
 * @returns Gap per side, mm
 */
export function boardGap(board: any, board_tol: any, inside: any, inside_tol?: any, height?: any, draft?: any): any {
  return cell('BOARD.GAP', [board, board_tol, inside, inside_tol, height, draft]);
}

/**
 * Smallest, nominal and largest gap over a clamped board, mm; negative is crushed.
 * Spills as one row.
 * @customfunction BOARD.CLAMP
 * @param space Space for the board, or height of the sleeve through it, mm or text with unit
 * @param space_tol Tolerance of the space: ± half width, mm, or "+0.1/-0"; a blank is 0
 * @param board Thickness of the board, mm or text with unit
 * @param board_tol Tolerance of the thickness: ± half width, mm, or text; a blank is 0
 * @returns Min, nominal, max, mm
 */
export function boardClamp(space: any, space_tol: any, board: any, board_tol: any): any[][] {
  return cell('BOARD.CLAMP', [space, space_tol, board, board_tol]) as any[][];
}

/**
 * Radius around the hole that the metal of the screw can reach, mm.
 * @customfunction BOARD.REACH
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its largest
 * @param hole Hole in the board, mm or text; "M3 medium" reads its largest
 * @param screw Screw diameter, mm or text; "M3" reads its smallest major diameter
 * @param [shift] Further sideways shift, a radius, mm or text with unit; 0 if omitted
 * @returns Radius, mm
 */
export function boardReach(head_diameter: any, hole: any, screw: any, shift?: any): any {
  return cell('BOARD.REACH', [head_diameter, hole, screw, shift]);
}

/**
 * Distance from copper to metal beyond the one required, mm; negative is too close.
 * @customfunction BOARD.MARGIN
 * @param copper Distance of the nearest copper from the hole's centre, mm or text with unit
 * @param reach Radius that metal can reach, mm or text with unit
 * @param required Distance that your standard requires, mm or text; no default, 0 and blank are refused
 * @returns Margin, mm
 */
export function boardMargin(copper: any, reach: any, required: any): any {
  return cell('BOARD.MARGIN', [copper, reach, required]);
}

/**
 * Diameter of the keep-out on a board around hardware, mm: factor × its diameter.
 * @customfunction BOARD.KEEPOUT
 * @param hardware_diameter Head, washer or boss, mm or text; "M3 pan" reads its largest head
 * @param [factor] Factor on the diameter, a number from 1; 1.25 if omitted
 * @returns Keep-out diameter, mm
 */
export function boardKeepout(hardware_diameter: any, factor?: any): any {
  return cell('BOARD.KEEPOUT', [hardware_diameter, factor]);
}

/**
 * Play per side of a sleeve in the hole of a board, mm: (hole − sleeve)/2 − shift.
 * @customfunction BOARD.SLEEVE
 * @param hole Hole in the board, mm or text; "M3 medium" reads its nominal
 * @param sleeve Outside diameter of the sleeve, mm or text with unit
 * @param [shift] Sideways shift between the two, a radius, mm or text; 0 if omitted
 * @returns Play per side, mm
 */
export function boardSleeve(hole: any, sleeve: any, shift?: any): any {
  return cell('BOARD.SLEEVE', [hole, sleeve, shift]);
}

/**
 * Ring of the boss that still holds the board at its worst sideways position, mm.
 * @customfunction BOARD.HOLD
 * @param boss_od Outside diameter of the boss face, mm or text with unit
 * @param board_hole Hole in the board, mm or text; "M3 medium" reads its nominal
 * @param sleeve Outside diameter of the sleeve in that hole, mm or text with unit
 * @param [shift] Sideways shift of sleeve to boss, a radius, mm or text; 0 if omitted
 * @returns Ring, mm
 */
export function boardHold(boss_od: any, board_hole: any, sleeve: any, shift?: any): any {
  return cell('BOARD.HOLD', [boss_od, board_hole, sleeve, shift]);
}

/**
 * Sag of a board strip under a force in the middle of its span, mm: an estimate.
 * @customfunction BOARD.SAG
 * @param force Force in the middle of the span, as of a connector, N or text with unit
 * @param span Span between the two supports, mm or text with unit
 * @param width Width of the strip that carries, mm or text with unit
 * @param thickness Thickness of the board, mm or text with unit
 * @param modulus Modulus of the board in bending, MPa or text with unit, or a material
 * @param [ends] "simple" (free to turn) or "clamped"; "simple" if omitted
 * @returns Sag, mm
 */
export function boardSag(force: any, span: any, width: any, thickness: any, modulus: any[][], ends?: any): any {
  return cell('BOARD.SAG', [force, span, width, thickness, modulus, ends]);
}

/**
 * Strain on the surface of a board strip under a force in the middle of its span, in 1e-6: an estimate.
 * @customfunction BOARD.STRAIN
 * @param force Force in the middle of the span, as of a connector, N or text with unit
 * @param span Span between the two supports, mm or text with unit
 * @param width Width of the strip that carries, mm or text with unit
 * @param thickness Thickness of the board, mm or text with unit
 * @param modulus Modulus of the board in bending, MPa or text with unit, or a material
 * @param [ends] "simple" (free to turn) or "clamped"; "simple" if omitted
 * @returns Strain, in 1e-6
 */
export function boardStrain(force: any, span: any, width: any, thickness: any, modulus: any[][], ends?: any): any {
  return cell('BOARD.STRAIN', [force, span, width, thickness, modulus, ends]);
}

/**
 * First natural frequency of a rectangular board with its mass spread evenly, Hz: an estimate.
 * @customfunction BOARD.FREQUENCY
 * @param length Length of the board, mm or text with unit
 * @param width Width of the board, mm or text with unit
 * @param thickness Thickness of the board, mm or text with unit
 * @param mass Mass of the board with all that is on it, g or text with unit
 * @param modulus Modulus of the board in bending, MPa or text with unit, or a material
 * @param poisson Poisson ratio of the board, a number, or a material
 * @param edges All four edges "simple" (free to turn) or "clamped", or held on its four "corners"
 * @returns Frequency, Hz
 */
export function boardFrequency(length: any, width: any, thickness: any, mass: any, modulus: any[][], poisson: any[][], edges: any): any {
  return cell('BOARD.FREQUENCY', [length, width, thickness, mass, modulus, poisson, edges]);
}

/**
 * Gap that two materials of one length need for a change of temperature, mm.
 * @customfunction THERMAL.GAP
 * @param length Length of both, mm or text with unit
 * @param expansion_a Expansion of the first, 1e-6/K or text with unit, or a material, "ABS"
 * @param expansion_b Expansion of the second, 1e-6/K or text with unit, or a material, "PC"
 * @param temperature_change Change of temperature, up or down, K
 * @returns Gap, mm
 */
export function thermalGap(length: any, expansion_a: any[][], expansion_b: any[][], temperature_change: any): any {
  return cell('THERMAL.GAP', [length, expansion_a, expansion_b, temperature_change]);
}
