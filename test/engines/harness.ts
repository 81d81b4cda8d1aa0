// Two independent spreadsheet programs work a workbook file out anew. Without them the tests fail; they are never skipped.
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { readWorkbook } from '../../src/hosts/xlsx/read';

/** By `Sheet!A1`; an error is its code: `#N/A`. */
export type Values = ReadonlyMap<string, number | string | boolean>;

export interface Recalculated {
  readonly libreoffice: Values;
  readonly gnumeric: Values;
}

/** Ends a hang; the longest takes a tenth of it on a quiet machine. */
const SECONDS = 1200;

const run = promisify(execFile);

async function program(command: string, args: readonly string[]): Promise<void> {
  // `timeout` ends the whole group of processes, which a program that starts others needs.
  await run('timeout', ['--kill-after=5', String(SECONDS), command, ...args]).catch((fault: { code?: unknown; stderr?: string }) => {
    const why = fault.code === 127 ? 'it is not installed' : fault.code === 124 ? `it took more than ${SECONDS} s` : (fault.stderr ?? '');
    throw new Error(`${command} failed: ${why}`);
  });
}

/** The answer of a program is the file it wrote: LibreOffice ends well even when it could not read its input. */
async function written(path: string, by: string): Promise<Uint8Array> {
  const bytes = await readFile(path).catch(() => new Uint8Array());
  if (bytes.length === 0) throw new Error(`${by} wrote no file`);
  return bytes;
}

async function inFolder<T>(use: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'engines-'));
  try {
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const setting = (path: string, name: string, value: string): string =>
  `<item oor:path="/org.openoffice.${path}"><prop oor:name="${name}" oor:op="fuse"><value>${value}</value></prop></item>`;

/** Whether every formula is worked out when a file is loaded, or shows what was kept for it. */
export type Loading = 'anew' | 'as kept';

/** Settings of an own profile (0: always, 1: never). */
const profile = (language: string, loading: Loading): string => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
${setting('Office.Calc/Formula/Load', 'OOXMLRecalcMode', loading === 'anew' ? '0' : '1')}
${setting('Setup/L10N', 'ooSetupSystemLocale', language)}
</oor:items>`;

/** Converts files of a folder to `folder/out/….<kind>`. */
async function converted(
  folder: string,
  files: readonly string[],
  kind: string,
  language: string,
  loading: Loading = 'anew',
): Promise<string> {
  const own = join(folder, 'profile');
  const out = join(folder, 'out');
  await mkdir(join(own, 'user'), { recursive: true });
  await writeFile(join(own, 'user', 'registrymodifications.xcu'), profile(language, loading));
  await program('soffice', [
    `-env:UserInstallation=${pathToFileURL(own).href}`,
    '--headless',
    '--norestore',
    '--convert-to',
    kind,
    '--outdir',
    out,
    ...files.map(file => join(folder, file)),
  ]);
  return out;
}

/** Converts `folder/in.xlsx` to `folder/out/in.<kind>`. */
const libreoffice = async (folder: string, kind: string, language: string): Promise<string> =>
  join(await converted(folder, ['in.xlsx'], kind, language), `in.${kind}`);

/** By their names. */
export type Files = ReadonlyMap<string, Uint8Array>;

/** Files as each program saves them, LibreOffice all of them in one run. What a program could not read is not among them. */
export async function savedAgain(files: Files, loading: Loading): Promise<{ readonly libreoffice: Files; readonly gnumeric: Files }> {
  return inFolder(async folder => {
    const names = [...files.keys()];
    const places = names.map((_, i) => `f${i}.xlsx`);
    for (const [i, name] of names.entries()) await writeFile(join(folder, places[i] ?? ''), files.get(name) ?? '');
    const gnumeric = join(folder, 'gnumeric');
    await mkdir(gnumeric);
    const byGnumeric = async (): Promise<string> => {
      const how = loading === 'anew' ? ['--recalc'] : [];
      for (const place of places)
        await program('ssconvert', [...how, join(folder, place), join(gnumeric, place)]).catch((fault: unknown) =>
          console.warn(String(fault)),
        );
      return gnumeric;
    };
    const from = async (out: Promise<string>): Promise<Files> => {
      const where = await out;
      const read = await Promise.all(places.map(place => readFile(join(where, place)).catch(() => new Uint8Array())));
      return new Map(names.flatMap((name, i) => (read[i]?.length ? [[name, new Uint8Array(read[i])] as const] : [])));
    };
    const [a, b] = await Promise.all([from(converted(folder, places, 'xlsx', 'en-US', loading)), from(byGnumeric())]);
    return { libreoffice: a, gnumeric: b };
  });
}

export async function valuesOf(bytes: Uint8Array): Promise<Values> {
  const { sheets } = await readWorkbook(bytes);
  return new Map(
    sheets.flatMap(({ name, cells }) => cells.flatMap(({ at, value }) => (value === null ? [] : [[`${name}!${at}`, value] as const]))),
  );
}

/** Every cell of the workbook after each program has worked out all formulas anew. LibreOffice speaks the language, `de-DE`, if one is given. */
export async function recalculate(bytes: Uint8Array, language = 'en-US'): Promise<Recalculated> {
  return inFolder(async folder => {
    const source = join(folder, 'in.xlsx');
    const gnumericFile = join(folder, 'gnumeric.xlsx');
    await writeFile(source, bytes);
    const [libreofficeFile] = await Promise.all([
      libreoffice(folder, 'xlsx', language),
      program('ssconvert', ['--recalc', source, gnumericFile]),
    ]);
    return {
      libreoffice: await valuesOf(await written(libreofficeFile, 'LibreOffice')),
      gnumeric: await valuesOf(await written(gnumericFile, 'Gnumeric')),
    };
  });
}

/** What stands on each page that LibreOffice prints. */
export async function printedPages(bytes: Uint8Array): Promise<readonly string[]> {
  return inFolder(async folder => {
    await writeFile(join(folder, 'in.xlsx'), bytes);
    const pdf = await libreoffice(folder, 'pdf', 'en-US');
    await written(pdf, 'LibreOffice');
    const text = join(folder, 'text');
    await program('pdftotext', ['-layout', pdf, text]);
    return (await readFile(text, 'utf8')).split('\f').slice(0, -1);
  });
}

/** A page as it is printed, with the size of each piece of type. */
export interface PrintedPage {
  readonly number: number;
  readonly heightPt: number;
  readonly text: string;
  readonly texts: readonly { readonly sizePt: number; readonly text: string }[];
}

/** Sizes come in whole units; of more to a point the program knows nothing. */
const UNITS = 3;

async function pagesOfPdf(pdf: string): Promise<readonly PrintedPage[]> {
  const { stdout } = await run('pdftohtml', ['-xml', '-i', '-nodrm', '-zoom', String(UNITS), '-stdout', pdf], { maxBuffer: 1 << 28 });
  const sizes = new Map<string, number>();
  return [...stdout.matchAll(/<page number="(\d+)"[^>]* height="(\d+)"[^]*?<\/page>/g)].map(([page, number, height]) => {
    for (const [, id = '', size] of page.matchAll(/<fontspec id="(\d+)" size="(-?\d+)"/g)) sizes.set(id, Number(size) / UNITS);
    const texts = [...page.matchAll(/<text [^>]*font="(\d+)"[^>]*>([^]*?)<\/text>/g)].map(([, id = '', text = '']) => ({
      sizePt: sizes.get(id) ?? NaN,
      text: text.replace(/<[^>]*>/g, '').replaceAll('&amp;', '&'),
    }));
    return { number: Number(number), heightPt: Number(height) / UNITS, text: texts.map(({ text }) => text).join(' '), texts };
  });
}

/** Of each file the pages that each program prints. */
export async function typeOnPages(
  files: Files,
): Promise<Readonly<Record<'libreoffice' | 'gnumeric', ReadonlyMap<string, readonly PrintedPage[]>>>> {
  return inFolder(async folder => {
    const names = [...files.keys()];
    for (const [i, name] of names.entries()) await writeFile(join(folder, `f${i}.xlsx`), files.get(name) ?? '');
    const out = await converted(
      folder,
      names.map((_, i) => `f${i}.xlsx`),
      'pdf',
      'en-US',
    );
    const pages = { libreoffice: new Map<string, readonly PrintedPage[]>(), gnumeric: new Map<string, readonly PrintedPage[]>() };
    for (const [i, name] of names.entries()) {
      pages.libreoffice.set(name, await pagesOfPdf(join(out, `f${i}.pdf`)));
      await program('ssconvert', ['--recalc', join(folder, `f${i}.xlsx`), join(folder, `g${i}.pdf`)]);
      pages.gnumeric.set(name, await pagesOfPdf(join(folder, `g${i}.pdf`)));
    }
    return pages;
  });
}

/** Points of each colour (`b23a1e`) on the first printed page of each program, formulas worked out anew. */
export async function pageColours(
  bytes: Uint8Array,
): Promise<{ readonly libreoffice: ReadonlyMap<string, number>; readonly gnumeric: ReadonlyMap<string, number> }> {
  return inFolder(async folder => {
    const source = join(folder, 'in.xlsx');
    const gnumericPdf = join(folder, 'gnumeric.pdf');
    await writeFile(source, bytes);
    const [libreofficePdf] = await Promise.all([
      libreoffice(folder, 'pdf', 'en-US'),
      program('ssconvert', ['--recalc', source, gnumericPdf]),
    ]);
    const colours = async (pdf: string, by: string): Promise<ReadonlyMap<string, number>> => {
      await written(pdf, by);
      const page = join(folder, by);
      await program('pdftoppm', ['-r', '60', '-f', '1', '-l', '1', '-singlefile', pdf, page]);
      return coloursOf(await readFile(`${page}.ppm`));
    };
    return { libreoffice: await colours(libreofficePdf, 'LibreOffice'), gnumeric: await colours(gnumericPdf, 'Gnumeric') };
  });
}

/** A portable pixmap: `P6`, width, height, 255, then three bytes a point. */
function coloursOf(ppm: Buffer): ReadonlyMap<string, number> {
  const [head, width, height] = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(ppm.toString('latin1', 0, 64)) ?? [];
  if (head === undefined) throw new Error('pdftoppm wrote no pixmap');
  const points = ppm.subarray(head.length).toString('hex');
  if (points.length !== Number(width) * Number(height) * 6) throw new Error('pdftoppm wrote a broken pixmap');
  const colours = new Map<string, number>();
  for (let i = 0; i < points.length; i += 6) {
    const colour = points.slice(i, i + 6);
    colours.set(colour, (colours.get(colour) ?? 0) + 1);
  }
  return colours;
}
