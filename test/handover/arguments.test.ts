// Arguments that are expressions go to a step as such and follow their cells; expected values are worked out by hand.
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/handover/compile/convert';
import { PLAIN } from '../../src/handover/compile/allowed';
import { Evaluator } from '../../src/sheet/evaluator';
import { parseFormula } from '../../src/sheet/formula';
import { NATIVE } from '../../src/sheet/natives';
import { SOUND } from '../kit/sound-joint';
import { workedOut } from '../kit/worked-out';
import { address } from '../../src/sheet/addresses';
import { cellAt, handed, sheetOf, told, workbookOf, type Typed } from './kit';

const TABLE: Record<string, Typed> = {
  ...{ A1: 'ST2.9', B1: 2.4, C1: 1.2, A2: 'ST3.5', B2: 2.9, C2: 1.4, A3: 'ST4.2', B3: 3.4, C3: 1.6 },
  ...{ D1: 'ST3.5', D2: 2, E1: 4, G1: 2.9 },
};

/** The argument, its value as it stands, and with 3.1 in B2 and 1.7 in C2. */
const FOLLOWED: readonly (readonly [string, number, number])[] = [
  ['VLOOKUP(D1,A1:C3,2,FALSE)', 2.9, 3.1],
  ['INDEX(B1:B3,MATCH(D1,A1:A3,0))', 2.9, 3.1],
  ['XLOOKUP(D1,A1:A3,B1:B3)', 2.9, 3.1],
  ['_xlfn.XLOOKUP(D1,A1:A3,B1:B3,9)', 2.9, 3.1],
  ['XLOOKUP(B1,B1:C1,B2:C2)', 2.9, 3.1],
  ['AVERAGE(B1:B3)', 2.9, 8.9 / 3],
  ['MEDIAN(B1:B3)', 2.9, 3.1],
  ['SQRT(B2+1.1)', 2, Math.sqrt(4.2)],
  ['ROUNDUP(B2,0)+B2', 5.9, 7.1],
  ['CEILING(B2,0.25)', 3, 3.25],
  ['_xlfn.CEILING.MATH(B2,0.25)', 3, 3.25],
  ['FLOOR(B2,0.25)', 2.75, 3],
  ['MROUND(B2,0.15)', 2.85, 3.15],
  ['SUMPRODUCT(B1:B2,C1:C2)', 2.88 + 4.06, 2.88 + 5.27],
  ['SUMIF(A1:A3,D1,B1:B3)', 2.9, 3.1],
  ['SUMIFS(B1:B3,A1:A3,"st3.5")', 2.9, 3.1],
  ['COUNTIF(B1:B3,">3")+0.5', 1.5, 2.5],
  ['AVERAGEIF(B1:B3,">2.5")', 3.15, 3.25],
  ['_xlfn.MAXIFS(B1:B3,C1:C3,"<1.5")', 2.9, 2.4],
  ['CHOOSE(D2,B1,B2,B3)', 2.9, 3.1],
  ['_xlfn.IFS(D2=1,B1,D2=2,B2)', 2.9, 3.1],
  ['_xlfn.SWITCH(D2,1,B1,2,B2)', 2.9, 3.1],
  ['SUM(C:C)', 4.2, 4.5],
  ['IFERROR(VLOOKUP("x",A1:C3,2,FALSE),B2)', 2.9, 3.1],
];

const changed = (copy: ReturnType<typeof handed>, at: string, put: Readonly<Record<string, string | number>>): unknown =>
  workedOut(
    copy.plan.sheets.map(sheet =>
      sheet.name !== 'S'
        ? sheet
        : { ...sheet, cells: sheet.cells.map(cell => ({ ...cell, ...(cell.at in put ? { value: put[cell.at] } : {}) })) },
    ) as never,
    'S',
  ).values.get(`S!${at}`);

describe('an argument that is an expression', () => {
  it.each(FOLLOWED)('is live and follows its cells: %s', (argument, value, later) => {
    const copy = handed(workbookOf({ ...TABLE, F1: [`=ENCL.BOSS.OD(${argument},1)`, 77] }));
    expect(told(copy.findings)).toEqual(['live S!F1: BOSS.OD']);
    expect(cellAt(copy, 'S', 'F1').value).toBeCloseTo(value + 2, 9);
    expect(changed(copy, 'F1', { B2: 3.1, C2: 1.7 })).toBeCloseTo(later + 2, 9);
  });

  it('is one of at least twenty kinds here', () => expect(FOLLOWED.length).toBeGreaterThanOrEqual(20));

  it.each(['"ST"&G1', 'CONCATENATE("ST",G1)', 'IF(D2=2,"ST2.9","M3")', 'VLOOKUP(A1,A:C,1,0)', 'LEFT(A1,5)'])(
    'may be a text: %s',
    argument => {
      const copy = handed(workbookOf({ ...TABLE, F1: `=ENCL.BOSS.OD.RULE(${argument},"ABS")` }));
      const plain = handed(workbookOf({ ...TABLE, F1: '=ENCL.BOSS.OD.RULE(A1,"ABS")' }));
      expect(told(copy.findings)).toEqual(['live S!F1: BOSS.OD.RULE']);
      expect(cellAt(copy, 'S', 'F1').value).toBe(cellAt(plain, 'S', 'F1').value);
    },
  );

  it('of a text moves the row of the table', () => {
    const copy = handed(workbookOf({ ...TABLE, F1: '=ENCL.BOSS.OD.RULE(INDEX(A1:A3,D2),"ABS")', F2: '=ENCL.BOSS.OD.RULE(A3,"ABS")' }));
    expect(changed(copy, 'F1', { D2: 3 })).toBeCloseTo(cellAt(copy, 'S', 'F2').value as number, 9);
  });

  it.each(['OFFSET(B1,1,0)', 'INDIRECT("B2")'])('is told where nothing follows it, and keeps the value of the file: %s', argument => {
    const copy = handed(workbookOf({ ...TABLE, F1: [`=ENCL.BOSS.OD(${argument},1)`, 4.9] }));
    expect(told(copy.findings)).toEqual([`value, not live S!F1: BOSS.OD: ${argument.split('(')[0]} is not followed`]);
    expect(cellAt(copy, 'S', 'F1')).toMatchObject({ value: 4.9 });
    expect(cellAt(copy, 'S', 'F1').formula).toBeUndefined();
  });
});

it('every function of the allow-list is worked out', () => {
  const choices = new (class extends Evaluator {
    protected valueAt = (): undefined => undefined;
    protected spilledAt = (): undefined => undefined;
    protected lastOf = (): { row: number; column: number } => ({ row: 0, column: 0 });
  })(() => ({ ok: false, code: '#N/A' }));
  const lazy = ['IF(1=1,2)', 'IFERROR(1,2)', 'IFNA(1,2)', 'CHOOSE(1,2)', 'IFS(1=1,2)', 'SWITCH(1,1,2)'];
  for (const formula of lazy) expect([formula, choices.evaluate(parseFormula(`=${formula}`), 'S')]).not.toContain(undefined);
  const known = new Set([...Object.keys(NATIVE), ...lazy.map(formula => formula.split('(')[0] ?? '')]);
  expect([...PLAIN].filter(name => !known.has(name))).toEqual([]);
});

describe('a call inside IFERROR', () => {
  const copy = handed(
    workbookOf({ A1: ['=1/0', '#DIV/0!'], A2: -1, B1: '=IFERROR(ENCL.BOSS.OD(A1,1),0)', B2: '=IFERROR(ENCL.BOSS.OD(A2,1),7)' }),
  );

  it('gives after recalculation what it gave before', () => {
    const { values } = workedOut(copy.plan.sheets, 'S');
    expect([values.get('S!B1'), values.get('S!B2')]).toEqual([0, 7]);
  });

  it('says so when its input is no error any more', () => {
    expect(changed(copy, 'B2', { A2: 3 })).toBe('inputs changed');
  });
});

it('tables that wait for one another are the same in any order of cells', () => {
  const n = 30;
  const line = (r: number): readonly [string, Typed][] => [
    [`A${r}`, r === 1 ? '=ENCL.ENGAGEMENT.LIMITS(16,0.8,2.5,0.1)' : `=ENCL.ENGAGEMENT.LIMITS(B${r - 1}+3.5,0.8,2.5,0.1)`],
  ];
  const lines = Array.from({ length: n }, (_, i) => line(i + 1));
  const forward = handed(workbookOf(Object.fromEntries(lines.flat())));
  const back = handed(workbookOf(Object.fromEntries([...lines].reverse().flat())));
  // 16 - 2.5, and one more in each row
  expect(cellAt(forward, 'S', 'B1').value).toBe(13.5);
  for (const at of ['B2', 'B17', `B${n}`]) {
    expect(cellAt(forward, 'S', at).value).toBeCloseTo(13.5 + Number(at.slice(1)) - 1, 9);
    expect(cellAt(back, 'S', at).value).toBe(cellAt(forward, 'S', at).value);
  }
  expect([back.live, back.asValues]).toEqual([forward.live, 0]);
});

describe('much of it', () => {
  const column = (n: number, of: (i: number) => Typed, letter = 'A'): Record<string, Typed> =>
    Object.fromEntries(Array.from({ length: n }, (_, i) => [`${letter}${i + 1}`, of(i)]));

  it('a chain that leads down the sheet is followed to its end', () => {
    const n = 20_000;
    const copy = handed(workbookOf({ ...column(n, i => (i === n - 1 ? 1 : `=A${i + 2}+1`)), B1: '=ENCL.BOSS.OD(A1,1)' }));
    expect(cellAt(copy, 'S', 'B1').value).toBe(n + 2);
    expect(told(copy.findings)).toEqual(['live S!B1: BOSS.OD']);
  }, 120_000);

  it('long lists are values with their reason, and no formula is too long', () => {
    const calls = 300;
    const copy = handed(workbookOf({ ...column(3000, i => 0.1 + i / 1e5), ...column(calls, () => '=ENCL.STACK.RSS(A$1:A$3000)', 'B') }));
    expect(copy).toMatchObject({ live: 0, asValues: calls });
    expect(told(copy.findings)[0]).toBe('value, not live S!B1: STACK.RSS: a list of 3000 cells is not followed, of 200 at most');
  }, 120_000);

  it('texts that double are left to the programs', () => {
    const copy = handed(
      workbookOf({ A1: 'x', ...Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`A${i + 2}`, `=A${i + 1}&A${i + 1}`])) }),
    );
    expect(String(cellAt(copy, 'S', 'A15').value).length).toBe(2 ** 14);
    expect(cellAt(copy, 'S', 'A40').value).toBeUndefined();
  });
});

it('a row of a table that cannot be live is a value, alone and named', () => {
  const heads = Object.keys(SOUND);
  const rows = [SOUND, SOUND, SOUND];
  const cells = Object.fromEntries(
    [heads, ...rows.map(row => heads.map(head => (row as Record<string, Typed>)[head] ?? null))].flatMap((line, r) =>
      line.map((value, c) => [address(r, c), value] as const),
    ),
  );
  const call = `=ENCL.JOINT.TABLE(A1:${address(3, heads.length - 1)},{"state","grip","margin"})`;
  // no joint is known whose formulas are not true: the second one is said to be such
  const copy = convert({ name: 'M', sheets: [sheetOf('S', { ...cells, A30: call })] }, { untrue: new Set(['Variants_1!7']) });
  const live = (row: number): number =>
    copy.sheets[0]?.cells.filter(
      ({ at, formula }) =>
        ['A', 'B', 'C'].some(c => at === `${c}${row}`) && formula?.includes('"inputs changed"') === false && formula.includes('Variants_1'),
    ).length ?? 0;
  expect([live(31), live(33)]).toEqual([3, 3]);
  expect(told(copy.findings).filter(line => line.includes('row 32'))).toHaveLength(1);
  expect(told(copy.findings).filter(line => /row 3[13]/.test(line))).toEqual([]);
});
