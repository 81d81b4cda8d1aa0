// Pilot holes, their draft, depth and floor.
import { tanDeg } from '../maths';
import type { Deviation } from '../read/deviation';
import type { Screw } from '../screw/thread';

/**
 * Pilot hole d_h at which the thread fills the share e of its flank depth, mm; d1, d2 are the largest major and root diameters.
 * size of the screw, with its d1, d2; e thread share.
 * HOLE.PILOT accepts e at least 0 and at most 1.
 * Source: ISO 1478 / ISO 965-2 / ASME B18.6.3 / B1.1 thread limits; per cent thread by definition (read in secondary copies;
 * start values from memory).
 */
export function pilotHoleMm(screw: Screw, threadShare: number): number {
  return screw.majorMaxMm - threadShare * (screw.majorMaxMm - screw.rootMaxMm);
}

/**
 * Thread share e that a hole leaves; d1, d2 are the largest major and root diameters.
 * size of the screw, with its d1, d2; d_h hole, mm.
 * HOLE.THREAD.SHARE accepts d_h above 0 mm, at most the major diameter of the screw: a wider hole leaves no thread.
 * Source: ISO 1478 / ISO 965-2 / ASME B18.6.3 / B1.1 thread limits; per cent thread by definition (read in secondary copies;
 * start values from memory).
 */
export function threadShare(screw: Screw, holeMm: number): number {
  return (screw.majorMaxMm - holeMm) / (screw.majorMaxMm - screw.rootMaxMm);
}

/**
 * Diameter d of a drafted hole at a depth, mm. The pin that forms it is thickest at the mouth: the hole narrows with depth.
 * d_m mouth, mm; h depth, mm; α draft per side, °.
 * HOLE.AT accepts d_m above 0 mm; h at least 0 mm; α at least 0° and below 90°; a hole that closes before h is refused.
 * Source: plane geometry (derived).
 */
export function holeAtDepthMm(mouthMm: number, depthMm: number, draftDeg: number): number {
  return mouthMm - 2 * depthMm * tanDeg(draftDeg);
}

/**
 * Depth at which a drafted hole that narrows has closed, mm.
 * d_m mouth, mm; α draft per side, °.
 * Limits: as HOLE.AT has them; α above 0°, for without draft it never closes. Source: plane geometry (derived).
 */
export function holeClosesAtMm(mouthMm: number, draftDeg: number): number {
  return mouthMm / (2 * tanDeg(draftDeg));
}

/**
 * Diameter d_m at the mouth of a drafted hole whose size is held at a depth, mm.
 * d diameter at that depth, mm; h depth, mm; α draft per side, °.
 * HOLE.MOUTH accepts d above 0 mm; h at least 0 mm; α at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function holeMouthMm(diameterMm: number, depthMm: number, draftDeg: number): number {
  return diameterMm + 2 * depthMm * tanDeg(draftDeg);
}

/**
 * Diameter of the hole at a depth ÷ largest root diameter. Below 0.97 the boss is likely to split (common practice).
 * size of the screw; d_m mouth, mm; h depth, mm; α draft per side, °.
 * HOLE.TIGHT accepts d_m above 0 mm; h at least 0 mm; α at least 0° and below 90°; a hole that closes before h is refused.
 * Source: ISO 1478 / ISO 965-2 / ASME B18.6.3 / B1.1 thread limits; per cent thread by definition (read in secondary copies;
 * start values from memory).
 */
export function holeTightness(screw: Screw, mouthMm: number, depthMm: number, draftDeg: number): number {
  return holeAtDepthMm(mouthMm, depthMm, draftDeg) / screw.rootMaxMm;
}

/**
 * Hole depth H needed from the boss face, mm. The hole may come out shallower by its lower deviation.
 * P largest penetration, mm; g gap under the tip, mm; t tolerance of the depth, mm.
 * HOLE.DEPTH accepts P, g at least 0 mm; a negative depth is refused.
 * Source: plane geometry (derived).
 */
export function holeDepthNeededMm(penetrationMaxMm: number, bottomGapMm: number, depthTol: Deviation): number {
  return penetrationMaxMm + bottomGapMm - depthTol.lowerMm;
}

/**
 * Plastic left under the hole, mm.
 * T wall, mm; h boss height, mm; H hole depth, mm.
 * HOLE.FLOOR accepts T, h above 0 mm; H at least 0 mm; a hole that comes out of the outer face is refused.
 * Source: plane geometry (derived).
 */
export function holeFloorMm(wallMm: number, bossHeightMm: number, holeDepthMm: number): number {
  return wallMm + bossHeightMm - holeDepthMm;
}

/**
 * Diameter d_c of the mouth relief, mm, from the largest major diameter d1 of the screw.
 * size of the screw, with its d1; play on diameter, mm.
 * HOLE.RELIEF accepts play at least 0 mm.
 * Source: common practice.
 */
export function reliefDiaMm(screw: Screw, playMm: number): number {
  return screw.majorMaxMm + playMm;
}
