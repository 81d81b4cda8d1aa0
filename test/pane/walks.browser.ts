// Random walks through the pane in a made-up Excel: moves, edits, views, a pane that is hidden and shown, insertions and what takes them
// back, while Excel calculates fast, slowly or not at all. WALKS says how many, WALK_SEED others.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Selection } from '../../src/sheet/port';
import { inSigns } from '../../src/sheet/signs';
import { SEED } from '../kit/seed';
import type {} from './excel-harness';
import { type PanePages, panePages } from './open-pane';

const walks = Number(process.env['WALKS'] ?? 2);
const stepsPerWalk = 9;
const random = xoroshiro128plus(Number(process.env['WALK_SEED'] ?? SEED));
const below = (count: number): number => uniformInt(random, 0, count - 1);
const oneOf = <T>(all: readonly T[]): T => all[below(all.length)] as T;

/** A moment in which nothing is asked of Excel. */
const QUIET_MS = 50;
/** Longer than the pane waits for cells to come to rest. */
const RESTED_MS = 320;
/** What a move inside a sheet may cost. */
const MOST_EXCHANGES = 1;

let pages: PanePages;
let page: Page;
let faults: string[];
let trail: string[];
let isSeen: boolean;
let decimal: '.' | ',';
const done: Record<string, number> = {};
const counted = { moves: 0, dearest: 0, inserted: 0, asked: 0, refused: 0, takenBack: 0, unseen: 0 };

beforeAll(async () => {
  pages = await panePages('excel-harness');
});
afterAll(() => pages.close());

const syncs = (): Promise<number> => page.evaluate(() => window.excel.fake.syncs);
const contents = (): Promise<Record<string, string>> => page.evaluate(() => window.excel.contents());
const active = () => page.evaluate(() => window.excel.fake.active);
const said = () => page.locator('.bw-said').innerText();

/** Until nothing has been asked of Excel for a while. */
async function quiet(ms = QUIET_MS): Promise<void> {
  for (let before = -1, now = await syncs(); before !== now; before = now, now = await syncs()) await page.waitForTimeout(ms);
}

/** Views that show what stands round the cell, or read it for their forms. */
const FOLLOWING = ['Figure', 'Functions', 'Cell', 'Check'];
const SHEETS = ['Joint', 'Variants', 'Parts', 'Large', 'Large'];
const cellOn = (sheetName: string): string => {
  if (sheetName === 'Large') return `${oneOf(['A', 'C', 'AB', 'AX'])}${1 + below(2000)}`;
  return `${oneOf(['A', 'B', 'C', 'E', 'H'])}${1 + below(sheetName === 'Parts' ? 8 : 20)}`;
};

async function moveTo({ sheetName, at }: Selection): Promise<void> {
  await page.evaluate(
    async ([sheet = '', cell = '']) => {
      const { fake } = window.excel;
      const isOther = fake.active.sheetName !== sheet;
      fake.active = { sheetName: sheet, at: cell };
      if (isOther) await fake.fire('activated');
      await fake.fire('selection', cell);
    },
    [sheetName, at],
  );
}

const tab = (name: string) => page.getByRole('tab', { name, exact: true }).click();

/** Cells in which something else stands than before, with what stood there. */
const changedIn = (before: Readonly<Record<string, string>>, after: Readonly<Record<string, string>>): string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(key => before[key] !== after[key]);

/** Functions with arguments; the second fills a row. */
const CALLS = [
  { id: 'BOSS.OD', fields: ['hole (mm)', 'wall (mm)'], values: () => [oneOf(['3', 'ST2.9 75 %', '=B2']), oneOf(['1.2', '=C2'])] },
  { id: 'GRIP.LIMITS', fields: ['layers (mm)', 'tolerances (mm)'], values: () => [oneOf(['2.5;1.6', '=B2:B3']), '0.1'] },
  { id: 'WALL.FEATURE', fields: ['wall (mm)'], values: () => [oneOf(['2.5', '=C3'])] },
] as const;

async function insert(): Promise<void> {
  const place = oneOf(['Parts', 'Parts', 'Joint']);
  await moveTo({ sheetName: place, at: cellOn(place) });
  await quiet();
  await tab('Functions');
  const all = page.getByRole('button', { name: 'All functions' });
  if (await all.isVisible()) await all.click();
  const { id, fields, values } = oneOf(CALLS);
  await page.getByLabel('Find by name or trade word').fill(id);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: id, exact: true }).waitFor();
  const given = values();
  for (const [i, field] of fields.entries()) await page.getByLabel(field, { exact: true }).fill(given[i] ?? '');
  await quiet();
  const [target = ''] = await page.locator('.bw-target b').allInnerTexts();
  const [formula = ''] = await page.locator('.bw-formula code').allInnerTexts();
  const before = await contents();
  await page.getByRole('button', { name: 'Insert into the sheet' }).click();
  let isFirstValue = false;
  let isGivenUp = false;
  const ask = page.locator('dialog.bw-ask[open]');
  const asked = async (): Promise<string> => (await ask.allInnerTexts()).join('');
  for (;;) {
    await expect.poll(async () => (await asked()) !== '' || (await said()) !== '' || isGivenUp).toBe(true);
    const words = await asked();
    if (words === '') break;
    counted.asked++;
    isFirstValue ||= words.includes('Insert its first value');
    isGivenUp = counted.takenBack > 0 && below(3) === 0;
    await ask
      .getByRole('button')
      .nth(isGivenUp ? 0 : 1)
      .click();
    await expect.poll(asked).not.toBe(words);
    if (isGivenUp) break;
  }
  await quiet();
  const after = await contents();
  const changed = changedIn(before, after);
  if (isGivenUp) {
    counted.refused++;
    expect(changed, 'nothing is written where the answer was no').toEqual([]);
    return;
  }
  expect(await said()).toContain(`Inserted in ${target}`);
  // the same formula as before is no change
  expect(changed.length === 0 ? [target] : changed, 'nothing but the cell that was shown').toEqual([target]);
  const shown = inSigns(after[target] ?? '', { decimal });
  expect(shown).toBe(
    isFirstValue ? inSigns(`=INDEX(${after[target]?.slice('=INDEX('.length, -',1,1)'.length)},1,1)`, { decimal }) : formula,
  );
  expect(shown).toContain(formula.slice(1));
  counted.inserted++;
  if (counted.takenBack === 0 || below(3) > 0) await takeBack(before);
}

async function takeBack(before: Readonly<Record<string, string>>): Promise<void> {
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(said).toContain('Taken back');
  await quiet();
  expect(changedIn(before, await contents()), 'all is as it was').toEqual([]);
  counted.takenBack++;
}

const handlers = (): Promise<number> =>
  page.evaluate(() => [...window.excel.fake.handlers.values()].reduce((sum, { size }) => sum + size, 0));

const STEPS: Readonly<Record<string, () => Promise<void>>> = {
  async move() {
    await tab(oneOf(FOLLOWING));
    await quiet();
    const { sheetName } = await active();
    const before = await syncs();
    await moveTo({ sheetName, at: cellOn(sheetName) });
    await quiet();
    const cost = (await syncs()) - before;
    counted.moves++;
    counted.dearest = Math.max(counted.dearest, cost);
    expect(cost, 'exchanges of a move inside a sheet').toBeLessThanOrEqual(MOST_EXCHANGES);
  },
  async 'many moves'() {
    const { sheetName } = await active();
    const before = await syncs();
    await page.evaluate(() => (window.excel.fake.waitMs = 60));
    for (let i = 0; i < 12; i++) await moveTo({ sheetName, at: cellOn(sheetName) });
    await quiet();
    await page.evaluate(() => (window.excel.fake.waitMs = 3));
    // the one that was under way, and the newest
    expect((await syncs()) - before).toBeLessThan(8);
  },
  async 'another sheet'() {
    const sheetName = oneOf(SHEETS);
    await moveTo({ sheetName, at: cellOn(sheetName) });
  },
  async edit() {
    const { sheetName } = await active();
    const at = cellOn(sheetName);
    const isSlow = below(2) === 0;
    await page.evaluate(
      async ([sheet, cell, value, slow]) => {
        const { fake } = window.excel;
        fake.sheets.find(({ name }) => name === sheet)?.cells.set(String(cell), { value: Number(value) });
        if (slow === true) fake.calculation.state = 'pending';
        await fake.fire('changed', String(cell));
        if (slow !== true) await fake.settle();
      },
      [sheetName, at, 1 + below(50) / 10, isSlow] as const,
    );
    if (!isSlow) return;
    await quiet();
    await page.evaluate(() => window.excel.fake.settle());
  },
  async 'manual calculation'() {
    await page.evaluate(() => (window.excel.fake.calculation = { mode: 'manual', state: 'pending' }));
    await STEPS['edit']?.();
    await page.evaluate(async () => {
      const { fake } = window.excel;
      fake.calculation = { mode: 'automatic', state: 'pending' };
      await fake.settle();
    });
  },
  view: () => tab(oneOf([...FOLLOWING, 'Table', 'Sheets', 'Hand-over', 'Compare', 'About'])),
  async 'nobody looks'() {
    await page.evaluate(() => window.excel.show(false));
    isSeen = false;
    await quiet();
    expect(await handlers(), 'handlers while nobody looks').toBe(0);
    const before = await syncs();
    for (let i = 0; i < 2; i++) {
      await STEPS['another sheet']?.();
      await STEPS['edit']?.();
    }
    await quiet(RESTED_MS);
    expect((await syncs()) - before, 'exchanges while nobody looks').toBe(0);
    counted.unseen++;
    await page.evaluate(() => window.excel.show(true));
    isSeen = true;
    await quiet();
    expect(await handlers()).toBe(4);
  },
  insert,
};
const KINDS = Object.keys(STEPS);
const CHOICES = Object.entries({
  move: 4,
  'many moves': 1,
  'another sheet': 3,
  edit: 3,
  'manual calculation': 1,
  view: 4,
  'nobody looks': 1,
  insert: 3,
}).flatMap(([name, weight]) => Array.from({ length: weight }, () => name));

test.each(Array.from({ length: walks }, (_, walk) => walk + 1))('walk %i', async walk => {
  page = await pages.open();
  faults = [];
  trail = [];
  isSeen = true;
  page.on('pageerror', error => faults.push(error.message));
  page.on('console', message => ['error', 'warning'].includes(message.type()) && faults.push(message.text()));
  decimal = walk % 2 === 0 ? ',' : '.';
  // the signs are asked for whenever the pane is seen
  await quiet();
  await page.evaluate(() => window.excel.show(false));
  await page.evaluate(sign => Object.assign(window.excel.fake, { waitMs: 3, decimalSeparator: sign }), decimal);
  await page.evaluate(() => window.excel.show(true));
  await quiet();
  try {
    for (let step = 0; step < stepsPerWalk; step++) {
      const name = step < KINDS.length ? (KINDS[(step * 3 + walk) % KINDS.length] ?? '') : oneOf(CHOICES);
      trail.push(name);
      done[name] = (done[name] ?? 0) + 1;
      await STEPS[name]?.();
      await quiet(RESTED_MS);
      expect(await page.evaluate(() => window.excel.fake.mostAtOnce), 'exchanges at the same time').toBeLessThanOrEqual(1);
      expect(faults).toEqual([]);
      expect(isSeen).toBe(true);
    }
  } catch (thrown) {
    console.log('the walk:', trail.join(', '));
    await page.screenshot({ path: 'dist/screenshots/pane-walk.png', fullPage: true });
    throw thrown;
  } finally {
    await page.close();
  }
});

test('the walks went everywhere', () => {
  console.log(`${walks} walks:`, done, counted);
  expect(Object.keys(done).sort()).toEqual([...KINDS].sort());
  for (const what of ['moves', 'inserted', 'takenBack', 'unseen'] as const) expect(counted[what], what).toBeGreaterThan(0);
});
