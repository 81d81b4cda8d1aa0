// Asks for the work on files. Its code is fetched when it is first needed.
import type { ReadWorkbook } from "../hosts/xlsx/read";
import type { WorkbookPlan } from "../sheet/plan";

export type Job = { readonly kind: "read"; readonly bytes: Uint8Array } | { readonly kind: "write"; readonly plan: WorkbookPlan };

export type Answer = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly message: string };

export interface Running<T> {
  /** Nothing if it was stopped. */
  readonly done: Promise<T | undefined>;
  stop(): void;
}

function start<T>(job: Job): Running<T> {
  const worker = new Worker(new URL("./file-work.ts", import.meta.url));
  let stopped: () => void;
  const done = new Promise<T | undefined>((resolve, reject) => {
    stopped = () => resolve(undefined);
    worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => (data.ok ? resolve(data.value as T) : reject(new Error(data.message))));
    worker.addEventListener("error", () => reject(new Error("the part of the page that works on files could not be loaded")));
    worker.postMessage(job);
  }).finally(() => worker.terminate());
  return { done, stop: () => stopped() };
}

export const read = (bytes: Uint8Array): Running<ReadWorkbook> => start({ kind: "read", bytes });
export const write = (plan: WorkbookPlan): Running<Uint8Array> => start({ kind: "write", plan });
