import { cell } from './cell';

/**
 * Outside diameter of a boss round a threaded insert, mm.
 * @customfunction INSERT.BOSS.OD
 * @param insert Largest outside diameter of the insert, mm or text with unit
 * @param [ratio] Boss diameter over insert diameter, a number above 1; 2 if omitted
 * @returns Outside diameter, mm
 */
export function insertBossOd(insert: any, ratio?: any): any {
  return cell('INSERT.BOSS.OD', [insert, ratio]);
}

/**
 * Depth of the hole for an insert, mm, with room for displaced plastic and the tip of the screw.
 * @customfunction INSERT.HOLE.DEPTH
 * @param insert_length Length of the insert, mm or text with unit
 * @param [margin] Room under the insert, mm or text; "0 mm" for none, a blank or 0 is 1; 1 if omitted
 * @param [below_face] How far the insert lies below the boss face, mm or text; 0 if omitted
 * @returns Depth of the hole, mm
 */
export function insertHoleDepth(insert_length: any, margin?: any, below_face?: any): any {
  return cell('INSERT.HOLE.DEPTH', [insert_length, margin, below_face]);
}

/**
 * Full thread of the screw in the insert, mm. Negative: the screw does not reach it.
 * @customfunction INSERT.ENGAGEMENT
 * @param length Screw length, mm or text with unit
 * @param grip Grip, or the range of its layers, mm
 * @param insert_length Length of the insert, mm or text with unit
 * @param [below_face] How far the insert lies below the boss face, mm or text; 0 if omitted
 * @param [point] Length at the point without full thread, mm or text; "M3" reads it; 0 if omitted
 * @returns Full thread, mm
 */
export function insertEngagement(length: any, grip: any[][], insert_length: any, below_face?: any, point?: any): any {
  return cell('INSERT.ENGAGEMENT', [length, grip, insert_length, below_face, point]);
}

/**
 * Ring of the insert that lies under the mating part, mm. Negative: the screw draws the insert out.
 * @customfunction INSERT.LANDING
 * @param insert Largest outside diameter of the insert, mm or text with unit
 * @param hole Clearance hole of the mating part, mm or text; "M3 medium" reads its largest
 * @returns Width of the ring, mm
 */
export function insertLanding(insert: any, hole: any): any {
  return cell('INSERT.LANDING', [insert, hole]);
}

/**
 * Hoop strain of the plastic round a moulded-in insert, a share, an estimate; without shrinkage the thermal part alone.
 * @customfunction INSERT.STRAIN
 * @param expansion Expansion of the plastic, 1e-6/K, or a material, "ABS"
 * @param expansion_insert Expansion of the insert, 1e-6/K, or your own two columns that hold it
 * @param temperature_change Temperature change, K
 * @param [shrinkage] Mould shrinkage, a share, "0.5 %", or a material; 0 if omitted
 * @returns Strain, a share
 */
export function insertStrain(expansion: any[][], expansion_insert: any[][], temperature_change: any, shrinkage?: any[][]): any {
  return cell('INSERT.STRAIN', [expansion, expansion_insert, temperature_change, shrinkage]);
}

/**
 * Force that pulls a threaded insert out of its boss, N, an estimate.
 * @customfunction INSERT.PULLOUT
 * @param insert Largest outside diameter of the insert, mm or text with unit
 * @param insert_length Length of the insert, mm or text with unit
 * @param yield_stress Strength of the plastic, MPa or text, or a material, "ABS"
 * @param [share] Share of the insert's surface that holds, "50 %"; 0.5 if omitted
 * @param [safety] Safety factor, at least 1; 1 if omitted
 * @returns Force, N
 */
export function insertPullout(insert: any, insert_length: any, yield_stress: any[][], share?: any, safety?: any): any {
  return cell('INSERT.PULLOUT', [insert, insert_length, yield_stress, share, safety]);
}

/**
 * Width across the flats of a pocket for a hexagon nut, mm: that of the widest nut and an allowance.
 * @customfunction NUT.POCKET
 * @param size Nut by its thread, in quotes, "M3"; ISO 4032
 * @param [allowance] Room across the flats, mm or text; "0 mm" for none, a blank or 0 is 0.1; 0.1 if omitted
 * @returns Width across flats, mm
 */
export function nutPocket(size: any, allowance?: any): any {
  return cell('NUT.POCKET', [size, allowance]);
}

/**
 * Width across the corners of a pocket for a hexagon nut, mm.
 * @customfunction NUT.POCKET.CORNER
 * @param size Nut by its thread, in quotes, "M3"; ISO 4032
 * @param [allowance] Room across the flats, mm or text; "0 mm" for none, a blank or 0 is 0.1; 0.1 if omitted
 * @returns Width across corners, mm
 */
export function nutPocketCorner(size: any, allowance?: any): any {
  return cell('NUT.POCKET.CORNER', [size, allowance]);
}

/**
 * Height of a hexagon nut, mm, by ISO 4032.
 * @customfunction NUT.HEIGHT
 * @param size Nut by its thread, in quotes, "M3"
 * @param [limit] max or min; max if omitted
 * @returns Height, mm
 */
export function nutHeight(size: any, limit?: any): any {
  return cell('NUT.HEIGHT', [size, limit]);
}
