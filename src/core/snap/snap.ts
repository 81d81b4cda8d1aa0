// A snap hook as a straight cantilever of one width, its thickness tapering from root to tip; its root and the wall behind it are stiff.
import { abs, ln, min, tanDeg } from '../maths';

/** Beyond a third of the length the straight beam is more than a tenth off. */
export const LARGEST_DEFLECTION = 1 / 3;
/** Beyond a tenth the strain is no longer small. */
export const LARGEST_HOOK_STRAIN = 0.1;

/**
 * Deflection of a hook that tapers ÷ that of a straight one under the same force: 3·∫u²/(r + (1 − r)·u)³ du from 0 to 1.
 * r tip thickness ÷ thickness at the root.
 * Limits: as SNAP.STRAIN has them. Source: curvature M/(E·I) integrated along the hook (derived).
 */
export function hookBending(ratio: number): number {
  const taper = (1 - ratio) / (1 + ratio);
  const overMean = 2 / (1 + ratio);
  // near equal thickness the logarithm loses its digits; its series has them
  const curve = abs(taper) < 0.03 ? 1 / 3 + taper ** 2 / 5 + taper ** 4 / 7 + taper ** 6 / 9 : (-ln(ratio) / 2 - taper) / taper ** 3;
  return 0.75 * overMean * (1 + overMean ** 2 * curve);
}

/**
 * Where the strain of a hook is largest, from its root, mm: the root, or where it is twice as thick as at its tip.
 * L length, mm; r tip thickness ÷ thickness at the root.
 * Limits: as SNAP.STRAIN has them. Source: curvature M/(E·I) along the hook (derived).
 */
export function largestStrainAtMm(lengthMm: number, ratio: number): number {
  return ratio < 0.5 ? (lengthMm * (1 - 2 * ratio)) / (1 - ratio) : 0;
}

/**
 * Strain at that place ÷ strain at the root.
 * L length, mm; r tip thickness ÷ thickness at the root; x place from the root, mm.
 * Limits: as SNAP.STRAIN has them. Source: curvature M/(E·I) along the hook (derived).
 */
export function peakOverRoot(lengthMm: number, ratio: number, placeMm: number): number {
  return (1 - placeMm / lengthMm) / min(1, 2 * ratio) ** 2;
}

/**
 * Largest strain ε of a hook, a share: an estimate, its root and the wall stiff.
 * y deflection at the tip, mm; L length, mm; t thickness at the root, mm; t_t thickness at the tip, mm.
 * SNAP.STRAIN accepts y, L, t, t_t above 0 mm; a y above L/3, or an ε over a tenth, is refused.
 * Source: curvature M/(E·I) integrated along the hook, root and wall rigid (derived);
 * handbooks on snap joints: 0.67·ε·L²/t, and 1.09·ε·L²/t where the tip is half as thick (from memory).
 */
export function snapStrain(deflectionMm: number, lengthMm: number, thicknessMm: number, tipThicknessMm: number): number {
  const ratio = tipThicknessMm / thicknessMm;
  const largestStrainFromRootMm = largestStrainAtMm(lengthMm, ratio);
  const strainThereOverRoot = peakOverRoot(lengthMm, ratio, largestStrainFromRootMm);
  const bendingOverStraight = hookBending(ratio);
  return (((1.5 * thicknessMm * deflectionMm) / lengthMm ** 2) * strainThereOverRoot) / bendingOverStraight;
}

/**
 * Deflection y of a hook at its tip for its largest strain, mm: an estimate, its root and the wall stiff.
 * ε largest strain; L length, mm; t thickness at the root, mm; t_t thickness at the tip, mm.
 * SNAP.DEFLECTION accepts ε above 0 and at most 0.1; L, t, t_t above 0 mm; a y above L/3 is refused.
 * Source: curvature M/(E·I) integrated along the hook, root and wall rigid (derived);
 * handbooks on snap joints: 0.67·ε·L²/t, and 1.09·ε·L²/t where the tip is half as thick (from memory).
 */
export function snapDeflectionMm(strain: number, lengthMm: number, thicknessMm: number, tipThicknessMm: number): number {
  const ratio = tipThicknessMm / thicknessMm;
  const largestStrainFromRootMm = largestStrainAtMm(lengthMm, ratio);
  const strainThereOverRoot = peakOverRoot(lengthMm, ratio, largestStrainFromRootMm);
  const bendingOverStraight = hookBending(ratio);
  return (((strain * lengthMm ** 2) / (1.5 * thicknessMm)) * bendingOverStraight) / strainThereOverRoot;
}

/**
 * Force F that bends a hook at its tip, N: an estimate, its root and the wall stiff.
 * y deflection at the tip, mm; L length, mm; w width, mm; t thickness at the root, mm; E modulus, MPa; t_t thickness at the tip, mm.
 * SNAP.FORCE accepts y, L, w, t, t_t above 0 mm; E above 0 MPa; a y above L/3, or a strain over a tenth, is refused.
 * Source: curvature M/(E·I) integrated along the hook, root and wall rigid (derived).
 */
export function snapForceN(
  deflectionMm: number,
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
  modulusMpa: number,
  tipThicknessMm: number,
): number {
  const bendingOverStraight = hookBending(tipThicknessMm / thicknessMm);
  return (deflectionMm * modulusMpa * widthMm * thicknessMm ** 3) / (4 * lengthMm ** 3 * bendingOverStraight);
}

/**
 * What friction leaves of a ramp; nothing where it locks.
 * α angle of the ramp, °; μ friction.
 * Limits: as SNAP.MATING has them. Source: friction on a ramp (derived).
 */
export function rampSlip(angleDeg: number, friction: number): number {
  return 1 - friction * tanDeg(angleDeg);
}

/**
 * Axial force F_a on a ramp that pushes a hook aside, N: an estimate.
 * F bending force, N; α angle of the ramp to the direction of mating, °; μ friction.
 * SNAP.MATING accepts F above 0 N; α above 0° and below 90°; μ above 0 and at most 1; an α at which the ramp locks is refused.
 * Source: friction on a ramp (derived).
 */
export function matingForceN(forceN: number, angleDeg: number, friction: number): number {
  return (forceN * (friction + tanDeg(angleDeg))) / rampSlip(angleDeg, friction);
}
