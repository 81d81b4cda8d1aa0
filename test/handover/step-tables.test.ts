// A column filled down is a table of steps: labels, words and sources once, one row a call.
import { describe, expect, it } from 'vitest';
import { value } from '../kit/ask';
import { workedOut } from '../kit/worked-out';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { cellAt, handed, sheetNamed, type Typed, workbookOf } from './kit';

const ROWS = 40;
const NUMBERS = Array.from({ length: ROWS }, (_, i) => i + 2);
const SIZES = ['ST2.9', 'ST3.5', 'ST4.2'];
const PILOTS = [2.5, 3, 3.6];
const hole = (r: number): number => 2 + r / 10;
const cells: Record<string, Typed> = Object.fromEntries(
  NUMBERS.flatMap(r => [
    [`A${r}`, `boss ${r}`],
    [`B${r}`, hole(r)],
    [`C${r}`, 1.2],
    [`D${r}`, SIZES[r % 3] as string],
    [`E${r}`, `=ENCL.BOSS.OD(B${r},C${r},14,0.5)`],
    [`F${r}`, `=ENCL.CHECK.MAX(E${r},6)`],
    [`G${r}`, `=ENCL.HOLE.THREAD.SHARE(D${r},J${r})`],
    [`J${r}`, PILOTS[r % 3] as number],
    [`H${r}`, `=ROUND(ENCL.BOSS.OD(B${r},C${r})+ENCL.BOSS.OD(C${r},B${r}),3)`],
    [`I${r}`, `=SUM(ENCL.ENGAGEMENT.LIMITS(16,0.8,B${r},0.1))`],
  ]),
);
const copy = handed(workbookOf({ ...cells, K1: '=ENCL.BOSS.OD(B2,9)' }));
const rows = sheetNamed(copy, 'Steps_rows');
const texts = (sheet: SheetPlan, text: string): PlanCell[] => sheet.cells.filter(cell => cell.value === text);

describe('filled columns', () => {
  it('are live, every one', () => {
    expect(copy.asValues).toBe(0);
    expect(copy.live).toBe(5 * ROWS + 1);
  });

  it('say label, words and source once, and have a row for each call', () => {
    // one table for each of E and G, two for the calls in H
    expect(texts(rows, 'hole + 2·wall + 2·distance·tan(draft)')).toHaveLength(3);
    expect(texts(rows, 'inputs in limits').length).toBeGreaterThanOrEqual(4);
    // E, F, G, twice H, I
    expect(rows.cells.filter(({ value }) => typeof value === 'string' && /^[E-I]\d+, /.test(value))).toHaveLength(6 * ROWS);
    expect(texts(rows, 'S E2 to E41: BOSS.OD')).toHaveLength(1);
  });

  it('hold a constant of the formula once, as an input', () => {
    const draft = rows.cells.filter(({ role, value }) => role === 'input' && value === 0.5);
    expect(draft).toHaveLength(1);
    const others = new Map(rows.cells.map(cell => [cell.at, cell]));
    const [at = ''] = draft.map(cell => cell.at);
    expect(others.get(at.replace(/\d+/, row => String(Number(row) - 4)))).toMatchObject({ role: 'header', value: 'draft' });
  });

  it('look the row of a table up once', () => {
    const looked = rows.cells.filter(({ formula = '' }) => formula.includes('MATCH('));
    expect(looked.length).toBe(ROWS);
    expect(looked.every(({ formula = '' }) => !formula.includes('INDEX('))).toBe(true);
  });

  it('have each cell once, and what stands alone is still a block', () => {
    expect(new Set(rows.cells.map(({ at }) => at)).size).toBe(rows.cells.length);
    expect(cellAt(copy, 'S', 'K1').formula).toMatch(/^=Steps!\$B\$\d+$/);
    expect(sheetNamed(copy, 'Steps').cells.filter(({ role }) => role === 'header')).toHaveLength(5);
  });

  it('follow the cells of their own row, and no other', () => {
    const typedOver = copy.plan.sheets.map(sheet =>
      sheet.name === 'S' ? { ...sheet, cells: sheet.cells.map(cell => (cell.at === 'B20' ? { ...cell, value: 3.3 } : cell)) } : sheet,
    );
    const { values, unknown } = workedOut(typedOver, 'S');
    expect(unknown).toEqual([]);
    let compared = 0;
    for (const r of NUMBERS) {
      const b = r === 20 ? 3.3 : hole(r);
      const od = value('BOSS.OD', b, 1.2, 14, 0.5) as number;
      expect(values.get(`S!E${r}`), `E${r}`).toBeCloseTo(od, 9);
      expect(values.get(`S!F${r}`), `F${r}`).toBe(od <= 6 ? 'pass' : 'fail');
      expect(values.get(`S!G${r}`), `G${r}`).toBeCloseTo(value('HOLE.THREAD.SHARE', SIZES[r % 3], PILOTS[r % 3]) as number, 9);
      // hole + 2·wall, both ways round
      expect(values.get(`S!H${r}`), `H${r}`).toBeCloseTo(3 * (b + 1.2), 3);
      compared += 4;
    }
    expect(compared).toBe(4 * ROWS);
  });

  it('a constant that is changed changes all rows', () => {
    const at = rows.cells.find(({ role, value }) => role === 'input' && value === 0.5)?.at;
    const typedOver = copy.plan.sheets.map(sheet =>
      sheet.name === 'Steps_rows' ? { ...sheet, cells: sheet.cells.map(cell => (cell.at === at ? { ...cell, value: 2 } : cell)) } : sheet,
    );
    const { values } = workedOut(typedOver, 'S');
    for (const r of NUMBERS) expect(values.get(`S!E${r}`)).toBeCloseTo(hole(r) + 2.4 + 28 * Math.tan((2 * Math.PI) / 180), 9);
  });
});

describe('rows that are not alike', () => {
  const mixed = handed(
    workbookOf({
      ...Object.fromEntries(
        [2, 3, 4, 5, 6].flatMap(r => [
          [`A${r}`, r],
          [`C${r}`, `=ENCL.BOSS.OD(A${r},B${r})`],
        ]),
      ),
      B2: 1.2,
      B3: '1.5 mm',
      B4: 1,
      B5: '=1+0.1',
      B6: 2,
    }),
  );

  it('stand in one table all the same, with their values', () => {
    expect(mixed).toMatchObject({ live: 5, asValues: 0 });
    // hole + 2·wall
    expect([2, 3, 4, 5, 6].map(r => cellAt(mixed, 'S', `C${r}`).value)).toEqual(
      [4.4, 6, 6, 7.2, 10].map(v => expect.closeTo(v, 9) as number),
    );
    expect(texts(sheetNamed(mixed, 'Steps_rows'), 'hole + 2·wall + 2·distance·tan(draft)')).toHaveLength(1);
  });
});
