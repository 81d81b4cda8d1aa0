// A board on a round hole and a slot.
import { thermalGapMm } from '../board/board';
import { atanDeg, max } from '../maths';
import type { Deviation } from '../read/deviation';

/**
 * Length L of a locating slot, centred on its nominal place, mm; its width is that of the hole.
 * d_h hole, mm; l distance from the round hole, mm; t tolerance of the distance, mm; α_a expansion of one part, 1e-6/K;
 * α_b expansion of the other, 1e-6/K; ΔT change from assembly to the farther extreme, K.
 * PATTERN.SLOT accepts d_h, l above 0 mm; α_a, α_b at least 0 1e-6/K.
 * Source: plane geometry (derived); linear thermal expansion (derived).
 */
export function slotLengthMm(
  holeMm: number,
  distanceMm: number,
  distanceTol: Deviation,
  expansionAPpmPerK: number,
  expansionBPpmPerK: number,
  temperatureChangeK: number,
): number {
  const offMm =
    max(distanceTol.upperMm, -distanceTol.lowerMm) + thermalGapMm(distanceMm, expansionAPpmPerK, expansionBPpmPerK, temperatureChangeK);
  return holeMm + 2 * offMm;
}

/**
 * Largest turn φ of a board on a round hole and a slot, °.
 * s_r play in the round hole, on diameter, mm; s_s play across the slot, on diameter, mm; l distance between them, mm.
 * PATTERN.TURN accepts s_r, s_s at least 0 mm; l above 0 mm, at least five times both plays.
 * Source: plane geometry (derived).
 */
export function patternTurnDeg(playRoundMm: number, playSlotMm: number, distanceMm: number): number {
  return atanDeg((playRoundMm + playSlotMm) / (2 * distanceMm));
}
