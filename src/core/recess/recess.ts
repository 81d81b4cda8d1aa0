// The recess for the head, and the seat it leaves.
import { cosDeg, tanDeg } from '../maths';
import type { Cone } from './countersink';

/** Held at the recess floor, where the head sits; wider towards the outer face. */
export function recessDiaMm(headDiameterMm: number, allowanceMm: number, distanceMm: number, draftDeg: number): number {
  return headDiameterMm + allowanceMm + 2 * distanceMm * tanDeg(draftDeg);
}

export function recessDepthMm(boardPlaneMm: number, seatMm: number): number {
  return boardPlaneMm - seatMm;
}

export function recessSeatMm(boardPlaneMm: number, depthMm: number): number {
  return boardPlaneMm - depthMm;
}

export function recessDepthMinMm(headHeightMm: number, subflushMm: number): number {
  return headHeightMm + subflushMm;
}

export function subflushMm(depthMm: number, headHeightMm: number): number {
  return depthMm - headHeightMm;
}

/** Depth of a countersink from the theoretical sharp diameter down to the hole. */
export function countersinkDepthMm(sharpDiameterMm: number, holeMm: number, angleDeg: number): number {
  return (sharpDiameterMm - holeMm) / (2 * tanDeg(angleDeg / 2));
}

export function recessConeMm(cone: Cone, holeMm: number, angleDeg: number): number {
  return countersinkDepthMm(cone.sharpMm, holeMm, angleDeg);
}

/** The head never touches the side: the screw may move by its whole play in the hole. */
export function recessFloatMm(headDiameterMm: number, holeMm: number, screwMm: number, marginMm: number): number {
  return headDiameterMm + (holeMm - screwMm) + 2 * marginMm;
}

/** Negative: the tool does not go in. */
export function toolRoomMm(recessDiaMm: number, toolDiaMm: number, marginMm: number): number {
  return recessDiaMm - toolDiaMm - marginMm;
}

export function acrossCornersMm(acrossFlatsMm: number): number {
  return acrossFlatsMm / cosDeg(30);
}
