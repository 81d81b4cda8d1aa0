// What the writer does with a formula that gives another value than its cell, or that it cannot work out.
import { describe, expect, it } from 'vitest';
import { UntrueCopy, verified } from '../../src/handover/verified';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { cellAt, handed, told, workbookOf } from './kit';

const cell = (at: string, value: PlanCell['value'], formula?: string): PlanCell => ({
  at,
  role: 'text',
  ...(value === undefined ? {} : { value }),
  ...(formula === undefined ? {} : { formula }),
});
const sheet = (name: string, ...cells: readonly PlanCell[]): SheetPlan => ({ name, widths: [], cells });
const OWN = new Set(['Steps']);

describe('a sheet of ours', () => {
  it('goes out while each formula gives its value, worked out on the values beside it', () => {
    const steps = sheet(
      'Steps',
      cell('A1', 2),
      cell('A2', 4, '=A1*2'),
      cell('A3', '#N/A', '=NA()'),
      cell('A4', 'x', '=IF(ISNUMBER(A3),1,"x")'),
      cell('A5', 0.1 + 0.2, '=0.3'),
    );
    expect(verified([steps], OWN)).toEqual({ sheets: [steps], findings: [] });
  });

  it.each([
    ['another number', cell('A2', 4.000001, '=A1*2'), '4, not 4.000001'],
    ['a number for an error', cell('A2', 4, '=NA()'), '#N/A, not 4'],
    ['an error for a number', cell('A2', '#N/A', '=A1*2'), '4, not #N/A'],
    ['another word', cell('A2', 'pass', '=IF(A1>2,"pass","fail")'), 'fail, not pass'],
    ['a number looked up as a text', cell('A2', 7, '=INDEX(C1:C2,MATCH(A1,B1:B2,0))'), '#N/A, not 7'],
  ])('does not go out with %s', (_, wrong, words) => {
    const steps = sheet('Steps', cell('A1', 2), cell('B1', '2'), cell('B2', '3'), cell('C1', 7), cell('C2', 8), wrong);
    expect(() => verified([steps], OWN)).toThrow(UntrueCopy);
    expect(() => verified([steps], OWN)).toThrow(words);
  });
});

describe('a step without a value', () => {
  const stepsWith =
    (formula: string): (() => unknown) =>
    () =>
      verified([sheet('Steps', cell('A1', -2), cell('A2', undefined, formula), cell('A3', 1, '=IF(A1<0,1,A2)'))], OWN);

  it.each(['=SQRT(A1)', '=1/(A1+2)'])('may be %s, where no number can be', formula => expect(stepsWith(formula)).not.toThrow());

  it.each(['=A1*2', '=NA()', '="x"+1', '=INDEX(C1:C2,MATCH(A1,B1:B2,0))'])('may not be %s', formula =>
    expect(stepsWith(formula)).toThrow(UntrueCopy),
  );
});

describe('a sheet of the user', () => {
  it('keeps a value whose formula reads what had to change, without the formula, and says so', () => {
    const copy = handed(workbookOf({ A1: '2 mm', B1: '=ENCL.BOSS.OD(A1,1)', C1: '=A1&"x"', D1: '=LEN(A1)' }));
    expect(cellAt(copy, 'S', 'A1').value).toBe(2);
    expect([
      cellAt(copy, 'S', 'C1').formula,
      cellAt(copy, 'S', 'C1').value,
      cellAt(copy, 'S', 'D1').formula,
      cellAt(copy, 'S', 'D1').value,
    ]).toEqual([undefined, '2 mmx', undefined, 4]);
    expect(told(copy.findings)).toContain(
      'value, not live S!D1: on this copy its formula would give 1: it reads something that had to change',
    );
  });

  it('keeps what cannot be worked out here, and lists it', () => {
    const copy = handed(workbookOf({ A1: ['=FROB(1)', 5], A2: ['=FROB(2)', 6], B1: '=ENCL.BOSS.OD(A1,1)' }));
    expect(cellAt(copy, 'S', 'A1')).toMatchObject({ formula: '=FROB(1)', value: 5 });
    expect(told(copy.findings)).toContain('not worked out here S!A1: 2 formulas, A1, A2: the value is the one that the workbook had');
    expect(cellAt(copy, 'S', 'B1').value).toBe(7);
  });
});
