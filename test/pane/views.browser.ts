// The views of the pane in a real browser, over a workbook in memory.
import { copyFile, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import { build } from 'esbuild';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { compostGuide } from '../../src/demo/guide-compost';
import { serve } from '../browser/serve';
import { METADATA } from '../../src/tools/metadata';
import type {} from './harness';

const browserPath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(await readFile('src/pane/pane.html', 'utf8'))?.[1] ?? 'none';

let browser: Browser;
let served: Awaited<ReturnType<typeof serve>>;
let page: Page;
let faults: string[];

beforeAll(async () => {
  const folder = await mkdtemp(join(tmpdir(), 'pane-'));
  await build({
    entryPoints: ['test/pane/harness.tsx'],
    bundle: true,
    format: 'esm',
    outfile: join(folder, 'harness.js'),
    logLevel: 'error',
  });
  await copyFile('src/pane/pane.css', join(folder, 'pane.css'));
  await writeFile(join(folder, 'functions.json'), JSON.stringify(METADATA));
  await writeFile(
    join(folder, 'index.html'),
    `<!doctype html><html lang="en-GB"><head><meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}"><title>Pane</title>
    <link rel="icon" href="data:,"><link rel="stylesheet" href="pane.css"></head>
    <body class="bw-page"><main><h1 class="bw-unseen">Bosswright</h1><div id="pane"></div></main>
    <script type="module" src="harness.js"></script></body></html>`,
  );
  served = await serve(folder);
  browser = await chromium.launch({ executablePath: browserPath, args: ['--no-sandbox', '--disable-gpu'] });
});

afterAll(async () => {
  await browser.close();
  await new Promise(resolve => served.server.close(resolve));
});

beforeEach(async () => {
  await page?.close();
  page = await browser.newPage({ viewport: { width: 320, height: 900 } });
  page.setDefaultTimeout(120_000);
  faults = [];
  page.on('console', message => message.type() === 'error' && faults.push(message.text()));
  page.on('pageerror', error => faults.push(error.message));
  await page.goto(served.origin);
  await page.locator('.bw-tabs').waitFor();
});

const select = (sheetName: string, at: string) =>
  page.evaluate(([sheet = '', cell = '']) => window.pane.port.select(sheet, cell), [sheetName, at]);
const read = async (sheetName: string, at: string) => {
  const [, letters = '', row = ''] = /^([A-Z])(\d+)$/.exec(at) ?? [];
  return page.evaluate(
    async ([sheet, r, c]) => (await window.pane.port.read(String(sheet)))[Number(r)]?.[Number(c)],
    [sheetName, Number(row) - 1, letters.charCodeAt(0) - 65],
  );
};
const view = (name: string) => page.getByRole('tab', { name }).click();
const panel = (name: string) => page.locator(`#bw-view-${name}`);
const said = () => page.locator('.bw-said').textContent();
const focused = () => page.evaluate(() => document.activeElement?.textContent);

describe('the figure', () => {
  it('shows the joint of the selected row, with the numbers of the cells, within a few frames', async () => {
    await select('Variants', 'B6');
    await panel('Figure').getByRole('heading', { name: 'A first choice' }).waitFor();
    const worst = (variant: number) =>
      page.evaluate(async below => {
        const grid = await window.pane.port.read('Variants');
        const row = grid.findIndex(line => line.some(({ value }) => value === 'engagement min (mm)'));
        return Number(grid[row + below]?.[grid[row]?.findIndex(({ value }) => value === 'engagement min (mm)') ?? -1]?.value).toFixed(2);
      }, variant);
    const shown = () => panel('Figure').locator('tr', { hasText: 'full thread, worst' }).locator('td').last().textContent();
    expect(await shown()).toBe(`${await worst(1)} mm`);
    await select('Variants', 'C9');
    await panel('Figure').getByRole('heading', { name: 'D longer' }).waitFor();
    expect(await shown()).toBe(`${await worst(4)} mm`);
    const frames = await page.evaluate(async () => {
      const text = () => document.querySelector('#bw-view-Figure h2')?.textContent;
      const before = text();
      window.pane.port.select('Variants', 'B7');
      for (let frame = 1; frame < 60; frame++) {
        await new Promise(requestAnimationFrame);
        if (text() !== before) return frame;
      }
      return Infinity;
    });
    expect(frames).toBeLessThanOrEqual(3);
  });

  it('can be read in a narrow pane: no letter is smaller than 11 px', async () => {
    await select('Variants', 'B6');
    await panel('Figure').getByRole('heading', { name: 'A first choice' }).waitFor();
    for (const width of [320, 480]) {
      await page.setViewportSize({ width, height: 900 });
      const smallest = () =>
        page.evaluate(() => {
          const svg = document.querySelector<SVGSVGElement>('#bw-view-Figure svg.bw-figure');
          const scale = svg === null ? 0 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
          return Math.min(...[...(svg?.querySelectorAll('text') ?? [])].map(text => parseFloat(getComputedStyle(text).fontSize) * scale));
        });
      await expect.poll(smallest, { message: `${width}` }).toBeGreaterThanOrEqual(10.99);
      await page.screenshot({ path: `dist/screenshots/pane-narrow-${width}.png`, fullPage: true });
    }
  });

  it('says what fails and what would pass, and goes to the input', async () => {
    await select('Variants', 'B6');
    const rule = panel('Figure').locator('.bw-findings li').first();
    expect(await rule.textContent()).toContain('needs engagement ratio at least 2, has 1.497');
    expect(await rule.textContent()).toContain('passes with length 16 mm');
    await rule.getByRole('button', { name: 'length in E6' }).click();
    expect(await page.evaluate(() => window.pane.port.selection())).toEqual({ sheetName: 'Variants', at: 'E6' });
    await page.evaluate(() => window.pane.port.write([{ sheetName: 'Variants', at: 'E6', content: 16 }]));
    await select('Variants', 'E6');
    await expect.poll(() => panel('Figure').locator('.bw-findings').textContent()).not.toContain('1.497');
  });

  it('says that the table has no column for a remedy, and leads to no other', async () => {
    const given = ['ST2.9', 'ISO 7049', 16, 'ABS', 2.5, 5.5, 1.6, 3.3, 13.5, 2.4, 6.4];
    const names = ['screw', 'head', 'length', 'material', 'wall', 'board plane', 'board', 'hole', 'boss height', 'pilot', 'boss OD'];
    const column = (c: number) => String.fromCharCode(65 + c);
    const cells = names.flatMap((value, c) => [
      { at: `${column(c)}1`, role: 'header' as const, value },
      { at: `${column(c)}2`, role: 'input' as const, value: given[c] ?? '' },
    ]);
    await page.evaluate(plan => window.pane.port.add(plan), { name: 'Own', widths: [], cells });
    await select('Own', 'A2');
    const rule = panel('Figure').locator('.bw-findings li', { hasText: 'screw bottoms' });
    await expect
      .poll(() => rule.textContent())
      .toMatch(/passes with hole depth [\d.]+ mm hole depth has no column yet: add one in the range that is read/);
    expect(await rule.getByRole('button').count()).toBe(0);
    await page.screenshot({ path: 'dist/screenshots/pane-remedy.png', fullPage: true });
  });

  it('shows the map of the selected cell with its present point, and keeps it beside the joint that is edited', async () => {
    for (const sheet of compostGuide.sheets.filter(({ name }) => name === 'Plane' || name === 'Window'))
      await page.evaluate(plan => window.pane.port.add(plan), sheet);
    const drawn = () => panel('Figure').locator('svg.bw-figure').last();
    await select('Plane', 'F12');
    await panel('Figure').getByRole('heading', { name: 'Map of boss OD and wall' }).waitFor();
    expect(await panel('Figure').locator('svg.bw-figure').count()).toBe(1);
    expect(await drawn().locator('.bw-map-now').count()).toBe(1);
    await page.screenshot({ path: 'dist/screenshots/pane-map.png', fullPage: true });
    const before = await drawn().innerHTML();
    await select('Plane', 'B8');
    await expect.poll(() => panel('Figure').locator('svg.bw-figure').count()).toBe(2);
    await page.evaluate(() => window.pane.port.write([{ sheetName: 'Plane', at: 'B8', content: 13 }]));
    await expect.poll(() => drawn().innerHTML()).not.toBe(before);
    await page.screenshot({ path: 'dist/screenshots/pane-map-beside-joint.png', fullPage: true });
    await select('Window', 'C19');
    await panel('Figure').getByRole('heading', { name: 'What moves engagement min' }).waitFor();
    await page.screenshot({ path: 'dist/screenshots/pane-moves.png', fullPage: true });
  });

  it('goes from variant to variant, shows inches, names and all variants, and is put into the sheet as a picture', async () => {
    await select('Variants', 'B6');
    await page.getByRole('button', { name: 'Next variant' }).click();
    await panel('Figure').getByRole('heading', { name: 'B shorter' }).waitFor();
    await page.getByLabel('inches in brackets').check();
    expect(await panel('Figure').locator('.bw-legend').textContent()).toContain('6.40 mm (0.252 in)');
    await page.getByLabel('names on the drawing').check();
    expect(await panel('Figure').locator('svg.bw-figure').first().textContent()).toContain('boss OD');
    await page.getByText('All 8 variants').click();
    await expect.poll(() => panel('Figure').locator('svg.bw-figure').last().textContent()).toContain('Engagement of the variants');
    await page.getByRole('button', { name: 'Put into the sheet' }).click();
    await expect.poll(said).toContain('The figure is on Variants at B7');
    const placed = await page.evaluate(() =>
      window.pane.placed.map(({ sheetName, picture: { at, png, words, widthPx } }) => ({
        sheetName,
        at,
        words,
        widthPx,
        head: [...png.slice(1, 4)],
        bytes: png.length,
      })),
    );
    expect(placed).toEqual([
      {
        sheetName: 'Variants',
        at: 'B7',
        words: 'Section through B  shorter',
        widthPx: expect.any(Number) as number,
        head: [80, 78, 71],
        bytes: expect.any(Number) as number,
      },
    ]);
    expect(placed[0]?.bytes).toBeGreaterThan(20_000);
  });
});

describe('the functions', () => {
  it('are found, filled in and inserted by keys alone', async () => {
    await select('Joint', 'H3');
    await page.locator('[role="tab"][aria-selected="true"]').focus();
    await page.keyboard.press('ArrowRight');
    expect(await focused()).toBe('Functions');
    await page.keyboard.press('Tab');
    await page.keyboard.type('standoff');
    await page.keyboard.press('ArrowDown');
    while (!(await focused())?.startsWith('BOSS.OD ')) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'BOSS.OD' }).waitFor();
    expect(await focused()).toBe('BOSS.OD');
    await page.keyboard.press('Tab');
    await page.keyboard.type('ST2.9 75 %');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await select('Joint', 'B10');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.bw-formula').textContent()).toBe('=ENCL.BOSS.OD("ST2.9 75 %",B10)');
    // 2.36 + 2 · 2.5
    await expect.poll(() => page.locator('.bw-value').textContent()).toBe('7.36 mm');
    expect(await page.locator('.bw-working').textContent()).toContain('2.36 + 2·2.5 = 7.36 mm');
    await page.getByLabel('wall (mm)', { exact: true }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(said).toBe('Inserted in Joint!H3');
    expect(await read('Joint', 'H3')).toMatchObject({ formula: '=ENCL.BOSS.OD("ST2.9 75 %",B10)' });
    await page.keyboard.press('Escape');
    await expect.poll(focused).toContain('BOSS.OD');
  });

  it('say at the argument what is wrong, and ask before a cell is replaced', async () => {
    await select('Joint', 'B10');
    await view('Functions');
    await page.getByLabel('Find by name or trade word').fill('boss.od');
    await page.keyboard.press('Enter');
    await page.getByLabel('hole (mm)', { exact: true }).fill('3');
    await page.getByLabel('wall (mm)', { exact: true }).fill('-3');
    const wall = page.getByLabel('wall (mm)', { exact: true });
    await expect.poll(() => wall.getAttribute('aria-invalid')).toBe('true');
    const help = await wall.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${help}"]`).textContent()).toContain('must be above 0 mm');
    await wall.fill('1');
    await page.getByRole('button', { name: 'Insert into the sheet' }).click();
    expect(await page.getByRole('dialog').textContent()).toContain('B10 holds 2.5. It will be replaced.');
    await page.keyboard.press('Escape');
    expect(await read('Joint', 'B10')).toEqual({ value: 2.5 });
    await page.getByRole('button', { name: 'Insert into the sheet' }).click();
    await page.getByRole('button', { name: 'Insert all the same' }).click();
    await expect.poll(said).toBe('Inserted in Joint!B10');
  });

  it('show a table before it is in the sheet, and take a range by its two ends', async () => {
    await select('Joint', 'H3');
    await view('Functions');
    await page.getByLabel('Find by name or trade word').fill('grip.limits');
    await page.keyboard.press('Enter');
    const take = page.getByRole('button', { name: 'Take cell for layers' });
    await select('Joint', 'B12');
    await take.click();
    await select('Joint', 'B13');
    await take.click();
    await page.getByLabel('layers (mm)', { exact: true }).waitFor();
    expect(await page.getByLabel('layers (mm)', { exact: true }).inputValue()).toBe('=B12:B13');
    await page.getByRole('textbox').nth(1).fill('0.1');
    // 2.5 + 1.6 with 0.1 each: 3.9, 4.1, 4.3
    await expect.poll(() => page.locator('.bw-answer td').allTextContents()).toEqual(['3.9', '4.1', '4.3']);
  });
});

describe('the sheets', () => {
  it('are inserted under a new name, handed over, and removed when asked', async () => {
    await select('Joint', 'A1');
    await view('Sheets');
    for (const name of ['Variants 2', 'Variants 3']) {
      await page.getByRole('button', { name: 'Insert Variants' }).click();
      await expect.poll(said).toContain(`${name} is in the workbook`);
    }
    await page.getByRole('button', { name: 'Remove Variants 2' }).click();
    await page.getByRole('button', { name: 'Cancel' }).click();
    expect(await page.evaluate(() => window.pane.port.sheetNames())).toContain('Variants 2');
    await page.getByRole('button', { name: 'Remove Variants 2' }).click();
    await page.getByRole('button', { name: 'Remove the sheet' }).click();
    await expect.poll(() => page.evaluate(() => window.pane.port.sheetNames())).not.toContain('Variants 2');
  });
});

describe('the check', () => {
  it('lists what is broken, goes there and repairs it', async () => {
    await page.evaluate(() => {
      window.pane.port.plant('Joint', 'H3', { value: '#NAME?', formula: '=ENCL.BOSS.OD(B16,B10)' });
      window.pane.port.plant('Joint', 'H4', { value: '#NAME?', formula: '=_xldudf_ENCL_WALL_FEATURE(B10)' });
      window.pane.port.plant('Joint', 'H5', { value: '#BUSY!', formula: '=ENCL.WALL.FEATURE(B10)' });
    });
    await select('Joint', 'A1');
    await view('Check');
    await panel('Check').getByRole('button', { name: 'Joint!H4' }).click();
    expect(await page.evaluate(() => window.pane.port.selection())).toEqual({ sheetName: 'Joint', at: 'H4' });
    await page.getByRole('button', { name: 'Repair 3 cells' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Repair' }).click();
    await expect.poll(said).toBe('3 cells were entered again');
    // 3.2 + 2 · 2.5, 0.6 · 2.5
    expect(await read('Joint', 'H3')).toEqual({ value: 8.2, formula: '=ENCL.BOSS.OD(B16,B10)' });
    expect(await read('Joint', 'H4')).toEqual({ value: 1.5, formula: '=ENCL.WALL.FEATURE(B10)' });
    expect(
      await panel('Check')
        .getByRole('button', { name: /^Repair/ })
        .count(),
    ).toBe(0);
  });

  it('lists the joints of the workbook, and what moves the engagement of the selected one', async () => {
    await select('Variants', 'B6');
    await view('Check');
    expect(await panel('Check').getByText('14 rules pass').count()).toBe(1);
    await page.getByText('What moves the worst engagement most').click();
    expect(await panel('Check').locator('.bw-levers tbody tr').first().textContent()).toBe('length13 ± 0.8 mm±0.8+1');
    await panel('Check').getByRole('button', { name: 'Yield beside worst case' }).click();
    const drawn = panel('Check').getByRole('region', { name: 'Yield beside worst case' });
    expect(await drawn.locator('tr').first().textContent()).toBe('worst casefail');
    expect(await drawn.getByText('all rules', { exact: true }).count()).toBe(1);
    await expect.poll(() => panel('Check').getByRole('button', { name: 'E longer still' }).count()).toBe(1);
  });

  it('shows how far it is when it takes long, and stops', async () => {
    await page.evaluate(() => {
      window.pane.waitMs = 700;
    });
    await view('Check');
    await page.getByRole('progressbar').waitFor();
    await page.getByRole('button', { name: 'Stop' }).click();
    await panel('Check').getByText('Stopped: not all sheets were read.').waitFor();
    expect(await page.getByRole('progressbar').count()).toBe(0);
  });
});

describe('every view', () => {
  const hostile = '<img src=x onerror="window.hacked=1">\u202e"]]><script>window.hacked=1</script>';

  it('shows hostile text as text', async () => {
    await page.evaluate(async text => {
      const { port } = window.pane;
      await port.write([{ sheetName: 'Variants', at: 'A6', content: text }]);
      await port.write([{ sheetName: 'Variants', at: 'C6', content: text }]);
      await port.write([{ sheetName: 'Variants', at: 'B7', content: `${text}${'x'.repeat(5000)}` }]);
      port.plant('Joint', 'H3', { value: '#VALUE!', formula: `=ENCL.BOSS.OD("${text.replaceAll('"', '""')}",1)` });
    }, hostile);
    await select('Variants', 'B6');
    await expect.poll(() => panel('Figure').locator('h2').textContent()).toBe(hostile);
    await select('Variants', 'B7');
    await panel('Figure').getByRole('heading', { name: 'B shorter' }).waitFor();
    await view('Check');
    await panel('Check').getByText('Answers that are refused').waitFor();
    expect(await panel('Check').locator('.bw-findings').first().textContent()).toContain('head fits the recess, head hidden');
    await view('Functions');
    await page.getByLabel('Find by name or trade word').fill('boss.od');
    await page.keyboard.press('Enter');
    await page.getByLabel('hole (mm)', { exact: true }).fill(hostile);
    await page.getByLabel('wall (mm)', { exact: true }).fill('1');
    await expect.poll(() => page.locator('.bw-fault').count()).toBeGreaterThan(0);
    expect(await page.evaluate(() => [Reflect.get(window, 'hacked'), document.querySelectorAll('img, script:not([src])').length])).toEqual([
      undefined,
      0,
    ]);
    expect(faults).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  });

  it.each(['light', 'dark'] as const)('is free of what axe finds and fits 320 px, %s', async colorScheme => {
    await page.emulateMedia({ colorScheme });
    const axe = await readFile('node_modules/axe-core/axe.min.js', 'utf8');
    const violations = async () => {
      const { violations: found } = await page.evaluate<AxeResults>(`${axe};axe.run(document, { resultTypes: ["violations"] })`);
      return found.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary}`));
    };
    await page.evaluate(() => window.pane.port.plant('Joint', 'H3', { value: '#NAME?', formula: '=ENCL.BOSS.OD(B16,B10)' }));
    await select('Variants', 'B6');
    for (const name of ['Figure', 'Functions', 'Sheets', 'Check', 'About']) {
      await view(name);
      await page.waitForTimeout(150);
      await page.evaluate(() =>
        document.querySelectorAll('details').forEach(details => {
          details.open = true;
        }),
      );
      expect(await violations(), name).toEqual([]);
      for (const width of [480, 320]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth), name).toBeLessThanOrEqual(0);
        await page.screenshot({ path: `dist/screenshots/pane-${name}-${colorScheme}-${width}.png`, fullPage: true });
      }
    }
    await view('Functions');
    for (const id of ['boss.od', 'screw.card']) {
      await page.getByLabel('Find by name or trade word').fill(id);
      await page.keyboard.press('Enter');
      await page.getByRole('textbox').first().fill('ST2.9');
      await page.getByRole('textbox').nth(1).fill('ISO 7049');
      await page.waitForTimeout(150);
      expect(await violations(), id).toEqual([]);
      await page.getByRole('button', { name: 'All functions' }).click();
    }
    await page.evaluate(() => document.querySelector('#pane')?.insertAdjacentHTML('beforeend', '<img id="planted" src="data:,">'));
    expect((await violations()).join()).toContain('image-alt #planted');
  });
});
