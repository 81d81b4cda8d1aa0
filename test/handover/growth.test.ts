// What one more cell costs does not grow with the workbook.
import { describe, expect, it } from 'vitest';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { copyOf } from '../../src/handover/write/copy';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import type { PlanCell } from '../../src/sheet/plan';

const TITLE = { part: 'Rows', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' } as const;
const CALLS = [
  'DRAFT.OFFSET(A#,B#)',
  'HOLE.AT(C#,A#,B#)',
  'BOSS.OD(C#,D#,A#,B#)',
  'BOSS.WALL(E#,C#,A#,B#,B#,A#)',
  'BOSS.TORSION(F#,E#,C#)',
];

/** Height, draft, hole, wall, outside diameter, torque; then five calls. */
function file(rows: number): Promise<Uint8Array> {
  const cells = Array.from({ length: rows }, (_, i): PlanCell[] => {
    const inputs = [10 + (i % 50) / 10, 0.25 + (i % 7) / 8, 2.4 + (i % 11) / 100, 1.2 + (i % 13) / 100, 6.4 + (i % 17) / 100, 0.3];
    return [
      ...inputs.map((value, c): PlanCell => ({ at: `${'ABCDEF'[c]}${i + 1}`, role: 'input', value })),
      ...CALLS.map((call, c): PlanCell => ({
        at: `${'GHIJK'[c]}${i + 1}`,
        role: 'result',
        formula: `=ENCL.${call.replaceAll('#', String(i + 1))}`,
      })),
    ];
  });
  return writeWorkbook({ name: 'Rows', sheets: [{ name: 'Rows', widths: [], cells: cells.flat() }] });
}

/** Milliseconds of processor time for each live cell. */
async function msPerCell(rows: number): Promise<number> {
  const bytes = await file(rows);
  const before = process.cpuUsage();
  const source = readPackage(bytes);
  const { live } = await copyOf(source, sourceOfFile('Rows', workbookIn(source)), TITLE, { write: writeOwnSheets });
  const { user, system } = process.cpuUsage(before);
  expect(live).toBe(CALLS.length * rows);
  return (user + system) / 1000 / live;
}

describe('a column of calls that grows', () => {
  it('costs no more a cell: 2,500 of them against 250', async () => {
    await msPerCell(50);
    const few = Math.min(await msPerCell(50), await msPerCell(50), await msPerCell(50));
    // a busy machine has its say; what grows with the square is 10 times as much
    expect((await msPerCell(500)) / few).toBeLessThan(2);
  });
});
