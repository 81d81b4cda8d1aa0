// Windows against rules that are solved by hand, and against grids that know nothing of how they are found.
import { describe, expect } from 'vitest';
import { JOINT_INPUT_NAMES } from '../../../src/joint/inputs';
import { refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { DEMO, inputsOf, type JointInputs, rowOf, table } from '../../kit/study';

const test = refereed('joint/study/window.test.ts');

const windowOf = (name: string, joint: JointInputs = DEMO): readonly unknown[] =>
  rowOf(table('JOINT.WINDOW', inputsOf(joint), [[name]]), name);

const TAN_HALF = Math.tan(Math.PI / 360);
const D = 2.9;

/**
 * Each line is one rule of the demo's joint, solved for one input. Grip max 2.5 + 0.1 + 1.6 + 0.16 = 4.36, min 3.84; deepest reach
 * 16 + 0.8 − 3.84 = 12.96; least full thread 16 − 0.8 − 4.36 − 0.9 − 2.6 = 7.34; 2 d = 5.8.
 */
const BY_HAND: readonly (readonly [name: string, side: 'low' | 'high', end: number, rule: string])[] = [
  ['length', 'low', 16 - (7.34 - 2 * D), 'engagement'],
  ['length', 'high', 14.65 - 0.8 + 3.84, 'screw clears the bottom'],
  ['hole depth', 'low', 12.96 + 0.1, 'screw clears the bottom'],
  ['hole depth', 'high', 2.5 + 14 - 0.1 - 0.4 * 2.5, 'floor under the hole'],
  ['seat', 'low', 0.8 + 0.1, 'seat holds'],
  ['board plane', 'low', 2.5 + 0.1 + 0.1 + 2.4, 'head hidden'],
  ['relief', 'high', 0.8 + (7.34 - 2 * D), 'engagement'],
  ['hole', 'high', 5.3 - 2 * 0.3 - 0.1, 'head bears on its seat'],
  ['boss OD', 'low', 2 * 0.5 + 3.5, 'landing ring'],
  ['ring depth', 'high', 0.6 * 2.5, 'wall under the groove'],
  ['ratio', 'high', 7.34 / D, 'engagement'],
  ['pilot', 'high', 2.76 - 0.05 - 0.1 * (2.9 - 2.18), 'thread bites at the mouth'],
];

describe('one rule solved by hand', () => {
  test.each(BY_HAND)('%s, its %s end', (name, side, end, rule) => {
    const row = windowOf(name);
    expect(row[side === 'low' ? 3 : 4]).toBeCloseTo(end, 6);
    expect(row[side === 'low' ? 5 : 6]).toBe(rule);
  });

  test('what passes: room of the bottom gap under the tip, and 0.6 of the wall under the hole', () => {
    expect(windowOf('hole depth').slice(7)).toEqual([expect.closeTo(12.96 + 0.1 + 1, 6), expect.closeTo(16.5 - 0.1 - 0.6 * 2.5, 6)]);
  });

  test('a boss wall drafted over its height: steel of 1.5 mm left', () => {
    const row = windowOf('steel gap', { ...DEMO, 'steel gap': 5 });
    expect(row[3]).toBeCloseTo(1.5 + 2 * 14 * TAN_HALF, 6);
    expect(row[5]).toBe('steel beside the boss');
  });
});

describe('where the present value stands', () => {
  test('a limit of the input itself is an end that may be reached; without any there is none', () => {
    expect(windowOf('seat tolerance').slice(3, 7)).toEqual([0, expect.closeTo(0.5, 6), '–', 'head hidden']);
    expect(windowOf('slender limit').slice(3, 7)).toEqual(['–', '–', '–', '–']);
  });

  test('another stretch that holds is told: a sleeve is none at all, or carries the clamp from 1.6 − 0.16 − 0.1', () => {
    expect(windowOf('sleeve').slice(3, 7)).toEqual([0, 0, '–', 'sleeve carries the clamp; holds again from 1.34']);
  });

  test('a joint that fails now has no window, and is told where it would hold', () => {
    expect(windowOf('seat', { ...DEMO, seat: 3.2 }).slice(3)).toEqual([
      '–',
      '–',
      'fails now: head hidden; holds again up to 2.9',
      'fails now: head hidden',
      '–',
      '–',
    ]);
  });

  test('where another rule fails no move helps', () => {
    expect(windowOf('wall', { ...DEMO, length: 13 }).slice(3)).toEqual(['–', '–', 'fails now: engagement', '–', '–', '–']);
  });

  test('the nearest stretch that passes, where the present value is to be reviewed', () => {
    expect(windowOf('hole depth', { ...DEMO, 'hole depth': 13.5 }).slice(3)).toEqual([
      expect.closeTo(13.06, 6),
      expect.closeTo(15.4, 6),
      'screw clears the bottom',
      'floor under the hole',
      expect.closeTo(14.06, 6),
      expect.closeTo(14.9, 6),
    ]);
  });
});

const GRIDS = ['boss OD', 'wall', 'seat', 'pilot', 'hole depth', 'boss height', 'relief diameter', 'hole draft', 'post OD', 'length'];
const POINTS = 10_000;

/** The ends of the stretch of good points round the present value; beyond the grid nothing is said. */
function ends(good: readonly boolean[], numbers: readonly number[], now: number): readonly [number | undefined, number | undefined] {
  const middle = numbers.findIndex(number => number >= now);
  const [low, high] = [good.lastIndexOf(false, middle), good.indexOf(false, middle)];
  return [low < 0 ? undefined : numbers[low + 1], high < 0 ? undefined : numbers[high - 1]];
}

describe('a grid of 100,000 joints through JOINT.TABLE', () => {
  test.each(GRIDS)('%s on a grid', name => {
    const [, , now, low, high, , , passLow, passHigh] = windowOf(name) as number[];
    const step = (4 * (now as number)) / POINTS;
    const numbers = Array.from({ length: POINTS }, (_, i) => (i + 0.5) * step);
    const joints = [[...Object.keys(DEMO).filter(one => one !== name), name]].concat(
      numbers.map(number => [...Object.entries(DEMO).flatMap(([one, given]) => (one === name ? [] : [given])), number] as never[]),
    );
    const states = table('JOINT.TABLE', joints, [['state']])
      .slice(1)
      .map(([state]) => state);
    const compare = (good: readonly boolean[], lowEnd: unknown, highEnd: unknown): void => {
      const found = ends(good, numbers, now as number);
      [lowEnd, highEnd].forEach((end, i) => {
        if (found[i] === undefined) return;
        expect(Math.abs((end as number) - found[i])).toBeLessThan(step * 1.001);
      });
    };
    compare(
      states.map(state => state === 'pass' || state === 'review'),
      low,
      high,
    );
    if (states[numbers.findIndex(number => number >= (now as number))] === 'pass')
      compare(
        states.map(state => state === 'pass'),
        passLow,
        passHigh,
      );
    expect(new Set(states).size).toBeGreaterThan(1);
  });
});

describe('what is asked for', () => {
  test('names left out: every number that a rule can feel', () => {
    const names = table('JOINT.WINDOW', inputsOf(DEMO))
      .slice(1)
      .map(([name]) => name as string);
    expect(names.length).toBeGreaterThan(40);
    expect(names.filter(name => !JOINT_INPUT_NAMES.includes(name))).toEqual([]);
    for (const without of ['screw', 'thread share', 'load', 'common share', 'root fillet', 'insert length'])
      expect(names).not.toContain(without);
  });

  test('what cannot be moved is refused by its name', () => {
    expect(refusal('JOINT.WINDOW', inputsOf(DEMO), [['screw']])).toContain('screw has no number in this joint that can be moved');
    expect(refusal('JOINT.WINDOW', inputsOf(DEMO), [['load']])).toContain('load has no number in this joint');
    expect(refusal('JOINT.WINDOW', inputsOf(DEMO), [['wal']])).toContain('did you mean "wall"');
    expect(refusal('JOINT.WINDOW', [['wall'], [2], [3]], null)).toContain('inputs has 2 variants; give one');
  });

  test('a number that no rule feels stands there without a window', () => {
    expect(windowOf('common share').slice(2)).toEqual([0, '–', '–', '–', '–', '–', '–']);
  });
});
