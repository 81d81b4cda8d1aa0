// Pilot holes, their draft, depth and floor.
import { tanDeg } from '../maths';
import type { Deviation } from '../read/deviation';
import type { Screw } from '../screw/thread';

/** d1 − e·(d1 − d2): the diameter at which the thread fills the share e of its flank depth. */
export function pilotHoleMm(screw: Screw, threadShare: number): number {
  return screw.majorMaxMm - threadShare * (screw.majorMaxMm - screw.rootMaxMm);
}

export function threadShare(screw: Screw, holeMm: number): number {
  return (screw.majorMaxMm - holeMm) / (screw.majorMaxMm - screw.rootMaxMm);
}

/** The pin that forms the hole is thickest at the mouth: the hole narrows with depth. */
export function holeAtDepthMm(mouthMm: number, depthMm: number, draftDeg: number): number {
  return mouthMm - 2 * depthMm * tanDeg(draftDeg);
}

/** Where a hole that narrows by this draft has closed. */
export function holeClosesAtMm(mouthMm: number, draftDeg: number): number {
  return mouthMm / (2 * tanDeg(draftDeg));
}

export function holeMouthMm(diameterMm: number, depthMm: number, draftDeg: number): number {
  return diameterMm + 2 * depthMm * tanDeg(draftDeg);
}

export function holeTightness(screw: Screw, mouthMm: number, depthMm: number, draftDeg: number): number {
  return holeAtDepthMm(mouthMm, depthMm, draftDeg) / screw.rootMaxMm;
}

/** The hole may come out shallower by its lower deviation. */
export function holeDepthNeededMm(penetrationMaxMm: number, bottomGapMm: number, depthTol: Deviation): number {
  return penetrationMaxMm + bottomGapMm - depthTol.lowerMm;
}

export function holeFloorMm(wallMm: number, bossHeightMm: number, holeDepthMm: number): number {
  return wallMm + bossHeightMm - holeDepthMm;
}

export function reliefDiaMm(screw: Screw, playMm: number): number {
  return screw.majorMaxMm + playMm;
}
