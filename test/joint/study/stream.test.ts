// A table longer than any sheet, studied a row at a time.
import { expect, test } from 'vitest';
import { jointMap, jointSolve, jointWindow, ofEachJoint } from '../../../src/library/index';
import { DEMO, inputsOf, rowOf } from '../../kit/study';

const NAMES = Object.keys(DEMO);

test('rows are taken as they are asked for, and each gives what it gives alone', () => {
  let taken = 0;
  const rows = function* (): Generator<unknown[]> {
    for (let i = 0; ; i++) {
      taken++;
      yield Object.values({ ...DEMO, seat: 2 + (i % 50) / 100 });
    }
  };
  let n = 0;
  for (const window of ofEachJoint(NAMES, rows(), inputs => jointWindow(inputs, [['hole depth']], undefined))) {
    const seat = 2 + (n % 50) / 100;
    // deepest reach 12.96 with a seat of 2.5
    expect(rowOf(window, 'hole depth')[3]).toBeCloseTo(12.96 + 2.5 - seat + 0.1, 6);
    if (++n === 100) break;
  }
  expect(taken).toBe(100);
});

test('a map of any size, and a row that is refused says so by itself', () => {
  const values = Array.from({ length: 300 }, (_, i) => 4 + i / 60);
  expect(jointMap(inputsOf(DEMO), 'boss OD', [values], 'seat', [values.slice(0, 100)], 'landing ring')).toHaveLength(101);
  const solved = ofEachJoint(NAMES, [Object.values(DEMO), Object.values({ ...DEMO, screw: 'M77' })], inputs => {
    try {
      return jointSolve(inputs, 'seat', 'engagement min', 7, undefined);
    } catch (fault) {
      return (fault as { message: string }).message;
    }
  });
  expect([...solved]).toEqual([expect.closeTo(2.84, 9), expect.stringContaining('target is 7')]);
});
