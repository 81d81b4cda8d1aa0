// The pane on a page of its own in a real browser, for the tests of its views.
import { copyFile, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import { build, type Plugin } from 'esbuild';
import { chromium, type Page } from 'playwright-core';
import { METADATA } from '../../src/tools/metadata';
import { serve } from '../browser/serve';
import type {} from './harness';

const POLICY = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(await readFile('src/pane/pane.html', 'utf8'))?.[1] ?? 'none';

/** What webpack makes of the addresses of a worker and of the parts of a renderer. */
const besideThePage: Plugin = {
  name: 'beside-the-page',
  setup({ onLoad }) {
    onLoad({ filter: /src[\\/]files[\\/]jobs[.]ts$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replace("new URL('./worker.ts', import.meta.url)", "'worker.js', { type: 'module' }"),
      loader: 'ts',
    }));
    onLoad({ filter: /hosts[\\/]png[\\/]browser[.]ts$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replace(/new URL\(('[^']*'), import[.]meta[.]url\)/g, 'new URL(require($1), location.href)'),
      loader: 'ts',
    }));
  },
};

export interface PanePages {
  open(query?: string): Promise<Page>;
  close(): Promise<void>;
}

/** @param harness the file beside this one that puts the pane on its page. */
export async function panePages(harness = 'harness'): Promise<PanePages> {
  const folder = await mkdtemp(join(tmpdir(), 'pane-'));
  await build({
    entryPoints: { harness: `test/pane/${harness}.tsx`, worker: 'src/files/worker.ts' },
    bundle: true,
    format: 'esm',
    outdir: folder,
    loader: { '.wasm': 'file', '.ttf': 'file' },
    plugins: [besideThePage],
    logLevel: 'error',
  });
  await copyFile('src/pane/pane.css', join(folder, 'pane.css'));
  await writeFile(join(folder, 'functions.json'), JSON.stringify(METADATA));
  await writeFile(
    join(folder, 'index.html'),
    `<!doctype html><html lang="en-GB"><head><meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${POLICY}"><title>Pane</title>
    <link rel="icon" href="data:,"><link rel="stylesheet" href="pane.css"></head>
    <body class="bw-page"><main><h1 class="bw-unseen">Bosswright</h1><div id="pane"></div></main>
    <script type="module" src="harness.js"></script></body></html>`,
  );
  const served = await serve(folder);
  const browser = await chromium.launch({
    executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  });
  return {
    async open(query = '') {
      const page = await browser.newPage({ viewport: { width: 320, height: 900 } });
      page.setDefaultTimeout(120_000);
      await page.goto(`${served.origin}/${query}`);
      await page.locator('.bw-tabs').waitFor();
      return page;
    },
    async close() {
      await browser.close();
      await new Promise(resolve => served.server.close(resolve));
    },
  };
}

export async function violations(page: Page): Promise<string[]> {
  const axe = await readFile('node_modules/axe-core/axe.min.js', 'utf8');
  const { violations: found } = await page.evaluate<AxeResults>(`${axe};axe.run(document, { resultTypes: ["violations"] })`);
  return found.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary}`));
}

/** The screenshots of a view, narrow and wide; fails where it is wider than the pane. */
export async function pictured(page: Page, name: string): Promise<number> {
  let over = 0;
  for (const width of [600, 320]) {
    await page.setViewportSize({ width, height: 900 });
    over = Math.max(over, await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth));
    await page.screenshot({ path: `dist/screenshots/pane-${name}-${width}.png`, fullPage: true });
  }
  return over;
}

/** From where the keyboard is to what has that name, by keys alone. */
export async function byKeysTo(page: Page, name: RegExp): Promise<void> {
  for (let step = 0; step < 250; step++) {
    const focused = await page.evaluate(() => {
      const at = document.activeElement;
      return at === document.body ? '' : (at?.closest('label')?.textContent ?? at?.textContent ?? '').trim();
    });
    if (name.test(focused)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by keys to ${String(name)}`);
}

/** From the row of tabs. */
export async function openView(page: Page, name: string): Promise<void> {
  await page.locator('[role="tab"][aria-selected="true"]').focus();
  while ((await page.evaluate(() => document.activeElement?.textContent)) !== name) await page.keyboard.press('ArrowRight');
}
