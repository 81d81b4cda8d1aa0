// A stranger's first joint: the lines of the front page, typed into an empty sheet with the keyboard alone, in under two minutes.
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { benchPage, type BenchPage } from './bench-page';

/** Between two keys of someone who copies from another page: 40 words a minute. */
const MS_PER_KEY = 250;
const [, block = ''] = /```text\n([^]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
const lines = block
  .trim()
  .split('\n')
  .map(line => (line.startsWith('=') ? [line] : line.split(/ {2,}/)));

let bench: BenchPage;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const selection = () => bench.page.evaluate(() => window.bosswright?.port.selection());

test('the five lines of the front page give what it says, in under two minutes', async () => {
  const { page } = bench;
  const before = await selection();
  await page.locator('[data-u-comp="sheet-bar-append-button"]').first().click();
  await expect.poll(async () => (await selection())?.sheetName).not.toBe(before?.sheetName);
  const sheet = (await selection())?.sheetName ?? '';
  let keys = 0;
  for (const [row, cells] of lines.entries()) {
    // Enter goes to the beginning of the next line, as a spreadsheet does after Tab
    expect(await selection()).toEqual({ sheetName: sheet, at: `A${row + 1}` });
    for (const [i, cell] of cells.entries()) {
      await page.keyboard.type(cell);
      await page.keyboard.press(i + 1 < cells.length ? 'Tab' : 'Enter');
      keys += cell.length + 1;
    }
  }
  const typed = performance.now();
  const states = async () => (await bench.read(sheet)).slice(5, 8).map(row => row[1]?.value);
  await expect.poll(states, { timeout: 60_000 }).toEqual(['fail', 'pass', 'fail']);
  await bench.tab('Figure');
  await expect.poll(() => page.locator('#bw-view-Figure h2').first().textContent(), { timeout: 60_000 }).toContain('A');
  await bench.picture('first-joint');
  const waitedMs = performance.now() - typed;
  console.log(`${keys} keys at ${MS_PER_KEY} ms and ${Math.round(waitedMs)} ms of waiting`);
  expect(keys).toBeGreaterThan(250);
  expect(keys * MS_PER_KEY + waitedMs).toBeLessThan(120_000);
});
