// Every table, row by row, against records.json: values, order, units, limits, editions and how each value is held. npm run generate writes it
// from the collected records, where they are beside the checkout; then test/contract/generated.test.ts compares the two.
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { Table } from '../../src/standards/table';
import { MATERIAL_RANGES, type MaterialRange, type StrengthRange } from '../../src/standards/material-ranges';
import { linesOf, materialLines } from './lines';
import { PINNED_WORDS } from './pinned';
import RECORDS from './records.json';
import { TABLES } from './tables';

const { generated: _, ...held } = RECORDS;
const records: Readonly<Record<string, readonly string[]>> = held;
const materials = Object.entries(MATERIAL_RANGES).flatMap(([symbol, quantities]) =>
  Object.entries(quantities as Readonly<Record<string, MaterialRange | StrengthRange>>).map(([quantity, range]) => ({
    ...range,
    symbol,
    quantity,
    kind: 'strengthKind' in range ? range.strengthKind : '',
  })),
);

test('no table is without its record, no record without its table', () => {
  expect(Object.keys(records).sort()).toEqual([...Object.keys(TABLES), 'MATERIAL_RANGES'].sort());
});

test('the records hold every value of every table', () => {
  const rows = Object.keys(TABLES)
    .flatMap(name => records[name] ?? [])
    .filter(line => !line.includes(' | '));
  const values = Object.values(TABLES).flatMap(table =>
    table.rows.flatMap(([, ...row]) => (row as readonly (number | null)[]).filter(value => value !== null)),
  );
  expect(values.length).toBeGreaterThan(1800);
  expect(rows.join('\n').match(/ -?[\d.]+[a-z]\b/g)).toHaveLength(values.length);
});

test.each(Object.entries(TABLES))('%s is as its record, row by row', (name, table) => expect(linesOf(table)).toEqual(records[name]));

test('the materials are as their records, one by one', () => expect(materialLines(materials)).toEqual(records['MATERIAL_RANGES']));

/** Words that no record has: pinned as they are, so that none changes unseen. */
const words = ({ subject, columns, exceptions = [] }: Table): unknown => [
  subject,
  columns.map(({ title, note }) => [title, note ?? '']),
  exceptions.flatMap(({ row, key, note }) => (note === undefined ? [] : [[row, key, note]])),
];
const digest = (value: unknown): string => createHash('sha256').update(JSON.stringify(value)).digest('hex').slice(0, 12);

describe('subject, titles and notes, pinned', () => {
  const pinned = {
    ...Object.fromEntries(Object.entries(TABLES).map(([name, table]) => [name, words(table)])),
    MATERIAL_RANGES: materials.map(({ symbol, quantity, note }) => [symbol, quantity, note ?? '']),
  };
  test.each(Object.entries(pinned))('%s', (name, text) =>
    expect(digest(text), `pinned.ts, once the change is meant: ${name}: '${digest(text)}'`).toBe(PINNED_WORDS[name]),
  );
  test('nothing else is pinned', () => expect(Object.keys(PINNED_WORDS).sort()).toEqual(Object.keys(pinned).sort()));
});
