// The help pages in a real browser: search by keyboard, accessibility, narrow screens, paper, and a folder without a server.
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { faults } from './axe';
import { benchPage, type BenchPage } from './bench-page';

const ENGLISH = ['index.html', 'topics/boss-and-wall.html', 'BOSS.WALL.html', 'SCREW.HEAD.DIAMETER.html', 'JOINT.TABLE.html'];
const SAMPLES = [...ENGLISH, ...ENGLISH.map(file => `de/${file}`)];

let bench: BenchPage;
let page: Page;

const open = (file: string) => page.goto(`${bench.origin}/help/${file}`);

beforeAll(async () => {
  bench = await benchPage();
  page = bench.page;
});

afterAll(async () => {
  await bench.close();
});

describe('search by keyboard', () => {
  const ask = async (words: string): Promise<string[]> => {
    await page.getByRole('searchbox').fill('');
    await page.getByRole('searchbox').pressSequentially(words);
    return page.locator('#found a').allTextContents();
  };

  test.each([
    ['standoff', 'BOSS.OD'],
    ['counterbore', 'RECESS.DEPTH'],
    ['which pilot hole for a 2.9 mm tapping screw in ABS', 'HOLE.PILOT'],
  ])('%s', async (words, id) => {
    await open('index.html');
    expect((await ask(words)).slice(0, 3)).toContain(id);
  });

  test('arrow keys walk, Enter opens, and an emptied field shows all again', async () => {
    await open('index.html');
    const [first, second] = await ask('draft offset height');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe(second);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await page.waitForURL(`**/help/${first}.html`);
    await open('index.html');
    await ask('draft');
    await page.getByRole('searchbox').fill('');
    expect(await page.locator('#all').isVisible()).toBe(true);
    expect(await page.locator('#found li').count()).toBe(0);
  });

  test('a word of nobody says what to try', async () => {
    await open('index.html');
    expect(await ask('elephant')).toEqual([]);
    expect(await bench.text('count')).toContain('Nothing has this word');
    expect(await bench.text('not-covered')).toBe('');
  });

  test('a word of what is not covered says so, and what to do instead', async () => {
    await open('index.html');
    await ask('weld line');
    expect(await bench.text('not-covered')).toMatch(/^Weld lines are not covered/);
  });
});

test('in German asks and answers in German, and leads to German pages', async () => {
  await open('de/index.html');
  await page.getByRole('searchbox').pressSequentially('Auszugskraft');
  expect(await bench.text('count')).toMatch(/^\d+ von 160 Funktionen$/);
  await page.keyboard.press('Enter');
  await page.waitForURL('**/help/de/PULLOUT.html');
  await page.getByRole('link', { name: 'English' }).press('Enter');
  await page.waitForURL('**/help/PULLOUT.html');
  await page.getByRole('link', { name: 'Deutsch' }).press('Enter');
  await page.waitForURL('**/help/de/PULLOUT.html');
});

test.each(ENGLISH.map(file => `de/${file}`))('%s cuts no letter of its drawing', async file => {
  await open(file);
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll('.drawing text')]
      .filter(text => {
        const [own, whole] = [text.getBoundingClientRect(), text.closest('svg')?.getBoundingClientRect()];
        return whole !== undefined && own.right > whole.right + 0.5;
      })
      .map(text => text.textContent),
  );
  expect(cut).toEqual([]);
});

describe.each(['light', 'dark'] as const)('%s', colorScheme => {
  beforeAll(() => page.emulateMedia({ colorScheme }));

  test.each(SAMPLES)('%s has no fault of access', async file => {
    await open(file);
    expect(await faults(page, { include: ['html'], exclude: [] })).toEqual([]);
  });
});

test.each(SAMPLES)('%s fits 320 px', async file => {
  await page.setViewportSize({ width: 320, height: 700 });
  await open(file);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  await page.setViewportSize({ width: 1200, height: 900 });
});

test('mathematics is laid out: a fraction is higher than its parts, a root and a choice are drawn', async () => {
  await open('BOSS.WALL.html');
  const [fraction, part] = await page.evaluate(() =>
    ['mfrac', 'mfrac > *'].map(selector => document.querySelector(selector)?.getBoundingClientRect().height ?? 0),
  );
  expect(part).toBeGreaterThan(0);
  expect(fraction).toBeGreaterThan(1.5 * (part ?? 0));
});

describe('decimal comma', () => {
  const shown = () => page.locator('#example .call').innerText();

  test('is switched by keyboard, kept on the next page, and what is copied reads as what is seen', async () => {
    await open('BOSS.WALL.html');
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    const button = page.getByRole('button', { name: 'Formulas with decimal comma' });
    const dot = await shown();
    expect(dot).toMatch(/\d\.\d/);
    await button.focus();
    await page.keyboard.press('Space');
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    const comma = await shown();
    expect(comma).toMatch(/\d,\d.*;/);
    expect(comma.replace(/"[^"]*"/g, '')).not.toMatch(/\d\.\d|, /);
    const copied = await page.evaluate(() => {
      const call = document.querySelector('#example .call') as HTMLElement;
      getSelection()?.selectAllChildren(call);
      return getSelection()?.toString();
    });
    expect(copied?.trim()).toBe(comma);
    await open('HOLE.AT.html');
    expect(await shown()).toMatch(/;/);
    await page.getByRole('button', { name: 'Formulas with decimal comma' }).click();
    expect(await shown()).not.toMatch(/;/);
  });

  test('comes by itself where the language has it', async () => {
    const context = await page.context().browser()?.newContext({ locale: 'de-DE' });
    const german = await context?.newPage();
    await german?.goto(`${bench.origin}/help/BOSS.WALL.html`);
    expect(await german?.locator('#example .call').innerText()).toMatch(/\d,\d.*;/);
    await context?.close();
  });
});

test('on paper a function takes a few pages', async () => {
  await open('BOSS.WALL.html');
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  expect(pages).toBeGreaterThan(0);
  expect(pages).toBeLessThanOrEqual(3);
});

test('a folder without a server does as well', async () => {
  const alone = await page.context().newPage();
  await alone.goto(pathToFileURL('dist/help/index.html').href);
  await alone.getByRole('searchbox').pressSequentially('standoff');
  await alone.keyboard.press('Enter');
  await alone.waitForURL(/BOSS\.[A-Z.]+html$/);
  expect(await alone.evaluate(() => getComputedStyle(document.body).maxWidth)).not.toBe('none');
  await alone.close();
});

test('nothing was asked of another origin, and nothing went wrong on the pages', () => {
  expect(bench.foreign.filter(address => !address.startsWith('file:'))).toEqual([]);
  expect(bench.faults).toEqual([]);
});
