// Figures of a narrow pane, enlarged by tap and by keys: all of their words, letters that can be read, and the way back.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compostGuide } from '../../src/demo/guide-compost';
import { byKeysTo, openView, type PanePages, panePages, violations } from './open-pane';

let pages: PanePages;
let page: Page;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

const select = (sheet: string, at: string) => page.evaluate(([s = '', a = '']) => window.pane.port.select(s, a), [sheet, at]);
const dialog = () => page.locator('dialog.bw-large');
const focused = () => page.evaluate(() => document.activeElement?.textContent);

interface Looked {
  readonly smallestPx: number;
  readonly texts: number;
  readonly words: string;
  /** Whether the figure is as large as it is drawn. */
  readonly isNatural: boolean;
  readonly over: number;
}

const look = (): Promise<Looked> =>
  page.evaluate(() => {
    const svg = document.querySelector('dialog.bw-large svg') as SVGSVGElement;
    const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
    const texts = [...svg.querySelectorAll('text')];
    return {
      smallestPx: Math.min(...texts.map(text => parseFloat(getComputedStyle(text).fontSize) * scale)),
      texts: texts.length,
      words: texts.map(text => text.textContent).join('\n'),
      isNatural: Math.abs(scale - 1) < 0.01,
      over: document.documentElement.scrollWidth - window.innerWidth,
    };
  });

/** Pans to the end of the figure by keys, and back. */
async function scrolls(): Promise<void> {
  const scroll = () => page.evaluate(() => document.querySelector('dialog.bw-large .bw-scroll')?.scrollLeft ?? 0);
  await page.locator('dialog.bw-large .bw-scroll').focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(scroll).toBeGreaterThan(0);
}

describe.each([
  ['light', { colorScheme: 'light', forcedColors: 'none' }, 320],
  ['dark', { colorScheme: 'dark', forcedColors: 'none' }, 320],
  ['forced colours', { colorScheme: 'light', forcedColors: 'active' }, 320],
  ['200 %', { colorScheme: 'light', forcedColors: 'none' }, 160],
] as const)('a figure enlarged, %s', (mode, media, width) => {
  it('has all its words at a size that can be read, and no fault of access; Escape goes back', async () => {
    page = await pages.open();
    await page.setViewportSize({ width, height: width === 160 ? 450 : 700 });
    await page.emulateMedia(media);
    await select('Variants', 'B6');
    await page.getByRole('heading', { name: 'A first choice' }).waitFor();
    expect((await page.locator('#bw-view-Figure svg.bw-figure text').allTextContents()).join('\n')).not.toContain('boss OD');
    await openView(page, 'Figure');
    await byKeysTo(page, /^Enlarge$/);
    await page.keyboard.press('Enter');
    await dialog().waitFor();
    const { smallestPx, texts, words, isNatural, over } = await look();
    expect(smallestPx).toBeGreaterThanOrEqual(10.99);
    expect(texts).toBeGreaterThan(20);
    expect(words).toContain('boss OD');
    expect(isNatural).toBe(true);
    expect(over).toBeLessThanOrEqual(0);
    expect((await violations(page)).filter(one => mode !== 'forced colours' || !one.startsWith('color-contrast'))).toEqual([]);
    await page.screenshot({ path: `dist/screenshots/pane-enlarged-${mode.replace(/\W+/g, '-')}.png` });
    await scrolls();
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog().count()).toBe(0);
    expect(await focused()).toBe('Enlarge');
    await page.close();
  });
});

it('is enlarged by a tap on the figure, and closed by its button', async () => {
  page = await pages.open();
  await select('Variants', 'B6');
  await page.getByRole('heading', { name: 'A first choice' }).waitFor();
  await page.locator('#bw-view-Figure .bw-drawing').first().click();
  await dialog().getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => dialog().count()).toBe(0);
  expect(await focused()).toBe('Enlarge');
  await page.close();
});

it('so are the chart of all variants and the map of a study; a wide pane needs none of it', async () => {
  page = await pages.open();
  for (const sheet of compostGuide.sheets.filter(({ name }) => name === 'Plane'))
    await page.evaluate(plan => window.pane.port.add(plan), sheet);
  await select('Variants', 'B6');
  await page.getByText('All 8 variants').click();
  // that of the chart beside that of the figure
  await expect.poll(() => page.getByRole('button', { name: 'Enlarge' }).count()).toBe(2);
  await page.getByRole('button', { name: 'Enlarge' }).last().click();
  await dialog().waitFor();
  expect(await look()).toMatchObject({ isNatural: true, words: expect.stringContaining('Engagement of the variants') as unknown });
  await page.keyboard.press('Escape');
  await select('Plane', 'F12');
  await page.getByRole('heading', { name: 'Map of boss OD and wall' }).waitFor();
  await page.getByRole('button', { name: 'Enlarge' }).click();
  await dialog().waitFor();
  expect((await look()).smallestPx).toBeGreaterThanOrEqual(10.99);
  await page.screenshot({ path: 'dist/screenshots/pane-enlarged-map.png' });
  await page.keyboard.press('Escape');
  await page.setViewportSize({ width: 1000, height: 700 });
  // a view is at most 44 rem wide
  await page.addStyleTag({ content: '.bw-view { max-width: none !important; }' });
  await expect.poll(() => page.getByRole('button', { name: 'Enlarge' }).count()).toBe(0);
  await page.close();
});

it('speaks German', async () => {
  page = await pages.open('?de');
  await select('Variants', 'B6');
  await page.getByRole('button', { name: 'Vergrößern' }).click();
  await dialog().getByRole('button', { name: 'Schließen' }).click();
  await page.close();
});
