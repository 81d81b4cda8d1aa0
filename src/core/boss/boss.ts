// The boss and the wall it stands on. Sizes are held at the free end; the outside grows towards the root.
import { holeAtDepthMm } from '../hole/hole';
import { atMost, max, min, PI, sqrt, tanDeg } from '../maths';
import { junctionCircleMm } from '../mould/mould';
import type { Screw } from '../screw/thread';

export function wallFeatureMm(wallMm: number, share: number): number {
  return share * wallMm;
}

export function bossOutsideDiaMm(holeMm: number, wallMm: number, distanceMm: number, draftDeg: number): number {
  return holeMm + 2 * wallMm + 2 * distanceMm * tanDeg(draftDeg);
}

export function bossOutsideDiaByRuleMm(screw: Screw, ratio: number): number {
  return ratio * screw.nominalMm;
}

export function outsideAtMm(odMm: number, distanceMm: number, outsideDraftDeg: number): number {
  return odMm + 2 * distanceMm * tanDeg(outsideDraftDeg);
}

/** Beyond the depth of the hole the boss is solid: the wall is its whole outside diameter. */
export function bossWallMm(
  odMm: number,
  holeMm: number,
  distanceMm: number,
  outsideDraftDeg: number,
  holeDraftDeg: number,
  holeDepthMm: number,
): number {
  const outsideMm = outsideAtMm(odMm, distanceMm, outsideDraftDeg);
  return atMost(distanceMm, holeDepthMm) ? (outsideMm - holeAtDepthMm(holeMm, distanceMm, holeDraftDeg)) / 2 : outsideMm;
}

export function bossSlenderness(heightMm: number, odMm: number): number {
  return heightMm / odMm;
}

export function sinkRatio(bossWall: number, wallMm: number): number {
  return bossWall / wallMm;
}

/**
 * The circle that touches the outer face, the foot of the groove outside (its fillet R, at the height a) and the edge of the hole's
 * bottom inside,
 * diameter 2r: √(p·r − q) + √(s·r − u) = t + R with p = 2(a + 2R), q = a² + 2aR, s = 2f, u = f². Squared twice it is quadratic in r, and
 * its smaller
 * root is the one that was not made by squaring. Where the edge lies so low that no circle touches both, the plastic under it counts.
 */
export function eccentricCircleMm(bossWallMm: number, footMm: number, filletMm: number, floorMm: number): number {
  const p = 2 * (footMm + 2 * filletMm);
  const q = footMm ** 2 + 2 * footMm * filletMm;
  const s = 2 * floorMm;
  const u = floorMm ** 2;
  const w = (bossWallMm + filletMm) ** 2 + q + u;
  const b = w * (p + s) - 2 * (p * u + q * s);
  const c = w ** 2 - 4 * q * u;
  const leastRadiusMm = max(q / p, u / s);
  const reachMm = sqrt(max(0, p * leastRadiusMm - q)) + sqrt(max(0, s * leastRadiusMm - u));
  return reachMm <= bossWallMm + filletMm ? (2 * c) / (b + sqrt(max(0, b ** 2 - (p - s) ** 2 * c))) : floorMm;
}

/** Largest circle in the root of a boss wall: its diameter. Without a floor both sides of the wall are alike. */
export function bossCircleMm(bossWallMm: number, wallMm: number, filletMm: number, ringDepthMm: number, floorMm: number): number {
  return floorMm > 0
    ? eccentricCircleMm(bossWallMm, wallMm - ringDepthMm, filletMm, floorMm)
    : junctionCircleMm(wallMm - ringDepthMm, bossWallMm, filletMm);
}

export function frustumVolumeMm3(oneEndMm: number, otherEndMm: number, heightMm: number): number {
  return (PI / 12) * heightMm * (oneEndMm ** 2 + oneEndMm * otherEndMm + otherEndMm ** 2);
}

/** The boss above its root: the outside cone less the drafted hole, as far as the hole goes in it. */
export function bossMassG(
  odMm: number,
  holeMm: number,
  heightMm: number,
  densityGPerCm3: number,
  outsideDraftDeg: number,
  holeDraftDeg: number,
  holeDepthMm: number,
): number {
  const rootOdMm = outsideAtMm(odMm, heightMm, outsideDraftDeg);
  const hollowMm = min(holeDepthMm, heightMm);
  const holeEndMm = holeAtDepthMm(holeMm, hollowMm, holeDraftDeg);
  const volumeMm3 = frustumVolumeMm3(odMm, rootOdMm, heightMm) - frustumVolumeMm3(holeMm, holeEndMm, hollowMm);
  return (densityGPerCm3 * volumeMm3) / 1000;
}

/** Boss and wall both lean into the gap: the steel between them is thinnest at the floor. */
export function steelAtFloorMm(gapTopMm: number, heightMm: number, bossDraftDeg: number, wallDraftDeg: number): number {
  return gapTopMm - heightMm * (tanDeg(bossDraftDeg) + tanDeg(wallDraftDeg));
}

/** Negative: the fillets meet in a knife edge. */
export function flatBetweenFilletsMm(steelMm: number, bossFilletMm: number, wallFilletMm: number): number {
  return steelMm - bossFilletMm - wallFilletMm;
}

export function bossConflict(screw: Screw, wallMm: number, pilotMm: number, odRatio: number, share: number): (string | number)[][] {
  const askedOdMm = bossOutsideDiaByRuleMm(screw, odRatio);
  const allowedOdMm = pilotMm + 2 * share * wallMm;
  const wallForBothMm = (askedOdMm - pilotMm) / (2 * share);
  return [[askedOdMm, allowedOdMm, wallForBothMm, atMost(askedOdMm, allowedOdMm) ? 'pass' : 'fail']];
}

export function gussetStartValues(bossHeightMm: number, wallMm: number): number[][] {
  return [[0.5 * wallMm, 0.8 * bossHeightMm, 0.5 * bossHeightMm, 4]];
}

export function bossTorsionMpa(torqueNm: number, odMm: number, holeMm: number): number {
  return (16 * 1000 * torqueNm * odMm) / (PI * (odMm ** 4 - holeMm ** 4));
}
