// Planted faults in small workbooks: each is told of, and what is sound is not.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ENGLISH } from '../../src/words/english';
import { problemsOf, retyped, type Problem } from '../../src/pane/problems';
import { readWorkbook, type Grid } from '../../src/pane/workbook';
import { ERROR_CODE } from '../../src/sheet/known';
import { demoWorkbook } from '../../src/demo/demo';
import type { SheetCell } from '../../src/sheet/port';
import { fakePort } from './fake-port';

const of = (formula: string, value: SheetCell['value'] = 1): SheetCell => ({ value, formula });
const v = (value: SheetCell['value']): SheetCell => ({ value });
const told = (...rows: SheetCell[][]): string[] => told2(new Map([['S', rows]]));
const told2 = (grids: ReadonlyMap<string, Grid>): string[] =>
  problemsOf(grids, ENGLISH.check).map(({ kind, place: { sheetName, at }, words }: Problem) => `${kind} ${sheetName}!${at}: ${words}`);

describe('a workbook is told of', () => {
  it('functions under the name of a file, with their names as typed', () => {
    expect(retyped('=_xldudf_ENCL_BOSS_OD(B4,1.2)+_xldudf_encl_SCREW_HEAD_DIAMETER("M3","pan")')).toBe(
      '=ENCL.BOSS.OD(B4,1.2)+ENCL.SCREW.HEAD.DIAMETER("M3","pan")',
    );
    expect(retyped('=_xldudf_OTHER_FN(1)+_xldudf_ENCL_NO_SUCH(1)')).toBe('=_xldudf_OTHER_FN(1)+_xldudf_ENCL_NO_SUCH(1)');
    const [problem] = problemsOf(new Map([['S', [[of('=_xldudf_ENCL_BOSS_OD(B1,C1)', '#NAME?'), v(3), v(1)]]]]), ENGLISH.check);
    expect(problem).toMatchObject({ kind: 'broken', repair: '=ENCL.BOSS.OD(B1,C1)' });
  });

  it('#NAME? and #BUSY!, to be entered again where a function of ours is called', () => {
    const grids = new Map([
      [
        'S',
        [
          [
            of('=ENCL.BOSS.OD(D1,E1)', '#NAME?'),
            of('=ENCL.BOSS.OD(D1,E1)', '#BUSY!'),
            of('=ENCL.BOS.OD(D1,E1)', '#NAME?'),
            v(3),
            v(1),
            of('=FOO(1)', '#NAME?'),
            of('=FOO(1)', '#BUSY!'),
          ],
        ],
      ],
    ]);
    expect(problemsOf(grids, ENGLISH.check).map(({ place: { at }, repair }) => [at, repair])).toEqual([
      ['A1', '=ENCL.BOSS.OD(D1,E1)'],
      ['B1', '=ENCL.BOSS.OD(D1,E1)'],
      ['C1', undefined],
      ['F1', undefined],
    ]);
  });

  it('refusals with their reason, from the innermost call', () => {
    expect(told([of('=ENCL.BOSS.OD(B1,C1)', '#VALUE!'), v(3), v(-1)])).toEqual(['refused S!A1: BOSS.OD: wall is -1: must be above 0 mm']);
    expect(told([of('=ENCL.BOSS.OD(B1,ENCL.WALL.FEATURE(C1))', '#VALUE!'), v(3), v(-1)])[0]).toContain('WALL.FEATURE: wall');
    expect(told([of('=ENCL.BOSS.OD(B1,C1)', '#SPILL!'), v(3), v(1)])[0]).toContain('no room');
    expect(told([{ value: '#VALUE!', formula: '=ENCL.BOSS.OD(B1,C1)', message: 'as the host says' }, v(3), v(-1)])).toEqual([
      'refused S!A1: as the host says',
    ]);
  });

  it('knows every error that Excel declares', () => {
    const declared = readFileSync(new URL(import.meta.resolve('@types/office-js/index.d.ts')), 'utf8');
    const [, members = ''] = /enum ErrorCellValueType \{([^}]*)\}/.exec(declared) ?? [];
    const names = [...members.matchAll(/= "(\w+)"/g)].map(([, name = '']) => name);
    expect(names.length).toBeGreaterThanOrEqual(16);
    const shown: Readonly<Record<string, string>> = { Div0: '#DIV/0!', GettingData: '#GETTING_DATA', NotAvailable: '#N/A', Name: '#NAME?' };
    for (const name of names) expect(shown[name] ?? `#${name.toUpperCase()}!`).toMatch(ERROR_CODE);
  });

  it('every error that Excel has, with what helps', () => {
    const errors = [
      '#GETTING_DATA',
      '#CONNECT!',
      '#BLOCKED!',
      '#FIELD!',
      '#UNKNOWN!',
      '#TIMEOUT!',
      '#EXTERNAL!',
      '#CALC!',
      '#SPILL!',
      '#PLACEHOLDER!',
    ];
    for (const error of errors) {
      const [words = ''] = told([of('=ENCL.BOSS.OD(B1,C1)', error), v(3), v(1)]);
      expect(words, error).toMatch(/^refused S!A1: .{30,}/);
      expect(words, error).not.toContain(error);
    }
    expect(told([of('=ENCL.BOSS.OD(B1,C1)', '#3'), v(3), v(1)])).toEqual([]);
  });

  it('cells that wait for each other, through formulas of the sheet too, and not of two', () => {
    const chain = (last: SheetCell) =>
      told([v(3), of('=ENCL.BOSS.OD(A1,A1)')], [v(1), of('=B1*2')], [v(1), of('=ENCL.BOSS.OD(A1,B2)')], [v(1), last]);
    expect(chain(of('=SUM(ENCL.BOSS.OD(A1,B1),B1:B3)'))).toEqual([
      'chain S!B4: 3 cells wait for each other, from S!B1 on: about 1.5 s in Excel; as one JOINT.TABLE about 0.5 s',
    ]);
    expect(chain(of('=SUM(B1:B3)'))).toEqual([]);
    expect(told([of('=ENCL.BOSS.OD(B1,A1)'), of('=ENCL.BOSS.OD(A1,B1)')]).filter(line => line.startsWith('chain'))).toEqual([]);
  });

  it('checks that do not pass', () => {
    expect(told([of('=ENCL.CHECK.MAX(B1,C1)', 'fail'), v(3), v(1)], [of('=ENCL.CHECK.MAX(B1,C1)', 'pass')], [v('fail')])).toEqual([
      'state S!A1: fail',
    ]);
  });

  it('numbers and quantities in a formula, not the zero, not the word, not the number of a native function', () => {
    expect(told([of('=ENCL.BOSS.OD(5.6+B1,"0.05 in",0,"0°")'), v(3)])).toEqual(['constant S!A1: 5.6 for hole, "0.05 in" for wall']);
    expect(told([of('=ENCL.DRAFT.SIZE(B1,C1,D1,"grows")'), v(3), v(1), v(1)])).toEqual([]);
    expect(told([of('=ENCL.BOSS.OD(INDEX(B1:C1,1,2),C1)'), v(3), v(1)])).toEqual([]);
    expect(told([of('=ENCL.JOINT.CARD(B1:C2,2)'), v('screw'), v('M3')])).toEqual([]);
    expect(told([of('=B1*2.5'), v(3)])).toEqual([]);
  });

  it('blanks that count as zero', () => {
    expect(told([of('=ENCL.RECESS.SEAT(B1,C1)'), v(5.5), v(null)])).toEqual(['blank S!A1: C1 is blank and counts as 0 for depth']);
    expect(told([of('=ENCL.BOSS.OD(B1,B1,C1,D1)'), v(3), v(14), v(null)])).toEqual(['blank S!A1: D1 is blank and counts as 0 for draft']);
    expect(told([of('=ENCL.RECESS.SEAT(B1,C1)'), v(5.5), v(0)])).toEqual([]);
    // outside its limits a blank is refused, so it is no zero
    expect(told([of('=ENCL.BOSS.OD(B1,C1)'), v(3), v(null)]).filter(line => line.startsWith('blank'))).toEqual([]);
  });

  it('lengths of a list in several units, not names beside values', () => {
    expect(told([of('=ENCL.GRIP(B1:B3)'), v(2.5)], [v(null), v('0.063 in')], [v(null), v('1 mm')])).toEqual([
      'units S!B2: B1:B3 has lengths in mm and in',
    ]);
    expect(told([of('=ENCL.GRIP(B1:B3)'), v(2.5)], [v(null), v('1.6 mm')], [v(null), v(1)])).toEqual([]);
    expect(
      told([of('=ENCL.CHECK.JOINT(B1:C3)'), v('screw'), v('M3')], [v(null), v('wall'), v('0.1 in')], [v(null), v('board plane'), v(5)]),
    ).toEqual([]);
  });

  it('nothing in the demo but numbers that it shows in its formulas', async () => {
    const port = fakePort(demoWorkbook);
    const problems = problemsOf(await readWorkbook(port), ENGLISH.check);
    expect(problems.filter(({ kind }) => ['broken', 'refused', 'blank', 'units'].includes(kind))).toEqual([]);
  });
});
