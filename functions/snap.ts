import { cell } from './cell';

/**
 * Largest strain of a snap hook bent aside at its tip, a share: an estimate, root and wall rigid.
 * @customfunction SNAP.STRAIN
 * @param deflection Deflection at the tip, mm or text with unit
 * @param length Length of the hook from its root to the tip, mm or text with unit
 * @param thickness Thickness at the root, in the direction of bending, mm or text with unit
 * @param [tip_thickness] Thickness at the tip, mm or text with unit; the same as thickness if omitted
 * @returns Strain, a share
 */
export function snapStrain(deflection: any, length: any, thickness: any, tip_thickness?: any): any {
  return cell('SNAP.STRAIN', [deflection, length, thickness, tip_thickness]);
}

/**
 * Deflection at the tip of a snap hook for its largest strain, mm: an estimate, root and wall rigid.
 * @customfunction SNAP.DEFLECTION
 * @param strain Largest strain that the plastic may have, a share or "3 %"
 * @param length Length of the hook from its root to the tip, mm or text with unit
 * @param thickness Thickness at the root, in the direction of bending, mm or text with unit
 * @param [tip_thickness] Thickness at the tip, mm or text with unit; the same as thickness if omitted
 * @returns Deflection, mm
 */
export function snapDeflection(strain: any, length: any, thickness: any, tip_thickness?: any): any {
  return cell('SNAP.DEFLECTION', [strain, length, thickness, tip_thickness]);
}

/**
 * Force at the tip that bends a snap hook, N: an estimate, root and wall rigid.
 * @customfunction SNAP.FORCE
 * @param deflection Deflection at the tip, mm or text with unit
 * @param length Length of the hook from its root to the tip, mm or text with unit
 * @param width Width of the hook, mm or text with unit
 * @param thickness Thickness at the root, in the direction of bending, mm or text with unit
 * @param modulus Modulus, MPa or text with unit, or a material, "ABS"
 * @param [tip_thickness] Thickness at the tip, mm or text with unit; the same as thickness if omitted
 * @returns Force, N
 */
export function snapForce(deflection: any, length: any, width: any, thickness: any, modulus: any[][], tip_thickness?: any): any {
  return cell('SNAP.FORCE', [deflection, length, width, thickness, modulus, tip_thickness]);
}

/**
 * Axial force that pushes a snap hook aside over its ramp, N: an estimate. With the return angle it is the one for release.
 * @customfunction SNAP.MATING
 * @param force Force at the tip that bends the hook, N or text with unit
 * @param angle Angle of the ramp to the direction of mating, degrees or text
 * @param friction Friction between the parts, a number above 0
 * @returns Axial force, N
 */
export function snapMating(force: any, angle: any, friction: any): any {
  return cell('SNAP.MATING', [force, angle, friction]);
}
