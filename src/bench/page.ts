// The bench: wires the spreadsheet, the side panel, the files and the keeping of the workbook.
import { demoWorkbook } from '../demo/demo';
import type { Guide } from '../demo/guides';
import { startBenchWorkbook } from '../hosts/univer/bench-workbook';
import type { SheetFunction } from '../hosts/univer/metadata';
import type { SheetPort } from '../sheet/port';
import type { BenchSpeech } from './bench-speech';
import { languageChoice } from './language-choice';
import { sidePanel } from './side-panel';
import { cellView } from './cell-view';
import { byId } from './dom';
import { fileCommands } from './file-commands';
import { persistence } from './persistence';
import { pageRegions } from './page-regions';
import { splitter } from './splitter';
import { workbooksDialog } from './workbooks-dialog';

declare global {
  interface Window {
    /** The canvas shows no cells to a program: browser tests read the sheets through the port. */
    bosswright?: { readonly port: SheetPort };
  }
}

/** The demo's point at once: its first choice fails, and the figure says why. */
const demoStart = { sheetName: 'Variants', at: 'B6' };

function say(text: string): void {
  byId('kept').textContent = text;
}

/** In a narrow window the panel opens over the sheet. Returns how to open it. */
function detailsButton(): (isOpen?: boolean) => void {
  const button = byId('details');
  const toggle = (isOpen?: boolean) => {
    button.ariaExpanded = String(byId('panel').classList.toggle('open', isOpen));
  };
  button.addEventListener('click', () => toggle());
  return toggle;
}

export async function start(functions: readonly SheetFunction[], speech: Promise<BenchSpeech>): Promise<void> {
  const spoken = await speech;
  const { words, language } = spoken;
  const workbook = startBenchWorkbook(byId('grid'), functions, language, words.bench);
  languageChoice(language);
  fileCommands(workbook, plan => void kept.openPlan(plan), words.bench);
  const beside = sidePanel(workbook, functions, spoken);
  const kept = persistence(workbook, { plan: demoWorkbook, start: demoStart, opened: () => beside.choose('tab-Figure') }, words.bench, say);
  kept.start();
  void workbook.stands.then(() => byId('starting').remove());
  beside.choose(beside.current().id);
  cellView(workbook, words.bench);
  pageRegions(beside.current);
  const begin = ({ workbook: plan, start: at }: Guide) => void (plan === demoWorkbook ? kept.openDemo() : kept.openPlan(plan, at));
  workbooksDialog(
    {
      shelf: kept.shelf,
      name: workbook.name,
      rename: workbook.rename,
      open: key => void kept.openShelved(key),
      begin,
      discard: kept.discardShelved,
    },
    words,
  );
  const openPanel = detailsButton();
  byId('hand-over').addEventListener('click', () => {
    openPanel(true);
    beside.choose('tab-Hand-over');
    beside.current().focus();
  });
  splitter();
  window.bosswright = { port: workbook.port };
}
