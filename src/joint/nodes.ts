// The nodes of the joint: each is the call of a base function on inputs and other nodes.
import * as Board from '../core/board/board';
import * as Boss from '../core/boss/boss';
import * as Engagement from '../core/engagement/engagement';
import * as Hole from '../core/hole/hole';
import * as Insert from '../core/insert/insert';
import { pinRatio } from '../core/hole/position';
import * as Recess from '../core/recess/recess';
import { headDiameterReadings, isCountersunk, isFlatSeated, isRaised, raisedPartReadings, type Head } from '../core/screw/head';
import { majorReadings, rootReadings, type Screw } from '../core/screw/thread';
import { tappingScrew } from '../core/strength/sources';
import * as Strength from '../core/strength/pull-out';
import * as Torque from '../core/strength/torque';
import * as Thread from './formulas/boss';
import * as Grip from './formulas/grip';
import * as HeadHalf from './formulas/head-half';
import * as InBoss from './formulas/insert';
import * as Sizes from './formulas/sizes';
import * as Estimates from './formulas/strength';
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
const newtonMetre = unit('N·m');
const plain = unit('');

const coneAngleDeg = (head: Head): number => head.angleDeg ?? NaN;

const NONE = { is: 0 } as const;
const OF_HEAD = 'the head stays the one that was sent';

export const NODE = nodesOn<typeof INPUT>()({
  // head half
  'feature wall': mm('wall of an internal feature of the head half', made(Boss.wallFeatureMm, 'head wall', 'feature share')),
  'recess depth': mm('outer face to head seat', made(Sizes.sameMm, 'board plane less seat'), { where: ['has recess', 'recess is there'] }),
  'recess diameter': mm('at the recess floor, where it is held', made(HeadHalf.recessAtMm, 'head diameter', 'allowance', NONE, NONE), {
    where: ['has recess'],
  }),
  'recess mouth': mm(
    'recess at the outer face, after draft',
    made(HeadHalf.recessAtMm, 'head diameter', 'allowance', 'recess depth', 'recess draft'),
    { where: ['has recess'] },
  ),
  subflush: mm(
    'head below the outer face (negative: proud)',
    made(HeadHalf.headBelowFaceMm, 'board plane less seat', 'head above the seat'),
  ),
  'subflush min': mm(
    'head below the outer face, worst case (negative: proud)',
    made(HeadHalf.headBelowFaceMm, 'recess depth min', 'head above the seat'),
  ),
  'post OD root': mm(
    'post at the inner face of the head wall, after draft',
    made(HeadHalf.postOdRootMm, 'post OD', 'board plane', 'head wall', 'post draft'),
    { where: ['has recess'] },
  ),
  'post wall root': mm('wall of the post at its root, beside the recess', made(Sizes.sameMm, 'post wall at its root'), {
    where: ['post surrounds the recess'],
  }),
  'bearing ring': mm(
    'ring under the head, worst case (negative: the head falls through)',
    made(HeadHalf.bearingRingMm, 'head diameter min', 'hole max'),
    {
      where: ['is flat-seated'],
    },
  ),
  'sleeve OD': mm('sleeve outside diameter at its free end', made(Boss.bossOutsideDiaMm, 'hole', 'sleeve wall', NONE, NONE), {
    where: ['has sleeve'],
  }),

  // grip and engagement
  between: mm('sleeve or board, whichever is higher', made(Grip.betweenMm, 'sleeve', 'board')),
  'between tolerance': mm(
    'tolerance of sleeve or board, whichever is higher',
    made(Grip.betweenDeviation, 'sleeve', 'sleeve tolerance', 'board', 'board tolerance'),
  ),
  'grip layers': mm('seat, sleeve or board, planned gap', made(Grip.gripLayersMm, 'seat', 'between', 'gap')),
  'grip tolerances': mm('tolerances of these layers', made(Grip.gripDeviations, 'seat tolerance', 'between tolerance', 'gap tolerance')),
  grip: mm('from under the head to the boss face; for a countersunk head from its top edge', made(Engagement.gripMm, 'grip layers')),
  'screw length': mm('nominal length', made(Sizes.sameMm, 'length')),
  'length deviation': mm(
    'tolerance of the screw length',
    printedBy('length tolerances', Sizes.lengthDeviationOr, 'screw', 'length', 'end', 'length tolerance'),
  ),
  'penetration max': mm(
    'deepest reach below the boss face',
    made(Engagement.penetrationMaxMm, 'length', 'length deviation', 'grip layers', 'grip tolerances'),
  ),
  engagement: mm(
    'full thread in boss or insert, nominal',
    made(
      Sizes.chosenMm,
      'has insert',
      { only: 'engagement in the insert', where: 'has insert' },
      { only: 'engagement in plastic', where: 'thread in plastic' },
    ),
  ),
  'engagement min': mm(
    'full thread in boss or insert, worst case',
    made(
      Sizes.chosenMm,
      'has insert',
      { only: 'engagement min in the insert', where: 'has insert' },
      { only: 'engagement min in plastic', where: 'thread in plastic' },
    ),
  ),
  'engagement ratio': plain('worst-case engagement ÷ d', made(Engagement.engagementRatio, 'engagement min', 'screw')),
  'hole depth needed': mm(
    'deepest reach, bottom gap and hole depth tolerance',
    made(Hole.holeDepthNeededMm, 'penetration max', 'bottom gap', 'hole depth tolerance'),
  ),
  'bottom clearance': mm(
    'least room under the tip (negative: the screw bottoms and the parts do not close)',
    made(Engagement.bottomRoomMm, 'hole depth', 'hole depth tolerance', 'length', 'length deviation', 'grip layers', 'grip tolerances'),
  ),

  // pilot
  'pilot hole': mm('pilot at the depth where its size is held', made(Sizes.sameMm, 'pilot')),
  'pilot held depth': mm(
    'depth at which the pilot is held',
    made(Thread.pilotHeldDepthMm, 'pilot held at', 'relief', { only: 'engagement', where: 'held at mid' }),
  ),
  'pilot mouth': mm('pilot at the boss face', made(Hole.holeMouthMm, 'pilot', 'pilot held depth', 'hole draft')),
  'pilot at tip': mm('pilot at the last full thread', made(Sizes.sameMm, 'pilot at last thread'), { where: ['open at last thread'] }),
  tightness: plain(
    'smallest pilot at the last full thread ÷ root',
    made(Thread.tightness, 'pilot at last thread', 'pilot tolerance', 'root max'),
  ),
  'pilot bottom': mm('pilot at the bottom of the hole', made(Sizes.sameMm, 'hole at its bottom'), {
    where: ['thread in plastic', 'open at its bottom'],
  }),
  'thread share min': plain(
    'share of the flank depth at the mouth, worst case (negative: the thread touches nothing)',
    made(Thread.threadShareMin, 'major min', 'pilot mouth', 'pilot tolerance', 'major max', 'root max'),
  ),

  // boss
  'boss OD root': mm('boss outside diameter at the wall, after draft', made(Boss.outsideAtMm, 'boss OD', 'boss height', 'outside draft')),
  mouth: mm(
    'relief, pilot or insert hole at the free end',
    made(
      Sizes.chosenMm,
      'has insert',
      { only: 'insert hole', where: 'has insert' },
      { only: 'mouth in plastic', where: 'thread in plastic' },
    ),
  ),
  'boss wall': mm(
    'boss wall at the free end, beside relief, pilot or insert hole',
    made(Boss.bossWallMm, 'boss OD', 'mouth', NONE, NONE, NONE, NONE),
    {
      where: ['boss is wider than its mouth'],
    },
  ),
  'boss wall root': mm(
    'boss wall at the root; the whole diameter where the hole stops above',
    made(Boss.bossWallMm, 'boss OD', 'hole mouth', 'boss height', 'outside draft', 'hole draft', 'hole depth'),
    { where: ['open at its bottom', 'boss is wider than its mouth'] },
  ),
  'root circle': mm(
    'largest circle in the root of the boss, where sink begins',
    made(Thread.rootCircleMm, 'wall beside the hole', 'wall', 'ring depth', 'plastic under the hole', 'boss OD root'),
    { where: ['open at its bottom', 'boss is wider than its mouth', 'hole ends in the plastic', 'wall is left under the groove'] },
  ),
  'sink ratio': plain(
    'boss wall ÷ wall of the plain boss with the same root circle',
    made(Thread.sinkRatioOfCircle, 'root circle', 'wall'),
  ),
  'head sink ratio': plain('wall of the post at its root ÷ head wall', made(Boss.sinkRatio, 'post wall root', 'head wall')),
  slenderness: plain('boss height ÷ outside diameter', made(Boss.bossSlenderness, 'boss height', 'boss OD')),
  'pin ratio': plain('hole depth ÷ pilot or insert hole', made(pinRatio, 'hole depth', 'pin diameter')),
  'floor under hole': mm(
    'plastic left under the hole, worst case (negative: it comes out of the face)',
    made(Thread.plasticUnderHoleMm, 'wall', 'boss height', 'hole depth max'),
  ),
  'landing ring': mm(
    'width of the ring on which the boss lands, worst case',
    made(Grip.landingRingMm, 'boss OD', 'sleeve', { only: 'sleeve OD', where: 'has sleeve' }, 'hole max', 'relief at the face'),
  ),
  'board play': mm(
    'play of the board on the root of the sleeve, per side, worst case (negative: it does not go on)',
    made(HeadHalf.boardPlayMm, 'board hole min', 'sleeve OD', 'hole tolerance', 'sleeve', 'sleeve tolerance', 'sleeve draft'),
  ),
  'board hold': mm(
    'ring of the boss that holds the board at its worst sideways position (negative: it slips off)',
    made(Board.boardHoldMm, 'boss OD', 'board hole max', 'locator', NONE),
  ),
  'boss stack': mm(
    'from the outer face of the head half to the wall of the thread half, bosses in contact',
    made(Grip.bossStackMm, 'board plane', 'between', 'boss height'),
  ),

  // strength, torque and mass: estimates
  'pull-out': newton(
    'estimate: thread pulled out at worst-case engagement and thread share, or the insert out of its boss',
    made(
      Sizes.chosenN,
      'has insert',
      { only: 'insert pull-out', where: 'has insert' },
      { only: 'thread pull-out', where: 'thread in plastic' },
    ),
  ),
  'boss tear': newton(
    'estimate: boss torn off across its net section',
    made(
      Sizes.chosenN,
      'has insert',
      { only: 'tear beside the insert', where: 'has insert' },
      { only: 'tear of the boss', where: 'thread in plastic' },
    ),
  ),
  'seat shear': newton(
    'estimate: smallest head sheared through the thinnest seat',
    made(Strength.seatShearN, 'head diameter min', 'seat min', 'yield stress', 'safety'),
    { where: ['head', 'has recess', 'head diameter min', 'is flat-seated'] },
  ),
  weakest: plain(
    'which gives way first: pull-out, boss tear or seat shear',
    made(Estimates.weakest, 'pull-out', 'boss tear', { of: 'seat shear', orElse: Infinity }),
    // a head that cannot be read is no reason to leave its seat out
    { where: ['pull-out', 'boss tear', 'seat', 'head', 'head diameter'] },
  ),
  'load margin': plain('weakest ÷ (load × load safety)', made(Estimates.loadMargin, 'weakest force', 'load given', 'load safety')),
  'strip torque': newtonMetre(
    'estimate: torque that strips the thread',
    made(Torque.stripTorqueNm, 'thread pull-out', 'screw', 'friction given'),
  ),
  'clamp force': newton(
    'estimate: clamp force at the set torque, less the drive torque',
    made(
      Estimates.clampForceN,
      'set torque given',
      { of: 'drive torque given', orElse: 0 },
      'screw',
      'friction given',
      'head diameter min',
      'bearing hole',
    ),
    { where: ['is flat-seated', 'set torque is above drive'] },
  ),
  'bearing pressure': unit('MPa')(
    'estimate: pressure under the smallest head on the largest hole',
    made(Torque.bearingMpa, 'clamp force', 'head diameter min', 'hole max'),
    { where: ['head is wider than its hole'] },
  ),
  'boss mass': unit('g')(
    'estimate: mass of the boss',
    made(Boss.bossMassG, 'boss OD', 'hole mouth', 'boss height', 'density', 'outside draft', 'hole draft', 'hole depth'),
    { where: ['open at its bottom', 'boss is wider than its mouth'] },
  ),

  // conditions, and why what hangs on them does not apply elsewhere
  'has recess': plain('the head sits in a recess', made(Sizes.isThere, 'seat'), { otherwise: 'the head lies on the board (seat "0 mm")' }),
  'recess is there': plain('the seat ends below the outer face', made(Sizes.isAtLeastNone, 'board plane less seat'), {
    otherwise: 'the seat is thicker than the board plane',
  }),
  'has sleeve': plain('there is a sleeve', made(Sizes.isThere, 'sleeve'), { otherwise: 'there is no sleeve' }),
  'has no sleeve': plain('there is no sleeve', made(Sizes.isNot, 'has sleeve'), { otherwise: 'there is a sleeve' }),
  'has board': plain('there is a board', made(Sizes.isThere, 'board'), { otherwise: 'there is no board' }),
  'has gap': plain('there is a planned gap', made(Sizes.isThere, 'gap'), { otherwise: 'there is no planned gap' }),
  'has groove': plain('there is a groove round the foot', made(Sizes.isThere, 'ring depth'), { otherwise: 'there is no groove' }),
  'has hole': plain('the head half has a hole for the screw', made(Sizes.either, 'has recess', 'has sleeve'), {
    otherwise: 'the head lies on the board, whose hole stands for it',
  }),
  'has board hole': plain('a board hole is given', made(Sizes.holds, { given: 'board hole' }), { otherwise: 'no board hole is given' }),
  'board lies on the sleeve': plain('there is a sleeve, and a hole in the board for it', made(Sizes.both, 'has sleeve', 'has board hole'), {
    otherwise: 'there is no sleeve, or no board hole is given',
  }),
  'is countersunk': plain('the head is countersunk', notLive(OF_HEAD, isCountersunk, 'head'), {
    otherwise: 'the head is not countersunk',
  }),
  'is flat-seated': plain('the head has a flat seat', notLive(OF_HEAD, isFlatSeated, 'head'), {
    otherwise: 'a countersunk head bears on a cone',
  }),
  'is raised': plain('the head is raised countersunk', notLive(OF_HEAD, isRaised, 'head'), { otherwise: 'the head is not raised' }),
  'is tapping': plain('the screw forms or cuts its thread', notLive('the screw stays of its kind', Sizes.isTappingScrew, 'screw'), {
    otherwise: 'the sheared cylinder overstates what a machine thread holds in plastic',
  }),
  'has insert': plain('a threaded insert is given', made(Sizes.holds, { given: 'insert diameter' }), {
    otherwise: 'there is no insert',
  }),
  'thread in plastic': plain('the thread is in the plastic', made(Sizes.isNot, 'has insert'), { otherwise: 'the thread is in the insert' }),
  'takes an insert': plain('the screw fits an insert', made(Sizes.isNot, 'is tapping'), {
    otherwise: 'an insert takes a machine screw, and this is a tapping screw',
  }),
  'is machine screw': plain('the screw has a machine thread', made(Sizes.isNot, 'is tapping'), { otherwise: 'it is a tapping screw' }),
  'held at mid': plain('the pilot is held half way along the full thread', made(Sizes.isHeldAtMid, 'pilot held at')),
  'is hidden': plain('the face behind the boss is hidden', made(Sizes.isHidden, 'face')),
  'is head hidden': plain('the face of the head half is hidden', made(Sizes.isHidden, 'head face')),
  'length is picked': plain('the length is chosen by the program', made(Sizes.isNot, { given: 'length' }), {
    otherwise: 'the length is given',
  }),
  'head diameter is given': plain('the head diameter is given', made(Sizes.holds, { given: 'head diameter' })),
  'open at last thread': plain('the hole is open at the last full thread', made(Sizes.isThere, 'pilot at last thread'), {
    otherwise: 'the hole closes above the last full thread',
  }),
  'open at its bottom': plain('the hole is open down to its bottom', made(Sizes.isThere, 'hole at its bottom'), {
    otherwise: 'the hole closes above its bottom',
  }),
  'boss is wider than its mouth': plain('the boss is wider than its mouth', made(Sizes.isLarger, 'boss OD', 'mouth'), {
    otherwise: 'the boss is no wider than its relief or pilot',
  }),
  'hole ends in the plastic': plain('the hole ends in the plastic', made(Sizes.isThere, 'plastic under the hole'), {
    otherwise: 'the hole comes out of the outer face',
  }),
  'wall is left under the groove': plain('the groove leaves a wall', made(Sizes.isThere, 'wall under the groove'), {
    otherwise: 'the groove is as deep as the wall',
  }),
  'head is wider than its hole': plain('the head is wider than its hole', made(Sizes.isLarger, 'head diameter min', 'hole max'), {
    otherwise: 'the head falls through its hole',
  }),
  'has tool': plain('a tool diameter is given', made(Sizes.holds, { given: 'tool diameter' }), {
    otherwise: 'no tool diameter is given',
  }),
  'has load': plain('a load is given', made(Sizes.holds, { given: 'load' }), { otherwise: 'no load is given' }),
  'has friction': plain('a friction is given', made(Sizes.holds, { given: 'friction' }), { otherwise: 'no friction is given' }),
  'has drive torque': plain('a drive torque is given', made(Sizes.holds, { given: 'drive torque' }), {
    otherwise: 'no drive torque is given',
  }),
  'has set torque': plain('a set torque is given', made(Sizes.holds, { given: 'set torque' }), { otherwise: 'no set torque is given' }),
  'has steel gap': plain('a steel gap is given', made(Sizes.holds, { given: 'steel gap' }), { otherwise: 'no steel gap is given' }),
  'has yield stress': plain('a yield stress or a material is given', made(Sizes.either, { given: 'yield stress' }, { given: 'material' })),
  'set torque is above drive': plain(
    'the set torque is above the drive torque',
    made(Sizes.isLarger, 'set torque given', { of: 'drive torque given', orElse: 0 }),
    { otherwise: 'the set torque does not drive the screw in' },
  ),
  'post surrounds the recess': plain('the post surrounds the recess', made(Sizes.isThere, 'least post wall'), {
    otherwise: 'the post is no wider than its recess',
  }),

  // where the thread is: in the plastic or in an insert
  'thread start': mm(
    'depth at which the thread begins: relief, or insert below the face',
    made(Sizes.chosenMm, 'has insert', 'insert below face', { only: 'relief', where: 'thread in plastic' }),
  ),
  'thread start tolerance': mm(
    'tolerance of that depth',
    made(Sizes.chosenDeviation, 'has insert', 'insert tolerance', 'relief tolerance'),
  ),
  'engagement in plastic': mm(
    'full thread in the boss, nominal',
    made(Engagement.engagementMm, 'length', 'grip layers', 'relief', 'point'),
  ),
  'engagement min in plastic': mm(
    'full thread in the boss, worst case',
    made(Engagement.engagementMinMm, 'length', 'length deviation', 'grip layers', 'grip tolerances', 'relief', 'relief tolerance', 'point'),
  ),
  'engagement in the insert': mm(
    'full thread in the insert, nominal',
    made(Insert.insertEngagementMm, 'length', 'grip layers', 'insert length', 'insert below face', 'point'),
    { where: ['has insert', 'takes an insert'] },
  ),
  'engagement min in the insert': mm(
    'full thread in the insert, worst case',
    made(
      InBoss.insertEngagementMinMm,
      'length',
      'length deviation',
      'grip layers',
      'grip tolerances',
      'insert length',
      'insert below face',
      'insert tolerance',
      'point',
    ),
    { where: ['has insert', 'takes an insert'] },
  ),
  'mouth in plastic': mm('relief or pilot at the free end', made(Thread.mouthMm, 'relief', 'relief diameter', 'pilot mouth')),
  'hole mouth': mm(
    'pilot or insert hole at the boss face',
    made(Sizes.chosenMm, 'has insert', { only: 'insert hole', where: 'has insert' }, { only: 'pilot mouth', where: 'thread in plastic' }),
  ),
  'pin diameter': mm(
    'pilot or insert hole',
    made(Sizes.chosenMm, 'has insert', { only: 'insert hole', where: 'has insert' }, { only: 'pilot', where: 'thread in plastic' }),
  ),
  'relief at the face': mm(
    'relief diameter; none beside an insert',
    made(Sizes.chosenMm, 'has insert', NONE, { only: 'relief diameter', where: 'thread in plastic' }),
  ),
  'thread pull-out': newton(
    'thread pull-out at worst-case engagement and thread share',
    made(Strength.pullOutN, 'tapping screw', 'engagement min in plastic', 'yield stress', 'safety', 'share that holds'),
    { where: ['thread in plastic', 'is tapping'] },
  ),
  'tear of the boss': newton('boss torn across beside the screw', made(Strength.bossTearN, 'boss OD', 'screw', 'yield stress', 'safety')),
  'insert pull-out': newton(
    'insert pulled out of its boss',
    made(Insert.insertPullOutN, 'insert OD', 'insert length', 'yield stress', { is: 0.5 }, 'safety'),
    { where: ['has insert', 'takes an insert'] },
  ),
  'tear beside the insert': newton(
    'boss torn across beside the insert',
    made(InBoss.insertTearN, 'boss OD', 'insert OD', 'yield stress', 'safety'),
    { where: ['has insert', 'takes an insert'] },
  ),
  // a copy knows the kind of its screw by the row of its table: another kind has no diameter there
  'insert OD': mm('insert diameter where one is given', made(Sizes.given, 'insert diameter'), {
    where: ['has insert', 'takes an insert', 'major max'],
  }),
  'insert length min': mm('insert at its shortest', made(Sizes.smallestMm, 'insert length', 'insert tolerance')),
  'insert bottom': mm('depth of the insert’s far end', made(Insert.insertHoleDepthMm, 'insert length', NONE, 'insert below face')),
  'hole depth for the insert': mm(
    'hole depth that leaves the margin below the insert',
    made(Insert.insertHoleDepthMm, 'insert length', 'insert margin', 'insert below face'),
  ),
  'least boss OD for the insert': mm('1.5 × insert diameter', made(Sizes.timesMm, { is: 1.5 }, 'insert OD')),
  'boss OD for the insert': mm('insert ratio × insert diameter', made(Insert.insertBossOdMm, 'insert OD', 'insert ratio')),
  'largest insert hole': mm('insert hole at its largest', made(Sizes.largestMm, 'insert hole', 'pilot tolerance')),
  'insert hole max': mm(
    'insert hole at its largest where one is given; 0 where the insert is moulded in',
    made(InBoss.holeThatGripsMm, { given: 'insert hole' }, 'largest insert hole'),
  ),
  'insert landing': mm(
    'ring of the insert under the mating part at the largest hole (negative: the screw draws the insert out)',
    made(Insert.insertLandingMm, 'insert OD', 'hole max'),
    { where: ['has insert', 'takes an insert'] },
  ),
  'insert below face max': mm('insert below the face at its most', made(Sizes.largestMm, 'insert below face', 'insert tolerance')),

  // quantities that only rules and other nodes read
  'board plane less seat': mm('depth of the recess', made(Sizes.restMm, 'board plane', 'seat'), { where: ['has recess'] }),
  'recess depth min': mm(
    'depth of the recess at its least',
    made(HeadHalf.recessDepthWorstMm, 'board plane', 'board plane tolerance', 'seat', 'seat tolerance'),
    { where: ['has recess'] },
  ),
  'seat min': mm('seat at its thinnest', made(Sizes.smallestMm, 'seat', 'seat tolerance')),
  'bearing hole': mm(
    'hole under the head: that of the head half, or of the board where the head lies on it',
    made(Sizes.chosenMm, 'has hole', { only: 'hole', where: 'has hole' }, { only: 'board hole given', where: 'head lies on the board' }),
    { where: ['has hole under the head'] },
  ),
  'has hole under the head': plain('there is a hole under the head', made(Sizes.either, 'has hole', 'has board hole'), {
    otherwise: 'board hole must be given: the head lies on the board (seat "0 mm") and there is no sleeve',
    isAsked: true,
  }),
  'head lies on the board': plain('the head lies on the board, and nothing goes through it', made(Sizes.isNot, 'has hole'), {
    otherwise: 'the head half has a hole for the screw',
  }),
  'bearing hole tolerance': mm(
    'tolerance of the hole under the head',
    made(Sizes.chosenDeviation, 'has hole', 'hole tolerance', 'board hole tolerance'),
  ),
  'hole max': mm('hole under the head at its largest', made(Sizes.largestMm, 'bearing hole', 'bearing hole tolerance')),
  'bearing hole min': mm('hole under the head at its smallest', made(Sizes.smallestMm, 'bearing hole', 'bearing hole tolerance')),
  'hole min': mm('clearance hole at its smallest', made(Sizes.smallestMm, 'hole', 'hole tolerance'), { where: ['has hole'] }),
  'board hole given': mm('board hole where one is given', made(Sizes.given, 'board hole'), { where: ['has board hole'] }),
  'board hole max': mm('board hole at its largest', made(Sizes.largestMm, 'board hole given', 'board hole tolerance')),
  'board hole min': mm('board hole at its smallest', made(Sizes.smallestMm, 'board hole given', 'board hole tolerance')),
  'hole depth min': mm('depth of the pilot hole at its least', made(Sizes.smallestMm, 'hole depth', 'hole depth tolerance')),
  'hole depth max': mm('depth of the pilot hole at its most', made(Sizes.largestMm, 'hole depth', 'hole depth tolerance')),
  'head with its float': mm(
    'head and the whole play of the screw',
    made(HeadHalf.headWithFloatMm, 'head diameter', 'hole max', 'major min'),
  ),
  'driver room': mm('recess − driver, on diameter', made(Recess.toolRoomMm, 'recess diameter', 'tool diameter given', NONE)),
  'sleeve over the board': mm('sleeve − board', made(Sizes.restMm, 'sleeve', 'board')),
  'sleeve never reaches': mm(
    'below this the sleeve never carries the clamp',
    made(Grip.sleeveNeverReachesMm, 'sleeve tolerance', 'board tolerance'),
  ),
  'sleeve always reaches': mm(
    'from this on the sleeve always carries the clamp',
    made(Grip.sleeveAlwaysReachesMm, 'sleeve tolerance', 'board tolerance'),
  ),
  'sleeve required': mm('sleeve height that always carries the clamp', made(Sizes.sumMm, 'board', 'sleeve always reaches')),
  'pilot at last thread': mm(
    'hole at the last full thread, open or not',
    made(Hole.holeAtDepthMm, 'pilot mouth', 'last full thread', 'hole draft'),
  ),
  'last full thread': mm('depth at which the full thread ends', made(Sizes.restMm, 'penetration max', 'point')),
  'hole at its bottom': mm('hole at its bottom, open or not', made(Hole.holeAtDepthMm, 'hole mouth', 'hole depth', 'hole draft')),
  'wall beside the hole': mm(
    'boss wall beside the hole where it ends, or at the root',
    made(Thread.wallBesideHoleMm, 'boss OD root', 'hole mouth', 'boss height', 'hole depth', 'hole draft'),
  ),
  'plastic under the hole': mm('plastic under the hole, nominal', made(Thread.plasticUnderHoleMm, 'wall', 'boss height', 'hole depth')),
  'wall without sink': mm(
    'next thicker wall on which this boss passes',
    notLive(
      'a wall is found by trial',
      Thread.wallWithoutSinkMm,
      'wall beside the hole',
      'wall',
      'ring depth',
      'boss height',
      'hole depth',
      'boss OD root',
      'sink reviewed above',
    ),
  ),
  'wall under the groove': mm('wall − ring depth', made(Sizes.restMm, 'wall', 'ring depth')),
  'least floor': mm('0.4 × wall', made(Sizes.timesMm, { is: 0.4 }, 'wall')),
  'floor required': mm('floor limit × wall', made(Sizes.timesMm, 'floor limit', 'wall')),
  'least boss OD': mm('1.5 × d', made(Sizes.timesD, { is: 1.5 }, 'screw')),
  'boss OD required': mm('od limit × d', made(Sizes.timesD, 'od limit', 'screw')),
  'boss OD by od ratio': mm('od ratio × d', made(Boss.bossOutsideDiaByRuleMm, 'screw', 'od ratio')),
  'boss OD by ratio': mm(
    'od ratio × d, or insert ratio × insert diameter',
    made(
      Sizes.chosenMm,
      'has insert',
      { only: 'boss OD for the insert', where: 'has insert' },
      { only: 'boss OD by od ratio', where: 'thread in plastic' },
    ),
  ),
  'boss OD for hold': mm(
    'boss outside diameter at which the board hold meets the hold limit',
    made(Grip.bossOdForHoldMm, 'hold limit', 'board hole max', 'locator'),
  ),
  'sink fails above': plain('sink ratio above which the thread half fails', made(Thread.sinkFailLimit, 'is hidden', 'sink limit')),
  'sink reviewed above': plain(
    'sink ratio above which the thread half is reviewed',
    made(Thread.sinkReviewLimit, 'is hidden', 'sink limit', 'hidden sink limit'),
  ),
  'head sink fails above': plain('sink ratio above which the head half fails', made(Thread.sinkFailLimit, 'is head hidden', 'sink limit')),
  'head sink reviewed above': plain(
    'sink ratio above which the head half is reviewed',
    made(Thread.sinkReviewLimit, 'is head hidden', 'sink limit', 'hidden sink limit'),
  ),
  'share that holds': plain('thread share that the pull-out counts, at most 1', made(Thread.shareThatHolds, 'thread share min')),
  'weakest force': newton(
    'least of pull-out, boss tear and seat shear',
    made(Estimates.weakestN, 'pull-out', 'boss tear', { of: 'seat shear', orElse: Infinity }),
  ),
  'load given': newton('load where one is given', made(Sizes.given, 'load'), { where: ['has load'] }),
  'friction given': plain('friction where one is given', made(Sizes.given, 'friction'), { where: ['has friction'] }),
  'drive torque given': newtonMetre('drive torque where one is given', made(Sizes.given, 'drive torque'), { where: ['has drive torque'] }),
  'set torque given': newtonMetre('set torque where one is given', made(Sizes.given, 'set torque'), { where: ['has set torque'] }),
  'tool diameter given': mm('tool diameter where one is given', made(Sizes.given, 'tool diameter'), { where: ['has tool'] }),
  'steel gap given': mm('steel gap where one is given', made(Sizes.given, 'steel gap'), { where: ['has steel gap'] }),
  'strip over drive': plain('strip ÷ drive torque', made(Sizes.ratioOf, 'strip torque', 'drive torque given')),
  'set torque room': newtonMetre(
    'what the set torque with its scatter leaves to the strip and the drive torque',
    made(Estimates.setTorqueRoomNm, 'set torque given', 'torque scatter', 'drive torque given', 'strip torque'),
  ),
  'room in the window': newtonMetre(
    'what the set torque with its scatter leaves to the ends of its window',
    made(Estimates.windowRoomNm, 'set torque given', 'torque scatter', 'drive torque given', 'strip torque'),
  ),
  'post wall at its root': mm(
    'wall of the post at the inner face of the head wall, or at the recess floor inside it',
    made(HeadHalf.postWallRootMm, 'post OD root', 'recess diameter', 'board plane less seat', 'head wall', 'recess draft'),
  ),
  'least post wall': mm(
    'wall of the post at its root, or beside the recess floor where that is less',
    made(HeadHalf.leastPostWallMm, 'post wall at its root', 'post OD', 'board plane', 'head wall', 'seat', 'post draft', 'recess diameter'),
  ),
  'half the yield stress': unit('MPa')('half the yield stress', made(Sizes.timesMm, { is: 0.5 }, 'yield stress')),
  'mould steel': mm(
    'mould steel beside the boss at the floor, the wall drafted like the boss',
    made(Boss.steelAtFloorMm, 'steel gap given', 'boss height', 'outside draft', 'outside draft'),
  ),
  'raised part': mm(
    'part of a raised head above its edge',
    fromTables((screw: Screw, head: Head) => raisedPartReadings(screw.size, head), 'screw', 'head'),
    { where: ['screw', 'is raised'] },
  ),
  'head in the seat': mm(
    'part of the head that lies in the seat: the cone of a countersunk head',
    made(HeadHalf.headInSeatMm, 'is countersunk', 'head height', { of: 'raised part', orElse: 0 }),
    { where: ['screw'] },
  ),
  'head above the seat': mm('part of the head that stands on the seat', made(HeadHalf.headAboveSeatMm, 'head height', 'head in the seat')),
  'table head diameter min': mm(
    'head diameter, min, of its table',
    fromTables((screw: Screw, head: Head) => headDiameterReadings(screw.size, head, 'min'), 'screw', 'head'),
  ),
  'sleeve OD min': mm('sleeve outside diameter at its smallest', made(Sizes.smallestMm, 'sleeve OD', 'hole tolerance')),
  locator: mm(
    'smallest diameter of what locates the board: sleeve or screw',
    made(Grip.locatorMm, 'sleeve', { only: 'sleeve OD min', where: 'has sleeve' }, 'screw'),
  ),
  'engagement required': mm('full thread required: ratio × d', made(Sizes.timesD, 'ratio', 'screw')),
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
  density: unit('g/cm³')('density of the material', notLive(OF_MATERIAL, densityOf, 'material')),
  'cone sharp': mm(
    'theoretical sharp diameter of a countersunk head',
    fromTables((screw: Screw, head: Head) => headDiameterReadings(screw.size, head, 'sharp'), 'screw', 'head'),
    { where: ['screw', 'is countersunk'] },
  ),
  'cone angle': unit('°')('included angle of a countersunk head', notLive(OF_HEAD, coneAngleDeg, 'head'), {
    where: ['is countersunk'],
  }),
  'cone depth': mm(
    'countersink depth used by the head at the smallest hole',
    made(Recess.countersinkDepthMm, 'cone sharp', 'bearing hole min', 'cone angle'),
  ),
  'seat under the cone': mm(
    'plastic left under a countersunk head, worst case',
    made(HeadHalf.seatUnderConeMm, 'seat min', 'cone depth', 'head diameter min', 'hole max'),
  ),
});

// a default whose formula does not take what it is given does not compile
INPUT satisfies FittingDefaults<typeof INPUT, typeof NODE>;

/** The value of each input and node. */
export type Joint = Values<typeof INPUT, typeof NODE>;
export type JointName = keyof Joint & string;

export const NODES: ReadonlyMap<string, Node> = new Map(Object.entries<Node>(NODE));
