// Every view in dark colours, in colours that the system forces, and at 200 %: nothing is lost, hidden or at fault.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PanePages, panePages, violations } from './open-pane';

let pages: PanePages;
let page: Page;
let tabs: string[];

/** The pane in a language; kept open as long as it is the same. */
async function speaking(query: '' | '?de'): Promise<void> {
  if (page !== undefined && new URL(page.url()).search === query) return;
  await page?.close();
  page = await pages.open(query);
  tabs = await page.getByRole('tab').evaluateAll(all => all.map(tab => tab.id.replace('bw-tab-', '')));
  await page.evaluate(() => window.pane.port.select('Variants', 'B6'));
}

beforeAll(async () => {
  pages = await panePages();
  await speaking('');
});
afterAll(() => pages.close());

async function opened(tab: string): Promise<void> {
  await page.locator(`#bw-tab-${tab}`).click();
  await page.locator(`#bw-view-${tab}`).waitFor();
  await expect.poll(() => page.locator(`#bw-view-${tab}`).innerText()).not.toBe('');
}

/** Text or signs that are as dark or light as what they stand on, and buttons without an edge of their own. */
const unseen = (): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, [role=tab], input, select')].flatMap(element => {
      if (element.offsetParent === null) return [];
      const { color, backgroundColor, borderTopWidth, borderBottomWidth, outlineWidth } = getComputedStyle(element);
      const hasEdge = [borderTopWidth, borderBottomWidth, outlineWidth].some(width => parseFloat(width) > 0);
      return color === backgroundColor || !hasEdge ? [`${element.tagName} ${element.textContent}`] : [];
    }),
  );

const widest = (): Promise<string> =>
  page.evaluate(() =>
    [...document.querySelectorAll('main *')]
      .filter(
        element =>
          element.closest('svg, .bw-drawing, .bw-scroll') === null && element.getBoundingClientRect().right > window.innerWidth + 0.5,
      )
      .map(element => `${element.tagName}.${element.getAttribute('class')}`)
      .join(' '),
  );

it('has its views', () => expect(tabs.length).toBeGreaterThanOrEqual(5));

describe.each([
  ['dark', '', { colorScheme: 'dark' }, 320],
  ['forced colours', '', { forcedColors: 'active' }, 320],
  // colours are those of English; words are longer in German
  ['wide at 200 %', '', { colorScheme: 'light', forcedColors: 'none' }, 225],
  ['200 % in German', '?de', { colorScheme: 'light', forcedColors: 'none' }, 160],
] as const)('%s', (mode, query, media, width) => {
  it('every view has all that it has, and no fault of access', async () => {
    await speaking(query);
    await page.emulateMedia(media);
    await page.setViewportSize({ width, height: 450 });
    let looked = 0;
    for (const tab of tabs) {
      await opened(tab);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      await page.screenshot({ path: `dist/screenshots/mode-${mode.replace(/\W+/g, '-')}-${tab}.png`, fullPage: true });
      expect([tab, over <= 0 ? '' : await widest()]).toEqual([tab, '']);
      if (mode === 'forced colours') expect([tab, await unseen()]).toEqual([tab, []]);
      // colours that the system forces are its own affair
      const found = (await violations(page)).filter(one => mode !== 'forced colours' || !one.startsWith('color-contrast'));
      expect([tab, found]).toEqual([tab, []]);
      looked++;
    }
    expect(looked).toBe(tabs.length);
  }, 300_000);
});

it('a figure in forced colours keeps its lines and letters apart from the ground', async () => {
  await speaking('');
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'light' });
  await page.setViewportSize({ width: 320, height: 900 });
  await opened('Figure');
  const [ground, ink, line] = await page.evaluate(() => {
    const drawing = document.querySelector('#bw-view-Figure svg.bw-figure') as SVGElement;
    const style = (selector: string) => getComputedStyle(drawing.querySelector(selector) as SVGElement);
    return [style('.bw-sheet').fill, style('text').fill, style('.bw-visible').stroke];
  });
  expect(ink).not.toBe(ground);
  expect(line).not.toBe(ground);
});

it('the letters of a figure in a narrow pane are 11 px at least', async () => {
  await speaking('');
  await page.emulateMedia({ forcedColors: 'none' });
  await page.setViewportSize({ width: 320, height: 900 });
  await opened('Figure');
  const sizes = await page.evaluate(() => {
    const drawing = document.querySelector('#bw-view-Figure svg.bw-figure') as SVGSVGElement;
    const scale = drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width;
    return [...drawing.querySelectorAll('text')].map(text => parseFloat(getComputedStyle(text).fontSize) * scale);
  });
  expect(sizes.length).toBeGreaterThan(10);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(10.95);
});
