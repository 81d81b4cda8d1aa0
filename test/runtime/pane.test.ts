// The built pane with Office.js, outside Excel: it asks for its own files and for Office.js, and for nothing else.
import { createRequire } from 'node:module';
import path from 'node:path';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BUILT, CHROMIUM, QUIET } from './excel';

const ORIGIN = 'https://pane.test/';
const HOSTED = 'https://appsforoffice.microsoft.com/lib/1/hosted/';
const OFFICE = path.dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/office.js'));

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
});
afterAll(() => browser.close());

test('its own files and Office.js, whatever is opened in it', async () => {
  const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
  const own: string[] = [];
  const foreign: string[] = [];
  const faults: string[] = [];
  page.on('pageerror', error => faults.push(error.message));
  await page.route('**', route => {
    const url = route.request().url();
    (url.startsWith(ORIGIN) ? own : foreign).push(url);
    // Office.js of the package in the place of the public one
    if (url.startsWith(HOSTED)) return route.fulfill({ path: path.join(OFFICE, url.slice(HOSTED.length)) });
    return url.startsWith(ORIGIN) ? route.fulfill({ path: path.join(BUILT, url.slice(ORIGIN.length)) }) : route.abort();
  });
  await page.goto(`${ORIGIN}pane.html`);
  const tabs = page.getByRole('tab');
  await expect.poll(() => tabs.count()).toBeGreaterThan(1);
  for (const tab of await tabs.all()) await tab.click();
  // Office.js takes its time
  await page.waitForTimeout(3_000);
  expect(own).toContain(`${ORIGIN}functions.js`);
  expect(foreign).toContain(`${HOSTED}office.js`);
  expect(foreign.filter(url => !url.startsWith(HOSTED))).toEqual([]);
  expect(faults).toEqual([]);
});

/** The pane without a workbook; what keeps how it was left waits for `later`. */
async function opened(context: BrowserContext, later: Promise<void>): Promise<{ readonly page: Page; chosen(): Promise<string | null> }> {
  const page = await context.newPage();
  await page.route('**', async route => {
    const url = route.request().url();
    if (!url.startsWith(ORIGIN)) return route.abort();
    if (url.endsWith('view-kept.js')) await later;
    return route.fulfill({ path: path.join(BUILT, url.slice(ORIGIN.length)) });
  });
  // it is not loaded before everything is there
  await page.goto(`${ORIGIN}pane.html`, { waitUntil: 'commit' });
  await page.getByRole('tab').first().waitFor();
  return { page, chosen: () => page.locator('[role=tab][aria-selected=true]').getAttribute('id') };
}

test('it is there before what keeps how it was left; then it is as it was left, but where somebody works already', async () => {
  const context = await browser.newContext();
  const first = await opened(context, Promise.resolve());
  expect(await first.chosen()).toBe('bw-tab-Functions');
  await first.page.waitForLoadState();
  await first.page.locator('#bw-tab-About').click();

  for (const [works, then] of [
    [false, 'bw-tab-About'],
    [true, 'bw-tab-Functions'],
  ] as const) {
    let arrive = (): void => undefined;
    const { page, chosen } = await opened(context, new Promise(resolve => (arrive = resolve)));
    expect(await chosen()).toBe('bw-tab-Functions');
    if (works) await page.locator('#bw-view-Functions input').first().click();
    arrive();
    await page.waitForLoadState();
    await page.waitForTimeout(500);
    expect(await chosen()).toBe(then);
  }
  await context.close();
});
