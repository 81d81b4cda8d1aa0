// Tables about the boss.
import { holeAtDepthMm } from '../hole/hole';
import { atMost } from '../maths';
import { bossWallMm, outsideAtMm } from './boss';

/** Both ends of a boss after draft; no hole where it stops above the root. */
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
