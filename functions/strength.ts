import { cell } from './cell';

/**
 * Force that shears the plastic thread out of a boss, N, an estimate for tapping screws.
 * A machine thread in plastic is refused: the cylinder overstates it.
 * @customfunction PULLOUT
 * @param size Tapping screw in quotes, "ST2.9", or an own screw; mean of its largest major and root diameter
 * @param engagement Full-thread engagement, mm or text with unit
 * @param yield_stress Strength of the plastic, MPa or text, or a material, "ABS"
 * @param [safety] Safety factor, at least 1; 1 if omitted
 * @param [thread_share] Share of the flank depth in plastic, "75 %" or a material; below a half it counts; 1 if omitted
 * @returns Pull-out force, N
 */
export function pullout(size: any, engagement: any, yield_stress: any[][], safety?: any, thread_share?: any[][]): any {
  return cell('PULLOUT', [size, engagement, yield_stress, safety, thread_share]);
}

/**
 * Force that tears the boss off across its net section, N, an estimate.
 * @customfunction PULLOUT.BOSS
 * @param od Outside diameter of the boss at the section, mm or text with unit
 * @param size Screw in quotes, "ST2.9", or an own screw; its largest major diameter is taken as the hole
 * @param yield_stress Strength of the plastic, MPa or text, or a material, "ABS"
 * @param [safety] Safety factor, at least 1; 1 if omitted
 * @returns Force, N
 */
export function pulloutBoss(od: any, size: any, yield_stress: any[][], safety?: any): any {
  return cell('PULLOUT.BOSS', [od, size, yield_stress, safety]);
}

/**
 * Force that shears a flat-seated head through its seat, N, an estimate.
 * @customfunction PULLOUT.SEAT
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its smallest; no countersunk heads
 * @param seat Thickness of the seat under the head, mm or text with unit
 * @param yield_stress Strength of the plastic, MPa or text, or a material, "ABS"
 * @param [safety] Safety factor, at least 1; 1 if omitted
 * @returns Force, N
 */
export function pulloutSeat(head_diameter: any, seat: any, yield_stress: any[][], safety?: any): any {
  return cell('PULLOUT.SEAT', [head_diameter, seat, yield_stress, safety]);
}

/**
 * Torque that strips the thread in the boss, N·m, an estimate from the pull-out force.
 * @customfunction TORQUE.STRIP
 * @param pullout Pull-out force of the thread, N or text, "120 lbf"
 * @param size Screw in quotes, "ST2.9", or an own screw; mean of its largest major and root diameter
 * @param friction Friction of the screw in the plastic, a number
 * @returns Strip torque, N·m
 */
export function torqueStrip(pullout: any, size: any, friction: any): any {
  return cell('TORQUE.STRIP', [pullout, size, friction]);
}

/**
 * Setting of the driver between drive and strip torque, N·m.
 * @customfunction TORQUE.SET
 * @param drive Torque that drives the screw in, N·m or text, "35 N.cm"
 * @param strip Torque that strips the thread, N·m or text
 * @param [share] Share of the way from drive to strip; "0 %" for none, a blank or 0 is 0.5; 0.5 if omitted
 * @returns Set torque, N·m
 */
export function torqueSet(drive: any, strip: any, share?: any): any {
  return cell('TORQUE.SET', [drive, strip, share]);
}

/**
 * Strip ÷ drive torque with its state, and the lowest and highest setting, N·m.
 * Spills as a table.
 * @customfunction TORQUE.WINDOW
 * @param drive Torque that drives the screw in, N·m or text, "35 N.cm"
 * @param strip Torque that strips the thread, N·m or text
 * @param [ratio] Least strip ÷ drive required, a number; 3 if omitted
 * @param [scatter] Scatter of the driver, a share of its torque; "0 %" for none, a blank or 0 is 0.1; 0.1 if omitted
 * @returns Table with a header row
 */
export function torqueWindow(drive: any, strip: any, ratio?: any, scatter?: any): any[][] {
  return cell('TORQUE.WINDOW', [drive, strip, ratio, scatter]) as any[][];
}

/**
 * Torque that makes a clamp force under the head, N·m.
 * @customfunction TORQUE.CLAMP
 * @param force Clamp force, N or text, "45 lbf"
 * @param size Screw in quotes, "ST2.9", or an own screw; mean of its largest major and root diameter
 * @param thread_friction Friction in the thread, a number above 0
 * @param head_friction Friction under the head, a number above 0
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its smallest; no countersunk heads
 * @param hole Hole under the head, mm or text; "M3 medium" reads its nominal
 * @param [flank] Half the thread angle, degrees or text; 30 if omitted
 * @returns Torque, N·m
 */
export function torqueClamp(
  force: any,
  size: any,
  thread_friction: any,
  head_friction: any,
  head_diameter: any,
  hole: any,
  flank?: any,
): any {
  return cell('TORQUE.CLAMP', [force, size, thread_friction, head_friction, head_diameter, hole, flank]);
}

/**
 * Clamp force left when the plastic has relaxed, N, an estimate.
 * @customfunction CLAMP.RELAX
 * @param force Clamp force at the start, N or text, "45 lbf"
 * @param modulus_start Modulus at the start, MPa or text, or a material, "ABS"
 * @param modulus_end Creep modulus after the time, MPa or text; not above the start
 * @returns Clamp force, N
 */
export function clampRelax(force: any, modulus_start: any[][], modulus_end: any): any {
  return cell('CLAMP.RELAX', [force, modulus_start, modulus_end]);
}

/**
 * Pressure under a flat-seated head, MPa.
 * @customfunction BEARING
 * @param force Clamp force, N or text, "45 lbf"
 * @param head_diameter Head diameter, mm or text; "M3 pan" reads its smallest; no countersunk heads
 * @param hole Hole under the head, mm or text; "M3 medium" reads its largest
 * @returns Bearing pressure, MPa
 */
export function bearing(force: any, head_diameter: any, hole: any): any {
  return cell('BEARING', [force, head_diameter, hole]);
}

/**
 * Hoop stress at the bore of a boss pressed over a rigid pin, MPa.
 * @customfunction HOOP.STRESS
 * @param interference Interference on diameter, mm or text with unit
 * @param pin Pin diameter, mm or text with unit
 * @param od Outside diameter of the boss, mm or text with unit
 * @param modulus Modulus of the plastic, MPa or text, or a material, "ABS"
 * @param poisson Poisson ratio of the plastic, or your own two columns that hold it
 * @returns Hoop stress, MPa
 */
export function hoopStress(interference: any, pin: any, od: any, modulus: any[][], poisson: any[][]): any {
  return cell('HOOP.STRESS', [interference, pin, od, modulus, poisson]);
}

/**
 * Largest interference on diameter at which the hoop stress stays within a limit, mm.
 * @customfunction HOOP.LIMIT
 * @param stress Hoop stress allowed at the bore, MPa or text with unit
 * @param pin Pin diameter, mm or text with unit
 * @param od Outside diameter of the boss, mm or text with unit
 * @param modulus Modulus of the plastic, MPa or text, or a material, "ABS"
 * @param poisson Poisson ratio of the plastic, or your own two columns that hold it
 * @returns Interference on diameter, mm
 */
export function hoopLimit(stress: any, pin: any, od: any, modulus: any[][], poisson: any[][]): any {
  return cell('HOOP.LIMIT', [stress, pin, od, modulus, poisson]);
}

/**
 * Axial force that pushes a rigid pin through its press fit, N, an estimate.
 * @customfunction HOOP.PUSH
 * @param interference Interference on diameter, mm or text with unit
 * @param pin Pin diameter, mm or text with unit
 * @param od Outside diameter of the boss, mm or text with unit
 * @param length Length of the press fit, mm or text with unit
 * @param modulus Modulus of the plastic, MPa or text, or a material, "ABS"
 * @param poisson Poisson ratio of the plastic, or your own two columns that hold it
 * @param friction Friction of pin and plastic, a number
 * @returns Force, N
 */
export function hoopPush(interference: any, pin: any, od: any, length: any, modulus: any[][], poisson: any[][], friction: any): any {
  return cell('HOOP.PUSH', [interference, pin, od, length, modulus, poisson, friction]);
}

/**
 * Whole number of screws that share a short-term load.
 * @customfunction SCREW.COUNT
 * @param load Short-term load on all screws, N or text, "45 lbf"
 * @param pullout Pull-out force of one screw, N or text
 * @param [safety] Safety factor; 2 if omitted
 * @returns Number of screws
 */
export function screwCount(load: any, pullout: any, safety?: any): any {
  return cell('SCREW.COUNT', [load, pullout, safety]);
}
