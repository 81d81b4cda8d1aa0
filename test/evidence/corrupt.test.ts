// The last run of npm run test:corrupt, which changes one thing of the tables at a time: counted, and above its target. It says no more
// than it tried.
import { expect, test } from 'vitest';
import { corruptions, FILES, KINDS } from '../corrupt/corruptions';
import type { Results } from '../corrupt/results';
import RESULTS from '../corrupt/results.json';

const results: Results = RESULTS;
const kinds = Object.values(results.kinds);
const sum = (numbers: readonly number[]): number => numbers.reduce((total, single) => total + single, 0);

test('tests notice at least 297 of 300 corruptions of the tables', () => {
  expect(results.tried).toBeGreaterThanOrEqual(300);
  expect(results.caught / results.tried).toBeGreaterThanOrEqual(0.99);
});

test('each kind has its count, and each that no test noticed is named', () => {
  expect(results.on).toMatch(/^20\d\d-\d\d-\d\d$/);
  expect(Object.keys(results.kinds)).toEqual(KINDS);
  expect([sum(kinds.map(({ tried }) => tried)), sum(kinds.map(({ caught }) => caught))]).toEqual([results.tried, results.caught]);
  expect(results.survivors).toHaveLength(results.tried - results.caught);
  for (const [kind, { tried, caught }] of Object.entries(results.kinds))
    expect(
      results.survivors.filter(one => one.kind === kind),
      kind,
    ).toHaveLength(tried - caught);
});

test('every kind finds its places in every file that has them, and each changes the file', () => {
  const places = KINDS.map(kind => corruptions(kind, () => 0));
  places.forEach((of, i) => expect(of.length, KINDS[i]).toBeGreaterThan([2300, 1500, 2000, 200, 40, 350, 180][i] as number));
  for (const { file, line, said, text, changed } of places.flat()) if (changed === text) expect.fail(`${file}:${line}: ${said}`);
  expect(new Set(places.flat().map(({ file }) => file)).size).toBe(FILES.length - 1); // ISO 7046-1 takes the values of ISO 2009
});
