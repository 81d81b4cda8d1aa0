// Every entry of the maths module prints, and what is printed is worth what the formula gives.
import { expect, test } from 'vitest';
import * as M from '../../src/core/maths';
import { formOfCard } from '../../src/plain/forms';
import { digits } from '../../src/plain/digits';
import { known, print, printSteps } from '../../src/plain/print';
import { atom, MATHS, spreadsheetFormulas } from '../../src/plain/spreadsheet';
import type { Form } from '../../src/plain/tree';
import { readArguments } from '../../src/core/call';
import { CARDS } from '../../src/registry';

const LIVE = [...CARDS.values()].filter(
  ({ id, result }) => (result.shape === 'number' || result.shape === 'row') && formOfCard(id) !== undefined,
);

test('every entry of the maths module has a spreadsheet form', () => {
  const functions = Object.entries(M)
    .filter(([, entry]) => typeof entry === 'function')
    .map(([name]) => name);
  expect(functions.length).toBeGreaterThan(15);
  expect(functions.filter(name => MATHS[name] === undefined)).toEqual([]);
});

test('count', () => expect(LIVE.length).toBeGreaterThanOrEqual(80));

test.each(LIVE.map(card => [card.id, card] as const))('%s: the printed working is worth its result', (id, card) => {
  const form = formOfCard(id);
  const values = readArguments(card, card.example.args);
  const printed = print(form as NonNullable<typeof form>, values.map(known));
  const result = card.formula(...(values as never[])) as number | readonly number[];
  const worth = (Array.isArray(result) ? (printed.items ?? []).map(({ value }) => value) : printed.value) as number | number[];
  expect(JSON.stringify(rounded(worth))).toBe(JSON.stringify(rounded(result)));
  expect(printSteps(form as NonNullable<typeof form>, values.map(known)).result).toBeDefined();
});

const rounded = (value: number | readonly number[]): unknown => (Array.isArray(value) ? value.map(digits) : digits(value as number));

test('brackets: a negated power, differences and quotients on the right', () => {
  const form: Form = { params: ['a', 'b'], result: ['-', 'a', ['-', 'b', ['neg', ['^', 'a', 2]]]] };
  expect(spreadsheetFormulas(form, [atom('A1'), atom('B1')])).toEqual({ formula: 'A1-(B1--(A1^2))' });
  expect(spreadsheetFormulas({ params: ['a', 'b'], result: ['/', 'a', ['*', 'b', 'a']] }, [atom('A1'), atom('B1')])).toEqual({
    formula: 'A1/(B1*A1)',
  });
});
