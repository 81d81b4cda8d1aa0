// Simulated joints against stacks that the joint is reduced to, the worst case, and counts that must not change.
import { describe, expect } from 'vitest';
import { CARDS } from '../../../src/registry';
import { refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { DEMO, inputsOf, type JointInputs, rowOf, table } from '../../kit/study';

const test = refereed('joint/study/simulate.test.ts');

const simulate = (joint: JointInputs, samples = 20_000, seed = 1): unknown[][] =>
  table('JOINT.SIMULATE', inputsOf(joint), samples, seed).slice(1);

/** Standard normal probability below z. */
function phi(z: number): number {
  let [sum, term] = [z, z];
  for (let k = 1; k < 200; k++) sum += term *= (z * z) / (2 * k + 1);
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
/** Of a normal distribution cut at ±3, the variance as a share of what it was. */
const CUT_VARIANCE = 1 - (2 * 3 * Math.exp(-4.5)) / Math.sqrt(2 * Math.PI) / (2 * phi(3) - 1);

const EXACT = Object.fromEntries(
  ['board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'hole depth', 'length'].map(name => [`${name} tolerance`, '0 mm']),
);

/** Only the hole depth is drawn, ± 1: bottom clearance is exact but for it. */
const ONE_LINK: JointInputs = { ...DEMO, ...EXACT, 'hole depth tolerance': 1, 'hole depth': 12.5 };

describe('where the joint is a stack', () => {
  test('one link: the share below the limit is that of the cut normal distribution', () => {
    // clearance 12.5 − (16 − 4.1) = 0.6 nominal, fails below 0: z = −1.8
    const samples = 200_000;
    const row = rowOf(simulate(ONE_LINK, samples), 'screw clears the bottom');
    const expected = (phi(3) - phi(-1.8)) / (2 * phi(3) - 1);
    expect(Math.abs((row[1] as number) - expected)).toBeLessThan(5 * Math.sqrt((expected * (1 - expected)) / samples));
    expect(row[2]).toBeCloseTo((1 - (row[1] as number)) * 1e6, 6);
    expect(row[4]).toBeCloseTo(0.6, 2);
    expect(row[3]).toBeGreaterThanOrEqual(-0.4);
    expect(row[5]).toBeLessThanOrEqual(1.6);
  });

  test('four links: as STACK.SIMULATE says it of the same stack', () => {
    const samples = 200_000;
    const tolerances = { 'hole depth tolerance': 0.5, 'length tolerance': 0.4, 'seat tolerance': 0.3, 'board tolerance': 0.3 };
    const joint: JointInputs = { ...DEMO, ...EXACT, ...tolerances, 'hole depth': 12.2 };
    const row = rowOf(simulate(joint, samples), 'screw clears the bottom');
    // hole depth + seat + board − length against 0, each ±3σ
    const stack = table(
      'STACK.SIMULATE',
      [[12.2], [2.5], [1.6], [16]],
      [[0.5], [0.3], [0.3], [0.4]],
      [[1], [1], [1], [-1]],
      '0 mm',
      'none',
      samples,
    );
    const [ours, theirs] = [row[1] as number, rowOf(stack, 'share inside')[1] as number];
    const sigma = Math.sqrt(0.25 + 0.09 + 0.09 + 0.16) / 3;
    // draws of the stack are not cut: its deviation is larger by this
    const cut = phi(0.3 / (sigma * Math.sqrt(CUT_VARIANCE))) - phi(0.3 / sigma);
    expect(Math.abs(ours - theirs - cut)).toBeLessThan(5 * Math.sqrt((2 * theirs * (1 - theirs)) / samples) + 0.001);
    expect(ours).toBeLessThan(0.9);
    expect(row[4]).toBeCloseTo(rowOf(stack, 'mean')[1] as number, 2);
  });

  test('Shigley’s Ex. 1–3, p. 20 (read in 1 secondary copy), in inches: w = a − b − c − d = .005 ± .010, 3σ parts give 6210 ppm below 0', () => {
    const inch = (size: number): string => `${size} in`;
    const joint: JointInputs = {
      ...DEMO,
      ...EXACT,
      length: inch(1.75),
      'length tolerance': inch(0.003),
      seat: inch(0.75),
      'seat tolerance': inch(0.001),
      board: inch(0.12),
      'board tolerance': inch(0.005),
      'hole depth': inch(0.885),
      'hole depth tolerance': inch(0.001),
      'boss height': 40,
      'board plane': 30,
    };
    const samples = 200_000;
    const row = rowOf(simulate(joint, samples), 'screw clears the bottom');
    // the same four blocks, .885 for .875: .005 in of room again, of the other sign
    expect(row[4]).toBeCloseTo(0.005 * 25.4, 2);
    expect(row[3]).toBeGreaterThan(-0.005 * 25.4);
    const sigma = Math.sqrt(0.003 ** 2 + 0.001 ** 2 + 0.005 ** 2 + 0.001 ** 2) / 3;
    const exact = phi(-0.005 / (sigma * Math.sqrt(CUT_VARIANCE)));
    expect(Math.abs((row[2] as number) / 1e6 - exact)).toBeLessThan(5 * Math.sqrt(exact / samples) + 0.0015);
  });
});

describe('against the worst case', () => {
  test('no draw is beyond it, and each rule is judged without it', () => {
    const rows = simulate(DEMO);
    const worst = table('CHECK.JOINT', inputsOf(DEMO)).slice(1);
    let compared = 0;
    for (const [rule, value] of worst) {
      const [, , , least, , largest] = rowOf(rows, rule as string);
      if (typeof least !== 'number' || typeof value !== 'number') continue;
      compared++;
      expect(least, rule as string).toBeLessThanOrEqual(largest as number);
      if (
        ['engagement', 'head hidden', 'seat holds', 'screw clears the bottom', 'floor under the hole', 'landing ring'].includes(
          rule as string,
        )
      )
        expect(least, rule as string).toBeGreaterThanOrEqual(value - 1e-9);
    }
    expect(compared).toBeGreaterThan(10);
  });

  test('the three ways on the demo, as its help compares them', () => {
    // 16 − (2.5 + 1.6) − 0.8 − 2.6 nominal; ± 0.8, 0.1, 0.16 and 0.1
    const halves = [0.8, 0.1, 0.16, 0.1];
    const worstMm = 8.5 - halves.reduce((sum, half) => sum + half, 0);
    const rootSumSquareMm = 8.5 - Math.hypot(...halves);
    const leastMm = (rowOf(simulate(DEMO), 'engagement')[3] as number) * 2.9;
    const said = `${worstMm.toFixed(2)} mm at worst case, ${rootSumSquareMm.toFixed(2)} by root sum square and ${leastMm.toFixed(2)} among 20,000 draws`;
    expect(CARDS.get('JOINT.SIMULATE')?.caution).toContain(said);
  });

  test('a joint that fails at its worst case is good most of the time', () => {
    const joint = { ...DEMO, 'hole depth': 12.6, relief: 2.4 };
    expect(rowOf(table('CHECK.JOINT', inputsOf(joint)), 'screw clears the bottom')[4]).toBe('fail');
    const rows = simulate(joint);
    expect(rowOf(rows, 'screw clears the bottom')[1]).toBeGreaterThan(0.98);
    expect(rowOf(rows, 'screw clears the bottom')[1]).toBeLessThan(1);
    expect(rowOf(rows, 'engagement')[1]).toBeGreaterThan(0.98);
  });
});

describe('one tool moves its dimensions together', () => {
  // wall of the post and of the recess, seat and board plane: the recess is the difference of two dimensions of one half
  const joint: JointInputs = { ...DEMO, seat: 2.85, 'seat tolerance': 0.3, 'board plane tolerance': 0.3, 'common share': 0.5 };

  test('a difference of two of one half gets narrower, which nothing in common does not show', () => {
    const rows = simulate(joint);
    const share = (name: string): number => rowOf(rows, name)[1] as number;
    expect(share('all rules (common share 1)')).toBeGreaterThan(share('all rules'));
    expect(share('all rules')).toBeGreaterThan(share('all rules (common share 0)'));
  });

  test('the row of the joint is that of its share', () => {
    for (const common of [0, 1]) {
      const rows = simulate({ ...joint, 'common share': common === 0 ? '0 %' : 1 });
      expect(rowOf(rows, 'all rules').slice(1)).toEqual(rowOf(rows, `all rules (common share ${common})`).slice(1));
    }
  });
});

describe('seeded', () => {
  test('the same seed gives the same answer, another one another', () => {
    const joint = { ...DEMO, 'hole depth': 12.6 };
    expect(simulate(joint)).toEqual(simulate(joint));
    expect(simulate(joint, 20_000, 2)).not.toEqual(simulate(joint));
  });

  test('counts of seed 1, the same everywhere', () => {
    const counts = simulate({ ...DEMO, 'hole depth': 12.4, relief: 2.6, 'board plane': 5.2, wall: 4, 'ring depth': 2 }).map(
      ([rule, share]) => [rule, Math.round((share as number) * 20_000)],
    );
    expect(counts.filter(([, count]) => count !== 20_000)).toMatchInlineSnapshot(`
      [
        [
          "engagement",
          19997,
        ],
        [
          "screw clears the bottom",
          19293,
        ],
        [
          "all rules",
          19290,
        ],
        [
          "all rules (common share 0)",
          19290,
        ],
        [
          "all rules (common share 1)",
          19287,
        ],
      ]
    `);
  });
});

test('rules that apply and can fail, in their order, then all of them', () => {
  const rows = simulate(DEMO, 1000).map(([rule]) => rule);
  const fails = table('CHECK.JOINT', inputsOf(DEMO))
    .slice(1)
    .map(([rule]) => rule);
  expect(rows).toEqual([...fails, 'all rules', 'all rules (common share 0)', 'all rules (common share 1)']);
});

test('an insert, a countersunk head and a head on the board are drawn too', () => {
  const insert = {
    ...DEMO,
    screw: 'M3',
    head: 'ISO 7045',
    'insert diameter': 4.2,
    'insert length': 5,
    'boss OD': 8.4,
    length: 12,
    'hole depth': 12,
  };
  for (const name of ['relief', 'pilot', 'pilot held at']) delete (insert as Record<string, unknown>)[name];
  expect(rowOf(simulate(insert as JointInputs, 1000), 'insert not drawn out')[1]).toBe(1);
  const cone = simulate({ ...DEMO, head: 'ISO 7050', seat: 4, 'board plane': 6 }, 1000);
  expect(rowOf(cone, 'seat under the cone')[5]).toBeGreaterThan(rowOf(cone, 'seat under the cone')[3] as number);
  const onBoard = simulate({ ...DEMO, seat: '0 mm', 'board hole': 3.4 }, 1000);
  expect(rowOf(onBoard, 'all rules')[1]).toBeGreaterThan(0);
});

test('a rule that has no value in the joint is not checked, and so is what is said of all of them', () => {
  const { hole: _, ...open } = DEMO;
  const rows = simulate(open, 1000);
  const states = table('CHECK.JOINT', inputsOf(open)).slice(1);
  let unchecked = 0;
  for (const [rule, , , , state] of states) {
    const share = rowOf(rows, rule as string)[1];
    if (state === 'not checked') unchecked++;
    expect(share === 'not checked', rule as string).toBe(state === 'not checked');
    if (state === 'pass') expect(share, rule as string).toBeGreaterThan(0.9);
  }
  expect(unchecked).toBe(5);
  for (const row of rows.slice(-3)) expect(row.slice(1)).toEqual(['not checked', '–', '–', '–', '–']);
});

test('refused: too few or too many, no joint', () => {
  expect(refusal('JOINT.SIMULATE', inputsOf(DEMO), 999)).toContain('samples');
  expect(refusal('JOINT.SIMULATE', inputsOf(DEMO), 200_001)).toContain('samples');
  expect(refusal('JOINT.SIMULATE', [['wal', 2]])).toContain('did you mean "wall"');
  expect(refusal('JOINT.SIMULATE', inputsOf({ ...DEMO, 'common share': 2 }))).toContain('common share');
});
