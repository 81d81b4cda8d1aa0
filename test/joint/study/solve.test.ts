// What is solved is put back: the output has its target there.
import { describe, expect } from 'vitest';
import { number, refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { DEMO, inputsOf, valueOf } from '../../kit/study';

const test = refereed('joint/study/solve.test.ts');

const solve = (name: string, output: string, target: unknown): number => number('JOINT.SOLVE', inputsOf(DEMO), name, output, target);

describe('put back, it gives the target', () => {
  const CASES: readonly (readonly [name: string, output: string, targets: readonly number[]])[] = [
    ['seat', 'engagement min', [7, 7.34, 8, 0, -1]],
    ['boss OD', 'sink ratio', [0.5, 0.6, 0.8, 1.2]],
    ['wall', 'sink ratio', [0.5, 0.7, 1]],
    ['outside draft', 'boss OD root', [6.5, 6.7, 7]],
    ['pilot', 'thread share min', [0.2, 0.5, 0.9]],
    ['hole depth', 'margin', [0.05, 0.02]],
    ['boss height', 'slenderness', [1, 3, 5]],
    ['hole draft', 'pilot bottom', [2, 2.2]],
    ['board plane', 'subflush min', [0, 0.25, 2]],
  ];
  test.each(CASES.flatMap(([name, output, targets]) => targets.map(target => [name, output, target] as const)))(
    '%s for %s of %f',
    (name, output, target) => {
      const found = solve(name, output, target);
      expect(valueOf({ ...DEMO, [name]: found }, output)).toBeCloseTo(target, 9);
      // solved from there it stays there
      expect(number('JOINT.SOLVE', inputsOf({ ...DEMO, [name]: found }), name, output, target)).toBeCloseTo(found, 9);
    },
  );
});

test('by hand: seat 2.5 leaves 7.34, so 7 is left by 2.84; a target takes its unit; a blank is 0', () => {
  expect(solve('seat', 'engagement min', 7)).toBeCloseTo(2.84, 10);
  expect(solve('seat', 'engagement min', '0.25 in')).toBeCloseTo(2.5 + 7.34 - 6.35, 10);
  expect(solve('seat', 'engagement min', null)).toBeCloseTo(2.5 + 7.34, 10);
});

test('what has its target already stays', () => {
  expect(solve('seat', 'grip', 4.1)).toBe(2.5);
});

describe('refused with what is reached', () => {
  test.each([
    ['boss OD', 'engagement min', 5, 'it reaches 7.34 to 7.34 mm'],
    ['seat', 'engagement min', 20, 'it reaches -18.76 to 9.94 mm'],
    ['wall', 'state', 1, 'state is not a number'],
    ['screw', 'grip', 1, 'screw has no number in this joint that can be moved'],
    ['seat', 'grip', 'x', 'target'],
  ])('%s, %s, %s', (name, output, target, message) =>
    expect(refusal('JOINT.SOLVE', inputsOf(DEMO), name, output, target)).toContain(message),
  );

  test('a jump over the target is no answer: beyond 19 mm the length tolerance is 1.3 in place of 0.8', () => {
    // deepest reach 19 + 0.8 − 3.84 = 15.96, and from there on 16.46
    expect(solve('length', 'penetration max', 15.9)).toBeCloseTo(18.94, 9);
    expect(solve('length', 'penetration max', 16.5)).toBeCloseTo(19.04, 9);
    expect(refusal('JOINT.SOLVE', inputsOf(DEMO), 'length', 'penetration max', 16.2)).toContain('does not reach it');
  });
});
