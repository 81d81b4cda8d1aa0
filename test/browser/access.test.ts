// Accessibility of the pages' own parts, by axe. The sheet engine's subtree is left out; its faults are printed.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { faults } from './axe';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;

/** What the sheet engine draws: its grid, and the boxes that it hangs into the page. */
const engine = ['#sheet', '[data-u-comp]', '[class^="univer-"]'];

/** Rules that the sheet engine 0.25.1 breaks: buttons and fields without a name, and a canvas first in the order of Tab. */
const engineFaults = ['aria-allowed-attr', 'aria-command-name', 'aria-roles', 'button-name', 'label', 'landmark-unique', 'tabindex'];

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const own = () => faults(bench.page, { include: ['html'], exclude: engine });

describe('the bench', () => {
  test('a fault would be found', async () => {
    await bench.page.evaluate(() =>
      document.querySelector('#panel')?.insertAdjacentHTML('beforeend', '<img id="planted" src="icons/icon-16.png">'),
    );
    expect((await own()).join()).toContain('image-alt #planted');
    await bench.page.evaluate(() => document.querySelector('#planted')?.remove());
  });

  test('as it opens, with the figure', async () => {
    await bench.page.locator('#panel svg').first().waitFor();
    expect(await own()).toEqual([]);
  });

  test('with a refused call in the panel', async () => {
    await bench.goTo('Variants', 'B40');
    await bench.type('=ENCL.BOSS.OD("three", 1.2)');
    await bench.page.keyboard.press('ArrowUp');
    await bench.tab('Cell');
    await expect.poll(() => bench.text('message')).toContain('hole');
    expect(await own()).toEqual([]);
  });

  test('with the list of workbooks', async () => {
    await bench.page.locator('#workbooks').press('Enter');
    expect(await own()).toEqual([]);
    await bench.page.keyboard.press('Escape');
  });

  test('while a copy is prepared', async () => {
    await bench.page.locator('#hand-over').press('Enter');
    const view = bench.page.locator('#bw-view-Hand-over');
    await view.getByRole('button', { name: 'Look what would go along' }).press('Enter');
    await view.locator('.bw-answer summary').first().press('Enter');
    expect(await own()).toEqual([]);
  });

  test.each(['Functions', 'Table', 'Sheets', 'Check', 'Compare', 'About'])('with %s beside the sheet', async view => {
    await bench.tab(view);
    await bench.page.locator(`#bw-view-${view} h2`).first().waitFor();
    expect(await own()).toEqual([]);
  });

  test.each(['Cell', 'Figure', 'Functions', 'Table', 'Check'])('in the dark, with %s', async view => {
    await bench.page.emulateMedia({ colorScheme: 'dark' });
    await bench.tab(view);
    expect(await bench.page.locator('body').evaluate(body => getComputedStyle(body).backgroundColor)).toBe('rgb(21, 27, 29)');
    expect(await own()).toEqual([]);
    await bench.page.emulateMedia({ colorScheme: 'light' });
  });

  test('on a narrow page', async () => {
    await bench.page.setViewportSize({ width: 400, height: 800 });
    await bench.page.locator('#details').press('Enter');
    expect(await own()).toEqual([]);
    await bench.page.setViewportSize({ width: 1440, height: 900 });
  });

  test("the engine's own faults are known", async () => {
    const rules = (await faults(bench.page, { include: ['#sheet'], exclude: [] })).map(line => line.split(' ', 1)[0] ?? '');
    console.log(
      `the sheet engine breaks ${engineFaults.map(rule => `${rule} ${rules.filter(each => each === rule).length} times`).join(', ')}`,
    );
    expect(engineFaults).toEqual(expect.arrayContaining([...new Set(rules)]));
  });
});

describe.each(['light', 'dark'] as const)('the pane on a page of its own, %s', colorScheme => {
  let page: Page;

  beforeAll(async () => {
    page = await bench.page.context().newPage();
    await page.route(/^https:/, route => route.abort());
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 350, height: 800 });
    await page.goto(`${bench.origin}/pane.html`);
    await page.getByRole('tab').first().waitFor();
  });

  afterAll(async () => {
    await page.close();
  });

  test('in every view', async () => {
    const tabs = page.getByRole('tab');
    expect(await tabs.count()).toBeGreaterThanOrEqual(3);
    for (const tab of await tabs.all()) {
      await tab.press('Enter');
      expect(await faults(page, { include: ['html'], exclude: [] }), (await tab.textContent()) ?? '').toEqual([]);
    }
  });
});
