// Every live function handed over, one of its inputs changed in the copy, worked out anew on plain Node.
import { expect, test } from 'vitest';
import { changedSheets, countOf, LIVE, otherwise } from '../kit/handed-calls';
import { workedOut } from '../kit/worked-out';

const { values, unknown } = workedOut(changedSheets, 'Calls');

test('all of it can be worked out', () => expect(unknown).toEqual([]));

test.each(LIVE.map(({ id }) => id))('%s', id => {
  expect(countOf(id)).toBeGreaterThan(0);
  expect(otherwise(id, values)).toEqual([]);
});
