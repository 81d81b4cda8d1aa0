// The commands on files: open and save.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import { download } from '../files/download';
import { startJob } from '../files/jobs';
import { planOfFile } from '../files/plan-of-file';
import { ask, tell } from './message-dialog';
import { withProgress } from './progress-dialog';
import { byId, count, messageOf } from './dom';

async function openFile(file: File, openPlan: (plan: WorkbookPlan) => void): Promise<void> {
  const found = await withProgress(`Reading ${file.name} …`, startJob('read', new Uint8Array(await file.arrayBuffer())));
  if (found === undefined) return;
  const formulas = found.sheets.flatMap(({ cells }) => cells).filter(({ formula }) => formula !== undefined).length;
  const hidden = found.sheets.filter(sheet => sheet.hidden).length;
  const agreed = await ask({
    title: `Open ${file.name}?`,
    lines: [
      `It has ${count(found.sheets.length, 'sheet')} with ${count(formulas, 'formula')}. Values and formulas are read; ` +
        'colours, widths and pictures are not.',
      ...(hidden === 0 ? [] : [`${count(hidden, 'hidden sheet')} will be shown.`]),
      ...(found.outside.length === 0 ? [] : [`Not read, because it leads out of the file: ${found.outside.join(', ')}.`]),
      'It is kept beside your other workbooks; the file itself stays as it is.',
    ],
    yes: 'Open',
    no: 'Cancel',
  });
  if (agreed) openPlan(planOfFile(file.name.replace(/\.xlsx$/i, ''), found));
}

export function fileCommands(workbook: BenchWorkbook, openPlan: (plan: WorkbookPlan) => void): void {
  const tried = (title: string, done: Promise<void>) => void done.catch((thrown: unknown) => tell({ title, lines: [messageOf(thrown)] }));

  const chooser = byId<HTMLInputElement>('chooser');
  byId('open').addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const [file] = chooser.files ?? [];
    chooser.value = '';
    if (file !== undefined) tried(`${file.name} is not opened`, openFile(file, openPlan));
  });

  async function save(): Promise<void> {
    const plan = await workbook.contents();
    const bytes = await withProgress('Writing the file …', startJob('write', plan));
    if (bytes !== undefined) download(bytes, plan.name);
  }
  byId('save').addEventListener('click', () => tried('The file is not written', save()));
}
