// Nothing that is typed is lost: random walks of entries, undo, sheets, tabs, workbooks, reloads and a second tab, each held against
// what must then be there. WALKS says how many, WALK_SEED others.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Kept } from '../../src/bench/stored-format';
import { SEED } from '../kit/seed';
import { benchPage, type BenchPage } from './bench-page';

const walks = Number(process.env.WALKS ?? 3);
const stepsPerWalk = 6;
const grid = 'canvas[id^="univer-sheet-main-canvas"]';
const random = xoroshiro128plus(Number(process.env.WALK_SEED ?? SEED));
const below = (count: number): number => uniformInt(random, 0, count - 1);
const oneOf = <T>(all: readonly T[]): T => all[below(all.length)] as T;

/** What was typed, by `sheet!cell`; and the sheets in their order. */
interface Book {
  name: string;
  readonly sheets: string[];
  readonly cells: Map<string, string>;
}

interface Entry {
  readonly place: string;
  readonly before: string | undefined;
}

let bench: BenchPage;
let page: Page;
/** By name; the one that is open, and what can be undone in it. */
let shelf: Map<string, Book>;
let here: Book;
let undoable: Entry[];
let trail: string[];
const done: Record<string, number> = {};
let compared = 0;
let asked = 0;

beforeAll(async () => {
  bench = await benchPage();
  page = bench.page;
  await bench.open();
});

afterAll(async () => {
  expect(bench.faults).toEqual([]);
  await bench.close();
});

let number = 0;
/** No two are alike, so that one that is lost cannot hide behind another. */
const plain = (): string => {
  number++;
  return oneOf([`${number}.5`, `rib ${number}`]);
};
const text = (): string => {
  const content = plain();
  return oneOf([content, content, `=ENCL.LENGTH.MM("${number} mm")`, `=${number}+1`, `=SUM(F1:F${number})`]);
};
const place = (): string => `${oneOf(['A', 'B', 'C', 'D'])}${1 + below(12)}`;
const beneath = (at: string): string => `${at[0]}${Number(at.slice(1)) + 1}`;

function enter(sheetName: string, at: string, content: string): void {
  const key = `${sheetName}!${at}`;
  undoable.push({ place: key, before: here.cells.get(key) });
  here.cells.set(key, content);
}

const tabNamed = () => oneOf(['Cell', 'Figure', 'Functions', 'Table', 'Sheets', 'Check', 'Compare', 'About']);
const dialog = () => page.locator('#workbooks-dialog');

async function openList(): Promise<void> {
  await page.locator('#workbooks').click();
  await dialog().waitFor();
}

const nameShown = (name: string) => expect.poll(() => page.evaluate(openName), { timeout: 20_000 }).toBe(name);
/** The name of what was kept last by this tab. */
function openName(): string | undefined {
  const kept = localStorage.getItem(sessionStorage.getItem('bosswright.here') ?? '');
  return kept === null ? undefined : (JSON.parse(kept) as { workbook: { name: string } }).workbook.name;
}

function turnedTo(book: Book): void {
  shelf.set(book.name, book);
  here = book;
  undoable = [];
}

async function isReady(): Promise<void> {
  await page.waitForFunction(() => window.bosswright !== undefined && document.querySelector('#sheet canvas') !== null);
}

/** Loads the page anew; true where the browser asked, and the user stayed. */
async function reload(stays: boolean): Promise<boolean> {
  let isAsked = false;
  const answer = (question: { dismiss(): Promise<void>; accept(): Promise<void> }) => {
    isAsked = true;
    asked++;
    void (stays ? question.dismiss() : question.accept());
  };
  page.on('dialog', answer);
  await page.evaluate(() => {
    Object.assign(window, { isOld: true });
    setTimeout(() => location.reload());
  });
  await expect
    .poll(async () => (stays && isAsked) || page.evaluate(() => !('isOld' in window)).catch(() => false), { timeout: 30_000 })
    .toBe(true);
  page.off('dialog', answer);
  if (isAsked && stays) return true;
  await isReady();
  undoable = [];
  return false;
}

async function reloadAll(): Promise<void> {
  while (await reload(true)) await page.keyboard.press('Enter');
}

async function type(last: 'Enter' | '', content = text()): Promise<{ sheetName: string; at: string; content: string }> {
  const sheetName = oneOf(here.sheets);
  let at = place();
  await bench.goTo(sheetName, at);
  for (let more = below(3); more > 0; more--) {
    const above = text();
    await page.keyboard.type(above, { delay: 15 });
    await page.keyboard.press('Enter');
    enter(sheetName, at, above);
    at = beneath(at);
  }
  await page.keyboard.type(content, { delay: 15 });
  if (last === 'Enter') {
    await page.keyboard.press('Enter');
    enter(sheetName, at, content);
  }
  return { sheetName, at, content };
}

/** Half of the time while an entry is open: leaving takes it in. */
async function perhapsTyping(): Promise<void> {
  if (below(2) === 0) return;
  const { sheetName, at, content } = await type('');
  enter(sheetName, at, content);
}

const STEPS: Readonly<Record<string, () => Promise<void>>> = {
  type: async () => void (await type('Enter')),
  async undo() {
    const last = undoable.pop();
    if (last === undefined) return void (await type('Enter'));
    await page.keyboard.press('Control+z');
    if (last.before === undefined) here.cells.delete(last.place);
    else here.cells.set(last.place, last.before);
  },
  async 'another sheet'() {
    await page.locator('[data-u-comp="sheet-bar-append-button"]').first().click();
    await expect.poll(async () => (await page.evaluate(() => window.bosswright?.port.sheetNames()))?.length).toBe(here.sheets.length + 1);
    const names = (await page.evaluate(() => window.bosswright?.port.sheetNames())) ?? [];
    here.sheets.splice(0, Infinity, ...names);
    undoable = [];
  },
  async 'side tab'() {
    await bench.tab(tabNamed());
  },
  async 'side tab while typing'() {
    const { sheetName, at, content } = await type('', plain());
    await bench.tab(tabNamed());
    await page.locator(grid).click({ position: { x: 500, y: 400 } });
    enter(sheetName, at, content);
  },
  async 'new workbook'() {
    await perhapsTyping();
    await openList();
    await dialog().getByRole('button', { name: 'Empty workbook' }).press('Enter');
    let name = 'New part';
    for (let next = 2; shelf.has(name); next++) name = `New part ${next}`;
    await nameShown(name);
    turnedTo({ name, sheets: ['Sheet1'], cells: new Map() });
  },
  async 'open another'() {
    const others = [...shelf.values()].filter(book => book !== here);
    if (others.length === 0) return STEPS['new workbook']?.();
    const other = oneOf(others);
    await perhapsTyping();
    await openList();
    await dialog().locator('#kept-list').getByRole('button', { name: other.name, exact: true }).press('Enter');
    await nameShown(other.name);
    turnedTo(other);
    await expect.poll(() => bench.text('kept')).toContain('as saved in this browser');
  },
  async rename() {
    await openList();
    await page.keyboard.press('Control+a');
    number++;
    const name = `Housing ${number}`;
    await page.keyboard.type(name);
    await page.keyboard.press('Enter');
    shelf.delete(here.name);
    here.name = name;
    shelf.set(name, here);
  },
  async 'reload at once'() {
    await type('Enter');
    await reloadAll();
  },
  async 'reload while typing'() {
    const { sheetName, at, content } = await type('');
    const stays = below(2) === 0;
    const before = asked;
    const isHere = await reload(stays);
    expect(asked, 'the browser asks while an entry is open').toBe(before + 1);
    if (!isHere) return;
    await page.keyboard.press('Enter');
    enter(sheetName, at, content);
  },
  async 'second tab'() {
    await reloadAll();
    const other = await page.context().newPage();
    await other.goto(`${bench.origin}/bench.html`);
    await other.waitForFunction(() => window.bosswright !== undefined && document.querySelector('#sheet canvas') !== null);
    const name = await other.evaluate(openName);
    const book = shelf.get(name ?? '');
    if (book === undefined) throw new Error(`the second tab has ${name}`);
    const sheetName = (await other.evaluate(async () => (await window.bosswright?.port.selection())?.sheetName)) ?? '';
    const at = (await other.evaluate(async () => (await window.bosswright?.port.selection())?.at)) ?? '';
    const content = text();
    await other.locator(grid).click({ position: { x: 90, y: 200 } });
    const clicked = (await other.evaluate(async () => (await window.bosswright?.port.selection())?.at)) ?? at;
    await other.keyboard.type(content, { delay: 15 });
    await other.keyboard.press('Enter');
    await other.close({ runBeforeUnload: true });
    await expect.poll(() => page.context().pages().length).toBe(1);
    const key = `${sheetName}!${clicked}`;
    if (book !== here) return void book.cells.set(key, content);
    await expect.poll(() => page.locator('#notices').innerText()).toContain('changed in another tab');
    const keeps = below(2) === 0;
    await page
      .locator('#notices')
      .getByRole('button', { name: keeps ? 'Keep this one' : 'Open the other' })
      .press('Enter');
    await expect.poll(() => page.locator('#notices').innerText()).toBe('');
    undoable = [];
    if (!keeps) book.cells.set(key, content);
  },
};
const KINDS = Object.keys(STEPS);
/** With so many of these a walk begins, so that a few walks go everywhere. */
const inTurn = 2;
const CHOICES = Object.entries({
  type: 5,
  undo: 2,
  'another sheet': 1,
  'side tab': 1,
  'side tab while typing': 1,
  'new workbook': 1,
  'open another': 2,
  rename: 1,
  'reload at once': 3,
  'reload while typing': 1,
  'second tab': 1,
}).flatMap(([name, weight]) => Array.from({ length: weight }, () => name));

/** Formulas and values that are kept, by `sheet!cell`. */
function cellsOf({ workbook }: Kept): Record<string, string> {
  const found: Record<string, string> = {};
  for (const { name = '', cellData = {} } of Object.values(workbook.sheets))
    for (const [row, columns] of Object.entries(cellData))
      for (const [column, cell] of Object.entries(columns ?? {})) {
        const content = (cell as { f?: string; v?: string | number } | null)?.f ?? (cell as { v?: string | number } | null)?.v ?? '';
        if (content !== '') found[`${name}!${String.fromCharCode(65 + Number(column))}${Number(row) + 1}`] = String(content);
      }
  return found;
}

async function everythingIsThere(): Promise<void> {
  await reloadAll();
  const kept = (await page.evaluate(() =>
    Object.keys(localStorage)
      .filter(key => /^bosswright\.workbook(\.\d+)?$/.test(key))
      .map(key => JSON.parse(localStorage.getItem(key) ?? '') as unknown),
  )) as Kept[];
  expect(kept.map(({ workbook }) => workbook.name).sort()).toEqual([...shelf.keys()].sort());
  for (const each of kept) {
    const book = shelf.get(each.workbook.name);
    expect(cellsOf(each), each.workbook.name).toEqual(Object.fromEntries(book?.cells ?? []));
    compared += book?.cells.size ?? 0;
  }
  // What is open shows the same.
  for (const sheetName of here.sheets) {
    const rows = await bench.read(sheetName);
    for (const [key, content] of here.cells) {
      const [sheet, at = ''] = key.split('!');
      if (sheet !== sheetName) continue;
      const cell = rows[Number(at.slice(1)) - 1]?.[at.charCodeAt(0) - 65];
      expect(String(cell?.formula ?? cell?.value), key).toBe(content);
    }
  }
}

/** Each begins in an empty workbook, the only one. */
async function begin(): Promise<void> {
  const before = await page.evaluate(() => {
    const key = sessionStorage.getItem('bosswright.here') ?? '';
    return localStorage.getItem(key) === null ? '' : key;
  });
  await openList();
  await dialog().getByRole('button', { name: 'Empty workbook' }).press('Enter');
  await page.waitForFunction(old => {
    const key = sessionStorage.getItem('bosswright.here') ?? '';
    return key !== old && localStorage.getItem(key) !== null;
  }, before);
  await page.evaluate(() => {
    const key = sessionStorage.getItem('bosswright.here');
    for (const each of Object.keys(localStorage)) if (each.startsWith('bosswright.workbook') && each !== key) localStorage.removeItem(each);
  });
  shelf = new Map();
  trail = [];
  turnedTo({ name: (await page.evaluate(openName)) ?? '', sheets: ['Sheet1'], cells: new Map() });
}

test.each(Array.from({ length: walks }, (_, walk) => walk + 1))('walk %i', { timeout: 240_000 }, async walk => {
  await begin();
  try {
    for (let step = 0; step < stepsPerWalk; step++) {
      const name = step < inTurn ? (KINDS[(walk * inTurn + step) % KINDS.length] ?? '') : oneOf(CHOICES);
      trail.push(name);
      done[name] = (done[name] ?? 0) + 1;
      await STEPS[name]?.();
    }
    await everythingIsThere();
  } catch (thrown) {
    console.log('the walk:', trail.join(', '));
    await bench.picture('walk');
    throw thrown;
  }
});

test('the walks went everywhere, and entries were compared', () => {
  console.log(`${walks} walks, ${compared} entries compared, ${asked} times asked before leaving:`, done);
  expect(Object.keys(done).length).toBeGreaterThanOrEqual(Math.min(KINDS.length, walks * inTurn));
  expect(compared).toBeGreaterThan(walks * 2);
});
