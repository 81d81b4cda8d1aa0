// Texts longer than a formula takes: shown while nothing has changed, watched, and never in one piece.
import { expect, it } from 'vitest';
import { handover } from '../../src/handover/handover';
import type { PlanCell } from '../../src/sheet/plan';
import { LONGEST_FORMULA } from '../../src/sheet/formula';
import { sourceOf } from '../kit/source-of-plan';
import { workedOut } from '../kit/worked-out';
import { TITLE } from './kit';

const CELLS = 60;
/** With quotes and with signs that fill two places. */
const typed = (i: number): string => `${i} ${'x"y 🙂'.repeat(40)}`.slice(0, 190);
const SHOWN = `begins ${'"long" 🙂 '.repeat(100)}ends`;

const copy = handover(
  sourceOf({
    name: 'long',
    sheets: [
      {
        name: 'S',
        widths: [],
        cells: [
          ...Array.from({ length: CELLS }, (_, i): PlanCell => ({ at: `A${i + 1}`, role: 'input', value: typed(i) })),
          { at: 'C1', role: 'result', formula: `=IFERROR(ENCL.JOINT.SOLVE(A1:A${CELLS},"wall","grip",1),REPT("x",2)&A1)`, value: SHOWN },
        ],
      },
    ],
  }),
  TITLE,
);
const shownWith = (changed: string | undefined): unknown =>
  workedOut(
    copy.plan.sheets.map(sheet =>
      sheet.name !== 'S' || changed === undefined
        ? sheet
        : { ...sheet, cells: sheet.cells.map(cell => (cell.at === changed ? { ...cell, value: 'other' } : cell)) },
    ),
    'S',
  ).values.get('S!C1');

it('a value of many characters is shown until any of the cells that it reads is another', () => {
  expect(shownWith(undefined)).toBe(SHOWN);
  expect(['A1', 'A31', `A${CELLS}`].map(shownWith)).toEqual(['inputs changed', 'inputs changed', 'inputs changed']);
});

it('no formula is longer than a spreadsheet takes, nor a text in it', () => {
  const formulas = copy.plan.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
  const texts = formulas.flatMap(formula => formula.match(/"(?:[^"]|"")*"/g) ?? []).map(text => text.slice(1, -1).replace(/""/g, '"'));
  expect(formulas.filter(({ length }) => length > LONGEST_FORMULA)).toEqual([]);
  expect(texts.filter(({ length }) => length > 255)).toEqual([]);
  expect(texts.filter(text => /[\ud800-\udbff]$|^[\udc00-\udfff]/.test(text))).toEqual([]);
  expect(texts.filter(({ length }) => length > 100).length).toBeGreaterThan(CELLS);
});
