// The bench page: wires the spreadsheet, the side panel, the files and the keeping of the workbook.
import { demoWorkbook } from '../demo/demo';
import { startBenchWorkbook } from '../hosts/univer/bench-workbook';
import { readFunctions } from '../hosts/univer/metadata';
import type { SheetPort } from '../sheet/port';
import { ask } from './message-dialog';
import './bench.css';
import { sidePanel } from './side-panel';
import { cellView } from './cell-view';
import { byId, messageOf } from './dom';
import { fileCommands } from './file-commands';
import { guidesDialog } from './guides-dialog';
import { persistence } from './persistence';
import { pageRegions } from './page-regions';
import { splitter } from './splitter';

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

async function backToDemo(then: () => void): Promise<void> {
  const agreed = await ask({
    title: 'Back to the demo',
    lines: ['Your changes in this browser are discarded.'],
    yes: 'Discard and load the demo',
    no: 'Keep my workbook',
  });
  if (agreed) then();
}

function detailsButton(): void {
  const button = byId('details');
  button.addEventListener('click', () => {
    button.ariaExpanded = String(byId('panel').classList.toggle('open'));
  });
}

async function start(): Promise<void> {
  const functions = await readFunctions();
  byId('starting').remove();
  const workbook = startBenchWorkbook(byId('sheet'), functions);
  const files = fileCommands(workbook, plan => kept.openPlan(plan), say);
  const beside = sidePanel(workbook, functions, files.handOver);
  const kept = persistence(workbook, { plan: demoWorkbook, start: demoStart, opened: () => beside.choose('tab-Figure') }, say);
  kept.start();
  beside.choose(beside.current().id);
  cellView(workbook);
  pageRegions(beside.current);
  byId('back').addEventListener('click', () => void backToDemo(kept.backToDemo));
  guidesDialog(({ workbook: plan, start: at }) => kept.openPlan(plan, at));
  detailsButton();
  splitter();
  window.bosswright = { port: workbook.port };
}

start().catch((thrown: unknown) => say(`The bench could not start: ${messageOf(thrown)}`));
