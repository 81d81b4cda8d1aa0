// Torque: what strips the thread, where the driver is set, what makes a clamp force, what the head then presses.
import { atanDeg, atLeast, atMost, cosDeg, max, PI, tanDeg } from '../maths';
import type { Screw } from '../screw/thread';
import { threadMeanDiaMm } from './pull-out';

/**
 * Strip torque T_s, N·m: the pull-out force on the slope of the thread, with friction; an estimate.
 * F pull-out force, N; size of the screw; f friction.
 * TORQUE.STRIP accepts F above 0 N; f above 0 and at most 1.
 * Source: square-thread power screw, any machine design handbook (from memory);
 * copies in circulation have lost the π, (P + 2·f·r)/(2·r − f·P), and give twice this or more (read in secondary copies).
 */
export function stripTorqueNm(pullOutForceN: number, screw: Screw, friction: number): number {
  const radiusMm = threadMeanDiaMm(screw) / 2;
  const slope = (screw.pitchMm + 2 * PI * friction * radiusMm) / (2 * PI * radiusMm - friction * screw.pitchMm);
  return (pullOutForceN * radiusMm * slope) / 1000;
}

/**
 * Set torque T between drive and strip torque, N·m.
 * T_d drive torque, N·m; T_s strip torque, N·m; k share of the way.
 * TORQUE.SET accepts T_d above 0 N·m; T_s above 0 N·m, above T_d; k at least 0 and at most 1.
 * Source: half way from drive to strip torque (common practice, from memory).
 */
export function setTorqueNm(driveNm: number, stripNm: number, share: number): number {
  return driveNm + share * (stripNm - driveNm);
}

/**
 * Low set torque, N·m: the driver at its weakest still reaches twice the drive torque and half of the strip torque.
 * T_d drive torque, N·m; T_s strip torque, N·m; s scatter of the driver.
 * Limits: as TORQUE.WINDOW has them. Source: as TORQUE.WINDOW.
 */
export function lowSetTorqueNm(driveNm: number, stripNm: number, scatter: number): number {
  return max(2 * driveNm, 0.5 * stripNm) / (1 - scatter);
}

/**
 * High set torque, N·m: the driver at its strongest does not pass 70 % of the strip torque.
 * T_s strip torque, N·m; s scatter of the driver.
 * Limits: as TORQUE.WINDOW has them. Source: as TORQUE.WINDOW.
 */
export function highSetTorqueNm(stripNm: number, scatter: number): number {
  return (0.7 * stripNm) / (1 + scatter);
}

/**
 * Strip ÷ drive, state, low and high set torque, N·m: twice the drive torque at least, 50 to 70 % of the strip torque, less the scatter.
 * T_d drive torque, N·m; T_s strip torque, N·m; k least strip ÷ drive; s scatter of the driver.
 * TORQUE.WINDOW accepts T_d, T_s above 0 N·m; k above 1; s at least 0 and below 1.
 * Source: drive : tighten : strip = 1 : 2 : 3 or more (common practice, read in 1 secondary copy);
 * tighten at 50 to 70 % of the strip torque (common practice, from memory);
 * a driver scatters by 10 % of its set torque (common practice, from memory).
 */
export function torqueWindow(driveNm: number, stripNm: number, leastRatio: number, scatter: number): (string | number)[][] {
  const stripToDrive = stripNm / driveNm;
  const lowNm = lowSetTorqueNm(driveNm, stripNm, scatter);
  const highNm = highSetTorqueNm(stripNm, scatter);
  const isOpen = atMost(lowNm, highNm);
  return [
    [stripToDrive, atLeast(stripToDrive, leastRatio) ? (isOpen ? 'pass' : 'review') : 'fail', isOpen ? lowNm : '–', isOpen ? highNm : '–'],
  ];
}

/**
 * Torque T for a clamp force, N·m: an estimate, without what forms the thread.
 * F clamp force, N; size of the screw; μ friction in the thread; μ_h friction under the head; d_k head diameter, mm; d_h hole, mm;
 * β flank angle, half the thread angle, °.
 * TORQUE.CLAMP accepts F above 0 N; μ, μ_h above 0 and at most 1; d_k above 0 mm; d_h above 0 mm, below d_k; β above 0° and below 90°;
 * a countersunk head is refused.
 * Source: Shigley, Mechanical Engineering Design, power screws and bolt tension (example 8-3) (from memory, recomputed).
 */
export function clampTorqueNm(
  forceN: number,
  screw: Screw,
  threadFriction: number,
  headFriction: number,
  headDiameterMm: number,
  holeMm: number,
  flankDeg: number,
): number {
  const threadDiaMm = threadMeanDiaMm(screw);
  const leadAngleDeg = atanDeg(screw.pitchMm / (PI * threadDiaMm));
  const frictionAngleDeg = atanDeg(threadFriction / cosDeg(flankDeg));
  const threadArmMm = (threadDiaMm / 2) * tanDeg(leadAngleDeg + frictionAngleDeg);
  const headArmMm = (headFriction * (headDiameterMm + holeMm)) / 4;
  return (forceN * (threadArmMm + headArmMm)) / 1000;
}

/**
 * Clamp force F_t left when the plastic has relaxed, N; pseudo-elastic, the head held where it was.
 * F clamp force at the start, N; E_0 modulus at the start, MPa; E_t creep modulus at the end, MPa.
 * CLAMP.RELAX accepts F above 0 N; E_0 above 0 MPa; E_t above 0 MPa, at most E_0.
 * Source: creep modulus by ISO 899-1 (from memory);
 * pseudo-elastic method, Plastics Engineered Product Design, p. 133 (read in 1 secondary copy).
 */
export function relaxedClampN(forceN: number, modulusStartMpa: number, modulusEndMpa: number): number {
  return (forceN * modulusEndMpa) / modulusStartMpa;
}

/**
 * Mean pressure p under the head, MPa.
 * F force, N; d_k head diameter, mm; d_h hole, mm.
 * BEARING accepts F above 0 N; d_k above 0 mm; d_h above 0 mm, below d_k; a countersunk head is refused.
 * Source: force on a flat ring (derived).
 */
export function bearingMpa(forceN: number, headDiameterMm: number, holeMm: number): number {
  const areaMm2 = (PI / 4) * (headDiameterMm ** 2 - holeMm ** 2);
  return forceN / areaMm2;
}
