// The board in its pocket, between the halves and around the screw.
import { abs, tanDeg } from '../maths';
import type { Deviation } from '../read/deviation';

/**
 * Smallest gap g per side at the given height, mm; the pocket is held at its floor and opens upwards.
 * b board, mm; t_b its tolerance, mm; w inside of the pocket, mm; t_w its tolerance, mm; h height, mm; α draft per side, °.
 * BOARD.GAP accepts b, w above 0 mm; h at least 0 mm; α at least 0° and below 90°; a board that does not go in is refused.
 * Source: plane geometry (derived).
 */
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

/**
 * Space left over the board: min, nominal, max, mm. Negative: the board is crushed.
 * s space, mm; t_s its tolerance, mm; b board thickness, mm; t_b its tolerance, mm.
 * BOARD.CLAMP accepts s, b above 0 mm.
 * Source: plane geometry (derived).
 */
export function boardClampMm(spaceMm: number, spaceTol: Deviation, boardMm: number, boardTol: Deviation): number[] {
  return [
    spaceMm + spaceTol.lowerMm - (boardMm + boardTol.upperMm),
    spaceMm - boardMm,
    spaceMm + spaceTol.upperMm - (boardMm + boardTol.lowerMm),
  ];
}

/**
 * Radius r that the metal of head and screw can reach when both lie to one side, mm.
 * d_k head diameter, mm; d_h hole, mm; d screw diameter, mm; e further sideways shift, mm.
 * BOARD.REACH accepts d_k, d_h above 0 mm; d above 0 mm, at most d_h, or it does not go through; e at least 0 mm.
 * Source: plane geometry (derived).
 */
export function boardReachMm(headDiameterMm: number, holeMm: number, screwMm: number, shiftMm: number): number {
  return headDiameterMm / 2 + (holeMm - screwMm) / 2 + shiftMm;
}

/**
 * Distance m beyond the required one, mm: subtraction, not an assessment.
 * a distance of the nearest copper from the centre of the hole, mm; r radius that metal reaches, mm; c required distance, mm.
 * BOARD.MARGIN accepts a, r, c above 0 mm.
 * Source: plane geometry (derived).
 */
export function boardMarginMm(copperMm: number, reachMm: number, requiredMm: number): number {
  return copperMm - reachMm - requiredMm;
}

/**
 * Keep-out diameter D on the board, mm; it says nothing about electrical distances.
 * d_k hardware diameter, mm; k factor.
 * BOARD.KEEPOUT accepts d_k above 0 mm; k at least 1.
 * Source: common practice; 1.25 × the largest hardware diameter, quoted as practice under IPC-2221 in 2018 (read in 1 secondary copy).
 */
export function keepoutDiaMm(hardwareDiaMm: number, factor: number): number {
  return factor * hardwareDiaMm;
}

/**
 * Play p per side of a sleeve in the hole of the board, mm.
 * d_h hole of the board, mm; d_s sleeve, mm; e sideways shift, mm.
 * BOARD.SLEEVE accepts d_h above 0 mm; d_s above 0 mm, at most d_h, or it does not go through; e at least 0 mm; an e beyond the play is
 * refused.
 * Source: plane geometry (derived).
 */
export function sleevePlayMm(holeMm: number, sleeveMm: number, shiftMm: number): number {
  return (holeMm - sleeveMm) / 2 - shiftMm;
}

/**
 * Ring r of the boss face that still lies under the board when the board has moved sideways as far as it can, mm.
 * D outside diameter of the boss, mm; d_h hole of the board, mm; d_s sleeve, mm; e sideways shift, mm.
 * BOARD.HOLD accepts D, d_h above 0 mm; d_s above 0 mm, at most d_h, or it does not go through; e at least 0 mm; an e at which the board
 * slips off the boss is refused.
 * Source: plane geometry (derived).
 */
export function boardHoldMm(bossOdMm: number, boardHoleMm: number, sleeveMm: number, shiftMm: number): number {
  const ringMm = (bossOdMm - boardHoleMm) / 2;
  const sidewaysMm = (boardHoleMm - sleeveMm) / 2 + shiftMm;
  return ringMm - sidewaysMm;
}

/**
 * Difference ΔL in length of two materials after a change of temperature, mm.
 * L length, mm; α_a expansion of one, 1e-6/K; α_b expansion of the other, 1e-6/K; ΔT temperature change, K.
 * THERMAL.GAP accepts L above 0 mm; α_a, α_b above 0 1e-6/K.
 * Source: linear thermal expansion (derived).
 */
export function thermalGapMm(lengthMm: number, expansionAPpmPerK: number, expansionBPpmPerK: number, temperatureChangeK: number): number {
  return lengthMm * abs(expansionAPpmPerK - expansionBPpmPerK) * 1e-6 * abs(temperatureChangeK);
}
