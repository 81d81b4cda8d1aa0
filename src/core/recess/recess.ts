// The recess for the head, and the seat it leaves.
import { cosDeg, tanDeg } from '../maths';
import type { Cone } from './countersink';

/**
 * Recess diameter D_r, mm, held at the recess floor, where the head sits; wider towards the outer face.
 * d_k head diameter, mm; c allowance on diameter, mm; z distance from the floor, mm; α draft per side, °.
 * RECESS.DIAMETER accepts d_k above 0 mm; c, z at least 0 mm; α at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function recessDiaMm(headDiameterMm: number, allowanceMm: number, distanceMm: number, draftDeg: number): number {
  return headDiameterMm + allowanceMm + 2 * distanceMm * tanDeg(draftDeg);
}

/**
 * Recess depth h_r, mm, that leaves a seat.
 * B board plane, mm; s seat, mm.
 * RECESS.DEPTH accepts B above 0 mm; s at least 0 mm, at most B.
 * Source: plane geometry (derived).
 */
export function recessDepthMm(boardPlaneMm: number, seatMm: number): number {
  return boardPlaneMm - seatMm;
}

/**
 * Seat s left under a recess, mm.
 * B board plane, mm; h_r recess depth, mm.
 * RECESS.SEAT accepts B above 0 mm; h_r at least 0 mm, at most B.
 * Source: plane geometry (derived).
 */
export function recessSeatMm(boardPlaneMm: number, depthMm: number): number {
  return boardPlaneMm - depthMm;
}

/**
 * Least recess depth h_r, mm.
 * k head height, mm; u head below the face, mm.
 * RECESS.DEPTH.MIN accepts k above 0 mm; u at least 0 mm.
 * Source: common practice.
 */
export function recessDepthMinMm(headHeightMm: number, subflushMm: number): number {
  return headHeightMm + subflushMm;
}

/**
 * How far u the head lies below the face, mm.
 * h_r recess depth, mm; k head height, mm.
 * RECESS.FLUSH accepts h_r at least 0 mm; k above 0 mm.
 * Source: plane geometry (derived).
 */
export function subflushMm(depthMm: number, headHeightMm: number): number {
  return depthMm - headHeightMm;
}

/**
 * Depth of a countersink from the theoretical sharp diameter down to the hole, mm.
 * d_s sharp diameter, mm; d_h hole, mm; θ included angle, °.
 * Limits: as RECESS.CONE has them. Source: plane geometry (derived).
 */
export function countersinkDepthMm(sharpDiameterMm: number, holeMm: number, angleDeg: number): number {
  return (sharpDiameterMm - holeMm) / (2 * tanDeg(angleDeg / 2));
}

/**
 * Depth h_s of the countersink for a countersunk head, from its theoretical sharp diameter down to the hole, mm.
 * d_s theoretical sharp diameter, mm; d_h hole, mm; θ included angle, °.
 * RECESS.CONE accepts d_s above 0 mm; d_h above 0 mm, below d_s; θ above 0° and below 180°.
 * Source: plane geometry (derived); included angles: ISO 7721-1 90°, ASME B18.6.3 82°, DIN 7982 80° (read in secondary copies).
 */
export function recessConeMm(cone: Cone, holeMm: number, angleDeg: number): number {
  return countersinkDepthMm(cone.sharpMm, holeMm, angleDeg);
}

/**
 * Recess diameter D_r whose side the head never touches, mm: the screw may move by its whole play in the hole.
 * d_k head diameter, mm; d_h hole, mm; d screw diameter, mm; c margin per side, mm.
 * RECESS.FLOAT accepts d_k, d_h above 0 mm; d above 0 mm, at most d_h, or it does not go through; c at least 0 mm.
 * Source: plane geometry (derived).
 */
export function recessFloatMm(headDiameterMm: number, holeMm: number, screwMm: number, marginMm: number): number {
  return headDiameterMm + (holeMm - screwMm) + 2 * marginMm;
}

/**
 * Room r on diameter for the tool, mm. Negative: the tool does not go in.
 * D_r recess diameter, mm; d_t tool diameter, mm; c margin on diameter, mm.
 * RECESS.TOOL accepts D_r, d_t above 0 mm; c at least 0 mm.
 * Source: plane geometry (derived); margin of 0.5 mm (common practice).
 */
export function toolRoomMm(recessDiaMm: number, toolDiaMm: number, marginMm: number): number {
  return recessDiaMm - toolDiaMm - marginMm;
}

/**
 * Width of a hexagon across its corners, mm.
 * s width across the flats, mm.
 * Limits: as RECESS.TOOL has them for its tool. Source: plane geometry (derived).
 */
export function acrossCornersMm(acrossFlatsMm: number): number {
  return acrossFlatsMm / cosDeg(30);
}
