// Asks for the work on files. Its code is fetched when it is first needed.
import type { HandoverFinding } from '../handover/read/finding';
import type { Choosable } from '../handover/own-pages';
import type { HandoverChoice } from '../handover/pages/choice';
import type { TitleBlock } from '../handover/pages/title-block';
import type { ReadWorkbook } from '../hosts/xlsx/read';
import type { WorkbookPlan } from '../sheet/plan';

/** What a hand-over copy will be: values of the functions that stay live, and those that go along as values. */
export interface CopySummary {
  readonly live: number;
  readonly asValues: number;
  readonly findings: readonly HandoverFinding[];
  readonly choosable: Choosable;
  /** Of ours, on paper. */
  readonly pages: number;
  readonly userSheets: readonly string[];
}

/** The copy itself. */
export interface Copy {
  readonly bytes: Uint8Array;
  readonly live: number;
  readonly asValues: number;
}

/** The work by name: what it is given, and what it returns. */
export interface FileJobs {
  readonly read: { readonly given: Uint8Array; readonly answer: ReadWorkbook };
  readonly write: { readonly given: WorkbookPlan; readonly answer: Uint8Array };
  readonly summary: {
    readonly given: { readonly plan: WorkbookPlan; readonly choice: HandoverChoice };
    readonly answer: CopySummary;
  };
  readonly handOver: {
    readonly given: { readonly plan: WorkbookPlan; readonly title: TitleBlock; readonly choice: HandoverChoice };
    readonly answer: Copy;
  };
}

interface JobOf<Kind extends keyof FileJobs> {
  readonly kind: Kind;
  readonly given: FileJobs[Kind]['given'];
}

export type Job = { [Kind in keyof FileJobs]: JobOf<Kind> }[keyof FileJobs];

export type WorkerReply =
  { readonly ok: true; readonly value: FileJobs[keyof FileJobs]['answer'] } | { readonly ok: false; readonly message: string };

export interface Running<T> {
  /** Undefined if it was stopped. */
  readonly done: Promise<T | undefined>;
  stop(): void;
}

export function startJob<Kind extends keyof FileJobs>(kind: Kind, given: FileJobs[Kind]['given']): Running<FileJobs[Kind]['answer']> {
  const worker = new Worker(new URL('./file-worker.ts', import.meta.url));
  let stop = () => {};
  const done = new Promise<FileJobs[Kind]['answer'] | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.addEventListener('message', ({ data }: MessageEvent<WorkerReply>) =>
      data.ok ? resolve(data.value) : reject(new Error(data.message)),
    );
    worker.addEventListener('error', () => reject(new Error('the part of the page that works on files could not be loaded')));
    worker.postMessage({ kind, given } satisfies JobOf<Kind>);
  }).finally(() => worker.terminate());
  return { done, stop: () => stop() };
}
