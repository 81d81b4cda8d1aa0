// The workbooks of others: written by three libraries and by hand, each once more as LibreOffice and as Gnumeric save it.
import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { writeXlsx } from 'hucre/xlsx';
import { demoWorkbook } from '../../../src/demo/demo';
import { GUIDES } from '../../../src/demo/guides';
import { writeWorkbook } from '../../../src/hosts/xlsx/write';
import { savedAgain } from '../harness';
import { BY_HAND } from './by-hand';

export const WRITERS = ['as written', 'LibreOffice', 'Gnumeric'] as const;
export type Writer = (typeof WRITERS)[number];

export interface ForeignFile {
  /** `x-table, LibreOffice` */
  readonly name: string;
  readonly book: string;
  readonly by: Writer;
  readonly bytes: Uint8Array;
}

/** Debian's own, in which its packages are found. */
export const PYTHON = '/usr/bin/python3';
export const FOLDER = new URL('.', import.meta.url).pathname;
const run = promisify(execFile);

const plainTable = (): Promise<Uint8Array> =>
  writeXlsx({
    sheets: [
      {
        name: 'S',
        rows: [['hole', 2.45], ['wall', 1.15], ['OD']],
        cells: new Map([['2,1', { formula: 'ENCL.BOSS.OD(B1,B2)', formulaResult: 4.75 }]]),
        freezePane: { rows: 1 },
        merges: [{ startRow: 4, startCol: 0, endRow: 4, endCol: 1 }],
      },
      { name: 'Other', rows: [['second', 3.25]] },
    ],
  });

async function written(): Promise<Map<string, Uint8Array>> {
  const folder = await mkdtemp(join(tmpdir(), 'foreign-'));
  try {
    for (const script of ['books_xlsxwriter.py', 'books_openpyxl.py'])
      await run(PYTHON, ['-B', join(FOLDER, script), folder]).catch((fault: { stderr?: string }) => {
        throw new Error(`${script} needs python3-xlsxwriter and python3-openpyxl: ${fault.stderr ?? ''}`);
      });
    const files = new Map<string, Uint8Array>();
    for (const name of (await readdir(folder)).sort())
      files.set(name.replace('.xlsx', ''), new Uint8Array(await readFile(join(folder, name))));
    for (const [name, make] of Object.entries(BY_HAND)) files.set(name, make());
    files.set('h-table', await plainTable());
    files.set('h-demo', await writeWorkbook(demoWorkbook));
    for (const { name, workbook } of GUIDES.slice(1, 2)) files.set(`h-${name}`, await writeWorkbook(workbook));
    return files;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What a program could not read is not among its files. The longest one is not saved again, for the time that it takes. */
export async function foreignFiles(): Promise<readonly ForeignFile[]> {
  const files = await written();
  const saved = await savedAgain(new Map([...files].filter(([name]) => name !== 'x-filled')), 'as kept');
  const by: Readonly<Record<Writer, ReadonlyMap<string, Uint8Array>>> = {
    'as written': files,
    LibreOffice: saved.libreoffice,
    Gnumeric: saved.gnumeric,
  };
  return WRITERS.flatMap(writer => [...by[writer]].map(([book, bytes]) => ({ name: `${book}, ${writer}`, book, by: writer, bytes })));
}
