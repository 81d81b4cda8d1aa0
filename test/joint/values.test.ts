// Values of the joint worked by hand, where a part is there and where it is not; and the remedies by hand.
import { describe, expect, test } from 'vitest';
import { value } from '../kit/ask';
import { type Inputs, SOUND as SOUND_JOINT } from '../kit/sound-joint';

type Rows = unknown[][];

const SOUND: Inputs = { ...SOUND_JOINT, 'pilot held at': 'mouth' };

const of = (change: Inputs, output: string): unknown => {
  const inputs = { ...SOUND, ...change };
  return (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [[output]]) as Rows)[1]?.[0];
};
const close = (change: Inputs, output: string, expected: number): void =>
  expect(of(change, output), `${output} of ${JSON.stringify(change)}`).toBeCloseTo(expected, 9);
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

describe('a sleeve takes the place of the board', () => {
  test('in the stack and the grip, with its own tolerance', () => {
    close({}, 'boss stack', 5.5 + 1.6 + 14);
    close({ sleeve: 2 }, 'boss stack', 5.5 + 2 + 14);
    close({}, 'grip', 2.5 + 1.6);
    close({ sleeve: 2 }, 'grip', 2.5 + 2);
    close({ board: 0 }, 'grip', 2.5);
    // 16 − 0.8 − (2.5 + 0.1 + 1.6 + 0.16) − (0.8 + 0.1) − 2.6
    close({}, 'engagement min', 7.34);
    close({ sleeve: 2, 'sleeve tolerance': 0.05 }, 'engagement min', 16 - 0.8 - (2.5 + 0.1 + 2 + 0.05) - 0.9 - 2.6);
    close({ board: 0 }, 'engagement min', 16 - 0.8 - (2.5 + 0.1) - 0.9 - 2.6);
    close({ board: 0.5 }, 'engagement min', 16 - 0.8 - (2.5 + 0.1 + 0.5 + 0.08) - 0.9 - 2.6);
  });

  test('at its free end: hole + 2 · sleeve wall', () => {
    close({ sleeve: 2 }, 'sleeve OD', 3.4 + 2 * 1);
    expect(of({}, 'sleeve OD')).toBe('no value: does not apply: there is no sleeve');
  });

  test('in the ring on which the boss lands and in what holds the board', () => {
    // the hole at its largest, 3.5; relief ø 3.1 is smaller
    close({}, 'landing ring', (6 - 3.5) / 2);
    close({ sleeve: 2 }, 'landing ring', (5.4 - 3.5) / 2);
    close({ sleeve: 2, 'boss OD': 5 }, 'landing ring', (5 - 3.5) / 2);
    close({ 'boss OD': 8 }, 'landing ring', (8 - 3.5) / 2);
    close({ 'relief diameter': 4 }, 'landing ring', (6 - 4) / 2);
    // screw 2.76 and board hole 3.6 at their worst; a sleeve of 5.4 − 0.1
    close({ 'board hole': 3.5 }, 'board hold', (6 - 3.6) / 2 - (3.6 - 2.76) / 2);
    close({ sleeve: 2, 'board hole': 7.2, 'boss OD': 9 }, 'board hold', (9 - 7.3) / 2 - (7.3 - 5.3) / 2);
    // at its root, 2.1 below its free end, it is widest
    close({ sleeve: 2, 'board hole': 7.2 }, 'board play', (7.1 - (5.5 + 2 * 2.1 * tan(0.5))) / 2);
    expect(of({ sleeve: 2 }, 'board play')).toBe('no value: does not apply: no board hole is given');
  });
});

describe('a head that lies on the board, and no sleeve', () => {
  // contract: "with seat 0 and no sleeve hole is not read: board hole is then required and stands for it in bearing ring, landing ring"
  const ON_BOARD: Inputs = { seat: '0 mm', 'set torque': 0.3, friction: 0.2 };
  const READ = ['bearing ring', 'landing ring', 'clamp force', 'bearing pressure'];

  test('asks for the board hole', () => {
    for (const output of READ) {
      expect(of(ON_BOARD, output), output).toMatch(/^no value: board hole must be given: /);
      expect(of({ ...ON_BOARD, 'board hole': 3.4 }, output), output).toBeTypeOf('number');
    }
    const states = (change: Inputs): unknown => (of(change, 'all computed') ? of(change, 'state') : 'not all computed');
    const PASSING: Inputs = { seat: '0 mm', length: 13, 'hole depth': 14.7 };
    expect(states(PASSING)).toBe('not all computed');
    expect(of(PASSING, 'state')).toBe('not checked');
    expect(of(PASSING, 'reason')).toContain('board hole must be given');
    expect(states({ ...PASSING, 'board hole': 3.4 })).toBe('pass');
  });

  test('with a sleeve, or with a seat, it does not', () => {
    for (const change of [
      { ...ON_BOARD, sleeve: 2 },
      { ...ON_BOARD, seat: 2 },
    ]) {
      for (const output of READ) expect(of(change, output), output).toBeTypeOf('number');
      expect(of(change, 'board hold')).toBe('no value: does not apply: no board hole is given');
    }
  });
});

describe('the mouth of the boss', () => {
  test('is the relief where there is one, else the pilot', () => {
    close({}, 'boss wall', (6 - 3.1) / 2);
    close({ relief: '0 mm' }, 'boss wall', (6 - 2.46) / 2);
    close({ relief: '0 mm', 'pilot held at': 'mid' }, 'pilot mouth', 2.46 + 2 * ((16 - 4.1 - 2.6) / 2) * tan(0.25));
    close({ 'pilot held at': 'mid' }, 'pilot mouth', 2.46 + 2 * (0.8 + (16 - 4.1 - 0.8 - 2.6) / 2) * tan(0.25));
  });
});

describe('the seat', () => {
  test.each([
    [3, 'ST2.9', 2.4],
    [1.5, 'ST2.9', 2.9 * 0.6],
    [1.5, 'ST2.2', 1.5],
  ])('default on a wall of %s with %s: the largest of 0.8 · wall, 0.6 · d and 1.5', (wall, screw, seat) =>
    close({ wall, screw, seat: 'default', board: 0 }, 'grip', seat),
  );

  test('without one, and under a cone, the head shears through nothing', () => {
    expect(of({ seat: '0 mm' }, 'seat shear')).toBe('no value: does not apply: the head lies on the board (seat "0 mm")');
    expect(of({ head: 'countersunk' }, 'seat shear')).toBe('no value: does not apply: a countersunk head bears on a cone');
    expect(of({}, 'seat shear')).toBeGreaterThan(0);
  });
});

test('the weakest of pull-out, boss tear and seat shear is the smallest of those that apply', () => {
  const NAMES = ['pull-out', 'boss tear', 'seat shear'];
  const found = [
    {},
    { length: 9.5, 'boss OD': 8, seat: 2.5 },
    { 'boss OD': 3.6 },
    { seat: 0.5, 'board plane': 4 },
    { seat: '0 mm', length: 13 },
    { head: 'countersunk' },
    { seat: '0 mm', 'boss OD': 3.6 },
    { head: 'countersunk', 'boss OD': 3.6 },
  ].map(change => {
    const numbers = NAMES.map(name => [name, of(change, name)] as const).filter(
      (pair): pair is readonly [string, number] => typeof pair[1] === 'number',
    );
    const [first] = [...numbers].sort((a, b) => a[1] - b[1]);
    expect(of(change, 'weakest'), JSON.stringify(change)).toBe(first?.[0]);
    return first?.[0];
  });
  expect(new Set(found)).toEqual(new Set(NAMES));
});

describe('remedies by hand: the nearest multiple of 0.05 on the passing side, or the nearest length that is sold', () => {
  const remedy = (change: Inputs, rule: string): unknown =>
    (value('CHECK.JOINT', Object.entries({ ...SOUND, ...change })) as Rows).find(row => row[0] === rule)?.[6];
  test.each<[string, Inputs, string]>([
    ['engagement', { length: 13 }, 'length 16 mm'],
    // 12.96 + 1 + 0.1 is needed; a seat thicker by 0.16 takes as much
    ['a standard length exists', { length: 'default', 'hole depth': 13.9 }, 'hole depth 14.1 mm; or seat 2.7 mm'],
    ['screw clears the bottom', { 'hole depth': 13.9 }, 'hole depth 14.1 mm'],
    // 0.2 + 2.4 of head + 2.6 of seat + 0.1
    ['head hidden', { 'board plane': 4.8 }, 'board plane 5.3 mm'],
    ['screw passes the hole', { hole: 2.9 }, 'hole 3.05 mm'],
    // 2.76 − 0.05 − 0.15 · 0.72 = 2.602, and no farther than 0.1
    ['thread bites at the mouth', { pilot: 2.7 }, 'pilot 2.6 mm'],
    ['planned gap (boss hangs in tension)', { gap: 0.1 }, 'gap 0 mm'],
    ['slenderness', { 'slender limit': 2.3 }, 'boss OD 6.1 mm (steel-safe); or boss height 13.8 mm'],
  ])('%s with %j: %s', (rule, change, said) => expect(remedy(change, rule)).toBe(said));
});

describe('where the card takes its sources from', () => {
  const source = (name: string): unknown => (value('JOINT.CARD', Object.entries(SOUND)) as Rows).find(row => row[0] === name)?.[5];
  test.each([
    ['grip', 'geometry: plane geometry'],
    ['feature wall', 'common practice'],
    ['weakest', 'plane geometry'],
  ])('%s: %s', (name, words) => expect(source(name)).toBe(words));

  test('a handbook formula names its book', () => expect(source('pull-out')).toMatch(/^handbook formula: .+/));
});
