// The pane in Excel; opened as a plain page it shows the functions without a workbook.
import { Storage, StorageType } from '@microsoft/office-js-helpers';
import { excelPort } from '../hosts/excel/excel-port';
import type { SheetPort } from '../sheet/port';
import type { ListedFunction } from './function-list';
import { mountPane } from './mount';
import type { KeptView } from './pane-services';
import { messageOf } from './pane-context';

// Opened as a plain page without a network there is no Office.js; functions.js, loaded next, then registers with nobody.
globalThis.CustomFunctions ??= { associate() {} } as unknown as typeof CustomFunctions;

/** Of the storage helper only get and set keep their word; a browser may refuse storage to a page in a frame, as Excel on the web is. */
function keptView(): KeptView | undefined {
  try {
    const kept = new Storage<string>('bosswright', StorageType.LocalStorage);
    return { get: key => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) };
  } catch {
    return undefined;
  }
}

async function readFunctions(): Promise<readonly ListedFunction[]> {
  const response = await fetch('functions.json');
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return ((await response.json()) as { readonly functions: readonly ListedFunction[] }).functions;
}

async function portOfExcel(): Promise<SheetPort | undefined> {
  if (typeof Office === 'undefined') return undefined;
  const { host } = await Office.onReady();
  return host === Office.HostType.Excel ? excelPort() : undefined;
}

function show(text: string): void {
  const notice = document.createElement('p');
  notice.className = 'bw-notice';
  notice.role = 'alert';
  notice.textContent = text;
  place.before(notice);
}

const place = document.getElementById('pane') as HTMLElement;

async function start(): Promise<void> {
  const functions = await readFunctions();
  const port = await portOfExcel().catch((thrown: unknown) => {
    show(messageOf(thrown));
    return undefined;
  });
  const kept = keptView();
  mountPane(place, {
    hostName: port === undefined ? 'this page' : 'your workbook',
    functions,
    benchUrl: 'index.html',
    ...(port !== undefined && { port }),
    ...(kept !== undefined && { kept }),
  });
}

start().catch((thrown: unknown) => show(`The pane could not start: ${messageOf(thrown)}`));
