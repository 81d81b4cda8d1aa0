// Rows that are printed once for all with the same answers have the formulas and values that each has alone.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { handover } from '../../src/handover/handover';
import { INPUTS } from '../../src/joint/inputs';
import { address, cellPosition } from '../../src/sheet/addresses';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { type Questions, type OneRow, RowPrint, RowPrints } from '../../src/handover/compile/joint/row-print';
import { ASKED, BASES, type Changes } from '../kit/joint-edits';
import { SEED } from '../kit/seed';
import { sourceOf } from '../kit/source-of-plan';
import { TITLE } from './kit';

const NAMES = [...INPUTS.keys()];
const RESULTS_FROM = 100;
/** The second half of a table is the first once more: what is printed for one row is read by another. */
const ROWS = 24;
/** From what cannot be to what is common: the rows differ in what has a value, what applies and what is judged. */
const VARIED = ['wall', 'seat', 'pilot', 'hole', 'boss OD', 'board plane', 'length', 'boss height'];
const NUMBERS = [0.3, 1, 2.5, 3.4, 6.4, 13, 40];

function jointSheet(name: string, rows: readonly Changes[]): SheetPlan {
  const line = (r: number, values: readonly PlanCell['value'][]): PlanCell[] =>
    values.map((value = '', c) => ({ at: address(r, c), role: 'input', value }));
  return {
    name,
    widths: [],
    cells: [
      ...line(0, NAMES),
      ...rows.flatMap((row, r) =>
        line(
          r + 1,
          NAMES.map(title => row[title] ?? ''),
        ),
      ),
      ...ASKED.map((title, c): PlanCell => ({ at: address(rows.length + 2, c), role: 'input', value: title })),
      {
        at: address(0, RESULTS_FROM),
        role: 'result',
        formula:
          `=ENCL.JOINT.TABLE(A1:${address(rows.length, NAMES.length - 1)},` +
          `A${rows.length + 3}:${address(rows.length + 2, ASKED.length - 1)})`,
      },
    ],
  };
}

/** The rows of the sheets of steps: by title what stands there, cells by their titles. */
function stepRows(sheets: readonly SheetPlan[]): ReadonlyMap<string, unknown>[] {
  const { plan } = handover(sourceOf({ name: 'Joints', sheets }), TITLE);
  return plan.sheets
    .filter(({ name }) => /^Variants( |_|$)/.test(name))
    .flatMap(({ cells }) => {
      const at = cells.map(cell => ({ ...cellPosition(cell.at), cell }));
      const titles = new Map(at.filter(({ row }) => row === 3).map(({ column, cell }) => [column, String(cell.value)]));
      const rows = new Map<number, Map<string, unknown>>();
      for (const { row, column, cell } of at) {
        if (row < 5 || column === 0) continue;
        const formula = cell.formula?.replace(/(?<![A-Za-z!$])\$([A-Z]+)(\d+)/g, (found, letters: string, no: string) =>
          Number(no) === row + 1 ? `[${titles.get(cellPosition(`${letters}1`).column) ?? '?'}]` : found,
        );
        // an input by its column
        const shared = formula?.replace(/(?:'J \d+'|All)!\$([A-Z]+)\$\d+/g, 'in $1');
        const mine = rows.get(row) ?? new Map<string, unknown>();
        rows.set(row, mine.set(titles.get(column) ?? '', [shared, cell.value]));
      }
      return [...rows.values()];
    });
}

/** They read the columns of all rules that some row of their sheet has. */
const OF_THE_SHEET = ['margin', 'margin rule', 'reasons'];

it.each(Object.entries(BASES))('of a table with %s', (_, { inputs }) => {
  const numbers = fc.record(Object.fromEntries(VARIED.map(name => [name, fc.constantFrom(...NUMBERS)])));
  const once = fc.sample(numbers, { seed: SEED, numRuns: ROWS }).map((typed): Changes => ({ ...inputs, ...typed }));
  const rows = [...once, ...once];
  const together = stepRows([jointSheet('All', rows)]);
  const alone = stepRows(once.map((row, r) => jointSheet(`J ${r + 1}`, [row])));
  expect([together.length, alone.length]).toEqual([rows.length, once.length]);
  let compared = 0;
  together.forEach((cells, r) => {
    for (const [title, cell] of alone[r % ROWS] ?? []) {
      if (OF_THE_SHEET.includes(title) || !cells.has(title)) continue;
      expect([r, title, cells.get(title)]).toEqual([r, title, cell]);
      compared++;
    }
  });
  expect(compared).toBeGreaterThan(60 * rows.length);
});

const row = (numbers: Record<string, number>): OneRow => numbers as unknown as OneRow;
const of = (name: string) => (one: OneRow) => (one as unknown as Record<string, number>)[name] as number;

it('a row is printed anew where an answer differs, and asked no more than its print asked', () => {
  const prints = new RowPrints();
  let printed = 0;
  const asked: string[] = [];
  const question = (name: string) => (one: OneRow) => {
    asked.push(name);
    return of(name)(one) > 0;
  };
  const print = (questions: Questions): RowPrint => {
    printed++;
    const form = questions.ask('a', question('a')) && questions.ask('b', question('b')) ? questions.text('c', r => `${of('c')(r)}`) : 'no';
    return new RowPrint([{ column: 1, form, value: of('c'), role: 'text' }], questions.texts, false);
  };
  const written = (one: OneRow): unknown[] => {
    const cells: unknown[] = [];
    prints.of('', one, print).write(one, ({ value }, form) => cells.push(form, value(one)));
    return cells;
  };
  expect(written(row({ a: 1, b: 1, c: 3 }))).toEqual(['3', 3]);
  expect(written(row({ a: 2, b: 5, c: 4 }))).toEqual(['4', 4]);
  expect(printed).toBe(1);
  expect(written(row({ a: 0, b: 5, c: 4 }))).toEqual(['no', 4]);
  expect(written(row({ a: 1, b: 0, c: 4 }))).toEqual(['no', 4]);
  expect(printed).toBe(3);
  asked.length = 0;
  expect(written(row({ a: -1, b: 1, c: 5 }))).toEqual(['no', 5]);
  expect([printed, asked]).toEqual([3, ['a']]);
});
