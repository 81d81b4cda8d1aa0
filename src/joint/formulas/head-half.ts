// The head half: seat, recess, post, sleeve, and what the head does in it.
import { max, min, tanDeg } from '../../core/maths';
import { type Deviation } from '../../core/read/deviation';
import { recessDiaMm } from '../../core/recess/recess';
import { type Screw } from '../../core/screw/thread';

export function defaultSeatMm(wallMm: number, screw: Screw): number {
  return max(0.8 * wallMm, 0.6 * screw.nominalMm, 1.5);
}

export function seatDeviation(seatMm: number): Deviation {
  return { upperMm: seatMm > 0 ? 0.1 : 0, lowerMm: seatMm > 0 ? -0.1 : 0 };
}

/** The head floats by the whole play of the screw in the hole, and 0.2 on diameter is left. */
export function defaultAllowanceMm(holeMaxMm: number, majorMinMm: number): number {
  return holeMaxMm - majorMinMm + 0.2;
}

/** As RECESS.DIAMETER; an allowance below 0 is for the rules to judge. */
export function recessAtMm(headDiameterMm: number, allowanceMm: number, distanceMm: number, draftDeg: number): number {
  return recessDiaMm(headDiameterMm, allowanceMm, distanceMm, draftDeg);
}

export function headWithFloatMm(headDiameterMm: number, holeMaxMm: number, majorMinMm: number): number {
  return headDiameterMm + (holeMaxMm - majorMinMm);
}

/** Ring of plastic under the head when the head is at its smallest and the hole at its largest. Negative: the head falls through. */
export function bearingRingMm(headMinMm: number, holeMaxMm: number): number {
  return (headMinMm - holeMaxMm) / 2;
}

/** None where the head falls through its hole. */
export function seatUnderConeMm(seatMinMm: number, coneDepthMm: number, headMinMm: number, holeMaxMm: number): number {
  return holeMaxMm < headMinMm ? seatMinMm - coneDepthMm : min(seatMinMm - coneDepthMm, (headMinMm - holeMaxMm) / 2);
}

/** The board lies at the root of the sleeve, where its draft has made it widest. Negative: it does not go on. */
export function boardPlayMm(
  boardHoleMinMm: number,
  sleeveOdMm: number,
  odTol: Deviation,
  sleeveMm: number,
  sleeveTol: Deviation,
  sleeveDraftDeg: number,
): number {
  return (boardHoleMinMm - (sleeveOdMm + odTol.upperMm + 2 * (sleeveMm + sleeveTol.upperMm) * tanDeg(sleeveDraftDeg))) / 2;
}

/** The post grows from the board plane to the inner face of the head wall. */
export function postOdRootMm(postOdMm: number, boardPlaneMm: number, headWallMm: number, postDraftDeg: number): number {
  return postOdMm + 2 * max(0, boardPlaneMm - headWallMm) * tanDeg(postDraftDeg);
}

/** Beside the recess at the inner face of the head wall, or at its floor where that lies inside the head wall. */
export function postWallRootMm(
  postOdRootMm: number,
  recessDiaMm: number,
  recessDepthMm: number,
  headWallMm: number,
  recessDraftDeg: number,
): number {
  return (postOdRootMm - recessDiaMm - 2 * max(0, recessDepthMm - headWallMm) * tanDeg(recessDraftDeg)) / 2;
}

/** Between the floor of the recess and the inner face of the head wall both cones are straight: the least wall is at one end. */
export function leastPostWallMm(
  wallAtRootMm: number,
  postOdMm: number,
  boardPlaneMm: number,
  headWallMm: number,
  seatMm: number,
  postDraftDeg: number,
  recessDiaMm: number,
): number {
  return min(wallAtRootMm, (postOdMm + 2 * min(seatMm, max(0, boardPlaneMm - headWallMm)) * tanDeg(postDraftDeg) - recessDiaMm) / 2);
}

/** Depth of the recess at its least. */
export function recessDepthWorstMm(boardPlaneMm: number, boardPlaneTol: Deviation, seatMm: number, seatTol: Deviation): number {
  return boardPlaneMm + boardPlaneTol.lowerMm - seatMm - seatTol.upperMm;
}

/** A countersunk head lies flush with the recess floor; a raised one stands out by its raised part. */
export function headInSeatMm(isCone: boolean, headHeightMm: number, raisedMm: number): number {
  return isCone ? headHeightMm - raisedMm : 0;
}

export function headAboveSeatMm(headHeightMm: number, headInSeatMm: number): number {
  return headHeightMm - headInSeatMm;
}

/** Negative: the head stands proud. */
export function headBelowFaceMm(recessDepthMm: number, aboveSeatMm: number): number {
  return recessDepthMm - aboveSeatMm;
}
