// The pane on a page of its own, over the demo workbook in memory: for the tests in a browser.
import { demoWorkbook } from '../../src/demo/demo';
import type { ListedFunction } from '../../src/pane/function-list';
import { mountPane } from '../../src/pane/mount';
import type { Picture } from '../../src/sheet/plan';
import { fakePort, type FakePort } from './fake-port';

declare global {
  interface Window {
    /** What the tests reach for. */
    pane: { readonly port: FakePort; readonly placed: { sheetName: string; picture: Picture }[]; handedOver: number; waitMs: number };
  }
}

const port = fakePort(demoWorkbook);
const { read } = port;
window.pane = { port, placed: [], handedOver: 0, waitMs: 0 };
Object.assign(port, {
  async read(sheetName: string) {
    await new Promise(resolve => setTimeout(resolve, window.pane.waitMs));
    return read(sheetName);
  },
  async placePicture(sheetName: string, picture: Picture) {
    window.pane.placed.push({ sheetName, picture });
  },
});
const kept = new Map<string, string>();
const { functions } = (await (await fetch('functions.json')).json()) as { functions: readonly ListedFunction[] };
const inGerman = location.search === '?de' ? { german: await import('../../src/german/joint') } : {};
mountPane(document.getElementById('pane') as HTMLElement, {
  port,
  functions,
  ...inGerman,
  hostName: 'this workbook',
  handOver: () => {
    window.pane.handedOver++;
  },
  kept: { get: key => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) },
});
