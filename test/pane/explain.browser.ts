// A cell explained, edited and mended, by keyboard.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { type PanePages, panePages, pictured, violations } from './open-pane';

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
    const cells = Array.from({ length: 2000 }, (_, row) => ({ at: `A${row + 1}`, role: 'text' as const, value: row + 1 }));
    await window.pane.port.add({ name: 'Long', widths: [], cells });
  });
});
const cell = () => page.locator('#bw-view-Cell');
const said = () => page.locator('.bw-said').textContent();
const select = (sheet: string, at: string) => page.evaluate(([s = '', a = '']) => window.pane.port.select(s, a), [sheet, at]);

async function byKeysTo(name: RegExp): Promise<void> {
  for (let step = 0; step < 100; step++) {
    if (name.test(await page.evaluate(() => document.activeElement?.textContent ?? ''))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by keys to ${String(name)}`);
}

it('fills the form from the formula, writes it back and takes it back', async () => {
  await page.evaluate(() => window.pane.port.write([{ sheetName: 'Long', at: 'C3', content: '=2*ENCL.BOSS.OD(A3,1.25)' }]));
  await select('Long', 'C3');
  await page.getByRole('tab', { name: 'Cell' }).press('Enter');
  await expect.poll(() => cell().getByLabel('wall (mm)', { exact: true }).inputValue()).toBe('1.25');
  expect(await cell().getByLabel('hole (mm)', { exact: true }).inputValue()).toBe('=A3');
  // 3 + 2 · 1.25
  await expect.poll(() => cell().locator('.bw-value').textContent()).toBe('5.5 mm');
  expect(await violations(page)).toEqual([]);
  expect(await pictured(page, 'Cell-formula')).toBeLessThanOrEqual(0);
  await cell().getByLabel('wall (mm)', { exact: true }).focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('2');
  await byKeysTo(/^Write back$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toBe('Written back into Long!C3');
  const formula = () => page.evaluate(async () => (await window.pane.port.read('Long'))[2]?.[2]?.formula);
  expect(await formula()).toBe('=2*ENCL.BOSS.OD(A3,2)');
  await byKeysTo(/^Take back$/);
  await page.keyboard.press('Enter');
  await expect.poll(formula).toBe('=2*ENCL.BOSS.OD(A3,1.25)');
});

it('says why a cell shows an error that has no message of ours', async () => {
  // what Excel shows where the server is away
  await page.evaluate(() => window.pane.port.plant('Long', 'C3', { value: '#CONNECT!', formula: '=ENCL.BOSS.OD(A3,1.25)' }));
  await select('Long', 'C3');
  await page.getByRole('tab', { name: 'Cell' }).press('Enter');
  await expect.poll(() => cell().textContent()).toContain('#CONNECT!: Excel did not reach the add-in');
  expect(await violations(page)).toEqual([]);
});

it('says what an input is, and applies a remedy with what it changes', async () => {
  await select('Variants', 'E6');
  await page.getByRole('tab', { name: 'Cell' }).press('Enter');
  await cell().getByText('Input length of').waitFor();
  expect(await cell().textContent()).toContain('nominal screw length');
  expect(await cell().textContent()).toContain('shortest standard length');
  const apply = cell()
    .getByRole('button', { name: /^Apply length/ })
    .first();
  await apply.waitFor();
  expect(await cell().textContent()).toMatch(/Changes with it: .*fail → pass/);
  expect(await violations(page)).toEqual([]);
  expect(await pictured(page, 'Cell-input')).toBeLessThanOrEqual(0);
  const before = await page.evaluate(() => window.pane.port.read('Variants'));
  await apply.press('Enter');
  await expect.poll(said).toContain('Applied: length');
  const value = () => page.evaluate(async () => (await window.pane.port.read('Variants'))[5]?.[4]?.value);
  expect(await value()).toBe(16);
  await page.getByRole('button', { name: 'Take back' }).press('Enter');
  await expect.poll(value).toBe(13);
  expect(await page.evaluate(() => window.pane.port.read('Variants'))).toEqual(before);
});
