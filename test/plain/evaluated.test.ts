// Each plain form is worth what its formula in TypeScript gives, over seeded arguments, and so is what its cells keep.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { callCard, readArguments } from '../../src/core/call';
import type { Card } from '../../src/core/card';
import { formOfCard } from '../../src/plain/forms';
import { atom, type CellFormula, type Ref, spreadsheetFormulas } from '../../src/plain/spreadsheet';
import type { Form } from '../../src/plain/tree';
import { CARDS } from '../../src/registry';
import { isNumber, isWhole, nounOf, usualNumber } from '../kit/arguments';
import { evaluated } from '../kit/evaluated';
import { SEED } from '../kit/seed';

const SETS = 40;
const FORMS = [...CARDS.values()].flatMap(card => {
  const form = formOfCard(card.id);
  return form === undefined ? [] : [{ id: card.id, card, form }];
});

/** The example, and the example with its numbers replaced and what it leaves out now and then given; a list keeps its rows. */
function argumentSets(card: Card): readonly (readonly unknown[])[] {
  const one = (i: number): fc.Arbitrary<unknown> => {
    const param = card.params[i];
    const example = card.example.args[i];
    if (param === undefined || !isNumber(param) || isWhole(param)) return fc.constant(example);
    const number = usualNumber(nounOf(param), param.limits);
    if (!Array.isArray(example)) return typeof example === 'string' ? fc.constant(example) : fc.oneof(number, fc.constant(example));
    return fc.tuple(...example.map(() => number)).map(rows => rows.map(row => [row]));
  };
  const sets = fc.sample(fc.tuple(...card.params.map((_, i) => one(i))), { seed: SEED, numRuns: 8 * SETS });
  return [card.example.args, ...sets].filter(args => callCard(card, args).ok).slice(0, SETS);
}

/** A core value as cells that keep it. */
function refOf(value: unknown): Ref {
  if (Array.isArray(value)) return { items: value.map(refOf) };
  if (typeof value === 'object' && value !== null)
    return { parts: Object.fromEntries(Object.entries(value).map(([key, part]) => [key, refOf(part)])) };
  return atom('A1', value as number);
}

const kept = (form: Form, values: readonly unknown[]): unknown =>
  [spreadsheetFormulas(form, values.map(refOf))].flat(2).map(cell => (cell as CellFormula).value);

let compared = 0;

describe('a form is worth what its formula gives', () => {
  test.each(FORMS)('$id', ({ card, form }) => {
    const sets = argumentSets(card);
    expect(sets.length).toBeGreaterThan(0);
    for (const args of sets) {
      const values = readArguments(card, args);
      const given = card.formula(...(values as never[])) as unknown;
      expect(evaluated(form, values), JSON.stringify(args)).toEqual(given);
      const flat = [given].flat(2);
      (kept(form, values) as unknown[]).forEach((value, i) =>
        typeof value === 'number' ? expect(value, JSON.stringify(args)).toBeCloseTo(flat[i] as number, 6) : expect(value).toEqual(flat[i]),
      );
      compared++;
    }
  });

  test('many were compared', () => expect(compared).toBeGreaterThan(3000));
});
