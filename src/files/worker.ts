// Files are read and written beside the page, so that it stays alive and a long job can be stopped.
import { pngRenderer } from '../hosts/png/browser';
import { readWorkbook, type ReadWorkbook } from '../hosts/xlsx/read';
import { writeWorkbook } from '../hosts/xlsx/write';
import { handedOver, summary } from './hand-over';
import type { FileJobs, Job, WorkerReply } from './jobs';
import { assertShowable } from './plan-of-file';
import { troubleOf } from './trouble';
import { offers, returned } from './returned';

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
      return { copy: await handedOver(job.given, pngRenderer) };
    case 'compare':
      return returned(job.given, pngRenderer);
    case 'offers':
      return offers(job.given);
  }
}

addEventListener('message', ({ data }: MessageEvent<Job>) => {
  done(data).then(
    value => postMessage({ ok: true, value } satisfies WorkerReply),
    (thrown: unknown) => {
      const { message, fault } = troubleOf(thrown);
      postMessage({ ok: false, message, fault } satisfies WorkerReply);
    },
  );
});
