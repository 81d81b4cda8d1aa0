// The demo's story holds: first choice fails, one bottoms, one is to be reviewed, one passes.
import { expect, test } from 'vitest';
import { variantsSheet } from '../../src/demo/variants-sheet';
import { call } from '../../src/registry';

/** The rectangle of a plan as a host would hand it to a function; empty cells are 0, as desktop hosts send them. */
function block(range: string): unknown[][] {
  const [, from = '', top = '', to = '', bottom = ''] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(range) ?? [];
  const columns = Array.from({ length: to.charCodeAt(0) - from.charCodeAt(0) + 1 }, (_, i) => String.fromCharCode(from.charCodeAt(0) + i));
  return Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, r) =>
    columns.map(column => variantsSheet.cells.find(cell => cell.at === `${column}${Number(top) + r}`)?.value || 0),
  );
}

test('states of the demo variants', () => {
  const formula = variantsSheet.cells.find(cell => cell.formula?.includes('JOINT.TABLE'))?.formula ?? '';
  const [, inputs = '', outputs = ''] = /JOINT\.TABLE\(([^,]+),([^)]+)\)/.exec(formula) ?? [];
  const answer = call('JOINT.TABLE', [block(inputs), block(outputs)]);
  if (!answer.ok) expect.fail(answer.message);
  const rows = answer.value as unknown[][];
  const reason = rows[0]?.indexOf('reason') ?? -1;
  expect(rows.slice(1).map(row => [row[0], row[reason]])).toEqual([
    ['fail', 'too little full thread: needs engagement ratio at least 2, has 1.497'],
    ['fail', 'too little full thread: needs engagement ratio at least 2, has 0.29'],
    ['fail', 'too little full thread: needs engagement ratio at least 2, has 1.945'],
    ['review', 'sink behind the boss: needs sink ratio at most 0.66, has 0.672; passes on a wall of 2.53 mm'],
    ['fail', 'screw bottoms: needs a hole 17.06 mm deep, has 14.75 mm'],
    ['pass', '–'],
    ['fail', 'too little full thread: needs engagement ratio at least 2, has 1.909'],
    ['review', 'boss is slender: needs slenderness at most 3, has 3.111'],
  ]);
});
