// Handing over from the bench, in the view of the pane: what is shown before, what is in the file, and that a long one can be stopped.
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { strFromU8, unzipSync } from 'fflate';
import { readWorkbook } from '../../src/hosts/xlsx/read';
import { pixelsOf } from '../kit/png';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;
let bytes: Uint8Array;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const view = () => bench.page.locator('#bw-view-Hand-over');
const answer = async () => (await view().locator('.bw-answer').textContent()) ?? '';
const said = async () => (await bench.page.locator('.bw-said').textContent()) ?? '';
const press = (key: string) => bench.page.keyboard.press(key);
const button = (name: string) => view().getByRole('button', { name });

async function ask(): Promise<void> {
  const start = performance.now();
  await bench.page.locator('#hand-over').press('Enter');
  await button('Look').press('Enter');
  await expect.poll(() => view().locator('progress').count()).toBe(0);
  await expect.poll(answer).toMatch(/\d+ calls? live/);
  await expect.poll(() => button('Write the copy').isEnabled()).toBe(true);
  console.log(`summary after ${((performance.now() - start) / 1000).toFixed(1)} s`);
}

const callsIn = async (words: 'live' | 'as values') => Number(new RegExp(`(\\d+) calls? ${words}`).exec(await answer())?.[1]);

test('the view says how many calls stay live, and lists the others with the reason', async () => {
  await ask();
  const live = await callsIn('live');
  const asValues = await callsIn('as values');
  expect(live).toBeGreaterThan(asValues);
  const list = view().locator('summary', { hasText: `Goes along as a value: ${asValues}` });
  await list.press('Enter');
  expect(await view().locator('details[open] li').count()).toBe(asValues);
  await view()
    .getByText(/SCREW\.CARD/)
    .first()
    .waitFor();
  await bench.picture('hand-over');
});

const PAGES = (pages: number) => `${pages} pages of ours on paper; your sheets print as you set them up.`;

test('pages of ours are counted, and another variant is chosen', async () => {
  await expect.poll(answer).toContain(PAGES(5));
  const box = (label: string) => view().getByLabel(label);
  expect(await box('F  thicker wall, slimmer boss').isChecked()).toBe(true);
  await box('D  longer').check();
  await expect.poll(answer, { timeout: 20_000 }).toContain(PAGES(7));
  await bench.picture('hand-over-choice');
  await box('D  longer').uncheck();
  await expect.poll(answer, { timeout: 20_000 }).toContain(PAGES(5));
});

test('a part without a name is asked for', async () => {
  let downloads = 0;
  bench.page.on('download', () => downloads++);
  await view().getByLabel('Part', { exact: true }).fill('');
  await press('Enter');
  await bench.page.waitForTimeout(800);
  expect(downloads).toBe(0);
  bench.page.removeAllListeners('download');
});

test('the copy has no call of ours, values that are live, and the title block', async () => {
  for (const [label, text] of [
    ['Part', 'Logger lid'],
    ['Number', 'GH-7'],
    ['Revision', 'C'],
    ['Made by', 'A. Designer'],
  ] as const)
    await view().getByLabel(label, { exact: true }).fill(text);
  await view().getByLabel('Status').selectOption('for tooling');
  await view().getByLabel('Paper').selectOption('Letter');
  await bench.picture('hand-over-filled');
  const [download] = await Promise.all([bench.page.waitForEvent('download'), button('Write the copy').click()]);
  expect(download.suggestedFilename()).toBe('Logger lid-C.xlsx');
  bytes = new Uint8Array(await readFile(await download.path()));
  const { sheets, outside } = await readWorkbook(bytes);
  expect(outside).toEqual([]);
  const formulas = sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
  expect(formulas.length).toBeGreaterThan(200);
  expect(formulas.filter(formula => /ENCL|_xldudf/i.test(formula))).toEqual([]);
  const ours = [
    'Hand-over',
    'Characteristics',
    'Figure',
    'Variant table',
    'Cautions',
    'Calculated',
    'Steps',
    'Data',
    'Sources',
    'Conversion',
  ];
  expect(sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(ours));
  // 1 is Letter
  const onLetter = Object.values(unzipSync(bytes)).filter(part => strFromU8(part).includes('<pageSetup paperSize="1"'));
  expect(onLetter.length).toBeGreaterThanOrEqual(ours.length);
  for (const [path, part] of Object.entries(unzipSync(bytes))) {
    if (path.startsWith('xl/worksheets/')) expect(strFromU8(part)).not.toMatch(/<f[^>]*>[^<]*(ENCL\.|_xldudf)/);
  }
  const texts = sheets.find(({ name }) => name === 'Hand-over')?.cells.map(({ value }) => value) ?? [];
  expect(texts).toEqual(expect.arrayContaining(['Logger lid', 'GH-7', 'C', 'for tooling']));
  await expect.poll(said).toMatch(/^Logger lid-C\.xlsx is saved: [1-9]\d* values live, \d+ as values$/);
});

test('the chosen variant of the copy has its section as a picture, drawn in this page', async () => {
  const pictures = Object.entries(unzipSync(bytes)).filter(([path]) => /^xl\/media\/.*\.png$/.test(path));
  expect(pictures).toHaveLength(1);
  for (const [, png] of pictures) {
    const { widthPx, at } = pixelsOf(png);
    expect(widthPx).toBe(1800);
    // the black of its heading: a font was at hand
    const heading = Array.from({ length: 36 * 600 }, (_, i) => at(30 + (i % 600), 36 + Math.floor(i / 600)));
    expect(heading.filter(colour => colour === '#14181d').length).toBeGreaterThan(500);
  }
});

test("the figure's numbers are live in the copy of the sheet", async () => {
  const { sheets } = await savedAgain();
  const here = await bench.read('Variants');
  const heading = here.findIndex(row => row[1]?.formula?.includes('JOINT.TABLE') === true);
  const there = sheets.find(({ name }) => name === 'Variants')?.cells.filter(({ at }) => at.endsWith(String(heading + 2))) ?? [];
  const worst = there.find(({ at }) => at.startsWith('C'));
  expect(worst?.formula).toMatch(/^=/);
  expect(worst?.value).toBeCloseTo(here[heading + 1]?.[2]?.value as number, 9);
});

async function savedAgain() {
  await ask();
  const [download] = await Promise.all([bench.page.waitForEvent('download'), button('Write the copy').press('Enter')]);
  return readWorkbook(new Uint8Array(await readFile(await download.path())));
}

test('the choice is remembered with the workbook, in this browser', async () => {
  const kept = await bench.page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.startsWith('name kept with')));
  expect(kept).toHaveLength(1);
  await bench.page.reload();
  await bench.page.waitForFunction(() => window.bosswright !== undefined);
  await ask();
  expect(await view().getByLabel('Paper').inputValue()).toBe('Letter');
});

test('a long one shows that it runs, and stops when asked', async () => {
  const variants = 800;
  const row = ['ST2.9', 'ISO 7049', 16, 2.5, 3.4, 2.5, 'ABS', 5.5, 1.6, 14];
  const names = ['screw', 'head', 'length', 'wall', 'hole', 'seat', 'material', 'board plane', 'board', 'boss height'];
  const at = (column: number, line: number) => `${String.fromCharCode(65 + column)}${line}`;
  const name = await bench.add({
    name: 'Long',
    widths: [],
    cells: [
      ...names.map((value, column) => ({ at: at(column, 1), value, role: 'header' as const })),
      ...Array.from({ length: variants }, (_, index) =>
        row.map((value, column) => ({ at: at(column, index + 2), value, role: 'input' as const })),
      ).flat(),
      ...['state', 'engagement min', 'engagement ratio', 'sink ratio', 'reason'].map((value, column) => ({
        at: at(11 + column, 1),
        value,
        role: 'input' as const,
      })),
      { at: 'L2', role: 'result', formula: `=ENCL.JOINT.TABLE(A1:J${variants + 1}, L1:P1)` },
    ],
  });
  await expect.poll(async () => (await bench.cell(name, `L${variants + 2}`))?.value).toMatch(/pass|review|fail/);
  await ask();
  let downloads = 0;
  bench.page.on('download', () => downloads++);
  await button('Write the copy').press('Enter');
  const bar = bench.page.locator('.bw-progress');
  await bar.waitFor();
  await bench.picture('busy');
  expect(await bar.locator('progress').isVisible()).toBe(true);
  await bar.getByRole('button', { name: 'Stop' }).press('Enter');
  await expect.poll(said).toBe('Stopped: nothing was written');
  await bench.goTo('Variants', 'E6');
  await bench.type('16');
  await expect.poll(async () => (await bench.cell('Variants', 'E6'))?.value).toBe(16);
  await bench.page.waitForTimeout(8_000);
  expect(downloads).toBe(0);
  bench.page.removeAllListeners('download');
});

test('many variants are handed over', async () => {
  await ask();
  await view().getByLabel('Part', { exact: true }).fill('Logger lid');
  const start = performance.now();
  const [download] = await Promise.all([bench.page.waitForEvent('download'), button('Write the copy').press('Enter')]);
  console.log(`800 variants: saved after ${((performance.now() - start) / 1000).toFixed(1)} s`);
  expect(download.suggestedFilename()).toBe('Logger lid-A.xlsx');
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
