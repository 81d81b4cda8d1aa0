// Clearance holes under position, and core pins.
import { describe, expect } from 'vitest';
import { number, refusal } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { refereed } from '../kit/refereed';

const test = refereed('core/hole-position.test.ts');

describe('clearance hole', () => {
  test('ASME Y14.5 appendix B (read in secondary copies): screw 6 in a hole of 6.44 leaves a zone of 0.44 floating, 0.22 each fixed', () => {
    expectPrinted(number('HOLE.FLOATING', 6, 0.44), 6.44);
    expectPrinted(number('HOLE.FIXED', 6, 0.22, 0.22), 6.44);
  });
  test('read in 1 secondary copy: hole and screw of one size leave no zone', () => {
    expectPrinted(number('HOLE.FLOATING', 10.1, 0), 10.1);
  });
  test('unequal zones add up', () => {
    expectPrinted(number('HOLE.FIXED', 4, 0.3, 0.1), 4.4);
  });
  test('the thickest screw of the table: M3 6g 2.98, ST2.9 2.90', () => {
    expectPrinted(number('HOLE.FLOATING', 'M3', 0.2), 3.18);
    expectPrinted(number('HOLE.FIXED', 'ST2.9', 0.3, 0.2), 3.4);
  });
  test('by hand: an axis that leans in its zone leans on: 4 + 0.2 + 0.2·(1 + 2·2/6); a projected zone asks for less', () => {
    expectPrinted(number('HOLE.PROJECTED', 4, 0.2, 0.2, 2, 6), '4.533');
    expect(number('HOLE.PROJECTED', 'M3', 0.3, 0.2, 2, 6)).toBeGreaterThan(number('HOLE.FIXED', 'M3', 0.3, 0.2));
    expect(number('HOLE.PROJECTED', 'M3', null, 0.2, 2, 6)).toBe(number('HOLE.FIXED', 'M3', null, 0.2));
  });
  test('a negative zone is refused', () => {
    expect(refusal('HOLE.FIXED', 6, -0.1, 0.2)).toMatch(/zone_boss is -0.1: must be at least 0 mm/);
  });
});

describe('position zone', () => {
  test.each([
    ['a ± 0.1 mm location', 0.1, '0.283'],
    ['DIN 16742 TG6, ± 0.12 (read in 1 secondary copy)', 0.12, '0.34'],
    ['DIN 16742 TG6, ± 1.05 (read in 1 secondary copy)', 1.05, '3.0'],
  ])('%s: ø 2√2·t', (_, t, zone) => {
    expectPrinted(number('POSITION.ZONE', t), zone);
    expectPrinted(number('POSITION.ZONE', t, -t), zone);
  });
  test('by hand: 0.3 and 0.4 off centre lie on ø 1.0; along one axis alone twice the offset', () => {
    expectPrinted(number('POSITION.ZONE', 0.3, 0.4), 1);
    expectPrinted(number('POSITION.ZONE', 0.3, '0 mm'), 0.6);
  });
});

describe('core pin', () => {
  test('by hand: 12 long, 2.4 thick: 5', () => {
    expectPrinted(number('PIN.RATIO', 12, 2.4), 5);
    expectPrinted(number('PIN.RATIO', 11.8, 'ST2.9 75 %'), 5);
  });
  test('by hand: 8·10·10⁴/(π·210000·2.4³) = 0.0877', () => {
    expectPrinted(number('PIN.DEFLECTION', 10, 2.4, 10), '0.0877');
    expectPrinted(number('PIN.DEFLECTION', 10, 2.4, '10 MPa', '210 GPa'), '0.0877');
  });
  test('identity: q·L⁴/(8·E·I) with q = p·d and I = π·d⁴/64', () => {
    const [L, d, p, E] = [14, 1.9, 6, 200_000];
    expect(number('PIN.DEFLECTION', L, d, p, E)).toBeCloseTo((p * d * L ** 4) / (8 * E * ((Math.PI * d ** 4) / 64)), 12);
  });
  test('twice as long bends sixteen times', () => {
    expect(number('PIN.DEFLECTION', 20, 2.4, 10) / number('PIN.DEFLECTION', 10, 2.4, 10)).toBeCloseTo(16, 9);
  });
});
