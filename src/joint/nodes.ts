// The nodes of the joint: each is the call of a base function on inputs and other nodes.
import * as Boss from '../core/boss/boss';
import * as Engagement from '../core/engagement/engagement';
import * as Hole from '../core/hole/hole';
import { pinRatio } from '../core/hole/position';
import * as Board from '../core/board/board';
import { tappingScrew } from '../core/strength/sources';
import * as Strength from '../core/strength/pull-out';
import * as Recess from '../core/recess/recess';
import { lengthDeviation, standardLengthsMm } from '../core/screw/length';
import { headDiameterMm, isCountersunk, raisedPartMm, type Head } from '../core/screw/head';
import { type End, pointMm, type Screw } from '../core/screw/thread';
import type { Deviation } from '../core/read/deviation';
import * as J from './formulas';
import { densityOf } from './inputs';
import { type Arg, type Node, NotApplicable } from './graph';

const NO_RECESS = 'the head lies on the board (seat "0 mm")';

/** The seat where there is one. */
const seatOfRecessMm = (seatMm: number): number => {
  if (seatMm === 0) throw new NotApplicable(NO_RECESS);
  return seatMm;
};
const sleeveOnlyMm = (sleeveMm: number): number => {
  if (sleeveMm === 0) throw new NotApplicable('there is no sleeve');
  return sleeveMm;
};
const boardHoleGivenMm = (boardHoleMm: number | undefined): number => {
  if (boardHoleMm === undefined) throw new NotApplicable('no board hole is given');
  return boardHoleMm;
};
const lengthTolerance = (screw: Screw, lengthMm: number, end: End): Deviation => lengthDeviation(screw.size, lengthMm, end);
const pointOf = (screw: Screw, end: End): number => pointMm(screw.size, end);
const isStandardLength = (screw: Screw, lengthMm: number): number =>
  standardLengthsMm(screw.size).some(standardMm => Math.abs(standardMm - lengthMm) < 1e-6) ? 1 : 0;
const majorMaxMm = (screw: Screw): number => screw.majorMaxMm;
const majorMinMm = (screw: Screw): number => screw.majorMinMm;
const rootMaxMm = (screw: Screw): number => screw.rootMaxMm;
const coneSharpMm = (screw: Screw, head: Head): number => {
  if (!isCountersunk(head)) throw new NotApplicable('the head is not countersunk');
  return headDiameterMm(screw.size, head, 'sharp');
};
const coneAngleDeg = (head: Head): number => head.angleDeg ?? NaN;
const isShow = (face: string): boolean => face === 'show';

const flatHeadMm = (head: Head, headDiameterMm: number): number => {
  if (isCountersunk(head)) throw new NotApplicable('a countersunk head bears on a cone');
  return headDiameterMm;
};
/** A countersunk head lies flush with the recess floor; a raised one stands out by its raised part. */
const headInSeatMm = (screw: Screw, head: Head, headHeightMm: number): number => {
  if (!isCountersunk(head)) return 0;
  return head.style === 'raised countersunk' ? headHeightMm - raisedPartMm(screw.size, head) : headHeightMm;
};
const seatShearOrNone = (seatMm: number, head: Head, headDiameterMm: number, yieldStressMpa: number, safety: number): number | undefined =>
  seatMm === 0 || isCountersunk(head) ? undefined : Strength.seatShearN(headDiameterMm, seatMm, yieldStressMpa, safety);
const weakest = (pullOutN: number, bossTearN: number, seatShearN: number | undefined): string => {
  const [boss, force] = pullOutN <= bossTearN ? ['pull-out', pullOutN] : ['boss tear', bossTearN];
  return seatShearN === undefined || force <= seatShearN ? boss : 'seat shear';
};

const ZERO: Arg = { is: 0 };
const list: Node[] = [];
const node = (name: string, unit: string, meaning: string, formula: Node['formula'], ...args: Arg[]): void => {
  list.push({ name, unit, meaning, formula, args });
};

// head half
node('feature wall', 'mm', 'wall of an internal feature', Boss.wallFeatureMm, 'wall', 'feature share');
node('seat under the head', 'mm', 'seat of a recessed head', seatOfRecessMm, 'seat');
node('recess depth', 'mm', 'outer face to head seat', Recess.recessDepthMm, 'plane of the recess', 'seat under the head');
node('recess diameter', 'mm', 'at the recess floor, where it is held', Recess.recessDiaMm, 'recessed head', 'allowance', ZERO, ZERO);
node(
  'recess mouth',
  'mm',
  'recess at the outer face, after draft',
  Recess.recessDiaMm,
  'recessed head',
  'allowance',
  'recess depth',
  'recess draft',
);
node('subflush', 'mm', 'head below the outer face (negative: proud)', J.headBelowFaceMm, 'recess depth', 'head above the seat');
node(
  'post OD',
  'mm',
  'post around the recess at the board plane, the wall held at the recess floor',
  Boss.bossOutsideDiaMm,
  'recess diameter',
  'feature wall',
  ZERO,
  ZERO,
);
node('sleeve OD', 'mm', 'sleeve outside diameter at its free end', Boss.bossOutsideDiaMm, 'sleeve hole', 'feature wall', ZERO, ZERO);

// grip and engagement
node('between', 'mm', 'sleeve, or board where there is none', J.betweenMm, 'sleeve', 'board');
node('between tolerance', 'mm', 'its tolerance', J.betweenDeviation, 'sleeve', 'sleeve tolerance', 'board', 'board tolerance');
node('grip layers', 'mm', 'seat, sleeve or board, planned gap', J.gripLayersMm, 'seat', 'between', 'gap');
node('grip tolerances', 'mm', 'their tolerances', J.gripDeviations, 'seat tolerance', 'between tolerance', 'gap tolerance');
node('grip', 'mm', 'under the head to the boss face; of a countersunk head from its top edge', Engagement.gripMm, 'grip layers');
node('screw length', 'mm', 'nominal length', J.same, 'length');
node('length tolerance', 'mm', 'tolerance of the screw length', lengthTolerance, 'screw', 'length', 'end');
node('point', 'mm', 'length at the point without full thread', pointOf, 'screw', 'end');
node(
  'penetration max',
  'mm',
  'deepest reach below the boss face',
  Engagement.penetrationMaxMm,
  'length',
  'length tolerance',
  'grip layers',
  'grip tolerances',
);
node('engagement', 'mm', 'full thread in the boss, nominal', Engagement.engagementMm, 'length', 'grip layers', 'relief', 'point');
node(
  'engagement min',
  'mm',
  'full thread in the boss, worst case',
  Engagement.engagementMinMm,
  'length',
  'length tolerance',
  'grip layers',
  'grip tolerances',
  'relief',
  'relief tolerance',
  'point',
);
node('engagement ratio', '', 'worst-case engagement ÷ d', Engagement.engagementRatio, 'engagement min', 'screw');
node(
  'hole depth needed',
  'mm',
  'deepest reach, bottom gap and hole depth tolerance',
  Hole.holeDepthNeededMm,
  'penetration max',
  'bottom gap',
  'hole depth tolerance',
);
node(
  'bottom clearance',
  'mm',
  'least room under the tip',
  Engagement.bottomRoomMm,
  'hole depth',
  'hole depth tolerance',
  'length',
  'length tolerance',
  'grip layers',
  'grip tolerances',
);

// pilot
node('pilot hole', 'mm', 'pilot where it is held', J.same, 'pilot');
node('pilot held depth', 'mm', 'depth at which the pilot is held', J.pilotHeldDepthMm, 'pilot held at', 'relief', {
  only: 'engagement',
  where: 'held at mid',
});
node('pilot mouth', 'mm', 'pilot at the boss face', Hole.holeMouthMm, 'pilot', 'pilot held depth', 'hole draft');
node('pilot at tip', 'mm', 'pilot at the deepest reach', Hole.holeAtDepthMm, 'pilot mouth', 'penetration max', 'hole draft');
node('tightness', '', 'pilot at tip ÷ root', Hole.holeTightness, 'screw', 'pilot mouth', 'penetration max', 'hole draft');
node('pilot bottom', 'mm', 'pilot at the bottom of the hole', Hole.holeAtDepthMm, 'pilot mouth', 'hole depth', 'hole draft');

// boss
node('boss OD root', 'mm', 'boss outside diameter at the wall, after draft', Boss.outsideAtMm, 'boss OD', 'boss height', 'outside draft');
node('mouth', 'mm', 'relief or pilot at the free end', J.mouthMm, 'relief', 'relief diameter', 'pilot mouth');
node('boss wall', 'mm', 'boss wall at the free end, beside relief or pilot', Boss.bossWallMm, 'boss OD', 'mouth', ZERO, ZERO, ZERO, ZERO);
node(
  'boss wall root',
  'mm',
  'boss wall at the root; the whole diameter where the hole stops above',
  Boss.bossWallMm,
  'boss OD',
  'pilot mouth',
  'boss height',
  'outside draft',
  'hole draft',
  'hole depth',
);
node('sink ratio', '', 'boss wall at the root ÷ wall', Boss.sinkRatio, 'boss wall root', 'wall');
node('slenderness', '', 'boss height ÷ outside diameter', Boss.bossSlenderness, 'boss height', 'boss OD');
node('pin ratio', '', 'hole depth ÷ pilot hole', pinRatio, 'hole depth', 'pilot');
node('floor under hole', 'mm', 'plastic left under the hole', Hole.holeFloorMm, 'wall', 'boss height', 'hole depth');
node(
  'landing ring',
  'mm',
  'width of the ring on which the boss lands',
  J.landingRingMm,
  'boss OD',
  'sleeve',
  'sleeve OD or none',
  'hole',
  'relief diameter',
);
node('board play', 'mm', 'play of the board on the sleeve, per side', Board.sleevePlayMm, 'board hole given', 'sleeve OD', ZERO);
node(
  'board hold',
  'mm',
  'ring of the boss that holds the board at its worst sideways position',
  Board.boardHoldMm,
  'boss OD',
  'board hole given',
  'locator',
  ZERO,
);
node(
  'boss stack',
  'mm',
  'outer face of the head half to the wall of the thread half, bosses in contact',
  J.bossStackMm,
  'board plane',
  'between',
  'boss height',
);

// strength and mass: estimates
node(
  'pull-out',
  'N',
  'estimate: thread pull-out at worst-case engagement',
  Strength.pullOutN,
  'tapping screw',
  'engagement min',
  'yield stress',
  'safety',
);
node('boss tear', 'N', 'estimate: boss torn across', Strength.bossTearN, 'boss OD', 'screw', 'yield stress', 'safety');
node(
  'seat shear',
  'N',
  'estimate: head sheared through the seat',
  Strength.seatShearN,
  'recessed flat head',
  'seat under the head',
  'yield stress',
  'safety',
);
node('weakest', '', 'which of the three gives way first', weakest, 'pull-out', 'boss tear', 'seat shear or none');
node(
  'boss mass',
  'g',
  'estimate: mass of the boss',
  Boss.bossMassG,
  'boss OD',
  'pilot mouth',
  'boss height',
  'density',
  'outside draft',
  'hole draft',
  'hole depth',
);

// quantities that only rules and other nodes read
node(
  'head in the seat',
  'mm',
  'part of the head that lies in the seat: the cone of a countersunk head',
  headInSeatMm,
  'screw',
  'head',
  'head height',
);
node('head above the seat', 'mm', 'part of the head that stands on the seat', J.headAboveSeatMm, 'head height', 'head in the seat');
node('plane of the recess', 'mm', 'board plane of a recessed head', J.whereThereIsMm, 'seat under the head', 'board plane');
node('recessed head', 'mm', 'head diameter of a recessed head', J.whereThereIsMm, 'seat under the head', 'head diameter');
node('sleeve hole', 'mm', 'hole through the sleeve', J.whereThereIsMm, 'sleeve height', 'hole');
node('sleeve height', 'mm', 'sleeve where there is one', sleeveOnlyMm, 'sleeve');
node(
  'sleeve OD or none',
  'mm',
  'sleeve outside diameter whether or not there is a sleeve',
  Boss.bossOutsideDiaMm,
  'hole',
  'feature wall',
  ZERO,
  ZERO,
);
node('board hole given', 'mm', 'board hole where one is given', boardHoleGivenMm, 'board hole');
node('engagement asked', 'mm', 'full thread asked: ratio × d', J.engagementAskedMm, 'ratio', 'screw');
node('standard length', '', '1 where the length is a standard one', isStandardLength, 'screw', 'length');
node('major max', 'mm', 'screw major diameter, max', majorMaxMm, 'screw');
node('major min', 'mm', 'screw major diameter, min', majorMinMm, 'screw');
node('root max', 'mm', 'screw root diameter, max', rootMaxMm, 'screw');
node('has recess', '', 'the head sits in a recess', (seatMm: number) => seatMm > 0, 'seat');
node('has board hole', '', 'a board hole is given', (boardHoleMm: number | undefined) => boardHoleMm !== undefined, 'board hole');
node(
  'has sleeve and board hole',
  '',
  'a sleeve goes through a board hole',
  (sleeveMm: number, boardHoleMm: number | undefined) => sleeveMm > 0 && boardHoleMm !== undefined,
  'sleeve',
  'board hole',
);
node('is countersunk', '', 'the head is countersunk', (head: Head) => isCountersunk(head), 'head');
node('held at mid', '', 'the pilot is held half way along the full thread', (heldAt: J.PilotHeldAt) => heldAt === 'mid', 'pilot held at');
node('is hidden', '', 'the face behind the boss is hidden', (face: string) => !isShow(face), 'face');
node('tapping screw', '', 'screw that forms or cuts its thread', tappingScrew, 'screw');
node('locator', 'mm', 'what holds the board sideways', J.locatorMm, 'sleeve', 'sleeve OD or none', 'screw');
node('density', 'g/cm³', 'density of the material', densityOf, 'material');
node('recessed flat head', 'mm', 'diameter of a flat-seated head in a recess', flatHeadMm, 'head', 'recessed head');
node(
  'seat shear or none',
  'N',
  'seat shear where there is a seat',
  seatShearOrNone,
  'seat',
  'head',
  'head diameter',
  'yield stress',
  'safety',
);
node('cone sharp', 'mm', 'theoretical sharp diameter of a countersunk head', coneSharpMm, 'screw', 'head');
node('cone angle', '°', 'included angle of a countersunk head', coneAngleDeg, 'head');
node('cone depth', 'mm', 'countersink depth used by the head', Recess.countersinkDepthMm, 'cone sharp', 'hole', 'cone angle');
node('seat under the cone', 'mm', 'plastic left under a countersunk head', J.seatUnderConeMm, 'seat', 'cone depth');

export const NODES: ReadonlyMap<string, Node> = new Map(list.map(n => [n.name, n]));
