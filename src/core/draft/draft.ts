// Draft, per side, along the pull.
import { atanDeg, tanDeg } from '../maths';

/** How a drafted size changes with the distance from the end that holds it. */
export type DraftDirection = 'grows' | 'shrinks';

/**
 * Offset s per side over a height, mm.
 * h height, mm; α draft per side, °.
 * DRAFT.OFFSET accepts h at least 0 mm; α at least 0° and below 90°, a bare 0 or a blank refused.
 * Source: plane geometry (derived); draft chart for 1 inch of depth (read in 1 secondary copy).
 */
export function draftOffsetMm(heightMm: number, draftDeg: number): number {
  return heightMm * tanDeg(draftDeg);
}

/**
 * Draft α per side that gives an offset over a height, °.
 * s offset per side, mm; h height, mm.
 * DRAFT.ANGLE accepts s at least 0 mm; h above 0 mm.
 * Source: plane geometry (derived); draft chart for 1 inch of depth (read in 1 secondary copy).
 */
export function draftAngleDeg(offsetMm: number, heightMm: number): number {
  return atanDeg(offsetMm / heightMm);
}

/**
 * Height h at which the draft uses up an offset, mm.
 * s offset per side, mm; α draft per side, °.
 * DRAFT.HEIGHT accepts s at least 0 mm; α above 0° and below 90°.
 * Source: plane geometry (derived); draft chart for 1 inch of depth (read in 1 secondary copy).
 */
export function draftHeightMm(offsetMm: number, draftDeg: number): number {
  return offsetMm / tanDeg(draftDeg);
}

/**
 * Size at a distance, mm. Both sides are drafted; the direction is seen from the end that holds the size.
 * D size, mm; h distance along the pull, mm; α draft per side, °; direction grows or shrinks.
 * DRAFT.SIZE accepts D above 0 mm; h at least 0 mm; α at least 0° and below 90°, a bare 0 or a blank refused;
 * other directions, and a size that is drafted away, are refused.
 * Source: plane geometry (derived); draft chart for 1 inch of depth (read in 1 secondary copy).
 */
export function draftedSizeMm(sizeMm: number, distanceMm: number, draftDeg: number, direction: DraftDirection): number {
  return direction === 'grows' ? sizeMm + 2 * distanceMm * tanDeg(draftDeg) : sizeMm - 2 * distanceMm * tanDeg(draftDeg);
}

/**
 * Draft α per side for a texture, °: every 0.025 mm of depth asks for one more step.
 * α_0 draft without texture, °; t texture depth, mm; k draft per step, °.
 * DRAFT.TEXTURE accepts α_0 at least 0° and below 90°; t at least 0 mm; k above 0° and below 90°; a draft of 90° and more is refused.
 * Source: 1.5° for each 0.025 mm of depth (common practice, read in 3 guides; 2 others print 1.0°, 1 prints 1 to 1.5°).
 */
export function texturedDraftDeg(baseDeg: number, textureDepthMm: number, perStepDeg: number): number {
  return baseDeg + perStepDeg * (textureDepthMm / 0.025);
}
