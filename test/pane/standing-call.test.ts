// The form filled from a formula: what it writes back untouched is the formula that stood there.
import { expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { standingCall } from '../../src/pane/explain/standing-call';
import { formulaOf, typedArgument } from '../../src/pane/typed-argument';
import { CARDS } from '../../src/registry';
import type { Signs } from '../../src/sheet/signs';

const place = { sheetName: 'Part', at: 'B2' };

/** As the form does it. */
function back(formula: string, signs: Signs): string | undefined {
  const call = standingCall(formula, place, signs);
  const params = call && CARDS.get(call.id)?.params;
  if (call === undefined || params === undefined) return undefined;
  const given = params.map((param, i) => typedArgument(param, call.texts[i] ?? '', signs));
  return call.around.join(formulaOf(`ENCL.${call.id}`, params, given).slice(1));
}

const plain = (formula: string): string => formula.replace(/, /g, ',').replace(/(?<=[,(])\s+/g, '');

it.each([{ decimal: '.' }, { decimal: ',' }])('gives back every formula of the demo, with $decimal', signs => {
  const formulas = demoWorkbook.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
  const read = formulas.filter(formula => standingCall(formula, place, signs) !== undefined);
  expect(read.length).toBeGreaterThan(60);
  for (const formula of read) expect(plain(back(formula, signs) ?? ''), formula).toBe(plain(formula));
});

it('keeps what stands round the call, and a text that looks like a cell', () => {
  for (const formula of ['=ROUND(2*ENCL.BOSS.OD(B4,1.25),2)', '=ENCL.ABOUT("M3")', '=ENCL.BOSS.OD("3",SUM(A1,B2),,0.5)'])
    for (const decimal of ['.', ',']) expect(back(formula, { decimal })).toBe(formula);
  expect(standingCall('=ENCL.BOSS.OD(2.5,1)', place, { decimal: ',' })?.texts.slice(0, 2)).toEqual(['2,5', '1']);
});

it('reads nothing where no call of ours is, or too much is given', () => {
  expect(standingCall('=SUM(A1)', place, { decimal: '.' })).toBeUndefined();
  expect(standingCall('=ENCL.NOT.THERE(1)', place, { decimal: '.' })).toBeUndefined();
});
