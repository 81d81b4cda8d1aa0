// The built page of the pane inside a made-up Excel that shows it to nobody: cells have their functions, and the workbook is left alone.
import path from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BUILT, CHROMIUM, QUIET } from './excel';

const ORIGIN = 'https://pane.test/';

/** In the place of Office.js: counts exchanges, and is seen when the test says so. */
const OFFICE = `
  window.made = { exchanges: 0, associated: 0, isSeen: false, actions: {}, completed: 0 };
  Object.defineProperty(document, 'visibilityState', { get: () => made.isSeen ? 'visible' : 'hidden' });
  window.CustomFunctions = { associate() { made.associated++; }, Error, ErrorCode: {} };
  window.Excel = { run: async () => { made.exchanges++; throw new Error('made up'); } };
  window.Office = {
    HostType: { Excel: 'Excel' },
    VisibilityMode: { taskpane: 'Taskpane', hidden: 'Hidden' },
    onReady: async () => ({ host: 'Excel' }),
    context: { requirements: { isSetSupported: () => true } },
    actions: { associate(name, run) { made.actions[name] = run; } },
    addin: { showAsTaskpane: async () => made.show(true), onVisibilityModeChanged: async told => { made.show = isSeen => told({ visibilityMode: isSeen ? 'Taskpane' : 'Hidden' }); return async () => {}; } },
  };
`;

interface Made {
  readonly exchanges: number;
  readonly associated: number;
  readonly completed: number;
  readonly actions: Readonly<Record<string, (event: { completed(): void }) => void>>;
  show(isSeen: boolean): void;
}

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
});
afterAll(() => browser.close());

async function opened(): Promise<{ readonly page: Page; readonly own: readonly string[] }> {
  const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
  const own: string[] = [];
  await page.route('**', route => {
    const url = route.request().url();
    if (!url.startsWith(ORIGIN)) return route.fulfill({ contentType: 'text/javascript', body: OFFICE });
    own.push(url.slice(ORIGIN.length));
    return route.fulfill({ path: path.join(BUILT, url.slice(ORIGIN.length)) });
  });
  await page.goto(`${ORIGIN}pane.html`);
  await page.waitForTimeout(2_000);
  return { page, own };
}

test('until it is seen: the functions, no view, no exchange; then all of it', async () => {
  const { page, own } = await opened();
  const made = () => page.evaluate(() => ({ ...(window as unknown as { made: Made }).made }));
  expect(own.filter(name => name.endsWith('.js') || name.endsWith('.json')).sort()).toEqual(['functions.js', 'pane.js', 'start.js']);
  expect((await made()).exchanges).toBe(0);
  expect((await made()).associated).toBeGreaterThan(100);
  expect(await page.getByRole('tab').count()).toBe(0);
  await page.evaluate(() => (window as unknown as { made: Made }).made.show(true));
  await expect.poll(() => page.getByRole('tab').count()).toBe(7);
  await expect.poll(async () => (await made()).exchanges).toBeGreaterThan(0);
  await page.evaluate(() => (window as unknown as { made: Made }).made.show(false));
  await page.waitForTimeout(500);
  const { exchanges } = await made();
  await page.waitForTimeout(1_000);
  expect((await made()).exchanges).toBe(exchanges);
  expect(await page.getByRole('tab').count()).toBe(7);
});

test.each([
  ['newTable', 'Table'],
  ['explainCell', 'Cell'],
  ['checkWorkbook', 'Check'],
])('%s of the menu shows the pane at %s, and Excel is told', async (action, view) => {
  const { page } = await opened();
  await page.evaluate(name => {
    const { made } = window as unknown as { made: { completed: number; actions: Made['actions'] } };
    made.actions[name]?.({ completed: () => void made.completed++ });
  }, action);
  await expect.poll(() => page.getByRole('tab', { selected: true }).allTextContents()).toEqual([view]);
  await expect.poll(() => page.evaluate(() => (window as unknown as { made: Made }).made.completed)).toBe(1);
  await page.close();
});
