// The harness works a file out anew, and the functions that a hand-over may use give in both programs what JavaScript gives.
import { PLAIN } from '../../src/handover/compile/allowed';
import { mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import erfc from '@stdlib/math-base-special-erfc';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import type { PlanCell, WorkbookPlan } from '../../src/sheet/plan';
import { pageColours, recalculate, type Recalculated } from './harness';

/** A cached value that no formula here has: where it is read back, nothing was worked out. */
const WRONG = -999;
const RELATIVE = 1e-12;

const SHEET = 'Each function';
const DATA: readonly (number | string)[] = [3, 4.5, -2, 7.25, 'fine', 'medium', 'coarse', 0.167];
const [D1, D2, D3, D4] = DATA as [number, number, number, number];
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const normal = (z: number): number => 0.5 * erfc(-z / Math.SQRT2);

/** Formula over D1:D8 and what JavaScript, or the rule beside it, gives. Written out where JavaScript has no such function. */
const FORMULAS: readonly (readonly [formula: string, expected: number | string | boolean])[] = [
  ['D1+D2*D4-D2/D1', D1 + D2 * D4 - D2 / D1],
  ['D4^D1', D4 ** D1],
  ['-(D1^2)', -(D1 ** 2)],
  ['D5&" fit"', 'fine fit'],
  ['TRUE()', true],
  ['FALSE()', false],
  ['D1=D2', false],
  ['D1<>D2', true],
  ['D1<D2', true],
  ['D1>D2', false],
  ['D1<=D2', true],
  ['D1>=D2', false],
  ['ABS(D3)', 2],
  ['ACOS(D2/10)', Math.acos(D2 / 10)],
  ['ASIN(D2/10)', Math.asin(D2 / 10)],
  ['ATAN(D4)', Math.atan(D4)],
  // The spreadsheet takes x before y.
  ['ATAN2(D3,D1)', Math.atan2(D1, D3)],
  ['COS(D1)', Math.cos(D1)],
  ['SIN(D1)', Math.sin(D1)],
  ['TAN(RADIANS(D8))', Math.tan(radians(0.167))],
  ['SQRT(D2)', Math.sqrt(D2)],
  ['EXP(D3)', Math.exp(D3)],
  ['LN(D2)', Math.log(D2)],
  ['LOG10(D2)', Math.log10(D2)],
  ['PI()', Math.PI],
  ['RADIANS(D2)', radians(D2)],
  ['DEGREES(D2)', (D2 * 180) / Math.PI],
  ['MIN(D1:D4)', -2],
  ['MAX(D1:D4)', 7.25],
  ['SUM(D1:D4)', 12.75],
  ['SUMSQ(D1:D4)', 9 + 20.25 + 4 + 52.5625],
  ['SUMPRODUCT(D1:D2,D3:D4)', 3 * -2 + 4.5 * 7.25],
  ['SUMPRODUCT(0+(D1:D4<D2))', 2],
  // Half away from zero, on the decimal digits.
  ['ROUND(1.005,2)', 1.01],
  ['ROUND(-2.5,0)', -3],
  ['ROUNDUP(D4,1)', 7.3],
  ['ROUNDDOWN(D4,1)', 7.2],
  ['CEILING(D4,0.5)', 7.5],
  ['INT(D3-0.5)', -3],
  ['MOD(D4,D1)', 1.25],
  ['IF(D1>D2,"yes","no")', 'no'],
  ['AND(D1<D2,D3<0)', true],
  ['OR(D1>D2,D3>0)', false],
  ['NOT(D1>D2)', true],
  ['IFERROR(1/0,D1)', 3],
  ['ISNUMBER(D5)', false],
  ['NA()', '#N/A'],
  ['INDEX(D1:D4,MATCH("MEDIUM",D5:D7,0))', 4.5],
  ['LOOKUP(3.5,D1:D2)', 3],
  ['VLOOKUP("coarse",D5:D7,1,FALSE)', 'coarse'],
  ['TRIM("  a  b ")', 'a b'],
  ['LEFT(D5,2)', 'fi'],
  ['MID(D6,2,3)', 'edi'],
  ['FIND("d",D6)', 3],
  ['LEN(D6)', 6],
  ['SUBSTITUTE(D6,"m","w")', 'wediuw'],
  ['CONVERT(D1,"in","mm")', 76.2],
  ['NORMSDIST(-1.5)', normal(-1.5)],
  ['1E6*NORMSDIST(-6)', 1e6 * normal(-6)],
  // To all digits of the tables of the normal distribution: 1.959963984540054.
  ['NORMSINV(0.975)', 1.959963984540054],
  ['AVERAGE(D1:D2)', 3.75],
  ['MEDIAN(D1:D2,D4)', 4.5],
  ['COUNT(D1:D7)', 4],
  ['COUNTA(D1:D7)', 7],
  ['LARGE(D1:D4,2)', 4.5],
  ['SMALL(D1:D4,2)', 3],
  ['FLOOR(D4,0.5)', 7],
  ['MROUND(D4,0.4)', 7.2],
  ['TRUNC(D4)', 7],
  ['SIGN(D3)', -1],
  ['POWER(D1,2)', 9],
  ['HLOOKUP(D1,D1:D2,2,FALSE)', 4.5],
  ['CHOOSE(2,D1,D2)', 4.5],
  ['ISERROR(1/0)', true],
  ['ISTEXT(D5)', true],
  ['EXACT(D5,"Fine")', false],
  ['SUMIF(D5:D7,"MEDIUM",D1:D3)', 4.5],
  ['SUMIFS(D1:D2,D1:D2,">4")', 4.5],
  ['COUNTIF(D5:D7,"*e")', 2],
  ['COUNTIFS(D1:D2,">2",D1:D2,"<4")', 1],
  ['AVERAGEIF(D1:D4,">4")', 5.875],
  ['AVERAGEIFS(D1:D2,D1:D2,"<4")', 3],
  ['_xlfn.MAXIFS(D1:D2,D1:D2,"<4")', 3],
  ['_xlfn.MINIFS(D1:D2,D1:D2,">4")', 4.5],
  ['RIGHT(D6,3)', 'ium'],
  ['UPPER(D5)', 'FINE'],
  ['LOWER("FINE")', 'fine'],
  ['CONCATENATE(D5,"-",D6)', 'fine-medium'],
  ['_xlfn.CONCAT(D5:D7)', 'finemediumcoarse'],
  ['_xlfn.TEXTJOIN("-",TRUE,D5:D7)', 'fine-medium-coarse'],
  ['_xlfn.IFNA(NA(),D1)', 3],
  ['_xlfn.IFS(D1>D2,1,D1<D2,2)', 2],
  ['_xlfn.SWITCH(D1,1,"a",3,"b")', 'b'],
  ['SUM($D:$D)', 12.917],
  // A comparison forgives the last bits.
  ['0.1+0.2=0.3', true],
];

const plan: WorkbookPlan = {
  name: 'Functions',
  sheets: [
    {
      name: SHEET,
      widths: [50, 20, 10, 12],
      cells: [
        ...FORMULAS.map(([formula], i): PlanCell => ({ at: `B${i + 1}`, role: 'result', formula: `=${formula}`, value: WRONG })),
        ...DATA.map((value, i): PlanCell => ({ at: `D${i + 1}`, role: 'input', value })),
        { at: 'C1', role: 'result', formula: '=0.5&""', value: WRONG },
      ],
    },
  ],
};

function expectEqual(actual: unknown, expected: number | string | boolean): void {
  if (typeof expected !== 'number') return void expect(actual).toBe(expected);
  expect(actual).toBeTypeOf('number');
  expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(RELATIVE * Math.abs(expected));
}

describe.each(['en-US', 'de-DE'])('in the language %s', language => {
  let values: Recalculated;
  beforeAll(async () => {
    values = await recalculate(await writeWorkbook(plan), language);
  });

  it.each(FORMULAS)('%s', (formula, expected) => {
    const at = `${SHEET}!B${FORMULAS.findIndex(([one]) => one === formula) + 1}`;
    expectEqual(values.libreoffice.get(at), expected);
    expectEqual(values.gnumeric.get(at), expected);
  });

  it('speaks the language', () => {
    expect(values.libreoffice.get(`${SHEET}!C1`)).toBe(language === 'de-DE' ? '0,5' : '0.5');
  });
});

it('tries every function that a hand-over may use', () => {
  const tried = FORMULAS.flatMap(([formula]) => [...formula.matchAll(/([A-Z][A-Z0-9]*)\(/g)].map(([, name]) => name));
  expect(new Set(tried)).toEqual(PLAIN);
});

it('fails where a program is missing', async () => {
  const bytes = await writeWorkbook(plan);
  const bare = await mkdtemp(join(tmpdir(), 'bare-'));
  await symlink('/usr/bin/timeout', join(bare, 'timeout'));
  vi.stubEnv('PATH', bare);
  const fault = await recalculate(bytes).catch((error: unknown) => String(error));
  vi.unstubAllEnvs();
  await rm(bare, { recursive: true });
  expect(fault).toMatch(/(soffice|ssconvert) failed: it is not installed/);
});

it('reads errors as their codes', async () => {
  const formulas = ['1/0', 'NOSUCH(1)', 'D1+"x"'];
  const values = await recalculate(
    await writeWorkbook({
      name: 'Errors',
      sheets: [
        {
          name: 'E',
          widths: [],
          cells: formulas.map((formula, i) => ({ at: `A${i + 1}`, role: 'result', formula: `=${formula}`, value: WRONG })),
        },
      ],
    }),
  );
  for (const program of [values.libreoffice, values.gnumeric])
    expect(['E!A1', 'E!A2', 'E!A3'].map(at => program.get(at))).toEqual(['#DIV/0!', '#NAME?', '#VALUE!']);
});

describe('colours of states', () => {
  const fills = { pass: 'cfe8ea', review: 'ffe6a3', fail: 'b23a1e', 'not checked': 'e4e5e9' };
  const sheet = (words: readonly string[]): WorkbookPlan => ({
    name: 'States',
    sheets: [
      {
        name: 'My states',
        widths: [20],
        cells: words.map((word, i) => ({ at: `A${i + 2}`, role: 'text', formula: `=IF(1=1,"${word}","")`, value: 'no state' })),
        stateRanges: [`A2:A${words.length + 1}`],
      },
    ],
  });

  it('follow the word that was worked out', async () => {
    const { libreoffice, gnumeric } = await pageColours(await writeWorkbook(sheet(Object.keys(fills))));
    for (const colours of [libreoffice, gnumeric])
      for (const fill of Object.values(fills)) expect(colours.get(fill) ?? 0).toBeGreaterThan(300);
  });

  it('stay away from other words', async () => {
    const { libreoffice, gnumeric } = await pageColours(await writeWorkbook(sheet(['passes', 'reviewed', 'failed', 'checked'])));
    for (const colours of [libreoffice, gnumeric]) for (const fill of Object.values(fills)) expect(colours.get(fill) ?? 0).toBe(0);
  });
});
