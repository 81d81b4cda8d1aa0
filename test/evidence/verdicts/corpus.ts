// Joints with the verdict that they must get. Every state is reckoned in `why`, from plane geometry, from a table that is named,
// or from a rule of a handbook; none was read off the product. Tolerances that are not typed are the contract's:
// seat, board plane, hole, board hole, sleeve, hole depth and relief ±0.1, pilot ±0.05, board ±10 %, tapping screw ±0.8.
import type { Inputs } from './oracle';

export type State = 'pass' | 'review' | 'fail' | 'not checked';

export interface Verdict {
  readonly name: string;
  readonly inputs: Inputs;
  readonly state: State;
  /** First rule of the worst state, in the contract's order; none where the joint passes, or where no one rule is to blame. */
  readonly rule: string | undefined;
  readonly why: string;
  readonly source: string;
}

/** ISO 1478: ST2.9 major 2.90/2.76, root max 2.18, cone point 2.6. ISO 7049: head 5.6/5.3 and 2.4. A joint of our own with room everywhere. */
export const SOUND: Inputs = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  length: 16,
  material: 'ABS',
  wall: 2.5,
  'board plane': 6,
  seat: 2,
  board: 1.6,
  hole: 3.4,
  'board hole': 3.4,
  'boss height': 14.2,
};
/** The reviewers' joint: its hole is 14 deep and leaves 13.9 − 13.46 = 0.44 under the tip. */
const REVIEWERS: Inputs = { ...SOUND, 'boss height': 14, 'sink limit': 0.9, 'pin limit': 7.5 };
/** A sleeve of 5.4 (hole + 2 × 1.0) and 1.9 high goes through a board of 1.6. */
export const SLEEVED: Inputs = { ...SOUND, wall: 3, sleeve: 1.9, 'board hole': 6 };
/** Pull-out on the worst engagement 8.14 and thread share 0.474: 1350 N; it strips at 0.596 N·m. */
export const DRIVEN: Inputs = { ...SOUND, friction: 0.2, 'drive torque': 0.13, 'set torque': 0.34 };
/** No draft on boss and hole, and the pilot held at the mouth: what is typed is what the root has. */
const STRAIGHT: Inputs = { ...SOUND, 'outside draft': '0°', 'hole draft': '0°', pilot: 2.4, 'pilot held at': 'mouth' };

const GEOMETRY = 'plane geometry';
const SCREW = 'plane geometry on ISO 1478';
const HEAD = 'plane geometry on ISO 7049';
const PRACTICE = 'common practice, the limit as the contract prints it';

const on =
  (base: Inputs) =>
  (name: string, changes: Inputs, state: State, rule: string | undefined, why: string, source: string): Verdict => ({
    name,
    inputs: { ...base, ...changes },
    state,
    rule,
    why,
    source,
  });
const sound = on(SOUND);
const reviewers = on(REVIEWERS);
const sleeved = on(SLEEVED);
const driven = on(DRIVEN);
const straight = on(STRAIGHT);

const without = (base: Inputs, ...names: readonly string[]): Inputs =>
  Object.fromEntries(Object.entries(base).filter(([name]) => !names.includes(name)));

/** Joints of the review of verdicts, section A: what was passed and cannot be. */
const REVIEWED: readonly Verdict[] = [
  reviewers('B as it stands', {}, 'review', 'screw clears the bottom', 'hole 14 − 0.1 less reach 16.8 − (1.9 + 1.44) = 13.46 leaves 0.44, below the gap of 0.5', GEOMETRY),
  sound('B with a hole 0.2 deeper', {}, 'pass', undefined, '14.1 − 13.46 = 0.64 under the tip; engagement 15.2 − 3.86 − 0.6 − 2.6 = 8.14 = 2.81 d; root wall 2.19 is 0.88 of 2.5', GEOMETRY),
  reviewers('A1, pin through the outer face', { 'hole depth': 17 }, 'fail', 'floor under the hole', 'floor 2.5 + 14 − 17.1 = −0.6', GEOMETRY),
  reviewers('A1, a skin of 0.05', { 'hole depth': 16.45 }, 'fail', 'floor under the hole', 'floor 2.5 + 14 − 16.55 = −0.05, of 0.4 × 2.5 = 1.0', GEOMETRY),
  reviewers('A2, a hole as wide as the thinnest screw', { pilot: 2.75, 'pilot held at': 'mouth' }, 'fail', 'thread bites at the mouth', 'screw 2.76, hole 2.75 + 0.05: nothing is touched', SCREW),
  reviewers('A2, 2.759', { pilot: 2.759, 'pilot held at': 'mouth' }, 'fail', 'thread bites at the mouth', 'screw 2.76, hole 2.809', SCREW),
  sound('A3, share 0.75', { pilot: 2.36, 'pilot held at': 'mouth' }, 'pass', undefined, 'least share (2.76 − 2.41)/0.72 = 0.49; at the tip 2.36 − 0.095 − 0.05 = 2.215 over 2.18 is 1.02', SCREW),
  sound('A3, pilot of the mean diameter', { pilot: 2.54, 'pilot held at': 'mouth' }, 'pass', undefined, 'least share (2.76 − 2.59)/0.72 = 0.24, above 0.15', SCREW),
  sound('A3, 2.70', { pilot: 2.7, 'pilot held at': 'mouth' }, 'fail', 'thread bites at the mouth', 'least share (2.76 − 2.75)/0.72 = 0.014, below 0.1', SCREW),
  reviewers('A4, board hole of 1.0', { 'board hole': 1 }, 'fail', 'screw passes the board', 'screw 2.90 through 0.9', SCREW),
  reviewers('A5, hole wider than the head', { hole: 5.5, 'boss OD': 8, 'sink limit': 1.3 }, 'fail', 'head bears on its seat', 'head 5.3, hole 5.6: ring −0.15', HEAD),
  {
    name: 'A5, head on the board, board hole wider than the head',
    inputs: { screw: 'M3', head: 'pan', length: 12, material: 'ABS', wall: 3, seat: '0 mm', board: 1.6, 'board hole': 6.5, 'boss height': 14, 'boss OD': 14 },
    state: 'fail',
    rule: 'head bears on its seat',
    why: 'ISO 7045: head 5.3, board hole 6.6: ring −0.65',
    source: 'plane geometry on ISO 7045',
  },
  reviewers('A6, hole of 2.95', { hole: 2.95 }, 'fail', 'screw passes the hole', 'hole 2.85, screw 2.90', SCREW),
  reviewers('A6, hole ± 0.52', { 'hole tolerance': 0.52 }, 'fail', 'screw passes the hole', 'hole 3.4 − 0.52 = 2.88, screw 2.90', SCREW),
  reviewers('A6, hole +0/−0.6', { 'hole tolerance': '+0/-0.6' }, 'fail', 'screw passes the hole', 'hole 2.80, screw 2.90', SCREW),
  reviewers('A7, sleeve below the board', { sleeve: 1, 'board hole': 6.9, 'boss OD': 9, 'sink limit': 1.5, 'boss height': 14.5 }, 'fail', 'sleeve carries the clamp', 'sleeve at most 1.1, board at least 1.44: the boss lands on the board', GEOMETRY),
  reviewers('A8, sleeve as wide as the board hole', { sleeve: 1.8, 'board hole': 5.4 }, 'fail', 'sleeve passes the board', 'sleeve 3.4 + 2.0 + 0.1, board hole 5.3', GEOMETRY),
  reviewers('A9, a bare 0 for draft', { 'recess draft': 0 }, 'not checked', undefined, 'a forgotten draft is none that can be judged: the recess has no mouth and the post no root', 'the contract, inputs marked °'),
  {
    name: 'A10, machine screw straight into ABS',
    inputs: { screw: 'M3', head: 'pan', length: 12, material: 'ABS', wall: 3, 'board plane': 6, seat: 2, board: 1.6, 'boss height': 10 },
    state: 'review',
    rule: 'machine thread in plastic',
    why: 'no formula holds for its thread in plastic; the rest has room: reach 12.35 − 3.34 = 9.01 of 9.9, engagement 11.65 − 3.86 − 0.6 − 1.0 = 6.19 = 2.06 d',
    source: 'plane geometry on ISO 965-2 and ISO 4759-1; ISO 4753 for the point, from memory',
  },
  reviewers('A11, seat of 0.15', { seat: 0.15 }, 'fail', 'seat holds', '0.05 of plastic under the head at the least, 0.8 asked', PRACTICE),
  reviewers('A11, seat 2 ± 1.9', { 'seat tolerance': 1.9, 'board plane': 8 }, 'fail', 'seat holds', '2 − 1.9 = 0.1; the head stays hidden, 7.9 − 3.9 − 2.4 = 1.6', PRACTICE),
  sound('A12, no allowance', { allowance: '0 mm' }, 'review', 'head fits the recess', 'recess 5.6 for a head of 5.6 that can move by 3.5 − 2.76 = 0.74: it meets the side before the screw is home', HEAD),
  reviewers('A12, head of 3.0 on a hole of 3.4', { 'head diameter': 3 }, 'fail', 'head bears on its seat', 'head 3.0, hole 3.5: ring −0.25', GEOMETRY),
  reviewers('A13, outside draft of 30°', { 'outside draft': '30°' }, 'fail', 'sink, thread half', 'root 6.38 + 28·tan 30° = 22.5 across, boss wall 10.1 on a wall of 2.5: ratio 4.06', GEOMETRY),
];

/** Plainly bad, one rule each, in the contract's order. */
const BAD: readonly Verdict[] = [
  sound('recess smaller than the head', { allowance: '-0.3 mm' }, 'fail', 'head fits the recess', 'recess 5.6 − 0.3 = 5.3, head 5.6', HEAD),
  sound('driver wider than the recess', { 'tool diameter': 7 }, 'fail', 'driver goes in', 'recess 5.6 + 0.94 = 6.54, tool 7', GEOMETRY),
  sound('head hangs on a thin ring', { hole: 4.7 }, 'fail', 'head bears on its seat', '(5.3 − 4.8)/2 = 0.25, below 0.3', HEAD),
  sound('head stands out', { 'board plane': 4 }, 'fail', 'head hidden', '3.9 − 2.1 − 2.4 = −0.6', HEAD),
  sound('seat of a skin', { seat: 0.8, 'hole depth': 15.2, 'boss height': 15.2 }, 'fail', 'seat holds', '0.8 − 0.1 = 0.7, below 0.8', PRACTICE),
  sound('cone through the seat', { head: 'countersunk', seat: 1.2, 'boss height': 15 }, 'fail', 'seat under the cone', 'ISO 7050: head 5.5, hole 3.3, 90°: the cone is 1.1 deep at the least, the seat 1.1', 'plane geometry on ISO 7050'),
  sound('cone leaves too little', { head: 'countersunk' }, 'fail', 'seat under the cone', 'ISO 7050: head 5.5, hole 3.3: 1.9 − 1.1 = 0.8 at most, below 1.0', 'plane geometry on ISO 7050'),
  sound('screw does not go through the hole', { hole: 2.6 }, 'fail', 'screw passes the hole', 'hole 2.5, screw 2.90', SCREW),
  sound('pilot drilled in the board', { 'board hole': 2.4 }, 'fail', 'screw passes the board', 'board hole 2.3, screw 2.90', SCREW),
  sleeved('sleeve wider than the board hole', { 'board hole': 5.5 }, 'fail', 'sleeve passes the board', 'sleeve 5.5 and more at its root, board hole 5.4', GEOMETRY),
  sleeved('sleeve half as high as the board', { sleeve: 0.8 }, 'fail', 'sleeve carries the clamp', 'sleeve at most 0.9, board at least 1.44', GEOMETRY),
  {
    ...sound('no standard length', {}, 'fail', 'a standard length exists', '13 holds 12.2 − 3.86 − 3.2 = 5.14 = 1.77 d; 16 asks for a hole of 13.46 + 0.6 = 14.06, there are 8', 'ISO 7049 lengths'),
    inputs: { ...without(SOUND, 'length'), 'boss height': 8 },
  },
  sound('clearance hole where the pilot should be', { pilot: 3.2 }, 'fail', 'thread bites at the mouth', 'screw 2.76, hole 3.2', SCREW),
  sound('pilot tighter than the root', { pilot: 2.2, 'pilot held at': 'mouth' }, 'fail', 'pilot not too tight', 'at the last full thread, 10.86 deep, 2.2 − 0.095 − 0.05 = 2.055 over 2.18 is 0.943, below 0.97', `${SCREW}; ${PRACTICE}`),
  sound('draft that closes the hole', { 'hole draft': '1°' }, 'fail', 'pilot not too tight', 'mouth 2.324 + 2·5.15·tan 1° = 2.504; at the tip 2.504 − 0.379 − 0.05 = 2.075 over 2.18 is 0.95', SCREW),
  sound('short screw', { length: 13 }, 'fail', 'engagement', '12.2 − 3.86 − 0.6 − 2.6 = 5.14 = 1.77 d, below 2 (two to three diameters: Lincoln, Gomes, Braden)', SCREW),
  sound('screw that does not reach the boss', { length: 4.5 }, 'fail', 'engagement', '4.5 − 3.6 = 0.9 into a relief of 0.5 with a point of 2.6: no thread', SCREW),
  sound('screw bottoms', { 'hole depth': 13 }, 'fail', 'screw clears the bottom', 'reach 13.46, hole 12.9', GEOMETRY),
  sound('skin under the hole', { 'hole depth': 16.2 }, 'fail', 'floor under the hole', '2.5 + 14.2 − 16.3 = 0.4, below 0.4 × 2.5 = 1.0 (handbooks ask for about 0.7)', PRACTICE),
  sound('groove that leaves a skin', { 'ring depth': 1.6 }, 'fail', 'wall under the groove', '2.5 − 1.6 = 0.9, below 1.0', PRACTICE),
  sound('boss of a tube', { 'boss OD': 4.2 }, 'fail', 'boss wall carries the thread', '4.2/2.9 = 1.45 d, below 1.5 (2.0 to 2.4 d in resin guides)', PRACTICE),
  sound('board slips over the boss', { 'boss OD': 5, 'board hole': 3.6 }, 'fail', 'board held by the boss', '(5 − 3.7)/2 − (3.7 − 2.76)/2 = 0.18, below 0.3', GEOMETRY),
  {
    ...sound('knife edge to land on', {}, 'fail', 'landing ring', '(4.4 − 3.5)/2 = 0.45, below 0.5', PRACTICE),
    inputs: { ...without(SOUND, 'board hole'), 'boss OD': 4.4 },
  },
  sound('thick boss on a thin wall', { wall: 1.2 }, 'fail', 'sink, thread half', 'root (6.628 − 2.245)/2 = 2.19 on 1.2 is 1.83, above 1.5', PRACTICE),
  sound('thick boss behind a show face', { wall: 2.3, face: 'show' }, 'fail', 'sink, thread half', '2.19 on 2.3 is 0.95, above 0.6 + 0.3', PRACTICE),
  sound('thick post behind a show face', { 'post OD': 12 }, 'fail', 'sink, head half', '(12.06 − 6.59)/2 = 2.73 on 2.5 is 1.09, above 0.6 + 0.3', PRACTICE),
  sound('boss like a chimney', { 'boss height': 33 }, 'fail', 'slenderness', '33/6.38 = 5.17, above 5 (resin guides: trouble above five outside diameters)', PRACTICE),
  sound('core pin like a needle', { 'boss height': 25 }, 'fail', 'core pin', '25/2.324 = 10.8, above 10', PRACTICE),
  sound('planned gap', { gap: 0.3, length: 16 }, 'review', 'planned gap (boss hangs in tension)', 'the boss does not touch: the cover bends (resin maker’s check list)', PRACTICE),
  sound('more load than the seat holds', { load: 400 }, 'fail', 'load carried', 'seat 38/√3·π·5.3·1.9 = 694 N; 400 × 2 = 800', 'shear of a cylinder'),
  {
    ...driven('strips while it is driven', {}, 'fail', 'strip before drive', '0.596/0.4 = 1.5, below 2', 'thread statics with friction 0.2'),
    inputs: { ...without(DRIVEN, 'set torque'), 'drive torque': 0.4 },
  },
  driven('set torque that strips', { 'set torque': 0.6 }, 'fail', 'set torque in its window', '0.6 × 1.1 = 0.66 N·m, it strips at 0.596', 'thread statics with friction 0.2'),
  driven('set torque that does not drive', { 'drive torque': 0.14, 'set torque': 0.15 }, 'fail', 'set torque in its window', '0.15 × 0.9 = 0.135 N·m, it takes 0.14 to drive', 'thread statics'),
  driven('head sinks in', { hole: 4, length: 19, 'boss height': 17.2, 'drive torque': 0.1, 'set torque': 0.46 }, 'fail', 'head does not sink in', '0.36 N·m on 0.954 mm is 377 N, on a ring of 5.3 and 4.1, 8.86 mm²: 42.6 MPa, yield 38', 'thread statics with friction 0.2; yield of ABS on the safe side'),
  sound('blade of steel', { 'steel gap': 1.6 }, 'fail', 'steel beside the boss', '1.6 − 2·14.2·tan 0.5° = 1.35, below 1.5', PRACTICE),
  sound('countersunk head with room', { head: 'countersunk', seat: 3 }, 'review', 'seat under the cone', '2.9 less a cone of 1.1 to 1.5 leaves 1.4 and more, but the cone wedges the plastic apart: avoid it (resin makers)', 'plane geometry on ISO 7050'),
];

const HANDBOOK = 'outside diameter and thread share of the material’s own start values (reference joint.md 1.1, common practice)';
const SINK = `${HANDBOOK}; boss wall of at most 0.6 wall (efunda, boss design); the two contradict each other in thin walls (the same collection, 0.1)`;
const made = (
  screw: string,
  material: string,
  wall: number,
  board: number,
  hole: number,
  bossHeight: number,
  more: Inputs,
  state: State,
  why: string,
): Verdict => ({
  name: `${screw} in ${material}, wall ${wall}${more.face === 'show' ? ', show' : ''}`,
  inputs: { screw, head: screw.startsWith('M') ? 'ISO 7045' : 'ISO 7049', material, wall, board, hole, 'board plane': 7, 'boss height': bossHeight, ...more },
  state,
  rule: state === 'pass' ? undefined : 'sink, thread half',
  why,
  source: state === 'pass' ? HANDBOOK : SINK,
});

/** Boss, pilot, seat, drafts and length by the book; the height fits the length. */
const BY_THE_BOOK: readonly Verdict[] = [
];

const pair = (
  make: (name: string, changes: Inputs, state: State, rule: string | undefined, why: string, source: string) => Verdict,
  name: string,
  rule: string,
  [better, betterState, betterWhy]: readonly [Inputs, State, string],
  [worse, worseState, worseWhy]: readonly [Inputs, State, string],
  source: string,
): readonly Verdict[] => [
  make(`${name}, just inside`, better, betterState, betterState === 'pass' ? undefined : rule, betterWhy, source),
  make(`${name}, just outside`, worse, worseState, rule, worseWhy, source),
];

/** Both sides of a limit, a few thousandths of a millimetre apart. */
const BORDERLINE: readonly Verdict[] = [
  ...pair(sound, 'head free in its recess', 'head fits the recess', [{ allowance: 0.741 }, 'pass', 'recess 6.341, head and its play 5.6 + 3.5 − 2.76 = 6.34'], [{ allowance: 0.739 }, 'review', 'recess 6.339, 6.34 asked'], HEAD),
  ...pair(sound, 'driver with margin', 'driver goes in', [{ 'tool diameter': 6.039 }, 'pass', '6.54 − 6.039 = 0.501, above 0.5'], [{ 'tool diameter': 6.041 }, 'review', '6.54 − 6.041 = 0.499'], GEOMETRY),
  ...pair(sound, 'driver at all', 'driver goes in', [{ 'tool diameter': 6.539 }, 'review', '6.54 − 6.539 = 0.001 of the 0.5'], [{ 'tool diameter': 6.541 }, 'fail', '6.54 − 6.541 = −0.001'], GEOMETRY),
  ...pair(sound, 'bearing ring of 0.5', 'head bears on its seat', [{ hole: 4.199 }, 'pass', '(5.3 − 4.299)/2 = 0.5005'], [{ hole: 4.201 }, 'review', '(5.3 − 4.301)/2 = 0.4995'], HEAD),
  ...pair(sound, 'bearing ring of 0.3', 'head bears on its seat', [{ hole: 4.599 }, 'review', '(5.3 − 4.699)/2 = 0.3005, below 0.5'], [{ hole: 4.601 }, 'fail', '(5.3 − 4.701)/2 = 0.2995'], HEAD),
  ...pair(sound, 'head 0.2 below the face', 'head hidden', [{ 'board plane': 4.801 }, 'pass', '4.701 − 2.1 − 2.4 = 0.201'], [{ 'board plane': 4.799 }, 'review', '4.699 − 2.1 − 2.4 = 0.199'], HEAD),
  ...pair(sound, 'head level with the face', 'head hidden', [{ 'board plane': 4.601 }, 'review', '4.501 − 2.1 − 2.4 = 0.001, below 0.2'], [{ 'board plane': 4.599 }, 'fail', '4.499 − 2.1 − 2.4 = −0.001'], HEAD),
  ...pair(sound, 'seat of 1.2', 'seat holds', [{ seat: 1.301, 'boss height': 14.9 }, 'pass', '1.301 − 0.1 = 1.201'], [{ seat: 1.299, 'boss height': 14.9 }, 'review', '1.299 − 0.1 = 1.199'], PRACTICE),
  ...pair(sound, 'screw through the hole', 'screw passes the hole', [{ hole: 3.001 }, 'pass', 'hole 2.901, screw 2.90'], [{ hole: 2.999 }, 'fail', 'hole 2.899, screw 2.90'], SCREW),
  ...pair(sound, 'screw through the board', 'screw passes the board', [{ 'board hole': 3.001 }, 'pass', 'board hole 2.901, screw 2.90'], [{ 'board hole': 2.999 }, 'fail', 'board hole 2.899, screw 2.90'], SCREW),
  ...pair(sleeved, 'sleeve with play of 0.05', 'sleeve passes the board', [{ 'sleeve draft': '0°', 'board hole': 5.701 }, 'pass', '(5.601 − 5.5)/2 = 0.0505'], [{ 'sleeve draft': '0°', 'board hole': 5.699 }, 'review', '(5.599 − 5.5)/2 = 0.0495'], GEOMETRY),
  ...pair(sleeved, 'sleeve with play at all', 'sleeve passes the board', [{ 'sleeve draft': '0°', 'board hole': 5.601 }, 'review', '(5.501 − 5.5)/2 = 0.0005, below 0.05'], [{ 'sleeve draft': '0°', 'board hole': 5.599 }, 'fail', '(5.499 − 5.5)/2 = −0.0005'], GEOMETRY),
  ...pair(sleeved, 'sleeve above the thickest board', 'sleeve carries the clamp', [{ sleeve: 1.861 }, 'pass', 'sleeve at least 1.761, board at most 1.76'], [{ sleeve: 1.859 }, 'review', 'sleeve at least 1.759, board at most 1.76'], GEOMETRY),
  ...pair(sleeved, 'sleeve above the thinnest board', 'sleeve carries the clamp', [{ sleeve: 1.341 }, 'review', 'sleeve at most 1.441, board at least 1.44'], [{ sleeve: 1.339 }, 'fail', 'sleeve at most 1.439, board at least 1.44'], GEOMETRY),
  ...pair(sound, 'thread share of 0.15', 'thread bites at the mouth', [{ pilot: 2.601, 'pilot held at': 'mouth' }, 'pass', '(2.76 − 2.651)/0.72 = 0.1514'], [{ pilot: 2.603, 'pilot held at': 'mouth' }, 'review', '(2.76 − 2.653)/0.72 = 0.1486'], `${SCREW}; ${PRACTICE}`),
  ...pair(sound, 'thread share of 0.1', 'thread bites at the mouth', [{ pilot: 2.637, 'pilot held at': 'mouth' }, 'review', '(2.76 − 2.687)/0.72 = 0.1014, below 0.15'], [{ pilot: 2.639, 'pilot held at': 'mouth' }, 'fail', '(2.76 − 2.689)/0.72 = 0.0986'], `${SCREW}; ${PRACTICE}`),
  ...pair(straight, 'pilot of the root', 'pilot not too tight', [{ pilot: 2.231 }, 'pass', '2.181/2.18 = 1.0005'], [{ pilot: 2.229 }, 'review', '2.179/2.18 = 0.9995'], `${SCREW}; ${PRACTICE}`),
  ...pair(straight, 'pilot of 0.97 root', 'pilot not too tight', [{ pilot: 2.166 }, 'review', '2.116/2.18 = 0.9706, below 1'], [{ pilot: 2.164 }, 'fail', '2.114/2.18 = 0.9697'], `${SCREW}; ${PRACTICE}`),
  ...pair(sound, 'engagement of 2 d', 'engagement', [{ length: 13.661, 'length tolerance': 0.8 }, 'pass', '12.861 − 3.86 − 3.2 = 5.801, 2 d = 5.8'], [{ length: 13.659, 'length tolerance': 0.8 }, 'fail', '12.859 − 3.86 − 3.2 = 5.799, 2 d = 5.8'], SCREW),
  ...pair(sound, 'bottom gap of 0.5', 'screw clears the bottom', [{ 'boss height': 14.061 }, 'pass', '13.961 − 13.46 = 0.501'], [{ 'boss height': 14.059 }, 'review', '13.959 − 13.46 = 0.499'], GEOMETRY),
  ...pair(sound, 'bottom touched', 'screw clears the bottom', [{ 'boss height': 13.561 }, 'review', '13.461 − 13.46 = 0.001, below 0.5'], [{ 'boss height': 13.559 }, 'fail', '13.459 − 13.46 = −0.001'], GEOMETRY),
  ...pair(sound, 'floor of 0.6 wall', 'floor under the hole', [{ 'hole depth': 15.099 }, 'pass', '16.7 − 15.199 = 1.501, 0.6 × 2.5 = 1.5'], [{ 'hole depth': 15.101 }, 'review', '16.7 − 15.201 = 1.499'], PRACTICE),
  ...pair(sound, 'floor of 0.4 wall', 'floor under the hole', [{ 'hole depth': 15.599 }, 'review', '16.7 − 15.699 = 1.001, 0.4 × 2.5 = 1.0'], [{ 'hole depth': 15.601 }, 'fail', '16.7 − 15.701 = 0.999'], PRACTICE),
  ...pair(sound, 'wall of 0.6 under the groove', 'wall under the groove', [{ 'ring depth': 0.999 }, 'pass', '2.5 − 0.999 = 1.501, 0.6 × 2.5 = 1.5'], [{ 'ring depth': 1.001 }, 'review', '2.5 − 1.001 = 1.499'], PRACTICE),
  ...pair(sound, 'boss of 2 d', 'boss wall carries the thread', [{ 'boss OD': 5.801 }, 'pass', '5.801, low end for ABS 2 × 2.9 = 5.8'], [{ 'boss OD': 5.799 }, 'review', '5.799 of 5.8'], HANDBOOK),
  ...pair(sound, 'board held by 0.5', 'board held by the boss', [{ 'board hole': 3.969 }, 'pass', '(6.38 − 4.069)/2 − (4.069 − 2.76)/2 = 0.501'], [{ 'board hole': 3.971 }, 'review', '(6.38 − 4.071)/2 − (4.071 − 2.76)/2 = 0.499'], GEOMETRY),
  ...pair(sound, 'board held by 0.3', 'board held by the boss', [{ 'board hole': 4.169 }, 'review', '(6.38 − 4.269)/2 − (4.269 − 2.76)/2 = 0.301, below 0.5'], [{ 'board hole': 4.171 }, 'fail', '(6.38 − 4.271)/2 − (4.271 − 2.76)/2 = 0.299'], GEOMETRY),
  ...pair(sound, 'landing ring of 0.8', 'landing ring', [{ 'relief diameter': 4.779 }, 'pass', '(6.38 − 4.779)/2 = 0.8005'], [{ 'relief diameter': 4.781 }, 'review', '(6.38 − 4.781)/2 = 0.7995'], PRACTICE),
  ...pair(straight, 'boss wall as thick as the wall, hidden', 'sink, thread half', [{ 'boss OD': 7.399 }, 'pass', '(7.399 − 2.4)/2/2.5 = 0.9998'], [{ 'boss OD': 7.401 }, 'review', '(7.401 − 2.4)/2/2.5 = 1.0002'], PRACTICE),
  ...pair(straight, 'boss wall of 1.5 walls, hidden', 'sink, thread half', [{ 'boss OD': 9.899 }, 'review', '(9.899 − 2.4)/2/2.5 = 1.4998, above 1'], [{ 'boss OD': 9.901 }, 'fail', '(9.901 − 2.4)/2/2.5 = 1.5002'], PRACTICE),
  ...pair(straight, 'boss wall of 0.66 walls, show', 'sink, thread half', [{ wall: 3, face: 'show', 'boss OD': 6.359 }, 'pass', '(6.359 − 2.4)/2/3 = 0.6598, limit 1.1 × 0.6'], [{ wall: 3, face: 'show', 'boss OD': 6.361 }, 'review', '(6.361 − 2.4)/2/3 = 0.6602'], PRACTICE),
  ...pair(sound, 'post wall of 0.66 walls, show', 'sink, head half', [{ 'post draft': '0°', 'recess draft': '0°', 'post OD': 9.839 }, 'pass', '(9.839 − 6.54)/2/2.5 = 0.6598'], [{ 'post draft': '0°', 'recess draft': '0°', 'post OD': 9.841 }, 'review', '(9.841 − 6.54)/2/2.5 = 0.6602'], PRACTICE),
  ...pair(sound, 'post wall of 0.9 walls, show', 'sink, head half', [{ 'post draft': '0°', 'recess draft': '0°', 'post OD': 11.039 }, 'review', '(11.039 − 6.54)/2/2.5 = 0.8998, above 0.66'], [{ 'post draft': '0°', 'recess draft': '0°', 'post OD': 11.041 }, 'fail', '(11.041 − 6.54)/2/2.5 = 0.9002'], PRACTICE),
  ...pair(sound, 'slenderness at its limit', 'slenderness', [{ 'slender limit': 2.226 }, 'pass', '14.2/6.38 = 2.2257'], [{ 'slender limit': 2.225 }, 'review', '14.2/6.38 = 2.2257'], PRACTICE),
  ...pair(sound, 'core pin at its limit', 'core pin', [{ 'pin limit': 6.111 }, 'pass', '14.2/2.324 = 6.1102'], [{ 'pin limit': 6.109 }, 'review', '14.2/2.324 = 6.1102'], PRACTICE),
  ...pair(sound, 'load as large as the seat holds', 'load carried', [{ load: 347 }, 'review', '694.07/694 = 1.0001, below 1.5'], [{ load: 347.1 }, 'fail', '694.07/694.2 = 0.9998'], 'shear of a cylinder; yield of ABS on the safe side'),
  ...pair(sound, 'steel of 3', 'steel beside the boss', [{ 'outside draft': '0°', 'steel gap': 3.001 }, 'pass', 'no draft: 3.001'], [{ 'outside draft': '0°', 'steel gap': 2.999 }, 'review', 'no draft: 2.999'], PRACTICE),
  ...pair(sound, 'steel of 1.5', 'steel beside the boss', [{ 'outside draft': '0°', 'steel gap': 1.501 }, 'review', 'no draft: 1.501, below 3'], [{ 'outside draft': '0°', 'steel gap': 1.499 }, 'fail', 'no draft: 1.499'], PRACTICE),
];

export const IMPOSSIBLE_OR_BAD: readonly Verdict[] = [...REVIEWED, ...BAD];
export { BY_THE_BOOK, BORDERLINE };
export const CORPUS: readonly Verdict[] = [...IMPOSSIBLE_OR_BAD, ...BY_THE_BOOK, ...BORDERLINE];

/** A joint that passes with everything that a rule can ask for: torques, load, tool, steel, groove. */
export const ALL_RULES = { sound: SOUND, sleeved: SLEEVED, driven: DRIVEN, straight: STRAIGHT, made };
