// The zip of the built add-in, unpacked and served under a sub-path: whole, and it works from there.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { version } from '../../package.json';
import { baseUrl } from '../../src/release/base-url';
import { checks } from '../../src/release/checks';
import { filesIn } from '../../src/release/folder';
import { releaseOf, zipOf } from '../../src/release/release';
import { packedSums } from '../../src/release/sums';
import { serve } from '../browser/serve';
import { BUILT, CHROMIUM, QUIET } from './excel';

const HOSTED = 'https://appsforoffice.microsoft.com/lib/1/hosted/';
const OFFICE = path.dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/office.js'));
const read = (file: string): string => readFileSync(file, 'utf8');

let root: string;
let folder: string;
let zip: Uint8Array;
let site: { origin: string; server: Server };
let browser: Browser;
beforeAll(async () => {
  root = mkdtempSync(path.join(tmpdir(), 'release-'));
  folder = path.join(root, 'cad/bosswright');
  zip = zipOf(
    releaseOf(filesIn(BUILT), baseUrl('https://example.org/cad/bosswright'), version, {
      licence: read('LICENSE'),
      hosting: read('src/docs/hosting.md'),
      developers: read('DEVELOPERS.md'),
    }),
  );
  for (const [file, content] of Object.entries(unzipSync(zip))) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  site = await serve(root);
  browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
});
afterAll(async () => {
  await browser.close();
  await new Promise(done => site.server.close(done));
  rmSync(root, { recursive: true });
});

/** A page under the sub-path, what it asked for elsewhere, and its complaints. */
async function opened(file: string): Promise<{ readonly page: Page; readonly foreign: string[]; readonly faults: string[] }> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.setDefaultTimeout(90_000);
  const under = `${site.origin}/cad/bosswright/`;
  const foreign: string[] = [];
  const faults: string[] = [];
  page.on('pageerror', error => faults.push(error.message));
  page.on('response', response => void (response.status() >= 400 && faults.push(`${response.status()} ${response.url()}`)));
  await page.route('**', route => {
    const url = route.request().url();
    if (url.startsWith(under)) return route.continue();
    foreign.push(url);
    return url.startsWith(HOSTED) ? route.fulfill({ path: path.join(OFFICE, url.slice(HOSTED.length)) }) : route.abort();
  });
  await page.goto(`${under}${file}`);
  return { page, foreign, faults };
}

test('what was unpacked is whole', () => {
  expect(checks(filesIn(folder), { sums: packedSums(zip) ?? new Map(), from: 'the zip' }).flatMap(({ faults }) => faults)).toEqual([]);
});

test('the bench opens and calculates', async () => {
  const { page, foreign, faults } = await opened('index.html');
  await page.waitForFunction(() => window.bosswright !== undefined);
  const sheetName = await page.evaluate(() =>
    window.bosswright?.port.add({
      name: 'Hosted',
      widths: [20],
      cells: [
        { at: 'A1', role: 'result', formula: '=ENCL.BOSS.OD(3,1.2)' },
        { at: 'A2', role: 'result', formula: '=ENCL.VERSION()' },
      ],
    }),
  );
  const values = (): Promise<unknown[]> =>
    page.evaluate(async name => (await window.bosswright?.port.read(name ?? ''))?.slice(0, 2).map(row => row[0]?.value) ?? [], sheetName);
  await expect.poll(values).toEqual([5.4, expect.stringContaining(`Bosswright ${version},`)]);
  expect(faults).toEqual([]);
  expect(foreign).toEqual([]);
});

test('the pane opens and finds its functions', async () => {
  const { page, foreign, faults } = await opened('pane.html');
  await expect.poll(() => page.getByText('BOSS.OD').count()).toBeGreaterThan(0);
  expect(faults).toEqual([]);
  expect(foreign.filter(url => !url.startsWith(HOSTED))).toEqual([]);
});
