// A file that a supplier only opened and saved again comes back unchanged, whichever program that is.
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { parseCellRef, readXlsx, type Workbook } from 'hucre/xlsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { compare } from '../../src/handover/compare/compare';
import { comparedOf } from '../../src/handover/compare/compared-of';
import type { ComparedWorkbook } from '../../src/handover/compare/seen';
import { sourceOf } from '../kit/source-of-plan';
import { handover } from '../../src/handover/handover';
import { pngRenderer } from '../../src/hosts/png/node';
import { readWithRemarks } from '../../src/hosts/xlsx/read';
import { writeWorkbook } from '../../src/hosts/xlsx/write';

const run = promisify(execFile);
const { plan, own } = handover(
  sourceOf(demoWorkbook),
  { part: 'Logger', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' },
  { pngOf: await pngRenderer() },
);

/** The file as each program saves it. */
const SAVED: Readonly<Record<string, (folder: string) => Promise<string>>> = {
  LibreOffice: async folder => {
    await run('timeout', [
      '400',
      'soffice',
      `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`,
      '--headless',
      '--norestore',
      '--convert-to',
      'xlsx',
      '--outdir',
      join(folder, 'out'),
      join(folder, 'in.xlsx'),
    ]);
    return join(folder, 'out', 'in.xlsx');
  },
  Gnumeric: async folder => {
    await run('timeout', ['400', 'ssconvert', join(folder, 'in.xlsx'), join(folder, 'out.xlsx')]);
    return join(folder, 'out.xlsx');
  },
};

const read = async (bytes: Uint8Array): Promise<ComparedWorkbook> => comparedOf('file', { sheets: (await readWithRemarks(bytes)).sheets });

describe.each(Object.entries(SAVED))('saved again by %s', (_, save) => {
  let sent: ComparedWorkbook;
  let returned: ComparedWorkbook;
  let file: Workbook;

  beforeAll(async () => {
    const folder = await mkdtemp(join(tmpdir(), 'returned-'));
    try {
      const bytes = await writeWorkbook(plan);
      await writeFile(join(folder, 'in.xlsx'), bytes);
      sent = await read(bytes);
      const saved = new Uint8Array(await readFile(await save(folder)));
      returned = await read(saved);
      file = await readXlsx(saved, { readStyles: true });
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  });

  it('nothing was changed', () => {
    expect(Object.entries(compare(sent, returned)).filter(([, lines]) => lines.length > 0)).toEqual([]);
  });

  it('our sheets are still protected, without a password: formulas closed, inputs and answers open', () => {
    const isLocked = (sheet: string, at: string): boolean | undefined => {
      const { row, col } = parseCellRef(at);
      return file.sheets.find(({ name }) => name === sheet)?.cells?.get(`${row},${col}`)?.style?.protection?.locked;
    };
    for (const { name, protection } of file.sheets.filter(sheet => own.has(sheet.name)))
      expect([name, protection?.sheet, protection?.password]).toEqual([name, true, undefined]);
    for (const { name, cells } of plan.sheets.filter(sheet => own.has(sheet.name))) {
      for (const { at, formula, role } of cells) {
        if (formula !== undefined) expect([name, at, isLocked(name, at) ?? true]).toEqual([name, at, true]);
        else if (role === 'input') expect([name, at, isLocked(name, at)]).toEqual([name, at, false]);
      }
    }
  });

  it('one digit more is seen', () => {
    const sheets = returned.sheets.map(sheet =>
      sheet.name === 'Joint'
        ? { ...sheet, cells: new Map([...sheet.cells].map(([at, cell]) => [at, at === 'B10' ? { value: 2.5001 } : cell])) }
        : sheet,
    );
    expect(compare(sent, { ...returned, sheets }).changedInputs).toEqual([
      { sheet: 'Joint', at: 'B10', label: 'wall', sent: '2.5', returned: '2.5001', value: 2.5001 },
    ]);
  });
});
