// Formulas that only the joint needs: its defaults and the few sums between the base functions.
import { max, min } from '../core/maths';
import type { Deviation, Deviations } from '../core/read/deviation';
import type { Screw } from '../core/screw/thread';

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
export function defaultAllowanceMm(holeMm: number, holeTol: Deviation, screw: Screw): number {
  return holeMm + holeTol.upperMm - screw.majorMinMm + 0.2;
}

/** What lies between seat and boss face: the sleeve, or the board where there is none. */
export function betweenMm(sleeveMm: number, boardMm: number): number {
  return sleeveMm > 0 ? sleeveMm : boardMm;
}

export function betweenDeviation(sleeveMm: number, sleeveTol: Deviation, boardMm: number, boardTol: Deviation): Deviation {
  return {
    upperMm: sleeveMm > 0 ? sleeveTol.upperMm : boardMm > 0 ? boardTol.upperMm : 0,
    lowerMm: sleeveMm > 0 ? sleeveTol.lowerMm : boardMm > 0 ? boardTol.lowerMm : 0,
  };
}

export function gripLayersMm(seatMm: number, betweenHalvesMm: number, gapMm: number): number[] {
  return [seatMm, betweenHalvesMm, gapMm];
}

export function gripDeviations(seatTol: Deviation, betweenTol: Deviation, gapTol: Deviation): Deviations {
  return { upperMm: [seatTol.upperMm, betweenTol.upperMm, gapTol.upperMm], lowerMm: [seatTol.lowerMm, betweenTol.lowerMm, gapTol.lowerMm] };
}

/** Full thread that the ratio asks for. */
export function engagementAskedMm(ratio: number, screw: Screw): number {
  return ratio * screw.nominalMm;
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

export function seatUnderConeMm(seatMm: number, coneDepthMm: number): number {
  return seatMm - coneDepthMm;
}

/** What holds the board sideways: the sleeve, or the screw where there is none. */
export function locatorMm(sleeveMm: number, sleeveOdMm: number, screw: Screw): number {
  return sleeveMm > 0 ? sleeveOdMm : screw.majorMinMm;
}

/** Of a size that may be left out. */
export function isThere(sizeMm: number): boolean {
  return sizeMm > 0;
}

export function isGiven(sizeMm: number | undefined): boolean {
  return sizeMm !== undefined;
}

export function givenMm(sizeMm: number | undefined): number {
  return sizeMm as number;
}

export function isHidden(face: Face): boolean {
  return face !== 'show';
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

/** Which of the three gives way first; a seat that cannot shear holds any force. */
export function weakest(pullOutN: number, bossTearN: number, seatShearN: number): string {
  return min(pullOutN, bossTearN) > seatShearN ? 'seat shear' : pullOutN <= bossTearN ? 'pull-out' : 'boss tear';
}
