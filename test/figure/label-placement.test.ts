// Labels in a column: apart, in order, inside; their leaders on what they name, in the same order.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type LabelWish, placed, spread } from '../../src/figure/label-placement';
import { SEED } from '../kit/seed';

test('labels with room stay where they belong; crowded ones move as little as possible', () => {
  expect(spread([10, 100, 200], 16)).toEqual([10, 100, 200]);
  expect(spread([50, 50], 16)).toEqual([42, 58]);
  expect(spread([50, 51, 52, 300], 10)).toEqual([41, 51, 61, 300]);
});

const ENTRIES: fc.Arbitrary<LabelWish[]> = fc
  .array(
    fc.record({
      best: fc.double({ min: 0, max: 500, noNaN: true }),
      below: fc.double({ min: 0, max: 90, noNaN: true }),
      above: fc.double({ min: 0, max: 90, noNaN: true }),
      slides: fc.boolean(),
    }),
    { maxLength: 25 },
  )
  .map(list =>
    list.map(({ best, below, above, slides }) => ({ best, low: best - below, high: best + above, slides })).sort((a, b) => a.best - b.best),
  );

test('always apart, in order, inside the column, on their own dimension', () => {
  fc.assert(
    fc.property(ENTRIES, entries => {
      const spots = placed(entries, 16, 0, 500);
      expect(spots).toHaveLength(entries.length);
      spots.forEach(({ labelY, anchorY }, i) => {
        const before = spots[i - 1];
        expect(anchorY).toBeGreaterThanOrEqual(entries[i]?.low ?? NaN);
        expect(anchorY).toBeLessThanOrEqual(entries[i]?.high ?? NaN);
        expect(labelY).toBeGreaterThanOrEqual(0);
        expect(labelY).toBeLessThanOrEqual(500);
        if (before === undefined) return;
        expect(labelY - before.labelY).toBeGreaterThanOrEqual(16 - 1e-9);
        expect(anchorY).toBeGreaterThanOrEqual(before.anchorY);
      });
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test('a leader slides along its dimension line to the height of its label', () => {
  const [first, second] = placed(
    [
      { best: 100, low: 50, high: 150, slides: true },
      { best: 100, low: 50, high: 150, slides: true },
    ],
    16,
    0,
    500,
  );
  expect([first, second]).toMatchObject([
    { labelY: 92, anchorY: 92 },
    { labelY: 108, anchorY: 108 },
  ]);
});
