// Calls that give a table handed over in one workbook: as sent, and several of their inputs changed, worked out anew by two programs.
import { beforeAll, describe, expect, test } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { changedSheets, compared, sentSheets, TABLES } from '../kit/handed-tables';
import { recalculate, type Recalculated } from './harness';

const made = new Map<boolean, Recalculated>();

beforeAll(async () => {
  for (const [isSent, sheets] of [
    [true, sentSheets],
    [false, changedSheets],
  ] as const)
    made.set(isSent, await recalculate(await writeWorkbook({ name: 'Tables', sheets })));
});

describe.each(['libreoffice', 'gnumeric'] as const)('%s', engine => {
  test.each(TABLES.flatMap(id => [true, false].map(isSent => [id, isSent] as const)))('%s, as sent: %s', (id, isSent) => {
    const { cells, faults } = compared(id, made.get(isSent)?.[engine] ?? new Map(), isSent);
    expect(faults.slice(0, 5)).toEqual([]);
    expect(cells).toBeGreaterThan(10);
  });
});
