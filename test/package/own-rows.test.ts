// Long sheets of ours: rows that the library does not write are what it would have written.
import { beforeAll, describe, expect, it } from 'vitest';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { edited } from '../../src/package/edit';
import type { OwnRow } from '../../src/package/own-rows';
import { readPackage } from '../../src/package/read';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { ROW, RowForms } from '../../src/sheet/row-forms';
import { made } from './made';
import { allUnder, child, children, FileParts, Looks, type Node, OWN_PLAN, sheetPart } from './own-plan';

const ROWS = 120;
const TEXTS = [
  'ABS',
  ' led ',
  'two\nlines',
  '_x0041_',
  '#N/A',
  '=1+1',
  'a long text that takes several lines of its narrow column',
  '<&>"',
  'Ø 名',
  'tab\there\u0001',
];

/** Some are the same down a column for every reader, some would not be. */
const FORMS = [
  `=IF($B${ROW}>1,LOG10($B${ROW})&"a $B$1 §","")`,
  `=S!$A$1+$B${ROW}`,
  `=$B$2:$B$3*$B${ROW}`,
  `=$B${ROW}&"${ROW}"`,
  `=B2+$B${ROW}`,
  `=SUM($B$60:$B${ROW})`,
];
const forms = new RowForms();

/** Of every kind of cell, again and again, with rows among them that only the library can write. */
function tableCells(): PlanCell[] {
  const cells: PlanCell[] = [{ at: 'A1', role: 'title', value: 'Long' }];
  for (let row = 2; row <= ROWS; row++) {
    const isOdd = row % 17 === 0;
    cells.push(
      { at: `A${row}`, role: 'label', value: TEXTS[row % TEXTS.length] ?? '', ...(isOdd && { note: `of row ${row}` }) },
      { at: `C${row}`, role: 'result', formula: `=S!$A$1*${row}+B${row}`, value: row / 7, format: row % 2 === 0 ? '0.00' : '0.000 "mm"' },
      { at: `B${row}`, role: 'input', value: row % 5 === 0 ? '' : row * 1e-7 },
      { at: `D${row}`, role: 'result', formula: `=IF(B${row}>1,"pass","fail")`, value: row % 3 === 0 ? 'fail' : 'pass' },
      { at: `E${row}`, role: 'text', value: row % 2 === 0 },
      { at: `F${row}`, role: 'result', formula: '=NA()', value: row % 4 === 0 ? '#N/A' : '' },
      ...FORMS.map((form, i): PlanCell => ({ at: `${'JKLMNO'[i]}${row}`, role: 'text', ...forms.cell(form, row - 1), value: row })),
      { at: `P${row}`, role: 'text', ...forms.cell(row % 3 === 0 ? `=$D${ROW}` : `=$E${ROW}`, row - 1), value: row },
      ...(row === 40 ? [{ at: 'G40', role: 'heading', value: 'a heading' } as const] : []),
      ...(row === 60 ? [{ at: 'G60', role: 'text', value: 'over three rows' } as const] : []),
      ...(row === 70 ? [{ at: 'G70', role: 'result', formula: '=B70:B71*2', value: 1, array: { range: 'G70:G71' } } as const] : []),
    );
  }
  return cells;
}

const long: SheetPlan = {
  name: 'Steps',
  widths: [14, 10, 10, 10, 10, 10, 10, 10],
  frozenRows: 1,
  isLocked: true,
  cells: tableCells(),
  merged: ['G60:H62'],
  stateRanges: [`D2:D${ROWS}`],
};
const PLAN: WorkbookPlan = { name: 'Long', sheets: [long, { ...long, name: 'Open', isLocked: false }, ...OWN_PLAN.sheets] };
const user = made({ rows: '<row r="1"><c r="A1"><v>2</v></c></row>' });
const rowsOf = (file: FileParts, sheet: string): readonly Node[] => children(child(file.nodes(sheetPart(file, sheet)), 'sheetData'), 'row');

let [whole, split]: [Uint8Array, Uint8Array] = [new Uint8Array(), new Uint8Array()];
let left: ReadonlyMap<string, Iterable<OwnRow>> = new Map();
beforeAll(async () => {
  const [cells, own] = [new Map<string, never>(), await writeOwnSheets(PLAN)];
  left = own.ownRows;
  whole = edited(readPackage(user), { cells, own: await writeWorkbook(PLAN) }).bytes;
  split = edited(readPackage(user), { cells, ...own }).bytes;
}, 60_000);

describe('rows that the library does not see', () => {
  it('are most of them', () => {
    for (const name of ['Steps', 'Open']) expect([...(left.get(name) ?? [])].length).toBeGreaterThanOrEqual(ROWS * 0.6);
  });

  it('hold the same values and formulas', () => {
    const [is, was] = [readPackage(split), readPackage(whole)];
    const read = ({ sheets }: typeof is): unknown[] =>
      sheets.map(({ name, cells }) => [name, cells.map(({ at, value, formula }) => [at, value, formula?.text, formula?.area === at])]);
    expect(read(is)).toEqual(read(was));
    const shared = is.sheets.flatMap(({ cells }) =>
      cells.filter(({ formula }) => formula?.kind === 'shared').map(({ at }) => at.replace(/\d+/, '')),
    );
    expect(new Set(shared)).toEqual(new Set(['J', 'L', 'P']));
    expect(shared.length).toBeGreaterThanOrEqual(2 * 2 * (ROWS * 0.6));
    expect(was.sheets.some(({ cells }) => cells.some(({ formula }) => formula?.kind === 'shared'))).toBe(false);
    expect(was.sheets.reduce((sum, { cells }) => sum + cells.length, 0)).toBeGreaterThanOrEqual(2 * ROWS * 5);
    expect(is.names).toEqual(was.names);
  });

  it('look the same, cell by cell, and have the same heights', () => {
    const [is, was] = [new FileParts(split), new FileParts(whole)];
    const [looks, before] = [new Looks(is), new Looks(was)];
    let compared = 0;
    for (const { name } of PLAN.sheets) {
      const [rows, then] = [rowsOf(is, name), rowsOf(was, name)];
      expect(rows.map(({ at }) => [at['r'], at['ht'], at['customHeight']])).toEqual(
        then.map(({ at }) => [at['r'], at['ht'], at['customHeight']]),
      );
      for (const [i, row] of then.entries()) {
        const cells = rows[i]?.nodes ?? [];
        expect(cells.map(({ at }) => at['r'])).toEqual(row.nodes.map(({ at }) => at['r']));
        for (const [j, cell] of row.nodes.entries()) {
          expect(looks.cells[Number(cells[j]?.at['s'])], cell.at['r']).toEqual(before.cells[Number(cell.at['s'])]);
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThanOrEqual(2 * ROWS * 6);
  });

  it('leave everything around them as it is', () => {
    const [is, was] = [new FileParts(split), new FileParts(whole)];
    const around = (file: FileParts, name: string): unknown[] =>
      file
        .nodes(sheetPart(file, name))
        .nodes.filter(({ local }) => !['sheetData', 'dimension', 'cols'].includes(local))
        .map(node => [node, allUnder(node)]);
    for (const { name } of PLAN.sheets) {
      expect(around(is, name)).toEqual(around(was, name));
      expect(around(was, name).length).toBeGreaterThanOrEqual(7);
    }
  });
});

describe('refused before anything is written', () => {
  const cell = (column: number, like = 'A1') => ({ column, like, value: 1, formula: 'none' }) as const;
  const row = (at: number, ...cells: OwnRow['cells']): OwnRow => ({ row: at, cells });
  it.each<[string, string, readonly OwnRow[], RegExp]>([
    ['a row that the sheet has', 'Data', [row(1, cell(0))], /the row 2 does not stand in its order/],
    ['rows out of their order', 'Data', [row(40, cell(0)), row(39, cell(0))], /the row 40 does not stand/],
    ['cells out of their order', 'Data', [row(40, cell(1), cell(1))], /the cell B41 does not stand in its order/],
    ['looks of a cell that is not there', 'Data', [row(40, cell(0, 'Z9'))], /A41 is to look like Z9/],
    ['a sheet that is not ours', 'S', [row(40, cell(0))], /rows for "S", which is no sheet of ours/],
  ])('%s', async (_, sheet, rows, words) => {
    const own = await writeWorkbook(OWN_PLAN);
    expect(() => edited(readPackage(user), { cells: new Map(), own, ownRows: new Map([[sheet, rows]]) })).toThrow(words);
  });
});
