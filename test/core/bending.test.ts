// Hooks and boards that bend: what is read, what a blank means, where the strain is largest, and how far a straight beam may be trusted.
import { expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';

test('a tip that is left out is as thick as the root: 1.5·t·y/L²', () => {
  expect(number('SNAP.STRAIN', 2, 15, 2)).toBeCloseTo((1.5 * 2 * 2) / 15 ** 2, 15);
  for (const blank of [null, 0, '', 2]) expect(number('SNAP.STRAIN', 2, 15, 2, blank)).toBe(number('SNAP.STRAIN', 2, 15, 2));
  // E·w·t³·y/(4·L³)
  expect(number('SNAP.FORCE', 2, 15, 5, 2, 2400)).toBeCloseTo((2400 * 5 * 2 ** 3 * 2) / (4 * 15 ** 3), 12);
});

test('deflection and strain undo each other, whatever the tip', () => {
  for (const tip of [0.1, 0.7, 0.9999, 1, 1.4, 2, 3]) {
    const strain = number('SNAP.STRAIN', 1.1, 14, 2, tip);
    expect(number('SNAP.DEFLECTION', strain, 14, 2, tip)).toBeCloseTo(1.1, 12);
  }
});

test('where the logarithm gives way to its series nothing jumps', () => {
  // (1 − r)/(1 + r) = ±0.03
  for (const edge of [0.97 / 1.03, 1.03 / 0.97]) {
    const [below, above] = [-1, 1].map(side => number('SNAP.FORCE', 1, 14, 5, 1, 2400, edge + side * 1e-13)) as [number, number];
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-12);
  }
});

test('WORKING says where the strain is largest: the root, or where the hook is twice as thick as its tip', () => {
  expect(value('WORKING', 'SNAP.STRAIN', 1, 14, 2, 1)).toContain('largest strain from root = 0\n');
  // 2 → 0.6 over 14 mm: 1.2 at 8 mm
  expect(value('WORKING', 'SNAP.STRAIN', 1, 14, 2, 0.6)).toMatch(/largest strain from root = .* = 8\n/);
  expect(value('WORKING', 'SNAP.DEFLECTION', '1 %', 14, 2, 0.6)).toMatch(/largest strain from root = .* = 8\n/);
});

test('a straight beam is trusted to a third of the length: a bent one then takes about a tenth more force', () => {
  /** A bar that bends far, its curvature the moment of the force at its tip; slope and place by small steps from the root. */
  const tipOf = (load: number, reach: number): readonly [aside: number, ahead: number] => {
    const STEPS = 20_000;
    let [angle, aside, ahead] = [0, 0, 0];
    for (let i = 0; i < STEPS; i++) {
      const half = angle + (load * (reach - ahead)) / (2 * STEPS);
      aside += Math.sin(half) / STEPS;
      angle += (load * (reach - ahead - Math.cos(half) / (2 * STEPS))) / STEPS;
      ahead += Math.cos(half) / STEPS;
    }
    return [aside, ahead];
  };
  const asideUnder = (load: number): number => {
    let reach = 1;
    for (let i = 0; i < 60; i++) reach = (reach + tipOf(load, reach)[1]) / 2;
    return tipOf(load, reach)[0];
  };
  // F·L²/(E·I) of the straight beam is three times the deflection ÷ length
  expect(asideUnder(0.1) / (0.1 / 3)).toBeCloseTo(1, 2);
  expect(asideUnder(1)).toBeLessThan(1 / 3);
  expect(asideUnder(1.1)).toBeLessThan(1 / 3);
  expect(asideUnder(1.15)).toBeGreaterThan(1 / 3);
});

test('the angle of the ramp: without friction the tangent, and steeper is refused where it locks', () => {
  expect(number('SNAP.MATING', 10, 45, 1e-12)).toBeCloseTo(10, 9);
  // for release the angle of the other side
  expect(number('SNAP.MATING', 10, 60, 0.3)).toBeGreaterThan(number('SNAP.MATING', 10, 30, 0.3));
  expect(number('SNAP.MATING', 10, 73.2, 0.3)).toBeGreaterThan(1000);
  expect(refusal('SNAP.MATING', 10, 73.4, 0.3)).toContain('friction is 0.3: the ramp is self-locking from 73.3°');
});

test('a modulus and a Poisson ratio may be named by their material', () => {
  const modulus = number('MATERIAL', 'ABS', 'modulus');
  expect(number('SNAP.FORCE', 1, 15, 5, 2, 'ABS')).toBe(number('SNAP.FORCE', 1, 15, 5, 2, modulus));
  expect(number('BOARD.SAG', 1, 60, 20, 1.6, 'ABS')).toBe(number('BOARD.SAG', 1, 60, 20, 1.6, modulus));
  const laminate = [
    ['modulus', 20_000],
    ['poisson', 0.2],
  ];
  expect(number('BOARD.FREQUENCY', 100, 80, 1.6, 60, laminate, laminate, 'simple')).toBe(
    number('BOARD.FREQUENCY', 100, 80, 1.6, 60, 20_000, 0.2, 'simple'),
  );
});

test('how a board is held is always said, a mass with its unit is read', () => {
  for (const blank of [undefined, null, 0, ''])
    expect(refusal('BOARD.FREQUENCY', 100, 80, 1.6, 60, 20_000, 0.2, blank)).toMatch(/edges is (0 or )?blank/);
  expect(refusal('BOARD.FREQUENCY', 100, 80, 1.6, 60, 20_000, 0.2, 'free')).toContain('"simple", "clamped", "corners"');
  const grams = number('BOARD.FREQUENCY', 100, 80, 1.6, 60, 20_000, 0.2, 'corners');
  expect(number('BOARD.FREQUENCY', 100, 80, 1.6, '0.06 kg', 20_000, 0.2, 'Corners')).toBeCloseTo(grams, 9);
  expect(number('BOARD.FREQUENCY', 80, 100, 1.6, 60, 20_000, 0.2, 'corners')).toBeCloseTo(grams, 9);
});

test('clamped is stiffer than simple, and simple than corners', () => {
  const [clamped, simple, corners] = ['clamped', 'simple', 'corners'].map(edges =>
    number('BOARD.FREQUENCY', 100, 80, 1.6, 60, 20_000, 0.2, edges),
  ) as [number, number, number];
  expect(clamped).toBeGreaterThan(1.5 * simple);
  expect(simple).toBeGreaterThan(2 * corners);
  expect(number('BOARD.STRAIN', 10, 60, 20, 1.6, 20_000)).toBeCloseTo(2 * number('BOARD.STRAIN', 10, 60, 20, 1.6, 20_000, 'clamped'), 9);
});
