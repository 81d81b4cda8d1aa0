// What the pane is made of, fetched when it is seen for the first time.
import { excelPort } from '../hosts/excel/excel-port';
import { excelFiles } from '../hosts/excel/files';
import type { SheetPort } from '../sheet/port';
import type { PageLanguage, Speech } from '../words/speech';
import { START } from '../words/start';
import type { ViewWords } from '../words/views';
import type { ListedFunction } from './function-list';
import { keptView } from './kept-view';
import { mountPane, type MountedPane } from './mount';
import { messageOf } from './pane-context';

/** What the pane is opened with, all asked for at once. */
export interface PaneParts {
  readonly language: PageLanguage;
  readonly functions: Promise<readonly ListedFunction[]>;
  readonly speech: Promise<Speech>;
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
export async function openPane(isInExcel: boolean, parts: PaneParts): Promise<MountedPane | undefined> {
  const place = document.getElementById('pane') as HTMLElement;
  try {
    const [functions, { words, later, beside }] = await Promise.all([parts.functions, parts.speech]);
    const port = isInExcel ? portOfExcel(place, words) : undefined;
    return mountPane(place, {
      host: port === undefined ? 'page' : 'excel',
      functions,
      words,
      later,
      kept: keptView,
      benchUrl: 'index.html',
      ...(beside !== undefined && { beside }),
      ...(port !== undefined && { port, files: excelFiles(words.excel) }),
    });
  } catch (thrown) {
    show(place, START[parts.language].paneFailed(messageOf(thrown)));
    return undefined;
  }
}
