// Calls in cells become plain formulas on the same cells, or values that say why not. Nothing throws, and the source stays as it is.
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import type { Handover } from '../../src/handover/handover';
import type { PlanCell } from '../../src/sheet/plan';
import { address } from '../../src/sheet/addresses';
import { value } from '../kit/ask';
import { SOUND } from '../kit/sound-joint';
import { workedOut } from '../kit/worked-out';
import { cellAt, followed, handed, sheetNamed, sheetOf, told, workbookOf } from './kit';

describe('a call in a cell', () => {
  const copy = handed(
    workbookOf({ A1: 2.4, A2: 1.2, B1: '=ENCL.BOSS.OD(A1,A2)', C1: '=encl.boss.od(A1, A2)', D1: '=_xldudf_ENCL_BOSS_OD(A1,A2)' }),
  );

  it('points at the result on the steps', () => {
    // 2.4 + 2 × 1.2
    expect(cellAt(copy, 'S', 'B1')).toMatchObject({ role: 'result', value: 4.8, formula: '=Steps!$B$10' });
  });

  it('has its inputs, whether they are in limits, and its formula in cells of their own', () => {
    const rows = Object.fromEntries(
      sheetNamed(copy, 'Steps')
        .cells.filter(({ at }) => /^[AB](4|5|6|7|8|9|10)$/.test(at))
        .map(({ at, value, formula }) => [at, formula ?? value]),
    );
    expect(rows).toEqual({
      A4: 'S B1: BOSS.OD',
      B4: 'value',
      A5: 'hole',
      B5: '=S!$A$1',
      A6: 'wall',
      B6: '=S!$A$2',
      A7: 'distance',
      B7: 0,
      A8: 'draft',
      B8: 0,
      A9: 'inputs in limits',
      B9: '=AND(ISNUMBER(S!$A$1),Steps!$B$5>0,ISNUMBER(S!$A$2),Steps!$B$6>0,ISNUMBER(Steps!$B$7),Steps!$B$7>=0,ISNUMBER(Steps!$B$8),Steps!$B$8>=0,Steps!$B$8<90)',
      A10: 'outside diameter',
      B10: '=IF(Steps!$B$9,Steps!$B$5+2*Steps!$B$6+2*Steps!$B$7*TAN(RADIANS(Steps!$B$8)),NA())',
    });
  });

  it('says in words what is done, with names that stay true', () => {
    expect(cellAt(copy, 'Steps', 'D10').value).toBe('hole + 2·wall + 2·distance·tan(draft)');
  });

  it('is read in small letters and in the form of a file', () => {
    expect(cellAt(copy, 'S', 'C1').value).toBe(4.8);
    expect(cellAt(copy, 'S', 'D1').value).toBe(4.8);
    expect(copy).toMatchObject({ live: 3, asValues: 0 });
  });
});

describe('a point that the screw of the length tolerance brings', () => {
  const call = (tolerance: string, point: string): string => `=INDEX(ENCL.ENGAGEMENT.LIMITS(16,${tolerance},4.1,0.26,0.8,0.1${point}),1,2)`;
  const TOLERANCES = { joined: 'A1&" cone"', cell: 'A2', typed: '"ST2.9 cone"' };
  const copy = handed(
    workbookOf({
      A1: 'ST2.9',
      A2: 'ST2.9 cone',
      A4: 0.8,
      B1: call(TOLERANCES.joined, ''),
      B2: call(TOLERANCES.joined, ',A3'),
      B3: call(TOLERANCES.cell, ''),
      B4: call(TOLERANCES.typed, ''),
      B5: call('A4', ''),
    }),
  );
  const valuesWith = (typed: Readonly<Record<string, Cell>>): unknown[] => {
    const sheets = copy.plan.sheets.map(sheet =>
      sheet.name === 'S' ? { ...sheet, cells: [...sheet.cells.filter(({ at }) => !(at in typed)), ...typedCells(typed)] } : sheet,
    );
    const { values } = workedOut(sheets, 'S');
    return ['B1', 'B2', 'B3', 'B4', 'B5'].map(at => values.get(`S!${at}`));
  };
  const typedCells = (typed: Readonly<Record<string, Cell>>): PlanCell[] =>
    Object.entries(typed).map(([at, value]) => ({ at, role: 'input', value }));

  it('is in the copy', () => {
    // 16 − 4.1 − 0.8 − 2.6; without a screw named no point
    expect(valuesWith({})).toEqual([8.5, 8.5, 8.5, 8.5, 11.1].map(about => expect.closeTo(about, 9) as number));
    expect(copy).toMatchObject({ asValues: 0 });
  });

  it('follows the size, with its point of 3.2, or gives nothing', () => {
    expect(valuesWith({ A1: 'ST3.5' }).slice(0, 2)).toEqual([7.9, 7.9].map(about => expect.closeTo(about, 9) as number));
    expect(valuesWith({ A2: 'ST3.5 cone' })[2]).toBe('#N/A');
  });

  it('and a point that is typed later is no longer that of the screw', () => {
    expect(valuesWith({ A3: 1 })[1]).toBe('#N/A');
  });
});

describe('a call inside another formula', () => {
  const copy = handed(
    workbookOf({
      A1: 2.4,
      A2: 1.2,
      A3: 5,
      A4: 16,
      A5: 0.8,
      A6: 2.5,
      A7: 0.1,
      B1: '=ROUND(ENCL.BOSS.OD(A1,A2)*2,2)',
      B2: '=IF(ENCL.CHECK.MAX(A1,A3)="pass","fits","no")',
      B3: '=INDEX(ENCL.ENGAGEMENT.LIMITS(A4,A5,A6,A7),1,2)',
      B4: '=MAX(ENCL.ENGAGEMENT.LIMITS(A4,A5,A6,A7))',
      B5: '=ENCL.BOSS.OD(A1,ENCL.WALL.FEATURE(A6))',
      B6: ['=SUMPRODUCT(ENCL.ENGAGEMENT.LIMITS(A4,A5,A6,A7)*2)', 82.6],
    }),
  );

  it('stays inside it', () => {
    expect(cellAt(copy, 'S', 'B1')).toMatchObject({ value: 9.6, formula: expect.stringMatching(/^=ROUND\(Steps!\$B\$\d+\*2,2\)$/) });
    expect(cellAt(copy, 'S', 'B2')).toMatchObject({
      value: 'fits',
      formula: expect.stringMatching(/^=IF\(Steps!\$B\$\d+="pass","fits","no"\)$/),
    });
  });

  it('is one of its values where INDEX asks for one', () => {
    // 16 − 2.5
    expect(cellAt(copy, 'S', 'B3')).toMatchObject({ value: 13.5, formula: expect.stringMatching(/^=Steps!\$B\$\d+$/) });
  });

  it('is all of its values where their order does not matter', () => {
    // 13.5 + 0.8 + 0.1
    expect(cellAt(copy, 'S', 'B4').formula).toMatch(/^=MAX\(Steps!\$B\$\d+:\$B\$\d+\)$/);
    expect(cellAt(copy, 'S', 'B4').value).toBeCloseTo(14.4, 12);
  });

  it('may be the argument of another one', () => {
    // 2.4 + 2 × 0.6 × 2.5
    expect(cellAt(copy, 'S', 'B5').value).toBeCloseTo(5.4, 12);
    expect(followed(copy, 'S', 'B5')).toContain('0.6*(S!$A$6)'.replace('0.6*', ''));
  });

  it('is a value where it cannot be taken apart', () => {
    // 2·(12.6 + 13.5 + 14.4 + √(0.8² + 0.1²)): as it is, not as the program kept it
    expect(cellAt(copy, 'S', 'B6').value).toBeCloseTo(81 + 2 * Math.hypot(0.8, 0.1), 9);
    expect(cellAt(copy, 'S', 'B6')).toMatchObject({ note: 'value, not live: was =SUMPRODUCT(ENGAGEMENT.LIMITS(A4,A5,A6,A7)*2)' });
    expect(told(copy.findings)).toContain('value, not live S!B6: ENGAGEMENT.LIMITS inside another formula');
  });
});

describe('texts', () => {
  const copy = handed(
    workbookOf({
      A1: '0.167 in',
      A2: '1.2 mm',
      B1: '=ENCL.BOSS.OD(A1,A2)',
      C1: 'ST2.9',
      C2: 'ISO 7049',
      C3: 'ABS',
      D1: '=ENCL.RECESS.DIAMETER(C1&" "&C2,0.6)',
      D2: '=ENCL.BOSS.OD.RULE(C1,C3)',
      D3: '=ENCL.DRAFT.SIZE(A2,14,0.5,C4)',
      C4: 'shrinks',
    }),
  );

  it('with units become numbers, and say what was typed', () => {
    // 0.167 × 25.4
    expect(cellAt(copy, 'S', 'A1')).toMatchObject({ value: 4.2418, note: 'typed as "0.167 in"; now a number in mm' });
    expect(cellAt(copy, 'S', 'B1').value).toBeCloseTo(4.2418 + 2.4, 12);
    expect(told(copy.findings)).toContain('changed S!A1: "0.167 in" became 4.2418 mm');
  });

  it('that name a row of a table are followed, the table itself is not', () => {
    // 5.6 + 0.6
    expect(cellAt(copy, 'S', 'D1').value).toBeCloseTo(6.2, 12);
    const formula = followed(copy, 'S', 'D1');
    expect(formula).toMatch(/MATCH\(S!\$C\$1,Data!\$A\$\d+:\$A\$\d+,0\)/);
    expect(formula).toContain('S!$C$2="ISO 7049"');
  });

  it('that stand for a value of a material hold while they are as sent', () => {
    expect(followed(copy, 'S', 'D2')).toContain('S!$C$3="ABS"');
  });
});

describe('one value of the joint', () => {
  const NAMES = {
    A1: 'screw',
    A2: 'head',
    A3: 'wall',
    A4: 'board plane',
    A5: 'boss height',
    A6: 'hole',
    A7: 'material',
    B1: 'ST2.9',
    B2: 'pan',
    B3: 2.5,
    B4: 5.5,
    B5: 14,
    B6: 3.4,
    B7: 'ABS',
  };
  const copy = handed(
    workbookOf({
      ...NAMES,
      D1: 'sink ratio',
      E1: '=ENCL.JOINT.VALUE(A1:A7,B1:B7,D1)',
      E2: '=ROUND(ENCL.JOINT.VALUE(A1:A7,B1:B7,"slenderness"),1)',
      // its smallest hole, 2.8, is below the largest screw, 2.9
      C1: 'ST2.9',
      C2: 'pan',
      C3: 2.5,
      C4: 5.5,
      C5: 14,
      C6: 2.9,
      C7: 'ABS',
      E3: '=ENCL.JOINT.VALUE(A1:A7,C1:C7,"reason")',
    }),
  );

  it('has a sheet of steps, and holds while the same output is asked for', () => {
    expect(cellAt(copy, 'S', 'E1').formula).toMatch(
      /^=IF\(AND\(S!\$D\$1="sink ratio"\),IF\(AND\(Variants_1!\$[A-Z]+\$6,ISNUMBER\(Variants_1!\$[A-Z]+\$6\)\),Variants_1!\$[A-Z]+\$6,NA\(\)\),NA\(\)\)$/,
    );
    expect(cellAt(copy, 'S', 'E1').value).toBeCloseTo(0.877, 3);
    // 14 ÷ (2.2 × 2.9)
    expect(cellAt(copy, 'S', 'E2').value).toBe(2.2);
  });

  it('gives what is wrong in place of the sentence', () => {
    expect(cellAt(copy, 'S', 'E3').value).toBe('screw does not pass its hole');
  });
});

describe('a table of the joint', () => {
  const row = (r: number, cells: readonly Cell[]): Record<string, Cell> =>
    Object.fromEntries(cells.map((value, c) => [`${String.fromCharCode(65 + c)}${r}`, value]));
  const table = (heads: readonly Cell[], values: readonly Cell[], base: string): Handover =>
    handed(
      workbookOf({
        ...row(1, heads),
        ...row(2, values),
        L1: 'base',
        M1: 'wall',
        N1: 2.5,
        M2: 'seat',
        N2: 2,
        L5: `=ENCL.JOINT.TABLE(A1:H2,K1:K5${base})`,
        K1: 'note',
        K2: 'slenderness',
        K3: 'state',
        K4: 'fails',
        K5: 'margin',
      }),
    );
  const HEADS = ['note', 'screw', 'head', 'wall', 'board plane', 'boss height', 'hole', 'material'];
  const VALUES = ['first try', 'ST2.9', 'pan', 2.5, 5.5, 14, 3.4, 'ABS'];

  it('shows labels from their cells, and counts and margins live', () => {
    const copy = table(HEADS, VALUES, '');
    expect(cellAt(copy, 'S', 'L6')).toMatchObject({ value: 'first try', formula: '=S!$A$2' });
    // 14 ÷ (2.2 × 2.9)
    expect(cellAt(copy, 'S', 'M6').value).toBeCloseTo(14 / (2.2 * 2.9), 9);
    for (const at of ['M6', 'N6', 'O6', 'P6'])
      expect([at, cellAt(copy, 'S', at).formula]).toEqual([at, expect.stringContaining('Variants')]);
  });

  it('gives outputs and labels in the order in which they are asked for, judged by what is asked', () => {
    const heads = ['note', ...Object.keys(SOUND), '(who)'];
    const noMaterial = { ...SOUND, material: null, 'thread share': 0.6, 'od ratio': 2 };
    const rows = [SOUND, { ...SOUND, length: 19 }, noMaterial].map((joint, i) => [
      `try ${i + 1}`,
      ...Object.keys(SOUND).map(name => (joint as Record<string, Cell | null>)[name] ?? null),
      i === 1 ? null : 'us',
    ]);
    let compared = 0;
    const states = new Set<unknown>();
    for (const asked of [
      ['state'],
      ['state', 'pull-out'],
      ['(who)', 'grip', 'note'],
      ['margin', 'note', 'state', 'reasons', 'boss mass'],
      ['note'],
    ]) {
      const cells = Object.fromEntries([heads, ...rows].flatMap((line, r) => line.map((cell, c) => [address(r, c), cell] as const)));
      const call = `=ENCL.JOINT.TABLE(A1:${address(rows.length, heads.length - 1)},{${asked.map(name => `"${name}"`).join()}})`;
      const { values } = workedOut(handed(workbookOf({ ...cells, A10: call })).plan.sheets, 'S');
      (value('JOINT.TABLE', [heads, ...rows], [asked]) as Cell[][]).forEach((line, r) =>
        line.forEach((cell, c) => {
          compared++;
          const what = `${asked.join()} ${r} ${c}`;
          if (line[c] === 'not checked' || line[c] === 'pass') states.add(`${asked.join()} ${cell}`);
          expect(values.get(`S!${address(9 + r, c)}`), what).toEqual(typeof cell === 'number' ? expect.closeTo(cell, 9) : cell);
        }),
      );
    }
    expect(compared).toBe(4 * (1 + 2 + 3 + 5 + 1));
    // the joint without a material passes until a strength is asked for
    expect(states).toContain('state,pull-out not checked');
    expect(states).not.toContain('state not checked');
  });

  it.each([
    ['a base', HEADS, VALUES, ',M1:N2'],
    [
      'units in its headings',
      HEADS.map(name => (name === 'wall' ? 'wall (in)' : name)),
      VALUES.map(value => (value === 2.5 ? 0.1 : value)),
      '',
    ],
  ])('with %s is a value, and says so', (_, heads, values, base) => {
    const copy = table(heads, values, base);
    expect(cellAt(copy, 'S', 'M6').value).toBeCloseTo(14 / (2.2 * 2.9), 9);
    expect(cellAt(copy, 'S', 'L5').note).toMatch(/^value, not live: was =/);
    expect(told(copy.findings)).toContain(
      'value, not live S!L5: JOINT.TABLE: inputs that are no plain range, a base and units in headings are not followed',
    );
  });
});

describe('values without a plain formula', () => {
  const copy = handed(
    workbookOf({ A1: 'ABS', B1: '=ENCL.MATERIAL(A1,"strength")', D1: '=ENCL.VERSION()', E1: '=ENCL.BOSS.GUSSET(12,2.5)', J1: '=SUM(E1#)' }),
  );

  it('show only while their inputs are as they were sent', () => {
    expect(cellAt(copy, 'S', 'B1')).toMatchObject({
      value: 45,
      formula: expect.stringMatching(/^=IF\(Steps!\$B\$\d+,45,"inputs changed"\)$/),
      note: 'value, not live: was =MATERIAL(A1,"strength")',
    });
    expect(followed(copy, 'S', 'B1')).toBe('=IF((AND(S!$A$1="ABS")),45,"inputs changed")');
  });

  it('are bare where they have no inputs', () => {
    expect(cellAt(copy, 'S', 'D1').formula).toBeUndefined();
  });

  it('do not hide that a table of closed form is live', () => {
    expect(cellAt(copy, 'S', 'E1')).toMatchObject({ role: 'header', value: 'thickness (mm)' });
    // 0.5 × 2.5; 0.8 × 12; 0.5 × 12
    expect(['E2', 'F2', 'G2', 'H2'].map(at => cellAt(copy, 'S', at).value)).toEqual([1.25, expect.closeTo(9.6, 12), 6, 4]);
    expect(cellAt(copy, 'S', 'E2').formula).toMatch(/^=Steps!/);
    expect(cellAt(copy, 'S', 'J1').formula).toBe('=SUM(E1:H2)');
  });

  it('are counted apart', () => {
    // the strength and the version; the table has four values
    expect(copy).toMatchObject({ live: 4, asValues: 2 });
  });
});

describe('a call that stands before the table that it reads', () => {
  const table = { A6: 'layer', A7: 2.5, A8: 1.6, C6: '=ENCL.STACK.TABLE(A9:A10,A7:A8,B7:B8)', B7: 0.1, B8: 0.16, A9: 'seat', A10: 'board' };

  it.each([
    ['a row above', 'S', 'A1', 'D9'],
    ['a sheet before', 'Summary', 'B2', 'S!D9'],
  ])('sees its values: %s', (_, sheet, at, cell) => {
    const call = `=ENCL.PENETRATION(16,${cell})`;
    const sheets = sheet === 'S' ? [sheetOf('S', { ...table, [at]: call })] : [sheetOf(sheet, { [at]: call }), sheetOf('S', table)];
    const copy = handed({ name: 'Mine', sheets });
    const behind = handed({ name: 'Mine', sheets: [sheetOf('S', { ...table, A40: call.replace('S!', '') })] });
    expect(typeof cellAt(behind, 'S', 'A40').value).toBe('number');
    expect(cellAt(copy, sheet, at).value).toBe(cellAt(behind, 'S', 'A40').value);
    expect(told(copy.findings)).toContain(`live ${sheet}!${at}: PENETRATION`);
  });
});

describe('what cannot go along', () => {
  const copy = handed(
    workbookOf({
      A1: ['=[Book2.xlsx]S!A1', 5],
      A2: ["='C:\\x\\[B.xlsx]S'!A1", 6],
      A3: ['=Table1[a]', 7],
      A4: ['=Nowhere!A1', 8],
      A5: ['=WEBSERVICE("http://x.invalid")', 'x'],
      A6: ['=unknown*2', 9],
      A7: ['=SUM(', 1],
      B1: ['=XLOOKUP(3,C1:C2,C1:C2)', 3],
      B2: ['=FROB(1)', 2],
      B3: ['="see ENCL.BOSS.OD"', 'see ENCL.BOSS.OD'],
      C1: ['=C2+1', 3],
      C2: ['=C1+1', 4],
      C3: '=ENCL.BOSS.OD(C1,1)',
      D1: ['=1/0', '#DIV/0!'],
      D2: '=ENCL.BOSS.OD(D1,1)',
      D3: '=ENCL.BOSS.OD(-1,1)',
      D4: '=ENCL.NOPE(1)',
      D5: '=ENCL.BOSS.OD(D9,1)',
      D6: '=ENCL.GRIP(A:A)',
      E1: '=ENCL.BOSS.GUSSET(12,2.5)',
      F2: 'in the way',
    }),
  );

  it.each([
    ['A1', 5, 'it points at another workbook: [Book2.xlsx]S!A1'],
    ['A2', 6, 'the formula cannot be read'],
    ['A5', 'x', 'WEBSERVICE fetches or runs something'],
    ['E1', '#SPILL!', 'its table has no room: F2 is filled'],
  ])('is a value and said: %s', (at, value, why) => {
    expect(cellAt(copy, 'S', at).formula).toBeUndefined();
    expect(cellAt(copy, 'S', at).value).toBe(value);
    expect(told(copy.findings)).toContain(`value, not live S!${at}: ${why}`);
  });

  it.each([
    ['A3', 7, 'it points at a table that is not here: Table1[a]'],
    ['A4', 8, 'it points at a sheet that is not here: Nowhere'],
    ['A6', 9, 'it uses the name unknown, which stands for nothing here'],
    ['A7', 1, 'the formula cannot be read'],
    ['C1', 3, 'it leads back to itself'],
  ])('is the own formula of the user, stays, and is said: %s', (at, value, why) => {
    expect(copy.keptFormulas).toContain(`S!${at}`);
    expect(cellAt(copy, 'S', at).value).toBe(value);
    expect(told(copy.findings)).toContain(`not worked out here S!${at}: ${why}: the formula stays as it is`);
  });

  it('a text may speak of us', () => {
    expect(cellAt(copy, 'S', 'B3')).toMatchObject({ formula: '="see ENCL.BOSS.OD"', value: 'see ENCL.BOSS.OD' });
  });

  it('a call of another add-in and an array formula stay as they are; one in the stored form that fetches is a value', () => {
    const foreign = handed({
      name: 'Foreign',
      sheets: [
        {
          name: 'S',
          cells: new Map([
            ['A1', { value: 3, formula: '=_xll.OTHER.FN(B1)' }],
            ['A2', { value: 4, formula: '=_xldudf_ACME_PRICE(B1)' }],
            ['A3', { value: 5, formula: '=_xlfn.WEBSERVICE("http://x.invalid")' }],
            ['A4', { value: 13.3, formula: '=SUM(B1:B2*B1:B2)', array: { range: 'A4' } }],
            ['A5', { value: '_xldudf_ is text', formula: '="_xldudf_ is text"' }],
            ['A6', { value: null, formula: '=ENCL.BOSS.OD(A4,1)' }],
          ]),
        },
      ],
    });
    expect(told(foreign.findings)).toEqual(
      expect.arrayContaining([
        'another add-in S!A1: OTHER.FN: stays as it is; without that add-in the cell shows #NAME? once it is worked out anew',
        'another add-in S!A2: ACME_PRICE: stays as it is; without that add-in the cell shows #NAME? once it is worked out anew',
        'value, not live S!A3: WEBSERVICE fetches or runs something',
      ]),
    );
    for (const [at, value, formula] of [
      ['A1', 3, '=_xll.OTHER.FN(B1)'],
      ['A2', 4, '=_xldudf_ACME_PRICE(B1)'],
      ['A3', 5, undefined],
      ['A4', 13.3, '=SUM(B1:B2*B1:B2)'],
    ] as const) {
      expect(cellAt(foreign, 'S', at).formula).toBe(formula);
      expect(cellAt(foreign, 'S', at).value).toBe(value);
    }
    expect(cellAt(foreign, 'S', 'A4').array).toEqual({ range: 'A4' });
    expect(cellAt(foreign, 'S', 'A5').formula).toBe('="_xldudf_ is text"');
    expect(cellAt(foreign, 'S', 'A6').value).toBeCloseTo(15.3, 12);
  });

  it.each([
    ['D2', '#DIV/0!', 'BOSS.OD gave #DIV/0!: hole is #DIV/0!'],
    ['D3', '#VALUE!', 'BOSS.OD gave #VALUE!: hole is -1: must be above 0 mm'],
    ['D4', '#VALUE!', 'NOPE gave #VALUE!: there is no function NOPE'],
  ])('is an error with its reason: %s', (at, value, why) => {
    expect(cellAt(copy, 'S', at)).toMatchObject({ value });
    expect(told(copy.findings)).toContain(`error S!${at}: ${why}`);
  });

  it('is told of a blank argument and of a range that cannot be followed', () => {
    expect(told(copy.findings).filter(line => /D5|D6/.test(line))).toEqual([
      expect.stringMatching(/^error S!D5: BOSS\.OD gave #VALUE!: hole is blank;/),
      expect.stringMatching(/^error S!D6: GRIP gave #VALUE!: layers row 5 is "x": not a length;/),
    ]);
  });

  it('leaves native functions as they are and names those that not every program has', () => {
    expect(cellAt(copy, 'S', 'B1')).toMatchObject({ formula: '=XLOOKUP(3,C1:C2,C1:C2)', value: 3 });
    expect(told(copy.findings)).toEqual(
      expect.arrayContaining(['not in every program S!B1: XLOOKUP stays as typed', 'not in every program S!B2: FROB stays as typed']),
    );
  });
});

describe('names', () => {
  it('of cells are put in', () => {
    const copy = handed(workbookOf({ A1: 2.4, B1: '=ENCL.BOSS.OD(pilot,1.2)', B2: '=Pilot*2' }, { names: new Map([['pilot', 'S!$A$1']]) }));
    expect(cellAt(copy, 'S', 'B1').value).toBe(4.8);
    expect(cellAt(copy, 'S', 'B2')).toMatchObject({ formula: '=S!$A$1*2', value: 4.8 });
  });

  it('that hold on one sheet alone come before those of the workbook', () => {
    const names = new Map([
      ['pilot', 'S!$A$1'],
      ['t!pilot', "'T'!$A$1"],
    ]);
    const copy = handed({
      name: 'Mine',
      names,
      sheets: [
        sheetOf('S', { A1: 2.4, B1: '=ENCL.BOSS.OD(pilot,1.2)' }),
        sheetOf('T', { A1: 3, B1: '=ENCL.BOSS.OD(PILOT,1.2)', B2: '=ENCL.BOSS.OD(S!A1,1.2)' }),
      ],
    });
    expect(['S', 'T'].map(sheet => cellAt(copy, sheet, 'B1').value)).toEqual([4.8, 5.4]);
    expect([copy.live, copy.asValues]).toEqual([3, 0]);
  });

  it.each([
    ['OFFSET(S!$A$1,0,0)', 'stands for no fixed cells here'],
    ['S!$A$1,S!$A$2', 'stands for no fixed cells here'],
    ['A1', 'stands for no fixed cells here'],
    ['S!#REF!', 'stands for no fixed cells here'],
    ['pilot+1', 'leads back to itself'],
    [undefined, 'stands for nothing here'],
  ])('of %s leave the value and say why', (meaning, why) => {
    const copy = handed(
      workbookOf({ A1: 2.4, B1: ['=ENCL.BOSS.OD(pilot,1.2)', 4.8] }, meaning === undefined ? {} : { names: new Map([['pilot', meaning]]) }),
    );
    expect(cellAt(copy, 'S', 'B1')).toMatchObject({ value: 4.8 });
    expect(cellAt(copy, 'S', 'B1').formula ?? '').not.toContain('Steps!');
    expect(told(copy.findings)).toContain(`value, not live S!B1: it uses the name pilot, which ${why}`);
  });

  it('of sheets stay, and ours step aside', () => {
    const copy = handed({
      name: 'Mine',
      sheets: [
        sheetOf("O'Brien's (2) Ü", { A1: 2.4, B1: "=ENCL.BOSS.OD('O''Brien''s (2) Ü'!A1,1.2)" }),
        sheetOf('steps', { A1: "='O''Brien''s (2) Ü'!A1*2" }),
        sheetOf('部品', { A1: 1 }),
        sheetOf('Hand-over', { A1: 1 }),
        sheetOf('Kept', { A1: 1 }),
      ],
    });
    expect(copy.plan.sheets.map(({ name }) => name)).toEqual([
      'Hand-over_2',
      'Characteristics',
      'Cautions',
      "O'Brien's (2) Ü",
      'steps',
      '部品',
      'Hand-over',
      'Kept',
      'Calculated',
      'Steps_2',
      'Data',
      'Sources',
      'Conversion',
    ]);
    expect(cellAt(copy, 'steps', 'A1')).toMatchObject({ formula: "='O''Brien''s (2) Ü'!A1*2", value: 4.8 });
    expect(cellAt(copy, "O'Brien's (2) Ü", 'B1').formula).toMatch(/^=Steps_2!\$B\$\d+$/);
    expect(told(copy.findings)).toEqual(["live O'Brien's (2) Ü!B1: BOSS.OD"]);
  });
});

describe('hostile content', () => {
  const LONG = `=1${'+1'.repeat(4500)}`;
  const copy = handed(
    workbookOf({
      A1: '+1',
      A2: '-1',
      A3: '@SUM(A1)',
      A4: 'a "quoted" one',
      A5: "'led",
      A6: 'bell\u0007 and nul\u0000',
      A7: '_x000D_',
      A8: '\u202ereversed',
      A9: '🔩',
      A10: 'half \ud800',
      A11: 'x'.repeat(40_000),
      A12: 'a\r\nb',
      B1: [LONG, 4501],
      B2: [`=${'('.repeat(3000)}1${')'.repeat(3000)}`, 1],
      B3: [`=1${'+1'.repeat(600)}`, 601],
      B4: [`=ENCL.BOSS.OD(2.4,${'1+'.repeat(2000)}1)`, 5],
      C1: '=ENCL.BOSS.OD("2.4""); DROP",1)',
    }),
  );

  it.each<[string, string]>([
    ['A1', '+1'],
    ['A2', '-1'],
    ['A3', '@SUM(A1)'],
    ['A4', 'a "quoted" one'],
    ['A5', "'led"],
    ['A6', 'bell and nul'],
    ['A7', '_x000D_'],
    ['A8', 'reversed'],
    ['A9', '🔩'],
    ['A10', 'half '],
    ['A11', `${'x'.repeat(32_000)} [cut]`],
    ['A12', 'a\nb'],
  ])('stays text: %s', (at, text) => {
    expect(cellAt(copy, 'S', at)).toEqual({ at, role: 'text', value: text });
  });

  it('is told where something was taken out', () => {
    expect(told(copy.findings).filter(line => line.startsWith('changed'))).toEqual([
      'changed S!A6: characters that deceive or control were taken out of the text',
      'changed S!A8: characters that deceive or control were taken out of the text',
      'changed S!A10: characters that deceive or control were taken out of the text',
      'changed S!A11: the text has 40000 characters and was cut',
    ]);
  });

  it('is a value where the formula is too long or too deep', () => {
    expect(told(copy.findings).filter(line => / S!B/.test(line))).toEqual([
      'not worked out here S!B1: the formula has 9002 characters; 8192 is the most: the formula stays as it is',
      'not worked out here S!B3: the formula is nested more than 500 times: the formula stays as it is',
      'value, not live S!B4: the formula is nested more than 500 times',
    ]);
    expect(cellAt(copy, 'S', 'B1').value).toBe(4501);
  });

  it('never becomes part of a formula', () => {
    expect(cellAt(copy, 'S', 'C1')).toMatchObject({ value: '#VALUE!' });
  });
});

it('follows long chains of cells in the order in which they stand', () => {
  const cells = Object.fromEntries(Array.from({ length: 3000 }, (_, i) => [`A${i + 1}`, i === 0 ? 1 : `=A${i}+1`] as const));
  const copy = handed(workbookOf({ ...cells, B1: '=ENCL.BOSS.OD(A3000,1)' }));
  expect(cellAt(copy, 'S', 'A3000').value).toBe(3000);
});

it('leaves the workbook as it was', () => {
  const workbook = workbookOf({ A1: '2.4 mm', A2: '\u202etext', B1: '=ENCL.BOSS.OD(A1,1.2)' });
  const before = JSON.stringify([...(workbook.sheets[0]?.cells ?? [])]);
  handed(workbook);
  expect(JSON.stringify([...(workbook.sheets[0]?.cells ?? [])])).toBe(before);
});
