// Handing over in the built pane, from the menu of Excel to the new workbook, byte for byte what the command line writes.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { main } from '../../src/handover/cli';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { act, builtPane, type Made, madeIn } from './built-pane';
import { CHROMIUM, QUIET } from './excel';

const ROWS = 2_000;

let browser: Browser;
let folder: string;
let bytes: Uint8Array;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
  folder = await mkdtemp(path.join(tmpdir(), 'hand-over-'));
  const cells = Array.from({ length: ROWS }, (_, row) => ({ at: `A${row + 1}`, role: 'text' as const, value: row }));
  bytes = await writeWorkbook({ ...demoWorkbook, sheets: [...demoWorkbook.sheets, { name: 'List', widths: [], cells }] });
  await writeFile(path.join(folder, 'in.xlsx'), bytes);
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true });
});

async function opened(): Promise<{ page: Page; own: readonly string[]; faults: string[] }> {
  const { page, own } = await builtPane(browser);
  const faults: string[] = [];
  page.on('pageerror', error => faults.push(error.message));
  page.on('console', message => {
    if (/Content Security Policy/i.test(message.text())) faults.push(message.text());
  });
  await page.evaluate(
    file => {
      (window as unknown as { made: Made }).made.file = file;
    },
    [...bytes],
  );
  return { page, own, faults };
}

async function look(page: Page): Promise<void> {
  await act(page, 'handOver');
  await page.getByRole('button', { name: 'Look what would go along' }).press('Enter');
}

const answers = (page: Page) => page.locator('#bw-view-Hand-over .bw-answer');

async function byCommand(...options: readonly string[]): Promise<Uint8Array> {
  const out = path.join(folder, 'out.xlsx');
  await main([path.join(folder, 'in.xlsx'), out, ...options], () => {});
  return new Uint8Array(await readFile(out));
}

test('the new workbook is what the command line writes of the same file and choice', async () => {
  const { page, own, faults } = await opened();
  expect(own.filter(name => name.includes('files'))).toEqual([]);
  await look(page);
  await answers(page).waitFor();
  expect(await answers(page).textContent()).toContain('5 pages of ours on paper');
  const { slices, isOpen } = await madeIn(page);
  expect(slices).toBe(Math.ceil(bytes.length / 10_000));
  expect(slices).toBeGreaterThan(2);
  expect(isOpen).toBe(0);
  const box = (name: string) => page.getByRole('checkbox', { name, exact: true });
  await page.getByLabel('Paper').selectOption('Letter');
  await page.getByLabel('Language').selectOption('German');
  await box('List').press('Space');
  await expect.poll(() => box('List').isChecked()).toBe(false);
  await page.getByLabel('Part', { exact: true }).fill('Lid');
  await page.getByLabel('Date').fill('2026-11-30');
  await page.getByLabel('Made by').fill('A. Designer');
  await page.getByLabel(/Keep this choice/).press('Space');
  const pages = await answers(page).locator('p').first().textContent();
  await page.getByRole('button', { name: 'Write the copy' }).click();
  await expect.poll(async () => (await madeIn(page)).created.length).toBe(1);
  const [base64 = ''] = (await madeIn(page)).created;
  const made = new Uint8Array(Buffer.from(base64, 'base64'));
  const title = ['--part', 'Lid', '--revision', 'A', '--date', '2026-11-30', '--made-by', 'A. Designer'];
  const names = demoWorkbook.sheets.map(({ name }) => name).join(';');
  const choice = ['--paper', 'Letter', '--language', 'German', '--sheets', names];
  const same = await byCommand(...title, ...choice);
  expect(made.length).toBeGreaterThan(50_000);
  expect(Buffer.compare(made, same)).toBe(0);
  // and a choice of another paper is another file
  expect(Buffer.compare(made, await byCommand(...title, '--language', 'German', '--sheets', names))).not.toBe(0);
  expect(pages).toBe('5 pages of ours on paper; your sheets print as you set them up.');
  expect(own.filter(name => /^chunks\/files[.]js$|[.]wasm$|[.]ttf$/.test(name)).length).toBeGreaterThanOrEqual(4);
  expect((await madeIn(page)).isOpen).toBe(0);
  expect(faults).toEqual([]);
  await page.close();
});

test('a slice that Excel does not give is told, and nothing is written', async () => {
  const { page } = await opened();
  await page.evaluate(() => {
    (window as unknown as { made: Made }).made.refuses = 2;
  });
  await look(page);
  await expect
    .poll(() => page.locator('.bw-said').textContent())
    .toMatch(/^Look what would go along: Excel stopped giving the workbook at part 3 of \d+: try again \(made up\)\.$/);
  expect(await answers(page).count()).toBe(0);
  expect(await madeIn(page)).toMatchObject({ isOpen: 0, created: [], slices: 3 });
  await page.close();
});
