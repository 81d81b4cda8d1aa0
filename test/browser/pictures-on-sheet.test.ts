// Pictures over the cells: put there from the figure, kept over a reload, written into the file.
import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const view = () => bench.page.locator('#bw-view-Figure');

/** Pictures in the file that is saved, as the bytes of each, and the words of all. */
async function saved(): Promise<{ readonly pngs: Uint8Array[]; readonly words: string }> {
  const [download] = await Promise.all([bench.page.waitForEvent('download'), bench.page.locator('#save').press('Enter')]);
  const parts = Object.entries(unzipSync(await readFile(await download.path())));
  return {
    pngs: parts.filter(([name]) => name.startsWith('xl/media/')).map(([, bytes]) => bytes),
    words: parts
      .filter(([name]) => /^xl\/drawings\/[^/]*[.]xml$/.test(name))
      .map(([, bytes]) => Buffer.from(bytes).toString())
      .join(),
  };
}

test('a stack is shown with the names of its links and goes into the sheet, as the section does', async () => {
  await bench.goTo('Variants', 'B6');
  await view().getByRole('button', { name: 'Put into the sheet' }).click();
  await expect.poll(() => bench.page.locator('.bw-said').textContent()).toBe('The figure is on Variants at B6');
  await bench.goTo('Tolerance', 'B7');
  await view().getByRole('heading', { name: 'Tolerance stack' }).waitFor();
  const description = await view().locator('svg.bw-figure desc').textContent();
  for (const link of ['boss: floor to face', 'board', 'lid: rim plane to seat', 'rim: floor to rim plane'])
    expect(description).toMatch(new RegExp(`${link} \\d+[.]\\d %`));
  await view().getByRole('button', { name: 'Put into the sheet' }).click();
  await expect.poll(() => bench.page.locator('.bw-said').textContent()).toBe('The figure is on Tolerance at B7');
});

test('both are in the file, with what they show in words', async () => {
  const { pngs, words } = await saved();
  expect(pngs.map(png => Buffer.from(png.subarray(1, 4)).toString())).toEqual(['PNG', 'PNG']);
  expect(words).toContain('Section through A  first choice');
  expect(words).toContain('Share of each link in the stack in Tolerance!A24');
});

test('both are there after a reload', async () => {
  const before = await saved();
  await expect.poll(() => bench.text('kept')).toContain('Saved in this browser');
  await bench.page.reload();
  await bench.page.waitForFunction(() => window.bosswright !== undefined);
  await bench.page.locator('#sheet canvas').first().waitFor();
  expect(await saved()).toEqual(before);
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
