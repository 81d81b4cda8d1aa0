// Handing over from the bench: what is shown before, what is in the file, and that a long one can be stopped.
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

const dialog = () => bench.page.locator('#hand-over-dialog');
const press = (key: string) => bench.page.keyboard.press(key);

async function ask(): Promise<void> {
  const start = performance.now();
  await bench.page.locator('#hand-over').press('Enter');
  await dialog().waitFor();
  console.log(`dialog after ${((performance.now() - start) / 1000).toFixed(1)} s`);
  await expect.poll(() => bench.text('hand-over-live')).toMatch(/^\d+ calls? live/);
  console.log(`summary after ${((performance.now() - start) / 1000).toFixed(1)} s`);
}

const callsIn = async (id: string) => Number(/^\d+/.exec(await bench.text(id))?.[0]);

test('the dialog says how many calls stay live, and lists the others with the reason', async () => {
  await ask();
  const live = await callsIn('hand-over-live');
  const asValues = await callsIn('hand-over-values');
  expect(live).toBeGreaterThan(asValues);
  const list = dialog().locator('summary', { hasText: `Goes along as a value: ${asValues}` });
  await list.press('Enter');
  expect(await dialog().locator('li:visible').count()).toBe(asValues);
  await dialog()
    .getByText('Joint B67: SCREW.LENGTH.PICK')
    .or(dialog().getByText(/SCREW\.CARD/))
    .first()
    .waitFor();
  await bench.picture('hand-over');
});

test('pages of ours are counted, and another variant is chosen in the dialog', async () => {
  await expect.poll(() => bench.text('hand-over-pages')).toBe('5 pages of ours on paper; your sheets print as you set them up.');
  await dialog().getByText('What goes along').click();
  const box = (label: string) => dialog().getByLabel(label);
  expect(await box('F  thicker wall, slimmer boss').isChecked()).toBe(true);
  await box('D  longer').check();
  await expect
    .poll(() => bench.text('hand-over-pages'), { timeout: 20_000 })
    .toBe('6 pages of ours on paper; your sheets print as you set them up.');
  await bench.picture('hand-over-choice');
  await box('D  longer').uncheck();
  await expect.poll(() => bench.text('hand-over-pages'), { timeout: 20_000 }).toMatch(/^5 pages/);
});

test('Escape leaves without a file', async () => {
  let downloads = 0;
  bench.page.on('download', () => downloads++);
  await press('Escape');
  await bench.page.waitForTimeout(800);
  expect(downloads).toBe(0);
  bench.page.removeAllListeners('download');
});

test('a part without a name is asked for', async () => {
  await ask();
  await dialog().getByLabel('Part').fill('');
  await press('Enter');
  expect(await dialog().isVisible()).toBe(true);
});

test('the copy has no call of ours, values that are live, and the title block', async () => {
  await dialog().getByLabel('Part').fill('Logger lid');
  for (const text of ['GH-7', 'C', '', 'for tooling', 'A. Designer']) {
    await press('Tab');
    // The date has three parts, each a stop of its own.
    if (text === '') for (let part = 0; part < 3; part++) await press('Tab');
    else await bench.page.keyboard.type(text);
  }
  await dialog().getByLabel('Paper').selectOption('Letter');
  await dialog().getByLabel('Made by').focus();
  await bench.picture('hand-over-filled');
  const [download] = await Promise.all([bench.page.waitForEvent('download'), press('Enter')]);
  expect(download.suggestedFilename()).toBe('Logger lid-C.xlsx');
  bytes = new Uint8Array(await readFile(await download.path()));
  const { sheets, outside } = await readWorkbook(bytes);
  expect(outside).toEqual([]);
  const formulas = sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
  expect(formulas.length).toBeGreaterThan(200);
  expect(formulas.filter(formula => /ENCL|_xldudf/i.test(formula))).toEqual([]);
  const ours = [
    'Handover',
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
  const texts = sheets.find(({ name }) => name === 'Handover')?.cells.map(({ value }) => value) ?? [];
  expect(texts).toEqual(expect.arrayContaining(['Logger lid', 'GH-7', 'C', 'for tooling']));
  await expect.poll(() => bench.text('kept')).toMatch(/^Logger lid-C\.xlsx is saved: [1-9]\d* values live, \d+ as values$/);
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
  const [download] = await Promise.all([
    bench.page.waitForEvent('download'),
    dialog().getByRole('button', { name: 'Save the copy' }).press('Enter'),
  ]);
  return readWorkbook(new Uint8Array(await readFile(await download.path())));
}

test('the pane offers it too', async () => {
  await bench.tab('Sheets');
  await bench.page
    .locator('#bw-view-Sheets')
    .getByRole('button', { name: /^Hand over/ })
    .press('Enter');
  await dialog().waitFor();
  await dialog().getByRole('button', { name: 'Cancel' }).press('Enter');
  expect(await dialog().isVisible()).toBe(false);
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
  await bench.page.locator('#hand-over').press('Enter');
  await dialog().waitFor();
  await dialog().locator('progress').waitFor();
  await dialog().getByRole('button', { name: 'Save the copy' }).press('Enter');
  await bench.page.locator('#busy').waitFor();
  await bench.picture('busy');
  expect(await bench.page.locator('#busy progress').isVisible()).toBe(true);
  let downloads = 0;
  bench.page.on('download', () => downloads++);
  await press('Enter');
  expect(await bench.page.locator('#busy').isVisible()).toBe(false);
  await bench.goTo('Variants', 'E6');
  await bench.type('16');
  await expect.poll(async () => (await bench.cell('Variants', 'E6'))?.value).toBe(16);
  await bench.page.waitForTimeout(8_000);
  expect(downloads).toBe(0);
  bench.page.removeAllListeners('download');
});

test('many variants are handed over', async () => {
  await ask();
  const start = performance.now();
  const [download] = await Promise.all([
    bench.page.waitForEvent('download'),
    dialog().getByRole('button', { name: 'Save the copy' }).press('Enter'),
  ]);
  console.log(`800 variants: saved after ${((performance.now() - start) / 1000).toFixed(1)} s`);
  expect(download.suggestedFilename()).toBe('Logger lid-C.xlsx');
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
