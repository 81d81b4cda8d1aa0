// The board in its pocket, between the halves and around the screw.
import { abs, tanDeg } from '../maths';
import type { Deviation } from '../read/deviation';

/** Smallest gap per side at the given height; the pocket is held at its floor and opens upwards. */
export function boardGapMm(
  boardMm: number,
  boardTol: Deviation,
  insideMm: number,
  insideTol: Deviation,
  heightMm: number,
  draftDeg: number,
): number {
  const insideAtHeightMm = insideMm + insideTol.lowerMm + 2 * heightMm * tanDeg(draftDeg);
  return (insideAtHeightMm - (boardMm + boardTol.upperMm)) / 2;
}

/** Negative: the board is crushed. */
export function boardClampMm(spaceMm: number, spaceTol: Deviation, boardMm: number, boardTol: Deviation): number[] {
  return [
    spaceMm + spaceTol.lowerMm - (boardMm + boardTol.upperMm),
    spaceMm - boardMm,
    spaceMm + spaceTol.upperMm - (boardMm + boardTol.lowerMm),
  ];
}

/** Radius that the metal of head and screw can reach when both lie to one side. */
export function boardReachMm(headDiameterMm: number, holeMm: number, screwMm: number, shiftMm: number): number {
  return headDiameterMm / 2 + (holeMm - screwMm) / 2 + shiftMm;
}

export function boardMarginMm(copperMm: number, reachMm: number, requiredMm: number): number {
  return copperMm - reachMm - requiredMm;
}

export function keepoutDiaMm(hardwareDiaMm: number, factor: number): number {
  return factor * hardwareDiaMm;
}

export function sleevePlayMm(holeMm: number, sleeveMm: number, shiftMm: number): number {
  return (holeMm - sleeveMm) / 2 - shiftMm;
}

/** Ring of the boss face that still lies under the board when the board has moved sideways as far as it can. */
export function boardHoldMm(bossOdMm: number, boardHoleMm: number, sleeveMm: number, shiftMm: number): number {
  const ringMm = (bossOdMm - boardHoleMm) / 2;
  const sidewaysMm = (boardHoleMm - sleeveMm) / 2 + shiftMm;
  return ringMm - sidewaysMm;
}

export function thermalGapMm(lengthMm: number, expansionAPpmPerK: number, expansionBPpmPerK: number, temperatureChangeK: number): number {
  return lengthMm * abs(expansionAPpmPerK - expansionBPpmPerK) * 1e-6 * abs(temperatureChangeK);
}
