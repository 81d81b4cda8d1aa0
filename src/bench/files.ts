// Asks for the work on files. Its code is fetched when it is first needed.
import type { HandoverFinding } from '../handover/read/finding';
import type { Paper, TitleBlock } from '../handover/pages/title-block';
import type { OpenWorkbook } from '../hosts/univer/bench-workbook';
import type { ReadWorkbook } from '../hosts/xlsx/read';
import type { WorkbookPlan } from '../sheet/plan';

/** What a hand-over copy will be: values of the functions that stay live, and those that go along as values. */
export interface CopySummary {
  readonly live: number;
  readonly asValues: number;
  readonly findings: readonly HandoverFinding[];
}

/** The copy itself. */
export interface Copy {
  readonly bytes: Uint8Array;
  readonly live: number;
  readonly asValues: number;
}

/** The work by name: what it is given, and what it answers. */
export interface Work {
  readonly read: { readonly given: Uint8Array; readonly answer: ReadWorkbook };
  readonly write: { readonly given: WorkbookPlan; readonly answer: Uint8Array };
  readonly summary: { readonly given: OpenWorkbook; readonly answer: CopySummary };
  readonly handOver: { readonly given: OpenWorkbook & { readonly title: TitleBlock; readonly paper: Paper }; readonly answer: Copy };
}

export type Job = { [Kind in keyof Work]: { readonly kind: Kind; readonly given: Work[Kind]['given'] } }[keyof Work];

export type Answer = { readonly ok: true; readonly value: Work[keyof Work]['answer'] } | { readonly ok: false; readonly message: string };

export interface Running<T> {
  /** Nothing if it was stopped. */
  readonly done: Promise<T | undefined>;
  stop(): void;
}

export function work<Kind extends keyof Work>(kind: Kind, given: Work[Kind]['given']): Running<Work[Kind]['answer']> {
  const worker = new Worker(new URL('./file-work.ts', import.meta.url));
  let stop = () => {};
  const done = new Promise<Work[Kind]['answer'] | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) =>
      data.ok ? resolve(data.value) : reject(new Error(data.message)),
    );
    worker.addEventListener('error', () => reject(new Error('the part of the page that works on files could not be loaded')));
    worker.postMessage({ kind, given } as Job);
  }).finally(() => worker.terminate());
  return { done, stop: () => stop() };
}
