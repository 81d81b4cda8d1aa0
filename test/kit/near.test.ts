import { expect, test } from 'vitest';
import { expectPrinted } from './near';

test.each<[actual: unknown, printed: unknown]>([
  [2.395, '2.40'],
  [2.404, '2.40'],
  [2.449, '2.4'],
  [3.4, '3'],
  [-0.0355, '-.035'],
  [2.4, 2.4],
  [0.1 + 0.2, 0.3],
  ['fail', 'fail'],
  [[[2.404, 'pass']], [['2.40', 'pass']]],
])('%j is printed as %j', (actual, printed) => expectPrinted(actual, printed));

test.each<[actual: unknown, printed: unknown]>([
  [2.406, '2.40'],
  [2.394, '2.40'],
  [2.96, '3.00'],
  [3.2, 3],
  [2.4001, 2.4],
  [3, 'three'],
  ['3', 3],
  [NaN, '3'],
  [[2.4], ['2.40', '2.40']],
  [
    [2.4, 2.5],
    ['2.40', '2.40'],
  ],
])('%j is not printed as %j', (actual, printed) => expect(() => expectPrinted(actual, printed)).toThrow());
