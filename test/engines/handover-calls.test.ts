// Every live function handed over, one of its inputs changed in the copy, worked out anew by two programs.
import { beforeAll, describe, expect, test } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { changedSheets, countOf, dead, LIVE, otherwise } from '../kit/handed-calls';
import { recalculate, type Recalculated } from './harness';

let found: Recalculated;

beforeAll(async () => {
  found = await recalculate(await writeWorkbook({ name: 'Calls', sheets: changedSheets }));
  console.log(`${LIVE.length} functions, ${LIVE.reduce((sum, { id }) => sum + countOf(id), 0)} calls with one input changed`);
});

describe.each(['libreoffice', 'gnumeric'] as const)('%s', engine => {
  test.each(LIVE.map(({ id }) => id))('%s', id => {
    expect(countOf(id)).toBeGreaterThan(0);
    expect(otherwise(id, found[engine])).toEqual([]);
  });
});

test('every example is handed over live', () => expect(dead).toEqual([]));
