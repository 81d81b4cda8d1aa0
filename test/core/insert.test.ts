// Inserts and nuts: what is read from a name, what a blank means, what cannot exist.
import { expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';

test('INSERT.LANDING reads the largest hole: ISO 273 medium of M3 is 3.4 +0.18', () => {
  expect(number('INSERT.LANDING', 4.2, 'M3 medium')).toBeCloseTo((4.2 - 3.58) / 2, 12);
  expect(number('INSERT.LANDING', 3, 'M3 medium')).toBeCloseTo(-0.29, 12);
});

test('INSERT.ENGAGEMENT: a screw named brings its point, two pitches of M3; beyond the insert nothing more holds', () => {
  expect(number('INSERT.ENGAGEMENT', 10, [[2.5], [1.6]], 5.8, 0.1, 'M3')).toBeCloseTo(4.8, 12);
  expect(value('INSERT.ENGAGEMENT', 16, 4.1, 5.8, 0.1, 'M3')).toBe(5.8);
  expect(number('INSERT.ENGAGEMENT', 4, 4.1, 5.8)).toBeCloseTo(-0.1, 12);
});

test.each([
  ['INSERT.HOLE.DEPTH', 5.8, 6.8, 5.8],
  ['NUT.POCKET', 'M3', 5.6, 5.5],
] as const)('%s of %s: a blank or a bare 0 takes the default, a zero has its unit', (id, first, usual, none) => {
  for (const blank of [null, 0]) expect(number(id, first, blank)).toBeCloseTo(usual, 12);
  expect(number(id, first, '0 mm')).toBeCloseTo(none, 12);
});

test('INSERT.PULLOUT takes a material at its safe side: ABS 38 MPa', () => {
  expect(value('INSERT.PULLOUT', 4.2, 5.8, 'ABS')).toBe(value('INSERT.PULLOUT', 4.2, 5.8, 38));
});

test('INSERT.STRAIN: warmer or colder is the same; a forgotten change of temperature does not pass for none', () => {
  expect(value('INSERT.STRAIN', 90, 19, 40)).toBe(value('INSERT.STRAIN', 90, 19, -40));
  expect(refusal('INSERT.STRAIN', 90, 19, 0)).toMatch(/temperature_change is 0 or blank/);
});

test.each([
  ['INSERT.STRAIN', [15, 19, 40], /comes loose/],
  ['INSERT.STRAIN', [90, 19, 40, '12 %'], /at most 10 %/],
  ['INSERT.BOSS.OD', [4.2, 1], /ratio is 1: must be above 1/],
  ['CLAMP.RELAX', [200, 900, 2400], /modulus_end is 2400: must be at most modulus_start/],
  ['INSERT.PULLOUT', [4.2, 5.8, 40, 0.5, 0.9], /safety is 0.9/],
  ['NUT.POCKET', [3], /put the name in quotes, "M3"/],
  ['NUT.POCKET.CORNER', ['ST2.9'], /ST2.9 is not in ISO 4032 \(M1.6 to M6\)/],
  ['NUT.HEIGHT', ['M8'], /M8 is not in ISO 4032 \(M1.6 to M6\)/],
] as const)('%s(%j) is refused', (id, args, words) => expect(refusal(id, ...args)).toMatch(words));
