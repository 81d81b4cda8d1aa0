// Sizes, heads and lengths in the copy, worked out on plain Node: each size, head and length of a family once.
// Every pair of them goes through two spreadsheet programs in test/engines.
import { expect, test } from 'vitest';
import {
  changed,
  compare,
  copyOf,
  EVERY_CALL,
  EVERY_HEAD,
  EVERY_LENGTH,
  FAMILIES,
  LEAST_FOLLOWED,
  leastEqual,
  type Row,
  typedOver,
} from '../kit/screw-rows';
import { workedOut } from '../kit/worked-out';

const familyOf = ({ screw }: Row): number => FAMILIES.findIndex(({ sizes }) => sizes.includes(String(screw)));
const onceEach = (rows: readonly Row[], key: (row: Row) => unknown): Row[] =>
  rows.filter((row, i) => rows.findIndex(other => familyOf(other) === familyOf(row) && key(other) === key(row)) === i);

const ROWS = [
  ...onceEach([...EVERY_HEAD].reverse(), row => row.head),
  ...onceEach(EVERY_HEAD, row => row.screw),
  ...onceEach([...EVERY_LENGTH].reverse(), row => row.length),
];
const sent = copyOf(ROWS, EVERY_CALL);

test('each size, head and length is there', () => {
  expect(new Set(ROWS.map(({ screw }) => screw)).size).toBe(new Set(EVERY_HEAD.map(({ screw }) => screw)).size);
  expect(new Set(ROWS.map(row => `${familyOf(row)} ${row.head}`)).size).toBe(12 + 5 + 3 * 6);
});

test('the copy gives what the functions give', () => {
  const { values, unknown } = workedOut(sent, 'Screws');
  expect(unknown).toEqual([]);
  const { equal, givenUp, wrong } = compare(ROWS, EVERY_CALL, values);
  expect(wrong).toEqual([]);
  expect(givenUp).toBe(0);
  expect(equal).toBeGreaterThan(leastEqual(EVERY_CALL) * ROWS.length);
});

test('and after one input of each row was changed, or says that it does not', () => {
  const { values, unknown } = workedOut(typedOver(sent, changed(ROWS)), 'Screws');
  expect(unknown).toEqual([]);
  const { equal, givenUp, wrong } = compare(changed(ROWS), EVERY_CALL, values);
  expect(wrong).toEqual([]);
  expect(equal / (equal + givenUp)).toBeGreaterThan(LEAST_FOLLOWED);
  expect(equal).toBeGreaterThan(LEAST_FOLLOWED * leastEqual(EVERY_CALL) * ROWS.length);
});
