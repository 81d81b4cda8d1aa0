// Work of one's own: several workbooks beside each other, by keyboard, and the page that shows how the sheet looked until it stands.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  expect(bench.faults).toEqual([]);
  expect(bench.foreign).toEqual([]);
  await bench.close();
});

const list = () => bench.page.locator('#workbooks-dialog');
const openList = () => bench.page.locator('#workbooks').press('Enter');
const isKept = () => expect.poll(() => bench.text('kept')).toMatch(/^Saved in this browser/);
const sheetNames = () => bench.page.evaluate(() => window.bosswright?.port.sheetNames());
const titles = async () => {
  await openList();
  const found = await list().locator('#kept-list button:first-child').allTextContents();
  await bench.page.keyboard.press('Escape');
  return found;
};

test('an empty workbook takes the name that is typed, and keeps what is typed into it', async () => {
  await openList();
  await bench.picture('workbooks');
  await list().getByRole('button', { name: 'Empty workbook' }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Sheet1']);
  await bench.goTo('Sheet1', 'B2');
  await bench.type('=ENCL.LENGTH.MM("1/2 in")');
  await expect.poll(async () => (await bench.cell('Sheet1', 'B2'))?.value).toBe(12.7);
  await openList();
  await bench.page.keyboard.press('Control+a');
  await bench.page.keyboard.type('Relay box');
  // Enter closes the dialog and opens nothing.
  await bench.page.keyboard.press('Enter');
  await isKept();
  expect(await sheetNames()).toEqual(['Sheet1']);
});

test('another one is begun from a template: the first stays, and is opened again as it was', async () => {
  await openList();
  await list().getByRole('button', { name: 'Variant table', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Variants']);
  await isKept();
  expect(await titles()).toEqual(['Relay box']);
  await openList();
  await list().getByRole('button', { name: 'Relay box', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Sheet1']);
  await expect.poll(async () => (await bench.cell('Sheet1', 'B2'))?.value).toBe(12.7);
  expect(await titles()).toEqual(['Variant table']);
});

test('the figure of the workbook that was left goes with it', async () => {
  await openList();
  await list().locator('#kept-list').getByRole('button', { name: 'Variant table', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Variants']);
  await bench.goTo('Variants', 'B6');
  const figure = bench.page.locator('#bw-view-Figure');
  await figure.locator('svg.bw-figure').waitFor();
  await openList();
  await list().getByRole('button', { name: 'Relay box', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Sheet1']);
  await figure.locator('svg.bw-figure').waitFor({ state: 'detached' });
});

test('a template that is opened twice gets a number', async () => {
  await openList();
  await list().locator('#kept-list').getByRole('button', { name: 'Variant table', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Variants']);
  await openList();
  await list().locator('#templates-list').getByRole('button', { name: 'Variant table', exact: true }).press('Enter');
  await isKept();
  expect((await titles()).sort()).toEqual(['Relay box', 'Variant table']);
  await openList();
  expect(await bench.page.locator('#workbook-name').inputValue()).toBe('Variant table 2');
  await bench.page.keyboard.press('Escape');
});

test('a reload opens what this tab had, with its picture before', async () => {
  await openList();
  await list().getByRole('button', { name: 'Relay box', exact: true }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Sheet1']);
  await bench.page.waitForTimeout(500);
  // The pieces of the sheet are held back until the picture was seen.
  let release = (): void => undefined;
  const held = new Promise<void>(resolve => {
    release = resolve;
  });
  await bench.page.route('**/chunks/bench-engine.js', async route => {
    await held;
    await route.continue();
  });
  await bench.page.reload({ waitUntil: 'commit' });
  const image = bench.page.locator('#starting img');
  await image.waitFor();
  expect(await image.evaluate((shown: HTMLImageElement) => shown.decode().then(() => shown.naturalWidth))).toBeGreaterThan(300);
  await expect.poll(() => bench.page.locator('#progress').evaluate((bar: HTMLProgressElement) => bar.value)).toBeGreaterThan(0);
  await bench.picture('starting');
  const drawnWhenItGoes = bench.page.evaluate(
    grid =>
      new Promise<number>(resolve => {
        new MutationObserver((_changes, watching) => {
          if (document.getElementById('starting') !== null) return;
          watching.disconnect();
          const canvas = document.querySelector<HTMLCanvasElement>(grid);
          const pixels = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
          resolve(new Set(new Uint32Array(pixels?.buffer ?? new ArrayBuffer(0))).size);
        }).observe(document.body, { childList: true, subtree: true });
      }),
    'canvas[id^="univer-sheet-main-canvas"]',
  );
  release();
  expect(await drawnWhenItGoes).toBeGreaterThan(8);
  expect(await sheetNames()).toEqual(['Sheet1']);
  await bench.page.unroute('**/chunks/bench-engine.js');
});

test('one is discarded for good, and only when it is agreed to', async () => {
  await openList();
  const drop = list().getByRole('button', { name: 'Discard Variant table 2' });
  await drop.press('Enter');
  await bench.page.getByRole('button', { name: 'Leave it' }).press('Enter');
  expect(await drop.count()).toBe(1);
  await drop.press('Enter');
  await bench.page.getByRole('button', { name: 'Discard it' }).press('Enter');
  await expect.poll(() => drop.count()).toBe(0);
  await bench.page.keyboard.press('Escape');
  expect(await titles()).toEqual(['Variant table']);
});

test('what the browser does not keep is not left without a question', async () => {
  await bench.page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('the storage is full', 'QuotaExceededError');
    };
  });
  await bench.goTo('Sheet1', 'B3');
  await bench.type('7');
  await expect.poll(() => bench.text('kept')).toContain('Not kept');
  await openList();
  await list().getByRole('button', { name: 'Single joint' }).press('Enter');
  await bench.page.getByRole('button', { name: 'Stay' }).press('Enter');
  expect(await sheetNames()).toEqual(['Sheet1']);
  await openList();
  await list().getByRole('button', { name: 'Single joint' }).press('Enter');
  await bench.page.getByRole('button', { name: 'lose the changes' }).press('Enter');
  await expect.poll(sheetNames).toEqual(['Joint']);
});

test.each([
  [1024, 768],
  [720, 450],
])('the head of the page is one line at %i × %i', async (width, height) => {
  await bench.page.setViewportSize({ width, height });
  await bench.picture(`head-${width}`);
  const box = await bench.page.locator('body > header').boundingBox();
  expect(box?.height).toBeLessThan(56);
  expect(await bench.page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBeLessThanOrEqual(0);
});

test('on a low page the commands are behind one button', async () => {
  await bench.page.locator('#menu').press('Enter');
  await bench.picture('menu');
  await openList();
  await list().waitFor();
  await bench.page.keyboard.press('Escape');
  await bench.page.setViewportSize({ width: 1440, height: 900 });
});
