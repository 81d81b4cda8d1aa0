// What the plastic around a screw holds along its axis: the thread, the boss, the seat under the head.
import { max, min, PI, sqrt, wholeUp } from '../maths';
import type { Screw } from '../screw/thread';

/** Mean of the largest major and root diameters: where the plastic is taken to shear. */
export function threadMeanDiaMm(screw: Screw): number {
  return (screw.majorMaxMm + screw.rootMaxMm) / 2;
}

/**
 * Tapping threads only; `tappingScrew` refuses the others. A thread that bites less than half of its flank depth does not reach
 * the cylinder all round.
 */
export function pullOutN(screw: Screw, engagementMm: number, yieldStressMpa: number, safety: number, threadShare: number): number {
  const shearStressMpa = yieldStressMpa / sqrt(3);
  const shearedAreaMm2 = PI * threadMeanDiaMm(screw) * engagementMm * min(1, 2 * threadShare);
  return (shearStressMpa * shearedAreaMm2) / safety;
}

export function bossTearN(odMm: number, screw: Screw, yieldStressMpa: number, safety: number): number {
  const netAreaMm2 = (PI / 4) * (odMm ** 2 - screw.majorMaxMm ** 2);
  return (yieldStressMpa * netAreaMm2) / safety;
}

export function seatShearN(headDiameterMm: number, seatMm: number, yieldStressMpa: number, safety: number): number {
  const shearStressMpa = yieldStressMpa / sqrt(3);
  return (shearStressMpa * PI * headDiameterMm * seatMm) / safety;
}

export function screwCount(loadN: number, pullOutForceN: number, safety: number): number {
  return max(1, wholeUp((loadN * safety) / pullOutForceN));
}
