// The boss and the wall it stands on. Sizes are held at the free end; the outside grows towards the root.
import { holeAtDepthMm } from '../hole/hole';
import { atMost, max, min, PI, sqrt, tanDeg } from '../maths';
import { junctionCircleMm } from '../mould/mould';
import type { Screw } from '../screw/thread';

/**
 * Wall t of an internal feature, mm.
 * T outer wall, mm; k share of it.
 * WALL.FEATURE accepts T above 0 mm; k above 0 and at most 1.
 * Source: common practice.
 */
export function wallFeatureMm(wallMm: number, share: number): number {
  return share * wallMm;
}

/**
 * Outside diameter D of a boss around a hole, mm, at a distance from the free end, where the size is held.
 * d_h hole, mm; t boss wall, mm; z distance from the free end, mm; α draft per side, °.
 * BOSS.OD accepts d_h, t above 0 mm; z at least 0 mm; α at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function bossOutsideDiaMm(holeMm: number, wallMm: number, distanceMm: number, draftDeg: number): number {
  return holeMm + 2 * wallMm + 2 * distanceMm * tanDeg(draftDeg);
}

/**
 * Outside diameter D of a boss as a ratio to the nominal diameter of the screw, mm.
 * size of the screw; k ratio.
 * BOSS.OD.RULE accepts k above 0.
 * Source: common practice; start values by material (from memory).
 */
export function bossOutsideDiaByRuleMm(screw: Screw, ratio: number): number {
  return ratio * screw.nominalMm;
}

/**
 * Outside diameter of a boss at a distance from its free end, mm.
 * D outside diameter at the free end, mm; z distance from it, mm; α outside draft per side, °.
 * Limits: as BOSS.WALL has them. Source: plane geometry (derived).
 */
export function outsideAtMm(odMm: number, distanceMm: number, outsideDraftDeg: number): number {
  return odMm + 2 * distanceMm * tanDeg(outsideDraftDeg);
}

/**
 * Boss wall t at a distance from the free end, mm. Beyond the depth of the hole the boss is solid: its wall is its whole outside diameter.
 * D outside diameter, mm; d_h hole, mm; z distance from the free end, mm; α outside draft per side, °;
 * β hole draft per side (< 0 widens), °; H hole depth, mm.
 * BOSS.WALL accepts D above 0 mm; d_h above 0 mm, below D; z, H at least 0 mm; α at least 0° and below 90°; β above -90° and below 90°;
 * a hole that closes or breaks out before H is refused.
 * Source: plane geometry (derived).
 */
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

/**
 * Height ÷ outside diameter of a boss.
 * h height, mm; D outside diameter, mm.
 * BOSS.SLENDER accepts h, D above 0 mm.
 * Source: common practice.
 */
export function bossSlenderness(heightMm: number, odMm: number): number {
  return heightMm / odMm;
}

/**
 * Boss wall ÷ wall it stands on: the measure of sink.
 * t boss wall, mm; T wall, mm.
 * BOSS.SINK accepts t, T above 0 mm.
 * Source: common practice.
 */
export function sinkRatio(bossWall: number, wallMm: number): number {
  return bossWall / wallMm;
}

/**
 * Diameter 2r of the circle that touches the outer face, the fillet at the foot of the boss and the edge of the hole's bottom, mm:
 * √(p·r − q) + √(s·r − u) = t + R, p = 2(a + 2R), q = a² + 2aR, s = 2f, u = f². Squared twice it is quadratic in r; its larger root came in
 * by squaring. Where no circle touches both, f stands for it.
 * t boss wall, mm; a height of the foot above the outer face, mm; R fillet, mm; f plastic under the hole, mm.
 * Limits: as BOSS.CIRCLE has them; f above 0 mm. Source: plane geometry (derived).
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

/**
 * Diameter C of the largest circle in the root of a boss wall, mm. At f = 0 the wall has its fillet and its groove on both sides alike.
 * t boss wall, mm; T wall, mm; R fillet, mm; h_g depth of the groove around the boss, mm; f plastic under the hole, mm.
 * BOSS.CIRCLE accepts t, T above 0 mm; R, f at least 0 mm; h_g at least 0 mm, below T.
 * Source: plane geometry (derived).
 */
export function bossCircleMm(bossWallMm: number, wallMm: number, filletMm: number, ringDepthMm: number, floorMm: number): number {
  return floorMm > 0
    ? eccentricCircleMm(bossWallMm, wallMm - ringDepthMm, filletMm, floorMm)
    : junctionCircleMm(wallMm - ringDepthMm, bossWallMm, filletMm);
}

/**
 * Volume of a frustum of a cone, mm³.
 * d_1 diameter at one end, mm; d_2 diameter at the other, mm; h height, mm.
 * Limits: as BOSS.MASS has them. Source: plane geometry (derived).
 */
export function frustumVolumeMm3(oneEndMm: number, otherEndMm: number, heightMm: number): number {
  return (PI / 12) * heightMm * (oneEndMm ** 2 + oneEndMm * otherEndMm + otherEndMm ** 2);
}

/**
 * Mass m of the boss above its root, g: the outside cone less the drafted hole, as far as the hole goes in it.
 * D outside diameter, mm; d_h hole, mm; h height, mm; ρ density, g/cm³; α outside draft per side, °;
 * β hole draft per side (< 0 widens), °; H hole depth, mm.
 * BOSS.MASS accepts D, h above 0 mm; d_h above 0 mm, below D; ρ above 0 g/cm³; α at least 0° and below 90°; β above -90° and below 90°;
 * H at least 0 mm; a hole that closes or breaks out before H is refused.
 * Source: plane geometry (derived).
 */
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

/**
 * Mould steel s_f at the floor, mm. Boss and wall both lean into the gap: the steel between them is thinnest there.
 * s gap at the top, mm; h height, mm; α draft of the boss, per side, °; β draft of the wall, °.
 * BOSS.STEEL accepts s, h above 0 mm; α, β at least 0° and below 90°.
 * Source: plane geometry (derived).
 */
export function steelAtFloorMm(gapTopMm: number, heightMm: number, bossDraftDeg: number, wallDraftDeg: number): number {
  return gapTopMm - heightMm * (tanDeg(bossDraftDeg) + tanDeg(wallDraftDeg));
}

/**
 * Distance of a point from the inside corner of two walls, mm: to its arc where that lies beside the point, else to the nearer wall.
 * x from one wall, mm; y from the other, mm; R radius of the corner, mm.
 * Limits: as BOSS.CORNER has them. Source: plane geometry (derived).
 */
export function roomInCornerMm(xMm: number, yMm: number, radiusMm: number): number {
  return xMm < radiusMm && yMm < radiusMm ? radiusMm - sqrt((radiusMm - xMm) ** 2 + (radiusMm - yMm) ** 2) : xMm < yMm ? xMm : yMm;
}

/**
 * Mould steel s_f at the floor between a boss and the inside corner beside it, mm. The arc is drafted with its walls: its radius shrinks.
 * D outside diameter at the free end, mm; x from one wall there, mm; y from the other there, mm; R radius of the corner there, mm;
 * h height, mm; α draft of the boss, per side, °; β draft of the walls, °.
 * BOSS.CORNER accepts D, h above 0 mm; x, y above 0 mm, more than half of od; R at least 0 mm; α, β at least 0° and below 90°; a boss that
 * touches the corner at its free end is refused. Source: plane geometry (derived).
 */
export function bossCornerMm(
  odMm: number,
  xMm: number,
  yMm: number,
  cornerRadiusMm: number,
  heightMm: number,
  bossDraftDeg: number,
  wallDraftDeg: number,
): number {
  const inwardMm = heightMm * tanDeg(wallDraftDeg);
  const xAtFloorMm = xMm - inwardMm;
  const yAtFloorMm = yMm - inwardMm;
  const radiusAtFloorMm = max(0, cornerRadiusMm - inwardMm);
  const roomMm = roomInCornerMm(xAtFloorMm, yAtFloorMm, radiusAtFloorMm);
  return roomMm - outsideAtMm(odMm, heightMm, bossDraftDeg) / 2;
}

/**
 * Flat f left between the fillets, mm. Negative: the fillets meet in a knife edge.
 * s_f steel at the floor, mm; R_b fillet of the boss, mm; R_w fillet of the wall, mm.
 * BOSS.FLAT accepts R_b, R_w at least 0 mm.
 * Source: plane geometry (derived).
 */
export function flatBetweenFilletsMm(steelMm: number, bossFilletMm: number, wallFilletMm: number): number {
  return steelMm - bossFilletMm - wallFilletMm;
}

/**
 * Outside diameter asked by the screw, mm, allowed by the wall, mm, wall that satisfies both, mm, and the state.
 * size of the screw; T wall, mm; d_h pilot hole, mm; k outside diameter ÷ screw diameter; s boss wall ÷ wall.
 * BOSS.CONFLICT accepts T above 0 mm; d_h above 0 mm, below the major diameter of the screw; k above 1; s above 0 and at most 1.
 * Source: common practice; start values by material (from memory).
 */
export function bossConflict(screw: Screw, wallMm: number, pilotMm: number, odRatio: number, share: number): (string | number)[][] {
  const askedOdMm = bossOutsideDiaByRuleMm(screw, odRatio);
  const allowedOdMm = pilotMm + 2 * share * wallMm;
  const wallForBothMm = (askedOdMm - pilotMm) / (2 * share);
  return [[askedOdMm, allowedOdMm, wallForBothMm, atMost(askedOdMm, allowedOdMm) ? 'pass' : 'fail']];
}

/**
 * Start values of gussets: thickness, height and base, mm, and their count.
 * h boss height, mm; T wall, mm.
 * BOSS.GUSSET accepts h, T above 0 mm.
 * Source: thickness 0.5 to 0.6 of the wall, height 0.67 to 0.95 and base 0.3 to 1 of the boss height, four at 90° (from memory).
 */
export function gussetStartValues(bossHeightMm: number, wallMm: number): number[][] {
  return [[0.5 * wallMm, 0.8 * bossHeightMm, 0.5 * bossHeightMm, 4]];
}

/**
 * Shear stress τ at the outside of a boss under torque, MPa.
 * T torque, N·m; D outside diameter, mm; d_h hole, mm.
 * BOSS.TORSION accepts T above 0 N·m; D above 0 mm; d_h above 0 mm, below D.
 * Source: torsion of a round tube, any strength of materials handbook (from memory).
 */
export function bossTorsionMpa(torqueNm: number, odMm: number, holeMm: number): number {
  return (16 * 1000 * torqueNm * odMm) / (PI * (odMm ** 4 - holeMm ** 4));
}
