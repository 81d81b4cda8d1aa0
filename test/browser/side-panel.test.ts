// What stands beside the sheet: one row of tabs over the selected cell and the views of the pane.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;
const views = ['Cell', 'Figure', 'Functions', 'Table', 'Sheets', 'Check', 'Hand-over', 'Compare', 'About'];

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  await bench.page.locator('#pane svg').first().waitFor();
});

afterAll(async () => {
  await bench.close();
});

const selected = () => bench.page.locator('#tabs [aria-selected="true"]').innerText();
const focused = () => bench.page.evaluate(() => document.activeElement?.id);
const press = (key: string) => bench.page.keyboard.press(key);

test("the row has the views of the pane, that of the cell first, and the pane's own row is out of sight", async () => {
  const own = bench.page.locator('.bw-tabs [role="tab"]');
  expect((await own.allTextContents()).sort()).toEqual([...views].sort());
  expect(await own.first().isVisible()).toBe(false);
  expect(await bench.page.locator('#tabs [role="tab"]').allInnerTexts()).toEqual(views);
});

test('arrows, Home and End move and show', async () => {
  await bench.goTo('Variants', 'E6');
  await press('F6');
  expect(await focused()).toBe('tab-Figure');
  for (const name of ['Functions', 'Table', 'Sheets', 'Check', 'Hand-over', 'Compare', 'About', 'Cell', 'Figure']) {
    await press('ArrowRight');
    expect(await focused()).toBe(`tab-${name}`);
    expect(await selected()).toBe(name);
    const panel = await bench.page.locator(`#tab-${name}`).getAttribute('aria-controls');
    await bench.page.locator(`#${panel}`).waitFor();
    expect(await bench.page.locator('#panel [role="tabpanel"]:visible').count()).toBe(1);
    await bench.picture(`beside-${name}`);
  }
  await press('Home');
  expect(await selected()).toBe('Cell');
  await press('End');
  expect(await selected()).toBe('About');
  await press('ArrowLeft');
  expect(await selected()).toBe('Compare');
});

test('Tab leaves the row into what is shown', async () => {
  await press('Home');
  await press('Tab');
  expect(await focused()).toBe('copy');
});

test('a link inside the pane marks the tab that it leads to', async () => {
  await bench.tab('Figure');
  await bench.page.getByRole('button', { name: 'All cautions' }).press('Enter');
  expect(await selected()).toBe('About');
  await bench.tab('Cell');
  await bench.tab('Figure');
  await bench.page.locator('#bw-view-Figure').waitFor();
});

test('the line between sheet and panel is moved by keys and mouse', async () => {
  const width = () => bench.page.locator('#panel').evaluate(({ clientWidth }) => clientWidth);
  const before = await width();
  await bench.page.locator('#splitter').press('ArrowLeft');
  expect(await width()).toBe(before + 24);
  await bench.page.locator('#splitter').press('ArrowRight');
  expect(await width()).toBe(before);
  const line = await bench.page.locator('#splitter').boundingBox();
  if (line === null) throw new Error('there is no line');
  await bench.page.mouse.move(line.x + 2, line.y + 300);
  await bench.page.mouse.down();
  await bench.page.mouse.move(line.x + 152, line.y + 300, { steps: 3 });
  await bench.page.mouse.up();
  expect(await width()).toBeLessThan(before - 140);
  await bench.page.locator('#splitter').press('ArrowLeft');
});

test('a ready sheet is inserted twice, and found under two names', async () => {
  const names = () => bench.page.evaluate(() => window.bosswright?.port.sheetNames());
  await bench.tab('Sheets');
  const insert = bench.page.getByRole('button', { name: 'Insert Joint' });
  for (const name of ['Joint 2', 'Joint 3']) {
    await insert.press('Enter');
    await bench.page.locator('#bw-view-Sheets').getByRole('button', { name, exact: true }).waitFor();
    expect(await names()).toContain(name);
  }
  await bench.page.getByRole('button', { name: 'Remove Joint 3' }).press('Enter');
  await bench.page.getByRole('button', { name: 'Remove the sheet' }).press('Enter');
  await expect.poll(names).not.toContain('Joint 3');
  expect(await names()).toContain('Joint 2');
});

test('keys as fast as they come end at the last of the views that they passed', async () => {
  await bench.goTo('Joint 2', 'H3');
  await press('F6');
  for (const key of ['Home', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowLeft']) await press(key);
  await bench.page.locator('#bw-search').waitFor();
  expect(await bench.page.locator('#tabs [aria-selected="true"]').textContent()).toBe('Functions');
});

test('a function is found, filled in and inserted by keys alone', async () => {
  await bench.goTo('Joint 2', 'H3');
  await press('F6');
  await press('Home');
  for (const _ of ['Figure', 'Functions']) await press('ArrowRight');
  // a view is fetched when it is first asked for
  await bench.page.locator('#bw-search').waitFor();
  await press('Tab');
  await bench.page.keyboard.type('standoff');
  await bench.page.locator('#bw-view-Functions .bw-found').first().waitFor();
  const option = () => bench.page.evaluate(() => document.activeElement?.textContent ?? '');
  await expect
    .poll(async () => {
      await press('ArrowDown');
      return option();
    })
    .toMatch(/^BOSS\.OD /);
  await press('Enter');
  await bench.page.locator('#bw-view-Functions').getByRole('heading', { name: 'BOSS.OD' }).waitFor();
  await expect.poll(option).toMatch(/BOSS\.OD/);
  await press('Tab');
  await bench.page.keyboard.type('0.167 in');
  await bench.page.getByLabel('wall (mm)', { exact: true }).focus();
  await bench.page.keyboard.type('1.2');
  await press('Enter');
  await expect.poll(async () => (await bench.cell('Joint 2', 'H3'))?.formula).toBe('=ENCL.BOSS.OD("0.167 in",1.2)');
  await expect.poll(async () => (await bench.cell('Joint 2', 'H3'))?.value).toBeCloseTo(6.6418, 9);
  await bench.picture('inserted');
});

test('calls that came out of a file unread are found and repaired', async () => {
  await bench.goTo('Joint 2', 'H4');
  await bench.type('=_xldudf_ENCL_BOSS_OD(3, 1.2)');
  await expect.poll(async () => (await bench.cell('Joint 2', 'H4'))?.value).toBe('#NAME?');
  await bench.tab('Check');
  await bench.page
    .locator('#bw-view-Check')
    .getByRole('button', { name: /^Check/ })
    .press('Enter');
  await bench.page.getByRole('button', { name: 'Repair 1 cell' }).press('Enter');
  await bench.page.getByRole('dialog').getByRole('button', { name: 'Repair' }).press('Enter');
  await expect.poll(async () => (await bench.cell('Joint 2', 'H4'))?.value).toBeCloseTo(5.4, 9);
  expect((await bench.cell('Joint 2', 'H4'))?.formula).toBe('=ENCL.BOSS.OD(3, 1.2)');
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
