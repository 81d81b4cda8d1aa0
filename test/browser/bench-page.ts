// The bench in a real browser, worked with mouse and keyboard; cells are read through the port that the page leaves for tests.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import type { SheetPlan } from '../../src/sheet/plan';
import type { SheetCell } from '../../src/sheet/port';
import { expect } from 'vitest';
import { serve } from './serve';

const dist = process.env.BUILT ?? 'dist';
const browserPath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const grid = 'canvas[id^="univer-sheet-main-canvas"]';
const nameBox = '[data-u-comp="defined-name"]';

/** How many times slower than this machine the pages run: SLOWER=4 plays every flow as on an old one. */
const slower = Number(process.env.SLOWER ?? 1);

const quiet = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

export interface BenchPage {
  readonly page: Page;
  readonly origin: string;
  /** Addresses asked for outside the origin; none may be. */
  readonly foreign: string[];
  readonly faults: string[];
  open(): Promise<void>;
  goTo(sheetName: string, at: string): Promise<void>;
  /** Shows a tab beside the sheet. */
  tab(name: string): Promise<void>;
  /** Moves the mouse over the sheet. */
  hover(place: Place): Promise<void>;
  /** Colours on the whole grid, or at one place: `#b23a1e`. */
  colours(place?: Place): Promise<Set<string>>;
  type(text: string): Promise<void>;
  read(sheetName: string): Promise<readonly (readonly SheetCell[])[]>;
  cell(sheetName: string, at: string): Promise<SheetCell | undefined>;
  add(plan: SheetPlan): Promise<string>;
  text(id: string): Promise<string>;
  /** To look at: into screenshots beside the built files. */
  picture(name: string): Promise<void>;
  close(): Promise<void>;
}

/** On a sheet whose first row is a title: pixels right of the row numbers, and the row below the title, counted from zero. */
export interface Place {
  readonly leftPx: number;
  readonly row: number;
}

function onCanvas({ leftPx, row }: Place): { x: number; y: number } {
  const columnHeaderPx = 20,
    titleRowPx = 40,
    plainRowPx = 24,
    rowHeaderPx = 46;
  return { x: rowHeaderPx + leftPx, y: columnHeaderPx + titleRowPx + (row + 0.25) * plainRowPx };
}

function position(at: string): { row: number; column: number } {
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
  return { row: Number(digits) - 1, column: [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1 };
}

async function launch(): Promise<Browser> {
  if (!existsSync(join(dist, 'bench.html'))) throw new Error('dist/bench.html is missing: run npm run build first');
  if (!existsSync(browserPath)) throw new Error(`there is no Chromium at ${browserPath}: install it, or name it in the variable CHROMIUM`);
  return chromium.launch({ executablePath: browserPath, args: quiet });
}

/** The sheet engine's own words: its bar of tabs looks for a tab just removed, its parts ask after one just closed. */
const ENGINE_SAYS = /^Index out of bounds$|\[redi\]/;

export async function benchPage(): Promise<BenchPage> {
  const browser = await launch();
  const { origin, server } = await serve(dist);
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, permissions: ['clipboard-read', 'clipboard-write'] });
  context.setDefaultTimeout(120_000 * slower);
  if (slower > 1)
    context.on('page', async page => (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: slower }));
  const page = await context.newPage();
  const foreign: string[] = [];
  const faults: string[] = [];
  context.on('request', request => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(`${origin}/`)) foreign.push(request.url());
  });
  context.on('console', message => {
    if (message.type() === 'error' && !ENGINE_SAYS.test(message.text())) faults.push(message.text());
  });
  context.on('weberror', error => {
    if (!ENGINE_SAYS.test(error.error().message)) faults.push(error.error().message);
  });

  const read = (sheetName: string) => page.evaluate(name => window.bosswright?.port.read(name) ?? [], sheetName);
  return {
    page,
    origin,
    foreign,
    faults,
    read,
    async open() {
      await page.goto(origin);
      await page.waitForURL('**/bench.html');
      await page.waitForFunction(() => window.bosswright !== undefined);
      await page.locator('#sheet canvas').first().waitFor();
    },
    async goTo(sheetName, at) {
      await page.locator('[data-u-comp="slide-tab-item"]', { hasText: sheetName }).first().click();
      await page.locator(`${nameBox} input`).click();
      await page.keyboard.press('Control+a');
      await page.keyboard.type(at);
      await page.keyboard.press('Enter');
      await expect.poll(() => page.evaluate(() => window.bosswright?.port.selection())).toEqual({ sheetName, at });
      // What is typed before the name box has given up the keyboard would land there.
      await page.waitForFunction(box => document.activeElement?.closest(box) === null, nameBox);
    },
    async tab(name) {
      await page.locator('#tabs').getByRole('tab', { name }).click();
    },
    async hover(place) {
      const canvas = await page.locator(grid).boundingBox();
      if (canvas === null) throw new Error('there is no grid');
      const { x, y } = onCanvas(place);
      await page.mouse.move(canvas.x + x, canvas.y + y, { steps: 5 });
    },
    async colours(place) {
      const drawn = await page.evaluate(
        ({ grid, spot }) => {
          const canvas = document.querySelector<HTMLCanvasElement>(grid);
          const pixels = canvas
            ?.getContext('2d')
            ?.getImageData(spot?.x ?? 0, spot?.y ?? 0, spot ? 1 : canvas.width, spot ? 1 : canvas.height).data;
          return [...new Set(new Uint32Array(pixels?.buffer ?? new ArrayBuffer(0)))];
        },
        { grid, spot: place && onCanvas(place) },
      );
      // The bytes of a pixel stand in the order alpha, blue, green, red.
      return new Set(
        drawn.map(pixel => `#${[pixel, pixel >>> 8, pixel >>> 16].map(byte => (byte & 255).toString(16).padStart(2, '0')).join('')}`),
      );
    },
    async type(text) {
      await page.keyboard.type(text, { delay: 15 });
      await page.keyboard.press('Enter');
    },
    async cell(sheetName, at) {
      const { row, column } = position(at);
      return (await read(sheetName))[row]?.[column];
    },
    async add(plan) {
      return page.evaluate(given => {
        if (window.bosswright === undefined) throw new Error('the bench has not started');
        return window.bosswright.port.add(given);
      }, plan);
    },
    text: async id => (await page.locator(`#${id}`).textContent()) ?? '',
    async picture(name) {
      await page.screenshot({ path: join(dist, 'screenshots', `${name}.png`) });
    },
    async close() {
      await browser.close();
      await new Promise(resolve => server.close(resolve));
    },
  };
}
