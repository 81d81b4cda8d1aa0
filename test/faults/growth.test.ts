// A text twice as long takes about twice the time to read or to refuse, at whatever length: no text stalls a sheet.
import { describe, expect, test } from 'vitest';
import { call } from '../../src/registry';
import { bestOfThreeMs, quietOnceMs } from '../kit/best-of';

/** A cell holds no more. */
const LONGEST = 32_768;
const AT_ONCE_MS = 0.1;
/** An eighth of the text is compared with all of it: 8 times as long is linear, 64 times is a reader that looks back. */
const PARTS = 8;
const MOST = 3 * PARTS;

/** How much longer the longest text takes than a part of it; nothing where it is read at once. */
function growth(read: (text: string) => void, bomb: (length: number) => string): number | undefined {
  const [part, whole] = [bomb(LONGEST / PARTS), bomb(LONGEST)];
  const once = bestOfThreeMs(() => read(whole));
  if (once < AT_ONCE_MS) return undefined;
  const times = Math.ceil(1 / once);
  const timeMs = (text: string): number =>
    bestOfThreeMs(() => {
      for (let i = 0; i < times; i++) read(text);
    });
  // the machine may be busy in one of two measurements: the lower of three counts
  return Math.min(...[1, 2, 3].map(() => timeMs(whole) / timeMs(part)));
}

const repeated =
  (piece: string) =>
  (length: number): string =>
    piece.repeat(Math.ceil(length / piece.length));
const BOMBS: Readonly<Record<string, (length: number) => string>> = {
  sums: repeated('1 mm + '),
  digits: repeated('9'),
  fractions: repeated('1/'),
  'mixed fractions': repeated('1 1/4 in '),
  spaces: length => `3${' '.repeat(length)}mm`,
  signs: repeated('+-'),
  points: repeated('.'),
  letters: repeated('m'),
  units: repeated('1in1mm'),
  tolerances: repeated('+1/-1'),
  ranges: repeated('1..'),
  exponents: repeated('1e1'),
  'size and spaces': length => `M3${' '.repeat(length)}pan`,
  'size and words': length => `M3 ${repeated('pan ')(length)}`,
  sizes: repeated('#4-40 '),
  card: repeated('strength 40 MPa; '),
  marks: repeated('"'),
  'full-width digits': repeated('１'),
};

/** A reader each: units, angles, limits, heads, screws, holes, tolerances, materials, groups, states, lists, names. */
const READERS: Readonly<Record<string, (text: string) => void>> = Object.fromEntries(
  (
    [
      ['LENGTH.MM', 0],
      ['ANGLE.DEG', 0],
      ['LIMITS', 0],
      ['RECESS.DIAMETER', 0, 'x', 0.6],
      ['RECESS.FLOAT', 0, 'x', 3.4, 'M3', 0.2],
      ['SCREW.MAJOR', 0],
      ['HOLE.THREAD.SHARE', 1, 'M3', 'x'],
      ['SCREW.LENGTH.TOL', 2, 'ST2.9', 16, 'x'],
      ['ENGAGEMENT.LIMITS', 1, 16, 'x', [[1]], [[0.1]]],
      ['MATERIAL', 0, 'x', 'strength'],
      ['MATERIAL', 1, 'ABS', 'x'],
      ['TOL.MOULDED', 1, 10, 'x'],
      ['UNIT.CHECK', 0, 'x', 'wall'],
      ['CHECK.MAX', 0, 'x', 1],
      ['CHECK.WORST', 0],
      ['STACK.WORST', 0],
      ['JOINT.VALUE', 2, [['wall']], [[2]], 'x'],
      ['REASON', 0],
      ['ABOUT', 1, 'BOSS.OD', 'x'],
    ] as const
  ).map(([id, place, ...args]) => [`${id} ${place + 1}`, (text: string) => void call(id, Object.assign([...args], { [place]: text }))]),
);

describe.each(Object.entries(READERS))('the time to read a text grows with its length: %s', (_, read) => {
  test.each(Object.entries(BOMBS))('%s', (__, bomb) => {
    const ratio = growth(read, bomb);
    if (ratio !== undefined) expect(ratio).toBeLessThan(MOST);
  });
});

test('a reader that looks back at every character is found out', () => {
  const quadratic = (text: string): void => {
    let seen = 0;
    for (let i = 0; i < text.length; i += 64) for (let j = 0; j < i; j++) if (text[i] === text[j]) seen++;
    if (seen < 0) throw new Error('never');
  };
  expect(growth(quadratic, repeated('9'))).toBeGreaterThan(MOST);
});

test('the sum of a full cell is measured', () => {
  const ratio = growth(READERS['LENGTH.MM 1'] as (text: string) => void, repeated('1 mm + '));
  console.log(`unit reader: ${LONGEST} characters take ${ratio?.toFixed(2)} times as long as an eighth of them`);
  expect(ratio).toBeGreaterThan(1);
});

test('a variant of a long table takes no longer than one of a short table', () => {
  const names = [
    'screw',
    'head',
    'length',
    'material',
    'wall',
    'board plane',
    'seat',
    'board',
    'hole',
    'relief',
    'pilot',
    'boss OD',
    'boss height',
    'hole depth',
  ];
  const row = (i: number): unknown[] => [
    'ST2.9',
    'ISO 7049',
    [9.5, 13, 16, 19][i % 4],
    'ABS',
    2.5 + (i % 7) / 10,
    5.5,
    2.5,
    1.6,
    3.4,
    0.8,
    2.4,
    6.4,
    14,
    14.75,
  ];
  const usEach = (variants: number): number => {
    const args = [[names, ...Array.from({ length: variants }, (_, i) => row(i))], [['engagement min']]];
    const times = 10_000 / variants;
    const ms = bestOfThreeMs(() => {
      for (let i = 0; i < times; i++) call('JOINT.TABLE', args);
    });
    return ms / 10;
  };
  expect(call('JOINT.TABLE', [[names, row(0)], [['engagement min']]])).toMatchObject({ ok: true });
  usEach(100);
  const ratio = Math.min(...[1, 2, 3].map(() => usEach(10_000) / usEach(100)));
  console.log(`JOINT.TABLE: a variant of 10,000 takes ${ratio.toFixed(2)} times as long as one of 100`);
  expect(ratio).toBeLessThan(1.5);
});

test('a million samples of ten links take about a second', { timeout: 300_000 }, () => {
  const links = Array.from({ length: 10 }, () => [1]);
  expect(quietOnceMs(() => expect(call('STACK.SIMULATE', [links, 0.1, 1, 9.7, 10.3, 1_000_000])).toMatchObject({ ok: true }))).toBeLessThan(
    3000,
  );
});

test('the least play of 20,000 boards on four screws takes less than a second', { timeout: 300_000 }, () => {
  const args = [[[10], [90], [90], [10]], [[10], [10], [60], [60]], 0.3, 0.2, 0.3];
  expect(quietOnceMs(() => expect(call('PATTERN.FIT', args)).toMatchObject({ ok: true }))).toBeLessThan(1000);
});
