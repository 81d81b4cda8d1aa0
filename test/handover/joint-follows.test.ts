// Every input of the joint changed in the copy, and the copy worked out on plain Node: numbers and states are those of the core.
import { describe, expect, test } from 'vitest';
import {
  actualRows,
  ASKED,
  BASES,
  type Changes,
  EDITS,
  editedSheets,
  expectedRows,
  judged,
  numberless,
  numbersOf,
  sentSheets,
} from '../kit/joint-edits';
import { workedOut } from '../kit/worked-out';

const NOTHING: Changes = {};
/** So many of the numbers and words come out of the copy too; of the others it says that it does not know them. Pinned. */
const LEAST_FOLLOWED = 0.85;

describe.each(Object.entries(BASES))('a joint with %s', (_, base) => {
  const sent = sentSheets(base, [NOTHING]);
  const follow = (edits: readonly Changes[]): ReturnType<typeof judged> =>
    judged(
      edits,
      expectedRows(base, edits),
      edits.map(edit => {
        const { values, unknown } = workedOut(editedSheets(sent, [edit]), 'Joints 1');
        expect([edit, unknown]).toEqual([edit, []]);
        return actualRows([edit], values)[0] ?? [];
      }),
    );

  test('is a joint with all the numbers that it can have', () => {
    const [now = []] = expectedRows(base, [NOTHING]);
    expect(ASKED.filter((_, i) => typeof now[i] !== 'number')).toEqual(numberless(base));
    // state, all computed, margin rule, and where there is a pull-out the weakest
    expect(follow([NOTHING])).toEqual({
      followed:
        numbersOf(base) +
        (now[ASKED.indexOf('weakest')] === undefined || String(now[ASKED.indexOf('weakest')]).startsWith('no value') ? 3 : 4),
      givenUp: {},
      wrong: [],
    });
  });

  test('follows each input, or says that it does not', () => {
    const { followed, givenUp, wrong } = follow(EDITS);
    expect(wrong).toEqual([]);
    const unknown = Object.values(givenUp).reduce((a, b) => a + b, 0);
    expect(followed / (followed + unknown)).toBeGreaterThan(LEAST_FOLLOWED);
    // two of three edits leave the joint sound
    expect(followed).toBeGreaterThan((2 / 3) * numbersOf(base) * EDITS.length);
  });
});
