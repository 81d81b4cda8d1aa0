// Every input of the joint changed in the copy, one a row, and the copy worked out on plain Node: numbers and states are those of the core.
import { describe, expect, test } from 'vitest';
import { BASES, EDITS, editedCopy, judged } from '../kit/joint-edits';
import { workedOut } from '../kit/worked-out';

describe.each(Object.entries(BASES))('a joint with %s', (_, base) => {
  test('follows each input, or says that it does not', () => {
    const copy = editedCopy(base);
    const { values, unknown } = workedOut(copy.sheets);
    const { followed, givenUp, wrong } = judged(copy, values);
    console.log(_, 'numbers', Object.values(copy.sent).filter(value => typeof value === 'number').length, 'unknown', unknown.length, unknown.slice(0, 3), 'followed', followed, 'of', EDITS.length, 'givenUp', givenUp, 'wrong', wrong.length, wrong.slice(0, 60));
    console.log(Object.entries(copy.sent).filter(([, value]) => typeof value !== 'number').map(([k, v]) => `${k}: ${v}`).join('\n'));
    expect(wrong).toEqual([]);
  });
});
