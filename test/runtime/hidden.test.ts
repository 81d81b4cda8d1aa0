// The built page of the pane inside a made-up Excel that shows it to nobody: cells have their functions, and the workbook is left alone.
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { act, builtPane, type Made, madeIn } from './built-pane';
import { CHROMIUM, QUIET } from './excel';

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
});
afterAll(() => browser.close());

test('until it is seen: the functions, no view, no exchange; then all of it', async () => {
  const { page, own } = await builtPane(browser);
  const made = () => madeIn(page);
  expect(own.filter(name => name.endsWith('.js') || name.endsWith('.json')).sort()).toEqual(['functions.js', 'pane.js', 'start.js']);
  expect((await made()).exchanges).toBe(0);
  expect((await made()).associated).toBeGreaterThan(100);
  expect(await page.getByRole('tab').count()).toBe(0);
  await page.evaluate(() => (window as unknown as { made: Made }).made.show(true));
  await expect.poll(() => page.getByRole('tab').count()).toBe(9);
  await expect.poll(async () => (await made()).exchanges).toBeGreaterThan(0);
  await page.evaluate(() => (window as unknown as { made: Made }).made.show(false));
  await page.waitForTimeout(500);
  const { exchanges } = await made();
  await page.waitForTimeout(1_000);
  expect((await made()).exchanges).toBe(exchanges);
  expect(await page.getByRole('tab').count()).toBe(9);
});

test.each([
  ['newTable', 'Table'],
  ['explainCell', 'Cell'],
  ['checkWorkbook', 'Check'],
  ['handOver', 'Hand-over'],
  ['compareReturned', 'Compare'],
])('%s of the menu shows the pane at %s, and Excel is told', async (action, view) => {
  const { page } = await builtPane(browser);
  await act(page, action);
  await expect.poll(() => page.getByRole('tab', { selected: true }).allTextContents()).toEqual([view]);
  await expect.poll(async () => (await madeIn(page)).completed).toBe(1);
  await page.close();
});
