import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixedText } from '../../src/core/decimal';
import { UNIT_BANDS } from '../../src/core/unit/unit-bands';
import { refusal, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { SEED } from '../kit/seed';

describe('published: the inch is 25.4 mm exactly (international inch of 1959, from memory)', () => {
  test.each([
    ['1 in', '25.40 mm (1.000 in)'],
    ['0.167 in', '4.24 mm (0.167 in)'],
    ['1/16 in', '1.59 mm (0.063 in)'],
    [1.6, '1.60 mm (0.063 in)'],
  ])('%s', (length, text) => expect(value('DUAL', length)).toBe(text));
});

describe('DUAL by hand', () => {
  test.each([
    [[1.005], '1.01 mm (0.040 in)'],
    [[-1.005], '-1.01 mm (-0.040 in)'],
    [[2.675], '2.68 mm (0.105 in)'],
    [['0.1675 in'], '4.25 mm (0.168 in)'],
    [['0.0625 in', 1, 3], '1.6 mm (0.063 in)'],
    [[0.001], '0.00 mm (0.000 in)'],
    [[-0.001], '0.00 mm (0.000 in)'],
    [[null], '0.00 mm (0.000 in)'],
    [[9.999], '10.00 mm (0.394 in)'],
    [[1234567.891, 1, 1], '1234567.9 mm (48605.0 in)'],
  ])('%j', (args, text) => expect(value('DUAL', ...args)).toBe(text));

  test('places: blank and 0 take the default, others are whole and 1 to 9', () => {
    expect(value('DUAL', 4.24, 0, null)).toBe(value('DUAL', 4.24, 2, 3));
    expect(refusal('DUAL', 4.24, 1.5)).toMatch(/^#VALUE! mm_places is 1.5: give a whole number/);
    expect(refusal('DUAL', 4.24, 10)).toMatch(/^#VALUE! mm_places is 10: must be at least 1 and at most 9/);
    expect(refusal('DUAL', 4.24, 2, -1)).toMatch(/^#VALUE! in_places/);
  });
});

describe('decimal text', () => {
  const seeded = { seed: SEED, numRuns: 500 };

  test('a number typed with so many places keeps them', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 1, max: 6 }), (whole, places) => {
        const typed = `${whole < 0 ? '-' : ''}${String(Math.abs(whole))
          .padStart(places + 1, '0')
          .replace(new RegExp(`(\\d{${places}})$`), '.$1')}`;
        expect(fixedText(Number(typed), places)).toBe(typed);
      }),
      seeded,
    );
  });

  test('a typed half goes away from zero', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999 }), whole => {
        expect(fixedText(Number(`${whole}.5`), 0)).toBe(String(whole + 1));
        expect(fixedText(-Number(`${whole}.5`), 0)).toBe(`-${whole + 1}`);
        expect(fixedText(Number(`0.${String(whole).padStart(6, '0')}5`), 6)).toBe(
          `${whole === 999_999 ? '1' : '0'}.${String((whole + 1) % 1_000_000).padStart(6, '0')}`,
        );
      }),
      seeded,
    );
  });

  test('very large and very small', () => {
    expect(fixedText(1e21, 1)).toBe('1000000000000000000000.0');
    expect(fixedText(4e-300, 3)).toBe('0.000');
  });
});

describe('LIMITS by hand', () => {
  test.each([
    ['1.6 ±10%', [1.6, 1.44, 1.76]],
    ['1.6 ±10 %', [1.6, 1.44, 1.76]],
    ['1.6 +-0.16', [1.6, 1.44, 1.76]],
    ['1.6 +/-0.16', [1.6, 1.44, 1.76]],
    ['1.6±0.16', [1.6, 1.44, 1.76]],
    ['1.6 mm ±0.16', [1.6, 1.44, 1.76]],
    ['3.2 +0.1/-0', [3.2, 3.2, 3.3]],
    ['3.2 + 0.1 / - 0', [3.2, 3.2, 3.3]],
    ['3.2 +0.1 / 0', [3.2, 3.2, 3.3]],
    ['3.2 0/-0.1', [3.2, 3.1, 3.2]],
    ['10 -0.2/-0.4', [10, 9.6, 9.8]],
    ['10 −0.2/−0.4', [10, 9.6, 9.8]],
    ['10 +0.4/+0.2', [10, 10.2, 10.4]],
    ['3.4..3.6', [3.5, 3.4, 3.6]],
    ['3.4 … 3.6 mm', [3.5, 3.4, 3.6]],
    ['1 in..2 in', [38.1, 25.4, 50.8]],
    ['0.1..0.2 in', [3.81, 2.54, 5.08]],
    ['0.1 ±0.01 in', [2.54, 2.286, 2.794]],
    ['0.5 in ±1 mm', [12.7, 11.7, 13.7]],
    ['1/2 in +1/16 in/-1/32 in', [12.7, 11.90625, 14.2875]],
    ['1,6 ±0,16', [1.6, 1.44, 1.76]],
    ['-0.2 ±0.1', [-0.2, -0.3, -0.1]],
    ['3.2 0 / -0.1', [3.2, 3.1, 3.2]],
    ['-3.2 0/-0.1', [-3.2, -3.3, -3.2]],
    ['3.4..3.4', [3.4, 3.4, 3.4]],
    ['1.6 ±0%', [1.6, 1.6, 1.6]],
    ['-2 ±10%', [-2, -2.2, -1.8]],
  ])('%s', (text, row) => expectPrinted(value('LIMITS', text), [row]));

  test.each([
    [1.6, /put the size and its tolerance in quotes/],
    ['1.6', /not a size with its limits/],
    ['1 1/16 in', /not a size with its limits/],
    ['±0.1', /not a size with its limits/],
    ['3.6..3.4', /the lower limit comes first/],
    ['10 -0.4/-0.2', /the first deviation must be the upper one/],
    ['0.5 in ±0.01', /give the tolerance its unit too/],
    ['0.1 in..0.2', /give the tolerance its unit too/],
    ['1.6 ±-0.1', /half width of 0 or more/],
    ['1.6 ±10 deg', /not a unit of length/],
    ['1.6 +10%/-5%', /per cent is read as ± only/],
    [' ±0.1', /not a size with its limits/],
    ['..3.6', /not a size with its limits/],
    ['1.6 ±-10%', /not a size with its limits/],
    ['3.2 +0.1/0.05', /not a size with its limits/],
    ['+0.1/-0.2', /not a size with its limits/],
    ['3.2 ±0.1/0.05', /a fraction has whole numbers/],
    ['3.2 +1 in/-1 mm', /give every size its unit/],
    ['', /is blank/],
    [0, /#VALUE!/],
  ])('refused: %j', (text, message) => expect(refusal('LIMITS', text)).toMatch(message));

  test('the nominal lies between the limits of any symmetric text', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 0, max: 1000 }), (size, half) => {
        const [row] = value('LIMITS', `${size / 100} ±${half / 1000}`) as [[number, number, number]];
        expect(row[0] - row[1]).toBeCloseTo(half / 1000, 9);
        expect(row[2] - row[0]).toBeCloseTo(half / 1000, 9);
      }),
      { seed: SEED },
    );
  });
});

describe('UNIT.CHECK against the bands (common practice)', () => {
  test.each([
    [3.15, 'board edge', /^looks like inches \(then 80\.01 mm\)/],
    [2.05, 'board edge', /^looks like inches \(then 52\.07 mm\)/],
    [0.062, 'board thickness', /^looks like inches \(then 1\.57 mm\)/],
    [0.0025, 'wall', /^looks like metres \(then 2\.50 mm\)/],
    [1.5, 'screw', /^looks like a radius \(then 3\.00 mm\)/],
    [0.1, 'head', /^not usual: head is usually 2\.8 to 14 mm$/],
    [25, 'wall', /^not usual: wall is usually 0\.8 to 6 mm$/],
    ['0.62 in', 'wall', /^not usual/],
    ['3.15 in', 'board edge', /^ok$/],
    [2.5, 'wall', /^ok$/],
    [1.6, 'board thickness', /^ok$/],
  ])('%s as %s', (length, kind, text) => expect(value('UNIT.CHECK', length, kind)).toMatch(text));
  test('only what is round can be a radius', () =>
    expect(value('UNIT.CHECK', 8, 'board edge')).toMatch(/^looks like inches \(then 203\.20 mm\); /));

  test('both ends of each band are ok, what lies just outside is not', () => {
    for (const [kind, low, high] of UNIT_BANDS.rows) {
      for (const inside of [low, high]) expect(value('UNIT.CHECK', inside, kind)).toBe('ok');
      for (const outside of [low - 0.01, high + 0.01])
        expect(value('UNIT.CHECK', outside, kind)).toContain(`${kind} is usually ${low} to ${high} mm`);
    }
  });

  test('refused: blank, an unknown kind, a length of 0', () => {
    expect(refusal('UNIT.CHECK', 0, 'wall')).toMatch(/^#VALUE! length is 0 or blank/);
    expect(refusal('UNIT.CHECK', -1, 'wall')).toMatch(/above 0 mm/);
    expect(refusal('UNIT.CHECK', 1, 'lid')).toMatch(/"wall", "screw", "head", "board edge", "board thickness", "height"/);
  });
});
