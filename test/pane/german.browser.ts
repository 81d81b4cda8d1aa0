// The pane where the host is German: what cells hold stays English, and the German stands beside it.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type PanePages, panePages, violations } from './open-pane';

let pages: PanePages;
beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

const german = (page: Page, view: string): Promise<string[]> => page.locator(`#bw-view-${view} [lang=de]`).allTextContents();
async function opened(query: string): Promise<Page> {
  const page = await pages.open(query);
  await page.evaluate(() => window.pane.port.select('Variants', 'E6'));
  await page.locator('#bw-view-Figure').getByRole('heading', { name: 'A first choice' }).waitFor();
  return page;
}

it('says states, rules and inputs in German beside the English', async () => {
  const page = await opened('?de');
  await expect.poll(async () => (await german(page, 'Figure')).map(words => words.trim())).toContain('nicht erfüllt');
  expect(await page.locator('#bw-view-Figure').innerText()).toContain('fail');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('tab', { name: 'Cell' }).press('Enter');
  await expect.poll(async () => (await german(page, 'Cell')).join()).toMatch(/Nennlänge|Länge/);
  expect(await page.locator('#bw-view-Cell').innerText()).toContain('Input length of');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('tab', { name: 'Table' }).press('Enter');
  await expect.poll(async () => (await german(page, 'Table')).length).toBeGreaterThan(12);
  await page.close();
});

it('says nothing in German elsewhere', async () => {
  const page = await opened('');
  expect(await page.locator('[lang=de]').count()).toBe(0);
  await page.close();
});
