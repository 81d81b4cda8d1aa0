// The outputs reasons and remedy of a variant table: as sent, and after inputs have changed, on plain Node.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { convert } from '../../src/handover/compile/convert';
import { call } from '../../src/registry';
import { address } from '../../src/sheet/addresses';
import type { SourceCell } from '../../src/sheet/workbook-values';
import { JOINT } from '../kit/handed-tables';
import { SEED } from '../kit/seed';
import { workedOut } from '../kit/worked-out';

const ROWS = 40;
const rows = fc.sample(fc.tuple(fc.tuple(...JOINT.map(([, of]) => of)), fc.tuple(...JOINT.map(([, of]) => of))), {
  seed: SEED,
  numRuns: ROWS,
});
const names = JOINT.map(([name]) => name);
const OUTPUTS = ['reasons', 'remedy', 'state', 'margin rule'];
const answer = (variants: readonly (readonly Cell[])[]): Cell[][] => {
  const given = call('JOINT.TABLE', [[names, ...variants], [OUTPUTS]]);
  if (!given.ok || !Array.isArray(given.value)) throw new Error('refused');
  return given.value;
};

const source = new Map<string, SourceCell>();
[names, ...rows.map(([base]) => base)].forEach((row, r) => row.forEach((value, c) => source.set(address(r, c), { value })));
source.set('R1', {
  value: null,
  formula: `=ENCL.JOINT.TABLE(A1:${address(ROWS, names.length - 1)},${JSON.stringify(OUTPUTS).replace('[', '{').replace(']', '}')})`,
});
const copy = convert({ name: 'Mine', sheets: [{ name: 'S', cells: source }] });
const sheets = [...copy.sheets, copy.data.plan()];

test('all of it is live', () => expect(copy.findings.map(({ what }) => what)).toEqual(['live']));

test('what is taken from a row is taken by row and column, as every program does', () => {
  const taken = sheets.flatMap(({ cells }) =>
    cells.flatMap(({ formula = '' }) => [...formula.matchAll(/INDEX\(\$?[A-Z]+\$?(\d+):\$?[A-Z]+\$?\1,(1,)?/g)]),
  );
  expect(taken.length).toBeGreaterThan(5 * ROWS);
  expect(taken.filter(([, , row]) => row === undefined)).toEqual([]);
});

test('as sent', () => {
  const { values, unknown } = workedOut(sheets, 'S');
  expect(unknown).toEqual([]);
  const expected = answer(rows.map(([base]) => base));
  expected.forEach((line, r) => line.forEach((worth, c) => expect([r, values.get(`S!${address(r, 17 + c)}`)]).toEqual([r, worth])));
});

test('after a change', () => {
  const changed = sheets.map(sheet =>
    sheet.name !== 'S'
      ? sheet
      : {
          ...sheet,
          cells: sheet.cells.map(cell => {
            const found = rows.flatMap(([, next], r) => next.flatMap((value, c) => (address(r + 1, c) === cell.at ? [value] : [])));
            return found.length === 0 ? cell : { ...cell, value: found[0] as Cell };
          }),
        },
  );
  const { values } = workedOut(changed, 'S');
  const expected = answer(rows.map(([, next]) => next));
  let [same, several, unchecked] = [0, 0, 0];
  for (const [r, [reasons = '', , state]] of expected.entries()) {
    if (r === 0) continue;
    const [found, remedy, foundState] = [17, 18, 19].map(c => values.get(`S!${address(r, c)}`));
    expect(remedy).toBe('inputs changed');
    if (found === 'no value' || String(found).includes('not checked') || foundState !== state) {
      unchecked += 1;
      continue;
    }
    // the wall on which there would be no sink is searched for: it is left away once something has changed
    const isShort = !String(found).includes('passes on a wall');
    expect([r, found]).toEqual([r, isShort ? String(reasons).replace(/; passes on a wall of [\d.]+ mm/, '') : reasons]);
    same += 1;
    if (String(reasons).includes('; ')) several += 1;
  }
  // rules that were left out, and rules without a formula, are not judged anew
  expect(unchecked).toBeLessThan(18);
  expect(same).toBeGreaterThan(22);
  expect(several).toBeGreaterThan(15);
});
