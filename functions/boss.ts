import { cell } from './cell';

/**
 * Wall of an internal feature (boss, rib, post) as a share of the outer wall, mm.
 * @customfunction WALL.FEATURE
 * @param wall Outer wall that it stands on, mm or text with unit
 * @param [share] Share of the wall, a fraction or "60 %"; 0.6 if omitted
 * @returns Wall of the feature, mm
 */
export function wallFeature(wall: any, share?: any): any {
  return cell('WALL.FEATURE', [wall, share]);
}

/**
 * Outside diameter of a boss or post around a hole, mm: hole + 2·wall, plus draft on both sides.
 * @customfunction BOSS.OD
 * @param hole Hole, mm or text; "M3 medium" reads the nominal clearance hole, "ST2.9 ABS" the pilot hole
 * @param wall Wall of the boss, mm or text with unit
 * @param [distance] Distance from the free end, where the size is held, mm; 0 if omitted
 * @param [draft] Draft per side of the outside, degrees or text; 0 if omitted
 * @returns Outside diameter, mm
 */
export function bossOd(hole: any, wall: any, distance?: any, draft?: any): any {
  return cell('BOSS.OD', [hole, wall, distance, draft]);
}

/**
 * Outside diameter of a boss by the rule ratio × screw diameter, mm.
 * @customfunction BOSS.OD.RULE
 * @param size Screw in quotes, "ST2.9", or an own screw; its nominal diameter is taken
 * @param ratio Ratio to the screw diameter, or a material, "ABS": its start value
 * @returns Outside diameter, mm
 */
export function bossOdRule(size: any, ratio: any[][]): any {
  return cell('BOSS.OD.RULE', [size, ratio]);
}

/**
 * Wall of a boss at a distance from its free end, mm.
 * Beyond the hole the boss is solid and its outside diameter is the wall.
 * @customfunction BOSS.WALL
 * @param od Outside diameter at the free end, mm or text with unit
 * @param hole Hole at the free end, mm or text; "ST2.9 ABS" reads the pilot hole
 * @param [distance] Distance from the free end, mm or text with unit; 0 if omitted
 * @param [outside_draft] Draft per side of the outside, which grows away from the free end, degrees; 0 if omitted
 * @param [hole_draft] Draft per side of the hole, degrees: + narrows away from the free end, − widens; 0 if omitted
 * @param [hole_depth] Depth of the hole from the free end, mm or text; the same as distance if omitted
 * @returns Boss wall, mm
 */
export function bossWall(od: any, hole: any, distance?: any, outside_draft?: any, hole_draft?: any, hole_depth?: any): any {
  return cell('BOSS.WALL', [od, hole, distance, outside_draft, hole_draft, hole_depth]);
}

/**
 * Outside diameter, hole and wall of a boss at its free end and at its root, mm.
 * Spills as a table.
 * @customfunction BOSS.ENDS
 * @param od Outside diameter at the free end, mm or text with unit
 * @param hole Hole at the free end, mm or text; "ST2.9 ABS" reads the pilot hole
 * @param height Height of the boss from free end to root, mm or text with unit
 * @param [outside_draft] Draft per side of the outside, which grows towards the root, degrees; 0 if omitted
 * @param [hole_draft] Draft per side of the hole, degrees: + narrows towards the root, − widens; 0 if omitted
 * @param [hole_depth] Depth of the hole from the free end, mm or text; the same as height if omitted
 * @returns Table with a header row, 3 × 4
 */
export function bossEnds(od: any, hole: any, height: any, outside_draft?: any, hole_draft?: any, hole_depth?: any): any[][] {
  return cell('BOSS.ENDS', [od, hole, height, outside_draft, hole_draft, hole_depth]) as any[][];
}

/**
 * Slenderness of a boss, a ratio: height ÷ outside diameter.
 * @customfunction BOSS.SLENDER
 * @param height Height of the boss, mm or text with unit
 * @param od Outside diameter of the boss, mm or text with unit
 * @returns Ratio
 */
export function bossSlender(height: any, od: any): any {
  return cell('BOSS.SLENDER', [height, od]);
}

/**
 * Boss wall ÷ outer wall at its root, a ratio: the larger, the deeper the sink mark.
 * @customfunction BOSS.SINK
 * @param boss_wall Wall of the boss at its root, mm or text with unit
 * @param wall Outer wall that it stands on, mm or text with unit
 * @returns Ratio
 */
export function bossSink(boss_wall: any, wall: any): any {
  return cell('BOSS.SINK', [boss_wall, wall]);
}

/**
 * Largest circle in the root of a boss wall, where sink begins, mm: it touches outer face, foot and edge of the hole.
 * @customfunction BOSS.CIRCLE
 * @param boss_wall Wall of the boss at its root, mm or text with unit
 * @param wall Outer wall that it stands on, mm or text with unit
 * @param [fillet] Radius of the fillet outside, mm or text; 0 if omitted
 * @param [ring_depth] Depth of a groove round the foot of the boss, mm or text; 0 if omitted
 * @param [floor] Plastic under the hole, mm or text; 0: both sides of the wall are alike; 0 if omitted
 * @returns Diameter, mm
 */
export function bossCircle(boss_wall: any, wall: any, fillet?: any, ring_depth?: any, floor?: any): any {
  return cell('BOSS.CIRCLE', [boss_wall, wall, fillet, ring_depth, floor]);
}

/**
 * Mould steel left at the floor between a boss and a wall beside it, mm.
 * Both lean into the gap towards the floor.
 * @customfunction BOSS.STEEL
 * @param gap_top Clear gap at the boss's free end, mm or text with unit
 * @param height Height of the boss from free end to floor, mm or text with unit
 * @param [boss_draft] Draft per side of the boss, degrees or text; 0 if omitted
 * @param [wall_draft] Draft of the wall's face, degrees or text; 0 if omitted
 * @returns Steel left, mm
 */
export function bossSteel(gap_top: any, height: any, boss_draft?: any, wall_draft?: any): any {
  return cell('BOSS.STEEL', [gap_top, height, boss_draft, wall_draft]);
}

/**
 * Mould steel left at the floor between a boss and the inside corner beside it, mm; negative: merged.
 * Boss, walls and the arc of the corner are drafted; x, y and the radius are those at the boss's free end.
 * @customfunction BOSS.CORNER
 * @param od Outside diameter of the boss at its free end, mm or text with unit
 * @param x From one inner wall face to the middle of the boss, mm or text with unit
 * @param y From the other inner wall face to the middle of the boss, mm or text with unit
 * @param corner_radius Inside radius of the corner, mm or text; a blank is 0
 * @param height Height of the boss from free end to floor, mm or text with unit
 * @param [boss_draft] Draft per side of the boss, degrees or text; 0 if omitted
 * @param [wall_draft] Draft of the walls' faces, degrees or text; 0 if omitted
 * @returns Steel left, mm
 */
export function bossCorner(od: any, x: any, y: any, corner_radius: any, height: any, boss_draft?: any, wall_draft?: any): any {
  return cell('BOSS.CORNER', [od, x, y, corner_radius, height, boss_draft, wall_draft]);
}

/**
 * Flat left on the mould steel between two fillets at the floor, mm; negative is a knife edge.
 * @customfunction BOSS.FLAT
 * @param steel Steel at the floor between boss and wall, mm or text with unit
 * @param boss_fillet Fillet radius at the foot of the boss, mm or text; a blank is 0
 * @param wall_fillet Fillet radius at the foot of the wall, mm or text; a blank is 0
 * @returns Flat left, mm
 */
export function bossFlat(steel: any, boss_fillet: any, wall_fillet: any): any {
  return cell('BOSS.FLAT', [steel, boss_fillet, wall_fillet]);
}

/**
 * Boss size that the screw requires against the one that the sink share allows, mm, and the wall that satisfies both.
 * Spills as a table.
 * @customfunction BOSS.CONFLICT
 * @param size Screw in quotes, "ST2.9", or an own screw; its nominal diameter is taken
 * @param wall Outer wall that the boss stands on, mm or text with unit
 * @param pilot Pilot hole, mm or text with unit; "ST2.9 ABS" reads it
 * @param [od_ratio] Outside diameter ÷ screw diameter, or a material, "ABS"; 2 if omitted
 * @param [share] Largest boss wall as a share of the wall, a fraction or "60 %"; 0.6 if omitted
 * @returns Table with a header row, 2 × 4
 */
export function bossConflict(size: any, wall: any, pilot: any, od_ratio?: any[][], share?: any): any[][] {
  return cell('BOSS.CONFLICT', [size, wall, pilot, od_ratio, share]) as any[][];
}

/**
 * Start values for the gussets of a boss: thickness, height and base in mm, and their count.
 * Spills as a table.
 * @customfunction BOSS.GUSSET
 * @param boss_height Height of the boss, mm or text with unit
 * @param wall Outer wall that the boss stands on, mm or text with unit
 * @returns Table with a header row
 */
export function bossGusset(boss_height: any, wall: any): any[][] {
  return cell('BOSS.GUSSET', [boss_height, wall]) as any[][];
}

/**
 * Mass of a boss with its hole, g, draft counted.
 * @customfunction BOSS.MASS
 * @param od Outside diameter at the free end, mm or text with unit
 * @param hole Hole at the free end, mm or text; "ST2.9 ABS" reads the pilot hole
 * @param height Height of the boss from free end to root, mm or text with unit
 * @param density Density, g/cm³, or a material, "ABS", or your own two columns
 * @param [outside_draft] Draft per side of the outside, which grows towards the root, degrees; 0 if omitted
 * @param [hole_draft] Draft per side of the hole, degrees: + narrows towards the root, − widens; 0 if omitted
 * @param [hole_depth] Depth of the hole from the free end, mm or text; the same as height if omitted
 * @returns Mass, g
 */
export function bossMass(od: any, hole: any, height: any, density: any[][], outside_draft?: any, hole_draft?: any, hole_depth?: any): any {
  return cell('BOSS.MASS', [od, hole, height, density, outside_draft, hole_draft, hole_depth]);
}

/**
 * Shear stress in a boss under a driving torque, MPa: 16·T·D/(π·(D⁴ − d⁴)).
 * @customfunction BOSS.TORSION
 * @param torque Torque, N·m or text, "35 N.cm", "4.3 in.lbf"
 * @param od Outside diameter of the boss, mm or text with unit
 * @param hole Hole in the boss, mm or text; "ST2.9 ABS" reads the pilot hole
 * @returns Shear stress, MPa
 */
export function bossTorsion(torque: any, od: any, hole: any): any {
  return cell('BOSS.TORSION', [torque, od, hole]);
}
