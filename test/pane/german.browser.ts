// The pane where the host is German: its own words are German, what cells hold stays English, and the German stands beside it.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { ENGLISH } from '../../src/words/english';
import { GERMAN } from '../../src/words/german/german';
import { VIEWS } from '../../src/pane/views';
import { byKeysTo, openView, type PanePages, panePages, violations } from './open-pane';

const NAMES = VIEWS.map(({ name }) => name);
const W = GERMAN;

let pages: PanePages;
let page: Page;
beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());
beforeEach(async () => {
  await page?.close();
  page = await pages.open('?de');
  page.setDefaultTimeout(30_000);
  await page.evaluate(() => window.pane.port.select('Variants', 'E6'));
  await view('Figure').getByRole('heading', { name: 'A first choice' }).waitFor();
});

const view = (name: string) => page.locator(`#bw-view-${name}`);
const said = () => page.locator('.bw-said').textContent();
const german = async (name: string) => (await view(name).locator('[lang=de]').allTextContents()).map(words => words.trim());

async function opened(name: (typeof NAMES)[number]): Promise<void> {
  await page.getByRole('tab', { name: W.frame.names[name], exact: true }).press('Enter');
  await view(name).locator('h2').first().waitFor();
}

/** Sentences of the English table, each long enough to stand nowhere by chance. */
function sentences(table: object): string[] {
  return Object.values(table).flatMap((value: unknown) => {
    if (typeof value === 'string') return /\S+ \S+ \S+/.test(value) ? [value] : [];
    return typeof value === 'object' && value !== null ? sentences(value) : [];
  });
}

/** What is wider than the pane, or shown over its edge; and buttons whose text is cut. */
const cut = (): Promise<string[]> =>
  page.evaluate(() => {
    const over = [...document.querySelectorAll<HTMLElement>('main *')].filter(
      element =>
        element.offsetParent !== null &&
        element.closest('svg, .bw-drawing, .bw-scroll, .bw-unseen') === null &&
        (element.getBoundingClientRect().right > window.innerWidth + 0.5 ||
          (/^(BUTTON|SUMMARY|LABEL|H2|H3|LEGEND)$/.test(element.tagName) &&
            element.scrollWidth > element.clientWidth + 1 &&
            element.clientWidth > 0)),
    );
    return over.map(element => `${element.tagName} ${element.textContent?.slice(0, 60)}`);
  });

it('shows every view in German, with no fault of access and nothing cut in 320 px', async () => {
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
  const english = sentences(ENGLISH);
  expect(english.length).toBeGreaterThan(60);
  expect(await page.getByRole('tab').allTextContents()).toEqual(NAMES.map(name => W.frame.names[name]));
  let looked = 0;
  for (const name of NAMES) {
    await opened(name);
    if (name !== 'Functions')
      await view(name).evaluate(element => element.querySelectorAll('details').forEach(part => Object.assign(part, { open: true })));
    await expect.poll(() => view(name).innerText()).not.toBe('');
    const text = (await page.locator('#pane').innerText()).replaceAll(/\s+/g, ' ');
    expect([name, english.filter(sentence => text.includes(sentence))]).toEqual([name, []]);
    expect([name, await violations(page)]).toEqual([name, []]);
    for (const width of [600, 320]) {
      await page.setViewportSize({ width, height: 900 });
      await page.screenshot({ path: `dist/screenshots/german-${name}-${width}.png`, fullPage: true });
      expect([name, width, await cut()]).toEqual([name, width, []]);
    }
    looked++;
  }
  expect(looked).toBe(9);
});

/** Numbers with a point that are no sentence of a cell, no name of a standard and no working. */
const points = (name: string): Promise<string[]> =>
  view(name).evaluate(element => {
    const copy = element.cloneNode(true) as HTMLElement;
    copy.querySelectorAll('[lang=en], style, script, .bw-placed').forEach(one => one.remove());
    const texts = [...copy.querySelectorAll<Element>('text, tspan, td, th, dd, .bw-value, .bw-working, .bw-remedy, small, code, b')];
    return texts.map(one => one.textContent ?? '').filter(text => /^[^A-Za-z]*\d[.]\d|Ø\d+[.]\d|\d[.]\d+ ?(mm|d|%|°)/.test(text));
  });

it('writes numbers with the decimal sign of the host, in every view', async () => {
  await expect.poll(() => view('Figure').innerText()).toMatch(/\d,\d\d/);
  const seen: string[] = [];
  for (const name of ['Figure', 'Check', 'Table', 'Cell'] as const) {
    await opened(name);
    if (name === 'Check') await view(name).getByRole('button', { name: W.check.yield }).press('Enter');
    await view(name).evaluate(element => element.querySelectorAll('details').forEach(part => Object.assign(part, { open: true })));
    await expect.poll(() => view(name).innerText()).toMatch(/\d,\d/);
    seen.push(...(await points(name)).map(text => `${name}: ${text}`));
  }
  expect(seen).toEqual([]);
});

it('says states, rules and inputs in German beside the English', async () => {
  await expect.poll(() => german('Figure')).toContain('nicht erfüllt');
  expect(await view('Figure').innerText()).toContain('fail');
  await opened('Cell');
  await expect.poll(() => view('Cell').innerText()).toContain('Eingabe length von A first choice');
  expect(await view('Cell').innerText()).toContain('Nennlänge der Schraube');
  await opened('Table');
  await expect.poll(async () => (await german('Table')).length).toBeGreaterThan(12);
});

it('is worked by keys alone: a new table, its cell explained, and handed over', async () => {
  await page.evaluate(async () => {
    await window.pane.port.add({ name: 'Neu', widths: [], cells: [] });
    window.pane.port.select('Neu', 'C3');
  });
  await openView(page, W.frame.names.Table);
  await byKeysTo(page, /^Tabelle schreiben$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toBe('Die Tabelle steht in Neu!C3:L11');
  expect(await violations(page)).toEqual([]);
  await page.evaluate(() => window.pane.port.select('Variants', 'B6'));
  await byKeysTo(page, /^Vorschau der Formate$/);
  await page.keyboard.press('Enter');
  await byKeysTo(page, /^Diese Tabelle formatieren: /);
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await expect.poll(said).toContain('formatiert');
  await page.evaluate(async () => {
    await window.pane.port.write([{ sheetName: 'Neu', at: 'F4', content: 13 }]);
    window.pane.port.select('Neu', 'F4');
  });
  await openView(page, W.frame.names.Cell);
  await expect.poll(() => view('Cell').innerText()).toContain('Eingabe length von');
  expect(await violations(page)).toEqual([]);
  await byKeysTo(page, /^Anwenden: /);
  await page.keyboard.press('Enter');
  await expect.poll(said).toMatch(/^Angewendet: /);
  await byKeysTo(page, /^Zurücknehmen$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toMatch(/^Zurückgenommen/);
  await openView(page, W.frame.names['Hand-over']);
  await byKeysTo(page, /^Ansehen, was weitergegeben wird$/);
  await page.keyboard.press('Enter');
  await view('Hand-over').locator('.bw-answer').waitFor();
  // who works in German sends in German until another is chosen
  expect(await view('Hand-over').getByRole('combobox', { name: W.handOver.language }).inputValue()).toBe('German');
  expect(await violations(page)).toEqual([]);
  expect(await cut()).toEqual([]);
  await page.screenshot({ path: 'dist/screenshots/german-hand-over-320.png', fullPage: true });
  await byKeysTo(page, /^Kopie schreiben$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toMatch(/^Die Kopie ist als neue Arbeitsmappe geöffnet: [1-9]\d* Werte als Formeln, \d+ fest/);
  const copy = Buffer.from(await page.evaluate(() => window.pane.opened[0] ?? []));
  await openView(page, W.frame.names.Compare);
  await view('Compare').getByLabel(W.compare.returned).setInputFiles({ name: 'zurück.xlsx', mimeType: '', buffer: copy });
  await byKeysTo(page, /^Vergleichen$/);
  await page.keyboard.press('Enter');
  await view('Compare').locator('.bw-answer').waitFor();
  expect(await violations(page)).toEqual([]);
  expect(await cut()).toEqual([]);
});

it('says of a function what ABOUT says, in German as far as there are words, and leads to its German page', async () => {
  await opened('Functions');
  await view('Functions').locator('#bw-search').fill('PULLOUT');
  await view('Functions').locator('[data-id="PULLOUT"]').first().press('Enter');
  await view('Functions').locator('.bw-about summary').press('Enter');
  const about = view('Functions').locator('.bw-about');
  await expect.poll(() => about.innerText()).toContain('Quelle');
  expect(await about.locator('dd:not([lang])').allTextContents()).toEqual([
    expect.stringMatching(/muss angegeben sein/),
    expect.stringMatching(/^Handbuchformel: /),
    expect.stringMatching(/^Eine Kurzzeitschätzung/),
  ]);
  expect(await about.locator('a').getAttribute('href')).toBe('help/de/PULLOUT.html');
  expect(await violations(page)).toEqual([]);
});

it('says nothing in German elsewhere', async () => {
  const other = await pages.open();
  expect(await other.locator('[lang=de]').count()).toBe(0);
  expect(await other.evaluate(() => document.documentElement.lang)).toBe('en-GB');
  await other.close();
});
