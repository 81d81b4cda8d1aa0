import { cell } from './cell';

/**
 * Thickness of a rib at its tip, mm: base − 2·height·tan(draft).
 * @customfunction RIB.TIP
 * @param base Thickness at the base, mm or text with unit
 * @param height Height of the rib, mm or text with unit; a blank is 0
 * @param draft Draft per side, degrees or text; a blank is 0
 * @returns Tip thickness, mm
 */
export function ribTip(base: any, height: any, draft: any): any {
  return cell('RIB.TIP', [base, height, draft]);
}

/**
 * Thickness of a rib at its base, mm: tip + 2·height·tan(draft).
 * @customfunction RIB.BASE
 * @param tip Thickness at the tip, mm or text with unit
 * @param height Height of the rib, mm or text with unit; a blank is 0
 * @param draft Draft per side, degrees or text; a blank is 0
 * @returns Base thickness, mm
 */
export function ribBase(tip: any, height: any, draft: any): any {
  return cell('RIB.BASE', [tip, height, draft]);
}

/**
 * Section of a wall strip with one rib: area, centroid, second moment, modulus and equal flat wall, mm.
 * Spills as a table.
 * @customfunction RIB.SECTION
 * @param width Width of the strip, the spacing of the ribs, mm or text with unit
 * @param wall Wall that the rib stands on, mm or text with unit
 * @param base Thickness of the rib at its base, mm or text with unit
 * @param tip Thickness of the rib at its tip, mm or text with unit
 * @param height Height of the rib above the wall, mm or text with unit
 * @returns Table with a header row, 6 × 3
 */
export function ribSection(width: any, wall: any, base: any, tip: any, height: any): any[][] {
  return cell('RIB.SECTION', [width, wall, base, tip, height]) as any[][];
}

/**
 * Wall left outside a lip or groove at the rim, mm: wall − lip − gaps·clearance.
 * @customfunction LIP.SKIN
 * @param wall Wall at the rim, mm or text with unit
 * @param lip Thickness of the lip, mm or text with unit
 * @param clearance Clearance per side between lip and groove, mm or text; a blank is 0
 * @param [gaps] 1 for a stepped lip, 2 for tongue and groove; 1 if omitted
 * @returns Skin left, mm
 */
export function lipSkin(wall: any, lip: any, clearance: any, gaps?: any): any {
  return cell('LIP.SKIN', [wall, lip, clearance, gaps]);
}

/**
 * Smallest, nominal and largest clearance per side of a lip in its groove, mm.
 * Spills as one row.
 * @customfunction LIP.FIT
 * @param clearance Clearance per side as drawn, mm or text with unit; a blank is 0
 * @param lip_tol Position of the lip's face, ± mm or text; a blank is 0
 * @param groove_tol Position of the groove's face, ± mm or text; a blank is 0
 * @param [mismatch] Shift of the two halves against each other, mm or text; 0 if omitted
 * @returns Min, nominal, max per side, mm
 */
export function lipFit(clearance: any, lip_tol: any, groove_tol: any, mismatch?: any): any[][] {
  return cell('LIP.FIT', [clearance, lip_tol, groove_tol, mismatch]) as any[][];
}

/**
 * Gap at the rim when the bosses touch, mm; negative hangs the boss in tension.
 * @customfunction RIM.GAP
 * @param boss_stack Stack through the bosses, mm or text with unit
 * @param rim_stack Stack through the rim, mm or text with unit
 * @returns Gap at the rim, mm
 */
export function rimGap(boss_stack: any, rim_stack: any): any {
  return cell('RIM.GAP', [boss_stack, rim_stack]);
}

/**
 * Smallest, nominal and largest gap at the rim and its root-sum-square half spread, mm.
 * Spills as one row.
 * @customfunction RIM.GAP.LIMITS
 * @param boss_layers Layers of the stack through the bosses, a row or column, mm or text with unit
 * @param boss_tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @param rim_layers Layers of the stack through the rim, a row or column, mm or text with unit
 * @param rim_tolerances Their tolerances: ± half width, mm, or text "+0.1/-0.2"; one for all will do
 * @returns Min, nominal, max, half spread, mm
 */
export function rimGapLimits(boss_layers: any[][], boss_tolerances: any[][], rim_layers: any[][], rim_tolerances: any[][]): any[][] {
  return cell('RIM.GAP.LIMITS', [boss_layers, boss_tolerances, rim_layers, rim_tolerances]) as any[][];
}

/**
 * Diameter of the largest circle in a junction of wall and rib, mm.
 * @customfunction JUNCTION.CIRCLE
 * @param wall Wall, mm or text with unit
 * @param rib Thickness of the rib or boss wall at its base, mm or text with unit
 * @param [fillet] Fillet radius at the base, mm or text with unit; 0 if omitted
 * @returns Circle diameter, mm
 */
export function junctionCircle(wall: any, rib: any, fillet?: any): any {
  return cell('JUNCTION.CIRCLE', [wall, rib, fillet]);
}

/**
 * Largest circle in a junction ÷ wall, a ratio: how much thicker the plastic is there.
 * @customfunction JUNCTION.RATIO
 * @param wall Wall, mm or text with unit
 * @param rib Thickness of the rib or boss wall at its base, mm or text with unit
 * @param [fillet] Fillet radius at the base, mm or text with unit; 0 if omitted
 * @returns Ratio
 */
export function junctionRatio(wall: any, rib: any, fillet?: any): any {
  return cell('JUNCTION.RATIO', [wall, rib, fillet]);
}

/**
 * Cooling time of a plate in the mould, s.
 * @customfunction COOLING.TIME
 * @param thickness Thickest wall, mm or text with unit
 * @param diffusivity Thermal diffusivity, mm²/s, or a material, "ABS"
 * @param melt Melt temperature, °C
 * @param mould Mould temperature, °C
 * @param eject Temperature at which it is ejected, °C
 * @param [criterion] Which temperature must fall to eject: "centre" or "mean"; "centre" if omitted
 * @returns Cooling time, s
 */
export function coolingTime(thickness: any, diffusivity: any[][], melt: any, mould: any, eject: any, criterion?: any): any {
  return cell('COOLING.TIME', [thickness, diffusivity, melt, mould, eject, criterion]);
}

/**
 * Size of the cavity that shrinks to a part, mm: part/(1 − S).
 * @customfunction CAVITY.SIZE
 * @param part Size of the part, mm or text with unit
 * @param shrinkage Shrinkage, a fraction or "0.6 %", or a material, "ABS"
 * @returns Cavity size, mm
 */
export function cavitySize(part: any, shrinkage: any[][]): any {
  return cell('CAVITY.SIZE', [part, shrinkage]);
}
