// Calls of ours as a file stores them: of names alone, whatever texts, sheets and columns are called.
import { describe, expect, it } from 'vitest';
import { callsOurs, fromFile, inFile } from '../../src/sheet/stored-formulas';

const CALLS: readonly (readonly [typed: string, stored: string])[] = [
  ['=ENCL.BOSS.OD(A1,ENCL.HOLE.AT(2))', '=_xldudf_ENCL_BOSS_OD(A1,_xldudf_ENCL_HOLE_AT(2))'],
  ['="a ""ENCL.A(1)"" b"&ENCL.A("ENCL.A(1)")', '="a ""ENCL.A(1)"" b"&_xldudf_ENCL_A("ENCL.A(1)")'],
  ["='C:\\[B.xlsx]It''s ENCL.A(1)'!A1+ENCL.A(1)", "='C:\\[B.xlsx]It''s ENCL.A(1)'!A1+_xldudf_ENCL_A(1)"],
  ["=T['[x]+ENCL.A(1)+T['[x]", "=T['[x]+_xldudf_ENCL_A(1)+T['[x]"],
  ["=T[it''s]+ENCL.A(1)+T[it''s]", "=T[it''s]+_xldudf_ENCL_A(1)+T[it''s]"],
  ['=T[[#This Row],[ENCL.A(1)]]+ENCL.A(1)', '=T[[#This Row],[ENCL.A(1)]]+_xldudf_ENCL_A(1)'],
];
const NO_CALLS = ['=MY.ENCL.A(1)', '=ENCL.A', '="ENCL.A(1)"', "='ENCL.A(1)'!B2", '=T[ENCL.A(1)]', '=éENCL.A(1)'];

describe('a formula in the form of a file', () => {
  it.each(CALLS)('%s', (typed, stored) => {
    expect(inFile(typed)).toBe(stored);
    expect(fromFile(stored)).toBe(typed);
    expect(callsOurs(typed)).toBe(true);
  });

  it.each(NO_CALLS)('%s calls nothing of ours', formula => {
    expect(inFile(formula)).toBe(formula);
    expect(callsOurs(formula)).toBe(false);
  });

  it('has a name before it where other programs put one', () => {
    expect(fromFile('=1+_XLFN._xldudf_ENCL_BOSS_OD(A1)')).toBe('=1+ENCL.BOSS.OD(A1)');
  });
});
