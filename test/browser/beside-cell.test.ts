// The tab of the cell, help while a formula is typed, and tables begun, formatted and sorted beside the sheet, by real keys.
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  await bench.page.locator('#pane svg').first().waitFor();
});

afterAll(async () => {
  await bench.close();
});

const view = (name: string) => expect.poll(() => bench.text(`bw-view-${name}`));
const button = (name: string | RegExp) => bench.page.getByRole('button', { name });
const marked = () => expect.poll(() => bench.page.locator('.bw-typed mark').allInnerTexts());
const press = (key: string) => bench.page.keyboard.press(key);

test.each([
  [1440, 900],
  [1024, 768],
  [720, 450],
])('at %i by %i the page does not scroll, whatever tab is shown', async (width, height) => {
  await bench.page.setViewportSize({ width, height });
  if (!(await bench.page.locator('#panel').isVisible())) await bench.page.locator('#details').press('Enter');
  const names = await bench.page.locator('#tabs [role="tab"]').allInnerTexts();
  expect(names).toHaveLength(9);
  for (const name of names) {
    await bench.page.locator('#tabs').getByRole('tab', { name }).press('Enter');
    await bench.page.locator(`#bw-view-${name} :is(h2, h3, p)`).first().waitFor();
    const over = await bench.page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
    expect(over, name).toBe(0);
  }
  await bench.page.setViewportSize({ width: 1440, height: 900 });
});

test('an input says what it is, a result its state, reason and remedy; numbers are rounded, and copied as they are', async () => {
  await bench.tab('Cell');
  await bench.goTo('Variants', 'E6');
  await view('Cell').toContain('Input length of A');
  await bench.goTo('Variants', 'B22');
  await view('Cell').toContain('worst state of all rules');
  await view('Cell').toContain('too little full thread');
  expect(await button('Apply length 16 mm').count()).toBe(1);
  await bench.goTo('Variants', 'J40');
  await bench.type('=0.15747999999999998+0');
  await bench.goTo('Variants', 'J40');
  await expect.poll(() => bench.text('value')).toBe('0.15748');
  await button('Copy value').press('Enter');
  expect(Number(await bench.page.evaluate(() => navigator.clipboard.readText()))).toBe(0.15747999999999998);
  await bench.picture('beside-cell');
});

test('while a formula is typed, the argument at the caret is told with the example of the function', async () => {
  await bench.goTo('Variants', 'J41');
  await bench.page.keyboard.type('=ROUND(encl.boss.od(3', { delay: 40 });
  await marked().toEqual(['hole', '"0.167 in + 0.25 mm"']);
  await bench.page.keyboard.type(',', { delay: 40 });
  await marked().toEqual(['wall', '1.2']);
  await view('Cell').toContain('gives 6.8918');
  await bench.picture('typing-help');
  await bench.page.keyboard.type('1.2),', { delay: 40 });
  await marked().toEqual([]);
  await press('Escape');
  await press('Escape');
});

const values = async (sheet: string) => (await bench.read(sheet)).map(row => row.map(({ value }) => value));
const column = async (sheet: string, c: number, from: number, to: number): Promise<(Cell | null | undefined)[]> =>
  (await values(sheet)).slice(from, to + 1).map(row => row[c]);

test('a table is begun, sorted, formatted and taken back by keys alone', async () => {
  const sheet = await bench.add({ name: 'Mine', widths: [], cells: [] });
  await bench.tab('Table');
  await bench.goTo(sheet, 'B3');
  await button('Write the table').press('Enter');
  await expect.poll(async () => (await bench.cell(sheet, 'E9'))?.value).toBe('pass');
  await expect.poll(() => bench.colours()).toContain('#cfe8ea');
  await bench.goTo(sheet, 'E4');
  for (const length of ['19', '13', '5/8 in']) await bench.type(length);
  await bench.goTo(sheet, 'E5');
  await button('Look at the order').press('Enter');
  await button(/^Sort this table:/).press('Enter');
  await expect.poll(() => column(sheet, 1, 3, 5)).toEqual(['B', 'C', 'A']);
  await expect.poll(() => column(sheet, 1, 8, 10)).toEqual(['B', 'C', 'A']);
  await bench.picture('sorted');
  await button('Take back').press('Enter');
  await expect.poll(() => column(sheet, 1, 3, 5)).toEqual(['A', 'B', 'C']);
});

test('looks are put on a raw table and taken off, and no value is touched', async () => {
  const raw = await bench.add({ name: 'Raw', widths: [], cells: [] });
  await bench.page.evaluate(
    name =>
      window.bosswright?.port.write([
        { sheetName: name, at: 'B2', content: '=ENCL.JOINT.TABLE(Variants!B5:T13,{"engagement min","state","reason"})' },
      ]),
    raw,
  );
  await expect.poll(async () => (await bench.cell(raw, 'C3'))?.value).toBe('fail');
  const before = await values(raw);
  expect(await bench.colours()).not.toContain('#b23a1e');
  await bench.goTo(raw, 'C3');
  await button('Look what it would do').press('Enter');
  await button(/^Format this table:/).press('Enter');
  await expect.poll(() => bench.colours()).toContain('#b23a1e');
  expect(await values(raw)).toEqual(before);
  await bench.picture('formatted');
  await button('Take back').press('Enter');
  await expect.poll(() => bench.colours()).not.toContain('#b23a1e');
  expect(await values(raw)).toEqual(before);
});

test('what the panel writes is taken back by undo on the sheet: a remedy, looks and a table, its order; and no formula goes with the looks', async () => {
  const onSheet = async (sheet: string) => JSON.stringify(await bench.read(sheet));
  const undone = async (sheet: string, at: string, before: string) => {
    await bench.goTo(sheet, at);
    await press('Control+z');
    await expect.poll(() => onSheet(sheet)).toBe(before);
  };
  const failing = await onSheet('Variants');
  await bench.goTo('Variants', 'B22');
  await bench.tab('Cell');
  await button('Apply length 16 mm').press('Enter');
  await expect.poll(async () => (await bench.cell('Variants', 'B6'))?.value).not.toBe('fail');
  await undone('Variants', 'B22', failing);

  const sheet = await bench.add({ name: 'Undone', widths: [], cells: [] });
  const empty = await onSheet(sheet);
  await bench.tab('Table');
  await bench.goTo(sheet, 'B3');
  await button('Write the table').press('Enter');
  await expect.poll(async () => (await bench.cell(sheet, 'E9'))?.value).toBe('pass');
  await expect.poll(() => bench.colours()).toContain('#cfe8ea');
  const dressed = await onSheet(sheet);
  await undone(sheet, 'B3', dressed);
  expect(await bench.colours()).not.toContain('#cfe8ea');
  await undone(sheet, 'B3', empty);

  await button('Write the table').press('Enter');
  await expect.poll(async () => (await bench.cell(sheet, 'E9'))?.value).toBe('pass');
  await bench.goTo(sheet, 'E4');
  for (const length of ['19', '13', '16']) await bench.type(length);
  await bench.goTo(sheet, 'E5');
  await expect.poll(() => column(sheet, 4, 3, 5)).toEqual([19, 13, 16]);
  const unsorted = await onSheet(sheet);
  await button('Look at the order').press('Enter');
  await button(/^Sort this table:/).press('Enter');
  await expect.poll(() => column(sheet, 1, 3, 5)).toEqual(['B', 'C', 'A']);
  await undone(sheet, 'E5', unsorted);

  await bench.goTo('Raw', 'C3');
  const raw = await onSheet('Raw');
  expect(raw).toContain('ENCL.JOINT.TABLE');
  expect(await bench.colours()).not.toContain('#b23a1e');
  await button('Look what it would do').press('Enter');
  await button(/^Format this table:/).press('Enter');
  await expect.poll(() => bench.colours()).toContain('#b23a1e');
  await undone('Raw', 'C3', raw);
  await expect.poll(() => bench.colours()).not.toContain('#b23a1e');
  await press('Control+y');
  await expect.poll(() => bench.colours()).toContain('#b23a1e');
  expect(await onSheet('Raw')).toBe(raw);
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
