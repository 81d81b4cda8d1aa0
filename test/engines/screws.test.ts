// Every size with every head, every size with every length, in tables and in single calls, worked out anew by two spreadsheet programs:
// as sent, and after one input of each row was changed.
import { describe, expect, test } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import type { SheetPlan } from '../../src/sheet/plan';
import {
  CALLS_OF_LENGTH,
  changed,
  compare,
  copyOf,
  EVERY_CALL,
  EVERY_HEAD,
  EVERY_LENGTH,
  LEAST_FOLLOWED,
  leastEqual,
  type Row,
  typedOver,
} from '../kit/screw-rows';
import { recalculate } from './harness';

const POISON = -999;
const MOST_ROWS = 500;

const poisoned = (sheets: readonly SheetPlan[]): readonly SheetPlan[] =>
  sheets.map(sheet => ({ ...sheet, cells: sheet.cells.map(cell => (cell.formula === undefined ? cell : { ...cell, value: POISON })) }));
const parts = (rows: readonly Row[]): readonly (readonly Row[])[] => {
  const count = Math.ceil(rows.length / MOST_ROWS);
  return Array.from({ length: count }, (_, i) =>
    rows.slice(Math.floor((i * rows.length) / count), Math.floor(((i + 1) * rows.length) / count)),
  );
};
const WORKBOOKS = [
  ...parts(EVERY_HEAD).map((rows, i) => [`sizes and heads ${i + 1}`, rows, EVERY_CALL] as const),
  ...parts(EVERY_LENGTH).map((rows, i) => [`sizes and lengths ${i + 1}`, rows, CALLS_OF_LENGTH] as const),
];

test('there are as many pairs as the tables have', () => {
  expect(EVERY_HEAD.length).toBeGreaterThan(300);
  expect(EVERY_LENGTH.length).toBeGreaterThan(700);
});

describe.each(WORKBOOKS)('%s', (_, rows, calls) => {
  test('give what the functions give, as sent and after changes', async () => {
    const sent = poisoned(copyOf(rows, calls));
    for (const [typed, isChanged] of [
      [rows, false],
      [changed(rows), true],
    ] as const) {
      const found = await recalculate(await writeWorkbook({ name: 'Screws', sheets: typedOver(sent, typed) }));
      for (const values of [found.libreoffice, found.gnumeric]) {
        const { equal, givenUp, wrong } = compare(typed, calls, values);
        expect(wrong).toEqual([]);
        expect(equal / (equal + givenUp)).toBeGreaterThan(isChanged ? LEAST_FOLLOWED : 1 - 1e-9);
        expect(equal).toBeGreaterThan((isChanged ? LEAST_FOLLOWED : 1) * leastEqual(calls) * rows.length);
      }
    }
  });
});
