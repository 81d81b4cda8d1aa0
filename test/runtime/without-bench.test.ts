// The add-in for Excel alone: what is built without the bench is whole, opens, and asks for nothing that is not there.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { readFileSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { version } from '../../package.json';
import { baseUrl } from '../../src/release/base-url';
import { checks } from '../../src/release/checks';
import { filesIn } from '../../src/release/folder';
import { releaseOf } from '../../src/release/release';
import { sumList } from '../../src/release/sums';
import { serve } from '../browser/serve';
import { BUILT, CHROMIUM, QUIET } from './excel';

const read = (file: string): string => readFileSync(file, 'utf8');
const bytesOf = (folder: string): number => [...filesIn(folder).values()].reduce((sum, content) => sum + content.length, 0);

let folder: string;
let site: { origin: string; server: Server };
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'without-bench-'));
  execFileSync('npx', ['webpack', '--mode', 'production', '--env', 'without-bench', '--output-path', folder]);
  site = await serve(folder);
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
}, 600_000);
afterAll(async () => {
  await browser.close();
  await new Promise(done => site.server.close(done));
  rmSync(folder, { recursive: true });
});

test('it is a release like any other, and small', () => {
  const files = filesIn(folder);
  const texts = { licence: read('LICENSE'), hosting: read('src/docs/hosting.md'), developers: read('DEVELOPERS.md') };
  const release = releaseOf(files, baseUrl('https://example.org/cad/'), version, texts);
  const faults = checks(release).flatMap(check => check.faults);
  expect(faults).toEqual([]);
  expect(sumList(release)).toContain('pane.html');
  expect([...files.keys()].filter(name => /bench|custom-functions\.js|univer/i.test(name))).toEqual([]);
  const isScript = (name: string): boolean => name.endsWith('.js') && !name.startsWith('help/');
  const scripts = (of: ReadonlyMap<string, Uint8Array>): number =>
    [...of].reduce((sum, [name, content]) => sum + (isScript(name) ? content.length : 0), 0);
  expect(scripts(files)).toBeLessThan(0.3 * scripts(filesIn(BUILT)));
  expect(bytesOf(folder)).toBeLessThan(bytesOf(BUILT));
});

test('its first page leads to the help, and every view of the pane is there', async () => {
  const page = await browser.newPage();
  const missing: string[] = [];
  page.on('response', response => void (response.status() >= 400 && missing.push(response.url())));
  await page.route('https://**', route => route.abort());
  await page.goto(`${site.origin}/`);
  await page.waitForURL('**/help/index.html');
  await page.goto(`${site.origin}/help/docs/support.html`);
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('When something does not work');
  await page.goto(`${site.origin}/pane.html`);
  const chunks = [...filesIn(folder).keys()].filter(name => /^chunks\/view-\w+\.js$/.test(name));
  expect(chunks.length).toBeGreaterThanOrEqual(5);
  for (const chunk of chunks) expect((await page.request.get(`${site.origin}/${chunk}`)).status()).toBe(200);
  expect(missing).toEqual([]);
  await page.close();
});
