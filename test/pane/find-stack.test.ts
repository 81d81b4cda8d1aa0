// Which tolerance stack a cell belongs to, and what its links are called.
import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { Joints } from '../../src/pane/find-joint';
import { Stacks } from '../../src/pane/find-stack';
import { readWorkbook } from '../../src/pane/workbook';
import type { SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { fakePort } from './fake-port';

const gridsOf = (workbook: WorkbookPlan) => {
  const port = fakePort(workbook);
  return readWorkbook(port);
};

/** Rows of texts and numbers from A1; texts that begin with `=` are formulas. */
const sheet = (name: string, rows: readonly (readonly (string | number)[])[]): SheetPlan => ({
  name,
  widths: [],
  cells: rows.flatMap((row, r) =>
    row.flatMap((value, c) =>
      value === ''
        ? []
        : [
            {
              at: `${String.fromCharCode(65 + c)}${r + 1}`,
              role: 'text' as const,
              ...(String(value).startsWith('=') ? { formula: String(value) } : { value }),
            },
          ],
    ),
  ),
});

const stacksOf = async (...rows: readonly (readonly (string | number)[])[]) =>
  new Stacks(await gridsOf({ name: '', sheets: [sheet('S', rows)] }));

describe('the stack of a cell in the demo', async () => {
  const grids = await gridsOf(demoWorkbook);
  const stacks = new Stacks(grids);
  const at = (cell: string) => stacks.at({ sheetName: 'Tolerance', at: cell });
  const table = grids.get('Tolerance')?.slice(24, 28) ?? [];

  it.each(['B6', 'C9', 'D7', 'A24', 'H27', 'B17', 'C17', 'A35', 'C40'])('is found at %s, with the names and shares of the sheet', cell => {
    const shares = at(cell)?.shares ?? [];
    expect(shares.map(({ name }) => name)).toEqual(table.map(([label]) => label?.value));
    expect(shares.map(({ name }) => name)[0]).toBe('boss: floor to face');
    for (const [i, { share }] of shares.entries()) expect(share).toBeCloseTo(Number(table[i]?.[7]?.value), 9);
    expect(shares.reduce((sum, { share = 0 }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it('brings the totals that the cells show', () => {
    const value = (cell: string) => Number(grids.get('Tolerance')?.[Number(cell.slice(1)) - 1]?.[cell.charCodeAt(0) - 65]?.value);
    const { totals } = at('A24') ?? {};
    // boss 14 + board 1.6 + lid 4.5 − rim 19.6
    expect(totals?.nominalMm).toBeCloseTo(0.5, 9);
    expect([totals?.worstMm, totals?.rootSumSquareMm]).toEqual([value('B17'), value('C17')]);
  });

  it('is nowhere else', () => {
    for (const cell of ['A1', 'A3', 'E6', 'B11', 'B18', 'H42']) expect(at(cell), cell).toBeUndefined();
    expect(stacks.at({ sheetName: 'Variants', at: 'B6' })).toBeUndefined();
  });

  it('does not take the place of a joint', () => {
    const joints = new Joints(grids);
    expect(joints.holds({ sheetName: 'Variants', at: 'E6' })).toBe(true);
    expect(joints.holds({ sheetName: 'Tolerance', at: 'B6' })).toBe(false);
  });
});

describe('the links of a stack', () => {
  it('are called by the texts left of the tolerances, or above where they stand in a row', async () => {
    const column = await stacksOf(['rib', 2, 0.3], ['', 1, 0.4], ['=ENCL.STACK.SHARE(C1:C2)']);
    expect(column.at({ sheetName: 'S', at: 'A4' })?.shares).toEqual([
      { name: 'rib', share: expect.closeTo(0.36) as number },
      { name: '', share: expect.closeTo(0.64) as number },
    ]);
    const row = await stacksOf(['rib', 'lid'], [0.3, 0.4], ['=2*ENCL.STACK.RSS(A2:B2)']);
    expect(row.at({ sheetName: 'S', at: 'A3' })?.shares.map(({ name }) => name)).toEqual(['rib', 'lid']);
    expect(row.at({ sheetName: 'S', at: 'A4' })).toBeUndefined();
  });

  it('say why they have no shares', async () => {
    const stacks = await stacksOf(['rib', 'wide'], ['=ENCL.STACK.WORST(B1:B1)']);
    expect(stacks.at({ sheetName: 'S', at: 'B1' })).toMatchObject({ shares: [], refusal: expect.stringContaining('tolerances') as string });
  });
});
