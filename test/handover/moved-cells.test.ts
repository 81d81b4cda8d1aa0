// Cells that were cut out, sorted, filled in or typed as text: each is told once, and what it does is shown.
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/handover/compare/compare';
import { changeLists } from '../../src/handover/compare/change-lists';
import type { ComparedSheet, ComparedWorkbook } from '../../src/handover/compare/seen';
import type { SourceCell } from '../../src/sheet/workbook-values';
import type { Cell } from '../../src/core/kinds';

/** By address: a value, or a formula with its value. */
type Cells = Readonly<Record<string, Cell | readonly [formula: string, value: Cell | null] | undefined>>;

const sheet = (name: string, cells: Cells): ComparedSheet => ({
  name,
  cells: new Map(
    Object.entries(cells).flatMap(([at, given]): [string, SourceCell][] =>
      given === undefined ? [] : [[at, typeof given === 'object' ? { value: given[1], formula: given[0] } : { value: given }]],
    ),
  ),
});
const workbook = (sheets: Readonly<Record<string, Cells>>): ComparedWorkbook => ({
  name: 'W',
  sheets: Object.entries(sheets).map(([name, cells]) => sheet(name, cells)),
});
const linesOf = (sent: ComparedWorkbook, returned: ComparedWorkbook): string[] =>
  changeLists(compare(sent, returned)).flatMap(({ title, lines }) => lines.map(line => `${title}: ${line}`));

const PARTS: Cells = {
  A1: 'part',
  B1: 'hole',
  C1: 'wall',
  A2: 'upper boss',
  B2: 2.4,
  C2: 1.2,
  A3: 'lower boss',
  B3: 2.9,
  C3: 1.4,
  A6: 'sum of holes',
  B6: ['=B2+B3', 5.3],
};
const CHECKS: Cells = { A1: 'check', A2: 'state of the upper boss', B2: ['=IF(Parts!B2<2.5,"pass","fail")', 'pass'], A3: 'end' };
const SENT = workbook({ Parts: PARTS, Checks: CHECKS });

describe('a block on another sheet', () => {
  const cut = { ...PARTS, A2: undefined, B2: undefined, C2: undefined, A3: undefined, B3: undefined, C3: undefined };
  const put = (top: number): Cells => ({
    [`E${top}`]: 'upper boss',
    [`F${top}`]: 2.4,
    [`G${top}`]: 1.2,
    [`E${top + 1}`]: 'lower boss',
    [`F${top + 1}`]: 2.9,
    [`G${top + 1}`]: 1.4,
  });
  const state: Cells = { ...CHECKS, B2: ['=IF(F10<2.5,"pass","fail")', null] };
  const moved = 'rows, columns and sheets: Parts, cells moved: A2:C3 to Checks E10:G11';

  it('is one line, and what reads it follows', () => {
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F11', null] }, Checks: { ...state, ...put(10) } });
    expect(linesOf(SENT, back)).toEqual([moved]);
  });

  it('a formula that reads another cell than before is told', () => {
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F10', null] }, Checks: { ...state, ...put(10) } });
    expect(linesOf(SENT, back)).toEqual(['changed formulas: sum of holes, Parts B6: =B2+B3 -> =Checks!F10+Checks!F10', moved]);
  });

  it('a value that was changed in it is told where it was sent, with what it does', () => {
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F11', null] }, Checks: { ...state, ...put(10), F10: 2.6 } });
    expect(linesOf(SENT, back)).toEqual([
      'changed inputs: hole of upper boss, Parts B2: 2.4 -> 2.6',
      'what they do: state of the upper boss, Checks B2: pass -> fail',
      moved,
    ]);
  });

  it('a remark on it is told where it was sent, and its own colour is none', () => {
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F11', null] }, Checks: { ...state, ...put(10) } });
    const coloured = (book: ComparedWorkbook, name: string, at: string, comment?: string): ComparedWorkbook => ({
      ...book,
      sheets: book.sheets.map(one =>
        one.name === name
          ? { ...one, fills: new Map([[at, 'FFE699']]), comments: new Map(comment === undefined ? [] : [[at, comment]]) }
          : one,
      ),
    });
    expect(linesOf(coloured(SENT, 'Parts', 'B2'), coloured(back, 'Checks', 'F10', 'too tight'))).toEqual([
      'comments: hole of upper boss, Parts B2: too tight',
      moved,
    ]);
    expect(linesOf(SENT, coloured(back, 'Checks', 'F10'))).toEqual(['colours: hole of upper boss, Parts B2: #FFE699', moved]);
  });

  it('what was filled in where the block had a blank cell is told where it was sent', () => {
    const sent = workbook({ Parts: { ...PARTS, C2: undefined }, Checks: CHECKS });
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F11', null] }, Checks: { ...state, ...put(10) } });
    expect(linesOf(sent, back)).toEqual(['changed inputs: wall of upper boss, Parts C2: blank -> 1.2', moved]);
  });

  it('what it was put on is not told a second time', () => {
    const kept: Cells = { A10: 'see', B10: 'the drawing', C10: 'of the lid' };
    const back = workbook({ Parts: { ...cut, B6: ['=Checks!F10+Checks!F11', null] }, Checks: { ...state, ...kept, ...put(10) } });
    expect(linesOf(workbook({ Parts: PARTS, Checks: { ...CHECKS, ...kept, G10: 7 } }), back)).toEqual([moved]);
  });

  it('all that a sheet has is no row that was deleted', () => {
    const rest = { ...PARTS, A6: undefined, B6: undefined };
    expect(linesOf(workbook({ Parts: rest }), workbook({ Parts: {}, Extra: rest }))).toEqual([
      'rows, columns and sheets: Extra, sheet added: was not sent',
      'rows, columns and sheets: Parts, cells moved: A1:C3 to Extra A1:C3',
    ]);
  });

  it('two cells far from one another are none', () => {
    const back = workbook({ Parts: { ...PARTS, A2: undefined, C3: undefined }, Checks: { ...CHECKS, E10: 'upper boss', G11: 1.4 } });
    const lines = linesOf(SENT, back);
    expect(lines.filter(line => line.includes('cells moved'))).toEqual([]);
    expect(lines.filter(line => line.startsWith('missing'))).toHaveLength(2);
  });

  it('a sheet that was copied, and a row of the first one emptied, is no block', () => {
    const many = { ...PARTS, A4: 'rib', B4: 0.9, C4: 0.8, A5: 'lip', B5: 0.7, C5: 0.6 };
    const emptied = { ...many, A3: undefined, B3: undefined, C3: undefined };
    const lines = linesOf(workbook({ Parts: many }), workbook({ Parts: emptied, Copy: many }));
    expect(lines.filter(line => line.includes('cells moved'))).toEqual([]);
    expect(lines).toContain('rows, columns and sheets: Copy, sheet added: was not sent');
  });

  it('one word that stands on another sheet too is no block', () => {
    const lines = linesOf(SENT, workbook({ Parts: { ...PARTS, A2: undefined, A3: undefined }, Checks: { ...CHECKS, D9: 'upper boss' } }));
    expect(lines.filter(line => line.includes('moved'))).toEqual([]);
    expect(lines.filter(line => line.startsWith('missing'))).toHaveLength(2);
  });
});

describe('rows that were sorted', () => {
  const rows: Cells = { ...PARTS, A2: 'lower boss', B2: 2.9, C2: 1.4, A3: 'upper boss', B3: 2.4, C3: 1.2 };

  it('show what they do to a formula that reads a place', () => {
    expect(linesOf(SENT, workbook({ Parts: rows, Checks: CHECKS }))).toEqual([
      'what they do: state of the upper boss, Checks B2: pass -> fail',
      'rows, columns and sheets: Parts, row moved: 2 to 3: upper boss | 2.4 | 1.2',
    ]);
  });

  it('do nothing where the formula followed', () => {
    const checks: Cells = { ...CHECKS, B2: ['=IF(Parts!B3<2.5,"pass","fail")', null] };
    expect(linesOf(SENT, workbook({ Parts: rows, Checks: checks }))).toEqual([
      'rows, columns and sheets: Parts, row moved: 2 to 3: upper boss | 2.4 | 1.2',
    ]);
  });

  it('do nothing to a result that went with its name', () => {
    const states = (first: string, second: string): Cells => ({
      A1: 'part',
      B1: 'hole',
      C1: 'state',
      A2: ['=Parts!A2', first],
      B2: ['=Parts!B2', null],
      C2: ['=IF(Parts!B2<2.5,"pass","fail")', first === 'upper boss' ? 'pass' : 'fail'],
      A3: ['=Parts!A3', second],
      B3: ['=Parts!B3', null],
      C3: ['=IF(Parts!B3<2.5,"pass","fail")', second === 'upper boss' ? 'pass' : 'fail'],
    });
    const sent = workbook({ Parts: PARTS, States: states('upper boss', 'lower boss') });
    expect(linesOf(sent, workbook({ Parts: rows, States: states('upper boss', 'lower boss') }))).toEqual([
      'rows, columns and sheets: Parts, row moved: 2 to 3: upper boss | 2.4 | 1.2',
    ]);
  });
});

describe('a row that is found again', () => {
  it('below, where it was put', () => {
    const below = { ...PARTS, A2: undefined, B2: undefined, C2: undefined, A8: 'upper boss', B8: 2.4, C8: 1.2 };
    const checks: Cells = { ...CHECKS, B2: ['=IF(Parts!B8<2.5,"pass","fail")', null] };
    expect(linesOf(SENT, workbook({ Parts: { ...below, B6: ['=B8+B3', null] }, Checks: checks }))).toEqual([
      'rows, columns and sheets: Parts, row moved: 2 to 8: upper boss | 2.4 | 1.2',
    ]);
  });

  it('one row further up, with a new one in its place', () => {
    const sent: Cells = { ...PARTS, B6: undefined, A6: 'end' };
    const back = { ...sent, A2: 'lower boss', B2: 3, C2: 1.4, A3: 'rib', B3: 0.9, C3: 0.8 };
    expect(linesOf(workbook({ Parts: sent }), workbook({ Parts: back }))).toEqual([
      'changed inputs: hole of lower boss, Parts B3: 2.9 -> 3',
      'rows, columns and sheets: Parts, row inserted: 3: rib | 0.9 | 0.8',
      'rows, columns and sheets: Parts, row deleted: 2: upper boss | 2.4 | 1.2',
    ]);
  });
});

describe('a row that was blank and is filled in', () => {
  it('is told cell by cell, with its own name', () => {
    expect(linesOf(SENT, workbook({ Parts: { ...PARTS, A4: 'rib', B4: 0.9 }, Checks: CHECKS }))).toEqual([
      'changed inputs: part, Parts A4: blank -> rib',
      'changed inputs: hole of rib, Parts B4: blank -> 0.9',
    ]);
  });

  it('beside a change in the row above', () => {
    expect(linesOf(SENT, workbook({ Parts: { ...PARTS, C3: 1.5, A4: 'rib', B4: 0.9 }, Checks: CHECKS }))).toEqual([
      'changed inputs: wall of lower boss, Parts C3: 1.4 -> 1.5',
      'changed inputs: part, Parts A4: blank -> rib',
      'changed inputs: hole of rib, Parts B4: blank -> 0.9',
    ]);
  });

  it('a row that was inserted and filled stays one', () => {
    const back = workbook({
      Parts: { ...PARTS, A4: 'rib', B4: 0.9, A6: undefined, B6: undefined, A7: 'sum of holes', B7: ['=B2+B3', 5.3] },
      Checks: CHECKS,
    });
    expect(linesOf(SENT, back)).toEqual(['rows, columns and sheets: Parts, row inserted: 4: rib | 0.9']);
  });
});

describe('a result that was emptied or written over', () => {
  it('shows what that does', () => {
    expect(linesOf(SENT, workbook({ Parts: { ...PARTS, B2: undefined }, Checks: CHECKS }))).toEqual([
      'missing: hole of upper boss, Parts B2: 2.4',
    ]);
    expect(linesOf(SENT, workbook({ Parts: { ...PARTS, B2: ['=B3', 2.9] }, Checks: CHECKS }))).toEqual([
      'what they do: state of the upper boss, Checks B2: pass -> fail',
      'changed formulas: hole of upper boss, Parts B2: 2.4 -> =B3',
    ]);
  });
});
