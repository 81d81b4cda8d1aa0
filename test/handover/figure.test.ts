// The sheet of figures: which joints, letters on the picture, live values below it.
import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { sourceOf } from '../kit/source-of-plan';
import { handover, type Handover } from '../../src/handover/handover';
import type { SourceWorkbook } from '../../src/sheet/workbook-values';
import type { PlanCell } from '../../src/sheet/plan';
import { sheetNamed, TITLE, workbookOf, type Typed } from './kit';

const drawings: string[] = [];
const pngOf = (svg: string): Uint8Array => {
  drawings.push(svg);
  return new Uint8Array([drawings.length]);
};
const drawn = (workbook: SourceWorkbook): Handover => handover(workbook, TITLE, { pngOf });
const demo = handover(sourceOf(demoWorkbook), TITLE, { pngOf });
const demoDrawings = [...drawings];
const figure = sheetNamed(demo, 'Figure');
/** What stands on a drawing. */
const textsOn = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, content = '']) => content.replace(/<[^>]*>/g, ''));
const headings = ({ cells }: { readonly cells: readonly PlanCell[] }): unknown[] =>
  cells.flatMap(({ role, value }) => (role === 'heading' ? [value] : []));

const NAMES = ['screw', 'head', 'length', 'wall', 'board plane', 'boss height', 'hole', 'material', 'seat', 'board', 'boss OD'];
const PASSES: readonly Typed[] = ['ST2.9', 'pan', 16, 3, 5.5, 14, 3.4, 'ABS', 2.5, 1.6, 5.6];
const FAILS: readonly Typed[] = ['ST2.9', 'pan', 9.5, 2.5, 5.5, 14, 3.4, 'ABS', 2.5, 1.6, 6.4];

/** A table of variants with a label each, and calls beside it. */
function tableOf(rows: readonly (readonly Typed[])[], calls: Readonly<Record<string, Typed>>): SourceWorkbook {
  const at = (r: number, c: number): string => `${String.fromCharCode(65 + c)}${r + 1}`;
  const cells = [NAMES, ...rows].flatMap((row, r) => [
    ...(r === 0 ? [] : [[at(r, 0), `row ${r}`] as const]),
    ...row.map((value, c) => [at(r, c + 1), value] as const),
  ]);
  return workbookOf({ ...Object.fromEntries(cells), ...calls });
}

describe('the demo', () => {
  it('has a figure for each variant, with its name, state and reason live', () => {
    expect(headings(figure)).toEqual([
      'A  first choice',
      'B  shorter',
      'C  flat end, thin seat, low relief',
      'D  longer',
      'E  longer still',
      'F  thicker wall, slimmer boss',
      'G  thicker screw',
      'H  thinner screw',
      'Checks A26',
    ]);
    expect(figure.pictures).toHaveLength(9);
    for (const [i, heading] of figure.cells
      .filter(({ role }) => role === 'heading')
      .slice(0, 8)
      .entries()) {
      const row = Number(heading.at.slice(1)) + 1;
      const state = figure.cells.find(({ at }) => at === `B${row}`);
      expect(state?.formula).toMatch(/^=Variants_1!\$[A-Z]+\$\d+$/);
      expect(state?.value).toBe(sheetNamed(demo, 'Variants').cells.find(({ at }) => at === `B${22 + i}`)?.value);
    }
  });

  it('explains every letter on the picture by a live value', () => {
    const first = figure.cells.filter(({ at }) => Number(at.replace(/\D/g, '')) <= (figure.print?.breakAfter?.[0] ?? 0));
    const legend = first.flatMap(cell => {
      const [column, row] = [cell.at[0], cell.at.slice(1)];
      if (!['A', 'F'].includes(column ?? '') || cell.role !== 'label' || !/^[A-Z]{1,2}$/.test(String(cell.value))) return [];
      return [{ letter: String(cell.value), value: first.find(({ at }) => at === `${column === 'A' ? 'C' : 'H'}${row}`) }];
    });
    const onPicture = textsOn(demoDrawings[0] ?? '').filter(text => /^[A-Z]{1,2}$/.test(text));
    expect(legend.map(({ letter }) => letter).sort()).toEqual([...onPicture].sort());
    expect(legend.length).toBeGreaterThan(25);
    for (const { value } of legend)
      expect(value).toMatchObject({ formula: expect.stringMatching(/^=IF\(AND\(.*Variants_1!/), value: expect.any(Number) });
  });

  it('has no value on the picture but sizes of screw and scale', () => {
    for (const svg of demoDrawings) {
      const texts = textsOn(svg).filter(text => /\d/.test(text));
      expect(texts.filter(text => !text.startsWith('Section through the joint') && !/^\d+(\.\d+)? mm$/.test(text))).toEqual([]);
      expect(svg).not.toContain('var(');
    }
  });

  it('says when the picture was made, in words for those who do not see it too', () => {
    expect(figure.cells.find(({ at }) => at === 'A2')?.value).toContain('as they were on 2026-11-25');
    expect(figure.pictures?.[1]?.words).toBe(
      'Section through the joint "B  shorter" to scale, as it was on 2026-11-25, state then: fail. The letters are explained in the table below.',
    );
    expect(sheetNamed(demo, 'Handover').cells.some(({ value }) => String(value).endsWith('stand on the sheet Figure.'))).toBe(true);
  });

  it('gives each picture rows of its own, and a page', () => {
    for (const { at, rows = 0 } of figure.pictures ?? []) {
      const top = Number(at.slice(1));
      const under = figure.cells.filter(
        cell => Number(cell.at.replace(/\D/g, '')) >= top && Number(cell.at.replace(/\D/g, '')) < top + rows,
      );
      expect(under).toEqual([]);
    }
    expect(figure.print?.breakAfter).toHaveLength(8);
  });

  it('is worked out the same with figures and without', () => {
    const plain = handover(sourceOf(demoWorkbook), TITLE);
    expect(plain.plan.sheets.map(({ name }) => name)).toEqual(demo.plan.sheets.map(({ name }) => name).filter(name => name !== 'Figure'));
    expect([plain.live, plain.asValues]).toEqual([demo.live, demo.asValues]);
  });
});

it('draws twelve of many, those that pass first, and says how many are left out', () => {
  const rows = [...Array.from({ length: 12 }, () => FAILS), ...Array.from({ length: 3 }, () => PASSES)];
  const copy = drawn(tableOf(rows, { N1: 'state', N3: '=ENCL.JOINT.TABLE(B1:L16,N1:N1)' }));
  expect(headings(sheetNamed(copy, 'Figure'))).toEqual([
    ...Array.from({ length: 9 }, (_, i) => `row ${i + 1}`),
    'row 13',
    'row 14',
    'row 15',
  ]);
  expect(sheetNamed(copy, 'Figure').cells.find(({ at }) => at === 'A2')?.value).toContain('3 more variants have no figure');
});

it('draws a variant once, however often it is asked for', () => {
  const copy = drawn(
    tableOf([PASSES, FAILS], {
      N1: 'state',
      N3: '=ENCL.JOINT.TABLE(B1:L3,N1:N1)',
      P3: '=ENCL.JOINT.TABLE(B1:L3,N1:N1)',
      R1: '=ENCL.JOINT.VALUE(B1:L1,B3:L3,"state")',
    }),
  );
  expect(headings(sheetNamed(copy, 'Figure'))).toEqual(['row 1', 'row 2']);
});

it('draws a single joint too', () => {
  const copy = drawn(tableOf([PASSES], { M1: 'my joint', N1: '=ENCL.JOINT.VALUE(B1:L1,B2:L2,"sink ratio")' }));
  expect(headings(sheetNamed(copy, 'Figure'))).toEqual(['my joint']);
});

it('has no sheet where there is no joint', () => {
  expect(drawn(workbookOf({ A1: 2.4, B1: '=ENCL.BOSS.OD(A1,1.2)' })).plan.sheets.map(({ name }) => name)).not.toContain('Figure');
});

it('shows what has no value as such', () => {
  const copy = drawn(
    tableOf([PASSES.map((value, i) => (NAMES[i] === 'boss height' ? null : value))], { N1: 'state', N3: '=ENCL.JOINT.TABLE(B1:L2,N1:N1)' }),
  );
  expect(sheetNamed(copy, 'Figure').cells.some(({ value }) => value === 'no value')).toBe(true);
});

it('prints every sheet of ours on the paper that is asked for, A4 without asking', () => {
  const papers = (paper?: 'Letter'): unknown[] => {
    const { plan, own } = handover(workbookOf({ A1: 1 }), TITLE, paper === undefined ? {} : { paper });
    return [...new Set(plan.sheets.filter(({ name }) => own.has(name)).map(({ print }) => print?.paper))];
  };
  expect(papers()).toEqual(['A4']);
  expect(papers('Letter')).toEqual(['Letter']);
});

it('locks all but inputs on our sheets', () => {
  expect(demo.plan.sheets.map(({ name, isLocked }) => [name, isLocked])).toEqual(
    demo.plan.sheets.map(({ name }) => [name, demoWorkbook.sheets.some(sheet => sheet.name === name) ? undefined : true]),
  );
});
