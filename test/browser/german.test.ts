// The bench in German: chosen by keys and kept, typed into, every tab opened, with no fault of access and no English of its own.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ENGLISH } from '../../src/words/english';
import { GERMAN } from '../../src/words/german/german';
import { faults } from './axe';
import { benchPage, type BenchPage } from './bench-page';

const W = GERMAN;
/** What the sheet engine draws, as in access.test.ts. */
const engine = ['#sheet', '[data-u-comp]', '[class^="univer-"]'];

let bench: BenchPage;
beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  await bench.page.locator('#pane svg').first().waitFor();
});
afterAll(async () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
  await bench.close();
});

const own = () => faults(bench.page, { include: ['html'], exclude: engine });
const speaks = () => bench.page.evaluate(() => document.documentElement.lang);
const ready = () => bench.page.waitForFunction(() => window.bosswright !== undefined);
const shown = async () => (await bench.page.evaluate(() => document.body.innerText)).replaceAll(/\s+/g, ' ');

/** Texts of what stands round the sheet, English first. */
const PAGE = Object.entries(ENGLISH.bench.page).map(([name, text]) => [text, W.bench.page[name as keyof typeof W.bench.page]] as const);

test('speaks the language of the browser at first, and German once it is chosen by keys', async () => {
  expect(await speaks()).toBe('en-GB');
  expect(await shown()).toContain('Save as .xlsx');
  await bench.page.locator('#language').focus();
  await bench.page.keyboard.type('D');
  await bench.page.waitForFunction(() => document.documentElement.lang === 'de');
  await ready();
  await bench.page.locator('#pane svg').first().waitFor();
  const text = await shown();
  expect(PAGE.length).toBeGreaterThan(25);
  expect(PAGE.filter(([english, german]) => /\S{4}/.test(english) && english !== german && text.includes(english))).toEqual([]);
  expect(text).toContain('Speichern als .xlsx');
  expect(await bench.page.locator('#tabs [role="tab"]').allInnerTexts()).toEqual(
    ['Cell', 'Figure', 'Functions', 'Table', 'Sheets', 'Check', 'Hand-over', 'Compare', 'About'].map(
      name => W.frame.names[name as keyof typeof W.frame.names],
    ),
  );
  expect(await own()).toEqual([]);
});

test('takes a formula by keys, and helps in German while it is typed', async () => {
  await bench.tab(W.frame.names.Cell);
  await bench.goTo('Variants', 'B40');
  await bench.page.keyboard.type('=ENCL.BOSS.OD(3,', { delay: 15 });
  await bench.page.locator('.bw-typed').waitFor();
  expect(await bench.page.locator('.bw-typed').innerText()).toContain('Argument 2 von 4');
  await bench.picture('german-typing');
  await bench.page.keyboard.type('1.2)', { delay: 15 });
  await bench.page.keyboard.press('Enter');
  await expect.poll(async () => (await bench.cell('Variants', 'B40'))?.value).toBe(5.4);
  expect((await bench.cell('Variants', 'B40'))?.formula).toBe('=ENCL.BOSS.OD(3,1.2)');
  await bench.type('2.5');
  await expect.poll(async () => (await bench.cell('Variants', 'B41'))?.value).toBe(2.5);
  await expect.poll(() => bench.text('kept')).toContain('In diesem Browser gespeichert');
});

test('has every tab in German, with no fault of access', async () => {
  await bench.goTo('Variants', 'E6');
  await bench.page.keyboard.press('F6');
  for (let step = 0; step < 9; step++) {
    await bench.page.keyboard.press('ArrowRight');
    const name = (await bench.page.locator('#tabs [aria-selected="true"]').getAttribute('data-view')) ?? '';
    await bench.page.locator(`#bw-view-${name} h2, #bw-view-${name} h3`).first().waitFor();
    expect([name, await own()]).toEqual([name, []]);
    await bench.picture(`german-bench-${name}`);
  }
});

test('asks in German, and keeps the language through a reload', async () => {
  await bench.page.locator('#workbooks').press('Enter');
  expect(await bench.page.locator('#workbooks-dialog').innerText()).toContain('Leere Arbeitsmappe');
  expect(await own()).toEqual([]);
  await bench.picture('german-workbooks');
  await bench.page.keyboard.press('Escape');
  await bench.page.reload();
  await ready();
  expect(await speaks()).toBe('de');
  expect((await bench.cell('Variants', 'B40'))?.formula).toBe('=ENCL.BOSS.OD(3,1.2)');
  await expect.poll(() => bench.text('kept')).toContain('Ihre Arbeitsmappe');
});

test('says why a file is refused', async () => {
  const [chooser] = await Promise.all([bench.page.waitForEvent('filechooser'), bench.page.locator('#open').press('Enter')]);
  await chooser.setFiles({ name: 'old.xls', mimeType: 'application/octet-stream', buffer: Buffer.from([0xd0, 0xcf, 0x11, 0xe0]) });
  const refused = bench.page.locator('dialog[open]:not(#busy)');
  await refused.waitFor({ timeout: 120_000 });
  expect(await refused.textContent()).toContain('Die Datei ist durch ein Kennwort geschützt oder hat das alte Format .xls');
  await bench.page.keyboard.press('Escape');
});

test('has the spreadsheet’s own menus in German too', async () => {
  await bench.goTo('Variants', 'B40');
  const canvas = await bench.page.locator('canvas[id^="univer-sheet-main-canvas"]').boundingBox();
  await bench.page.mouse.click((canvas?.x ?? 0) + 200, (canvas?.y ?? 0) + 200, { button: 'right' });
  await bench.page.getByText('Kopieren', { exact: true }).first().waitFor();
  await bench.picture('german-menu');
  await bench.page.keyboard.press('Escape');
});

test('is English again when that is chosen', async () => {
  await bench.page.locator('#language').focus();
  await bench.page.keyboard.type('E');
  await bench.page.waitForFunction(() => document.documentElement.lang === 'en-GB');
  await ready();
  expect(await shown()).toContain('Save as .xlsx');
});
