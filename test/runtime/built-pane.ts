// The built page of the pane inside a made-up Excel, which shows it when the test says so and gives its workbook in slices.
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { BUILT } from './excel';

const ORIGIN = 'https://pane.test/';

/** In the place of Office.js: counts exchanges, and is seen when the test says so. */
const OFFICE = `
  window.made = { exchanges: 0, associated: 0, isSeen: false, actions: {}, completed: 0, file: [], slices: 0, isOpen: 0, refuses: -1, created: [] };
  Object.defineProperty(document, 'visibilityState', { get: () => made.isSeen ? 'visible' : 'hidden' });
  window.CustomFunctions = { associate() { made.associated++; }, Error, ErrorCode: {} };
  window.Excel = { run: async () => { made.exchanges++; throw new Error('made up'); }, createWorkbook: async base64 => { made.created.push(base64); } };
  const told = (tell, value) => setTimeout(() => tell(value === undefined ? { status: 'failed', error: { message: 'made up' } } : { status: 'succeeded', value }));
  window.Office = {
    HostType: { Excel: 'Excel' },
    VisibilityMode: { taskpane: 'Taskpane', hidden: 'Hidden' },
    AsyncResultStatus: { Succeeded: 'succeeded' },
    FileType: { Compressed: 'compressed' },
    onReady: async () => ({ host: 'Excel' }),
    context: {
      requirements: { isSetSupported: () => true },
      document: {
        url: 'C:\\\\parts\\\\in.xlsx',
        getFileAsync(type, { sliceSize }, tell) {
          made.isOpen++;
          const size = Math.min(sliceSize, 10000);
          told(tell, {
            size: made.file.length,
            sliceCount: Math.ceil(made.file.length / size),
            getSliceAsync(index, tellSlice) {
              made.slices++;
              told(tellSlice, index === made.refuses ? undefined : { data: made.file.slice(index * size, (index + 1) * size) });
            },
            closeAsync(tellClosed) { made.isOpen--; told(tellClosed, null); },
          });
        },
      },
    },
    actions: { associate(name, run) { made.actions[name] = run; } },
    addin: { showAsTaskpane: async () => made.show(true), onVisibilityModeChanged: async told => { made.show = isSeen => told({ visibilityMode: isSeen ? 'Taskpane' : 'Hidden' }); return async () => {}; } },
  };
`;

export interface Made {
  readonly exchanges: number;
  readonly associated: number;
  completed: number;
  readonly actions: Readonly<Record<string, (event: { completed(): void }) => void>>;
  /** The workbook. */
  file: readonly number[];
  readonly slices: number;
  readonly isOpen: number;
  /** The slice that Excel does not give. */
  refuses: number;
  /** New workbooks, in base 64. */
  readonly created: readonly string[];
  show(isSeen: boolean): void;
}

export const madeIn = (page: Page): Promise<Made> => page.evaluate(() => ({ ...(window as unknown as { made: Made }).made }));

export interface BuiltPane {
  readonly page: Page;
  /** Files that were asked for. */
  readonly own: readonly string[];
}

export async function builtPane(browser: Browser): Promise<BuiltPane> {
  const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
  const own: string[] = [];
  await page.route('**', route => {
    const url = route.request().url();
    if (!url.startsWith(ORIGIN)) return route.fulfill({ contentType: 'text/javascript', body: OFFICE });
    own.push(url.slice(ORIGIN.length));
    return route.fulfill({ path: path.join(BUILT, url.slice(ORIGIN.length)) });
  });
  await page.goto(`${ORIGIN}pane.html`);
  await page.waitForTimeout(2_000);
  return { page, own };
}

/** As the menu of Excel does. */
export const act = (page: Page, action: string): Promise<void> =>
  page.evaluate(name => {
    const { made } = window as unknown as { made: Made };
    made.actions[name]?.({ completed: () => void made.completed++ });
  }, action);
