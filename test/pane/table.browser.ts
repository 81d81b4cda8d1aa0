// A new table of variants, and looks for one's own: played by keyboard in a workbook of 2,000 rows.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { byKeysTo, openView, type PanePages, panePages, pictured, violations } from './open-pane';

let pages: PanePages;
let page: Page;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());
beforeEach(async () => {
  await page?.close();
  page = await pages.open();
  await page.evaluate(async () => {
    const cells = Array.from({ length: 2000 }, (_, row) => ({ at: `A${row + 1}`, role: 'text' as const, value: row }));
    await window.pane.port.add({ name: 'Long', widths: [], cells });
    window.pane.port.select('Long', 'C3');
  });
});

const contents = () =>
  page.evaluate(async () => {
    const grid = await window.pane.port.read('Long');
    return grid.flatMap((line, r) =>
      line.flatMap(({ value, formula }, c) => (value === null ? [] : [`${r},${c}:${formula ?? String(value)}`])),
    );
  });
const said = () => page.locator('.bw-said').textContent();

async function openTable(): Promise<void> {
  await openView(page, 'Table');
  await page.getByText('From Long!C3 on').waitFor();
}

it('writes what it showed and nothing else, and takes it back', async () => {
  const before = await contents();
  expect(before).toHaveLength(2000);
  await openTable();
  expect(await violations(page)).toEqual([]);
  expect(await pictured(page, 'Table')).toBeLessThanOrEqual(0);
  const shown = await page.locator('.bw-answer').textContent();
  expect(shown).toContain('C3:L6');
  expect(shown).toContain('=ENCL.JOINT.TABLE(C3:L6,{"variant",');
  expect(shown).toContain('It fills C8:G11');
  await byKeysTo(page, /^face$/);
  await page.keyboard.press('Space');
  await expect.poll(() => page.locator('.bw-answer').textContent()).toContain('C3:M6');
  await byKeysTo(page, /^Write the table$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toBe('The table is in Long!C3:M11');
  const added = (await contents()).filter(cell => !before.includes(cell));
  // 4 rows of 11 inputs, 4 rows of 5 results, and the list that was there
  expect(added).toHaveLength(44 + 20);
  expect(added.filter(cell => cell.includes('ENCL'))).toHaveLength(1);
  expect((await contents()).filter(cell => before.includes(cell))).toHaveLength(2000);
  const [dress] = await page.evaluate(() => window.pane.port.dressed);
  expect(dress?.dropDowns.map(({ range }) => range)).toEqual(['D4:D6', 'E4:E6', 'G4:G6', 'M4:M6']);
  expect(dress?.stateRanges).toEqual(['F9:F11']);
  expect(dress?.wrapped).toEqual(['G9:G11']);
  await byKeysTo(page, /^Take back$/);
  await page.keyboard.press('Enter');
  await expect.poll(said).toContain('Taken back');
  expect(await contents()).toEqual(before);
  expect(await page.evaluate(() => window.pane.port.dressed)).toEqual([]);
});

it('writes over nothing', async () => {
  await page.evaluate(() => window.pane.port.write([{ sheetName: 'Long', at: 'D9', content: 'mine' }]));
  const before = await contents();
  await openTable();
  await page.getByRole('button', { name: 'Write the table' }).click();
  await expect.poll(said).toContain('D9 is not empty');
  expect(await contents()).toEqual(before);
  expect(await page.evaluate(() => window.pane.port.dressed)).toEqual([]);
});

it('takes back what it wrote where the looks fail', async () => {
  const before = await contents();
  await page.evaluate(() => Object.assign(window.pane.port, { dress: () => Promise.reject(new Error('the sheet is protected')) }));
  await openTable();
  await page.getByRole('button', { name: 'Write the table' }).click();
  await expect.poll(said).toBe('The table is in Long!C3:L11, without its looks: the sheet is protected');
  expect(await contents()).not.toEqual(before);
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(said).toContain('Taken back');
  expect(await contents()).toEqual(before);
});

it('formats a table of one’s own by keyboard, without touching a value', async () => {
  await openTable();
  await page.evaluate(() => window.pane.port.select('Variants', 'B6'));
  const before = await page.evaluate(() => window.pane.port.read('Variants'));
  await byKeysTo(page, /^Look what it would do$/);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Format this table: / }).waitFor();
  expect(await violations(page)).toEqual([]);
  await page.screenshot({ path: 'dist/screenshots/pane-Format-320.png', fullPage: true });
  await byKeysTo(page, /^Format this table: /);
  await page.keyboard.press('Enter');
  await expect.poll(said).toContain('is formatted');
  expect(await page.evaluate(() => window.pane.port.dressed.length)).toBe(1);
  expect(await page.evaluate(() => window.pane.port.read('Variants'))).toEqual(before);
  expect(await contents()).toHaveLength(2000);
  await byKeysTo(page, /^Take back$/);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => window.pane.port.dressed.length)).toBe(0);
});
