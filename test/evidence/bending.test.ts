// Hooks and boards that bend, by another way: curvature added up along the beam, a search for the largest strain, forces on a ramp turned,
// and plates by Ritz's method in polynomials. Beside each the wrong forms that it would not let pass.
import { describe, expect } from 'vitest';
import { number, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { refereed } from '../kit/refereed';

const test = refereed('evidence/bending.test.ts');

/** Gauss's five points on each of many equal pieces. */
function integral(f: (x: number) => number, from: number, to: number, pieces = 2000): number {
  const POINTS: readonly (readonly [at: number, weight: number])[] = [
    [0, 128 / 225],
    ...[-1, 1].flatMap((side): [number, number][] => [
      [(side * Math.sqrt(5 - 2 * Math.sqrt(10 / 7))) / 3, (322 + 13 * Math.sqrt(70)) / 900],
      [(side * Math.sqrt(5 + 2 * Math.sqrt(10 / 7))) / 3, (322 - 13 * Math.sqrt(70)) / 900],
    ]),
  ];
  const half = (to - from) / pieces / 2;
  let total = 0;
  for (let i = 0; i < pieces; i++) for (const [at, weight] of POINTS) total += weight * f(from + half * (2 * i + 1 + at));
  return total * half;
}

const apart = (a: number, b: number): number => Math.abs(a / b - 1);

describe('a hook as a beam whose curvature is added up', () => {
  interface Hook {
    readonly length: number;
    readonly root: number;
    readonly tip: number;
    readonly width: number;
    readonly modulus: number;
  }
  const secondMoment = ({ length, root, tip, width }: Hook, x: number): number => (width * (root + ((tip - root) * x) / length) ** 3) / 12;
  /** Under 1 N at the tip; x from the root. */
  const sag = (hook: Hook): number => integral(x => (hook.length - x) ** 2 / (hook.modulus * secondMoment(hook, x)), 0, hook.length);
  const strainAt = (hook: Hook, x: number): number => {
    const { length, root, tip, modulus } = hook;
    return ((length - x) * (root + ((tip - root) * x) / length)) / 2 / (modulus * secondMoment(hook, x));
  };
  /** Of many places, then between the neighbours of the best. */
  function largest(hook: Hook): number {
    const PLACES = 400;
    const at = (place: number): number => strainAt(hook, Math.min(Math.max(place, 0), 1) * hook.length);
    const places = Array.from({ length: PLACES }, (_, i) => i / PLACES);
    const best = places.reduce((one, other) => (at(other) > at(one) ? other : one));
    let [from, to] = [best - 1 / PLACES, best + 1 / PLACES];
    for (let step = 0; step < 60; step++) {
      const third = (to - from) / 3;
      if (at(from + third) < at(to - third)) from += third;
      else to -= third;
    }
    return Math.max(at(best), at((from + to) / 2));
  }

  /** Tip ÷ root: thick and thin, on both sides of a half, and ever nearer to equal, across the place where the series begins. */
  const RATIOS = [
    ...[0.05, 0.1, 0.2, 0.3, 0.45, 0.49, 0.5, 0.51, 0.6, 0.7, 0.8, 0.9, 0.941, 0.942, 0.95, 0.99, 0.999, 1.001, 1.01, 1.061, 1.062, 1.1],
    ...[1.3, 2, 5, 1, 1 - 1e-6, 1 + 1e-6, 1 - 1e-9, 1 + 1e-12],
  ];
  const hookOf = (ratio: number): Hook => ({ length: 14, root: 1.6, tip: ratio * 1.6, width: 4.5, modulus: 2300 });

  test.each(RATIOS)('SNAP.FORCE: the curvature added up twice, tip ÷ root %s', ratio => {
    const hook = hookOf(ratio);
    const deflection = 0.5;
    const force = number('SNAP.FORCE', deflection, hook.length, hook.width, hook.root, hook.modulus, hook.tip);
    expect(apart(force, deflection / sag(hook))).toBeLessThan(1e-12);
  });

  test.each(RATIOS)('SNAP.STRAIN and SNAP.DEFLECTION: a search for the largest strain, tip ÷ root %s', ratio => {
    const hook = hookOf(ratio);
    const perDeflection = largest(hook) / sag(hook);
    const strain = number('SNAP.STRAIN', 0.5, hook.length, hook.root, hook.tip);
    expect(apart(strain, 0.5 * perDeflection)).toBeLessThan(1e-12);
    const deflection = number('SNAP.DEFLECTION', '1 %', hook.length, hook.root, hook.tip);
    expect(apart(deflection, 0.01 / perDeflection)).toBeLessThan(1e-12);
  });

  test('other forms would not pass', () => {
    const tapered = RATIOS.filter(ratio => Math.abs(ratio - 1) > 0.01);
    expect(tapered.length).toBeGreaterThan(20);
    const WRONG: Readonly<Record<string, (hook: Hook) => number>> = {
      'a straight hook of the root': ({ length, root }) => (1.5 * root) / length ** 2,
      'a straight hook of the mean thickness': ({ length, root, tip }) => (0.75 * (root + tip)) / length ** 2,
      'twice the deflection': hook => largest(hook) / (2 * sag(hook)),
    };
    for (const [name, form] of Object.entries(WRONG))
      for (const hook of tapered.map(hookOf))
        expect(apart(form(hook), largest(hook) / sag(hook)), `${name} ${hook.tip}`).toBeGreaterThan(1e-3);
    // the root is wrong only for a thin tip
    for (const hook of RATIOS.map(hookOf)) {
      const atRoot = strainAt(hook, 0) / largest(hook);
      if (hook.tip / hook.root < 0.49) expect(atRoot).toBeLessThan(0.999);
      else expect(atRoot).toBeGreaterThan(1 - 5e-4);
    }
  });

  // handbooks on snap joints, from memory: y = 0.67·ε·l²/h for one thickness, 1.09·ε·l²/h where the tip is half as thick
  test.each([
    [2, '0.67'],
    [1, '1.09'],
  ])('SNAP.DEFLECTION and SNAP.STRAIN as printed, tip %s of 2 mm: %s', (tip, printed) => {
    expectPrinted(number('SNAP.DEFLECTION', 0.02, 20, 2, tip) / ((0.02 * 20 ** 2) / 2), printed);
    expectPrinted(1 / (number('SNAP.STRAIN', 1, 20, 2, tip) * (20 ** 2 / 2)), printed);
  });
});

describe('a ramp', () => {
  const radians = (deg: number): number => (deg * Math.PI) / 180;
  /** Where the pull along the axis and the push aside stand to each other: the force on the ramp leans by the angle of friction. */
  const aheadPerAside = (deg: number, friction: number): number => {
    const [along, across] = [Math.cos(radians(deg)), Math.sin(radians(deg))];
    // on the hook: pressed square to the ramp with 1, rubbed along it with the friction
    const [ahead, aside] = [across + friction * along, along - friction * across];
    return ahead / aside;
  };

  test('SNAP.MATING: pressing and rubbing on the ramp, put together', () => {
    let compared = 0;
    for (let deg = 1; deg < 90; deg++)
      for (const friction of [0.05, 0.2, 0.45, 1]) {
        const expected = aheadPerAside(deg, friction);
        if (expected <= 0 || deg + Math.atan(friction) / radians(1) > 89.9) continue;
        compared++;
        expect(apart(number('SNAP.MATING', 12.5, deg, friction), 12.5 * expected)).toBeLessThan(1e-9);
        expect(apart(12.5 * (friction + Math.tan(radians(deg))), 12.5 * expected)).toBeGreaterThan(1e-4);
      }
    expect(compared).toBeGreaterThan(250);
  });
});

describe('a strip of board as a beam whose curvature is added up', () => {
  const STRIPS = [
    { force: 12, span: 70, width: 25, thickness: 1.55, modulus: 21_000 },
    { force: 40, span: 31, width: 8, thickness: 0.9, modulus: 17_500 },
    { force: 3, span: 120, width: 60, thickness: 1, modulus: 24_000 },
  ] as const;
  type Strip = (typeof STRIPS)[number];
  /** Layers of the thickness, each with the square of its place. */
  const stiffness = ({ width, thickness, modulus }: Strip): number =>
    modulus * width * integral(z => z ** 2, -thickness / 2, thickness / 2);
  /** The moment at the ends that keeps them level: the slopes of the half beam add up to none. */
  const endMoment = ({ force, span }: Strip, ends: string): number =>
    ends === 'clamped' ? integral(x => (force * x) / 2, 0, span / 2) / (span / 2) : 0;
  const moment = (strip: Strip, ends: string, x: number): number => (strip.force * x) / 2 - endMoment(strip, ends);
  /** From the middle, which is level, out to the end. */
  const sag = (strip: Strip, ends: string): number => {
    const held = endMoment(strip, ends);
    return integral(x => x * ((strip.force * x) / 2 - held), 0, strip.span / 2) / stiffness(strip);
  };

  test.each(STRIPS.flatMap(strip => ['simple', 'clamped'].map(ends => ({ strip, ends }))))(
    'BOARD.SAG and BOARD.STRAIN: curvature of the half beam, $ends, span $strip.span',
    ({ strip, ends }) => {
      const { force, span, width, thickness, modulus } = strip;
      const args = [force, span, width, thickness, modulus, ends];
      expect(apart(number('BOARD.SAG', ...args), sag(strip, ends))).toBeLessThan(1e-11);
      const strain = (moment(strip, ends, span / 2) * (thickness / 2)) / stiffness(strip);
      expect(apart(number('BOARD.STRAIN', ...args), 1e6 * strain)).toBeLessThan(1e-11);
      // nowhere along the strip is it strained more, clamped ends only as much
      expect(Math.abs(moment(strip, ends, 0))).toBeLessThanOrEqual(Math.abs(moment(strip, ends, span / 2)) * (1 + 1e-9));
    },
  );

  test('a blank is simple, and the other ends would not pass', () => {
    const { force, span, width, thickness, modulus } = STRIPS[0];
    expect(apart(number('BOARD.SAG', force, span, width, thickness, modulus), sag(STRIPS[0], 'simple'))).toBeLessThan(1e-11);
    expect(sag(STRIPS[0], 'simple') / sag(STRIPS[0], 'clamped')).toBeCloseTo(4, 9);
  });
});

describe('a plate by Ritz’s method', () => {
  type Polynomial = readonly number[];
  const times = (a: Polynomial, b: Polynomial): number[] => {
    const out = Array<number>(a.length + b.length - 1).fill(0);
    a.forEach((x, i) => b.forEach((y, j) => void (out[i + j] = (out[i + j] as number) + x * y)));
    return out;
  };
  const derived = (a: Polynomial): number[] => (a.length === 1 ? [0] : a.slice(1).map((x, i) => x * (i + 1)));
  /** From −1 to 1. */
  const area = (a: Polynomial): number => a.reduce((total, x, i) => total + (i % 2 === 0 ? (2 * x) / (i + 1) : 0), 0);

  const TERMS = 5;
  /** Even, and 0 at both ends, with the slope too where they are clamped. */
  const shapes = (edges: string): number[][] => {
    const held = edges === 'clamped' ? times([1, 0, -1], [1, 0, -1]) : edges === 'corners' ? [1] : [1, 0, -1];
    return Array.from({ length: TERMS }, (_, k) => times(held, [...Array<number>(2 * k).fill(0), 1]));
  };

  type Matrix = number[][];
  function solved(matrix: Matrix, right: readonly number[]): number[] {
    const rows = matrix.map((row, i) => [...row, right[i] as number]);
    for (let i = 0; i < rows.length; i++) {
      const best = rows
        .slice(i)
        .reduce((most, row, k) => (Math.abs(row[i] as number) > Math.abs(rows[most]?.[i] as number) ? i + k : most), i);
      [rows[i], rows[best]] = [rows[best] as number[], rows[i] as number[]];
      const pivot = rows[i] as number[];
      for (const row of rows.slice(i + 1)) {
        const by = (row[i] as number) / (pivot[i] as number);
        for (let j = i; j < row.length; j++) row[j] = (row[j] as number) - by * (pivot[j] as number);
      }
    }
    const x = Array<number>(rows.length).fill(0);
    for (let i = rows.length - 1; i >= 0; i--) {
      const row = rows[i] as number[];
      x[i] =
        row.slice(0, -1).reduce((rest, a, j) => (j > i ? rest - a * (x[j] as number) : rest), row.at(-1) as number) / (row[i] as number);
    }
    return x;
  }
  const product = (matrix: Matrix, x: readonly number[]): number[] =>
    matrix.map(row => row.reduce((sum, a, j) => sum + a * (x[j] as number), 0));
  const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0);

  /**
   * ω·a²·√(mass per area ÷ plate stiffness), a the length: strain energy and kinetic energy of sums of products of the shapes. On corners
   * the products are worth 1 there, and the first of them is taken from all others.
   */
  function parameter(length: number, width: number, edges: string, poisson: number): number {
    const all = shapes(edges);
    const table = (m: number, n: number): Matrix => {
      const nth = (a: Polynomial, order: number): Polynomial => (order === 0 ? a : nth(derived(a), order - 1));
      return all.map(a => all.map(b => area(times(nth(a, m), nth(b, n)))));
    };
    const [m00, m11, m22, m20] = [table(0, 0), table(1, 1), table(2, 2), table(2, 0)];
    const [sx, sy] = [2 / length, 2 / width];
    const pairs = all.flatMap((_, i) => all.map((__, j) => [i, j] as const));
    const at = (matrix: Matrix, i: number, j: number): number => matrix[i]?.[j] as number;
    const over = (term: (i: number, j: number, k: number, l: number) => number): Matrix =>
      pairs.map(([i, j]) => pairs.map(([k, l]) => term(i, j, k, l)));
    const energy = over(
      (i, j, k, l) =>
        at(m22, i, k) * at(m00, j, l) * sx ** 4 +
        at(m00, i, k) * at(m22, j, l) * sy ** 4 +
        poisson * (at(m20, i, k) * at(m20, l, j) + at(m20, k, i) * at(m20, j, l)) * (sx * sy) ** 2 +
        2 * (1 - poisson) * at(m11, i, k) * at(m11, j, l) * (sx * sy) ** 2,
    );
    const motion = over((i, j, k, l) => at(m00, i, k) * at(m00, j, l));
    const free = (matrix: Matrix): Matrix =>
      edges === 'corners'
        ? matrix.slice(1).map((row, i) => row.slice(1).map((x, j) => x - at(matrix, 0, j + 1) - at(matrix, i + 1, 0) + at(matrix, 0, 0)))
        : matrix;
    const [stiff, mass] = [free(energy), free(motion)];
    let shape = stiff.map((_, i): number => (i === 0 ? 1 : 0));
    for (let step = 0; step < 30; step++) {
      const next = solved(stiff, product(mass, shape));
      const size = Math.sqrt(dot(next, product(mass, next)));
      shape = next.map(x => x / size);
    }
    return length ** 2 * Math.sqrt(dot(shape, product(stiff, shape)) / dot(shape, product(mass, shape)));
  }

  /** Leissa, The Free Vibration of Rectangular Plates, J. Sound Vib. 31 (1973), all edges clamped, from memory: length ÷ width. */
  const LEISSA = [
    [0.4, '23.648'],
    [2 / 3, '27.010'],
    [1, '35.992'],
    [1.5, '60.772'],
    [2.5, '147.80'],
  ] as const;

  test.each(LEISSA)('the method gives what Leissa has, %d: %s', (ratio, printed) => {
    expect(apart(parameter(ratio, 1, 'clamped', 0.3), Number(printed))).toBeLessThan(2e-4);
    expect(apart(parameter(ratio, 1, 'simple', 0.3), Math.PI ** 2 * (1 + ratio ** 2))).toBeLessThan(1e-6);
  });

  /** In SI, from the parameter. */
  const frequency = (
    length: number,
    width: number,
    thickness: number,
    mass: number,
    modulus: number,
    poisson: number,
    lambda: number,
  ): number => {
    const stiffness = (modulus * 1e6 * (thickness / 1000) ** 3) / (12 * (1 - poisson ** 2));
    const perArea = mass / 1000 / ((length / 1000) * (width / 1000));
    return (lambda / (2 * Math.PI * (length / 1000) ** 2)) * Math.sqrt(stiffness / perArea);
  };
  const BOARDS = [
    [100, 80, 1.6, 60, 20_000, 0.2],
    [60, 60, 1, 18, 24_000, 0.14],
    [50, 160, 1.55, 95, 18_000, 0.3],
    [220, 55, 2.4, 210, 22_000, 0.18],
  ] as const;

  test.each(BOARDS)('BOARD.FREQUENCY, simple: Ritz’s method, %d × %d', (length, width, ...rest) => {
    const expected = frequency(length, width, ...rest, parameter(length, width, 'simple', rest[3]));
    expect(apart(number('BOARD.FREQUENCY', length, width, ...rest, 'simple'), expected)).toBeLessThan(1e-6);
  });

  // one product of beam shapes is stiffer than the plate: above Ritz, by less than a hundredth
  test.each(BOARDS)('BOARD.FREQUENCY, clamped: within a hundredth of Ritz’s method, %d × %d', (length, width, ...rest) => {
    const expected = frequency(length, width, ...rest, parameter(length, width, 'clamped', rest[3]));
    const ours = number('BOARD.FREQUENCY', length, width, ...rest, 'clamped');
    expect(ours / expected).toBeGreaterThan(1);
    expect(ours / expected).toBeLessThan(1.01);
  });

  test.each(LEISSA)('BOARD.FREQUENCY, clamped: within a hundredth of Leissa, %d: %s', (ratio, printed) => {
    const ours = number('BOARD.FREQUENCY', 100 * ratio, 100, 1.6, 60, 20_000, 0.2, 'clamped');
    expect(apart(ours, frequency(100 * ratio, 100, 1.6, 60, 20_000, 0.2, Number(printed)))).toBeLessThan(0.01);
  });

  /** Four corners held, ν 0.3, Blevins, Formulas for Natural Frequency and Mode Shape (1979), from memory: length ÷ width. */
  const CORNERS = [
    [1, '7.12'],
    [1.5, '8.92'],
    [2, '9.29'],
    [2.5, '9.39'],
  ] as const;

  test.each(CORNERS)('the method gives what Blevins has for corners, %d: %s', (ratio, printed) => {
    const onCorners = parameter(ratio, 1, 'corners', 0.3);
    expect(apart(onCorners, Number(printed))).toBeLessThan(0.002);
    // a board on its screws is not one on its edges
    expect(onCorners / parameter(ratio, 1, 'simple', 0.3)).toBeLessThan(0.4);
  });

  test.each(CORNERS)('BOARD.FREQUENCY, corners as Blevins has them, %d: %s', (ratio, printed) => {
    for (const [length, width] of [
      [100 * ratio, 100],
      [100, 100 * ratio],
    ] as const) {
      const expected = frequency(100 * ratio, 100, 1.6, 60, 20_000, 0.3, Number(printed));
      expect(apart(number('BOARD.FREQUENCY', length, width, 1.6, 60, 20_000, 0.3, 'corners'), expected)).toBeLessThan(1e-12);
    }
  });

  test('BOARD.FREQUENCY, corners: within a twentieth of Ritz’s method', () => {
    let compared = 0;
    for (const ratio of [1, 1.1, 1.2, 1.25, 1.3, 1.4, 1.5, 1.7, 1.9, 2, 2.2, 2.4, 2.5])
      for (const poisson of [0.1, 0.2, 0.3, 0.4]) {
        compared++;
        const expected = frequency(80 * ratio, 80, 1.6, 60, 20_000, poisson, parameter(ratio, 1, 'corners', poisson));
        expect(apart(number('BOARD.FREQUENCY', 80 * ratio, 80, 1.6, 60, 20_000, poisson, 'corners'), expected)).toBeLessThan(0.045);
      }
    expect(compared).toBe(52);
  });

  test('BOARD.FREQUENCY, corners: beyond ν 0.4 it is not, and its caution says where that ends', () => {
    const expected = frequency(200, 80, 1.6, 60, 20_000, 0.5, parameter(2.5, 1, 'corners', 0.5));
    expect(apart(number('BOARD.FREQUENCY', 200, 80, 1.6, 60, 20_000, 0.5, 'corners'), expected)).toBeGreaterThan(0.05);
    expect(value('ABOUT', 'BOARD.FREQUENCY', 'caution')).toContain('within 5 % for corners up to ν 0.4');
  });
});
