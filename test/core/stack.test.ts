import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { normalTail } from '../../src/core/maths';
import { number, refusal, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('core/stack.test.ts');

const seeded = { seed: SEED };
const inches = (mm: unknown): number => (mm as number) / 25.4;
const column = (...cells: unknown[]): unknown[][] => cells.map(cell => [cell]);

const BLOCKS = column('1.750 in', '0.750 in', '0.120 in', '0.875 in');
const BLOCK_TOLERANCES = column('0.003 in', '0.001 in', '0.005 in', '0.001 in');
const GAP_BEHIND = column(1, -1, -1, -1);

describe('published', () => {
  test('Shigley’s Mechanical Engineering Design, 9th ed., Ex. 1–3, p. 20 (read in 1 secondary copy): w = .005 ± .010 in; d = .867 in for w ≥ .003 in', () => {
    expectPrinted(inches(value('STACK.NOMINAL', BLOCKS, GAP_BEHIND)), 0.005);
    expectPrinted(inches(value('STACK.WORST', BLOCK_TOLERANCES, GAP_BEHIND)), 0.01);
    const redesigned = [...BLOCKS.slice(0, 3), ['0.867 in']];
    expectPrinted(inches(number('STACK.NOMINAL', redesigned, GAP_BEHIND) - number('STACK.WORST', BLOCK_TOLERANCES, GAP_BEHIND)), 0.003);
  });

  test('a problem of the same kind (read in 1 copy): 6.520 ±.010 − 1.500 ±.001 − 2.000 ±.003 − 3.000 ±.004 = .020 ± .018 in; 6.528 in for a gap of .010 in', () => {
    const tolerances = column('0.010 in', '0.001 in', '0.003 in', '0.004 in');
    const sizes = (first: string): unknown[][] => column(first, '1.500 in', '2.000 in', '3.000 in');
    expectPrinted(inches(value('STACK.NOMINAL', sizes('6.520 in'), GAP_BEHIND)), 0.02);
    expectPrinted(inches(value('STACK.WORST', tolerances, GAP_BEHIND)), 0.018);
    expectPrinted(inches(number('STACK.NOMINAL', sizes('6.528 in'), GAP_BEHIND) - number('STACK.WORST', tolerances, GAP_BEHIND)), 0.01);
    expectPrinted(inches(value('STACK.RSS', tolerances, GAP_BEHIND)), '0.01122');
  });

  test.each([
    [1, 0.8413447460685429],
    [2, 0.9772498680518208],
    [3, 0.9986501019683699],
    [3.5, 0.9997673709209645],
    [4, 0.9999683287581669],
  ])('Φ(%s) as printed in the output of algorithm AS 66 (read in 1 copy), to the last digit that a number near 1 has', (z, phi) => {
    expect(Math.abs(1 - normalTail(z) - phi)).toBeLessThanOrEqual(1.2e-16);
    expect(Math.abs(normalTail(-z) - phi)).toBeLessThanOrEqual(1.2e-16);
  });

  // the same page prints 0.55 for 1.67, which is the rounding of neither 1.67 (0.544) nor 5/3 (0.573)
  test.each([
    [0.5, 133_600, 50],
    [0.75, 24_400, 50],
    [1, 2700, 0.5],
    [1.2, 318, 0.5],
    [1.33, 66, 0.5],
    [1.5, 6.8, 0.05],
    [2, 0.002, 0.0005],
  ])('Cp %s centred: %s ppm, two-sided, in a table of a software maker (read in 1 copy)', (cp, ppm, halfDigit) => {
    expect(Math.abs(number('STACK.PPM', 0, 1, -3 * cp, 3 * cp) - ppm)).toBeLessThanOrEqual(halfDigit);
  });

  test('Cp 2 with Cpk 1.5: 3.4 ppm, the figure of the six-sigma literature (read in 1 copy)', () => {
    expectPrinted(value('STACK.PPM', 1.5, 1, -6, 6), '3.4');
    expectPrinted(value('STACK.CPK', 1.5, 1, -6, 6), 1.5);
  });

  test('the generator: xoroshiro128+ of 2018 from the state 1, 2 (reference output as printed in the tests of several libraries), lower halves of the first ten', () => {
    const printed = [
      3n,
      412333834243n,
      2360170716294286339n,
      9295852285959843169n,
      2797080929874688578n,
      6019711933173041966n,
      3076529664176959358n,
      3521761819100106140n,
      7493067640054542992n,
      920801338098114767n,
    ];
    const generator = xoroshiro128plusFromState([0, 1, 0, 2]);
    expect(printed.map(() => BigInt(generator.next() >>> 0))).toEqual(printed.map(word => word & 0xffffffffn));
  });
});

describe('by hand', () => {
  test('the blocks: root sum square .0060, with 1.5 .0090, modified .0080 in', () => {
    expectPrinted(inches(value('STACK.RSS', BLOCK_TOLERANCES, GAP_BEHIND)), 0.006);
    expectPrinted(inches(value('STACK.RSS', BLOCK_TOLERANCES, GAP_BEHIND, 1.5)), 0.009);
    expect(inches(value('STACK.MODIFIED', BLOCK_TOLERANCES, GAP_BEHIND))).toBeCloseTo(0.008, 9);
  });

  test('an unequal tolerance counts as half its width', () => {
    expect(value('STACK.WORST', column('+0.2/-0', '+0/-0.4'))).toBeCloseTo(0.3, 12);
    expect(value('STACK.RSS', column('+0.6/-0', '+0/-0.8'))).toBeCloseTo(0.5, 12);
    expect(value('STACK.WORST', 0.1)).toBe(0.1);
  });

  test('one tolerance and one sensitivity stand for every row', () => {
    expect(value('STACK.WORST', 0.1, column(1, -1, 2))).toBeCloseTo(0.4, 12);
    expect(value('STACK.NOMINAL', column(1, 2, 3))).toBe(6);
    expect(value('STACK.NOMINAL', column(1, 2, 3), -1)).toBe(-6);
    expect(value('STACK.NOMINAL', [[1, 2, 3]], column(1, 1, -1, 0, null))).toBe(0);
  });

  test('shares 9 : 16', () => expectPrinted(value('STACK.SHARE', column(0.3, 0.4)), [[0.36], [0.64]]));

  test('the table adds up', () => {
    const rows = value('STACK.TABLE', column('inside', '', 'board'), column(10, 5, 4), column(0.1, '+0.2/-0', 0.3), column(1, -1, -1)) as (
      string | number
    )[][];
    expect(rows.map(row => row[0])).toEqual([
      'link',
      'inside',
      '–',
      'board',
      'total, worst case',
      'total, root sum square',
      'total, modified root sum square',
    ]);
    const [worst, rss, modified] = rows.slice(4) as [number[], number[], number[]];
    for (const total of [worst, rss, modified]) {
      expect(total[1]).toBeCloseTo(1, 12);
      expect(total[5]).toBeCloseTo(0.9, 12);
      expect(((total[2] as number) + (total[3] as number)) / 2).toBeCloseTo(-0.1, 12);
      expect(((total[2] as number) - (total[3] as number)) / 2).toBeCloseTo(total[6] as number, 12);
    }
    expect(worst[6]).toBeCloseTo(0.5, 12);
    expect(rss[6]).toBeCloseTo(Math.sqrt(0.01 + 0.01 + 0.09), 12);
    const shares = rows.slice(1, 4).map(row => row[7] as number);
    expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(value('STACK.TABLE', column('a', 'b'), 1, '0 mm') as unknown[][]).toHaveLength(6);
    expect((value('STACK.TABLE', 'pad', column(1, 2), 0.1) as unknown[][]).slice(1, 3).map(([label]) => label)).toEqual(['pad', 'pad']);
  });

  test('tails: Cp 1.33 → 66.07, 4/3 → 63.34, 1.67 → .5443, 2 → .00197 ppm; one side of Cpk 1 → 1349.9; mean .005, σ .002 below 0 → 6209.7', () => {
    const centred = (cp: number): unknown => value('STACK.PPM', 0, 1, -3 * cp, 3 * cp);
    expectPrinted(centred(1.33), '66.07');
    expectPrinted(centred(4 / 3), '63.34');
    expectPrinted(centred(1.67), '0.5443');
    expectPrinted(centred(2), '0.00197');
    expectPrinted(value('STACK.PPM', 0, 1, 'none', 3), '1349.9');
    expectPrinted(value('STACK.PPM', 0.005, 0.002, 0, 'none'), '6209.7');
  });

  test('six digits far out: the continued fraction of the tail, term by term', () => {
    const tail = (z: number): number => {
      let below = z;
      for (let k = 400; k > 0; k--) below = z + k / below;
      return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / below;
    };
    for (const z of [4, 5, 6, 7.5, 9, 12, 20]) expect(number('STACK.PPM', 0, 1, 'none', z) / (1e6 * tail(z))).toBeCloseTo(1, 7);
  });

  test('quantiles: 1.644854 leaves 5 %, 2.326348 leaves 1 %, 3.090232 leaves 0.1 % on one side', () => {
    expect(value('STACK.PPM', 0, 1, 'none', 1.644854)).toBeCloseTo(50_000, 0);
    expect(value('STACK.PPM', 0, 1, 'none', 2.326348)).toBeCloseTo(10_000, 0);
    expect(value('STACK.PPM', 0, 1, -3.090232, 'none')).toBeCloseTo(1000, 1);
  });

  test('capability to the nearer limit, to the only one, negative beyond it', () => {
    expectPrinted(value('STACK.CPK', 10, 0.1, 9.4, 10.45), 1.5);
    expectPrinted(value('STACK.CPK', 10, 0.1, 9.4, 'none'), 2);
    expectPrinted(value('STACK.CPK', 10, 0.1, 'NONE', 10.45), 1.5);
    expectPrinted(value('STACK.CPK', 10.6, 0.1, 9.4, 10.45), -0.5);
    expectPrinted(value('STACK.CPK', 0.3, 0.1, 0, 'none'), 1);
  });
});

const stacks = fc.array(
  fc.tuple(
    fc.integer({ min: 1, max: 500 }).map(n => n / 1000),
    fc
      .integer({ min: -30, max: 30 })
      .filter(n => n !== 0)
      .map(n => n / 10),
  ),
  { minLength: 1, maxLength: 12 },
);

describe('properties', () => {
  test('worst ≥ modified ≥ root sum square; the inflated one lies between that and worst', () => {
    fc.assert(
      fc.property(stacks, rows => {
        const [tolerances, sensitivities] = [rows.map(([t]) => [t]), rows.map(([, a]) => [a])];
        const worst = number('STACK.WORST', tolerances, sensitivities);
        const modified = number('STACK.MODIFIED', tolerances, sensitivities);
        const rss = number('STACK.RSS', tolerances, sensitivities);
        const inflated = number('STACK.RSS', tolerances, sensitivities, 1.5);
        expect(worst).toBeGreaterThanOrEqual(modified);
        expect(modified).toBeGreaterThanOrEqual(rss * (1 - 1e-12));
        expect(worst).toBeGreaterThanOrEqual(inflated);
        expect(inflated).toBeGreaterThanOrEqual(rss);
        if (rows.length === 1) expect([modified, rss]).toEqual([worst, expect.closeTo(worst, 12)]);
      }),
      seeded,
    );
  });

  test('n equal links: worst n, root sum square √n, so (n − √n)/(√n − 1) = √n and modified is 1.5·√n; of two links it is the worst case', () => {
    for (const n of [3, 5, 9, 16]) {
      expect(
        value(
          'STACK.MODIFIED',
          Array.from({ length: n }, () => [1]),
        ),
      ).toBeCloseTo(1.5 * Math.sqrt(n), 12);
    }
    expect(value('STACK.MODIFIED', column(1, 1))).toBe(2);
  });

  test('a link without tolerance changes nothing', () => {
    fc.assert(
      fc.property(stacks, rows => {
        const [tolerances, sensitivities] = [rows.map(([t]) => [t]), rows.map(([, a]) => [a])];
        for (const id of ['STACK.WORST', 'STACK.RSS', 'STACK.MODIFIED']) {
          expect(value(id, [...tolerances, ['0 mm']], [...sensitivities, [1]])).toBe(value(id, tolerances, sensitivities));
        }
      }),
      seeded,
    );
  });

  test('the sign of a sensitivity and the side of a deviation do not matter to the half width', () => {
    fc.assert(
      fc.property(stacks, rows => {
        for (const id of ['STACK.WORST', 'STACK.RSS', 'STACK.MODIFIED', 'STACK.SHARE']) {
          const plain = value(
            id,
            rows.map(([t]) => [t]),
            rows.map(([, a]) => [a]),
          );
          const other = value(
            id,
            rows.map(([t]) => [`+${2 * t}/-0`]),
            rows.map(([, a]) => [-a]),
          );
          expect([other].flat(2).map(x => (x as number).toFixed(9))).toEqual([plain].flat(2).map(x => (x as number).toFixed(9)));
        }
      }),
      seeded,
    );
  });

  test('shares are 1 together', () => {
    fc.assert(
      fc.property(stacks, rows => {
        const shares = (
          value(
            'STACK.SHARE',
            rows.map(([t]) => [t]),
            rows.map(([, a]) => [a]),
          ) as number[][]
        ).flat();
        expect(shares).toHaveLength(rows.length);
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      }),
      seeded,
    );
  });

  test('fewer fall outside wider limits; capability and ppm agree for one limit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 30 }), (tenths, more) => {
        const z = tenths / 10;
        expect(number('STACK.PPM', 0, 1, -z - more / 10, z)).toBeLessThan(number('STACK.PPM', 0, 1, -z, z));
        expect(number('STACK.CPK', 5, 0.2, 'none', 5 + 0.2 * z)).toBeCloseTo(z / 3, 9);
        expect(number('STACK.PPM', 5, 0.2, 'none', 5 + 0.2 * z) / number('STACK.PPM', 0, 1, 'none', z)).toBeCloseTo(1, 7);
      }),
      seeded,
    );
  });
});

interface Simulated {
  readonly mean: number;
  readonly sd: number;
  readonly low: number;
  readonly high: number;
  readonly inside: number;
  readonly ppm: number;
}

function simulate(...args: unknown[]): Simulated {
  const rows = value('STACK.SIMULATE', ...args) as [string, number, string][];
  expect(rows.map(([quantity]) => quantity)).toEqual([
    'quantity',
    'mean',
    'standard deviation',
    '0.135 % point',
    '99.865 % point',
    'share inside',
    'outside',
  ]);
  const [mean, sd, low, high, inside, ppm] = rows.slice(1).map(([, x]) => x) as [number, number, number, number, number, number];
  return { mean, sd, low, high, inside, ppm };
}

describe('simulation', () => {
  const VALUES = column(20, 7, 8, 4.5);
  const TOLERANCES = column(0.15, '+0.2/-0', 0.1, '+0.05/-0.15');
  const SIGNS = column(1, -1, -1, -1);
  const SAMPLES = 100_000;
  const MIDDLE = 20 - 7.1 - 8 - 4.45;

  test.each([
    ['normal', 3],
    ['uniform', Math.sqrt(3)],
    ['triangular', Math.sqrt(6)],
  ] as const)('%s: mean and deviation within 5 standard errors of the root sum square', (shape, halfWidthInSigmas) => {
    const sigma = number('STACK.RSS', TOLERANCES, SIGNS) / halfWidthInSigmas;
    for (const seed of [1, 2, 77]) {
      const { mean, sd } = simulate(VALUES, TOLERANCES, SIGNS, 0, 1, SAMPLES, seed, shape);
      expect(Math.abs(mean - MIDDLE)).toBeLessThan((5 * sigma) / Math.sqrt(SAMPLES));
      expect(Math.abs(sd - sigma)).toBeLessThan((5 * sigma) / Math.sqrt(2 * SAMPLES));
    }
  });

  test('normal: shares and 0.135 % points within 5 standard errors of the normal distribution', () => {
    const sigma = number('STACK.RSS', TOLERANCES, SIGNS) / 3;
    const [lower, upper] = [MIDDLE - 2 * sigma, MIDDLE + sigma];
    const { inside, ppm, low, high } = simulate(VALUES, TOLERANCES, SIGNS, lower, upper, SAMPLES);
    const outside = number('STACK.PPM', MIDDLE, sigma, lower, upper) / 1e6;
    expect(Math.abs(1 - inside - outside)).toBeLessThan(5 * Math.sqrt((outside * (1 - outside)) / SAMPLES));
    expect(ppm).toBeCloseTo(1e6 * (1 - inside), 6);
    // the density at 3 σ is 0.00443/σ
    const pointError = (5 * Math.sqrt((0.00135 * 0.99865) / SAMPLES) * sigma) / 0.00443;
    expect(Math.abs(low - (MIDDLE - 3 * sigma))).toBeLessThan(pointError);
    expect(Math.abs(high - (MIDDLE + 3 * sigma))).toBeLessThan(pointError);
  });

  test.each([
    ['uniform', (x: number) => (x + 1) / 2],
    ['triangular', (x: number) => (x < 0 ? (1 + x) ** 2 / 2 : 1 - (1 - x) ** 2 / 2)],
    ['normal', (x: number) => 1 - normalTail(3 * x)],
  ] as const)('one link, %s: the share below each of 19 limits is that of its distribution, within 5 standard errors', (shape, below) => {
    for (let x = -0.9; x < 0.95; x += 0.1) {
      const { inside } = simulate(5, 1, 1, 'none', 5 + x, SAMPLES, 3, shape);
      const share = below(x);
      expect(Math.abs(inside - share)).toBeLessThan(5 * Math.sqrt((share * (1 - share)) / SAMPLES));
    }
  });

  test('uniform and triangular stay inside the worst case, and their 0.135 % points show it', () => {
    for (const shape of ['uniform', 'triangular']) {
      const { inside, low, high } = simulate(VALUES, TOLERANCES, SIGNS, MIDDLE - 0.45, MIDDLE + 0.45, SAMPLES, 1, shape);
      expect(inside).toBe(1);
      expect(high - low).toBeLessThan(0.9);
    }
    const one = simulate(5, 1, 1, 'none', 9, SAMPLES, 1, 'uniform');
    expect(one.low).toBeCloseTo(4.0027, 3);
    expect(one.high).toBeCloseTo(5.9973, 3);
  });

  test('without tolerances every sample is the nominal', () => {
    expect(simulate(column(5, 2), '0 mm', column(1, -1), 2.5, 'none', 1000)).toEqual({
      mean: 3,
      sd: 0,
      low: 3,
      high: 3,
      inside: 1,
      ppm: 0,
    });
    // one that lies on a limit is inside
    expect(simulate(3, '0 mm', 1, 3, ' None ', 1000).inside).toBe(1);
    expect(simulate(3, '0 mm', 1, 'none', 3, 1000).inside).toBe(1);
  });

  test('the same seed gives the same digits, another seed others; a blank seed is 1', () => {
    const ask = (seed: unknown): unknown => value('STACK.SIMULATE', VALUES, TOLERANCES, SIGNS, 0, 1, 5000, seed);
    expect(ask(7)).toEqual(ask(7));
    expect(ask(7)).not.toEqual(ask(8));
    expect(ask(null)).toEqual(ask(1));
    expect(ask(0)).toEqual(ask(1));
  });

  describe('pinned: own output, to the last digit on every platform', () => {
    test.each([
      ['normal', [0.45042677688249705, 0.0750985970403877, 0.2102102508235821, 0.6696949452801948, 0.9571, 42900]],
      ['uniform', [0.4489305960531219, 0.1315060244247318, 0.09147878509286791, 0.7988291015997534, 0.7352, 264800]],
      ['triangular', [0.44864485135792576, 0.09329763443187128, 0.17228193415617457, 0.7105294060742233, 0.8915, 108500]],
    ] as const)('%s', (shape, digits) => {
      expect(
        (value('STACK.SIMULATE', VALUES, TOLERANCES, SIGNS, 0.3, 0.6, 10_000, 42, shape) as unknown[][]).slice(1).map(row => row[1]),
      ).toEqual(digits);
    });
  });
});

describe('refused', () => {
  test.each([
    ['STACK.WORST', [column(0.1, 0, 0.2)], /^#VALUE! tolerances row 2 is 0 or blank/],
    ['STACK.WORST', [column(0.1, -0.2)], /^#VALUE! tolerances row 2 is -0.2: a tolerance is a half width of 0 or more/],
    ['STACK.WORST', [column(0.1, 0.2), column(1, 1, 1)], /^#VALUE! tolerances has 2 rows and sensitivities has 3/],
    ['STACK.WORST', [null], /^#VALUE! tolerances is blank/],
    ['STACK.NOMINAL', [column(1, 2, 3), column(1, 0, 1)], /^#VALUE! sensitivities row 2 is 0 or blank/],
    [
      'STACK.NOMINAL',
      [
        [
          [1, 2],
          [3, 4],
        ],
      ],
      /^#VALUE! values: give one row or one column/,
    ],
    ['STACK.RSS', [column(0.1, 0.2), 1, 0.9], /^#VALUE! inflation is 0.9: must be at least 1/],
    ['STACK.SHARE', [column('0 mm', '0 mm')], /^#VALUE! tolerances: none is above 0/],
    ['STACK.TABLE', [null, column(1, 2), 0.1], /^#VALUE! labels is blank/],
    ['STACK.TABLE', [column('a', Infinity), column(1, 2), 0.1], /^#VALUE! labels row 2 is Infinity: give a number or text/],
    ['STACK.TABLE', [column('a', 'b', 'c'), column(1, 2), 0.1], /^#VALUE! labels has 3 rows and values has 2/],
    ['STACK.SIMULATE', [5, 0.1, null, 4, 6], /^#VALUE! sensitivities is blank/],
    ['STACK.SIMULATE', [5, 0.1, 1, 6, 4], /^#VALUE! upper is 4: must be above lower, 6 mm/],
    ['STACK.SIMULATE', [5, 0.1, 1, 'none', 'none'], /^#VALUE! upper is "none": give at least one of lower and upper/],
    ['STACK.SIMULATE', [5, 0.1, 1, 4, 6, 999], /^#VALUE! samples is 999: must be at least 1000/],
    ['STACK.SIMULATE', [5, 0.1, 1, 4, 6, 1000.5], /^#VALUE! samples is 1000.5: give a whole number/],
    ['STACK.SIMULATE', [column(1, 2), 0.1, 1, 4, 6, 10_000_001], /^#VALUE! samples × links is 20000002; at most 20000000/],
    ['STACK.SIMULATE', [5, 0.1, 1, 4, 6, 1000, -1], /^#VALUE! seed is -1/],
    ['STACK.SIMULATE', [5, 0.1, 1, 4, 6, 1000, 1, 'skewed'], /^#VALUE! shape is "skewed": give one of "normal", "uniform", "triangular"/],
    ['STACK.PPM', [0, 0, -1, 1], /^#VALUE! sigma is 0 or blank/],
    ['STACK.PPM', [0, -1, -1, 1], /^#VALUE! sigma is -1: must be above 0/],
    ['STACK.PPM', [0, 1, 1, 1], /^#VALUE! upper is 1: must be above lower/],
    ['STACK.PPM', [0, 1, 'none', 'none'], /^#VALUE! upper/],
    ['STACK.PPM', [0, 1, 'any', 1], /^#VALUE! lower is "any"/],
    ['STACK.CPK', [10, '0 mm', 9, 11], /^#VALUE! sigma/],
    ['STACK.CPK', [10, 0.1, 11, 9], /^#VALUE! upper is 9: must be above lower, 11 mm/],
  ] as const)('%s %j', (id, args, message) => expect(refusal(id, ...args)).toMatch(message));

  test('an error in a range comes back as that error', () => {
    expect(refusal('STACK.WORST', column(0.1, { cellError: '#DIV/0!' }))).toMatch(/^#DIV\/0! tolerances row 2 is #DIV\/0!/);
    expect(refusal('STACK.TABLE', column('a', { cellError: '#N/A' }), column(1, 2), 0.1)).toMatch(/^#N\/A labels row 2 is #N\/A/);
  });
});
