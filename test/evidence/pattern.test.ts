// One board over all screws: the least play of an assembly against finer and finer searches, that of many against integration and against
// other draws.
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { leastPlay, patternOf } from '../../src/core/pattern/fit';
import { value } from '../kit/ask';
import { refereed } from '../kit/refereed';
import { SEED } from '../kit/seed';

const test = refereed('evidence/pattern.test.ts');

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Uniform draws of another kind than the product's. */
function uniformDraws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The largest distance between hole and boss at a shift and a turn; where a turn moves a hole is the caller's. */
const largest = (screws: readonly Place[], off: readonly Place[], shift: Place, moved: (screw: Place) => Place): number =>
  Math.max(
    ...off.map(({ x, y }, i) => {
      const by = moved(screws[i] as Place);
      return Math.hypot(x - shift.x - by.x, y - shift.y - by.y);
    }),
  );
const small =
  (turn: number) =>
  ({ x, y }: Place): Place => ({ x: -turn * y, y: turn * x });
const exact =
  (turn: number) =>
  ({ x, y }: Place): Place => ({ x: x * Math.cos(turn) - y * Math.sin(turn) - x, y: x * Math.sin(turn) + y * Math.cos(turn) - y });

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Where a convex function is lowest, by golden section. */
function lowestAt(f: (x: number) => number, low: number, high: number, steps = 54): number {
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atA, atB] = [f(a), f(b)];
  for (let i = 0; i < steps; i++)
    if (atA < atB) {
      [high, b, atB] = [b, a, atA];
      a = high - GOLDEN * (high - low);
      atA = f(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + GOLDEN * (high - low);
      atB = f(b);
    }
  return atA < atB ? a : b;
}
const lowest = (f: (x: number) => number, low: number, high: number): number => f(lowestAt(f, low, high));

type Move = (turn: number) => (screw: Place) => Place;
/** Twice the smallest largest distance: searched in y for every x, in x for every turn; each of them is convex. */
function searched(screws: readonly Place[], off: readonly Place[], reach: number, move: Move): number {
  const farthest = Math.max(...screws.map(({ x, y }) => Math.hypot(x, y)));
  const atTurn = (turn: number): number =>
    lowest(x => lowest(y => largest(screws, off, { x, y }, move(turn)), -reach, reach), -reach, reach);
  return 2 * lowest(atTurn, (-4 * reach) / farthest, (4 * reach) / farthest);
}

const ours = (screws: readonly Place[], off: readonly Place[]): ReturnType<typeof leastPlay> => {
  const points = { x: new Float64Array(off.length), y: new Float64Array(off.length) };
  const pattern = patternOf(
    screws.map(({ x }) => x),
    screws.map(({ y }) => y),
  );
  return leastPlay(pattern, { x: Float64Array.from(off, ({ x }) => x), y: Float64Array.from(off, ({ y }) => y) }, points);
};

const size = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map(thousandths => thousandths / 1000);
const places = (count: number, reach: number): fc.Arbitrary<readonly Place[]> =>
  fc.array(fc.record({ x: size(-reach, reach), y: size(-reach, reach) }), { minLength: count, maxLength: count });
const assemblies = (count: number, runs: number): (readonly [screws: readonly Place[], off: readonly Place[]])[] =>
  fc
    .sample(fc.tuple(places(count, 60), places(count, 0.3)), { seed: SEED + count, numRuns: runs })
    .filter(([screws]) =>
      screws.every((one, i) => screws.every((other, j) => i === j || Math.hypot(one.x - other.x, one.y - other.y) > 5)),
    );

describe('one assembly', () => {
  test.each([2, 3, 4, 6])('least play of %d screws to 1e-9 mm, by search in shift and turn', count => {
    const all = assemblies(count, 8);
    expect(all.length).toBeGreaterThanOrEqual(4);
    for (const [screws, off] of all) expect(Math.abs(ours(screws, off).playMm - searched(screws, off, 1, small))).toBeLessThan(1e-9);
  });

  test('two screws need what their distance is off, along their line', () => {
    for (const [[a, b], [p, q]] of assemblies(2, 200) as [[Place, Place], [Place, Place]][]) {
      const along = ((b.x - a.x) * (q.x - p.x) + (b.y - a.y) * (q.y - p.y)) / Math.hypot(b.x - a.x, b.y - a.y);
      expect(ours([a, b], [p, q]).playMm).toBeCloseTo(Math.abs(along), 9);
    }
  });

  test('a shift and a small turn of the whole board change nothing; a stretched board needs its stretch', () => {
    for (const [screws, off] of assemblies(4, 100)) {
      const moved = off.map(({ x, y }, i) => {
        const by = small(0.004)(screws[i] as Place);
        return { x: x + 0.2 + by.x, y: y - 0.1 + by.y };
      });
      expect(ours(screws, moved).playMm).toBeCloseTo(ours(screws, off).playMm, 8);
    }
    const square = [1, 1, -1, -1].map((x, i) => ({ x: 40 * x, y: [30, -30, -30, 30][i] as number }));
    // ⌀100 round the middle: a thousandth longer is 0.05 at every screw
    expect(
      ours(
        square,
        square.map(({ x, y }) => ({ x: x / 1000, y: y / 1000 })),
      ).playMm,
    ).toBeCloseTo(0.1, 9);
    expect(
      ours(
        square,
        square.map(() => ({ x: 0.3, y: -0.2 })),
      ).playMm,
    ).toBeCloseTo(0, 9);
  });

  test('the search would notice a turn or a shift that is not the best', () => {
    const all = assemblies(4, 8);
    const without = all.map(([screws, off]) => 2 * lowest(x => lowest(y => largest(screws, off, { x, y }, small(0)), -1, 1), -1, 1));
    expect(without.filter((play, i) => play - ours(...(all[i] as (typeof all)[number])).playMm > 1e-3).length).toBeGreaterThan(
      all.length / 2,
    );
  });

  test('the exact turn needs no other play than by the error that is told', () => {
    const all = assemblies(4, 8);
    const errors = all.map(([screws, off]) => {
      const { farthestMm } = patternOf(
        screws.map(({ x }) => x),
        screws.map(({ y }) => y),
      );
      const { playMm, turnMm } = ours(screws, off);
      const middle = { x: screws.reduce((sum, { x }) => sum + x / 4, 0), y: screws.reduce((sum, { y }) => sum + y / 4, 0) };
      const centred = screws.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
      const reached = searched(centred, off, 1, exact);
      return [Math.abs(reached - playMm), turnMm ** 2 / farthestMm] as const;
    });
    for (const [is, told] of errors) expect(is).toBeLessThanOrEqual(1.1 * told + 1e-9);
    expect(errors.some(([is]) => is > 1e-6)).toBe(true);
  });
});

/** Shares of the deviation along a line: normal in both directions, cut at the circle of the zone, added up across. */
const STEP = 0.001;
function acrossZone(zone: number): number[] {
  const half = zone / 2;
  const sigma = half / 3;
  const cells = Math.round(half / STEP);
  const density = Array.from({ length: 2 * cells + 1 }, (_, i) => {
    const x = (i - cells) * STEP;
    const top = Math.sqrt(Math.max(0, half ** 2 - x ** 2));
    // Simpson across
    let across = 0;
    for (let k = 0; k <= 200; k++) {
      const weight = k === 0 || k === 200 ? 1 : k % 2 === 1 ? 4 : 2;
      across += (weight * Math.exp(-(((top * k) / 200 / sigma) ** 2) / 2) * top) / 600;
    }
    return Math.exp((-x * x) / (2 * sigma ** 2)) * across;
  });
  const sum = density.reduce((total, each) => total + each, 0);
  return density.map(each => each / sum);
}

function folded(a: readonly number[], b: readonly number[]): number[] {
  const out = new Array<number>(a.length + b.length - 1).fill(0);
  a.forEach((p, i) => b.forEach((q, j) => ((out[i + j] as number) += p * q)));
  return out;
}

/** Share within ± limit; the cell at the limit in part. */
const within = (density: readonly number[], limit: number): number => {
  const middle = (density.length - 1) / 2;
  return density.reduce((share, each, i) => {
    const cells = limit / STEP - Math.abs(i - middle);
    return share + each * Math.min(1, Math.max(0, cells + 0.5));
  }, 0);
};

type Told = ReadonlyMap<string, number | string>;
const told = (...args: readonly unknown[]): Told =>
  new Map((value('PATTERN.FIT', ...args) as [string, number | string][]).map(([name, it]) => [name, it]));
const SHARE = 'share that goes together';
const LEAST = 'least play with which 99.73 % go together';

/** Least radius: of all circles on two or through three points the smallest that holds all. */
function byCircles(points: readonly Place[]): number {
  let smallest = Infinity;
  const tryAt = (middle: Place): void => {
    smallest = Math.min(smallest, Math.max(...points.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y))));
  };
  points.forEach((p, i) =>
    points.slice(0, i).forEach((q, j) => {
      tryAt({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
      for (const r of points.slice(0, j)) {
        // where the three distances are equal
        const [ax, ay, bx, by] = [q.x - p.x, q.y - p.y, r.x - p.x, r.y - p.y];
        const twice = 2 * (ax * by - ay * bx);
        const [a2, b2] = [ax * ax + ay * ay, bx * bx + by * by];
        tryAt({ x: p.x + (by * a2 - ay * b2) / twice, y: p.y + (ax * b2 - bx * a2) / twice });
      }
    }),
  );
  return smallest;
}

/** Least play, and the two screws that are then farthest from each other’s place. */
function fitted(screws: readonly Place[], off: readonly Place[]): { readonly play: number; readonly pair: string } {
  const turned = (turn: number): Place[] =>
    off.map(({ x, y }, i) => {
      const by = small(turn)(screws[i] as Place);
      return { x: x - by.x, y: y - by.y };
    });
  const left = turned(lowestAt(turn => byCircles(turned(turn)), -0.02, 0.02, 30));
  const apart = left.flatMap((p, i) =>
    left.slice(i + 1).map((q, k) => [Math.hypot(p.x - q.x, p.y - q.y), `${i + 1} and ${i + k + 2}`] as const),
  );
  return { play: 2 * byCircles(left), pair: apart.reduce((most, one) => (one[0] > most[0] ? one : most))[1] };
}

describe('many assemblies', () => {
  const [zoneBoss, zoneHole] = [0.4, 0.2];

  test('two screws, by integration: share and least play', () => {
    const one = folded(acrossZone(zoneBoss), acrossZone(zoneHole));
    const both = folded(one, one);
    const samples = 500_000;
    const play = 0.16;
    const share = within(both, play);
    let [low, high] = [0, 1];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (within(both, middle) < 0.9973) low = middle;
      else high = middle;
    }
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(0.95);
    const answer = told([[10], [70]], [[20], [55]], zoneBoss, zoneHole, play, samples);
    // five standard errors of so many samples
    expect(Math.abs(Number(answer.get(SHARE)) - share)).toBeLessThan(5 * Math.sqrt((share * (1 - share)) / samples));
    const slope = (within(both, low + 0.01) - within(both, low - 0.01)) / 0.02;
    expect(Math.abs(Number(answer.get(LEAST)) - low)).toBeLessThan((5 * Math.sqrt((0.9973 * 0.0027) / samples)) / slope + STEP / 10);
    expect([answer.get('worst pair'), answer.get('share in which it is the worst')]).toEqual(['1 and 2', 1]);
    // play per side for play on diameter
    expect(Math.abs(within(both, 2 * play) - share)).toBeGreaterThan(0.05);
  });

  test('four screws, by search and other draws: share, least play and the worst pair', () => {
    // a long board: what turns it is on one side
    const screws: readonly Place[] = [
      { x: 5, y: 5 },
      { x: 95, y: 5 },
      { x: 95, y: 45 },
      { x: 40, y: 45 },
    ];
    const uniform = uniformDraws(SEED);
    const inZone = (zone: number): Place => {
      for (;;) {
        const [radius, angle] = [Math.sqrt(-2 * Math.log(1 - uniform())), 2 * Math.PI * uniform()];
        if (radius <= 3) return { x: (zone / 6) * radius * Math.cos(angle), y: (zone / 6) * radius * Math.sin(angle) };
      }
    };
    const runs = 3000;
    const fits = Array.from({ length: runs }, () => {
      const off = screws.map(() => {
        const [boss, hole] = [inZone(zoneBoss), inZone(zoneHole)];
        return { x: boss.x - hole.x, y: boss.y - hole.y };
      });
      return fitted(screws, off);
    });
    const plays = fits.map(({ play }) => play).sort((a, b) => a - b);
    const play = 0.2;
    const share = plays.filter(each => each <= play).length / runs;
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.9);
    const answer = told([screws.map(({ x }) => x)], [screws.map(({ y }) => y)], zoneBoss, zoneHole, play);
    expect(Math.abs(Number(answer.get(SHARE)) - share)).toBeLessThan(5 * Math.sqrt((share * (1 - share)) / runs));
    // of 3000 some 8 lie above the 99.73 % point: never 26, never none of them (e^-8)
    expect(Number(answer.get(LEAST))).toBeGreaterThan(plays[runs - 26] as number);
    expect(Number(answer.get(LEAST))).toBeLessThan(plays[runs - 1] as number);
    const pair = answer.get('worst pair');
    const often = (one: unknown): number => fits.filter(fit => fit.pair === one).length / runs;
    const most = often(pair);
    expect(Math.max(...[...new Set(fits.map(fit => fit.pair))].map(often))).toBe(most);
    expect(Math.abs(Number(answer.get('share in which it is the worst')) - most)).toBeLessThan(5 * Math.sqrt((most * (1 - most)) / runs));
  });
});
