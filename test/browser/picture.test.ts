// Takes the picture of the README anew: UPDATE_PICTURE=1 npm run test:browser -- picture
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { benchPage } from './bench-page';

const place = 'src/bench/bench.png';
const mostBytes = 400_000;

if (process.env.UPDATE_PICTURE)
  test('the picture shows the first choice and why it fails', async () => {
    const bench = await benchPage();
    await bench.open();
    await bench.page.locator('#bw-view-Figure .bw-figure text').getByText('needs engagement ratio at least 2, has 1.497').waitFor();
    await expect.poll(async () => (await bench.read('Variants')).flat().filter(({ value }) => value === 'fail').length).toBeGreaterThan(2);
    await expect.poll(() => bench.colours()).toContain('#b23a1e');
    await bench.page.waitForTimeout(500);
    await bench.page.screenshot({ path: place });
    await bench.close();
  });

test('the picture of the README is there, and small', async () => {
  const png = await readFile(place);
  expect(png.length).toBeLessThan(mostBytes);
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1440, 900]);
});
