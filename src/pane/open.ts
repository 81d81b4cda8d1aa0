// What the pane is made of, fetched when it is seen for the first time.
import { excelPort } from '../hosts/excel/excel-port';
import { excelFiles } from '../hosts/excel/files';
import type { SheetPort } from '../sheet/port';
import { START } from '../words/start';
import { languageOf, type PageLanguage, speech } from '../words/speech';
import type { ViewWords } from '../words/views';
import { besideEnglish, type ListedFunction } from './function-list';
import { listedIn } from './listed-in';
import { mountPane, type MountedPane } from './mount';
import type { KeptView } from './pane-services';
import { messageOf } from './pane-context';

type ListedFunctions = Promise<readonly ListedFunction[]>;

/** What was kept of the last time, by the storage helper: fetched after the pane stands. Of it only get and set keep their word. */
const STORED = 'bosswright';

async function keptView(): Promise<KeptView | undefined> {
  try {
    const { Storage, StorageType } = await import(/* webpackChunkName: "view-kept" */ '@microsoft/office-js-helpers');
    const kept = new Storage<string>(STORED, StorageType.LocalStorage);
    return { get: key => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) };
  } catch {
    // A browser may refuse storage to a page in a frame, as Excel on the web is.
    return undefined;
  }
}

/** That of Office's own menus; outside Excel that of the browser. */
const pageLanguage = (isInExcel: boolean): PageLanguage => languageOf(isInExcel ? Office.context.displayLanguage : navigator.language);

/** In German where they can be had. */
async function described(listed: ListedFunctions, language: PageLanguage): Promise<readonly ListedFunction[]> {
  const [functions, german] = await Promise.all([listed, language === 'de' ? listedIn('functions-de.json').catch(() => []) : []]);
  return german.length === 0 ? functions : besideEnglish(german, functions);
}

function show(place: HTMLElement, text: string): void {
  const notice = document.createElement('p');
  notice.className = 'bw-notice';
  notice.role = 'alert';
  notice.textContent = text;
  place.before(notice);
}

function portOfExcel(place: HTMLElement, { excel }: ViewWords): SheetPort | undefined {
  try {
    return excelPort(excel);
  } catch (thrown) {
    show(place, messageOf(thrown));
    return undefined;
  }
}

/** Undefined where it could not be opened. */
export async function openPane(isInExcel: boolean, listed: ListedFunctions): Promise<MountedPane | undefined> {
  const place = document.getElementById('pane') as HTMLElement;
  const language = pageLanguage(isInExcel);
  try {
    const [functions, { words, later, beside }] = await Promise.all([described(listed, language), speech(language)]);
    const port = isInExcel ? portOfExcel(place, words) : undefined;
    return mountPane(place, {
      host: port === undefined ? 'page' : 'excel',
      functions,
      words,
      later,
      benchUrl: 'index.html',
      ...(beside !== undefined && { beside }),
      ...(port !== undefined && { port, files: excelFiles(words.excel) }),
      keptView,
    });
  } catch (thrown) {
    show(place, START[language].paneFailed(messageOf(thrown)));
    return undefined;
  }
}
