// Each output of the joint is the base function of the same meaning on the same inputs (the contract): a joint in which every input is given and no two have the same value.
import { describe, expect, test } from 'vitest';
import { namesIn } from '../../src/joint/graph';
import { isVerdict, OUTPUTS } from '../../src/joint/outputs';
import { number, value } from '../kit/ask';
import type { Inputs } from '../kit/sound-joint';

const JOINT = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'flat',
  length: 16,
  'length tolerance': '+0.02/-0.7',
  point: 2.11,
  material: 'POM',
  wall: 3.05,
  'head wall': 2.95,
  'feature share': 0.61,
  'board plane': 6.4,
  'board plane tolerance': 0.115,
  seat: 2.55,
  'seat tolerance': 0.11,
  board: 1.62,
  'board tolerance': 0.17,
  sleeve: 1.9,
  'sleeve tolerance': 0.12,
  'sleeve draft': 0.45,
  'sleeve wall': 1.05,
  gap: 0.13,
  'gap tolerance': 0.04,
  hole: 3.41,
  'hole tolerance': 0.14,
  'board hole': 6.3,
  'board hole tolerance': 0.13,
  'head diameter': 5.65,
  'head height': 2.15,
  'head diameter min': 5.25,
  allowance: 0.9,
  'recess draft': 1.1,
  'post draft': 0.35,
  'post OD': 10.2,
  relief: 0.52,
  'relief tolerance': 0.09,
  'relief diameter': 3.15,
  ratio: 2.05,
  pilot: 2.43,
  'pilot tolerance': 0.055,
  'pilot held at': 'mouth',
  'boss OD': 8.2,
  'boss height': 14.2,
  'outside draft': 0.55,
  'hole draft': 0.26,
  'hole depth': 13.9,
  'hole depth tolerance': 0.06,
  'bottom gap': 0.48,
  'ring depth': 0.3,
  face: 'show',
  'yield stress': 41,
  safety: 1.7,
  load: 90,
  'load safety': 1.8,
  friction: 0.21,
  'drive torque': 0.08,
  'set torque': 0.2,
  'torque scatter': 0.07,
  'tool diameter': 5.9,
  'steel gap': 4.1,
} as const satisfies Inputs;
const { screw, length, wall, seat, sleeve, gap, hole, relief, pilot, safety } = JOINT;
const joint = (inputs: Inputs, output: string): unknown =>
  (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [[output]]) as unknown[][])[1]?.[0];
const of = (output: string): number => joint(JOINT, output) as number;
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** The sleeve stands higher than the board at both of its limits: 1.78 and 1.45, 2.02 and 1.79. */
const LAYERS = [[seat], [sleeve], [gap]];
const TOLERANCES = [[JOINT['seat tolerance']], [JOINT['sleeve tolerance']], [JOINT['gap tolerance']]];
const STACK = [length, JOINT['length tolerance'], LAYERS, TOLERANCES] as const;
const depth = number('RECESS.DEPTH', JOINT['board plane'], seat);
const recess = number('RECESS.DIAMETER', JOINT['head diameter'], JOINT.allowance);
const sleeveOd = number('BOSS.OD', hole, JOINT['sleeve wall']);
const [least = NaN] = (value('ENGAGEMENT.LIMITS', ...STACK, relief, JOINT['relief tolerance'], JOINT.point) as number[][])[0] as number[];
const deepest = length + 0.02 - (seat - 0.11 + sleeve - 0.12 + gap - 0.04);
const odRoot = number('BOSS.OD', pilot, (JOINT['boss OD'] - pilot) / 2, JOINT['boss height'], JOINT['outside draft']);
const postRoot = number('DRAFT.SIZE', JOINT['post OD'], JOINT['board plane'] - JOINT['head wall'], JOINT['post draft'], 'grows');
/** Of the flank depth, ISO 1478: 2.90/2.76, root 2.18. */
const share = (2.76 - pilot - JOINT['pilot tolerance']) / (2.9 - 2.18);
const seatMin = seat - JOINT['seat tolerance'];
const holeMax = hole + JOINT['hole tolerance'];
const pullOut = number('PULLOUT', screw, least, JOINT['yield stress'], safety, share);
const tear = number('PULLOUT.BOSS', JOINT['boss OD'], screw, JOINT['yield stress'], safety);
const shear = number('PULLOUT.SEAT', JOINT['head diameter min'], seatMin, JOINT['yield stress'], safety);
const clamp =
  (JOINT['set torque'] - JOINT['drive torque']) /
  number('TORQUE.CLAMP', 1, screw, JOINT.friction, JOINT.friction, JOINT['head diameter min'], hole);
/** The hole ends above the root: 14.2 high, 13.9 deep. */
const besideHole = (odRoot - number('HOLE.AT', pilot, JOINT['hole depth'], JOINT['hole draft'])) / 2;
const circle = number('BOSS.CIRCLE', besideHole, wall, 0, JOINT['ring depth'], wall + JOINT['boss height'] - JOINT['hole depth']);

const BY_FUNCTION: readonly (readonly [output: string, id: string, args: readonly unknown[]])[] = [
  ['feature wall', 'WALL.FEATURE', [JOINT['head wall'], JOINT['feature share']]],
  ['recess depth', 'RECESS.DEPTH', [JOINT['board plane'], seat]],
  ['recess diameter', 'RECESS.DIAMETER', [JOINT['head diameter'], JOINT.allowance]],
  ['recess mouth', 'RECESS.DIAMETER', [JOINT['head diameter'], JOINT.allowance, depth, JOINT['recess draft']]],
  ['subflush', 'RECESS.FLUSH', [depth, JOINT['head height']]],
  ['post OD root', 'DRAFT.SIZE', [JOINT['post OD'], JOINT['board plane'] - JOINT['head wall'], JOINT['post draft'], 'grows']],
  ['sleeve OD', 'BOSS.OD', [hole, JOINT['sleeve wall']]],
  ['grip', 'GRIP', [LAYERS]],
  ['engagement', 'ENGAGEMENT', [length, LAYERS, relief, JOINT.point]],
  ['engagement ratio', 'ENGAGEMENT.RATIO', [least, screw]],
  ['hole depth needed', 'HOLE.DEPTH', [deepest, JOINT['bottom gap'], JOINT['hole depth tolerance']]],
  ['bottom clearance', 'SCREW.BOTTOM', [JOINT['hole depth'], JOINT['hole depth tolerance'], ...STACK]],
  ['pilot at tip', 'HOLE.AT', [pilot, deepest - JOINT.point, JOINT['hole draft']]],
  ['pilot bottom', 'HOLE.AT', [pilot, JOINT['hole depth'], JOINT['hole draft']]],
  ['boss OD root', 'BOSS.OD', [pilot, (JOINT['boss OD'] - pilot) / 2, JOINT['boss height'], JOINT['outside draft']]],
  ['boss wall', 'BOSS.WALL', [JOINT['boss OD'], JOINT['relief diameter']]],
  [
    'boss wall root',
    'BOSS.WALL',
    [JOINT['boss OD'], pilot, JOINT['boss height'], JOINT['outside draft'], JOINT['hole draft'], JOINT['hole depth']],
  ],
  ['root circle', 'BOSS.CIRCLE', [besideHole, wall, 0, JOINT['ring depth'], wall + JOINT['boss height'] - JOINT['hole depth']]],
  ['slenderness', 'BOSS.SLENDER', [JOINT['boss height'], JOINT['boss OD']]],
  ['pin ratio', 'PIN.RATIO', [JOINT['hole depth'], pilot]],
  ['floor under hole', 'HOLE.FLOOR', [wall, JOINT['boss height'], JOINT['hole depth'] + JOINT['hole depth tolerance']]],
  // at its root, where the draft has made it widest
  [
    'board play',
    'BOARD.SLEEVE',
    [
      JOINT['board hole'] - JOINT['board hole tolerance'],
      number('DRAFT.SIZE', sleeveOd + JOINT['hole tolerance'], sleeve + JOINT['sleeve tolerance'], JOINT['sleeve draft'], 'grows'),
    ],
  ],
  ['board hold', 'BOARD.HOLD', [JOINT['boss OD'], JOINT['board hole'] + JOINT['board hole tolerance'], sleeveOd - JOINT['hole tolerance']]],
  ['pull-out', 'PULLOUT', [screw, least, JOINT['yield stress'], safety, share]],
  ['boss tear', 'PULLOUT.BOSS', [JOINT['boss OD'], screw, JOINT['yield stress'], safety]],
  ['seat shear', 'PULLOUT.SEAT', [JOINT['head diameter min'], seatMin, JOINT['yield stress'], safety]],
  ['strip torque', 'TORQUE.STRIP', [pullOut, screw, JOINT.friction]],
  ['bearing pressure', 'BEARING', [clamp, JOINT['head diameter min'], holeMax]],
  [
    'boss mass',
    'BOSS.MASS',
    [JOINT['boss OD'], pilot, JOINT['boss height'], 'POM', JOINT['outside draft'], JOINT['hole draft'], JOINT['hole depth']],
  ],
];

/** Sums and quotients of inputs and of what the functions give. */
const BY_SUM: readonly (readonly [output: string, expected: number])[] = [
  ['subflush min', 6.4 - 0.115 - (2.55 + 0.11) - 2.15],
  ['post wall root', (postRoot - recess - 2 * (depth - 2.95) * tan(1.1)) / 2],
  ['head sink ratio', (postRoot - recess - 2 * (depth - 2.95) * tan(1.1)) / 2 / 2.95],
  ['bearing ring', (5.25 - (3.41 + 0.14)) / 2],
  ['penetration max', deepest],
  ['engagement min', least],
  ['pilot mouth', pilot],
  ['thread share min', share],
  ['sink ratio', 2 * Math.sqrt(circle / wall - 1)],
  // the boss of 8.2 is wider than the sleeve
  ['landing ring', (3.41 + 2 * 1.05 - (3.41 + 0.14)) / 2],
  ['boss stack', 6.4 + 1.9 + 14.2],
  ['load margin', Math.min(pullOut, tear, shear) / (90 * 1.8)],
  ['clamp force', clamp],
];
const INPUT_OF: Readonly<Record<string, keyof typeof JOINT>> = {
  'screw length': 'length',
  'pilot hole': 'pilot',
  hole: 'hole',
  'hole depth': 'hole depth',
  'boss OD': 'boss OD',
  'post OD': 'post OD',
};

describe('each output is its function', () => {
  test.each(BY_FUNCTION)('%s = %s', (output, id, args) => expect(of(output)).toBeCloseTo(number(id, ...args), 9));
  test.each(BY_SUM)('%s', (output, expected) => expect(of(output)).toBeCloseTo(expected, 9));
  test.each(Object.entries(INPUT_OF))('%s is the input', (output, input) => expect(of(output)).toBe(JOINT[input]));

  test('all numbers of the contract are asked, each once', () => {
    const numbers = new Set<string>(OUTPUTS.filter(output => output !== 'weakest' && !isVerdict(output)));
    const asked = [...BY_FUNCTION.map(([output]) => output), ...BY_SUM.map(([output]) => output), ...Object.keys(INPUT_OF)];
    expect(asked.filter(output => !numbers.has(output))).toEqual([]);
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked.length).toBe(48);
    const [[weakest] = []] = Object.entries({ 'pull-out': pullOut, 'boss tear': tear, 'seat shear': shear }).sort((a, b) => a[1] - b[1]);
    expect(joint(JOINT, 'weakest')).toBe(weakest);
  });
});

describe('what a material gives is that of the function that is asked with it', () => {
  const { 'yield stress': _, pilot: __, 'boss OD': ___, 'board hole': ____, ...rest } = JOINT;
  test.each<[output: string, id: string, args: readonly unknown[]]>([
    ['pilot hole', 'HOLE.PILOT', [screw, 'POM']],
    ['boss OD', 'BOSS.OD.RULE', [screw, 'POM']],
    ['pull-out', 'PULLOUT', [screw, least, 'POM', safety, (2.76 - number('HOLE.PILOT', screw, 'POM') - 0.055) / 0.72]],
  ])('%s = %s', (output, id, args) => expect(joint(rest, output)).toBeCloseTo(number(id, ...args), 9));

  test('a boss that holds the board on its sleeve by 0.5 is wider', () =>
    // 2 · 0.5 + 2 · (6.3 + 0.13) − (3.41 + 2 · 1.05 − 0.14)
    expect(joint({ ...rest, 'board hole': 6.3 }, 'boss OD')).toBeCloseTo(8.49, 9));
});

describe('a rule is there as soon as what it judges is there', () => {
  test.each([
    ['head hidden', { seat: 0.005 }, true],
    ['head hidden', { seat: '0 mm' }, false],
    ['sleeve passes the board', { sleeve: 0.005 }, true],
    ['sleeve passes the board', { sleeve: 0 }, false],
    ['sleeve passes the board', { 'board hole': 'default' }, false],
  ])('%s with %j: %s', (rule, change, there) => {
    const rules = (value('CHECK.JOINT', Object.entries({ ...JOINT, ...change })) as unknown[][]).map(([name]) => name);
    expect(rules.includes(rule)).toBe(there);
  });
});

describe('words of the inputs', () => {
  test.each([
    ['face', 'hidden face', 'hidden'],
    ['face', 'show face', 'show'],
    ['pilot held at', 'middle', 'mid'],
  ])('%s: %s is %s', (name, spelling, word) => {
    const states = (text: string): unknown => value('CHECK.JOINT', Object.entries({ ...JOINT, [name]: text }));
    expect(states(spelling)).toEqual(states(word));
    expect(JSON.stringify(states(spelling))).not.toContain('not checked');
  });

  test('a head that is no text is asked for by an example', () =>
    expect(joint({ ...JOINT, head: 7 }, 'weakest')).toBe('no value: head is 7: put the name in quotes, "pan"'));
});

describe('what is taken from a material says what is missing without one', () => {
  const { material: _, 'yield stress': __, pilot: ___, 'boss OD': ____, ...rest } = JOINT;
  test.each([
    ['pilot hole', 'thread share'],
    ['boss OD', 'od ratio'],
    ['pull-out', 'yield stress'],
  ])('%s: %s', (output, what) =>
    expect(joint({ ...rest, 'pilot held at': 'mouth' }, output)).toContain(`${what} is not given and there is no material to take it from`),
  );

  test('boss mass: density', () =>
    expect(joint({ ...rest, pilot, 'boss OD': 8.2 }, 'boss mass')).toContain(
      'density is not given and there is no material to take it from',
    ));
});

test('what an argument reads: names, and no constant', () => {
  expect(namesIn('wall')).toEqual(['wall']);
  expect(namesIn({ is: 0 })).toEqual([]);
  expect(namesIn({ only: 'engagement', where: 'held at mid' })).toEqual(['held at mid', 'engagement']);
  expect(namesIn({ of: 'seat shear', orElse: Infinity })).toEqual(['seat shear']);
});
