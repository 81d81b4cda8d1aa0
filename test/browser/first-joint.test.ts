// The start of the front page, played with keys alone on an empty sheet, with a part that is none of the demo.
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { call } from '../../src/registry';
import { benchPage, type BenchPage } from './bench-page';

/** What the front page promises to somebody who types it. */
const LIMIT_MS = 120_000;
/** As somebody types who is used to a spreadsheet: 500 characters a minute. */
const MS_PER_KEY = 120;

const [, block = ''] = /```text\n(variant[^]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
const lines = block.trim().split('\n');
const formula = lines.at(-1) ?? '';
const ofReadme = lines.slice(0, -1).map(line => line.split(/ {2,}/));
/** Another screw, another wall, another board. */
const OWN = [
  ofReadme[0] ?? [],
  ['left', 'ST3.5', 'pan', '16', 'PC', '3', '6', '3', '1', '4', '16'],
  ['right', 'ST3.5', 'pan', '19', 'PC', '3', '6', '3', '1', '4', '16'],
  ['spare', 'ST2.9', 'pan', '13', 'PC', '3', '6', '3', '1', '3.4', '16'],
];

const asGiven = (text: string): string | number => (/^[\d.]+$/.test(text) ? Number(text) : text);
const answered = (rows: readonly (readonly string[])[]): readonly (readonly unknown[])[] => {
  const outputs =
    /\{(.*)\}/
      .exec(formula)?.[1]
      ?.split(',')
      .map(name => name.replace(/"/g, '')) ?? [];
  const answer = call('JOINT.TABLE', [rows.map(row => row.map(asGiven)), [outputs]]);
  return answer.ok ? (answer.value as readonly (readonly unknown[])[]) : expect.fail(answer.message);
};

let bench: BenchPage;
beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});
afterAll(() => bench.close());

/** On an empty sheet: each row from its first cell, Tab between cells, Enter at its end. */
async function typed(rows: readonly (readonly string[])[]): Promise<{ sheet: string; tookMs: number; keys: number }> {
  const start = Date.now();
  await bench.page.locator('[data-u-comp="slide-tab-bar"] button, .univer-sheet-bar button').first().click();
  await expect.poll(async () => (await bench.page.evaluate(() => window.bosswright?.port.selection()))?.at).toBe('A1');
  const sheet = (await bench.page.evaluate(() => window.bosswright?.port.selection()))?.sheetName ?? '';
  let keys = 0;
  for (const row of rows)
    for (const [i, text] of row.entries()) {
      await bench.page.keyboard.type(text, { delay: MS_PER_KEY });
      await bench.page.keyboard.press(i === row.length - 1 ? 'Enter' : 'Tab');
      keys += text.length + 1;
    }
  await bench.page.keyboard.type(formula, { delay: MS_PER_KEY });
  await bench.page.keyboard.press('Enter');
  await expect.poll(async () => (await bench.cell(sheet, 'B6'))?.value, { timeout: 60_000 }).toMatch(/^(pass|review|fail|not checked)$/);
  return { sheet, tookMs: Date.now() - start, keys: keys + formula.length + 1 };
}

const spilled = async (sheet: string, answer: readonly (readonly unknown[])[]): Promise<unknown[][]> => {
  const cells = (await bench.read(sheet)).slice(4, 4 + answer.length);
  return cells.map(row => row.slice(0, answer[0]?.length).map(({ value }) => value));
};

test('what the front page types gives what it says', async () => {
  const { sheet } = await typed(ofReadme);
  const answer = answered(ofReadme);
  expect(answer.map(row => row[1])).toEqual(['state', 'fail', 'pass', 'fail']);
  expect(await spilled(sheet, answer)).toEqual(answer);
});

test('an own part is judged within two minutes', async () => {
  const { sheet, tookMs, keys } = await typed(OWN);
  console.log(`${keys} keys, ${(tookMs / 1000).toFixed(1)} s`);
  expect(keys).toBeGreaterThan(200);
  expect(tookMs).toBeLessThan(LIMIT_MS);
  const answer = answered(OWN);
  expect(answer.slice(1).every(row => /^(pass|review|fail)$/.test(String(row[1])))).toBe(true);
  expect(new Set(answer.map(row => row[1])).size).toBeGreaterThan(2);
  expect(await spilled(sheet, answer)).toEqual(answer);
});
