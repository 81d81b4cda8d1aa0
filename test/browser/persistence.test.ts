// What this browser keeps: two tabs, workbooks that cannot be opened, earlier and later forms, a store that is truly full.
// Nothing is overwritten without a word.
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { benchPage, type BenchPage } from './bench-page';

const KEY = 'bosswright.workbook';
const ASIDE = 'bosswright.workbook.unreadable';

let bench: BenchPage;
/** A workbook as the bench itself has kept it. */
let good: string;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  await write(bench.page, 'E6', 16);
  await bench.page.getByText('Saved in this browser').waitFor();
  good = (await stored()) ?? '';
});

beforeEach(async () => {
  // Opened anew below: the page must not ask about what an earlier test left.
  await bench.page.goto('about:blank').catch(() => undefined);
  await bench.page.goto(`${bench.origin}/help/index.html`);
  await bench.page.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
});

afterAll(async () => {
  await bench.close();
});

const write = (page: Page, at: string, value: number) =>
  page.evaluate(([cell, content]) => window.bosswright?.port.write([{ sheetName: 'Variants', at: cell, content }]), [at, value] as const);
const stored = (key = KEY) => bench.page.evaluate(each => localStorage.getItem(each), key);
const put = (text: string, key = KEY) =>
  bench.page.evaluate(([each, content]) => localStorage.setItem(each, content), [key, text] as const);
const valueAt = async (page: Page, row: number, column: number) =>
  page.evaluate(async ([r, c]) => (await window.bosswright?.port.read('Variants'))?.[r]?.[c]?.value, [row - 1, column] as const);
const E = 4;
const kept = (page: Page) => page.locator('#kept').textContent();
const notices = (page: Page = bench.page) => page.locator('#notices').innerText();
const press = (name: string, page: Page = bench.page) => page.locator('#notices').getByRole('button', { name }).first().press('Enter');
const isKept = (page: Page = bench.page) => expect.poll(() => kept(page)).toMatch(/^Saved in this browser \d\d:\d\d$/);

async function saved(button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([bench.page.waitForEvent('download'), press(button)]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

async function discard(): Promise<void> {
  await press('Discard it…');
  await bench.page.locator('dialog[open]').getByRole('button', { name: 'Discard it' }).press('Enter');
}

/** Whether leaving asks; it is left all the same. */
async function asksOnLeaving(page: Page): Promise<boolean> {
  let asked = false;
  page.once('dialog', question => {
    asked = question.type() === 'beforeunload';
    void question.accept();
  });
  await page.goto(`${bench.origin}/help/index.html`);
  return asked;
}

/** Begins a workbook from the list, by keyboard. */
async function begin(title: string): Promise<void> {
  await bench.page.locator('#workbooks').press('Enter');
  await bench.page.locator('#workbooks-dialog').getByRole('button', { name: title }).first().press('Enter');
}

async function otherTab(): Promise<Page> {
  const other = await bench.page.context().newPage();
  await other.goto(`${bench.origin}/bench.html`);
  await other.waitForFunction(() => window.bosswright !== undefined);
  return other;
}

test('two tabs: the older one says so, stops saving, and the user chooses', async () => {
  await put(good);
  await bench.open();
  const other = await otherTab();
  await write(other, 'E6', 19);
  await isKept(other);
  const newer = await stored();
  await expect.poll(() => notices()).toContain('The workbook was changed in another tab of this browser.');
  // Typed by hand in the older tab: it stays there, and nothing of it goes into the store.
  await bench.goTo('Variants', 'E7');
  await bench.type('13');
  await expect.poll(() => kept(bench.page)).toContain('Not kept in this browser');
  await bench.picture('two-tabs');
  expect(await stored()).toBe(newer);
  expect(await valueAt(bench.page, 7, E)).toBe(13);
  await press('Keep this one, discard the other');
  await isKept();
  expect(await notices()).toBe('');
  expect(JSON.parse((await stored()) ?? '')).toMatchObject({ format: 2 });
  // Now it is the other that is older.
  await expect.poll(() => notices(other)).toContain('changed in another tab');
  await press('Open the other, discard this one', other);
  await expect.poll(() => valueAt(other, 7, E)).toBe(13);
  expect(await valueAt(other, 6, E)).toBe(16);
  expect(await notices(other)).toBe('');
  await write(other, 'E8', 22);
  await isKept(other);
  await expect.poll(() => notices()).toContain('changed in another tab');
  await other.close();
});

test('an older tab that is left asks first, and overwrites nothing', async () => {
  await put(good);
  await bench.open();
  const other = await otherTab();
  await write(other, 'E6', 19);
  await isKept(other);
  const newer = await stored();
  await expect.poll(() => notices()).toContain('another tab');
  await bench.goTo('Variants', 'E7');
  await bench.type('13');
  expect(await asksOnLeaving(bench.page)).toBe(true);
  expect(await stored()).toBe(newer);
  await other.close();
});

test('two tabs with the untouched demo: the first change in one is not discarded by the other', async () => {
  await bench.open();
  const other = await otherTab();
  await write(other, 'E6', 19);
  await isKept(other);
  const newer = await stored();
  await expect.poll(() => notices()).toContain('another tab');
  await begin('Greenhouse humidity logger');
  await expect.poll(() => notices()).toBe('');
  expect(await stored()).toBe(newer);
  await other.close();
});

test("a workbook of form 1 is opened as it was, and kept in today's form", async () => {
  const { format: _format, keptAt: _keptAt, ...rest } = JSON.parse(good) as Record<string, unknown>;
  await put(JSON.stringify({ format: 1, ...rest }));
  await bench.open();
  expect(await kept(bench.page)).toContain('Your workbook, as saved in this browser');
  expect(await valueAt(bench.page, 6, E)).toBe(16);
  await write(bench.page, 'E7', 13);
  await isKept();
  expect(JSON.parse((await stored()) ?? '')).toMatchObject({ format: 2 });
});

test('a workbook of a newer page is left as it is, with words', async () => {
  const newer = JSON.stringify({ format: 3, of: 'tomorrow' });
  await put(newer);
  await bench.open();
  expect(await notices()).toContain('saved by a newer version of this page');
  await write(bench.page, 'E7', 13);
  await expect.poll(() => kept(bench.page)).toContain('Not kept in this browser');
  await bench.picture('newer');
  expect(await stored()).toBe(newer);
  expect(await saved('Save it as a file')).toEqual({ name: 'kept workbook.json', text: newer });
  expect(await asksOnLeaving(bench.page)).toBe(true);
  expect(await stored()).toBe(newer);
  await bench.open();
  await write(bench.page, 'E7', 13);
  await discard();
  await isKept();
  expect(await notices()).toBe('');
});

test('what was put aside can be saved and discarded, and a second one does not touch the first', async () => {
  for (const precious of ['FIRST precious', 'SECOND']) {
    await bench.page.goto(`${bench.origin}/help/index.html`);
    await put(precious);
    await bench.open();
    expect(await kept(bench.page)).toContain('could not be opened (its text is cut or mixed up) and was put aside. This is the demo.');
  }
  expect([await stored(), await stored(ASIDE), await stored(`${ASIDE}.2`)]).toEqual([null, 'FIRST precious', 'SECOND']);
  await bench.picture('put-aside');
  expect(await saved('Save what was put aside')).toEqual({ name: 'put aside 1.json', text: 'FIRST precious' });
  await discard();
  await expect.poll(async () => [await stored(ASIDE), await stored(`${ASIDE}.2`)]).toEqual([null, 'SECOND']);
  await bench.open();
  expect(await saved('Save what was put aside')).toEqual({ name: 'put aside 1.json', text: 'SECOND' });
});

type Damage = (workbook: { id: unknown; sheetOrder: string[]; sheets: Record<string, Record<string, unknown>> }) => void;
test.each<[string, Damage, string]>([
  [
    'a sheet that is empty data',
    ({ sheetOrder, sheets }) => {
      sheets[sheetOrder[0] ?? ''] = {};
    },
    'a sheet is not there',
  ],
  [
    'an id that is no text',
    workbook => {
      workbook.id = 5;
    },
    'it is no workbook of this page',
  ],
  [
    'a thousand million rows',
    ({ sheetOrder, sheets }) => {
      Object.assign(sheets[sheetOrder[1] ?? ''] ?? {}, { rowCount: 1e9 });
    },
    '1000000000 rows',
  ],
  [
    'a merged range without end',
    ({ sheetOrder, sheets }) => {
      Object.assign(sheets[sheetOrder[1] ?? ''] ?? {}, { mergeData: [{ startRow: 0, startColumn: 0, endRow: 1e9, endColumn: 3 }] });
    },
    'a range that no sheet holds',
  ],
  [
    'two sheets of one name',
    ({ sheetOrder, sheets }) => {
      Object.assign(sheets[sheetOrder[1] ?? ''] ?? {}, { name: 'Variants' });
    },
    '',
  ],
])('%s is put aside with words and not half opened', async (what, damage, why) => {
  const data = JSON.parse(good) as { workbook: Parameters<Damage>[0] };
  damage(data.workbook);
  const text = JSON.stringify(data);
  await put(text);
  await bench.open();
  const words = await kept(bench.page);
  console.log(what, '–', words, await bench.page.evaluate(() => window.bosswright?.port.sheetNames()));
  expect(words).toContain('could not be opened');
  expect(words).toContain(why);
  expect(await stored(ASIDE)).toBe(text);
  // The demo works: its functions have their help too.
  expect(await valueAt(bench.page, 6, E)).toBe(13);
  await write(bench.page, 'E6', 19);
  await isKept();
});

test('the largest sheet that a program has is opened', async () => {
  const data = JSON.parse(good) as { workbook: Parameters<Damage>[0] };
  Object.assign(data.workbook.sheets[data.workbook.sheetOrder[0] ?? ''] ?? {}, { rowCount: 1_048_576, columnCount: 16_384 });
  await put(JSON.stringify(data));
  await bench.open();
  expect(await kept(bench.page)).toContain('Your workbook, as saved in this browser');
  expect(await valueAt(bench.page, 6, E)).toBe(16);
});

/** To the last few characters, by pieces of half the size each. */
const fill = () =>
  bench.page.evaluate(() => {
    for (let length = 2 ** 22; length >= 1; length /= 2) {
      try {
        localStorage.setItem(`filler${length}`, 'x'.repeat(length));
      } catch {
        // A smaller piece may fit.
      }
    }
  });
const makeRoom = () =>
  bench.page.evaluate(() =>
    Object.keys(localStorage)
      .filter(key => key.startsWith('filler'))
      .forEach(key => localStorage.removeItem(key)),
  );

test('a damaged workbook in a full store is left where it is, with words', async () => {
  await put('damaged but dear');
  await fill();
  await bench.open();
  expect(await notices()).toContain('this browser has no room to put it aside. It is left as it is');
  await bench.picture('no-room');
  expect(await stored()).toBe('damaged but dear');
  await write(bench.page, 'E6', 19);
  await expect.poll(() => kept(bench.page)).toContain('Not kept in this browser');
  expect(await stored()).toBe('damaged but dear');
  expect((await saved('Save it as a file')).text).toBe('damaged but dear');
});

test('after a full store, leaving tries again: nothing is asked once there is room, and the entry is kept', async () => {
  await bench.open();
  await fill();
  await write(bench.page, 'E6', 19);
  await expect
    .poll(() => kept(bench.page))
    .toBe('Not kept in this browser (QuotaExceededError): use Save as .xlsx, or discard another workbook');
  await bench.picture('full-store');
  await makeRoom();
  expect(await asksOnLeaving(bench.page)).toBe(false);
  await bench.open();
  expect(await valueAt(bench.page, 6, E)).toBe(19);
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
