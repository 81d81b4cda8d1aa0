import { expect, test } from 'vitest';
import { headerOf } from '../../src/joint/headings';
import { workingOrder } from '../../src/joint/order';
import { jointRows, jointTable } from '../../src/joint/table';

const NAMES = ['screw', 'wall', 'length', 'material', 'note'];
// texts, blanks, refused cells and numbers come again in turns that share no divisor
const ROWS = Array.from({ length: 210 }, (_, i) => [
  ['ST2.9', 'M3', 'ST9999', null, 'ST3.5'][i % 5],
  [2, 2.5, '3 mm', -1, null, 'thick', 3.5][i % 7],
  [10, '13 mm', 16][i % 3],
  ['ABS', null][i % 2],
  i,
]);
const RESULTS = [['note', 'engagement min', 'boss wall', 'sink ratio', 'state', 'reason']];

test('a table answers each row as if the rows were worked out in turn', () => {
  const rows = jointRows(NAMES, RESULTS);
  const inTurn = ROWS.map(row => rows.answer(row));
  expect(new Set(inTurn.map(row => JSON.stringify(row.slice(1)))).size).toBeGreaterThan(50);
  expect(jointTable([NAMES, ...ROWS], RESULTS).slice(1)).toEqual(inTurn);
});

test('each row once, the same screw behind one another', () => {
  const order = workingOrder(headerOf(NAMES), ROWS);
  expect([...order].sort((a, b) => a - b)).toEqual(ROWS.map((_, i) => i));
  const turns = order.filter((place, i) => i > 0 && ROWS[place]?.[0] !== ROWS[order[i - 1] ?? 0]?.[0]);
  expect(turns).toHaveLength(4);
});

test('what hardly comes again, and a short table, stay as they are', () => {
  const own = ROWS.map((_, i) => ['ST2.9', 2 + i / 100, 13, 'ABS', i]);
  expect(workingOrder(headerOf(NAMES), own)).toEqual(own.map((_, i) => i));
  expect(workingOrder(headerOf(NAMES), ROWS.slice(0, 2))).toEqual([0, 1]);
});
