// The nodes of the joint: each is the call of a base function on inputs and other nodes.
import * as Board from '../core/board/board';
import * as Boss from '../core/boss/boss';
import * as Engagement from '../core/engagement/engagement';
import * as Hole from '../core/hole/hole';
import { pinRatio } from '../core/hole/position';
import * as Recess from '../core/recess/recess';
import { headDiameterReadings, isCountersunk, isFlatSeated, isRaised, raisedPartReadings, type Head } from '../core/screw/head';
import { isStandardLength, lengthDeviationOf } from '../core/screw/length';
import { majorReadings, pointReadings, rootReadings, type End, type Screw } from '../core/screw/thread';
import { tappingScrew } from '../core/strength/sources';
import * as Strength from '../core/strength/pull-out';
import * as J from './formulas';
import { fromTables, made, notLive, printedBy, type FittingDefaults, type Node, nodesOn, type Values } from './graph';
import { densityOf, INPUT, OF_MATERIAL } from './inputs';

const unit =
  (name: string) =>
  <M, const O>(meaning: string, how: M, more?: O): { readonly unit: string; readonly meaning: string } & M & O => ({
    unit: name,
    meaning,
    ...how,
    ...(more as O),
  });
const mm = unit('mm');
const newton = unit('N');
const plain = unit('');

const coneAngleDeg = (head: Head): number => head.angleDeg ?? NaN;

const NONE = { is: 0 } as const;
const OF_HEAD = 'the head stays the one that was sent';

export const NODE = nodesOn<typeof INPUT>()({
  // head half
  'feature wall': mm('wall of an internal feature', made(Boss.wallFeatureMm, 'wall', 'feature share')),
  'recess depth': mm('outer face to head seat', made(Recess.recessDepthMm, 'board plane', 'seat'), { where: ['has recess'] }),
  'recess diameter': mm('at the recess floor, where it is held', made(Recess.recessDiaMm, 'head diameter', 'allowance', NONE, NONE), {
    where: ['has recess'],
  }),
  'recess mouth': mm(
    'recess at the outer face, after draft',
    made(Recess.recessDiaMm, 'head diameter', 'allowance', 'recess depth', 'recess draft'),
    { where: ['has recess'] },
  ),
  subflush: mm('head below the outer face (negative: proud)', made(J.headBelowFaceMm, 'recess depth', 'head above the seat')),
  'post OD': mm(
    'post around the recess at the board plane, the wall held at the recess floor',
    made(Boss.bossOutsideDiaMm, 'recess diameter', 'feature wall', NONE, NONE),
  ),
  'sleeve OD': mm('sleeve outside diameter at its free end', made(Boss.bossOutsideDiaMm, 'hole', 'feature wall', NONE, NONE), {
    where: ['has sleeve'],
  }),

  // grip and engagement
  between: mm('sleeve, or board where there is none', made(J.betweenMm, 'sleeve', 'board')),
  'between tolerance': mm('its tolerance', made(J.betweenDeviation, 'sleeve', 'sleeve tolerance', 'board', 'board tolerance')),
  'grip layers': mm('seat, sleeve or board, planned gap', made(J.gripLayersMm, 'seat', 'between', 'gap')),
  'grip tolerances': mm('their tolerances', made(J.gripDeviations, 'seat tolerance', 'between tolerance', 'gap tolerance')),
  grip: mm('under the head to the boss face; of a countersunk head from its top edge', made(Engagement.gripMm, 'grip layers')),
  'screw length': mm('nominal length', made(J.sameMm, 'length')),
  'length tolerance': mm('tolerance of the screw length', printedBy('length tolerances', lengthDeviationOf, 'screw', 'length', 'end')),
  point: mm(
    'length at the point without full thread',
    fromTables((screw: Screw, end: End) => pointReadings(screw.size, end), 'screw', 'end'),
  ),
  'penetration max': mm(
    'deepest reach below the boss face',
    made(Engagement.penetrationMaxMm, 'length', 'length tolerance', 'grip layers', 'grip tolerances'),
  ),
  engagement: mm('full thread in the boss, nominal', made(Engagement.engagementMm, 'length', 'grip layers', 'relief', 'point')),
  'engagement min': mm(
    'full thread in the boss, worst case',
    made(Engagement.engagementMinMm, 'length', 'length tolerance', 'grip layers', 'grip tolerances', 'relief', 'relief tolerance', 'point'),
  ),
  'engagement ratio': plain('worst-case engagement ÷ d', made(Engagement.engagementRatio, 'engagement min', 'screw')),
  'hole depth needed': mm(
    'deepest reach, bottom gap and hole depth tolerance',
    made(Hole.holeDepthNeededMm, 'penetration max', 'bottom gap', 'hole depth tolerance'),
  ),
  'bottom clearance': mm(
    'least room under the tip',
    made(Engagement.bottomRoomMm, 'hole depth', 'hole depth tolerance', 'length', 'length tolerance', 'grip layers', 'grip tolerances'),
  ),

  // pilot
  'pilot hole': mm('pilot where it is held', made(J.sameMm, 'pilot')),
  'pilot held depth': mm(
    'depth at which the pilot is held',
    made(J.pilotHeldDepthMm, 'pilot held at', 'relief', { only: 'engagement', where: 'held at mid' }),
  ),
  'pilot mouth': mm('pilot at the boss face', made(Hole.holeMouthMm, 'pilot', 'pilot held depth', 'hole draft')),
  'pilot at tip': mm('pilot at the deepest reach', made(Hole.holeAtDepthMm, 'pilot mouth', 'penetration max', 'hole draft')),
  tightness: plain('pilot at tip ÷ root', made(Hole.holeTightness, 'screw', 'pilot mouth', 'penetration max', 'hole draft')),
  'pilot bottom': mm('pilot at the bottom of the hole', made(Hole.holeAtDepthMm, 'pilot mouth', 'hole depth', 'hole draft')),

  // boss
  'boss OD root': mm('boss outside diameter at the wall, after draft', made(Boss.outsideAtMm, 'boss OD', 'boss height', 'outside draft')),
  mouth: mm('relief or pilot at the free end', made(J.mouthMm, 'relief', 'relief diameter', 'pilot mouth')),
  'boss wall': mm('boss wall at the free end, beside relief or pilot', made(Boss.bossWallMm, 'boss OD', 'mouth', NONE, NONE, NONE, NONE)),
  'boss wall root': mm(
    'boss wall at the root; the whole diameter where the hole stops above',
    made(Boss.bossWallMm, 'boss OD', 'pilot mouth', 'boss height', 'outside draft', 'hole draft', 'hole depth'),
  ),
  'sink ratio': plain('boss wall at the root ÷ wall', made(Boss.sinkRatio, 'boss wall root', 'wall')),
  slenderness: plain('boss height ÷ outside diameter', made(Boss.bossSlenderness, 'boss height', 'boss OD')),
  'pin ratio': plain('hole depth ÷ pilot hole', made(pinRatio, 'hole depth', 'pilot')),
  'floor under hole': mm('plastic left under the hole', made(Hole.holeFloorMm, 'wall', 'boss height', 'hole depth')),
  'landing ring': mm(
    'width of the ring on which the boss lands',
    made(J.landingRingMm, 'boss OD', 'sleeve', 'sleeve OD or none', 'hole', 'relief diameter'),
  ),
  'board play': mm('play of the board on the sleeve, per side', made(Board.sleevePlayMm, 'board hole given', 'sleeve OD', NONE)),
  'board hold': mm(
    'ring of the boss that holds the board at its worst sideways position',
    made(Board.boardHoldMm, 'boss OD', 'board hole given', 'locator', NONE),
  ),
  'boss stack': mm(
    'outer face of the head half to the wall of the thread half, bosses in contact',
    made(J.bossStackMm, 'board plane', 'between', 'boss height'),
  ),

  // strength and mass: estimates
  'pull-out': newton(
    'estimate: thread pull-out at worst-case engagement',
    made(Strength.pullOutN, 'tapping screw', 'engagement min', 'yield stress', 'safety'),
  ),
  'boss tear': newton('estimate: boss torn across', made(Strength.bossTearN, 'boss OD', 'screw', 'yield stress', 'safety')),
  'seat shear': newton(
    'estimate: head sheared through the seat',
    made(Strength.seatShearN, 'head diameter', 'seat', 'yield stress', 'safety'),
    {
      where: ['head', 'has recess', 'head diameter', 'is flat-seated'],
    },
  ),
  weakest: plain(
    'which of the three gives way first',
    made(J.weakest, 'pull-out', 'boss tear', { of: 'seat shear', orElse: Infinity }),
    // a head that cannot be read is no reason to leave its seat out
    { where: ['pull-out', 'boss tear', 'seat', 'head', 'head diameter'] },
  ),
  'boss mass': unit('g')(
    'estimate: mass of the boss',
    made(Boss.bossMassG, 'boss OD', 'pilot mouth', 'boss height', 'density', 'outside draft', 'hole draft', 'hole depth'),
  ),

  // conditions, and why what hangs on them does not apply elsewhere
  'has recess': plain('the head sits in a recess', made(J.isThere, 'seat'), { otherwise: 'the head lies on the board (seat "0 mm")' }),
  'has sleeve': plain('there is a sleeve', made(J.isThere, 'sleeve'), { otherwise: 'there is no sleeve' }),
  'has board hole': plain('a board hole is given', printedBy('presence', J.isGiven, 'board hole'), { otherwise: 'no board hole is given' }),
  'is countersunk': plain('the head is countersunk', notLive(OF_HEAD, isCountersunk, 'head'), {
    otherwise: 'the head is not countersunk',
  }),
  'is flat-seated': plain('the head has a flat seat', notLive(OF_HEAD, isFlatSeated, 'head'), {
    otherwise: 'a countersunk head bears on a cone',
  }),
  'is raised': plain('the head is raised countersunk', notLive(OF_HEAD, isRaised, 'head'), { otherwise: 'the head is not raised' }),
  'held at mid': plain('the pilot is held half way along the full thread', made(J.isHeldAtMid, 'pilot held at')),
  'is hidden': plain('the face behind the boss is hidden', made(J.isHidden, 'face')),

  // quantities that only rules and other nodes read
  'raised part': mm(
    'part of a raised head above its edge',
    fromTables((screw: Screw, head: Head) => raisedPartReadings(screw.size, head), 'screw', 'head'),
    { where: ['screw', 'is raised'] },
  ),
  'head in the seat': mm(
    'part of the head that lies in the seat: the cone of a countersunk head',
    made(J.headInSeatMm, 'is countersunk', 'head height', { of: 'raised part', orElse: 0 }),
    { where: ['screw'] },
  ),
  'head above the seat': mm('part of the head that stands on the seat', made(J.headAboveSeatMm, 'head height', 'head in the seat')),
  'sleeve OD or none': mm(
    'sleeve outside diameter whether or not there is a sleeve',
    made(Boss.bossOutsideDiaMm, 'hole', 'feature wall', NONE, NONE),
  ),
  'board hole given': mm('board hole where one is given', made(J.givenMm, 'board hole'), { where: ['has board hole'] }),
  'engagement asked': mm('full thread asked: ratio × d', made(J.engagementAskedMm, 'ratio', 'screw')),
  'standard length': plain('1 where the length is a standard one', printedBy('length list', isStandardLength, 'screw', 'length')),
  'major max': mm(
    'screw major diameter, max',
    fromTables((screw: Screw) => majorReadings(screw.size, 'max'), 'screw'),
  ),
  'major min': mm(
    'screw major diameter, min',
    fromTables((screw: Screw) => majorReadings(screw.size, 'min'), 'screw'),
  ),
  'root max': mm(
    'screw root diameter, max',
    fromTables((screw: Screw) => rootReadings(screw.size, 'max'), 'screw'),
  ),
  'tapping screw': plain('screw that forms or cuts its thread', printedBy('argument', tappingScrew, 'screw')),
  locator: mm('what holds the board sideways', made(J.locatorMm, 'sleeve', 'sleeve OD or none', 'screw')),
  density: unit('g/cm³')('density of the material', notLive(OF_MATERIAL, densityOf, 'material')),
  'cone sharp': mm(
    'theoretical sharp diameter of a countersunk head',
    fromTables((screw: Screw, head: Head) => headDiameterReadings(screw.size, head, 'sharp'), 'screw', 'head'),
    { where: ['screw', 'is countersunk'] },
  ),
  'cone angle': unit('°')('included angle of a countersunk head', notLive(OF_HEAD, coneAngleDeg, 'head'), {
    where: ['is countersunk'],
  }),
  'cone depth': mm('countersink depth used by the head', made(Recess.countersinkDepthMm, 'cone sharp', 'hole', 'cone angle')),
  'seat under the cone': mm('plastic left under a countersunk head', made(J.seatUnderConeMm, 'seat', 'cone depth')),
});

// a default whose formula does not take what it is given does not compile
INPUT satisfies FittingDefaults<typeof INPUT, typeof NODE>;

/** The value of each input and node. */
export type Joint = Values<typeof INPUT, typeof NODE>;
export type JointName = keyof Joint & string;

export const NODES: ReadonlyMap<string, Node> = new Map(Object.entries<Node>(NODE));
