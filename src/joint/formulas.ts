// Formulas that only the joint needs: its defaults and the few sums between the base functions.
import { bossCircleMm } from '../core/boss/boss';
import { holeAtDepthMm } from '../core/hole/hole';
import { atLeast, max, min, sqrt, tanDeg } from '../core/maths';
import { recessDiaMm } from '../core/recess/recess';
import type { Deviation, Deviations } from '../core/read/deviation';
import { lengthDeviation } from '../core/screw/length';
import type { End, Screw } from '../core/screw/thread';
import { clampTorqueNm, highSetTorqueNm, lowSetTorqueNm } from '../core/strength/torque';

/** What is undefined until somebody gives it. */
export const notGiven = (): Deviation | undefined => undefined;

export function same(value: number): number {
  return value;
}

export function sameMm(valueMm: number): number {
  return valueMm;
}

export function defaultSeatMm(wallMm: number, screw: Screw): number {
  return max(0.8 * wallMm, 0.6 * screw.nominalMm, 1.5);
}

export function seatDeviation(seatMm: number): Deviation {
  return { upperMm: seatMm > 0 ? 0.1 : 0, lowerMm: seatMm > 0 ? -0.1 : 0 };
}

export function boardDeviation(boardMm: number): Deviation {
  return { upperMm: max(0.1 * boardMm, 0.08), lowerMm: -max(0.1 * boardMm, 0.08) };
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

export function largestMm(sizeMm: number, tol: Deviation): number {
  return sizeMm + tol.upperMm;
}

export function smallestMm(sizeMm: number, tol: Deviation): number {
  return sizeMm + tol.lowerMm;
}

export function chosenMm(isFirst: boolean, firstMm: number, otherwiseMm: number): number {
  return isFirst ? firstMm : otherwiseMm;
}

export function chosenDeviation(isFirst: boolean, first: Deviation, otherwise: Deviation): Deviation {
  return { upperMm: isFirst ? first.upperMm : otherwise.upperMm, lowerMm: isFirst ? first.lowerMm : otherwise.lowerMm };
}

export function gapDeviation(gapMm: number): Deviation {
  return { upperMm: gapMm > 0 ? 0.1 : 0, lowerMm: gapMm > 0 ? -0.1 : 0 };
}

/** What the boss lands on: sleeve or board, whichever is higher. */
export function betweenMm(sleeveMm: number, boardMm: number): number {
  return max(sleeveMm, boardMm);
}

/** Each at its own limits: the lower one may be the higher at its largest. */
export function betweenMaxMm(sleeveMm: number, sleeveTol: Deviation, boardMm: number, boardTol: Deviation): number {
  return max(sleeveMm > 0 ? sleeveMm + sleeveTol.upperMm : 0, boardMm > 0 ? boardMm + boardTol.upperMm : 0);
}

export function betweenMinMm(sleeveMm: number, sleeveTol: Deviation, boardMm: number, boardTol: Deviation): number {
  return max(sleeveMm > 0 ? sleeveMm + sleeveTol.lowerMm : 0, boardMm > 0 ? boardMm + boardTol.lowerMm : 0);
}

export function betweenDeviation(sleeveMm: number, sleeveTol: Deviation, boardMm: number, boardTol: Deviation): Deviation {
  return {
    upperMm: betweenMaxMm(sleeveMm, sleeveTol, boardMm, boardTol) - betweenMm(sleeveMm, boardMm),
    lowerMm: betweenMinMm(sleeveMm, sleeveTol, boardMm, boardTol) - betweenMm(sleeveMm, boardMm),
  };
}

export function gripLayersMm(seatMm: number, betweenHalvesMm: number, gapMm: number): number[] {
  return [seatMm, betweenHalvesMm, gapMm];
}

export function gripDeviations(seatTol: Deviation, betweenTol: Deviation, gapTol: Deviation): Deviations {
  return { upperMm: [seatTol.upperMm, betweenTol.upperMm, gapTol.upperMm], lowerMm: [seatTol.lowerMm, betweenTol.lowerMm, gapTol.lowerMm] };
}

export type PilotHeldAt = 'mid' | 'mouth';
export type Face = 'hidden' | 'show';

/** Depth below the boss face at which the pilot is held: half way along the full thread, or the mouth. */
export function pilotHeldDepthMm(heldAt: PilotHeldAt, reliefMm: number, engagementMm: number): number {
  return heldAt === 'mid' ? reliefMm + engagementMm / 2 : 0;
}

/** The boss wall at the free end stands beside the wider of relief and pilot mouth. */
export function mouthMm(reliefMm: number, reliefDiaMm: number, pilotMouthMm: number): number {
  return reliefMm > 0 ? max(reliefDiaMm, pilotMouthMm) : pilotMouthMm;
}

export function landingRingMm(bossOdMm: number, sleeveMm: number, sleeveOdMm: number, holeMm: number, reliefDiaMm: number): number {
  return ((sleeveMm > 0 ? min(bossOdMm, sleeveOdMm) : bossOdMm) - max(holeMm, reliefDiaMm)) / 2;
}

/** Outer face of the head half to the inner wall face of the thread half, bosses in contact. */
export function bossStackMm(boardPlaneMm: number, betweenHalvesMm: number, bossHeightMm: number): number {
  return boardPlaneMm + betweenHalvesMm + bossHeightMm;
}

/** None where the head falls through its hole. */
export function seatUnderConeMm(seatMinMm: number, coneDepthMm: number, headMinMm: number, holeMaxMm: number): number {
  return holeMaxMm < headMinMm ? seatMinMm - coneDepthMm : min(seatMinMm - coneDepthMm, (headMinMm - holeMaxMm) / 2);
}

/** What holds the board sideways at its smallest: the sleeve, or the screw where there is none. */
export function locatorMm(sleeveMm: number, sleeveOdMinMm: number, screw: Screw): number {
  return sleeveMm > 0 ? sleeveOdMinMm : screw.majorMinMm;
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

/** The boss that still holds the board by the limit when the board has moved sideways as far as it can. */
export function bossOdForHoldMm(holdLimitMm: number, boardHoleMaxMm: number, locatorMinMm: number): number {
  return 2 * holdLimitMm + 2 * boardHoleMaxMm - locatorMinMm;
}

export function defaultBossOdMm(isOnSleeve: boolean, byRuleMm: number, forHoldMm: number): number {
  return isOnSleeve ? max(byRuleMm, forHoldMm) : byRuleMm;
}

export function sleeveNeverReachesMm(sleeveTol: Deviation, boardTol: Deviation): number {
  return boardTol.lowerMm - sleeveTol.upperMm;
}

export function sleeveAlwaysReachesMm(sleeveTol: Deviation, boardTol: Deviation): number {
  return boardTol.upperMm - sleeveTol.lowerMm;
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

/** Of the flank depth, the smallest screw in the largest pilot. Below 0 the thread touches nothing. */
export function threadShareMin(
  majorMinMm: number,
  pilotMouthMm: number,
  pilotTol: Deviation,
  majorMaxMm: number,
  rootMaxMm: number,
): number {
  return (majorMinMm - pilotMouthMm - pilotTol.upperMm) / (majorMaxMm - rootMaxMm);
}

/** A pilot narrower than the root gives no more than the whole thread. */
export function shareThatHolds(share: number): number {
  return min(1, share);
}

export function tightness(pilotAtTipMm: number, pilotTol: Deviation, rootMaxMm: number): number {
  return (pilotAtTipMm + pilotTol.lowerMm) / rootMaxMm;
}

/** The wall of the boss beside its hole where the hole ends: at the root, or above it. */
export function wallBesideHoleMm(
  odRootMm: number,
  pilotMouthMm: number,
  bossHeightMm: number,
  holeDepthMm: number,
  holeDraftDeg: number,
): number {
  return (odRootMm - holeAtDepthMm(pilotMouthMm, min(bossHeightMm, holeDepthMm), holeDraftDeg)) / 2;
}

export function plasticUnderHoleMm(wallMm: number, bossHeightMm: number, holeDepthMm: number): number {
  return wallMm + bossHeightMm - holeDepthMm;
}

/** Never larger than the circle of the solid boss. */
export function rootCircleMm(besideHoleMm: number, wallMm: number, ringDepthMm: number, underHoleMm: number, odRootMm: number): number {
  return min(
    bossCircleMm(besideHoleMm, wallMm, 0, ringDepthMm, underHoleMm),
    wallMm - ringDepthMm + odRootMm ** 2 / (4 * (wallMm - ringDepthMm)),
  );
}

/** The ratio of the plain boss that has the same circle. */
export function sinkRatioOfCircle(circleMm: number, wallMm: number): number {
  return 2 * sqrt(max(0, circleMm / wallMm - 1));
}

export function sinkFailLimit(isFaceHidden: boolean, sinkLimit: number): number {
  return isFaceHidden ? max(1.5, sinkLimit + 0.3) : sinkLimit + 0.3;
}

/** On a face that shows draft may thicken the root by a tenth. */
export function sinkReviewLimit(isFaceHidden: boolean, sinkLimit: number, hiddenSinkLimit: number): number {
  return isFaceHidden ? max(hiddenSinkLimit, sinkLimit) : 1.1 * sinkLimit;
}

export function timesMm(factor: number, sizeMm: number): number {
  return factor * sizeMm;
}

export function timesD(factor: number, screw: Screw): number {
  return factor * screw.nominalMm;
}

export function restMm(wholeMm: number, partMm: number): number {
  return wholeMm - partMm;
}

/** Of a size that may be left out. */
export function isThere(sizeMm: number): boolean {
  return sizeMm > 0;
}

/** A size that may be nothing, but not less. */
export function isAtLeastNone(sizeMm: number): boolean {
  return atLeast(sizeMm, 0);
}

export const isTappingScrew = ({ isTapping }: Screw): boolean => isTapping;

/** The tolerance of the table, or the user's own. */
export const lengthDeviationOr = (screw: Screw, lengthMm: number, end: End, own: Deviation | undefined): Deviation =>
  own ?? lengthDeviation(screw.size, lengthMm, end);

export function holds(isTrue: boolean): boolean {
  return isTrue;
}

/** Asked only where a value is given. */
export function given(value: number | undefined): number {
  return value as number;
}

export function isHidden(face: Face): boolean {
  return face !== 'show';
}

export function either(isOne: boolean, isOther: boolean): boolean {
  return isOne || isOther;
}

export function both(isOne: boolean, isOther: boolean): boolean {
  return isOne && isOther;
}

export function isNot(isTrue: boolean): boolean {
  return !isTrue;
}

export function isLarger(aMm: number, bMm: number): boolean {
  return aMm > bMm;
}

export function isHeldAtMid(heldAt: PilotHeldAt): boolean {
  return heldAt === 'mid';
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

export function weakestN(pullOutForceN: number, bossTearForceN: number, seatShearForceN: number): number {
  return min(pullOutForceN, bossTearForceN, seatShearForceN);
}

export function loadMargin(weakestForceN: number, loadN: number, loadSafety: number): number {
  return weakestForceN / (loadN * loadSafety);
}

/** What is left of the set torque when the thread is formed, on thread and head. */
export function clampForceN(setNm: number, driveNm: number, screw: Screw, friction: number, headMinMm: number, holeMm: number): number {
  return (setNm - driveNm) / clampTorqueNm(1, screw, friction, friction, headMinMm, holeMm, 30);
}

export function ratioOf(part: number, whole: number): number {
  return part / whole;
}

/** What a scattering driver still leaves to the strip torque above and to the drive torque below. */
export function setTorqueRoomNm(setNm: number, scatter: number, driveNm: number, stripNm: number): number {
  return min(stripNm - setNm * (1 + scatter), setNm * (1 - scatter) - driveNm);
}

export function windowRoomNm(setNm: number, scatter: number, driveNm: number, stripNm: number): number {
  return min(setNm - lowSetTorqueNm(driveNm, stripNm, scatter), highSetTorqueNm(stripNm, scatter) - setNm);
}

/** Which of the three gives way first; a seat that cannot shear holds any force. */
export function weakest(pullOutN: number, bossTearN: number, seatShearN: number): string {
  return min(pullOutN, bossTearN) > seatShearN ? 'seat shear' : pullOutN <= bossTearN ? 'pull-out' : 'boss tear';
}
