// Windows against rules that are solved by hand, and against grids that know nothing of how they are found.
import { describe, expect } from 'vitest';
import { JOINT_INPUT_NAMES } from '../../../src/joint/inputs';
import { rowByRow } from '../../../src/joint/rows';
import { draws } from '../../../src/core/tolerance/draws';
import { refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { SEED } from '../../kit/seed';
import { DEMO, inputsOf, type JointInputs, rowOf, table, valueOf } from '../../kit/study';

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

  test('a small value is looked at as far as a large one', () => {
    for (const relief of [0.1, 0.001, 1e-6]) {
      const row = windowOf('relief', { ...DEMO, relief });
      expect([row[4], row[6]]).toEqual([expect.closeTo(0.8 + (7.34 - 2 * D), 6), 'engagement']);
    }
    expect(windowOf('seat', { ...DEMO, seat: 1e-6 })[6]).toBe('fails now: seat holds; holds again from 0.9');
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

/** Sizes of a joint within a tenth of the demo's, some of them left to their defaults, with what else a joint may have. */
function drawn(random: () => number): JointInputs {
  const near = (size: number): number => Number((size * (0.9 + 0.2 * random())).toFixed(3));
  const joint: Record<string, string | number> = { ...DEMO, material: 'ABS' };
  for (const name of ['wall', 'board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'boss OD', 'boss height', 'hole depth'] as const)
    joint[name] = near(DEMO[name]);
  for (const name of ['length', 'seat', 'pilot', 'boss OD', 'hole depth', 'bottom gap']) if (random() < 0.4) delete joint[name];
  const more: readonly JointInputs[] = [
    { head: 'countersunk' },
    { 'board hole': near(4.5) },
    { sleeve: near(1.7), 'board hole': near(6) },
    { gap: near(0.2) },
    { 'steel gap': near(5) },
    { friction: near(0.2), 'drive torque': near(0.2), 'set torque': near(0.5) },
  ];
  return Object.assign(joint, ...more.filter(() => random() < 0.2)) as JointInputs;
}

const [JOINTS, STEPS] = [10, 500];
const isGood = (state: unknown): boolean => state === 'pass' || state === 'review';

describe('every number of joints that are drawn, on grids through JOINT.TABLE', () => {
  /** The first of a row of draws that no rule fails. */
  const joint = (seed: number): JointInputs => {
    const draw = draws(seed, 'uniform');
    for (;;) {
      const one = drawn(() => (1 + draw()) / 2);
      if (isGood(valueOf(one, 'state'))) return one;
    }
  };
  const counts = { rows: 0, ends: 0, others: 0, narrow: 0 };

  test.each(Array.from({ length: JOINTS }, (__, i) => i + 1))('joint %d', i => {
    const whole = joint(SEED + i);
    for (const row of table('JOINT.WINDOW', inputsOf(whole)).slice(1)) {
      const [name, unit, now, low, high, below, above, passLow, passHigh] = row as [string, string, number, ...unknown[]];
      const others = Object.keys(whole).filter(one => one !== name);
      const beside = others.map(one => whole[one]);
      const statesAt = (numbers: readonly number[]): unknown[] =>
        table(
          'JOINT.TABLE',
          [[...others, name], ...numbers.map(number => [...beside, number === 0 && unit !== '–' ? `0 ${unit}` : number])],
          [['state', 'reasons']],
        )
          .slice(1)
          // a row to be reviewed may hide a rule that has no value
          .map(([state, reasons]) => (String(reasons).includes('not checked') ? 'not checked' : state));
      const size = now === 0 ? 1 : Math.abs(now);
      const step = (4 * size) / STEPS;
      const grid = Array.from({ length: STEPS }, (__, i) => Math.max(0, now - 2 * size) + (i + 0.5) * step);
      const numbers = [...grid.filter(at => at < now), now, ...grid.filter(at => at > now)];
      const states = statesAt(numbers);
      const good = states.map(isGood);
      const compare = (which: readonly boolean[], lowEnd: unknown, highEnd: unknown): void => {
        ends(which, numbers, now).forEach((found, side) => {
          if (found === undefined) return;
          const end = [lowEnd, highEnd][side];
          counts.ends++;
          if (typeof end !== 'number') {
            // nothing fails there: the input itself may not be more
            const outer = numbers[numbers.indexOf(found) + (side === 0 ? -1 : 1)] as number;
            expect(statesAt([outer]), name).toEqual(['not checked']);
            return;
          }
          const outwards = side === 0 ? -1 : 1;
          // a stretch that the grid steps over is looked at by itself
          if (outwards * (found - end) > 1e-9) {
            counts.narrow++;
            expect(isGood(statesAt([end + outwards * 1e-6])[0]), `${name} beyond ${end}`).toBe(false);
          } else expect(outwards * (end - found), `${name} to ${end}`).toBeLessThan(step * 1.001);
        });
      };
      compare(good, low, high);
      if (valueOf(whole, 'state') === 'pass')
        compare(
          states.map(state => state === 'pass'),
          passLow,
          passHigh,
        );
      [below, above].forEach((said, end) => {
        const there = end === 0 ? numbers.map((number, k) => number < now && good[k]) : numbers.map((number, k) => number > now && good[k]);
        const outer = there.filter((__, k) =>
          end === 0 ? (numbers[k] as number) < (low as number) - 1e-6 : (numbers[k] as number) > (high as number) + 1e-6,
        );
        const isSaid = String(said).includes('holds again');
        if (outer.includes(true)) expect(isSaid, `${name}: ${String(said)}`).toBe(true);
        if (!isSaid) return;
        const other = Number(/again (?:from|up to) (\S+)$/.exec(String(said))?.[1]);
        expect(statesAt([other - 2e-6, other - 1e-7, other, other + 1e-7, other + 2e-6]).map(isGood)).toContain(true);
        counts.others++;
      });
      counts.rows++;
    }
  });

  test('as many as there are', () => {
    expect(counts.rows).toBeGreaterThan(400);
    expect(counts.ends).toBeGreaterThan(150);
    expect(counts.others).toBeGreaterThan(10);
  });
});

const { length: _, ...PICKED } = DEMO;

/**
 * The length is picked. A board of up to 0.22 mm takes 13 mm: 13 − 0.8 − 2.6 − 0.08 − 0.9 − 2.6 − 5.8; one from 15.58 mm less the hole
 * takes 16 mm: 16.8 − 2.4 + 0.08 + 1 + 0.1. A seat from 0.9 mm holds, and takes 13 mm up to 1.84 mm less the relief.
 */
const NARROW: readonly (readonly [name: string, joint: JointInputs, low: number, other: number, wide: number])[] = [
  ...[0.01, 0.002, 0.0003].map(wide => ['board', { ...PICKED, 'hole depth': 15.58 - 0.22 - wide }, 0.22 + wide, 0.22, wide] as const),
  ...[0.01, 0.002, 0.0003].map(wide => ['seat', { ...PICKED, relief: 0.94 - wide }, 2.41, 0.9 + wide, wide] as const),
];

describe('a stretch narrower than a step, on a grid of 100,000 joints', () => {
  const FINE = 100_000;

  test.each(NARROW)('%s with %j', (name, joint, low, other, wide) => {
    const row = windowOf(name, joint);
    if (name === 'board') expect(row[3]).toBeCloseTo(low, 6);
    expect(Number(/holds again up to (\S+)$/.exec(String(row[5]))?.[1])).toBeCloseTo(other, 3);
    const now = row[2] as number;
    const { [name]: __, ...others } = joint;
    const numbers = Array.from({ length: FINE }, (___, i) => ((i + 0.5) * now) / FINE);
    const answer = rowByRow([...Object.keys(others), name], ['state']);
    const good = numbers.map(at => isGood(answer([...Object.values(others), at])[0]));
    const lastBad = good.lastIndexOf(false);
    expect(Math.abs((numbers[lastBad + 1] as number) - (row[3] as number))).toBeLessThan((1.001 * now) / FINE);
    const otherGood = good.lastIndexOf(true, lastBad);
    expect(Math.abs((numbers[otherGood] as number) - other)).toBeLessThan((1.001 * now) / FINE + 5e-5);
    expect(wide).toBeLessThan(0.011);
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
