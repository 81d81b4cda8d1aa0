// A text with its unit equals the number: in the core unit exactly, in every other unit within rounding.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../src/core/call';
import type { Card, Param } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { exampleInNumbers, isNumber, nounOf, usualNumber } from '../kit/arguments';
import { SEED } from '../kit/seed';

/** Core unit -> other ways to write a number of it. Factors are exact by definition. */
const WRITTEN: Readonly<Record<string, readonly ((value: number) => string)[]>> = {
  mm: [
    v => `${v} mm`,
    v => `${v}mm`,
    v => `${v / 25.4} in`,
    v => `${v / 25.4}"`,
    v => `${v / 0.0254} mil`,
    v => `${v / 10} cm`,
    v => `${v * 1000} µm`,
    v => `${v / 2} mm ${v < 0 ? '-' : '+'} ${Math.abs(v / 50.8)} in`,
  ],
  '°': [v => `${v}°`, v => `${v} deg`, v => `${v * 60}'`, v => `${(v * Math.PI) / 180} rad`],
  N: [v => `${v} N`, v => `${v / 1000} kN`, v => `${v / 4.4482216152605} lbf`],
  'N·m': [v => `${v} N·m`, v => `${v * 100} N.cm`, v => `${v / 0.11298482902761} in.lbf`],
  MPa: [v => `${v} MPa`, v => `${v} N/mm²`, v => `${v / 1000} GPa`, v => `${v / 0.006894757293168361} psi`],
  g: [v => `${v} g`, v => `${v / 1000} kg`, v => `${v / 28.349523125} oz`, v => `${v / 453.59237} lb`],
  'N/mm': [v => `${v} N/mm`, v => `${v * 1000} N/m`, v => `${v / 0.1751268352464764} lbf/in`],
  'mm⁴': [v => `${v} mm⁴`, v => `${v} mm4`, v => `${v / 10_000} cm⁴`, v => `${v / 416_231.4256} in⁴`],
  'g/cm³': [v => `${v} g/cm³`],
  'mm²/s': [v => `${v} mm²/s`],
  '°C': [v => `${v} °C`],
  '1e-6/K': [v => `${v} ppm/K`],
};
const SHARE_WRITTEN = [(v: number): string => `${v * 100} %`, (v: number): string => `${v}`];

const waysOf = (param: Param): readonly ((value: number) => string)[] =>
  WRITTEN[param.kind.unit] ?? (nounOf(param) === 'share' ? SHARE_WRITTEN : []);

const all = [...CARDS.values()]
  .flatMap(card => card.params.map((param, i) => ({ id: card.id, name: param.name, card, param, i })))
  .filter(({ param }) => isNumber(param) && waysOf(param).length > 0);

const argumentsWith = (card: Card, i: number, value: unknown): unknown[] =>
  card.params.map((_, j) => (j === i ? value : exampleInNumbers(card)[j]));

/**
 * How two answers differ; nothing where they are the same. In words and asserted once: assertions for every cell take longer than the
 * answers.
 */
function difference(actual: Outcome, expected: Outcome): string | undefined {
  if (actual.ok && expected.ok) return differenceOfValues(actual.value, expected.value);
  if (!actual.ok && !expected.ok && actual.code === expected.code && actual.argument === expected.argument) return undefined;
  return `${told(actual)} for ${told(expected)}`;
}

const told = (answer: Outcome): string => (answer.ok ? JSON.stringify(answer.value) : `${answer.code} of ${answer.argument}`);

function differenceOfValues(actual: unknown, expected: unknown): string | undefined {
  if (Array.isArray(expected)) {
    if (!Array.isArray(actual) || actual.length !== expected.length) return `${JSON.stringify(actual)} for ${JSON.stringify(expected)}`;
    for (let i = 0; i < expected.length; i++) {
      const found = differenceOfValues(actual[i], expected[i]);
      if (found !== undefined) return found;
    }
    return undefined;
  }
  const isSame =
    typeof expected === 'number' && typeof actual === 'number'
      ? Math.abs(actual - expected) <= 1e-9 * Math.max(1, Math.abs(expected))
      : actual === expected;
  return isSame ? undefined : `${String(actual)} for ${String(expected)}`;
}

/** A value that a card can take in its example's place: the example's own number, or a usual one. */
function values(card: Card, param: Param, i: number): fc.Arbitrary<number> {
  const given = exampleInNumbers(card)[i];
  const usual = usualNumber(nounOf(param), param.limits);
  return typeof given === 'number' && given !== 0 ? fc.oneof(fc.constant(given), usual) : usual;
}

describe(`text with unit equals the number (seed ${SEED})`, () => {
  test('count', () => expect(all.length).toBeGreaterThan(250));

  let compared = 0;

  test.each(all)('$id $name', ({ id, card, param, i }) => {
    let granted = 0;
    fc.assert(
      fc.property(values(card, param, i), value => {
        const wrap = (x: unknown): unknown => (param.kind.shape === 'list' ? [[x]] : x);
        const plain = call(id, argumentsWith(card, i, wrap(value)));
        if (plain.ok) granted++;
        for (const way of waysOf(param)) {
          const text = way(value);
          if (/e[+-]/.test(text)) continue;
          const found = difference(call(id, argumentsWith(card, i, wrap(text))), plain);
          if (found !== undefined) expect.fail(`${text}: ${found}`);
          if (plain.ok) compared++;
        }
      }),
      { seed: SEED, numRuns: card.result.shape === 'table' ? 15 : 40 },
    );
    expect(granted, 'calls with a result').toBeGreaterThan(0);
  });

  test('answers were compared, not refusals alone', () => expect(compared).toBeGreaterThan(60_000));
});
