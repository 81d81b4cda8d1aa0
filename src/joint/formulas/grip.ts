// Between the halves: board, sleeve, gap, and what the boss lands on.
import { max, min } from '../../core/maths';
import { type Deviation, type Deviations } from '../../core/read/deviation';
import { type Screw } from '../../core/screw/thread';

export function boardDeviation(boardMm: number): Deviation {
  return { upperMm: max(0.1 * boardMm, 0.08), lowerMm: -max(0.1 * boardMm, 0.08) };
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

/** Outer face of the head half to the inner wall face of the thread half, bosses in contact. */
export function bossStackMm(boardPlaneMm: number, betweenHalvesMm: number, bossHeightMm: number): number {
  return boardPlaneMm + betweenHalvesMm + bossHeightMm;
}

/** What holds the board sideways at its smallest: the sleeve, or the screw where there is none. */
export function locatorMm(sleeveMm: number, sleeveOdMinMm: number, screw: Screw): number {
  return sleeveMm > 0 ? sleeveOdMinMm : screw.majorMinMm;
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

export function landingRingMm(bossOdMm: number, sleeveMm: number, sleeveOdMm: number, holeMm: number, reliefDiaMm: number): number {
  return ((sleeveMm > 0 ? min(bossOdMm, sleeveOdMm) : bossOdMm) - max(holeMm, reliefDiaMm)) / 2;
}
