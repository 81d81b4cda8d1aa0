// Asks for the work on files. Its code is fetched when it is first needed.
import type { ChangedInput } from '../handover/compare/returned-changes';
import type { Language } from '../handover/words/language';
import type { ChangeList } from '../handover/compare/change-lists';
import type { HandoverFinding } from '../handover/read/finding';
import type { Choosable } from '../handover/own-pages';
import type { HandoverChoice } from '../handover/pages/choice';
import type { TitleBlock } from '../handover/pages/title-block';
import type { Offers } from '../handover/write/accepted';
import type { ReadWorkbook } from '../hosts/xlsx/read';
import type { CarriedKind } from '../package/carried';
import { type Trouble, UnreadableFile } from '../package/unreadable';
import type { DefinedName, WorkbookPlan } from '../sheet/plan';
import type { NamedFile } from '../sheet/workbook-files';

/** A workbook, and what the sender chooses of it. */
export interface Wanted {
  readonly file: NamedFile;
  /** Without it what the workbook remembers. */
  readonly choice?: HandoverChoice;
  /** Of what is carried unseen, what goes along. */
  readonly along: readonly CarriedKind[];
  /** Of the page: that of our sheets where no other was chosen. */
  readonly language: Language;
}

export interface CarriedChoice {
  readonly kind: CarriedKind;
  /** Count and names: `2 (Prices, Old)` */
  readonly amount: string;
  /** What is hidden on a sheet that goes along stays where it is. */
  readonly isAsked: boolean;
}

/** What a hand-over copy will be: values of the functions that stay live, and those that go along as values. */
export interface CopySummary {
  readonly choice: HandoverChoice;
  readonly live: number;
  readonly asValues: number;
  readonly findings: readonly HandoverFinding[];
  readonly choosable: Choosable;
  /** Of ours, on paper. */
  readonly pages: number;
  readonly userSheets: readonly { readonly name: string; readonly goesAlong: boolean }[];
  readonly carried: readonly CarriedChoice[];
  /** The same as long as nothing is another in the cells. */
  readonly mark: string;
}

/** The copy itself. */
export interface Copy {
  readonly bytes: Uint8Array;
  readonly live: number;
  readonly asValues: number;
  readonly ending: string;
  /** Keeps the choice. */
  readonly remembers: DefinedName;
}

export interface Returned extends Offers {
  /** What the answer was compared with. */
  readonly sent: NamedFile;
  readonly lists: readonly ChangeList[];
}

/** The work by name: what it is given, and what it returns. */
export interface FileJobs {
  readonly read: { readonly given: Uint8Array; readonly answer: ReadWorkbook };
  readonly write: { readonly given: WorkbookPlan; readonly answer: Uint8Array };
  readonly summary: { readonly given: Wanted; readonly answer: CopySummary };
  readonly handOver: {
    readonly given: Wanted & { readonly title: TitleBlock; readonly mark: string };
    /** Undefined where the cells are others than those of the mark. */
    readonly answer: { readonly copy: Copy | undefined };
  };
  readonly compare: {
    /** Without the file that was sent: beside what would be sent of the own one. */
    readonly given: { readonly own: NamedFile; readonly sent?: NamedFile; readonly returned: NamedFile; readonly language: Language };
    readonly answer: Returned;
  };
  readonly offers: {
    readonly given: {
      readonly own: NamedFile;
      readonly sent: NamedFile;
      readonly inputs: readonly ChangedInput[];
      readonly language: Language;
    };
    readonly answer: Offers;
  };
}

interface JobOf<Kind extends keyof FileJobs> {
  readonly kind: Kind;
  readonly given: FileJobs[Kind]['given'];
}

export type Job = { [Kind in keyof FileJobs]: JobOf<Kind> }[keyof FileJobs];

export type WorkerReply = { readonly ok: true; readonly value: FileJobs[keyof FileJobs]['answer'] } | ({ readonly ok: false } & Trouble);

export interface Running<T> {
  /** Undefined if it was stopped. */
  readonly done: Promise<T | undefined>;
  stop(): void;
}

export function startJob<Kind extends keyof FileJobs>(kind: Kind, given: FileJobs[Kind]['given']): Running<FileJobs[Kind]['answer']> {
  const worker = new Worker(/* webpackChunkName: "files" */ new URL('./worker.ts', import.meta.url));
  let stop = () => {};
  const done = new Promise<FileJobs[Kind]['answer'] | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.addEventListener('message', ({ data }: MessageEvent<WorkerReply>) =>
      data.ok ? resolve(data.value) : reject(Object.assign(new Error(data.message), { fault: data.fault })),
    );
    worker.addEventListener('error', () => reject(new UnreadableFile('notLoaded')));
    worker.postMessage({ kind, given } satisfies JobOf<Kind>);
  }).finally(() => worker.terminate());
  return { done, stop: () => stop() };
}
