// Calls that give a table: as they were sent, and after their inputs have changed, worked out on plain Node.
import { describe, expect, test } from 'vitest';
import { changedSheets, compared, dead, sentSheets, TABLES } from '../kit/handed-tables';
import { workedOut } from '../kit/worked-out';

/** Cells at least, of them sentences with numbers. */
const FLOORS: Readonly<Record<string, readonly [cells: number, sentences: number]>> = {
  'STACK.TABLE': [2000, 0],
  'STACK.SHARE': [80, 0],
  'SCREW.LENGTHS': [250, 0],
  'SCREW.LENGTH.TABLE': [6000, 800],
  'SCREW.LENGTH.PICK': [20, 0],
  'SCREW.LENGTH.COMMON': [1500, 0],
  'BOSS.CONFLICT': [90, 0],
  'CHECK.JOINT': [2700, 100],
  'CHECK.BOSS': [850, 50],
};

test('every one is handed over live', () => expect(dead).toEqual([]));

describe.each([
  ['as sent', true, sentSheets],
  ['after a change', false, changedSheets],
] as const)('%s', (_, isSent, sheets) => {
  const { values, unknown } = workedOut(sheets, 'Tables of calls');

  test('all of it can be worked out', () => expect(unknown).toEqual([]));

  test.each(TABLES)('%s', id => {
    const { cells, sentences, unchecked, faults } = compared(id, values, isSent);
    expect(faults.slice(0, 5)).toEqual([]);
    const [leastCells, leastSentences] = FLOORS[id] ?? [1, 0];
    expect(cells).toBeGreaterThan(leastCells);
    // a rule that had no formula when the copy was made
    expect(unchecked).toBeLessThanOrEqual(8);
    expect(sentences).toBeGreaterThanOrEqual(leastSentences);
  });
});
