// Rim and seal by another way: a beam whose curvature is added up, every corner of the tolerances, a cord cut into slices.
import { describe, expect } from 'vitest';
import { call } from '../../src/registry';
import { agree, type Case, cases, integral, root } from '../kit/another-way';
import { value } from '../kit/ask';
import { refereed } from '../kit/refereed';

const test = refereed('evidence/seal.test.ts');

type Range = readonly [lower: number, upper: number];
const text = ([lower, upper]: Range): string => `+${upper} mm/${lower} mm`;

describe('a beam under an even load, its curvature added up twice', () => {
  /** The integrands are polynomials of the third degree at most. */
  const STEPS = 4;
  type Beam = Record<'pitch' | 'load' | 'modulus' | 'second' | 'sag', number>;
  const all = cases({ pitch: [20, 60], load: [0.05, 0.6], modulus: [1000, 3000], second: [60, 400], sag: [0.02, 1] }, 60);

  /** Deflection of the middle against the ends, for a moment at both ends. */
  const middleMm = ({ pitch, load, modulus, second }: Omit<Beam, 'sag'>, endMoment: number): number =>
    integral(x => (x * ((load / 2) * x * (pitch - x) - endMoment)) / (modulus * second), 0, pitch / 2, STEPS);
  /** Clamped: the moment at the ends is that which lets the slope be level there and in the middle. */
  const clampedMm = (beam: Omit<Beam, 'sag'>): number => {
    const { pitch, load } = beam;
    const turned = (endMoment: number): number => integral(x => endMoment - (load / 2) * x * (pitch - x), 0, pitch / 2, STEPS);
    return middleMm(beam, root(turned, 0, load * pitch ** 2));
  };
  const simpleMm = (beam: Omit<Beam, 'sag'>): number => middleMm(beam, 0);
  const as = (one: Case): Beam => one as Beam;

  test('RIM.SAG: curvature, clamped by a moment that holds the ends level', () => {
    agree(
      all,
      one => value('RIM.SAG', as(one).pitch, as(one).load, as(one).modulus, as(one).second),
      one => [clampedMm(as(one))],
      {
        'simple ends': one => [simpleMm(as(one))],
        'a load at one point': one => [(as(one).load * as(one).pitch ** 4) / (192 * as(one).modulus * as(one).second)],
        'one clamped end': one => [(as(one).load * as(one).pitch ** 4) / (185 * as(one).modulus * as(one).second)],
        'the cube of the pitch': one => [clampedMm(as(one)) / as(one).pitch],
      },
    );
    agree(
      all,
      one => value('RIM.SAG', as(one).pitch, as(one).load, as(one).modulus, as(one).second, 'simple'),
      one => [simpleMm(as(one))],
      { 'clamped ends': one => [clampedMm(as(one))] },
    );
  });

  test('RIM.PITCH: a pitch that grows until the beam opens so far', () => {
    const pitchOf = (beam: Beam, sagMm: (one: Omit<Beam, 'sag'>) => number): number =>
      root(pitch => sagMm({ ...beam, pitch }) - beam.sag, 0, 1000);
    for (const [ends, right, wrong] of [
      ['clamped', clampedMm, simpleMm],
      ['simple', simpleMm, clampedMm],
    ] as const)
      agree(
        all.map(one => ({ ...one, sag: as(one).sag / 10 })),
        one => value('RIM.PITCH', as(one).sag, as(one).load, as(one).modulus, as(one).second, ends),
        one => [pitchOf(as(one), right)],
        {
          'the other ends': one => [pitchOf(as(one), wrong)],
          'twice the opening': one => [pitchOf({ ...as(one), sag: 2 * as(one).sag }, right)],
        },
      );
  });
});

describe('every corner of the tolerances of a seal', () => {
  type Seal = Record<'cord' | 'cordTol' | 'depth' | 'depthTol' | 'gap' | 'gapTol' | 'stretch' | 'width', number>;
  const SIZES = {
    cord: [2, 4],
    cordTol: [0.02, 0.12],
    depth: [0.55, 0.75],
    depthTol: [0.02, 0.1],
    gapTol: [0.12, 0.2],
    stretch: [0.01, 0.06],
  } as const;
  /** The gap stays open, or is closed at one of its limits, as at a rim that may touch before its bosses. */
  const OPEN = cases({ ...SIZES, gap: [0.2, 0.3] }, 60);
  const CLOSING = cases({ ...SIZES, gap: [0, 0.1] }, 60);
  const CLOSED = cases({ ...SIZES, gap: [-0.5, -0.2] }, 60);
  const as = (one: Case): Seal => ({ ...(one as Seal), depth: (one as Seal).depth * (one as Seal).cord });

  /** One-sided, so that the sides cannot be changed. */
  const cordRange = ({ cordTol }: Seal): Range => [-cordTol, 2 * cordTol];
  const depthRange = ({ depthTol }: Seal): Range => [-depthTol / 2, depthTol];
  const gapRange = ({ gapTol }: Seal): Range => [-gapTol, gapTol / 2];

  /** The thickness at which a piece of cord that is longer by its stretch has the volume that it had. */
  const stretchedMm = (cord: number, stretch: number): number =>
    root(thickness => (Math.PI / 4) * thickness ** 2 * 100 * (1 + stretch) - (Math.PI / 4) * cord ** 2 * 100, 0, cord * 2);
  /** Of the cord that lies on the floor of the groove, what stands above the other face. */
  const squeezed = (cord: number, depth: number, gap: number): number => (cord - (depth + (gap < 0 ? 0 : gap))) / cord;

  const squeezes =
    (thin = stretchedMm, share = squeezed) =>
    (one: Case): number[] => {
      const seal = as(one);
      const at = (cord: number, depth: number, gap: number): number =>
        share(thin(seal.cord + cord, seal.stretch), seal.depth + depth, seal.gap + gap);
      const found = cordRange(seal).flatMap(cord => depthRange(seal).flatMap(depth => gapRange(seal).map(gap => at(cord, depth, gap))));
      return [Math.min(...found), at(0, 0, 0), Math.max(...found)];
    };
  const ours = (one: Case): unknown => {
    const seal = as(one);
    const [cordTol, depthTol, gapTol] = [cordRange(seal), depthRange(seal), gapRange(seal)].map(text);
    return value('SEAL.SQUEEZE', seal.cord, cordTol, seal.depth, depthTol, seal.gap === 0 ? null : seal.gap, gapTol, seal.stretch);
  };

  test('SEAL.SQUEEZE by corners, the cord thinned by its volume', () => {
    const wrong = {
      'no stretch': squeezes(cord => cord),
      'thinned as it is stretched': squeezes((cord, stretch) => cord / (1 + stretch)),
      'a share of the groove': squeezes(stretchedMm, (cord, depth, gap) => cord / (depth + Math.max(0, gap)) - 1),
    };
    const counted = { 'a gap below 0 takes from the groove': squeezes(stretchedMm, (cord, depth, gap) => 1 - (depth + gap) / cord) };
    agree(OPEN, ours, squeezes(), { ...wrong, 'no gap': squeezes(stretchedMm, (cord, depth) => 1 - depth / cord) });
    agree(CLOSING, ours, squeezes(), { ...wrong, ...counted });
    agree(CLOSED, ours, squeezes(), { ...wrong, ...counted });
  });

  test('SEAL.SQUEEZE is refused just where a corner does not touch', () => {
    const all = cases({ ...SIZES, depth: [0.8, 1], gap: [0, 0.1] }, 300).map(one => ({ one, least: squeezes()(one)[0] as number }));
    const refused = all.filter(({ least }) => least < 0);
    expect([refused.length > 50, all.length - refused.length > 50]).toEqual([true, true]);
    for (const { one, least } of all) {
      const seal = as(one);
      const [cordTol, depthTol, gapTol] = [cordRange(seal), depthRange(seal), gapRange(seal)].map(text);
      const answer = call('SEAL.SQUEEZE', [seal.cord, cordTol, seal.depth, depthTol, `${seal.gap} mm`, gapTol, seal.stretch]);
      expect(answer.ok, JSON.stringify(one)).toBe(least >= 0);
      // so much thicker, and it just touches
      if (!answer.ok) expect(answer.message).toContain(`${Math.round(-1000 * least) / 10} % thicker`);
    }
  });

  const SIDES = 100_000;
  /** Triangles from the middle of the cord. */
  const discMm2 = (diameter: number): number => {
    let area = 0;
    const [c, s] = [Math.cos((2 * Math.PI) / SIDES), Math.sin((2 * Math.PI) / SIDES)];
    for (let i = 0, x = diameter / 2, y = 0; i < SIDES; i++) {
      const [nextX, nextY] = [x * c - y * s, x * s + y * c];
      area += (x * nextY - y * nextX) / 2;
      [x, y] = [nextX, nextY];
    }
    return area;
  };
  const FILLED = cases({ ...SIZES, depth: [0.7, 0.8], width: [1.8, 2.2], gap: [0, 0] }, 30);
  const filled = (one: Case): Seal => ({ ...as(one), width: (one as Seal).width * (one as Seal).cord });
  const widthRange = ({ depthTol }: Seal): Range => [-2 * depthTol, depthTol];
  const fills =
    (area = discMm2, pick = Math.max) =>
    (one: Case): number[] => {
      const seal = filled(one);
      const found = cordRange(seal).flatMap(cord => {
        const mm2 = area(seal.cord + cord);
        return widthRange(seal).flatMap(width => depthRange(seal).map(depth => mm2 / ((seal.width + width) * (seal.depth + depth))));
      });
      return [pick(...found)];
    };
  const fill = (seal: Seal): unknown[] => [
    ...[seal.cord, seal.width, seal.depth],
    ...[cordRange(seal), widthRange(seal), depthRange(seal)].map(text),
  ];

  test('SEAL.FILL by corners, triangles of the round cord added up', () => {
    agree(
      FILLED,
      one => value('SEAL.FILL', ...fill(filled(one))),
      fills(),
      {
        'a square cord': fills(cord => cord ** 2),
        'a radius for the diameter': fills(cord => discMm2(cord / 2)),
        'at its least': fills(discMm2, Math.min),
      },
      1e-8,
    );
  });

  test('SEAL.FILL is refused as solid just where a corner is full', () => {
    const all = cases({ ...SIZES, depth: [0.7, 0.9], width: [0.9, 1.2], gap: [0, 0] }, 300).map(one => ({
      one,
      most: fills(cord => (Math.PI * cord ** 2) / 4)(one)[0] as number,
    }));
    const solid = all.filter(({ most }) => most >= 1);
    expect([solid.length > 50, all.length - solid.length > 50]).toEqual([true, true]);
    for (const { one, most } of all) {
      const answer = call('SEAL.FILL', fill(filled(one)));
      expect(answer.ok, JSON.stringify(one)).toBe(most < 1);
      if (!answer.ok) expect(answer.message).toContain('at worst case the cord fills the groove solid');
    }
  });

  test('SEAL.STRETCH: the ring walked round in steps, and the groove', () => {
    const around = (diameter: number): number => {
      let way = 0;
      for (let i = 0; i < 720; i++) way += 2 * (diameter / 2) * Math.sin(Math.PI / 720);
      return way;
    };
    agree(
      cases({ ring: [10, 80], more: [0.2, 4] }, 60),
      ({ ring = 0, more = 0 }) => value('SEAL.STRETCH', ring, ring + more),
      ({ ring = 0, more = 0 }) => [(around(ring + more) - around(ring)) / around(ring)],
      {
        'a share of the groove': ({ ring = 0, more = 0 }) => [more / (ring + more)],
        'a radius': ({ ring = 0, more = 0 }) => [more / ring / 2],
      },
    );
  });
});
