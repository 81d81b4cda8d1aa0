// Files are read and written beside the page, so that it stays alive and a long job can be stopped.
import { copyOf } from '../handover/write/copy';
import { wantedSheets } from '../handover/write/wanted-sheets';
import { handover } from '../handover/handover';
import { sourceOfFile } from '../handover/read/from-file';
import type { TitleBlock } from '../handover/pages/title-block';
import { pngRenderer } from '../hosts/png/browser';
import { readWorkbook, workbookIn, type ReadWorkbook } from '../hosts/xlsx/read';
import { pagesOf } from '../hosts/xlsx/print';
import { writeOwnSheets, writeWorkbook } from '../hosts/xlsx/write';
import { readPackage, type UserPackage } from '../package/read';
import type { WorkbookPlan } from '../sheet/plan';
import type { SourceWorkbook } from '../sheet/workbook-values';
import { assertShowable } from './plan-of-file';
import type { WorkerReply, Copy, CopySummary, Job, FileJobs } from './file-jobs';

/** The counts do not depend on what stands in the title block. */
const untitled: TitleBlock = { part: '', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' };

/** What is open, as a file: the copy is an edit of it. */
async function saved(plan: WorkbookPlan): Promise<[file: UserPackage, source: SourceWorkbook]> {
  const file = readPackage(await writeWorkbook(plan));
  return [file, sourceOfFile(plan.name, workbookIn(file))];
}

/** A figure is as high with an empty picture. */
const NO_PICTURE = (): Uint8Array => new Uint8Array();

async function summary({ plan: given, choice }: FileJobs['summary']['given']): Promise<CopySummary> {
  const [, source] = await saved(given);
  const wanted = choice.sheets && wantedSheets(source, choice.sheets);
  const sheets = source.sheets.filter(({ name }) => wanted?.has(name) ?? true);
  const { live, asValues, findings, choosable, plan, own } = handover({ ...source, sheets }, untitled, { choice, pngOf: NO_PICTURE });
  const pages = plan.sheets.filter(({ name }) => own.has(name)).reduce((sum, sheet) => sum + pagesOf(sheet), 0);
  return { live, asValues, findings, choosable, pages, userSheets: source.sheets.map(({ name }) => name) };
}

async function copy({ plan, title, choice }: FileJobs['handOver']['given']): Promise<Copy> {
  const [file, source] = await saved(plan);
  const { bytes, live, asValues } = await copyOf(file, source, title, { choice, pngOf: await pngRenderer(), write: writeOwnSheets });
  return { bytes, live, asValues };
}

async function read(bytes: Uint8Array): Promise<ReadWorkbook> {
  const workbook = await readWorkbook(bytes);
  assertShowable(workbook);
  return workbook;
}

async function done(job: Job): Promise<FileJobs[keyof FileJobs]['answer']> {
  switch (job.kind) {
    case 'read':
      return read(job.given);
    case 'write':
      return writeWorkbook(job.given);
    case 'summary':
      return summary(job.given);
    case 'handOver':
      return copy(job.given);
  }
}

addEventListener('message', ({ data }: MessageEvent<Job>) => {
  done(data).then(
    value => postMessage({ ok: true, value } satisfies WorkerReply),
    (thrown: unknown) =>
      postMessage({ ok: false, message: thrown instanceof Error ? thrown.message : String(thrown) } satisfies WorkerReply),
  );
});
