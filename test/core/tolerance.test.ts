import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { DIN_16742_TG6 } from '../../src/standards/din16742-tg6';
import { DIN_16901_130 } from '../../src/standards/din16901-130';
import { ISO_2768_1_LINEAR } from '../../src/standards/iso2768-1-linear';
import { ISO_286_1_IT_GRADES } from '../../src/standards/iso286-1-it-grades';
import { number, refusal, value } from '../kit/ask';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('core/tolerance.test.ts');

describe('published: ISO 286-1 (read in 1 secondary copy; IT15, IT16 and above 315 mm from memory, cross-checked)', () => {
  test.each([
    [25, 'IT11', 0.13],
    [100, 'IT14', 0.87],
    [10, 'IT14', 0.36],
    [3, 'IT5', 0.004],
    [3, 'IT7', 0.01],
    [25, 'IT8', 0.033],
    [30, 'IT12', 0.21],
    [40, 'IT15', 1],
    [500, 'IT16', 4],
    [200, 'IT10', 0.185],
  ])('%s mm, %s: %s mm', (size, grade, widthMm) => expect(value('TOL.IT', size, grade)).toBeCloseTo(widthMm, 12));

  test('18 to 30 mm by the formula of the standard, i = 1.3074 µm: IT8 is 25 i = 32.7 µm, printed 33', () => {
    const middleMm = Math.sqrt(18 * 30);
    const unitUm = 0.45 * Math.cbrt(middleMm) + 0.001 * middleMm;
    expect(unitUm).toBeCloseTo(1.3074, 4);
    expect(1000 * number('TOL.IT', 25, 'IT8')).toBeCloseTo(25 * unitUm, 0);
  });
});

describe('published: ISO 2768-1:1989 (read in 3 secondary copies; the first bands of class c in 2)', () => {
  test.each([
    [5, 'c', 0.3],
    [30, 'm', 0.2],
    [0.5, 'f', 0.05],
    [3, 'c', 0.2],
    [4000, 'v', 8],
    [150, 'f', 0.2],
  ])('%s mm, class %s: ±%s', (size, name, half) => expect(value('TOL.GENERAL', size, name)).toBe(half));
});

describe('published: DIN 16742 TG6 (read in 2 secondary copies, same tool half in 1) and DIN 16901 group 130 (read in 3)', () => {
  test.each([
    [40, 'DIN 16742-TG6', 'across', 0.37],
    [40, 'DIN 16742-TG6', 'same', 0.31],
    [1000, 'DIN 16742-TG6', 'across', 3.1],
    [2, 'DIN 16742-TG6', 'same', 0.07],
    [40, 'DIN 16901-130', 'across', 0.3],
    [40, 'DIN 16901-130', 'same', 0.2],
    [0.8, 'DIN 16901-130', 'across', 0.18],
    [1000, 'DIN 16901-130', 'same', 2.9],
  ])('%s mm, %s, %s: ±%s', (size, group, tooling, half) => expect(value('TOL.MOULDED', size, group, tooling)).toBe(half));

  test.each([
    ['fine', 0.1],
    ['medium', 0.2],
    ['coarse', 0.5],
    ['very coarse', 1],
  ])('a class in words, over 6 to 30 mm: %s', (name, half) => expect(value('TOL.GENERAL', 30, name)).toBe(half));

  test('tooling as the old standard writes it: w in one half of the tool, nw across', () => {
    expect(value('TOL.MOULDED', 40, 'DIN 16742-TG6', 'w')).toBe(0.31);
    expect(value('TOL.MOULDED', 40, 'DIN 16742-TG6', 'nw')).toBe(0.37);
  });
});

describe('bands by size', () => {
  test.each([
    ['TOL.IT', ISO_286_1_IT_GRADES, 'IT10', 'IT10', 0.001],
    ['TOL.GENERAL', ISO_2768_1_LINEAR, 'm', 'm', 1],
    ['TOL.MOULDED', DIN_16742_TG6, 'DIN 16742-TG6', 'across', 1],
    ['TOL.MOULDED', DIN_16901_130, 'DIN 16901-130', 'across', 1],
  ] as const)('%s: a limit of size belongs to the band below it, the next thousandth to the band above', (id, table, word, key, unitMm) => {
    const column = 1 + table.columns.findIndex(c => c.key === key);
    table.rows.forEach((row, i) => {
      expect(value(id, row[2], word)).toBeCloseTo((row[column] as number) * unitMm, 12);
      const next = table.rows[i + 1];
      if (next !== undefined) expect(value(id, row[2] + 0.001, word)).toBeCloseTo((next[column] as number) * unitMm, 12);
      else expect(refusal(id, row[2] + 0.001, word)).toMatch(/^#N\/A .*outside/);
    });
  });

  test('a size that came out of a sum stays in its band', () => {
    expect((0.1 + 0.2) * 10).toBeGreaterThan(3);
    expect(value('TOL.IT', (0.1 + 0.2) * 10, 'IT10')).toBe(value('TOL.IT', 3, 'IT10'));
  });

  test('a larger size or a coarser grade is never tighter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 11, max: 5000 }),
        fc.integer({ min: 11, max: 5000 }),
        fc.integer({ min: 5, max: 15 }),
        (a, b, grade) => {
          const [small, large] = [Math.min(a, b) / 10, Math.max(a, b) / 10];
          expect(value('TOL.IT', small, grade)).toBeLessThanOrEqual(number('TOL.IT', large, grade));
          expect(value('TOL.IT', small, grade)).toBeLessThan(number('TOL.IT', small, grade + 1));
          expect(value('TOL.MOULDED', small, 'DIN 16742-TG6', 'same')).toBeLessThan(number('TOL.MOULDED', small, 'DIN 16742-TG6'));
        },
      ),
      { seed: SEED },
    );
  });
});

describe('spelling', () => {
  test('grades', () => {
    for (const grade of ['IT11', 'it 11', ' IT11 ', 11, '11']) expect(value('TOL.IT', 25, grade)).toBe(0.13);
    expect([0.5, 1].map(size => value('TOL.IT', size, 'IT11'))).toEqual([0.06, 0.06]);
  });

  test('groups and tooling', () => {
    for (const group of ['DIN 16742-TG6', 'din16742 tg6', 'DIN 16742 - TG6']) expect(value('TOL.MOULDED', 40, group)).toBe(0.37);
    expect(value('TOL.MOULDED', 40, 'DIN 16742-TG6', null)).toBe(0.37);
    expect(value('TOL.MOULDED', '1.5 in', 'DIN 16742-TG6', 'Same')).toBe(0.31);
  });
});

describe('own table', () => {
  const own = [
    [10, 0.05, 0.1],
    [50, '0.1 mm', '±0.2'.slice(1)],
    [100, null, 0.3],
    [0, '', null],
  ];

  test('size up to the limit of each row', () => {
    expect(value('TOL.MOULDED', 10, own)).toBe(0.1);
    expect(value('TOL.MOULDED', 10.01, own, 'same')).toBe(0.1);
    expect(value('TOL.MOULDED', 0.3, own, 'same')).toBe(0.05);
    expect(value('TOL.MOULDED', 99, own)).toBe(0.3);
  });

  test('refused: a gap, a size beyond, limits that do not rise, other shapes, errors', () => {
    expect(refusal('TOL.MOULDED', 99, own, 'same')).toMatch(/^#N\/A ± same of 50-100 is not held for your own table/);
    expect(refusal('TOL.MOULDED', 101, own)).toMatch(/^#N\/A size is 101 mm: outside your own table, which goes from 0 to 100 mm/);
    expect(
      refusal('TOL.MOULDED', 5, [
        [10, 0.1, 0.1],
        [10, 0.1, 0.1],
      ]),
    ).toMatch(/^#VALUE! group .*row 2: the upper limits of size must rise/);
    expect(refusal('TOL.MOULDED', 5, [[10, 0.1]])).toMatch(/^#VALUE! group .*three columns/);
    expect(refusal('TOL.MOULDED', 5, [[0, 0, 0]])).toMatch(/^#VALUE! group .*three columns/);
    expect(
      refusal('TOL.MOULDED', 5, [
        ['up to', 'same', 'across'],
        [10, 0.1, 0.1],
      ]),
    ).toMatch(/^#VALUE! group .*row 1, upper limit of size, is "up to"/);
    expect(refusal('TOL.MOULDED', 5, [[10, -0.1, 0.1]])).toMatch(/row 1, ± same, is -0.1: must be above 0 mm/);
    expect(refusal('TOL.MOULDED', 5, [[10, '0 mm', 0.1]])).toMatch(/row 1, ± same, is "0 mm": must be above 0 mm/);
    expect(refusal('TOL.MOULDED', 5, [[10, 0.1, { cellError: '#REF!' }]])).toMatch(/^#REF! group .*row 1 is #REF!/);
  });
});

describe('refused', () => {
  test.each([
    ['TOL.IT', [25, 'IT0'], /^#N\/A grade .*held are IT5 to IT16/],
    ['TOL.IT', [25, 'IT01'], /^#N\/A grade/],
    ['TOL.IT', [25, 0], /^#N\/A grade/],
    ['TOL.IT', [25, null], /^#N\/A grade/],
    ['TOL.IT', [25, ''], /^#N\/A grade/],
    ['TOL.IT', [25, 4], /^#N\/A grade/],
    ['TOL.IT', [25, 'IT17'], /^#N\/A grade/],
    ['TOL.IT', [25, 'upTo'], /^#N\/A grade/],
    ['TOL.IT', [25, '1IT1'], /^#N\/A grade/],
    ['TOL.IT', [1, 'IT14'], /^#N\/A grade .*not given for sizes up to 1 mm/],
    ['TOL.IT', [500.1, 'IT11'], /^#N\/A size is 500.1 mm: outside ISO 286-1, which goes from 0 to 500 mm/],
    ['TOL.IT', [0, 'IT11'], /^#VALUE! size is 0 or blank/],
    ['TOL.IT', [-5, 'IT11'], /^#VALUE! size is -5: must be above 0 mm/],
    ['TOL.GENERAL', [0.4, 'm'], /^#N\/A size is 0.4 mm: outside ISO 2768-1, which goes from 0.5 to 4000 mm/],
    ['TOL.GENERAL', [2, 'v'], /^#N\/A .*class v/],
    ['TOL.GENERAL', [3000, 'f'], /^#N\/A .*class f/],
    ['TOL.GENERAL', [30, 'g'], /^#VALUE! tolerance_class is "g": give one of "f", "m", "c", "v"/],
    ['TOL.GENERAL', [30, null], /^#VALUE! tolerance_class is blank/],
    ['TOL.MOULDED', [40, 'DIN 16742-TG5'], /^#N\/A group is "DIN 16742-TG5": not a group held here/],
    ['TOL.MOULDED', [40, 'DIN 16901-140'], /^#N\/A group/],
    ['TOL.MOULDED', [40, 6], /^#VALUE! group is 6: put the name in quotes/],
    ['TOL.MOULDED', [0.9, 'DIN 16742-TG6'], /^#N\/A size is 0.9 mm: outside/],
    ['TOL.MOULDED', [40, 'DIN 16742-TG6', 'both'], /^#VALUE! tooling is "both": give one of "same", "across"/],
  ] as const)('%s %j', (id, args, message) => expect(refusal(id, ...args)).toMatch(message));
});
