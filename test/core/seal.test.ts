// Rim and seal: what a blank means, what is read from a name, what cannot exist.
import { expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';

test('RIM.SAG opens five times as far between simple ends; a blank is clamped, and ABS its modulus', () => {
  const clamped = number('RIM.SAG', 40, 0.5, 2400, 80, 'clamped');
  expect(number('RIM.SAG', 40, 0.5, 2400, 80, 'simple') / clamped).toBeCloseTo(5, 12);
  for (const blank of [null, 0, undefined]) expect(number('RIM.SAG', 40, 0.5, 2400, 80, blank)).toBe(clamped);
  expect(number('RIM.SAG', 40, 0.5, 'ABS', 80)).toBe(number('RIM.SAG', 40, 0.5, number('MATERIAL', 'ABS', 'modulus'), 80));
});

test('a load along the rim and a second moment of area have their units', () => {
  const plain = number('RIM.SAG', 25.4, 0.5, 2400, 80);
  expect(number('RIM.SAG', '1 in', '500 N/m', '2.4 GPa', '0.008 cm⁴')).toBeCloseTo(plain, 12);
  expect(refusal('RIM.SAG', 40, '0.5 N', 2400, 80)).toContain('N/mm');
  expect(refusal('RIM.SAG', 40, 0.5, 2400, '80 mm²')).toContain('mm⁴');
});

test('SEAL.SQUEEZE: a gap below 0 counts as 0, and its tolerance may open it again', () => {
  const squeeze = (...gap: unknown[]): unknown => value('SEAL.SQUEEZE', 2, 0, 1.5, 0, ...gap);
  expect(squeeze()).toEqual([[0.25, 0.25, 0.25]]);
  expect(squeeze(-0.3)).toEqual(squeeze());
  expect(squeeze(-0.3, '+0.5/-0.1')).toEqual([[expect.closeTo(0.15, 12), 0.25, 0.25]]);
});

test('SEAL.SQUEEZE and SEAL.FILL: tolerances left out are none', () => {
  expect(value('SEAL.SQUEEZE', 2, null, 1.5, null, null, null, null)).toEqual([[0.25, 0.25, 0.25]]);
  expect(value('SEAL.SQUEEZE', 2, 0, 2, 0)).toEqual([[0, 0, 0]]);
  expect(number('SEAL.FILL', 2, 2.5, 2)).toBeCloseTo(Math.PI / 5, 12);
});

test('SEAL.STRETCH of a ring that just fits is none', () => expect(number('SEAL.STRETCH', 50, 50)).toBe(0));

test.each([
  ['RIM.SAG', [400, 0.5, 2400, 80], /ends is left out: .* more than a tenth of the pitch/],
  ['RIM.PITCH', [50, 0.5, 2400, 80], /50 mm is more than a tenth of the pitch/],
  ['RIM.PITCH', [0, 0.5, 2400, 80], /sag is 0 or blank/],
  ['RIM.SAG', [40, 0.5, 2400, 80, 'free'], /give one of "clamped", "simple"/],
  ['SEAL.SQUEEZE', [2, 0.1, 1.9, 0.05, 0.1], /does not touch: over groove_depth and gap it would have to be 7.9 % thicker/],
  ['SEAL.SQUEEZE', [2, '+0/-2', 1.5, 0], /cord_tol .* nothing is left of cord/],
  ['SEAL.SQUEEZE', [2, 0, 1.5, '+0/-1.5'], /depth_tol .* nothing is left of groove_depth/],
  ['SEAL.SQUEEZE', [2, 0, 1.5, 0, 0, 0, 2], /stretch is 2: must be at least 0 and at most 1/],
  ['SEAL.FILL', [2, 2, 1.5], /depth_tol is left out: at worst case the cord fills the groove solid: make groove_width or/],
  ['SEAL.FILL', [2, 2, 2, 0, '+0/-2'], /width_tol .* nothing is left of groove_width/],
  ['SEAL.FILL', [2, 2, 2, 0, 0, '+0/-2'], /solid/],
  ['SEAL.STRETCH', [50, 49.9], /groove_inside is 49.9: must be at least ring_inside/],
] as const)('%s(%j) is refused', (id, args, words) => expect(refusal(id, ...args)).toMatch(words));
