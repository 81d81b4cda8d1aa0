// What leaves the printer: six pages of ours at most, and no type below 8 points, on A4 and Letter, in two programs and two languages.
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { type Paper, PAPERS } from '../../src/handover/pages/title-block';
import { type Language, LANGUAGES } from '../../src/handover/words/language';
import { WORDS } from '../../src/handover/words/words';
import { copyOf } from '../../src/handover/write/copy';
import { pngRenderer } from '../../src/hosts/png/node';
import { pagesOf } from '../../src/hosts/xlsx/print';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import { TITLE } from '../handover/kit';
import { FOLDER, PYTHON } from './foreign/inputs';
import { type PrintedPage, typeOnPages } from './harness';

const run = promisify(execFile);
const LEAST_PT = 8;
const MOST_PAGES = 6;
const FOREIGN = ['x-table', 'x-lookups', 'x-chains'] as const;
/** Of a page that stands, and of one that lies. */
const HEIGHTS_PT = { A4: [842, 595], Letter: [792, 612] } as const;

interface Printed {
  readonly what: string;
  readonly paper: Paper;
  readonly language: Language;
  /** As they were counted before anything was printed. */
  readonly counted: number;
  readonly libreoffice: readonly PrintedPage[];
  readonly gnumeric: readonly PrintedPage[];
}

/** The foot of a page of ours says which workbook it is; the one line of a sheet for the screen is no page. */
const isOurs =
  (language: Language) =>
  ({ text }: PrintedPage): boolean =>
    text.includes(`${TITLE.part}, ${WORDS[language].handOver} – `) && !text.includes(WORDS[language].forScreen(''));

async function books(): Promise<Map<string, Uint8Array>> {
  const folder = await mkdtemp(join(tmpdir(), 'books-'));
  try {
    await run(PYTHON, ['-B', join(FOLDER, 'books_xlsxwriter.py'), folder]);
    const files = new Map([['demo', await writeWorkbook(demoWorkbook)]]);
    for (const name of FOREIGN) files.set(name, new Uint8Array(await readFile(join(folder, `${name}.xlsx`))));
    return files;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const printed: Printed[] = [];
const ENGINES = ['libreoffice', 'gnumeric'] as const;

beforeAll(async () => {
  const pngOf = await pngRenderer();
  const files = new Map<string, { readonly bytes: Uint8Array; readonly of: Omit<Printed, 'libreoffice' | 'gnumeric'> }>();
  for (const [what, bytes] of await books())
    for (const paper of PAPERS)
      for (const language of LANGUAGES) {
        const file = readPackage(bytes);
        const source = sourceOfFile(what, workbookIn(file));
        const copy = await copyOf(file, source, TITLE, { write: writeOwnSheets, pngOf, choice: { paper, language } });
        const counted = copy.plan.sheets.reduce((sum, sheet) => sum + (copy.own.has(sheet.name) ? pagesOf(sheet) : 0), 0);
        files.set(`${what}, ${language}, ${paper}`, { bytes: copy.bytes, of: { what, paper, language, counted } });
      }
  const pages = await typeOnPages(new Map([...files].map(([name, { bytes }]) => [name, bytes])));
  for (const [name, { of }] of files) {
    const ours = isOurs(of.language);
    const [libreoffice = [], gnumeric = []] = ENGINES.map(engine => pages[engine].get(name)?.filter(ours));
    printed.push({ ...of, libreoffice, gnumeric });
  }
});

describe.each(ENGINES)('%s', engine => {
  it('prints six pages of ours at most', () => {
    const lines = printed.map(one => `${one.what}, ${one.language}, ${one.paper}: ${one[engine].length}`);
    expect(lines).toHaveLength(16);
    console.log(engine, lines.join('; '));
    if (engine === 'libreoffice') expect(printed.filter(one => one[engine].length !== one.counted)).toEqual([]);
    expect(printed.filter(one => one[engine].length > MOST_PAGES || one[engine].length < 3)).toEqual([]);
  });

  it('prints no type below 8 points, on the paper that was chosen', () => {
    const small = printed.flatMap(one =>
      one[engine].flatMap(({ number, texts }) =>
        texts
          .filter(({ sizePt }) => sizePt < LEAST_PT)
          .map(({ sizePt, text }) => `${one.what}, ${one.language}, ${one.paper}, page ${number}: ${sizePt} ${text}`),
      ),
    );
    expect(small).toEqual([]);
    expect(printed.flatMap(one => one[engine].flatMap(({ texts }) => texts)).length).toBeGreaterThan(2000);
    for (const one of printed) for (const { heightPt } of one[engine]) expect(HEIGHTS_PT[one.paper]).toContain(Math.round(heightPt));
  });
});

it('a page of smaller type is noticed', async () => {
  const [sheet] = demoWorkbook.sheets;
  const small = await writeWorkbook({
    name: 'Small',
    sheets: [
      {
        name: 'Small',
        widths: Array.from({ length: 24 }, () => 20),
        cells: [...(sheet?.cells.slice(0, 4) ?? []), { at: 'X1', role: 'text', value: 'far' }],
      },
    ],
  });
  const { libreoffice, gnumeric } = await typeOnPages(new Map([['small', small]]));
  for (const pages of [libreoffice, gnumeric])
    expect(Math.min(...(pages.get('small') ?? []).flatMap(({ texts }) => texts.map(({ sizePt }) => sizePt)))).toBeLessThan(LEAST_PT);
});
