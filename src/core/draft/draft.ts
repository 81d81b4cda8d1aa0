// Draft, per side, along the pull.
import { atanDeg, tanDeg } from '../maths';

export type DraftDirection = 'grows' | 'shrinks';

export function draftOffsetMm(heightMm: number, draftDeg: number): number {
  return heightMm * tanDeg(draftDeg);
}

export function draftAngleDeg(offsetMm: number, heightMm: number): number {
  return atanDeg(offsetMm / heightMm);
}

export function draftHeightMm(offsetMm: number, draftDeg: number): number {
  return offsetMm / tanDeg(draftDeg);
}

/** Both sides are drafted; the direction is seen from the end that holds the size. */
export function draftedSizeMm(sizeMm: number, distanceMm: number, draftDeg: number, direction: DraftDirection): number {
  return direction === 'grows' ? sizeMm + 2 * distanceMm * tanDeg(draftDeg) : sizeMm - 2 * distanceMm * tanDeg(draftDeg);
}

/** Every 0.025 mm of texture asks for one more step of draft. */
export function texturedDraftDeg(baseDeg: number, textureDepthMm: number, perStepDeg: number): number {
  return baseDeg + perStepDeg * (textureDepthMm / 0.025);
}
