// What is typed is what is stored: names that begin other names, typed fast on a slow machine, with Enter at once.
import { ALL_IMPLEMENTED_FUNCTIONS } from '@univerjs/preset-sheets-core';
import type { CDPSession } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { METADATA } from '../../src/tools/metadata';
import { benchPage, type BenchPage } from './bench-page';

/** How many times slower the page runs while it is typed into. */
const SLOWER = 2;
/** The engine makes its list this long after the last key. */
const LIST_MS = 300;

const SPEEDS = [5, 30, 60];
/** Each name at each speed takes long: else the names of the spreadsheet take turns, each at one of them. */
const isEvery = process.env['TYPED'] === 'every';

const all = [
  ...new Set([...METADATA.functions.map(({ id }) => `ENCL.${id}`), ...ALL_IMPLEMENTED_FUNCTIONS.map(([, name]) => String(name))]),
];
const beginnings = all.filter(name => all.some(other => other !== name && other.startsWith(name)));

let bench: BenchPage;
let devtools: CDPSession;
let sheet: string;
let row = 1;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  devtools = await bench.page.context().newCDPSession(bench.page);
  // The last cell of the plan makes room for all entries.
  sheet = await bench.add({
    name: 'Typing',
    widths: [],
    cells: [{ at: `A${SPEEDS.length * beginnings.length}`, role: 'text', value: 'end' }],
  });
});

afterAll(async () => {
  await bench.close();
});

const sleep = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));
const slower = (rate: number) => devtools.send('Emulation.setCPUThrottlingRate', { rate });
const list = () => bench.page.locator('[data-u-comp="sheets-formula-editor"]');
const formulaIn = async (at: string) => (await bench.cell(sheet, at))?.formula;

/** As fingers do: a key does not wait until the page has done with the one before. */
async function keys(text: string, msPerKey: number): Promise<void> {
  const pressed: Promise<void>[] = [];
  for (const key of text) {
    pressed.push(bench.page.keyboard.press(key === '\n' ? 'Enter' : key));
    await sleep(msPerKey);
  }
  await Promise.all(pressed);
}

const selected = () => bench.page.evaluate(async () => (await window.bosswright?.port.selection())?.at);

/** Types into free cells of column B, one below the other; answers what each entry became, where that is not what was typed. */
async function typedBelow(entries: readonly string[], type: (entry: string) => Promise<void>): Promise<string[]> {
  const first = row + 1;
  await bench.goTo(sheet, `B${first}`);
  for (const entry of entries) {
    await type(entry);
    row++;
    // Enter ends the entry and goes on; the next one is typed there.
    await expect.poll(selected, { timeout: 20_000, interval: 20, message: entry }).toBe(`B${row + 1}`);
  }
  const stored = (await bench.read(sheet)).slice(first - 1, first - 1 + entries.length).map(line => line[1]?.formula);
  expect(stored).toHaveLength(entries.length);
  return entries.flatMap((entry, i) => (stored[i] === entry ? [] : [`${entry} became ${stored[i]}`]));
}

test('the names that begin others are known', () => {
  expect(beginnings).toEqual(expect.arrayContaining(['ENCL.ENGAGEMENT', 'ENCL.PULLOUT', 'ENCL.BOSS.OD', 'CHOOSE', 'T']));
  expect(beginnings.length).toBeGreaterThan(100);
});

/** Of the names of the host one in so many has its turn; `TYPED=every` types all at every speed. */
const HOST_SHARE = 4;

const inTurn = SPEEDS.map((msPerKey, turn) => ({
  msPerKey,
  names: beginnings.filter((name, i) => isEvery || name.startsWith('ENCL.') || i % (SPEEDS.length * HOST_SHARE) === turn),
}));

test('each name of ours has its turn at each speed, and some of the host', () => {
  const ours = beginnings.filter(name => name.startsWith('ENCL.'));
  for (const { names } of inTurn) {
    expect(names).toEqual(expect.arrayContaining(ours));
    expect(names.length).toBeGreaterThan(ours.length + 5);
  }
});

test.each(inTurn)(
  'names that begin others are stored as typed, at $msPerKey ms a key',
  { timeout: 1_200_000 },
  async ({ msPerKey, names }) => {
    await slower(SLOWER);
    const start = performance.now();
    expect(
      await typedBelow(
        names.map(name => `=${name}(1)`),
        entry => keys(`${entry}\n`, msPerKey),
      ),
    ).toEqual([]);
    await slower(1);
    console.log(`${names.length} names at ${msPerKey} ms a key: ${((performance.now() - start) / 1000).toFixed(0)} s`);
  },
);

test.each([
  ['ENCL.ENGAGEMENT', '(16,4.1,0.8,2.6)'],
  ['ENCL.PULLOUT', '(760,B10,2.5,3)'],
  ['CHOOSE', '(2,3,4)'],
  ['T', '(B1)'],
  ['ENCL.BOSS.OD', '(3,1.2)'],
])('after a pause in which the list comes, %s%s is stored as typed', async (name, rest) => {
  expect(
    await typedBelow([`=${name}${rest}`], async () => {
      await keys(`=${name}`, 20);
      await list().waitFor();
      await keys(`${rest}\n`, 5);
    }),
  ).toEqual([]);
});

test('a whole name is the first of its list, whatever was marked in the list before', async () => {
  expect(
    await typedBelow(['=ENCL.PULLOUT.SEAT(1)', '=T(1)'], async entry => {
      const [name = '', rest] = entry.split(/(?=\()/);
      await keys(entry.startsWith('=T') ? name : '=ENCL.PULLOUT', 20);
      await list().waitFor();
      if (!entry.startsWith('=T')) for (const _ of '..') await bench.page.keyboard.press('ArrowDown');
      await bench.page.keyboard.press('Enter');
      await list().waitFor({ state: 'detached' });
      // The engine puts the caret behind the name a moment after it took it.
      await sleep(LIST_MS);
      await keys(`${rest?.slice(1)}\n`, 20);
    }),
  ).toEqual([]);
});

test.each([
  ['ArrowDown', 'Enter', '=ENCL.ENGAGEMENT.LIMITS('],
  ['ArrowDown', 'Tab', '=ENCL.ENGAGEMENT.LIMITS('],
  ['', 'Tab', '=ENCL.ENGAGEMENT('],
])('a suggestion is taken on purpose: %s %s', async (move, take, name) => {
  row++;
  await bench.goTo(sheet, `B${row}`);
  await keys('=encl.engag', 20);
  await list().waitFor();
  await bench.picture('suggestions');
  if (move !== '') await bench.page.keyboard.press(move);
  await bench.page.keyboard.press(take);
  await list().waitFor({ state: 'detached' });
  await sleep(LIST_MS);
  await keys('1,2)\n', 20);
  await expect.poll(() => formulaIn(`B${row}`)).toBe(`${name}1,2)`);
});

test('one more letter of the same name may follow before it is taken', async () => {
  row++;
  await bench.goTo(sheet, `B${row}`);
  await keys('=encl.eng', 20);
  await list().waitFor();
  await keys('ag', 5);
  await bench.page.keyboard.press('Tab');
  await list().waitFor({ state: 'detached' });
  await sleep(LIST_MS);
  await keys('1)\n', 20);
  await expect.poll(() => formulaIn(`B${row}`)).toBe('=ENCL.ENGAGEMENT(1)');
});

test('a mark below the end of a list that became shorter takes nothing, and the next cell is reached by the name box at once', async () => {
  row++;
  await bench.goTo(sheet, `B${row}`);
  await keys('=encl.b', 20);
  await list().waitFor();
  for (const _ of '......') await bench.page.keyboard.press('ArrowDown');
  await keys('oss.od', 20);
  await expect.poll(() => list().locator('li').count()).toBe(2);
  await keys('(3,1.2)\n', 5);
  await bench.goTo(sheet, 'D11');
  expect(await formulaIn(`B${row}`)).toBe('=ENCL.BOSS.OD(3,1.2)');
});

test.each([
  ['=SUMIF', 'Adds the cells specified by a given criteria'],
  ['=ENCL.LENGTH.M', 'Length in mm'],
])('the list says what %s does', async (name, says) => {
  await bench.goTo(sheet, `C${row}`);
  await keys(name, 20);
  await list().waitFor();
  await expect.poll(() => list().innerText()).toContain(says);
  await bench.page.keyboard.press('Escape');
  await bench.page.keyboard.press('Escape');
});

test('an answer that comes when its formula was undone or typed over is not written', async () => {
  // What the function is loaded from is held back until then.
  let held = 0;
  let release = (): void => undefined;
  const isReleased = new Promise<void>(resolve => {
    release = resolve;
  });
  await bench.page.route('**/chunks/*.js', async route => {
    held++;
    await isReleased;
    await route.continue();
  });
  const [over, undone] = [++row, ++row];
  await bench.goTo(sheet, `B${over}`);
  for (let both = 0; both < 2; both++) await keys('=ENCL.JOINT.SIMULATE(A1:B2,"engagement")\n', 20);
  await expect.poll(() => held).toBeGreaterThan(0);
  await bench.page.keyboard.press('Control+z');
  await bench.goTo(sheet, `B${over}`);
  await keys('7\n', 20);
  await sleep(LIST_MS);
  release();
  await sleep(2000);
  await bench.page.unroute('**/chunks/*.js');
  const rows = await bench.read(sheet);
  expect([over, undone].map(at => [rows[at - 1]?.[1]?.value ?? null, rows[at - 1]?.[1]?.formula])).toEqual([
    [7, undefined],
    [null, undefined],
  ]);
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
