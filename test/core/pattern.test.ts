// Patterns of holes: what is read from a name, what a blank means, what is refused, what a seed gives.
import { expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';

const X = [[10], [90], [90], [10]];
const Y = [[10], [10], [60], [60]];
const fit = (...args: readonly unknown[]): unknown[][] => value('PATTERN.FIT', ...args) as unknown[][];

test('PATTERN.SLOT by hand: 3.2 + 2·(0.15 + 80·75e-6·40)', () => {
  expect(number('PATTERN.SLOT', 3.2, 80, 0.15, 90, 15, -40)).toBeCloseTo(3.98, 12);
  expect(value('PATTERN.SLOT', 3.2, 80, 0.15, 15, 90, 40)).toBe(value('PATTERN.SLOT', 3.2, 80, 0.15, 90, 15, -40));
});

test('PATTERN.SLOT: the slot is as long as the hole where nothing is off; the larger deviation counts, since it is centred', () => {
  expect(value('PATTERN.SLOT', 3.2, 80, null)).toBe(3.2);
  for (const tolerance of ['+0.1/-0.3', '+0.3/-0.1', '+0.3/+0.1', '-0.1/-0.3'])
    expect(number('PATTERN.SLOT', 3.2, 80, tolerance)).toBeCloseTo(3.8, 12);
  // without a change of temperature the materials say nothing
  expect(value('PATTERN.SLOT', 3.2, 80, 0.1, 'ABS', 15)).toBe(value('PATTERN.SLOT', 3.2, 80, 0.1));
  // ABS 90, ISO 273 medium of M3 3.4
  expect(value('PATTERN.SLOT', 'M3 medium', 80, 0.1, 'ABS', 15, 40)).toBe(value('PATTERN.SLOT', 3.4, 80, 0.1, 90, 15, 40));
});

test('PATTERN.TURN by hand: 0.4 over 160 is 0.1432°; without play none', () => {
  expect(number('PATTERN.TURN', 0.1, 0.3, 80)).toBeCloseTo((0.4 / 160) * (180 / Math.PI), 5);
  expect(value('PATTERN.TURN', null, 0, 80)).toBe(0);
});

test('PATTERN.FIT: a play of both zones together is always enough, a millionth of it never', () => {
  expect(fit(X, Y, 0.2, 0.2, 0.4)[1]).toEqual(['share that goes together', 1, '–']);
  expect(fit(X, Y, 0.2, 0.2, 4e-7)[1]).toEqual(['share that goes together', 0, '–']);
});

test('PATTERN.FIT: twice the zones need twice the play; another place or a turned pattern change nothing but the draws', () => {
  const least = (table: unknown[][]): number => Number(table[2]?.[1]);
  const once = fit(X, Y, 0.2, 0.1, 0.2);
  expect(least(fit(X, Y, 0.4, 0.2, 0.4))).toBeCloseTo(2 * least(once), 9);
  const moved = fit(
    X.map(([x]) => [Number(x) + 1000]),
    Y.map(([y]) => [Number(y) - 500]),
    0.2,
    0.1,
    0.2,
  );
  expect(least(moved)).toBeCloseTo(least(once), 9);
  // 80 × 50: to bring the ends of a short side together across it, the board would turn, and the far side moves by more
  expect(['1 and 4', '2 and 3']).toContain(once[3]?.[1]);
});

test('PATTERN.FIT: of three in a row the turn helps the ends: the middle one is of the worst pair; a row stands for a column', () => {
  const table = fit([[10, 50, 90]], 10, 0.2, 0.2, 0.3);
  expect(['1 and 2', '2 and 3']).toContain(table[3]?.[1]);
  expect(fit([[10], [50], [90]], [[10], [10], [10]], 0.2, 0.2, 0.3)).toEqual(table);
});

test('PATTERN.FIT: the same seed gives the same table, another one another', () => {
  expect(fit(X, Y, 0.2, 0.2, 0.3, 5000, 7)).toEqual(fit(X, Y, 0.2, 0.2, 0.3, 5000, 7));
  expect(fit(X, Y, 0.2, 0.2, 0.3, 5000, 8)).not.toEqual(fit(X, Y, 0.2, 0.2, 0.3, 5000, 7));
  expect(fit(X, Y, 0.2, 0.2, 0.3)).toEqual(fit(X, Y, 0.2, 0.2, 0.3, 20_000, 1));
});

test.each([
  ['PATTERN.SLOT', [3.2, 0, 0.1], /^#VALUE! distance is 0 or blank/],
  ['PATTERN.SLOT', [3.2, 80, -0.1], /^#VALUE! tolerance is -0.1/],
  ['PATTERN.TURN', [0.1, -0.1, 80], /^#VALUE! play_slot is -0.1: must be at least 0 mm/],
  ['PATTERN.TURN', [1, 1, 9.99], /^#VALUE! distance is 9.99: must be at least five times both plays/],
  ['PATTERN.FIT', [[[0], [10]], 10, 0.2, 0.2, 0.4], /^#VALUE! x row 1 is 0 or blank; write "0 mm"/],
  ['PATTERN.FIT', [X, [[10], [20]], 0.2, 0.2, 0.4], /^#VALUE! x has 4 rows and y has 2/],
  ['PATTERN.FIT', [X, Y, 0, 0.2, 0.4], /^#VALUE! zone_boss is 0 or blank/],
  ['PATTERN.FIT', [X, Y, 0.2, -0.2, 0.4], /^#VALUE! zone_hole is -0.2: must be above 0 mm/],
  ['PATTERN.FIT', [X, Y, 0.2, 0.2, '0 mm'], /^#VALUE! play is "0 mm": must be above 0 mm/],
  ['PATTERN.FIT', [X, Y, 0.2, 0.2, 0.4, 999], /^#VALUE! samples is 999: must be at least 1000/],
  ['PATTERN.FIT', [X, Y, 0.2, 0.2, 0.4, 500_001], /^#VALUE! samples × screws is 2000004; at most 2000000/],
] as const)('%s %j is refused', (id, args, message) => expect(refusal(id, ...args)).toMatch(message));
