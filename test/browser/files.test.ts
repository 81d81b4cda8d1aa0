// Workbook files in the bench: saved as they are, opened with their formulas alive, refused with the reason.
import { readFile } from 'node:fs/promises';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readWorkbook, type ReadWorkbook } from '../../src/hosts/xlsx/read';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;
let saved: Uint8Array;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const dialog = () => bench.page.locator('dialog[open]:not(#busy)');
const names = () => bench.page.evaluate(() => window.bosswright?.port.sheetNames());

async function save(): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([bench.page.waitForEvent('download'), bench.page.locator('#save').press('Enter')]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

async function choose(name: string, bytes: Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([bench.page.waitForEvent('filechooser'), bench.page.locator('#open').press('Enter')]);
  await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
  await dialog().waitFor();
}

const formulasOf = ({ sheets }: ReadWorkbook) =>
  sheets.flatMap(({ name, cells }) => cells.flatMap(({ at, formula }) => (formula === undefined ? [] : [`${name} ${at} ${formula}`])));

async function formulasHere(): Promise<string[]> {
  const all: string[] = [];
  for (const name of (await names()) ?? []) {
    (await bench.read(name)).forEach((row, r) =>
      row.forEach(({ formula }, c) => {
        if (formula !== undefined) all.push(`${name} ${String.fromCharCode(65 + c)}${r + 1} ${formula}`);
      }),
    );
  }
  return all;
}

test('the file code is not fetched before it is needed', async () => {
  const loaded = await bench.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  const texts = await Promise.all(
    loaded.filter(name => name.endsWith('.js')).map(async name => (await bench.page.request.get(name)).text()),
  );
  expect(texts.length).toBeGreaterThanOrEqual(3);
  expect(texts.some(text => text.includes('docProps/app.xml'))).toBe(false);
});

test('saving writes the sheets with formulas as typed, values and looks', async () => {
  const { name, bytes } = await save();
  saved = bytes;
  expect(name).toBe('Greenhouse humidity logger.xlsx');
  const file = await readWorkbook(saved);
  expect(file.sheets.map(sheet => sheet.name)).toEqual(await names());
  expect(formulasOf(file)).toEqual(await formulasHere());
  const joint = file.sheets.find(sheet => sheet.name === 'Joint')?.cells ?? [];
  const results = joint.filter(({ formula }) => formula?.startsWith('=ENCL.HOLE.RELIEF'));
  expect(results.map(({ value }) => value)).toEqual([(await bench.cell('Joint', results[0]?.at ?? ''))?.value]);
  const parts = unzipSync(saved);
  const sheetXml = Object.entries(parts)
    .filter(([path]) => path.startsWith('xl/worksheets/sheet'))
    .map(([, part]) => strFromU8(part))
    .join('');
  expect(sheetXml).toContain('_xldudf_ENCL_JOINT_TABLE(');
  expect(sheetXml).not.toContain('ENCL.');
  expect(sheetXml).toContain('conditionalFormatting');
  for (const fill of ['E9F0FC', 'DFEBE9', 'B23A1E']) expect(strFromU8(parts['xl/styles.xml'] ?? new Uint8Array())).toContain(fill);
});

test('an entry that is still being typed is saved too', async () => {
  await bench.goTo('Variants', 'E6');
  await bench.page.keyboard.type('19');
  const [download] = await Promise.all([bench.page.waitForEvent('download'), bench.page.locator('#save').click()]);
  const { sheets } = await readWorkbook(new Uint8Array(await readFile(await download.path())));
  expect(sheets.find(({ name }) => name === 'Variants')?.cells.find(({ at }) => at === 'E6')?.value).toBe(19);
  await bench.goTo('Variants', 'E6');
  await bench.page.keyboard.press('Control+z');
  await expect.poll(async () => (await bench.cell('Variants', 'E6'))?.value).toBe(13);
});

test('opening asks first, and keeps the sheets on Escape', async () => {
  await bench.goTo('Variants', 'E6');
  await bench.type('16');
  await choose('logger.xlsx', saved);
  expect(await dialog().textContent()).toContain(`${formulasOf(await readWorkbook(saved)).length} formulas`);
  await bench.picture('open');
  await bench.page.keyboard.press('Escape');
  expect((await bench.cell('Variants', 'E6'))?.value).toBe(16);
});

test('a saved file is opened with its formulas alive', async () => {
  await choose('logger.xlsx', saved);
  await bench.page.getByRole('button', { name: 'Open', exact: true }).press('Enter');
  await expect.poll(async () => (await bench.cell('Variants', 'E6'))?.value).toBe(13);
  await expect.poll(async () => (await bench.read('Variants')).flat().filter(({ value }) => value === 'fail').length).toBeGreaterThan(1);
  expect(await formulasHere()).toEqual(formulasOf(await readWorkbook(saved)));
  const state = async () =>
    (await bench.read('Variants')).find((row, index, rows) => rows[index - 1]?.[1]?.formula?.includes('JOINT.TABLE'))?.[1]?.value;
  expect(await state()).toBe('fail');
  await bench.goTo('Variants', 'E6');
  await bench.type('16');
  await expect.poll(state).toBe('review');
  await bench.picture('opened');
});

test('an opened workbook is kept', async () => {
  await expect.poll(() => bench.text('kept')).toMatch(/^Saved in this browser \d\d:\d\d$/);
  await bench.open();
  expect((await bench.cell('Variants', 'E6'))?.value).toBe(16);
  expect(await names()).toEqual((await readWorkbook(saved)).sheets.map(({ name }) => name));
});

test.each<[what: string, name: string, bytes: () => Uint8Array, why: string]>([
  ['is no workbook', 'notes.xlsx', () => strToU8('just a text'), 'not a workbook file'],
  [
    'can run something',
    'macro.xlsx',
    () => zipSync({ ...unzipSync(saved), 'xl/vbaProject.bin': strToU8('x') }),
    'can run something by itself',
  ],
  [
    'is packed to do harm',
    'bomb.xlsx',
    () => zipSync({ ...unzipSync(saved), 'xl/media/image1.png': new Uint8Array(64 * 1024 * 1024) }),
    'made to fill a memory',
  ],
])('a file that %s is refused, and the dialog says why', async (_what, name, bytes, why) => {
  const before = await formulasHere();
  await choose(name, bytes());
  expect(await dialog().textContent()).toContain(`${name} is not opened`);
  expect(await dialog().textContent()).toContain(why);
  await bench.picture(`refused-${name}`);
  await bench.page.keyboard.press('Escape');
  expect(await formulasHere()).toEqual(before);
});

test('a sheet name that no file takes is told', async () => {
  await bench.add({ name: 'Lid/base', widths: [], cells: [] });
  await bench.page.locator('#save').press('Enter');
  await dialog().waitFor();
  expect(await dialog().textContent()).toContain('sheet "Lid/base"');
  await bench.page.keyboard.press('Escape');
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
