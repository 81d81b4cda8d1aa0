// A table in the order of one of its columns: sorted on a sheet in memory, and worked out anew there.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { call } from '../../src/registry';
import { address, type Area, rectangleOf } from '../../src/sheet/addresses';
import type { SheetCell } from '../../src/sheet/port';
import { copied, sortTable, type Sorted } from '../../src/sheet/sort-table';
import { WorkbookValues, type SourceCell } from '../../src/sheet/workbook-values';
import { SEED } from '../kit/seed';

type Cells = Map<string, SourceCell>;

function numberOf(text: string): number | undefined {
  const length = call('LENGTH.MM', [text]);
  return length.ok && typeof length.value === 'number' ? length.value : undefined;
}

const cellOf = (content: Cell): SourceCell =>
  typeof content === 'string' && content.startsWith('=') ? { value: null, formula: content } : { value: content };

const cellsOf = (lines: readonly (readonly (Cell | null)[])[], top = 0): Cells =>
  new Map(
    lines.flatMap((line, r) => line.flatMap((content, c) => (content === null ? [] : [[address(top + r, c), cellOf(content)] as const]))),
  );

/** The sheet with the values that its formulas have. */
function workedOut(cells: Cells): SheetCell[][] {
  const source = new WorkbookValues({ name: '', sheets: [{ name: 'S', cells }] }, call);
  return Array.from({ length: 40 }, (_, r) =>
    Array.from({ length: 8 }, (__, c): SheetCell => {
      const cell = cells.get(address(r, c));
      const value = cell?.formula === undefined ? (cell?.value ?? null) : ((source.value('S', address(r, c)) ?? null) as Cell | null);
      return { value, ...(cell?.formula !== undefined && { formula: cell.formula }) };
    }),
  );
}

const grids = (cells: Cells) => new Map([['S', workedOut(cells)]]);
const area = (range: string): Area => ({ sheet: 'S', ...rectangleOf(range) });

function sorted(cells: Cells, range: string, column: number, isFalling = false): Sorted {
  const answer = sortTable(grids(cells), { area: area(range), column, isFalling, numberOf });
  if ('filledFrom' in answer) throw new Error('refused');
  return answer;
}

function written(cells: Cells, { entries }: Sorted): Cells {
  const after = new Map(cells);
  for (const { at, content } of entries) {
    if (content === '') after.delete(at);
    else after.set(at, cellOf(content));
  }
  return after;
}

const column = (cells: Cells, c: number, rows: number): (Cell | null)[] =>
  workedOut(cells)
    .slice(1, rows + 1)
    .map(line => line[c]?.value ?? null);

test('numbers and lengths by what they are in mm, then texts, what is blank last; the same the other way round', () => {
  const given = ['M3', '0.167 in', null, 4.2, '3 mm', 'M2.5', 10, 'M10', '1 cm'];
  const cells = cellsOf([['size'], ...given.map(value => [value])]);
  const rising = ['3 mm', 4.2, '0.167 in', 10, '1 cm', 'M2.5', 'M3', 'M10', null];
  expect(column(written(cells, sorted(cells, 'A1:A10', 0)), 0, 9)).toEqual(rising);
  const falling = ['M10', 'M3', 'M2.5', 10, '1 cm', '0.167 in', 4.2, '3 mm', null];
  expect(column(written(cells, sorted(cells, 'A1:A10', 0, true)), 0, 9)).toEqual(falling);
});

test.each([
  ['=A2*2', 'C2', 'C5', '=A5*2'],
  ['=$A2*A$2+$B$9', 'C2', 'C5', '=$A5*A$2+$B$9'],
  ['=ENCL.BOSS.OD(A2, "A2", 1.2)', 'C2', 'C9', '=ENCL.BOSS.OD(A9, "A2", 1.2)'],
  ["=SUM('My sheet'!A2:B2)", 'C2', 'C3', "=SUM('My sheet'!A3:B3)"],
  ['=B3-B2', 'C3', 'C5', '=B5-B4'],
])('%s copied from %s to %s', (formula, from, to, expected) => {
  expect(copied(formula, from, to)).toBe(expected);
});

test('formulas that read other rows, and those outside that read some rows, are named', () => {
  const cells = cellsOf([
    ['n', 'twice', 'step', 'all'],
    [3, '=A2*2', '=A3-A2', '=A2/SUM($A$2:$A$4)'],
    [1, '=A3*2', 'none', '=A3/SUM($A$2:$A$4)'],
    [2, '=A4*2', 'none', '=A4/$A$2'],
    [null],
    ['=A3', '=SUM(A2:A4)', '=SUM(A:A)', '=ENCL.LENGTH.MM(A2)'],
  ]);
  const { otherRows, outside, order } = sorted(cells, 'A1:D4', 0);
  expect(order).toEqual([2, 3, 1]);
  expect(otherRows).toEqual(['C2', 'D4']);
  expect(outside).toEqual(['A6', 'D6']);
});

test('what a formula fills from above stays and is not written; from within it is refused', () => {
  const cells = cellsOf([
    ['n', 'x'],
    [2, 5],
    [1, 6],
  ]);
  const filled = (from: string) =>
    new Map([['S', workedOut(cells).map((line, r) => line.map((cell, c) => (c === 1 && r > 0 ? { ...cell, spilledFrom: from } : cell)))]]);
  const wish = { area: area('A1:B3'), column: 0, isFalling: false, numberOf };
  expect(sortTable(filled('B1'), wish)).toMatchObject({
    entries: [
      { at: 'A2', content: 1 },
      { at: 'A3', content: 2 },
    ],
  });
  expect(sortTable(filled('B2'), wish)).toEqual({ filledFrom: 'B2' });
});

const content = fc.oneof(
  fc.integer({ min: -9, max: 9 }),
  fc.constantFrom<Cell | null>('0.167 in', '4 mm', 'M3', 'ST2.9', 'pan', 'a, (b)', 'Ä', null, true, 2.5),
);
/** Each reads its own row alone, and what is fixed. */
const OWN_ROW = ['=A#*2+$H$1', '=IF(A#>B#,"more",A#)', '=ENCL.LENGTH.MM("3 mm")*A#', '=SUM($A#:B#)', '=A#&"A1"', '=COUNT($A$2:$A$40)'];

test('sorted twice is sorted once, no value is lost, and what reads its own row has the same values in another order', () => {
  let [moved, formulas] = [0, 0];
  fc.assert(
    fc.property(
      fc.array(fc.tuple(content, content, fc.constantFrom(...OWN_ROW)), { minLength: 1, maxLength: 12 }),
      fc.integer({ min: 0, max: 2 }),
      fc.boolean(),
      (rows, by, isFalling) => {
        const cells = cellsOf([['a', 'b', 'c'], ...rows.map(([a, b, c], r) => [a, b, c.replaceAll('#', String(r + 2))])]);
        cells.set('H1', { value: 7 });
        const range = `A1:C${rows.length + 1}`;
        const once = sorted(cells, range, by, isFalling);
        const after = written(cells, once);
        expect(sorted(after, range, by, isFalling).entries).toEqual([]);
        expect(once.otherRows).toEqual([]);
        const lines = (of: Cells) =>
          workedOut(of)
            .slice(1, rows.length + 1)
            .map(line => JSON.stringify(line.slice(0, 3).map(({ value }) => value)));
        expect(lines(after)).toEqual(once.order.map(row => lines(cells)[row - 1]));
        expect([...lines(after)].sort()).toEqual([...lines(cells)].sort());
        moved += once.entries.length;
        formulas += once.entries.filter(({ content: to }) => String(to).startsWith('=')).length;
      },
    ),
    { seed: SEED, numRuns: 300 },
  );
  expect(moved).toBeGreaterThan(1000);
  expect(formulas).toBeGreaterThan(300);
});
