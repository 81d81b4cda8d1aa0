// A cell that holds nothing but spaces is blank to our functions, and on the copy.
import { expect, it } from 'vitest';
import { handover } from '../../src/handover/handover';
import type { PlanCell } from '../../src/sheet/plan';
import { INPUTS } from '../../src/joint/inputs';
import { call } from '../../src/registry';
import { address } from '../../src/sheet/addresses';
import { sourceOf } from '../kit/source-of-plan';
import { DEMO } from '../kit/study';
import { workedOut } from '../kit/worked-out';
import { TITLE } from './kit';

const NAMES = [...INPUTS.keys()];
const GIVEN: Readonly<Record<string, string | number>> = DEMO;
/** A row for each input, which holds spaces alone there. */
const ROWS = NAMES.map(blank => NAMES.map(name => (name === blank ? '  ' : (GIVEN[name] ?? 'default'))));
const ASKED = ['state', 'grip', 'margin'];
const FIRST = NAMES.length + 3;

const line = (row: number, values: readonly (string | number)[]): PlanCell[] =>
  values.map((value, column) => ({ at: address(row, column), role: 'input', value }));
const copy = handover(
  sourceOf({
    name: 'spaces',
    sheets: [
      {
        name: 'S',
        widths: [],
        cells: [
          ...[NAMES, ...ROWS].flatMap((values, row) => line(row, values)),
          {
            at: `A${FIRST}`,
            role: 'result',
            formula: `=ENCL.JOINT.TABLE(A1:${address(ROWS.length, NAMES.length - 1)},{"${ASKED.join('","')}"})`,
          },
          { at: 'ZZ1', role: 'input', value: ' ' },
          { at: 'ZZ2', role: 'result', formula: '=ENCL.BOSS.OD(2.4,1.2,ZZ1)' },
          { at: 'ZZ3', role: 'input', value: ' ' },
          { at: 'ZZ4', role: 'result', formula: '=LEN(ZZ3)' },
        ],
      },
    ],
  }),
  TITLE,
);
const { values } = workedOut(copy.plan.sheets);

it('every row of a table stays live, and says what it says at home', () => {
  const answer = call('JOINT.TABLE', [[NAMES, ...ROWS], [ASKED]]);
  const home = answer.ok ? (answer.value as unknown[][]) : expect.fail(answer.message);
  const copied = home.slice(1).map((_, r) => ASKED.map((_, c) => values.get(`S!${address(FIRST + r, c)}`)));
  const same = copied.filter((row, r) => row.every((value, c) => String(value).slice(0, 9) === String(home[r + 1]?.[c]).slice(0, 9)));
  expect(same.length).toBe(NAMES.length);
  expect(copy.findings.filter(({ what, words }) => what === 'value, not live' && words.includes('as sent'))).toEqual([]);
});

it('a call of its own too; what nobody of ours reads stays', () => {
  expect(call('BOSS.OD', [2.4, 1.2, ' '])).toEqual({ ok: true, value: values.get('S!ZZ2') });
  expect(values.get('S!ZZ4')).toBe(1);
  const told = copy.findings.filter(({ what }) => what === 'changed').map(({ at, words }) => `${at}: ${words}`);
  expect(told).toHaveLength(NAMES.length + 1);
  expect(told.at(-1)).toBe('ZZ1: spaces alone became a blank cell');
});
