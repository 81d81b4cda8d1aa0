// Torque: what strips the thread, where the driver is set, what makes a clamp force, what the head then presses.
import { atanDeg, atLeast, atMost, cosDeg, max, PI, tanDeg } from '../maths';
import type { Screw } from '../screw/thread';
import { threadMeanDiaMm } from './pull-out';

/** The pull-out force on the slope of the thread, with friction. */
export function stripTorqueNm(pullOutForceN: number, screw: Screw, friction: number): number {
  const radiusMm = threadMeanDiaMm(screw) / 2;
  const slope = (screw.pitchMm + 2 * PI * friction * radiusMm) / (2 * PI * radiusMm - friction * screw.pitchMm);
  return (pullOutForceN * radiusMm * slope) / 1000;
}

export function setTorqueNm(driveNm: number, stripNm: number, share: number): number {
  return driveNm + share * (stripNm - driveNm);
}

/** Set torque: at least twice the drive torque, and 50 to 70 % of the strip torque, less what the driver scatters. */
export function lowSetTorqueNm(driveNm: number, stripNm: number, scatter: number): number {
  return max(2 * driveNm, 0.5 * stripNm) / (1 - scatter);
}

export function highSetTorqueNm(stripNm: number, scatter: number): number {
  return (0.7 * stripNm) / (1 + scatter);
}

export function torqueWindow(driveNm: number, stripNm: number, leastRatio: number, scatter: number): (string | number)[][] {
  const stripToDrive = stripNm / driveNm;
  const lowNm = lowSetTorqueNm(driveNm, stripNm, scatter);
  const highNm = highSetTorqueNm(stripNm, scatter);
  const isOpen = atMost(lowNm, highNm);
  return [
    [stripToDrive, atLeast(stripToDrive, leastRatio) ? (isOpen ? 'pass' : 'review') : 'fail', isOpen ? lowNm : '–', isOpen ? highNm : '–'],
  ];
}

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

export function bearingMpa(forceN: number, headDiameterMm: number, holeMm: number): number {
  const areaMm2 = (PI / 4) * (headDiameterMm ** 2 - holeMm ** 2);
  return forceN / areaMm2;
}
