// Slopes against derivatives that are written down, and against differences of JOINT.VALUE.
import { describe, expect } from 'vitest';
import { refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { DEMO, inputsOf, rowOf, table, valueOf } from '../../kit/study';

const test = refereed('joint/study/sensitivity.test.ts');

const ofOutput = (output: string, joint = DEMO): unknown[][] => table('JOINT.SENSITIVITY', inputsOf(joint), output).slice(1);
const slope = (output: string, input: string): unknown => rowOf(ofOutput(output), input)[4];

const PER_DEGREE = Math.PI / 180;
const sec2 = (deg: number): number => 1 / Math.cos(deg * PER_DEGREE) ** 2;
const tan = (deg: number): number => Math.tan(deg * PER_DEGREE);

describe('exact derivatives of five outputs', () => {
  test.each([
    // 16 − t − grip − relief − point; a board has a tenth of itself for a tolerance
    ['engagement min', 'length', 1],
    ['engagement min', 'seat', -1],
    ['engagement min', 'board', -1.1],
    ['engagement min', 'relief tolerance', -1],
    ['engagement min', 'point', -1],
    // OD + 2·h·tan α
    ['boss OD root', 'boss OD', 1],
    ['boss OD root', 'boss height', 2 * tan(0.5)],
    ['boss OD root', 'outside draft', 2 * 14 * sec2(0.5) * PER_DEGREE],
    // head + allowance + 2·(plane − seat)·tan α
    ['recess mouth', 'board plane', 2 * tan(1)],
    ['recess mouth', 'seat', -2 * tan(1)],
    ['recess mouth', 'recess draft', 2 * 3 * sec2(1) * PER_DEGREE],
    // h ÷ OD
    ['slenderness', 'boss height', 1 / 6.4],
    ['slenderness', 'boss OD', -14 / 6.4 ** 2],
    // depth ÷ pilot
    ['pin ratio', 'hole depth', 1 / 2.4],
    ['pin ratio', 'pilot', -14.75 / 2.4 ** 2],
  ])('%s by %s', (output, input, exact) => {
    expect(Math.abs((slope(output, input) as number) / exact - 1)).toBeLessThan(1e-8);
  });
});

describe('differences of JOINT.VALUE', () => {
  const H = 1e-4;
  test.each(['thread share min', 'root circle', 'post wall root', 'boss mass', 'pilot bottom'])(
    '%s by every input of the joint',
    output => {
      const joint = { ...DEMO, material: 'ABS' };
      const rows = ofOutput(output, joint);
      let compared = 0;
      for (const [input, given] of Object.entries(joint)) {
        if (typeof given !== 'number') continue;
        const at = (value: number): number => valueOf({ ...joint, [input]: value }, output) as number;
        const difference = (8 * (at(given + H) - at(given - H)) - (at(given + 2 * H) - at(given - 2 * H))) / (12 * H);
        const found = (rowOf(rows, input)[4] ?? 0) as number;
        expect(Math.abs(found - difference), input).toBeLessThan(1e-6 * Math.max(1, Math.abs(difference)));
        if (found !== 0) compared++;
      }
      expect(compared).toBeGreaterThanOrEqual(output === 'thread share min' ? 1 : 2);
    },
  );
});

describe('what the tolerances make of it', () => {
  test('changes are slope times half width, largest first; shares are those of the variance', () => {
    const rows = ofOutput('engagement min');
    const changes = rows.map(row => row[5]).filter(change => change !== '–') as number[];
    expect(changes).toEqual([...changes].sort((a, b) => b - a));
    // 0.8, 1.1 · 0.16, 0.1 and 0.1
    const whole = 0.8 ** 2 + (1.1 * 0.16) ** 2 + 2 * 0.1 ** 2;
    expect(rowOf(rows, 'length').slice(3)).toEqual([0.8, 1, 0.8, 0.8 ** 2 / whole].map(one => expect.closeTo(one, 9)));
    expect(rowOf(rows, 'seat').slice(3)).toEqual([0.1, -1, 0.1, 0.1 ** 2 / whole].map(one => expect.closeTo(one, 9)));
    expect(rowOf(rows, 'seat tolerance').slice(3)).toEqual(['–', expect.closeTo(-1, 8), '–', '–']);
  });

  test('only what the output feels', () => {
    expect(ofOutput('slenderness').map(([name]) => name)).toEqual(['boss OD', 'boss height']);
  });
});

describe('corners, ends and jumps', () => {
  test('a corner: the steeper slope', () => {
    // seat: the larger of 0.8·head wall and 1.5 or 0.6·d
    const { seat: _, ...open } = DEMO;
    const rows = ofOutput('grip', { ...open, 'head wall': (0.6 * 2.9) / 0.8 } as unknown as typeof DEMO);
    expect(rowOf(rows, 'head wall')[4]).toBeCloseTo(0.8, 8);
  });

  test('where the ratio begins its slope has no end: that of circle ÷ wall is given', () => {
    const circle = rowOf(ofOutput('root circle'), 'boss OD')[4] as number;
    expect(rowOf(ofOutput('sink ratio'), 'boss OD')[4]).toBeCloseTo(circle / 2.5, 8);
  });

  test('a gap that begins brings its tolerance at once: the slope beyond', () => {
    expect(rowOf(ofOutput('engagement min'), 'gap').slice(2, 5)).toEqual([0, 0, expect.closeTo(-1, 8)]);
  });
});

test('what is no number is refused, and what has none', () => {
  expect(refusal('JOINT.SENSITIVITY', inputsOf(DEMO), 'state')).toContain('state is not a number');
  expect(refusal('JOINT.SENSITIVITY', inputsOf(DEMO), 'board hold')).toContain(
    'board hold has no value: does not apply: no board hole is given',
  );
  expect(refusal('JOINT.SENSITIVITY', inputsOf(DEMO), 'sink')).toContain('not a name of a joint output');
});
