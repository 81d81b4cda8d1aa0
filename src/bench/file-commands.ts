// The commands on files: open and save.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import { download } from '../files/download';
import { startJob } from '../files/jobs';
import { planOfFile } from '../files/plan-of-file';
import type { Words } from '../words/english';
import { ask, tell } from './message-dialog';
import { withProgress } from './progress-dialog';
import { troubleOf } from '../files/trouble';
import { byId } from './dom';

async function openFile(file: File, openPlan: (plan: WorkbookPlan) => void, W: Words['bench']): Promise<void> {
  const found = await withProgress(W.readingFile(file.name), startJob('read', new Uint8Array(await file.arrayBuffer())));
  if (found === undefined) return;
  const formulas = found.sheets.flatMap(({ cells }) => cells).filter(({ formula }) => formula !== undefined).length;
  const hidden = found.sheets.filter(sheet => sheet.hidden).length;
  const agreed = await ask({
    title: W.openAsked(file.name),
    lines: [
      W.has(found.sheets.length, formulas),
      ...(hidden === 0 ? [] : [W.hidden(hidden)]),
      ...(found.outside.length === 0 ? [] : [W.outside(found.outside.join(', '))]),
      W.keptBeside,
    ],
    yes: W.openYes,
    no: W.cancel,
  });
  if (agreed) openPlan(planOfFile(file.name.replace(/\.xlsx$/i, ''), found));
}

export function fileCommands(workbook: BenchWorkbook, openPlan: (plan: WorkbookPlan) => void, W: Words['bench']): void {
  const tried = (title: string, done: Promise<void>) =>
    void done.catch((thrown: unknown) => tell({ title, lines: [W.fault(troubleOf(thrown))] }, W));

  const chooser = byId<HTMLInputElement>('chooser');
  byId('open').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const [file] = chooser.files ?? [];
    chooser.value = '';
    if (file !== undefined) tried(W.notOpened(file.name), openFile(file, openPlan, W));
  });

  async function save(): Promise<void> {
    const plan = await workbook.contents();
    const bytes = await withProgress(W.writingFile, startJob('write', plan));
    if (bytes !== undefined) download(bytes, plan.name);
  }
  byId('save').addEventListener('click', () => tried(W.notWritten, save()));
}
