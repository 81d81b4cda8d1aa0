// The pane on a page of its own, over the demo workbook in memory: for the tests in a browser.
import { demoWorkbook } from '../../src/demo/demo';
import { startJob } from '../../src/files/jobs';
import { inGerman } from '../../src/german/metadata';
import type { ListedFunction } from '../../src/pane/function-list';
import { besideEnglish } from '../../src/pane/listed-in';
import { mountPane } from '../../src/pane/mount';
import { speech } from '../../src/words/speech';
import type { DefinedName, Picture } from '../../src/sheet/plan';
import { fakePort, type FakePort } from './fake-port';

declare global {
  interface Window {
    /** What the tests reach for. */
    pane: {
      readonly port: FakePort;
      readonly placed: { sheetName: string; picture: Picture }[];
      /** Files opened as new workbooks; where it cannot, why. */
      readonly opened: number[][];
      openFault: string | undefined;
      readonly names: DefinedName[];
      waitMs: number;
    };
  }
}

const port = fakePort(demoWorkbook);
const { read } = port;
window.pane = { port, placed: [], opened: [], openFault: undefined, names: [], waitMs: 0 };
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
const { functions: english } = (await (await fetch('functions.json')).json()) as { functions: readonly ListedFunction[] };
const { language, words, later, beside } = await speech(location.search === '?de' ? 'de' : 'en');
const functions = language === 'de' ? besideEnglish(english.map(inGerman), english) : english;
// a German host writes a comma
if (language === 'de') Object.assign(port, { signs: async () => ({ decimal: ',' }) });
mountPane(document.getElementById('pane') as HTMLElement, {
  port,
  files: {
    async read() {
      const plan = await port.plan();
      const bytes = await startJob('write', { ...plan, names: window.pane.names }).done;
      return { name: 'demo.xlsx', bytes: bytes ?? new Uint8Array() };
    },
    async open(bytes) {
      if (window.pane.openFault !== undefined) throw new Error(window.pane.openFault);
      window.pane.opened.push([...bytes]);
    },
    async keepName(name) {
      window.pane.names.push(name);
      return async () => void window.pane.names.pop();
    },
  },
  functions,
  words,
  later,
  ...(beside && { beside }),
  host: 'excel',
  kept: async () => ({ get: key => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) }),
});
