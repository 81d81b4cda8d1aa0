// Tables about the boss.
import { holeAtDepthMm } from '../hole/hole';
import { atMost } from '../maths';
import { bossWallMm, outsideAtMm } from './boss';

/**
 * Outside diameter, hole and wall of a boss at its free end and its root, mm; no hole where it stops above the root.
 * D outside diameter, mm; d_h hole, mm; h height, mm; α outside draft per side, °; β hole draft per side (< 0 widens), °;
 * H hole depth, mm.
 * BOSS.ENDS accepts D, h above 0 mm; d_h above 0 mm, below D; α at least 0° and below 90°; β above -90° and below 90°; H at least 0 mm;
 * a hole that closes or breaks out before H is refused.
 * Source: plane geometry (derived).
 */
export function bossEnds(
  odMm: number,
  holeMm: number,
  heightMm: number,
  outsideDraftDeg: number,
  holeDraftDeg: number,
  holeDepthMm: number,
): (string | number)[][] {
  return [
    ['free end', odMm, holeMm, (odMm - holeMm) / 2],
    [
      'root',
      outsideAtMm(odMm, heightMm, outsideDraftDeg),
      atMost(heightMm, holeDepthMm) ? holeAtDepthMm(holeMm, heightMm, holeDraftDeg) : '–',
      bossWallMm(odMm, holeMm, heightMm, outsideDraftDeg, holeDraftDeg, holeDepthMm),
    ],
  ];
}
