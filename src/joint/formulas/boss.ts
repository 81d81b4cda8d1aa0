// Pilot and boss of the thread half, and the sink behind it.
import { bossCircleMm } from '../../core/boss/boss';
import { holeAtDepthMm } from '../../core/hole/hole';
import { max, min, sqrt } from '../../core/maths';
import { type Deviation } from '../../core/read/deviation';

export type PilotHeldAt = 'mid' | 'mouth';
export type Face = 'hidden' | 'show';

/** Depth below the boss face at which the pilot is held: half way along the full thread, or the mouth. */
export function pilotHeldDepthMm(heldAt: PilotHeldAt, reliefMm: number, engagementMm: number): number {
  return heldAt === 'mid' ? reliefMm + engagementMm / 2 : 0;
}

/** The boss wall at the free end stands beside the wider of relief and pilot mouth. */
export function mouthMm(reliefMm: number, reliefDiaMm: number, pilotMouthMm: number): number {
  return reliefMm > 0 ? max(reliefDiaMm, pilotMouthMm) : pilotMouthMm;
}

/** Of the flank depth, the smallest screw in the largest pilot. Below 0 the thread touches nothing. */
export function threadShareMin(
  majorMinMm: number,
  pilotMouthMm: number,
  pilotTol: Deviation,
  majorMaxMm: number,
  rootMaxMm: number,
): number {
  return (majorMinMm - pilotMouthMm - pilotTol.upperMm) / (majorMaxMm - rootMaxMm);
}

/** A pilot narrower than the root gives no more than the whole thread. */
export function shareThatHolds(share: number): number {
  return min(1, share);
}

export function tightness(pilotAtTipMm: number, pilotTol: Deviation, rootMaxMm: number): number {
  return (pilotAtTipMm + pilotTol.lowerMm) / rootMaxMm;
}

/** The wall of the boss beside its hole where the hole ends: at the root, or above it. */
export function wallBesideHoleMm(
  odRootMm: number,
  pilotMouthMm: number,
  bossHeightMm: number,
  holeDepthMm: number,
  holeDraftDeg: number,
): number {
  return (odRootMm - holeAtDepthMm(pilotMouthMm, min(bossHeightMm, holeDepthMm), holeDraftDeg)) / 2;
}

export function plasticUnderHoleMm(wallMm: number, bossHeightMm: number, holeDepthMm: number): number {
  return wallMm + bossHeightMm - holeDepthMm;
}

/** Never larger than the circle of the solid boss. */
export function rootCircleMm(besideHoleMm: number, wallMm: number, ringDepthMm: number, underHoleMm: number, odRootMm: number): number {
  return min(
    bossCircleMm(besideHoleMm, wallMm, 0, ringDepthMm, underHoleMm),
    wallMm - ringDepthMm + odRootMm ** 2 / (4 * (wallMm - ringDepthMm)),
  );
}

/** The ratio of the plain boss that has the same circle. */
export function sinkRatioOfCircle(circleMm: number, wallMm: number): number {
  return 2 * sqrt(max(0, circleMm / wallMm - 1));
}

/** The thinnest wall, not below the present one, on which the same boss shows no more than this ratio; in hundredths of a millimetre. */
export function wallWithoutSinkMm(
  besideHoleMm: number,
  wallMm: number,
  ringDepthMm: number,
  bossHeightMm: number,
  holeDepthMm: number,
  odRootMm: number,
  mostRatio: number,
): number {
  const passes = (thickMm: number): boolean => {
    const underHoleMm = plasticUnderHoleMm(thickMm, bossHeightMm, holeDepthMm);
    return sinkRatioOfCircle(rootCircleMm(besideHoleMm, thickMm, ringDepthMm, underHoleMm, odRootMm), thickMm) <= mostRatio;
  };
  if (passes(wallMm)) return wallMm;
  let [thin, thick] = [wallMm, 2 * wallMm];
  while (!passes(thick) && Number.isFinite(thick)) [thin, thick] = [thick, 2 * thick];
  // of a wall of many digits the last ones are not told apart
  while (thick - thin > Math.max(0.0001, 1e-12 * thick)) {
    const middle = (thin + thick) / 2;
    if (passes(middle)) thick = middle;
    else thin = middle;
  }
  return Math.ceil(thick * 100) / 100;
}

export function sinkFailLimit(isFaceHidden: boolean, sinkLimit: number): number {
  return isFaceHidden ? max(1.5, sinkLimit + 0.3) : sinkLimit + 0.3;
}

/** On a face that shows draft may thicken the root by a tenth. */
export function sinkReviewLimit(isFaceHidden: boolean, sinkLimit: number, hiddenSinkLimit: number): number {
  return isFaceHidden ? max(hiddenSinkLimit, sinkLimit) : 1.1 * sinkLimit;
}

/** What a wall allows outside before it sinks. */
export function odAllowedByWallMm(pinMm: number, sinkLimit: number, wallMm: number): number {
  return pinMm + 2 * sinkLimit * wallMm;
}

/** The hole must take what the shortest screw with this engagement needs: its own spread on top of relief, point and gap. */
export function depthAskedByRatioMm(holeNeededMm: number, engagementMinMm: number, ratio: number, nominalMm: number): number {
  return holeNeededMm - engagementMinMm + ratio * nominalMm;
}

export function depthAllowedByPinMm(pinLimit: number, pinMm: number): number {
  return pinLimit * pinMm;
}
