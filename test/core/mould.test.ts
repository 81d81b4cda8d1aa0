import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { equivalentThicknessMm } from '../../src/core/mould/mould';
import { refusal, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('core/mould.test.ts');

const seeded = { seed: SEED };
const table = (id: string, ...args: unknown[]): Map<unknown, unknown> =>
  new Map((value(id, ...args) as [unknown, unknown][]).map(([name, cell]) => [name, cell]));
const size = fc.integer({ min: 50, max: 5000 }).map(n => n / 100);

describe('published', () => {
  test('Crawford, Plastics Engineering, p. 78 (read in 1 secondary copy): 2 mm aluminium, 70 GPa, is as stiff as 7.6 mm acetal, 1.3 GPa', () => {
    const widthMm = 10;
    const aluminiumAsAcetalMm4 = (70 / 1.3) * ((widthMm * 2 ** 3) / 12);
    expectPrinted(equivalentThicknessMm(aluminiumAsAcetalMm4, widthMm), '7.6');
  });

  test('Crawford, Plastics Engineering, p. 67 (read in 1 secondary copy; beam width 12 mm from memory): 1439 mm⁴ is a solid depth of 11.3 mm', () => {
    expectPrinted(equivalentThicknessMm(1439, 12), '11.3');
  });

  test('a web page on casting shrinkage (read in 1 copy): 50 × 30 × 20 at 1 % needs 50.51 × 30.30 × 20.20', () => {
    expect(value('CAVITY.SIZE', 50, 0.01)).toBeCloseTo(50.51, 2);
    expect(value('CAVITY.SIZE', 30, '1 %')).toBeCloseTo(30.3, 2);
    expect(value('CAVITY.SIZE', 20, '1 %')).toBeCloseTo(20.2, 2);
  });
});

describe('ribs by hand', () => {
  test('base and tip: 0.8 + 2·10·tan 0.5° = 0.975', () => {
    expectPrinted(value('RIB.BASE', 0.8, 10, '0.5°'), '0.975');
    expect(value('RIB.TIP', 1, 5, 45)).toBeCloseTo(-9, 12);
    expect(value('RIB.TIP', 1.2, 0, 1)).toBe(1.2);
    expect(value('RIB.TIP', 1.2, 10, null)).toBe(1.2);
  });

  test('base and tip undo each other', () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: 0, max: 50 }), (tipMm, heightMm, tenths) => {
        expect(value('RIB.TIP', value('RIB.BASE', tipMm, heightMm, tenths / 10), heightMm, tenths / 10)).toBeCloseTo(tipMm, 9);
      }),
      seeded,
    );
  });

  test('section with drafted rib: I 251.06, equivalent thickness 5.321', () => {
    const section = table('RIB.SECTION', 20, 2.5, 1.25, value('RIB.TIP', 1.25, 7.5, '0.5°'), 7.5);
    expectPrinted(section.get('second moment of area'), '251.06');
    expectPrinted(section.get('equivalent flat thickness'), '5.321');
  });

  test('a rib as wide as its strip is a plate of the whole height: B·H³/12, H/2, B·H²/6, H', () => {
    fc.assert(
      fc.property(size, size, size, (widthMm, wallMm, heightMm) => {
        const section = table('RIB.SECTION', widthMm, wallMm, widthMm, widthMm, heightMm);
        const wholeMm = wallMm + heightMm;
        const share = (name: string, expected: number): number => (section.get(name) as number) / expected;
        expect(share('area', widthMm * wholeMm)).toBeCloseTo(1, 9);
        expect(share('centroid from the outer face', wholeMm / 2)).toBeCloseTo(1, 9);
        expect(share('second moment of area', (widthMm * wholeMm ** 3) / 12)).toBeCloseTo(1, 9);
        expect(share('section modulus at the tip', (widthMm * wholeMm ** 2) / 6)).toBeCloseTo(1, 9);
        expect(share('equivalent flat thickness', wholeMm)).toBeCloseTo(1, 9);
      }),
      seeded,
    );
  });

  test('the tapered section agrees with a sum of 20,000 slices', () => {
    const [widthMm, wallMm, baseMm, tipMm, heightMm] = [18, 2, 1.6, 0.7, 9] as const;
    const slices = 20_000;
    const stepMm = (wallMm + heightMm) / slices;
    const at = (i: number): { y: number; area: number } => {
      const y = (i + 0.5) * stepMm;
      return { y, area: stepMm * (y < wallMm ? widthMm : baseMm + ((tipMm - baseMm) * (y - wallMm)) / heightMm) };
    };
    const all = Array.from({ length: slices }, (_, i) => at(i));
    const area = all.reduce((sum, s) => sum + s.area, 0);
    const centroid = all.reduce((sum, s) => sum + s.area * s.y, 0) / area;
    const second = all.reduce((sum, s) => sum + s.area * (s.y - centroid) ** 2, 0);
    const section = table('RIB.SECTION', widthMm, wallMm, baseMm, tipMm, heightMm);
    expect(section.get('area')).toBeCloseTo(area, 2);
    expect(section.get('centroid from the outer face')).toBeCloseTo(centroid, 3);
    expect((section.get('second moment of area') as number) / second).toBeCloseTo(1, 4);
  });
});

describe('lip and rim by hand', () => {
  test('skin of 2.5 with lip 1.0 and gap 0.15: stepped 1.35, tongue and groove 1.20', () => {
    expect(value('LIP.SKIN', 2.5, 1, 0.15)).toBeCloseTo(1.35, 12);
    expect(value('LIP.SKIN', 2.5, 1, 0.15, 2)).toBeCloseTo(1.2, 12);
    expect(refusal('LIP.SKIN', 2.5, 1, 0.15, 3)).toMatch(/^#VALUE! gaps is 3: must be at least 1 and at most 2/);
    expect(refusal('LIP.SKIN', 2.5, 1, 0.15, 1.5)).toMatch(/a whole number/);
  });

  test.each([
    [0.05, [-0.08, 0.05, 0.18]],
    [0.15, [0.02, 0.15, 0.28]],
    [0.25, [0.12, 0.25, 0.38]],
  ])('lip gap %s with 0.13 of scatter', (gapMm, row) => expectPrinted(value('LIP.FIT', gapMm, 0.025, 0.025, 0.08), [row]));

  test('a thicker lip closes the gap, a wider groove opens it', () => {
    expectPrinted(value('LIP.FIT', 0.2, '+0.1/-0', 0), [[0.1, 0.2, 0.2]]);
    expectPrinted(value('LIP.FIT', 0.2, 0, '+0.1/-0'), [[0.2, 0.2, 0.3]]);
  });

  test('rim: equal stacks close, the taller boss opens it', () => {
    expect(value('RIM.GAP', 25, 25)).toBe(0);
    expect(value('RIM.GAP', 25.5, 25)).toBeCloseTo(0.5, 12);
    expectPrinted(value('RIM.GAP.LIMITS', [[13], [12]], 0.1, [[24.5]], '+0/-0.2'), [[0.3, 0.5, 0.9, '0.1732']]);
  });

  test('rim: the two stacks need not have as many layers, but each as many tolerances', () => {
    expect(refusal('RIM.GAP.LIMITS', [[13], [12]], [[0.1], [0.1], [0.1]], 24.5, 0.1)).toMatch(
      /boss_layers has 2 rows and boss_tolerances has 3/,
    );
    expect(refusal('RIM.GAP.LIMITS', [[13], [0], [12]], 0.1, 24.5, 0.1)).toMatch(/^#VALUE! boss_layers row 2 is 0 or blank/);
  });

  test('rim: limits lie about the nominal, the half spread never above half of them', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 6 }), rows => {
        const layers = rows.map(([mm]) => [mm]);
        const tolerances = rows.map(([, mm]) => [mm / 100]);
        const [[min, nominal, max, spread]] = value('RIM.GAP.LIMITS', layers, tolerances, 30, 0.1) as [[number, number, number, number]];
        expect(nominal - min).toBeCloseTo(max - nominal, 9);
        expect(spread).toBeLessThanOrEqual((max - min) / 2 + 1e-9);
        expect(spread).toBeGreaterThan(0);
      }),
      seeded,
    );
  });
});

describe('junction of wall and rib by hand, ÷ wall', () => {
  test.each([
    [0.5, 0, 1.0625],
    [0.6, 0, 1.09],
    [1, 0, 1.25],
    [0.5, 0.25, '1.1667'],
    [0.6, 0.25, '1.2017'],
    [0.5, 0.5, '1.281'],
  ])('rib %s, fillet %s', (rib, fillet, ratio) => {
    expectPrinted(value('JUNCTION.RATIO', 1, rib, fillet), ratio);
    expectPrinted(value('JUNCTION.RATIO', 2.5, 2.5 * rib, 2.5 * fillet), ratio);
  });

  test('wall 2, rib 1.2: circle 2.403 with fillet 0.5, 2.18 without', () => {
    expectPrinted(value('JUNCTION.CIRCLE', 2, 1.2, 0.5), '2.403');
    expectPrinted(value('JUNCTION.CIRCLE', 2, 1.2), 2.18);
  });

  test('the circle touches the outer face and both fillets', () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 1, max: 100 }), fc.integer({ min: 0, max: 100 }), (wallMm, ribPercent, filletPercent) => {
        const [ribMm, filletMm] = [(wallMm * ribPercent) / 100, (wallMm * filletPercent) / 100];
        const radiusMm = (value('JUNCTION.CIRCLE', wallMm, ribMm, filletMm) as number) / 2;
        const betweenCentres = Math.hypot(ribMm / 2 + filletMm, wallMm + filletMm - radiusMm);
        expect(betweenCentres / (radiusMm + filletMm)).toBeCloseTo(1, 9);
      }),
      seeded,
    );
  });

  test('a rib wider than twice wall and fillet holds a circle of its own width, and there is no step where this begins', () => {
    expect(value('JUNCTION.CIRCLE', 2, 8, 0.5)).toBe(8);
    expect(value('JUNCTION.CIRCLE', 2, 5, 0.5)).toBeCloseTo(5, 12);
    expect(value('JUNCTION.CIRCLE', 2, 4.99, 0.5)).toBeCloseTo(4.99, 4);
  });
});

describe('cooling time', () => {
  /** Mean or centre of a plate of thickness 1 at Fourier number fo, as a share of the first difference, by the whole series. */
  const series = (criterion: 'centre' | 'mean', fo: number): number =>
    Array.from({ length: 40 }, (_, i) => 2 * i + 1).reduce((sum, n) => {
      const decay = Math.exp(-(n ** 2) * Math.PI ** 2 * fo);
      return sum + decay * (criterion === 'centre' ? (4 / (Math.PI * n)) * (-1) ** ((n - 1) / 2) : 8 / (Math.PI * n) ** 2);
    }, 0);

  test.each([
    [2, 'ABS', 240, 60, 90, '9.695', '7.542'],
    [3, 0.085, 240, 60, 90, '21.814', '16.97'],
    [2.5, 'PC', 300, 90, 130, '11.46', '8.73'],
    [2, 'PP', 230, 40, 90, '9.83', '7.01'],
    [2, 'PA66-GF30', 290, 80, 150, '4.94', '3.27'],
  ])('by hand: %s mm, %s, %s/%s/%s °C: centre %s s, mean %s s', (thickness, diffusivity, melt, mould, eject, centreS, meanS) => {
    expectPrinted(value('COOLING.TIME', thickness, diffusivity, melt, mould, eject), centreS);
    expectPrinted(value('COOLING.TIME', thickness, diffusivity, melt, mould, eject, 'mean'), meanS);
  });

  test.each(['centre', 'mean'] as const)('the whole series gives the ejection temperature at that time, %s', criterion => {
    const timeS = value('COOLING.TIME', 2, 0.085, 240, 60, 90, criterion) as number;
    expect(60 + 180 * series(criterion, (0.085 * timeS) / 2 ** 2)).toBeCloseTo(90, 3);
  });

  // 8/π² · (240 − 60) is 145.9 K above the mould
  test('the mean needs time as long as it is ejected below 205.9 °C', () => {
    expectPrinted(value('COOLING.TIME', 2, 0.085, 240, 60, 205, 'mean'), '0.030');
    expect(refusal('COOLING.TIME', 2, 0.085, 240, 60, 206, 'mean')).toMatch(/eject 206 °C is so near melt 240 °C/);
  });

  test('it goes with the square of the thickness: 2 → 3 mm is 2.25 times (read in several secondary copies)', () => {
    expect((value('COOLING.TIME', 3, 'ABS', 240, 60, 90) as number) / (value('COOLING.TIME', 2, 'ABS', 240, 60, 90) as number)).toBeCloseTo(
      2.25,
      12,
    );
  });

  test('the centre takes longer than the mean, a hotter mould longer than a colder one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 80 }), fc.integer({ min: 5, max: 60 }), (mould, above) => {
        const args = [2, 0.1, 260, mould, mould + above] as const;
        expect(value('COOLING.TIME', ...args)).toBeGreaterThan(value('COOLING.TIME', ...args, 'mean') as number);
        expect(value('COOLING.TIME', ...args)).toBeLessThan(value('COOLING.TIME', 2, 0.1, 260, mould + 1, mould + above) as number);
      }),
      seeded,
    );
  });

  test.each([
    [[2, 0.085, 240, 60, 60], /^#VALUE! eject is 60: must lie between mould 60 °C and melt 240 °C/],
    [[2, 0.085, 240, 60, 240], /eject is 240/],
    [[2, 0.085, 60, 240, 90], /eject is 90/],
    [[2, 0.085, 240, 60, 230, 'mean'], /^#VALUE! criterion is "mean": eject 230 °C is so near melt/],
    [[2, 0.085, 240, 0, 90], /^#VALUE! mould is 0 or blank/],
    [[2, 0.085, '513 K', 60, 90], /^#VALUE! melt is "513 K"/],
    [[2, 0.085, 240, 60, 90, 'edge'], /give one of "centre", "mean"/],
    [[0, 0.085, 240, 60, 90], /^#VALUE! thickness is 0 or blank/],
    [[2, 'XYZ', 240, 60, 90], /^#VALUE! diffusivity/],
  ])('refused: %j', (args, message) => expect(refusal('COOLING.TIME', ...args)).toMatch(message));

  test('a mould at 0 °C is written with its unit; close to the melt the centre still has a time', () => {
    expect(value('COOLING.TIME', 2, 0.085, 240, '0 °C', 90)).toBeGreaterThan(0);
    expect(value('COOLING.TIME', 2, 0.085, 240, 60, 239.9)).toBeGreaterThan(0);
  });
});

describe('cavity size', () => {
  test('shrinkage refers to the cavity: 100 at 2 % is 102.0408, not 102; a material brings its own', () => {
    expectPrinted(value('CAVITY.SIZE', 100, 0.02), '102.0408');
    expectPrinted(value('CAVITY.SIZE', 100, 'ABS'), '100.6036');
    expectPrinted(value('CAVITY.SIZE', 100, [['shrinkage', '0.6 %']]), '100.6036');
    expect(value('CAVITY.SIZE', 100, '0 %')).toBe(100);
  });

  test('the cavity shrinks to the part', () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 1, max: 40 }), (partMm, thousandths) => {
        const cavityMm = value('CAVITY.SIZE', partMm, thousandths / 1000) as number;
        expect(cavityMm * (1 - thousandths / 1000)).toBeCloseTo(partMm, 9);
      }),
      seeded,
    );
  });

  test('refused: no shrinkage, all of it, more than all', () => {
    expect(refusal('CAVITY.SIZE', 100, 0)).toMatch(/^#VALUE! shrinkage is 0 or blank/);
    expect(refusal('CAVITY.SIZE', 100, 1)).toMatch(/below 1/);
    expect(refusal('CAVITY.SIZE', 100, -0.01)).toMatch(/at least 0/);
    expect(refusal('CAVITY.SIZE', 0, 0.01)).toMatch(/^#VALUE! part is 0 or blank/);
  });
});
