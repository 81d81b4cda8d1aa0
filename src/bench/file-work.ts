// Files are read and written beside the page, so that it stays alive and a long job can be stopped.
import { readWorkbook } from "../hosts/xlsx/read";
import { writeWorkbook } from "../hosts/xlsx/write";
import type { Answer, Job } from "./files";

async function done(job: Job): Promise<unknown> {
  if (job.kind === "read") return readWorkbook(job.bytes);
  return writeWorkbook(job.plan);
}

addEventListener("message", ({ data }: MessageEvent<Job>) => {
  done(data).then(
    (value) => postMessage({ ok: true, value } satisfies Answer),
    (thrown: unknown) => postMessage({ ok: false, message: thrown instanceof Error ? thrown.message : String(thrown) } satisfies Answer),
  );
});
