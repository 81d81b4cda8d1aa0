// The pane in Excel, which is begun when somebody sees it; opened as a plain page it shows the functions without a workbook.
import { onSeen } from '../hosts/excel/visibility';
import { languageOf, type PageLanguage, speech } from '../words/speech';
import { described } from './listed-in';
import type { MountedPane } from './mount';
import type { PaneParts } from './open';

let opened: Promise<MountedPane | undefined> | undefined;

/** That of Office's own menus; outside Excel that of the browser. */
const pageLanguage = (isInExcel: boolean): PageLanguage => languageOf(isInExcel ? Office.context.displayLanguage : navigator.language);

/** Everything is asked for at once: what waits for another answer costs a way to the server and back. */
function open(isInExcel: boolean): Promise<MountedPane | undefined> {
  const language = pageLanguage(isInExcel);
  const parts: PaneParts = { language, functions: described(language), speech: speech(language) };
  // where one fails the pane says so, which comes later
  for (const part of [parts.functions, parts.speech]) part.catch(() => undefined);
  return import(/* webpackChunkName: "view-pane" */ './open').then(
    ({ openPane }) => openPane(isInExcel, parts),
    () => undefined,
  );
}

/** The actions of the manifest, and the view that each opens. */
const VIEW_OF_ACTION = {
  newTable: 'Table',
  explainCell: 'Cell',
  checkWorkbook: 'Check',
  handOver: 'Hand-over',
  compareReturned: 'Compare',
} as const;

function associateActions(): void {
  for (const [action, view] of Object.entries(VIEW_OF_ACTION))
    Office.actions.associate(action, (event: Office.AddinCommands.Event) => {
      const shown = async () => {
        await Office.addin.showAsTaskpane();
        opened ??= open(true);
        (await opened)?.open(view);
      };
      shown()
        .catch((thrown: unknown) => console.warn(thrown))
        // Until it is told so, Excel waits and then says that the add-in does not answer.
        .finally(() => event.completed());
    });
}

async function start(): Promise<void> {
  const { host } = typeof Office === 'undefined' ? { host: null } : await Office.onReady();
  const isInExcel = host !== null && host === Office.HostType.Excel;
  if (!isInExcel) {
    await open(false);
    return;
  }
  onSeen(isSeen => {
    if (isSeen) opened ??= open(true);
    // A part that could not be fetched is fetched when the pane is seen again.
    void opened?.then(pane => {
      if (pane === undefined) opened = undefined;
      else pane.show(isSeen);
    });
  });
  associateActions();
}

void start();
