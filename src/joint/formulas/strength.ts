// Estimates of strength and torque that need the whole joint.
import { min } from '../../core/maths';
import { type Screw } from '../../core/screw/thread';
import { clampTorqueNm, highSetTorqueNm, lowSetTorqueNm } from '../../core/strength/torque';

export function weakestN(pullOutForceN: number, bossTearForceN: number, seatShearForceN: number): number {
  return min(pullOutForceN, bossTearForceN, seatShearForceN);
}

export function loadMargin(weakestForceN: number, loadN: number, loadSafety: number): number {
  return weakestForceN / (loadN * loadSafety);
}

/** What is left of the set torque when the thread is formed, on thread and head. */
export function clampForceN(setNm: number, driveNm: number, screw: Screw, friction: number, headMinMm: number, holeMm: number): number {
  return (setNm - driveNm) / clampTorqueNm(1, screw, friction, friction, headMinMm, holeMm, screw.flankDeg);
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
