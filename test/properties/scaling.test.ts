// Every length times k and every force times f: a result changes by the powers in its unit. A wrong exponent, a unit slip
// or a hidden constant with a dimension fails here without any published value.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/core/call';
import type { Card, Param } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { exampleInNumbers, isNumber, nounOf } from '../kit/arguments';
import { SEED } from '../kit/seed';

/** Powers of length and of force; all other dimensions are left as they are. */
const POWERS: Readonly<Record<string, readonly [length: number, force: number]>> = {
  '': [0, 0],
  '–': [0, 0],
  '°': [0, 0],
  '%': [0, 0],
  K: [0, 0],
  '°C': [0, 0],
  s: [0, 0],
  ppm: [0, 0],
  '1e-6/K': [0, 0],
  'g/cm³': [0, 0],
  mm: [1, 0],
  'mm²': [2, 0],
  'mm³': [3, 0],
  'mm⁴': [4, 0],
  g: [3, 0],
  'mm²/s': [2, 0],
  N: [0, 1],
  'N·m': [1, 1],
  'N/mm': [-1, 1],
  MPa: [-2, 1],
  '1e-6': [0, 0],
  Hz: [-2, 0.5],
};

/** Not scaled, and why. */
const EXEMPT: Readonly<Record<string, string>> = {
  'DRAFT.TEXTURE': 'draft for every 0.025 mm of texture',
  DUAL: 'text',
  'UNIT.CHECK': 'bands of usual sizes',
};

const isChoice = ({ kind }: Param): boolean => kind.is === 'choice';
const scales = (card: Card): boolean =>
  card.kind !== 'standard table' &&
  card.params.length > 0 &&
  EXEMPT[card.id] === undefined &&
  card.params.every(param => isNumber(param) || isChoice(param));
const scaled = [...CARDS.values()].filter(scales).map(card => [card.id, card] as const);

const factor = (unit: string, k: number, f: number): number => {
  const powers = POWERS[unit];
  if (powers === undefined) throw new Error(`no powers for the unit "${unit}"`);
  return k ** powers[0] * f ** powers[1];
};

type Values = readonly (
  | number
  | string
  | readonly number[]
  | { readonly upperMm: number | readonly number[]; readonly lowerMm: number | readonly number[] }
  | undefined
)[];

/** Core values back to arguments, each times its factor. */
function argumentsOf(card: Card, values: Values, k: number, f: number): unknown[] {
  return values.map((value, i) => {
    const by = factor(card.params[i]?.kind.unit ?? '', k, f);
    if (typeof value === 'number') return asText(value * by, card.params[i] as Param);
    if (typeof value !== 'object') return value;
    if ('upperMm' in value) {
      const [upper, lower] = [value.upperMm, value.lowerMm];
      const both = (u: number, l: number): string => `${signed(u * by)}/${signed(l * by)}`;
      return typeof upper === 'number'
        ? both(upper, lower as number)
        : upper.map((u, j) => [both(u, (lower as readonly number[])[j] ?? 0)]);
    }
    return value.map(x => [asText(x * by, card.params[i] as Param)]);
  });
}

/** A zero with its unit, so that it is no blank. */
const asText = (value: number, { kind }: Param): unknown =>
  value !== 0 ? value : ({ mm: '0 mm', '°': '0°', N: '0 N', MPa: '0 MPa' }[kind.unit] ?? '0');
const signed = (value: number): string => `${value < 0 ? '-' : '+'}${decimal(Math.abs(value))} mm`;
const decimal = (value: number): string => value.toFixed(15);

/**
 * The example's values, lengths, forces and angles a little other; an optional one that the example leaves out gets its default or a usual
 * value.
 */
const FILL: Readonly<Record<string, number>> = { length: 0.3, angle: 0.5, share: 0.55, number: 1.1, tolerance: 0.1 };

function exampleValues(card: Card): Values {
  const given = card.params.map((param, i) => exampleInNumbers(card)[i] ?? filling(param));
  const read = readArguments(card, given);
  return given.map((raw, i) => (typeof raw === 'number' && nounOf(card.params[i] as Param) !== 'tolerance' ? raw : read[i])) as Values;
}

function filling(param: Param): unknown {
  if (param.blank === 'absent' || isChoice(param)) return undefined;
  const { blank } = param;
  const value = param.kind.unit === '' && typeof blank === 'object' && 'default' in blank ? blank.default : FILL[nounOf(param)];
  return param.kind.shape === 'list' ? [[value]] : value;
}

function varied(card: Card, values: Values): fc.Arbitrary<Values> {
  const nudge = fc.double({ min: 0.9, max: 1.1, noNaN: true });
  return fc.tuple(
    ...values.map((value, i) =>
      typeof value === 'number' && card.params[i]?.kind.unit !== '' ? nudge.map(n => value * n) : fc.constant(value),
    ),
  ) as fc.Arbitrary<Values>;
}

/** Unit of each cell of a result: by column, or by the word in a column of units. */
function unitAt({ result }: Card, row: readonly unknown[], j: number): string {
  if (result.shape === 'number' || result.shape === 'column') return result.unit;
  if (result.shape === 'text') return '';
  const units = result.columns.findIndex(({ name }) => name === 'unit');
  return units >= 0 ? String(row[units]) : (result.columns[j]?.unit ?? '');
}

describe(`lengths times k, forces times f (seed ${SEED})`, () => {
  test('count', () => {
    expect(scaled.length).toBeGreaterThan(70);
    for (const id of Object.keys(EXEMPT)) expect(CARDS.has(id), `${id} is exempt but no function`).toBe(true);
  });

  test.each(scaled)('%s', (id, card) => {
    let compared = 0;
    fc.assert(
      fc.property(varied(card, exampleValues(card)), fc.constantFrom(0.5, 1.7, 3), fc.constantFrom(0.4, 1, 2.5), (values, k, f) => {
        const before = call(id, argumentsOf(card, values, 1, 1));
        const after = call(id, argumentsOf(card, values, k, f));
        if (!before.ok || !after.ok) return;
        const rows = (value: unknown): unknown[][] => (Array.isArray(value) ? (value as unknown[][]) : [[value]]);
        const [from, to] = [rows(before.value), rows(after.value)];
        expect(to.length).toBe(from.length);
        from.forEach((row, r) =>
          row.forEach((cell, j) => {
            const now = to[r]?.[j];
            if (typeof cell !== 'number') return expect(now).toBe(cell);
            const expected = cell * factor(unitAt(card, row, j), k, f);
            expect(
              Math.abs((now as number) - expected),
              `row ${r + 1} column ${j + 1}: ${String(now)}, by its unit ${expected}`,
            ).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(expected)));
            compared++;
          }),
        );
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(compared, 'results compared').toBeGreaterThan(20);
  });
});
