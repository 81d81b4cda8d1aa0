// The sheet of figures: which joints, and the numbers of the characteristics on the picture.
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
  it('has a figure of the chosen variant, with its name and state live', () => {
    expect(headings(figure)).toEqual(['F  thicker wall, slimmer boss']);
    expect(figure.pictures).toHaveLength(1);
    const state = figure.cells.find(({ at }) => at === 'C3');
    expect(state?.formula).toMatch(/^=Variants_1!\$[A-Z]+\$\d+$/);
    expect(state?.value).toBe('pass');
  });

  it('has in balloons the numbers of the characteristics, each once, and no other mark', () => {
    const numbers = sheetNamed(demo, 'Characteristics')
      .cells.filter(({ at }) => /^A\d+$/.test(at) && Number(at.slice(1)) > 4)
      .map(({ value }) => String(value));
    const marks = [...(demoDrawings[0] ?? '').matchAll(/<text[^>]*bw-strong[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text ?? '');
    expect(numbers.length).toBeGreaterThan(12);
    expect(marks.filter(text => /^\d+$/.test(text)).sort()).toEqual([...numbers].sort());
    expect(textsOn(demoDrawings[0] ?? '').filter(text => /^[A-Z]{1,2}$/.test(text))).toEqual([]);
    expect(demoDrawings[0]).not.toContain('var(');
  });

  it('says when the picture was made, in words for those who do not see it too', () => {
    expect(figure.cells.find(({ at }) => at === 'A2')?.value).toContain('as it was on 2026-11-25');
    expect(figure.pictures?.[0]?.words).toBe(
      'Section through the joint "F  thicker wall, slimmer boss" to scale, as it was on 2026-11-25, state then: pass. ' +
        'The numbers are those of the characteristics.',
    );
  });

  it('is worked out the same with figures and without', () => {
    const plain = handover(sourceOf(demoWorkbook), TITLE);
    expect(plain.plan.sheets.map(({ name }) => name)).toEqual(demo.plan.sheets.map(({ name }) => name).filter(name => name !== 'Figure'));
    expect([plain.live, plain.asValues]).toEqual([demo.live, demo.asValues]);
  });
});

const chosen = (workbook: SourceWorkbook, ...variants: readonly string[]): Handover =>
  handover(workbook, TITLE, { pngOf, choice: { paper: 'A4', language: 'English', variants } });

it('draws one of many, the first that passes; of several that are named each on a page, with numbers that run on', () => {
  const rows = [...Array.from({ length: 12 }, () => FAILS), ...Array.from({ length: 3 }, () => PASSES)];
  const table = tableOf(rows, { N1: 'state', N3: '=ENCL.JOINT.TABLE(B1:L16,N1:N1)' });
  expect(headings(sheetNamed(drawn(table), 'Figure'))).toEqual(['row 13']);
  const two = chosen(table, 'row 14', 'row 2');
  expect(headings(sheetNamed(two, 'Figure'))).toEqual(['row 2', 'row 14']);
  expect(sheetNamed(two, 'Figure').print?.breakAfter).toHaveLength(1);
  const numbers = sheetNamed(two, 'Characteristics')
    .cells.filter(({ at, role }) => /^A\d+$/.test(at) && role === 'label')
    .map(({ value }) => value);
  expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  expect(headings(sheetNamed(two, 'Characteristics'))).toEqual(['row 2', 'row 14']);
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
  expect(headings(sheetNamed(copy, 'Figure'))).toEqual(['row 1']);
  expect(copy.choosable.variants.map(({ label }) => label)).toEqual(['row 1', 'row 2']);
});

it('draws a single joint too', () => {
  const copy = drawn(tableOf([PASSES], { M1: 'my joint', N1: '=ENCL.JOINT.VALUE(B1:L1,B2:L2,"sink ratio")' }));
  expect(headings(sheetNamed(copy, 'Figure'))).toEqual(['my joint']);
});

it('has no sheet where there is no joint', () => {
  expect(drawn(workbookOf({ A1: 2.4, B1: '=ENCL.BOSS.OD(A1,1.2)' })).plan.sheets.map(({ name }) => name)).not.toContain('Figure');
});

it('prints every sheet of ours on the paper that is asked for, A4 without asking', () => {
  const papers = (paper?: 'Letter'): unknown[] => {
    const { plan, own } = handover(workbookOf({ A1: 1 }), TITLE, { choice: { paper: paper ?? 'A4', language: 'English' } });
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
