// The built functions.js inside the custom-functions runtime of Excel, under a host that speaks the runtime's bridge.
// The bridge is not documented: the package of the runtime is pinned, and every fact used here is one that it showed.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { chromium } from 'playwright-core';

export const BUILT = process.env['BUILT'] ?? 'dist';
/** All scripts that the bench asks for until its sheet stands. */
export const BENCH_START = ['bench.js', 'functions.js', ...['engine', 'views', 'rest', 'page'].map(name => `chunks/bench-${name}.js`)];
const OFFICE = path.dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/custom-functions-runtime.js'));
export const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
export const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const ORIGIN = 'https://functions.test';

/** How a call is marked: errors reach the function; values may be data types, wrapped as text. */
export const ERRORS = 4;
export const DATA_TYPES = 8;

export interface Call {
  readonly id: string;
  readonly args: readonly unknown[];
  readonly flags?: number;
}

/** What the runtime hands over for a call; the code belongs to a failure. */
export interface Handed {
  readonly ok: boolean;
  readonly value: unknown;
  readonly code?: number;
}

export interface Settled {
  /** In the order of the calls. */
  readonly results: readonly Handed[];
  readonly batches: number;
  readonly ms: number;
}

export interface Excel {
  /** Every id in the order of its association, twice where it is given twice. */
  readonly associated: readonly string[];
  readonly requests: readonly string[];
  readonly faults: readonly string[];
  /** Whether the parts of functions.js that it asks for later can be had. */
  isServed: boolean;
  /** Each level is sent when the one before it has been handed over, as Excel does with cells that depend on each other. */
  calculate(levels: readonly (readonly Call[])[]): Promise<Settled>;
  close(): Promise<void>;
}

/** The code belongs to a failure only. */
type Row = readonly [invocation: number, ok: boolean, value: unknown, code: number];

interface Action {
  readonly Id: number;
  readonly Name: string;
  readonly ArgumentInfo: { readonly Arguments: readonly [readonly Row[]] };
}

interface HostWindow {
  _richApiNativeBridge?: unknown;
  CustomFunctions?: { associate(id: string, wrapper: unknown): void };
  associated: string[];
  settle(levels: readonly (readonly Call[])[]): Promise<Settled>;
}

/** Runs in the page before the runtime. */
function host(): void {
  const page = window as unknown as HostWindow;
  const rows = new Map<number, Row>();
  let next = 0;
  let batches = 0;
  let waiting: { readonly upTo: number; readonly done: () => void } | undefined;

  const bridge = {
    onMessageFromHost: (_text: string): void => undefined,
    sendMessageToHost(text: string): void {
      const { id, message } = JSON.parse(text) as { id: number; message: { body: { Actions: readonly Action[] } } };
      const { Actions: actions } = message.body;
      const body = { Results: actions.map(action => ({ ActionId: action.Id, Value: null })) };
      setTimeout(() => bridge.onMessageFromHost(JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body } })), 0);
      for (const { ArgumentInfo } of actions.filter(({ Name }) => Name === 'SetInvocationArrayResults')) {
        batches++;
        for (const row of ArgumentInfo.Arguments[0]) rows.set(row[0], row);
      }
      if (waiting !== undefined && rows.size >= waiting.upTo) waiting.done();
    },
  };
  page._richApiNativeBridge = bridge;

  page.settle = async levels => {
    // the runtime hands over at most once in half a second: a call before must not count
    await new Promise(rested => setTimeout(rested, 600));
    const first = next;
    const before = batches;
    const start = performance.now();
    for (const level of levels) {
      const settled = new Promise<void>(done => (waiting = { upTo: next + level.length, done }));
      const entries = level.map(({ id, args, flags = 0 }) => [1, 1000, '', [next, id, args, null, flags], next++]);
      bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } }));
      await settled;
    }
    const ms = performance.now() - start;
    const results = Array.from({ length: next - first }, (_, i): Handed => {
      const [, ok, value, code] = rows.get(first + i) as Row;
      return ok ? { ok, value } : { ok, value, code };
    });
    return { results, batches: batches - before, ms };
  };
}

/** Runs between the runtime and the functions: writes down what is associated and passes it on. */
const NOTING = `
  window.associated = [];
  const { associate } = CustomFunctions;
  CustomFunctions.associate = (id, wrapper) => { associated.push(id); associate.call(CustomFunctions, id, wrapper); };
`;
const ALONE = '<!doctype html><script src="custom-functions-runtime.js"></script>';
const PAGE = `${ALONE}<script>${NOTING}</script><script src="functions.js"></script>`;

/** With our functions, or the runtime alone. */
export async function excel(scripts: 'functions' | 'none' = 'functions'): Promise<Excel> {
  const functions = path.join(BUILT, 'functions.js');
  if (!existsSync(functions)) throw new Error(`${functions} is missing: run npm run build first`);
  if (!existsSync(CHROMIUM)) throw new Error(`there is no Chromium at ${CHROMIUM}: install it, or name it in the variable CHROMIUM`);
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
  const page = await browser.newPage();
  page.setDefaultTimeout(120_000);
  const requests: string[] = [];
  const faults: string[] = [];
  const opened = { requests, faults, isServed: true } as unknown as Excel;
  await page.route('**', route => {
    const url = route.request().url();
    requests.push(url);
    const name = url.startsWith(`${ORIGIN}/`) ? url.slice(ORIGIN.length + 1) : undefined;
    const isPart = name?.startsWith('chunks/') === true;
    if (name === undefined || (isPart && !opened.isServed)) return route.abort();
    if (name === '') return route.fulfill({ contentType: 'text/html', body: scripts === 'functions' ? PAGE : ALONE });
    return route.fulfill({ path: path.join(isPart || name === 'functions.js' ? BUILT : OFFICE, name) });
  });
  page.on('console', message => faults.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', error => faults.push(error.message));
  await page.addInitScript(host);
  await page.goto(`${ORIGIN}/`);
  Object.assign(opened, {
    associated: await page.evaluate(() => (window as unknown as Partial<HostWindow>).associated ?? []),
    calculate: (levels: readonly (readonly Call[])[]) => page.evaluate(given => (window as unknown as HostWindow).settle(given), levels),
    close: () => browser.close(),
  });
  return opened;
}
