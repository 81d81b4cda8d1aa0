// How much script the page of the pane sends before it can be used, and in all; functions.js has a limit of its own.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BENCH_START, BUILT, CHROMIUM, QUIET } from './excel';

const ORIGIN = 'https://pane.test/';
/** Before, 193 kB came before a cell could answer, the pane among it: now less than half of that. The pane calls the studies too, 7 kB of it. */
const MOST_KB = { functions: 90, cells: 96, pane: 60, view: 125 };

const kB = (names: readonly string[]): number =>
  names.reduce((sum, name) => sum + gzipSync(readFileSync(path.join(BUILT, name)), { level: 9 }).length, 0) / 1000;

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
});
afterAll(() => browser.close());

test('no sign-in comes before the pane is there', () => {
  const signsIn = (name: string): boolean => /Authenticator|login\.microsoft/.test(readFileSync(path.join(BUILT, name), 'utf8'));
  expect(['start.js', 'functions.js', 'pane.js', 'chunks/view-pane.js', 'chunks/view-figure.js'].filter(signsIn)).toEqual([]);
  // where the store for the pane's choices comes from, which is asked for later
  expect(signsIn('chunks/view-kept.js')).toBe(true);
});

test.each([
  ['en-GB', 'english', 'german', 14],
  ['de-DE', 'german', 'english', 15],
])('the scripts of the pane are small in %s, and its words come in one language', async (locale, spoken, other, parts) => {
  const page = await browser.newPage({ locale });
  await page.route('**', route => {
    const url = route.request().url();
    return url.startsWith(ORIGIN) ? route.fulfill({ path: path.join(BUILT, url.slice(ORIGIN.length)) }) : route.abort();
  });
  await page.goto(`${ORIGIN}pane.html`);
  const scripts = (): Promise<{ name: string; isStart: boolean; isFirstView: boolean }[]> =>
    page.evaluate(origin => {
      const [usable] = performance.getEntriesByName('bosswright pane');
      return (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
        .filter(({ name }) => name.startsWith(origin) && name.endsWith('.js'))
        .map(({ name, startTime, responseEnd }) => ({
          name: name.slice(origin.length),
          isStart: usable !== undefined && responseEnd < usable.startTime,
          isFirstView: usable !== undefined && startTime < usable.startTime,
        }));
    }, ORIGIN);
  const askedMs = (file: string): Promise<number> =>
    page.evaluate(name => performance.getEntriesByType('resource').find(one => one.name.endsWith(name))?.startTime ?? NaN, file);
  const paintedMs = (): Promise<number> => page.evaluate(() => performance.getEntriesByName('first-paint')[0]?.startTime ?? NaN);
  await expect.poll(async () => (await scripts()).filter(({ name }) => name.startsWith('chunks/view-')).length).toBe(parts);
  await page.waitForFunction(() => performance.getEntriesByName('bosswright pane').length > 0);
  expect(await askedMs('view-kept.js')).toBeGreaterThan(await paintedMs());
  // seen at once, it is on its way while the functions are read; the other waits until it is painted
  expect(await askedMs('view-pane.js')).toBeLessThan(await askedMs('view-kept.js'));
  const all = await scripts();
  console.log(
    `the pane can be used ${(await page.evaluate(() => performance.getEntriesByName('bosswright pane')[0]?.startTime ?? NaN)).toFixed(0)} ms after its address is asked for`,
  );
  const start = all.filter(({ isStart }) => isStart).map(({ name }) => name);
  const first = all.filter(({ isFirstView }) => isFirstView).map(({ name }) => name);
  const own = (names: readonly string[]): string[] => names.filter(name => name !== 'functions.js');
  const sizes = {
    functions: kB(['functions.js']),
    cells: kB(['start.js', 'functions.js', 'pane.js']),
    pane: kB(own(start)),
    view: kB(own(first)),
  };
  console.log(
    `kB gzip in ${locale}: functions.js ${sizes.functions.toFixed(1)}, until cells can answer ${sizes.cells.toFixed(1)}; the pane until it can be used ${sizes.pane.toFixed(1)} (${own(start).join(', ')}), with its first view ${sizes.view.toFixed(1)}, with every view ${kB(own(all.map(({ name }) => name))).toFixed(1)}`,
  );
  expect(start).toEqual(expect.arrayContaining(['functions.js', 'pane.js', `chunks/view-${spoken}.js`]));
  expect(first).toContain('chunks/view-functions.js');
  expect(all.map(({ name }) => name)).not.toContain(`chunks/view-${other}.js`);
  for (const [what, size] of Object.entries(sizes)) expect(size, what).toBeLessThan(MOST_KB[what as keyof typeof MOST_KB]);
});

test('the start of the bench brings no spreadsheet, and all until that stands is a third less than at first', () => {
  const sizes = { start: kB(['bench.js']), all: kB(BENCH_START) };
  console.log(`kB gzip: the bench's own start ${sizes.start.toFixed(1)}, until the sheet stands ${sizes.all.toFixed(1)}`);
  expect(sizes.start).toBeLessThan(8);
  expect(sizes.all).toBeLessThan(1320);
});

test('the pieces of the spreadsheet are read while they arrive, not function by function', () => {
  for (const name of BENCH_START.filter(name => name.startsWith('chunks/')))
    expect(readFileSync(path.join(BUILT, name), 'utf8').slice(0, 29), name).toBe('//# allFunctionsCalledOnLoad\n');
});
