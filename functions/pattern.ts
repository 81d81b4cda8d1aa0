import { cell } from './cell';

/**
 * Length of a locating slot, mm, for a board on a round hole and a slot; its width is that of the hole.
 * @customfunction PATTERN.SLOT
 * @param hole Hole, mm or text; "M3 medium" reads it
 * @param distance Distance from the round hole to the slot, mm or text with unit
 * @param tolerance Tolerance of that distance, both parts together, ± mm or "+a/-b"; a blank is 0
 * @param [expansion_a] Expansion of one part, 1e-6/K, or a material, "ABS"; 0 if omitted
 * @param [expansion_b] Expansion of the other part, 1e-6/K, or a material; 0 if omitted
 * @param [temperature_change] From assembly to the farther extreme, K; 0 if omitted
 * @returns Length of the slot over all, mm
 */
export function patternSlot(
  hole: any,
  distance: any,
  tolerance: any,
  expansion_a?: any[][],
  expansion_b?: any[][],
  temperature_change?: any,
): any {
  return cell('PATTERN.SLOT', [hole, distance, tolerance, expansion_a, expansion_b, temperature_change]);
}

/**
 * Largest turn of a board on a round hole and a slot, degrees.
 * @customfunction PATTERN.TURN
 * @param play_round Play in the round hole, on diameter, mm or text with unit; a blank is 0
 * @param play_slot Play across the slot, on diameter, mm or text with unit; a blank is 0
 * @param distance Distance from the round hole to the slot, mm or text with unit
 * @returns Turn to either side, degrees
 */
export function patternTurn(play_round: any, play_slot: any, distance: any): any {
  return cell('PATTERN.TURN', [play_round, play_slot, distance]);
}

/**
 * Whether one rigid board fits over all its screws: share of simulated assemblies, least play, worst pair.
 * Spills as a table.
 * The same seed gives the same answer everywhere.
 * @customfunction PATTERN.FIT
 * @param x Position of each screw along x, a row or column, mm or text; "0 mm" for a zero
 * @param y Position of each screw along y, a row or column, mm or text; "0 mm" for a zero
 * @param zone_boss Position zone of each boss, a diameter, mm or text with unit
 * @param zone_hole Position zone of each hole in the board, a diameter, mm or text with unit
 * @param play Play of the screw in its hole, on diameter, mm or text with unit
 * @param [samples] Number of simulated assemblies, a whole number from 1000; 20000 if omitted
 * @param [seed] Start of the random numbers, a whole number; 1 if omitted
 * @returns Table with a header row, 6 × 3
 */
export function patternFit(x: any[][], y: any[][], zone_boss: any, zone_hole: any, play: any, samples?: any, seed?: any): any[][] {
  return cell('PATTERN.FIT', [x, y, zone_boss, zone_hole, play, samples, seed]) as any[][];
}
