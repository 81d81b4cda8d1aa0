import { cell } from './cell';

/**
 * Pilot hole for a thread-forming screw at a thread share, mm: d1 − e·(d1 − d2).
 * A start value: confirm it by torque tests.
 * @customfunction HOLE.PILOT
 * @param size Screw in quotes, "ST2.9", or an own screw; its largest major and root diameter are taken
 * @param thread_share Share of the thread depth in the plastic: 0.75, "75 %" or a material, "ABS"
 * @returns Pilot hole, mm
 */
export function holePilot(size: any, thread_share: any[][]): any {
  return cell('HOLE.PILOT', [size, thread_share]);
}

/**
 * Share of the thread depth that bites into a hole, a fraction: (d1 − hole)/(d1 − d2).
 * @customfunction HOLE.THREAD.SHARE
 * @param size Screw in quotes, "ST2.9", or an own screw; its largest major and root diameter are taken
 * @param hole Hole diameter, mm or text with unit; "ST2.9 ABS" reads the pilot hole
 * @returns Thread share, a fraction
 */
export function holeThreadShare(size: any, hole: any): any {
  return cell('HOLE.THREAD.SHARE', [size, hole]);
}

/**
 * Diameter of a drafted hole at a depth, mm: mouth − 2·depth·tan(draft).
 * @customfunction HOLE.AT
 * @param mouth Hole at its mouth, mm or text with unit; "M3 medium" reads its nominal, "ST2.9 75 %" the pilot hole
 * @param depth Depth from the mouth, mm or text with unit; a blank is 0
 * @param [draft] Draft per side, degrees or text; 0 if omitted
 * @returns Hole at that depth, mm
 */
export function holeAt(mouth: any, depth: any, draft?: any): any {
  return cell('HOLE.AT', [mouth, depth, draft]);
}

/**
 * Diameter at the mouth of a drafted hole whose size is held at a depth, mm.
 * @customfunction HOLE.MOUTH
 * @param diameter Hole at that depth, mm or text with unit; "ST2.9 75 %" reads the pilot hole
 * @param depth Depth from the mouth at which the size is held, mm or text; a blank is 0
 * @param [draft] Draft per side, degrees or text; 0 if omitted
 * @returns Hole at the mouth, mm
 */
export function holeMouth(diameter: any, depth: any, draft?: any): any {
  return cell('HOLE.MOUTH', [diameter, depth, draft]);
}

/**
 * Hole at a depth ÷ largest root of the screw, a ratio; below 0.97 the boss is likely to split.
 * @customfunction HOLE.TIGHT
 * @param size Screw in quotes, "ST2.9", or an own screw; its largest root diameter is taken
 * @param mouth Hole at its mouth, mm or text with unit; "ST2.9 ABS" reads the pilot hole
 * @param depth Depth from the mouth, mm or text with unit; a blank is 0
 * @param [draft] Draft per side, degrees or text; 0 if omitted
 * @returns Ratio
 */
export function holeTight(size: any, mouth: any, depth: any, draft?: any): any {
  return cell('HOLE.TIGHT', [size, mouth, depth, draft]);
}

/**
 * Depth a blind hole needs from the boss face, mm: deepest screw + gap + tolerance.
 * @customfunction HOLE.DEPTH
 * @param penetration_max Deepest reach of the screw below the boss face, mm or text; a blank is 0
 * @param bottom_gap Room to leave under the tip, mm or text with unit; a blank is 0
 * @param [depth_tol] How much too shallow the hole may come out, mm or text; 0 if omitted
 * @returns Hole depth needed, mm
 */
export function holeDepth(penetration_max: any, bottom_gap: any, depth_tol?: any): any {
  return cell('HOLE.DEPTH', [penetration_max, bottom_gap, depth_tol]);
}

/**
 * Plastic left under a blind hole, mm: wall + boss height − hole depth.
 * @customfunction HOLE.FLOOR
 * @param wall Wall that the boss stands on, mm or text with unit
 * @param boss_height Height of the boss from the wall's inside to its free end, mm or text
 * @param hole_depth Depth of the hole from the boss's free end, mm or text; a blank is 0
 * @returns Floor under the hole, mm
 */
export function holeFloor(wall: any, boss_height: any, hole_depth: any): any {
  return cell('HOLE.FLOOR', [wall, boss_height, hole_depth]);
}

/**
 * Diameter of the relief (counterbore) at the mouth of a pilot hole, mm.
 * @customfunction HOLE.RELIEF
 * @param size Screw in quotes, "ST2.9", or an own screw; its largest major diameter is taken
 * @param [play] Play on diameter, mm or text; "0 mm" for none, a blank or 0 is 0.2; 0.2 if omitted
 * @returns Relief diameter, mm
 */
export function holeRelief(size: any, play?: any): any {
  return cell('HOLE.RELIEF', [size, play]);
}

/**
 * Smallest clearance hole where both parts have one (floating fastener), mm: F + T.
 * @customfunction HOLE.FLOATING
 * @param screw Screw diameter, mm or text; "M3" reads its largest major diameter
 * @param zone Position zone of the hole in each part, a diameter, mm or text; a blank is 0
 * @returns Smallest hole, mm
 */
export function holeFloating(screw: any, zone: any): any {
  return cell('HOLE.FLOATING', [screw, zone]);
}

/**
 * Smallest clearance hole over a boss that holds the screw (fixed fastener), mm: F + T1 + T2.
 * @customfunction HOLE.FIXED
 * @param screw Screw diameter, mm or text; "M3" reads its largest major diameter
 * @param zone_boss Position zone of the boss, projected, a diameter, mm or text; a blank is 0
 * @param zone_hole Position zone of the hole, a diameter, mm or text; a blank is 0
 * @returns Smallest hole, mm
 */
export function holeFixed(screw: any, zone_boss: any, zone_hole: any): any {
  return cell('HOLE.FIXED', [screw, zone_boss, zone_hole]);
}

/**
 * Smallest clearance hole where the boss holds the screw and its zone is not projected, mm.
 * @customfunction HOLE.PROJECTED
 * @param screw Screw diameter, mm or text; "M3" reads the largest major diameter
 * @param zone_boss Position zone of the hole in the boss, a diameter, mm or text; a blank is 0
 * @param zone_hole Position zone of the clearance hole, a diameter, mm or text; a blank is 0
 * @param plate Thickness that the screw passes above the boss, mm or text with unit
 * @param thread Least depth of thread in the boss, mm or text with unit
 * @returns Smallest hole, mm
 */
export function holeProjected(screw: any, zone_boss: any, zone_hole: any, plate: any, thread: any): any {
  return cell('HOLE.PROJECTED', [screw, zone_boss, zone_hole, plate, thread]);
}

/**
 * Diameter of the position zone that holds a given offset, mm: 2·√(dx² + dy²).
 * @customfunction POSITION.ZONE
 * @param dx Offset along x, mm or text with unit; a blank is 0
 * @param [dy] Offset along y, mm or text; "0 mm" for none, a blank or 0 is dx; the same as dx if omitted
 * @returns Position zone, a diameter, mm
 */
export function positionZone(dx: any, dy?: any): any {
  return cell('POSITION.ZONE', [dx, dy]);
}

/**
 * Slenderness of a core pin, a ratio: free length ÷ diameter.
 * @customfunction PIN.RATIO
 * @param length Free length of the core pin, mm or text with unit
 * @param diameter Diameter of the core pin, mm or text; "ST2.9 ABS" reads the pilot hole
 * @returns Ratio
 */
export function pinRatio(length: any, diameter: any): any {
  return cell('PIN.RATIO', [length, diameter]);
}

/**
 * Deflection at the tip of a core pin under one-sided pressure, mm.
 * The pin is round, fixed at one end and loaded evenly along its length.
 * @customfunction PIN.DEFLECTION
 * @param length Free length of the core pin, mm or text with unit
 * @param diameter Diameter of the core pin, mm or text; "ST2.9 ABS" reads the pilot hole
 * @param pressure_difference Pressure on one side less that on the other, MPa or text with unit
 * @param [modulus] Modulus of the pin's steel, MPa or text with unit; 210000 if omitted
 * @returns Deflection, mm
 */
export function pinDeflection(length: any, diameter: any, pressure_difference: any, modulus?: any): any {
  return cell('PIN.DEFLECTION', [length, diameter, pressure_difference, modulus]);
}
