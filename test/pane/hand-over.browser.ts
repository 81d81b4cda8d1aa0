// Handing over and comparing in the pane: played by keyboard in a workbook of 2,000 rows more than the demo.
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { readWorkbook } from '../../src/hosts/xlsx/read';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { rememberedIn } from '../../src/package/remembered';
import { byKeysTo, openView, type PanePages, panePages, pictured, violations } from './open-pane';

let pages: PanePages;
let page: Page;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());
beforeEach(async () => {
  await page?.close();
  page = await pages.open();
  await page.evaluate(async () => {
    const cells = Array.from({ length: 2000 }, (_, row) => ({ at: `A${row + 1}`, role: 'text' as const, value: row }));
    await window.pane.port.add({ name: 'Long', widths: [], cells });
  });
});

const press = (key: string) => page.keyboard.press(key);
const said = () => page.locator('.bw-said').textContent();
const shown = () => page.locator('#bw-view-Hand-over .bw-answer').textContent();
const opened = async (which = 0) => new Uint8Array((await page.evaluate(i => window.pane.opened[i] ?? [], which)) as number[]);
const sheets = () =>
  page.evaluate(async () => {
    const { port } = window.pane;
    return JSON.stringify(await Promise.all((await port.sheetNames()).map(async name => [name, await port.read(name)])));
  });

async function look(): Promise<void> {
  await openView(page, 'Hand-over');
  await byKeysTo(page, /^Look what would go along$/);
  await press('Enter');
  await page.locator('#bw-view-Hand-over .bw-answer').waitFor();
}

it('is chosen, counted and written by keyboard; the workbook stays as it is but for the name that was ticked', async () => {
  const before = await sheets();
  await look();
  expect(await violations(page)).toEqual([]);
  expect(await pictured(page, 'Hand-over')).toBeLessThanOrEqual(0);
  expect(await shown()).toContain('5 pages of ours on paper');
  expect(await shown()).toMatch(/[1-9]\d* calls live: [1-9]\d* values that follow/);
  expect(await page.getByLabel('Part', { exact: true }).inputValue()).toBe('demo');
  // a sheet that no other reads stays behind
  await byKeysTo(page, /^Long$/);
  await press('Space');
  await expect.poll(() => page.getByLabel('Long', { exact: true }).isChecked()).toBe(false);
  await byKeysTo(page, /^D {2}longer/);
  await press('Space');
  await expect.poll(shown).toContain('7 pages of ours on paper');
  await byKeysTo(page, /^Write the copy$/);
  await press('Enter');
  await expect
    .poll(said)
    .toMatch(/^The copy is open as a new workbook: [1-9]\d* values live, \d+ as values\. It is not saved yet; call it demo-A\.xlsx$/);
  const bytes = await opened();
  const copy = await readWorkbook(bytes);
  expect(copy.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(['Hand-over', 'Characteristics', 'Figure', 'Variants']));
  expect(copy.sheets.map(({ name }) => name)).not.toContain('Long');
  expect(
    copy.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? [])).filter(text => /ENCL|_xldudf/i.test(text)),
  ).toEqual([]);
  expect(rememberedIn(readPackage(bytes))).toBeUndefined();
  expect(await sheets()).toBe(before);
  const names = await page.evaluate(() => window.pane.names);
  expect(names).toHaveLength(1);
  // what was chosen is there the next time
  await byKeysTo(page, /^Look again$/);
  await press('Enter');
  await expect.poll(() => page.getByLabel('Long', { exact: true }).isChecked()).toBe(false);
  await byKeysTo(page, /^Take back$/);
  await press('Enter');
  await expect.poll(() => page.evaluate(() => window.pane.names)).toEqual([]);
});

it('writes nothing but what was shown: a workbook that changed meanwhile is looked at again', async () => {
  await look();
  await page.evaluate(() => window.pane.port.write([{ sheetName: 'Long', at: 'A1', content: 'other' }]));
  await page.getByRole('button', { name: 'Write the copy' }).press('Enter');
  await expect.poll(said).toContain('The workbook has changed since you looked');
  expect(await page.evaluate(() => window.pane.opened.length)).toBe(0);
  await page.getByRole('button', { name: 'Write the copy' }).click();
  await expect.poll(() => page.evaluate(() => window.pane.opened.length)).toBe(1);
});

it('is downloaded where the host does not open it, and without its tick nothing is kept', async () => {
  await page.evaluate(() => {
    window.pane.openFault = 'a policy forbids it';
  });
  await look();
  await page.getByLabel('Part', { exact: true }).fill('Logger: lid');
  await page.getByLabel(/Keep this choice/).press('Space');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Write the copy' }).press('Enter'),
  ]);
  expect(download.suggestedFilename()).toBe('Logger_ lid-A.xlsx');
  await expect.poll(said).toMatch(/^Excel did not open it \(a policy forbids it\)\. Logger_ lid-A\.xlsx is saved: /);
  expect((await readWorkbook(new Uint8Array(await readFile(await download.path())))).sheets.length).toBeGreaterThan(10);
  expect(await page.evaluate(() => window.pane.names)).toEqual([]);
});

/** As the supplier fills it in: a length and a text in the inputs, and a size on the characteristics. */
function answered(bytes: Uint8Array): Uint8Array {
  const change = (at: string, value: string | number) => [at, { value, formula: 'none' as const }] as const;
  return edited(readPackage(bytes), {
    cells: new Map([
      ['Variants', new Map([change('E6', 16), change('H6', '=1+1')])],
      ['Long', new Map([change('A2000', 5)])],
    ]),
  }).bytes;
}

async function chooseFile(name: RegExp, file: string, bytes: Uint8Array): Promise<void> {
  await byKeysTo(page, name);
  const buffer = Buffer.from(bytes);
  // a browser that still puts the last chooser away opens no other
  await expect
    .poll(async () => {
      const chooser = page.waitForEvent('filechooser', { timeout: 5000 }).catch(() => null);
      await press('Enter');
      await (await chooser)?.setFiles({ name: file, mimeType: 'application/octet-stream', buffer });
      return page.evaluate(() => (document.activeElement as HTMLInputElement).files?.length);
    })
    .toBe(1);
}

async function written(): Promise<Uint8Array> {
  await look();
  await page.getByRole('button', { name: 'Write the copy' }).press('Enter');
  await expect.poll(() => page.evaluate(() => window.pane.opened.length)).toBe(1);
  await page.getByRole('button', { name: 'Take back' }).press('Enter');
  return opened();
}

it.each(['beside the file that was sent', 'beside the own workbook'])(
  'compares %s, and takes over what is ticked, by keyboard',
  async beside => {
    const sent = await written();
    const before = await sheets();
    await openView(page, 'Compare');
    expect(await violations(page)).toEqual([]);
    await chooseFile(/^File that came back/, 'back.xlsx', answered(sent));
    if (beside.endsWith('sent')) await chooseFile(/^File that was sent/, 'sent.xlsx', sent);
    await byKeysTo(page, /^Compare$/);
    await press('Enter');
    await page.locator('#bw-view-Compare .bw-answer').waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await pictured(page, beside.endsWith('sent') ? 'Compare' : 'Compare-own')).toBeLessThanOrEqual(0);
    const groups = await page.locator('#bw-view-Compare .bw-titled summary').allTextContents();
    expect(groups.map(text => text.trim())).toEqual(['changed inputs 3', expect.stringMatching(/^what they do \d+$/)]);
    expect(await sheets()).toBe(before);
    const offers = await page.locator('#bw-view-Compare .bw-ticks label').allTextContents();
    expect(offers.map(text => text.trim())).toEqual([
      expect.stringMatching(/^length of .*Variants E6: 13 -> 16$/),
      expect.stringMatching(/Variants H6: .* -> =1\+1$/),
      expect.stringMatching(/Long A2000: 1999 -> 5$/),
    ]);
    for (const name of [/Variants E6: /, /Variants H6: /]) {
      await byKeysTo(page, name);
      await press('Space');
    }
    await byKeysTo(page, /^Write 2 ticked inputs$/);
    await press('Enter');
    await expect.poll(said).toBe('2 inputs taken over');
    const grid = await page.evaluate(() => window.pane.port.read('Variants'));
    expect(grid[5]?.[4]).toEqual({ value: 16 });
    // a text of the supplier is no formula
    expect(grid[5]?.[7]).toEqual({ value: '=1+1' });
    expect((await page.evaluate(() => window.pane.port.read('Long')))[1999]?.[0]).toEqual({ value: 1999 });
    await byKeysTo(page, /^Take back$/);
    await press('Enter');
    await expect.poll(said).toContain('Taken back');
    expect(await sheets()).toBe(before);
  },
);

it('writes no input that has become another since it was shown', async () => {
  const sent = await written();
  await openView(page, 'Compare');
  await page.getByLabel('File that came back').setInputFiles({ name: 'back.xlsx', mimeType: '', buffer: Buffer.from(answered(sent)) });
  await page.getByLabel('File that was sent').setInputFiles({ name: 'sent.xlsx', mimeType: '', buffer: Buffer.from(sent) });
  await page.getByRole('button', { name: 'Compare', exact: true }).press('Enter');
  await page.getByLabel(/Variants E6: /).press('Space');
  await page.evaluate(() => window.pane.port.write([{ sheetName: 'Variants', at: 'E6', content: 14 }]));
  const before = await sheets();
  await page.getByRole('button', { name: 'Write 1 ticked input' }).press('Enter');
  await expect.poll(said).toContain('The workbook has changed since');
  expect(await sheets()).toBe(before);
  expect(await page.getByLabel(/Variants E6: .*; now it is 14/).isChecked()).toBe(false);
});
