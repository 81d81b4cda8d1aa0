// Each output of the joint is the base function of the same meaning on the same inputs (the contract): a joint in which every input is given and no two have the same value.
import { describe, expect, test } from 'vitest';
import { namesIn } from '../../src/joint/graph';
import { number, value } from '../kit/ask';
import type { Inputs } from '../kit/sound-joint';

const JOINT = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'flat',
  length: 16,
  material: 'POM',
  wall: 3.05,
  'feature share': 0.61,
  'board plane': 6.4,
  seat: 2.55,
  'seat tolerance': 0.11,
  board: 1.62,
  'board tolerance': 0.17,
  sleeve: 1.9,
  'sleeve tolerance': 0.12,
  gap: 0.13,
  'gap tolerance': 0.04,
  hole: 3.41,
  'hole tolerance': 0.14,
  'board hole': 7.6,
  'head diameter': 5.65,
  'head height': 2.15,
  allowance: 0.9,
  'recess draft': 1.1,
  relief: 0.52,
  'relief tolerance': 0.09,
  'relief diameter': 3.15,
  ratio: 2.05,
  pilot: 2.43,
  'pilot held at': 'mouth',
  'boss OD': 8.2,
  'boss height': 14.2,
  'outside draft': 0.55,
  'hole draft': 0.26,
  'hole depth': 13.9,
  'hole depth tolerance': 0.06,
  'bottom gap': 0.45,
  'sink limit': 0.62,
  face: 'show',
  'slender limit': 3.1,
  'pin limit': 6.2,
  'yield stress': 41,
  safety: 1.7,
} as const satisfies Inputs;
const { screw, length, wall, seat, sleeve, gap, hole, relief, pilot, safety } = JOINT;
const joint = (inputs: Inputs, output: string): unknown =>
  (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [[output]]) as unknown[][])[1]?.[0];
const of = (output: string): number => joint(JOINT, output) as number;

/** The sleeve stands higher than the board. */
const LAYERS = [[seat], [sleeve], [gap]];
const TOLERANCES = [[JOINT['seat tolerance']], [JOINT['sleeve tolerance']], [JOINT['gap tolerance']]];
const STACK = [length, 'ST2.9 flat', LAYERS, TOLERANCES] as const;
const feature = number('WALL.FEATURE', wall, JOINT['feature share']);
const depth = number('RECESS.DEPTH', JOINT['board plane'], seat);
const sleeveOd = number('BOSS.OD', hole, feature);
const [least = NaN] = (value('ENGAGEMENT.LIMITS', ...STACK, relief, JOINT['relief tolerance'], 'ST2.9 flat') as number[][])[0] as number[];
/** Flat end: +0 / −0.8. */
const deepest = length - (seat - 0.11 + sleeve - 0.12 + gap - 0.04);

describe('each output is its function', () => {
  test.each<[output: string, id: string, args: readonly unknown[]]>([
    ['feature wall', 'WALL.FEATURE', [wall, JOINT['feature share']]],
    ['recess depth', 'RECESS.DEPTH', [JOINT['board plane'], seat]],
    ['recess diameter', 'RECESS.DIAMETER', [JOINT['head diameter'], JOINT.allowance]],
    ['recess mouth', 'RECESS.DIAMETER', [JOINT['head diameter'], JOINT.allowance, depth, JOINT['recess draft']]],
    ['subflush', 'RECESS.FLUSH', [depth, JOINT['head height']]],
    ['post OD', 'BOSS.OD', [number('RECESS.DIAMETER', JOINT['head diameter'], JOINT.allowance), feature]],
    ['sleeve OD', 'BOSS.OD', [hole, feature]],
    ['grip', 'GRIP', [LAYERS]],
    ['engagement', 'ENGAGEMENT', [length, LAYERS, relief, 'ST2.9 flat']],
    ['engagement ratio', 'ENGAGEMENT.RATIO', [least, screw]],
    ['hole depth needed', 'HOLE.DEPTH', [deepest, JOINT['bottom gap'], JOINT['hole depth tolerance']]],
    ['bottom clearance', 'SCREW.BOTTOM', [JOINT['hole depth'], JOINT['hole depth tolerance'], ...STACK]],
    ['pilot at tip', 'HOLE.AT', [pilot, deepest, JOINT['hole draft']]],
    ['pilot bottom', 'HOLE.AT', [pilot, JOINT['hole depth'], JOINT['hole draft']]],
    ['boss OD root', 'BOSS.OD', [pilot, (JOINT['boss OD'] - pilot) / 2, JOINT['boss height'], JOINT['outside draft']]],
    ['boss wall', 'BOSS.WALL', [JOINT['boss OD'], JOINT['relief diameter']]],
    [
      'boss wall root',
      'BOSS.WALL',
      [JOINT['boss OD'], pilot, JOINT['boss height'], JOINT['outside draft'], JOINT['hole draft'], JOINT['hole depth']],
    ],
    [
      'sink ratio',
      'BOSS.SINK',
      [
        number(
          'BOSS.WALL',
          JOINT['boss OD'],
          pilot,
          JOINT['boss height'],
          JOINT['outside draft'],
          JOINT['hole draft'],
          JOINT['hole depth'],
        ),
        wall,
      ],
    ],
    ['slenderness', 'BOSS.SLENDER', [JOINT['boss height'], JOINT['boss OD']]],
    ['pin ratio', 'PIN.RATIO', [JOINT['hole depth'], pilot]],
    ['floor under hole', 'HOLE.FLOOR', [wall, JOINT['boss height'], JOINT['hole depth']]],
    ['board play', 'BOARD.SLEEVE', [JOINT['board hole'], sleeveOd]],
    ['board hold', 'BOARD.HOLD', [JOINT['boss OD'], JOINT['board hole'], sleeveOd]],
    ['pull-out', 'PULLOUT', [screw, least, JOINT['yield stress'], safety]],
    ['boss tear', 'PULLOUT.BOSS', [JOINT['boss OD'], screw, JOINT['yield stress'], safety]],
    ['seat shear', 'PULLOUT.SEAT', [JOINT['head diameter'], seat, JOINT['yield stress'], safety]],
    [
      'boss mass',
      'BOSS.MASS',
      [JOINT['boss OD'], pilot, JOINT['boss height'], 'POM', JOINT['outside draft'], JOINT['hole draft'], JOINT['hole depth']],
    ],
  ])('%s = %s', (output, id, args) => expect(of(output)).toBeCloseTo(number(id, ...args), 9));

  test('what is a sum of inputs', () => {
    expect(of('engagement min')).toBeCloseTo(least, 9);
    expect(of('penetration max')).toBeCloseTo(deepest, 9);
    expect(of('boss stack')).toBeCloseTo(JOINT['board plane'] + sleeve + JOINT['boss height'], 9);
    // the boss of 8.2 is wider than the sleeve of 3.41 + 2 · 0.61 · 3.05
    expect(of('landing ring')).toBeCloseTo((sleeveOd - hole) / 2, 9);
  });

  test.each(['screw length', 'hole', 'hole depth', 'pilot hole', 'boss OD'] as const)('%s is the input', output =>
    expect(of(output)).toBe(JOINT[output === 'screw length' ? 'length' : output === 'pilot hole' ? 'pilot' : output]),
  );
});

describe('what a material gives is that of the function that is asked with it', () => {
  const { 'yield stress': _, pilot: __, 'boss OD': ___, ...rest } = JOINT;
  test.each<[output: string, id: string, args: readonly unknown[]]>([
    ['pilot hole', 'HOLE.PILOT', [screw, 'POM']],
    ['boss OD', 'BOSS.OD.RULE', [screw, 'POM']],
    ['pull-out', 'PULLOUT', [screw, least, 'POM', safety]],
  ])('%s = %s', (output, id, args) => expect(joint(rest, output)).toBeCloseTo(number(id, ...args), 9));
});

describe('a rule is there as soon as what it judges is there', () => {
  test.each([
    ['head hidden', { seat: 0.005 }, true],
    ['head hidden', { seat: '0 mm' }, false],
    ['board free on the sleeve', { sleeve: 0.005 }, true],
    ['board free on the sleeve', { sleeve: 0 }, false],
    ['board free on the sleeve', { 'board hole': 'default' }, false],
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
