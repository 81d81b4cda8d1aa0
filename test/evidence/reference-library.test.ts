// Units against a library of units (js-quantities), through the functions.
import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect } from 'vitest';
import { number, value } from '../kit/ask';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('evidence/reference-library.test.ts');

const LENGTHS = { mm: 'mm', cm: 'cm', in: 'in', mil: 'mil', um: 'um' } as const;
const unit = fc.constantFrom(...(Object.keys(LENGTHS) as (keyof typeof LENGTHS)[]));
/** Thousandths, as people type them. */
const typed = fc.integer({ min: 1, max: 999_999 }).map(thousandths => thousandths / 1000);
const mm = (size: number, from: keyof typeof LENGTHS): number => Qty(size, LENGTHS[from]).to('mm').scalar;
const seeded = { seed: SEED, numRuns: 200 };

describe(`js-quantities agrees (seed ${SEED})`, () => {
  test('LENGTH.MM: one unit, and a sum of two', () => {
    fc.assert(
      fc.property(typed, unit, typed, unit, (a, from, b, other) => {
        expect(number('LENGTH.MM', `${a} ${from}`) / mm(a, from)).toBeCloseTo(1, 12);
        expect(number('LENGTH.MM', `${a} ${from} + ${b} ${other}`) / (mm(a, from) + mm(b, other))).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });

  test('ANGLE.DEG: degrees, minutes, radians', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 89 }), fc.integer({ min: 1, max: 59 }), typed, (degrees, minutes, radians) => {
        expect(number('ANGLE.DEG', `${degrees}°${minutes}'`)).toBeCloseTo(degrees + Qty(minutes, 'arcmin').to('deg').scalar, 10);
        expect(number('ANGLE.DEG', `${radians} rad`) / Qty(radians, 'rad').to('deg').scalar).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });

  test('DUAL: both numbers of the text, where no half has to be rounded', () => {
    let compared = 0;
    fc.assert(
      fc.property(typed, unit, (size, from) => {
        const both = [mm(size, from), Qty(size, LENGTHS[from]).to('in').scalar] as const;
        const isHalf = (x: number, places: number): boolean => Math.abs(((Math.abs(x) * 10 ** places) % 1) - 0.5) < 1e-6;
        if (isHalf(both[0], 2) || isHalf(both[1], 3)) return;
        expect(value('DUAL', `${size} ${from}`)).toBe(`${both[0].toFixed(2)} mm (${both[1].toFixed(3)} in)`);
        compared++;
      }),
      seeded,
    );
    expect(compared).toBeGreaterThan(100);
  });

  test('LIMITS: size in one unit, tolerance in another', () => {
    fc.assert(
      fc.property(typed, unit, typed, unit, (size, from, half, other) => {
        const [nominal, lower, upper] = (value('LIMITS', `${size} ${from} ±${half} ${other}`) as number[][])[0] as [number, number, number];
        const [middle, width] = [mm(size, from), mm(half, other)];
        expect(nominal / middle).toBeCloseTo(1, 12);
        expect(Math.abs(lower - (middle - width))).toBeLessThanOrEqual(1e-12 * (middle + width));
        expect(Math.abs(upper - (middle + width))).toBeLessThanOrEqual(1e-12 * (middle + width));
      }),
      seeded,
    );
  });
});
