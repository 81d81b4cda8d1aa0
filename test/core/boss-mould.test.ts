// Boss, recess and draft as the mould sees them: steel, flats, masses, countersinks, tools, textures.
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { number, refusal, value } from '../kit/ask';
import { expectPrinted, expectText } from '../kit/near';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('core/boss-mould.test.ts');

describe('steel between boss and wall', () => {
  test('by hand: 3 − 12·(tan 0.5° + tan 1°) = 2.686; the flat between fillets of 0.5 and 0.75 is 1.436', () => {
    expectPrinted(number('BOSS.STEEL', 3, 12, 0.5, 1), '2.686');
    expectPrinted(number('BOSS.FLAT', number('BOSS.STEEL', 3, 12, 0.5, 1), 0.5, 0.75), '1.436');
  });
  test('wrong form: 0.5 and 1 taken as radians leave −22.2 mm', () => {
    expectPrinted(3 - 12 * (Math.tan(0.5) + Math.tan(1)), '-22.2');
    expect(number('BOSS.STEEL', 3, 12, '0.5 rad', '1 rad')).toBeCloseTo(3 - 12 * (Math.tan(0.5) + Math.tan(1)), 9);
    expect(number('BOSS.STEEL', 3, 12, 0.5, 1)).toBeGreaterThan(0);
  });
  test('no draft, no loss; more draft, less steel', () => {
    expect(number('BOSS.STEEL', 3, 12)).toBe(3);
    expect(number('BOSS.STEEL', 0.3, 12, 1, 1)).toBeLessThan(0);
  });
  test('fillets that meet leave less than nothing; a blank steel is no answer', () => {
    expectPrinted(number('BOSS.FLAT', 1, 0.6, 0.6), -0.2);
    expectPrinted(number('BOSS.FLAT', -0.119, 0, null), -0.119);
    expect(refusal('BOSS.FLAT', 0, 0.5, 0.5)).toMatch(/steel is 0 or blank/);
  });
});

describe('screw rule against sink rule', () => {
  const row = (...args: readonly unknown[]): unknown => (value('BOSS.CONFLICT', ...args) as unknown[][])[1];

  // asked 2·2.9; allowed 2.32 + 2·0.6·2; wall (5.8 − 2.32)/1.2 = 2.9
  test('by hand: ST2.9 with a hole of 0.8·d on a 2 mm wall: asked 5.8, allowed 4.72, wall 2.9 = 1.0·d', () => {
    expectPrinted(row('ST2.9', 2, 2.32), [5.8, 4.72, 2.9, 'fail']);
  });
  test('by hand: D = 2.5·d with a hole of 0.85·d asks for a wall of 1.375·d', () => {
    expectPrinted(row('ST2.9', 2, 0.85 * 2.9, 2.5), [7.25, 4.865, 1.375 * 2.9, 'fail']);
  });
  test('by hand: 75 % of the wall in place of 60 % asks for 0.8·d', () => {
    expectPrinted(row('ST2.9', 2, 2.32, 2, '75 %'), [5.8, 5.32, 2.32, 'fail']);
  });
  test('on the wall that satisfies both, both are satisfied', () => {
    expectPrinted(row('ST2.9', 2.9, 2.32), [5.8, 5.8, 2.9, 'pass']);
    expectPrinted(row('ST2.9', 2.8999, 2.32), [5.8, 5.79988, 2.9, 'fail']);
  });
  test('hole and ratio of a material are read: ABS 0.8 of the thread and 2.2·d', () => {
    expectPrinted(row('ST2.9', 2, 'ST2.9 ABS', 'ABS'), [6.38, 4.724, 3.38, 'fail']);
  });
  test('a pilot as wide as the screw is refused', () => {
    expect(refusal('BOSS.CONFLICT', 'ST2.9', 2, 2.9)).toMatch(/pilot is 2.9: must be below the major diameter of the screw/);
  });
});

describe('gussets', () => {
  test('inside the ranges from memory: 0.5 to 0.6 of the wall, 0.67 to 0.95 and 0.3 to 1 of the height, four', () => {
    const [thickness, height, base, count] = (value('BOSS.GUSSET', 12, 2.5) as number[][])[1] as [number, number, number, number];
    expect(thickness / 2.5).toBeGreaterThanOrEqual(0.5);
    expect(thickness / 2.5).toBeLessThanOrEqual(0.6);
    expect(height / 12).toBeGreaterThanOrEqual(2 / 3);
    expect(height / 12).toBeLessThanOrEqual(0.95);
    expect(base / 12).toBeGreaterThanOrEqual(0.3);
    expect(base / 12).toBeLessThanOrEqual(1);
    expect(count).toBe(4);
  });
});

describe('mass of a boss', () => {
  test('by hand, no draft: π/4·(6² − 2.4²)·12 mm³ at 1.05 g/cm³ = 0.29926 g', () => {
    expectPrinted(number('BOSS.MASS', 6, 2.4, 12, 1.05), '0.29926');
  });
  // outside 6 → 6.2094 over 12: π/12·12·(36 + 37.2565 + 38.5570) = 351.27; hole 2.394 → 2.2969 over 11.1: π/12·11.1·(5.7312 + 5.4988 + 5.2757) = 47.966
  test('by hand, drafted: 351.27 − 47.97 = 303.30 mm³ at 1.05 g/cm³ = 0.3185 g', () => {
    expectPrinted(number('BOSS.MASS', 6, 2.394, 12, 1.05, '0.5°', '0.25°', 11.1), '0.3185');
  });
  test('identity: a cone is a third of its cylinder', () => {
    // the hole grows from 1e-9 to 6 at the root: cylinder less cone
    const draft = (Math.atan(3 / 12) * 180) / Math.PI;
    expect(number('BOSS.MASS', 6, 1e-9, 12, 1, '0°', -draft * (1 - 1e-9)) / ((Math.PI / 4) * 36 * 12 * 1e-3)).toBeCloseTo(2 / 3, 7);
  });
  test(`identity: two halves weigh what the whole does (seed ${SEED})`, () => {
    const side = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 10, noNaN: true }),
        fc.double({ min: 1.5, max: 3, noNaN: true }),
        fc.double({ min: 2, max: 15, noNaN: true }),
        side,
        side,
        (od, hole, height, outside, inside) => {
          const half = height / 2;
          const mass = (at: number, h: number): number =>
            number(
              'BOSS.MASS',
              od + 2 * at * Math.tan((outside * Math.PI) / 180),
              hole - 2 * at * Math.tan((inside * Math.PI) / 180),
              h,
              1,
              `${outside.toFixed(12)}°`,
              `${inside.toFixed(12)}°`,
            );
          expect(mass(0, half) + mass(half, half)).toBeCloseTo(mass(0, height), 9);
        },
      ),
      { seed: SEED },
    );
  });
  test('what the hole takes below the root is not the boss: a deeper hole leaves the mass', () => {
    expect(number('BOSS.MASS', 6, 2.4, 12, 1.05, 0, 0, 14)).toBe(number('BOSS.MASS', 6, 2.4, 12, 1.05));
    expect(number('BOSS.MASS', 6, 2.4, 12, 1.05, 0, 0, 6)).toBeGreaterThan(number('BOSS.MASS', 6, 2.4, 12, 1.05));
  });
  test('a material brings its density', () => {
    expect(number('BOSS.MASS', 6, 2.4, 12, 'ABS')).toBe(number('BOSS.MASS', 6, 2.4, 12, 1.05));
  });
  test.each([
    ['must end before 2.08 mm, where the hole closes', 30, 2.1, 2],
    ['must end before 3.12 mm, where the hole breaks out of the boss', -30, 3.2, 3],
  ])('a hole of 2.4 in a boss of 6 %s with %f° a side: deeper is refused', (words, draft, tooDeep, fits) => {
    expect(refusal('BOSS.MASS', 6, 2.4, 12, 1.05, '0°', draft, tooDeep)).toContain(words);
    expect(number('BOSS.MASS', 6, 2.4, 12, 1.05, '0°', draft, fits)).toBeGreaterThan(0);
  });
  test('a hole that closes exactly at its bottom is none, and one just above that is one', () => {
    const closes = 2 * 10 * Math.tan(Math.PI / 180);
    expect(number('BOSS.MASS', 6, closes + 0.005, 12, 1.05, '0°', 1, 10)).toBeGreaterThan(0);
    expect(refusal('BOSS.MASS', 6, closes - 1e-9, 12, 1.05, '0°', 1, 10)).toContain('where the hole closes');
  });
  test('a hole as wide as the boss is refused', () => {
    expect(refusal('BOSS.MASS', 6, 6, 12, 1.05)).toMatch(/hole is 6: must be below od/);
  });
});

describe('torsion of a boss', () => {
  test('by hand: 16·600·6/(π·(6⁴ − 2.4⁴)) = 14.52 MPa', () => {
    expectPrinted(number('BOSS.TORSION', '600 N.mm', 6, 2.4), '14.52');
    expectPrinted(number('BOSS.TORSION', 0.6, 6, 2.4), '14.52');
  });
  test('identity: a thin tube carries 2·T/(π·D²·t)', () => {
    const [d, t] = [100, 0.001];
    expect(number('BOSS.TORSION', 1, d, d - 2 * t) / ((2 * 1000) / (Math.PI * d ** 2 * t))).toBeCloseTo(1, 4);
  });
  test('no wall, no answer', () => {
    expect(refusal('BOSS.TORSION', 1, 3, 3)).toMatch(/must be below od/);
  });
});

describe('recess for a head that floats', () => {
  test('by hand: 5.6 + (3.5 − 2.76) + 2·0.1 = 6.54', () => {
    expectPrinted(number('RECESS.FLOAT', 5.6, 3.5, 2.76, 0.1), 6.54);
  });
  test('from text: largest head (ISO 7045 M3: 5.6), largest hole (ISO 273 medium H13: 3.58), smallest screw (M3 6g: 2.874)', () => {
    expectPrinted(number('RECESS.FLOAT', 'M3 pan', 'M3 medium', 'M3', 0.1), 6.506);
  });
});

describe('countersink', () => {
  test('by hand: (6.3 − 3.4)/2 = 1.45 at 90°', () => {
    expectPrinted(number('RECESS.CONE', 6.3, 3.4, 90), 1.45);
    expectPrinted(number('RECESS.CONE', 6.3, 3.4, '90°'), 1.45);
  });
  test.each([
    ['ST2.2', 4.6, 2.4, '1.3'],
    ['ST2.9', 5.9, 3.1, '1.7'],
    ['ST3.5', 7.2, 3.7, '2.1'],
    ['ST3.9', 8.1, 4.2, '2.3'],
    ['ST4.2', 8.7, 4.5, '2.5'],
    ['ST4.8', 10.1, 5.1, '3.0'],
  ])(
    'DIN 74-1 form C (withdrawn, read in 1 secondary copy), %s, 80°: %f on %f is about %s deep, to the decimal that is printed',
    (_, sharp, hole, depth) => {
      expectText(number('RECESS.CONE', sharp, hole, 80), depth);
    },
  );
  test.each([
    ['ISO 7046-1 M3, theoretical 6.3 (read under ISO 7047), 90°', 'M3 countersunk', 3.4, (6.3 - 3.4) / 2],
    ['ISO 10642 M3, theoretical 6.72 (read in 3 secondary copies), 90°', 'M3 ISO 10642', 3.4, (6.72 - 3.4) / 2],
  ])('%s: the screw brings its angle', (_, text, hole, depth) => {
    expect(number('RECESS.CONE', text, hole)).toBeCloseTo(depth, 9);
  });
  test('an ASME B18.6.3 flat head brings 82°', () => {
    const sharp = number('SCREW.HEAD.DIAMETER', '#4', 'flat', 'sharp');
    expect(number('RECESS.CONE', '#4 flat', 3.3)).toBeCloseTo((sharp - 3.3) / 2 / Math.tan((41 * Math.PI) / 180), 12);
  });
  test('an angle that is given wins', () => {
    expect(number('RECESS.CONE', 'M3 countersunk', 3.4, 100)).toBeCloseTo(2.9 / 2 / Math.tan((50 * Math.PI) / 180), 12);
  });
  test.each([undefined, null, '', 0])('a number needs its angle; %j is none', angle => {
    expect(refusal('RECESS.CONE', 6.3, 3.4, angle)).toBe(
      '#VALUE! angle is left out: needed where sharp_diameter names no screw: ISO heads have 90°, ASME 82°, DIN 7982 80°',
    );
  });
  test('DIN 7982 heads are 80°; their diameters are not held, which is said', () => {
    for (const head of ['ST2.9 DIN 7982', 'ST2.9 DIN7982'])
      expect(refusal('RECESS.CONE', head, 3.1)).toMatch(/^#N\/A sharp_diameter .*give the sharp diameter in mm and the angle, 80$/);
    for (const other of ['DIN 79821', 'x DIN 7982'])
      expect(refusal('RECESS.CONE', `ST2.9 ${other}`, 3.1)).toContain(`"${other}" is not a head for ST2.9`);
  });
  test('a screw without its head, and a text that is no screw, are refused as what they are', () => {
    expect(refusal('RECESS.CONE', 'M3', 3.4)).toContain('say the head too');
    expect(refusal('RECESS.CONE', 'abc', 3.4)).toContain('not a length');
    expect(refusal('RECESS.CONE', '0 mm', 3.4)).toMatch(/sharp_diameter is "0 mm": must be above 0 mm/);
  });
  test('a flat-seated head has no cone, and a hole wider than the head no countersink', () => {
    expect(refusal('RECESS.CONE', 'M3 pan', 3.4)).toContain('not a countersunk head');
    expect(refusal('RECESS.CONE', 6.3, 6.3, 90)).toMatch(/hole is 6.3: must be below sharp_diameter/);
    expect(refusal('RECESS.CONE', 0, 3.4, 90)).toMatch(/sharp_diameter is 0 or blank/);
    expect(refusal('RECESS.CONE', -6.3, 3.4, 90)).toMatch(/sharp_diameter is -6.3: must be above 0 mm/);
  });
});

describe('room for the tool', () => {
  test('by hand: a hexagon of 6.35 across flats is 6.35/cos 30° = 7.33 across corners', () => {
    expectPrinted(20 - 1 - number('RECESS.TOOL', 20, '1/4 in hex', 1), '7.33');
    expectPrinted(20 - 1 - number('RECESS.TOOL', 20, '6.35 mm hex', 1), '7.33');
  });
  test('0.5 is kept where no margin is given; a recess of 7.4 is too narrow for the bit', () => {
    expectPrinted(number('RECESS.TOOL', 8, 6), 1.5);
    expect(number('RECESS.TOOL', 7.4, '1/4 in hex')).toBeLessThan(0);
  });
  test('a hexagon without a size, or in an unknown unit, is refused', () => {
    expect(refusal('RECESS.TOOL', 8, 'hex')).toMatch(/^#VALUE! tool_diameter/);
    expect(refusal('RECESS.TOOL', 8, '1/4 kg hex')).toMatch(/^#VALUE! tool_diameter/);
  });
});

describe('draft for a texture', () => {
  test('guide for draft (read in 1 secondary copy): 0.025 mm asks for 1.5°, 0.125 mm leather for 7.5°', () => {
    expectPrinted(number('DRAFT.TEXTURE', '0°', 0.025), 1.5);
    expectPrinted(number('DRAFT.TEXTURE', '0°', 0.125), 7.5);
    expectPrinted(number('DRAFT.TEXTURE', '0°', '25 µm'), 1.5);
  });
  test('by hand: 1° and 1.0° a step: 0.05 mm asks for 3°', () => {
    expectPrinted(number('DRAFT.TEXTURE', 1, 0.05, 1), 3);
  });
  test('a base of 0 is its published form; a texture as deep as a wall asks for more than 90°', () => {
    expect(number('DRAFT.TEXTURE', 0, 0.025)).toBe(1.5);
    expect(number('DRAFT.TEXTURE', 1, null)).toBe(1);
    expect(refusal('DRAFT.TEXTURE', 1, 2)).toContain('a texture deeper than 1.48 mm asks for 90° and more');
  });
});

test('BOSS.CORNER: WORKING says where boss and radius stand at the floor', () => {
  // 12·tan 1° = 0.20946; 4.5 and 6 less that; 5.7905 − √2·1.5
  const lines = String(value('WORKING', 'BOSS.CORNER', 6, 4.5, 4.5, 6, 12, 0, 1)).split('\n');
  expect(lines[1]).toMatch(/^x at floor = 4.5 − 0.2094\d* = 4.2905\d*$/);
  expect(lines[3]).toMatch(/^radius at floor = max\(0; 6 − 0.2094\d*\) = 5.7905\d*$/);
  expect(lines[4]).toMatch(/^room = 5.7905\d* − √\(\(5.7905\d* − 4.2905\d*\)² \+ \(5.7905\d* − 4.2905\d*\)²\) = 3.6692\d*$/);
});
