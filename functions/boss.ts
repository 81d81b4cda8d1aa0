import { cell } from "./cell";

/**
 * Outside diameter of a boss or post around a hole, mm: hole + 2·wall, plus draft on both sides.
 * @customfunction BOSS.OD
 * @param hole Hole diameter, mm or text with unit; "M3 medium" reads the clearance hole, "ST2.9 ABS" the pilot hole
 * @param wall Wall of the boss, mm or text with unit
 * @param [distance] Distance from the free end, where the size is held, mm; 0 if omitted
 * @param [draft] Draft per side of the outside, degrees; 0 if omitted
 * @returns Outside diameter, mm
 */
export function bossOd(hole: any, wall: any, distance?: any, draft?: any): any {
  return cell("BOSS.OD", [hole, wall, distance, draft]);
}
