// A threaded insert in the boss: what the screw holds in it, and what holds it.
import { engagementMinMm } from '../../core/engagement/engagement';
import { min, PI } from '../../core/maths';
import { type Deviation, type Deviations } from '../../core/read/deviation';

/** As INSERT.ENGAGEMENT at worst case: the shortest screw on the thickest grip, the insert deepest and shortest. */
export function insertEngagementMinMm(
  lengthMm: number,
  lengthTol: Deviation,
  layersMm: readonly number[],
  tolerances: Deviations,
  insertLengthMm: number,
  belowFaceMm: number,
  insertTol: Deviation,
  pointMm: number,
): number {
  return min(
    engagementMinMm(lengthMm, lengthTol, layersMm, tolerances, belowFaceMm, insertTol, pointMm),
    insertLengthMm + insertTol.lowerMm,
  );
}

/** The boss torn across beside the insert. */
export function insertTearN(bossOdMm: number, insertMm: number, yieldStressMpa: number, safety: number): number {
  return (yieldStressMpa * ((PI / 4) * (bossOdMm ** 2 - insertMm ** 2))) / safety;
}

/** Nothing of the hole holds the insert where none is given: it is moulded in. */
export function holeThatGripsMm(isGiven: boolean, holeMaxMm: number): number {
  return isGiven ? holeMaxMm : 0;
}
