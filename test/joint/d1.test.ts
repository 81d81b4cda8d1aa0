// The greenhouse logger, figures worked by hand before the code was there:
// grip 2.5 + 1.6, relief 0.8, cone point 2.6, tolerances 0.8 + 0.1 + 0.16 + 0.1, hole depth 0.1.
import { describe, expect, test } from 'vitest';
import { OUTPUTS } from '../../src/joint/outputs';
import { call } from '../../src/registry';
import { expectPrinted } from '../kit/near';

const NAMES = [
  'screw',
  'head',
  'end',
  'length',
  'material',
  'wall',
  'board plane',
  'seat',
  'board',
  'hole',
  'relief',
  'pilot',
  'pilot held at',
  'boss OD',
  'boss height',
  'hole depth',
  'bottom gap',
];
const variant = (length: number | string, end = 'cone'): unknown[] => [
  'ST2.9',
  'ISO 7049',
  end,
  length,
  'ABS',
  2.5,
  5.5,
  2.5,
  1.6,
  3.4,
  0.8,
  2.4,
  'mouth',
  6.4,
  14,
  14.75,
  1,
];

function table(rows: unknown[][], outputs: string[]): unknown[][] {
  const answer = call('JOINT.TABLE', [[NAMES, ...rows], [outputs]]);
  if (!answer.ok) throw new Error(answer.message);
  return (answer.value as unknown[][]).slice(1);
}

describe('worst-case engagement by length', () => {
  test.each([
    [9.5, 2.0, 0.84, 7.56],
    [13, 5.5, 4.34, 11.06],
    [16, 8.5, 7.34, 14.06],
    [19, 11.5, 10.34, 17.06],
  ])('ST2.9 × %s cone', (length, nominal, worst, holeNeeded) => {
    expectPrinted(table([variant(length)], ['engagement', 'engagement min', 'hole depth needed']), [[nominal, worst, holeNeeded]]);
  });
});

describe('states', () => {
  const verdict = (length: number | string, end?: string): unknown[] => table([variant(length, end)], ['state', 'reason'])[0] as unknown[];
  test('first choice fails on engagement', () => {
    expect(verdict(13)[0]).toBe('fail');
    expect(verdict(13)[1]).toBe('too little full thread: needs engagement ratio at least 2, has 1.497');
  });
  test('one bottoms', () => {
    expect(verdict(19)).toEqual(['fail', 'screw bottoms: needs a hole 17.06 mm deep, has 14.75 mm']);
  });
  test('16 passes: its root of 2.187 on a wall of 2.5 stays below 1 behind a hidden face', () => {
    expect(verdict(16)).toEqual(['pass', '–']);
  });
  test('the default length is the shortest that holds and clears', () => {
    expect(table([variant('default')], ['screw length'])).toEqual([[16]]);
  });
});

test('every output has a value or says why not', () => {
  const answer = call('JOINT.TABLE', [[NAMES, variant(16)]]);
  if (!answer.ok) throw new Error(answer.message);
  const [header] = answer.value as unknown[][];
  expect(header?.length).toBe(OUTPUTS.length - 1); // every output but the remedy
});
