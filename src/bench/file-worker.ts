// Files are read and written beside the page, so that it stays alive and a long job can be stopped.
import { looksOf, sourceOf } from '../handover/read/from-plan';
import { handover, type Making } from '../handover/handover';
import type { TitleBlock } from '../handover/pages/title-block';
import type { OpenWorkbook } from '../hosts/univer/bench-workbook';
import { pngRenderer } from '../hosts/png/browser';
import { readWorkbook, type ReadWorkbook } from '../hosts/xlsx/read';
import { writeWorkbook } from '../hosts/xlsx/write';
import { assertShowable } from './plan-of-file';
import type { WorkerReply, Copy, CopySummary, Job, FileJobs } from './file-jobs';

/** The counts do not depend on what stands in the title block. */
const untitled: TitleBlock = { part: '', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' };

const copyOf = ({ plan, names }: OpenWorkbook, title: TitleBlock, making?: Making) =>
  handover({ ...sourceOf(plan), names: new Map(names) }, looksOf(plan), title, making);

function summary(open: OpenWorkbook): CopySummary {
  const { live, asValues, findings } = copyOf(open, untitled);
  return { live, asValues, findings };
}

async function copy({ title, paper, ...open }: FileJobs['handOver']['given']): Promise<Copy> {
  const { plan, live, asValues } = copyOf(open, title, { paper, pngOf: await pngRenderer() });
  return { bytes: await writeWorkbook(plan), live, asValues };
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
