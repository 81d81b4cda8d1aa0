// The greenhouse logger, figures worked by hand before the code was there:
// grip 2.5 + 1.6, relief 0.8, cone point 2.6, tolerances 0.8 + 0.1 + 0.16 + 0.1.
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
    [9.5, 2.0, 0.84, 7.46],
    [13, 5.5, 4.34, 10.96],
    [16, 8.5, 7.34, 13.96],
    [19, 11.5, 10.34, 16.96],
  ])('ST2.9 × %s cone', (length, nominal, worst, holeNeeded) => {
    expectPrinted(table([variant(length)], ['engagement', 'engagement min', 'hole depth needed']), [[nominal, worst, holeNeeded]]);
  });
});

describe('states', () => {
  const verdict = (length: number | string, end?: string): unknown[] => table([variant(length, end)], ['state', 'reason'])[0] as unknown[];
  test('first choice fails on engagement', () => {
    expect(verdict(13)[0]).toBe('fail');
    expect(verdict(13)[1]).toBe('engagement: engagement ratio 1.497 is below 2');
  });
  test('one bottoms', () => {
    expect(verdict(19)).toEqual(['fail', 'screw does not bottom: hole depth needed 16.96 mm is above 14.75 mm']);
  });
  test('16 is to be looked at for its sink on a hidden face', () => {
    expect(verdict(16)).toEqual(['look', 'sink: sink ratio 0.873 is above 0.6']);
  });
  test('the default length is the shortest that holds and clears', () => {
    expect(table([variant('default')], ['screw length'])).toEqual([[16]]);
  });
});

test('every output has a value or says why not', () => {
  const answer = call('JOINT.TABLE', [[NAMES, variant(16)]]);
  if (!answer.ok) throw new Error(answer.message);
  const [header] = answer.value as unknown[][];
  expect(header?.length).toBe(OUTPUTS.length);
});
