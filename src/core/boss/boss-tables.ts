// Tables about the boss.
import { holeAtDepthMm } from '../hole/hole';
import { atMost } from '../maths';
import { bossWallMm, outsideAtMm } from './boss';

/** Both ends of a boss after draft; no hole where it stops above the root. */
export function bossEnds(odMm: number, holeMm: number, heightMm: number, outsideDraftDeg: number, holeDraftDeg: number, holeDepthMm: number): (string | number)[][] {
  const wallAt = (distanceMm: number): number => bossWallMm(odMm, holeMm, distanceMm, outsideDraftDeg, holeDraftDeg, holeDepthMm);
  const hollow = atMost(heightMm, holeDepthMm);
  return [
    ['free end', odMm, holeMm, wallAt(0)],
    ['root', outsideAtMm(odMm, heightMm, outsideDraftDeg), hollow ? holeAtDepthMm(holeMm, heightMm, holeDraftDeg) : '–', wallAt(heightMm)],
  ];
}
