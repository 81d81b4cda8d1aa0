// Open… and Save as .xlsx.
import type { BenchWorkbook } from "../hosts/bench/bench-workbook";
import type { WorkbookPlan } from "../sheet/plan";
import { ask, tell } from "./ask";
import { busy } from "./busy";
import { byId, element } from "./dom";
import { read, write } from "./files";
import { openedPlan } from "./opened";

const fileType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;
const messageOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

export function download(bytes: Uint8Array, name: string): void {
  const url = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: fileType }));
  const link = element("a");
  link.href = url;
  link.download = `${name.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, "_").trim() || "workbook"}.xlsx`;
  link.click();
  URL.revokeObjectURL(url);
}

async function openFile(file: File, openPlan: (plan: WorkbookPlan) => void): Promise<void> {
  const found = await busy(`Reading ${file.name} …`, read(new Uint8Array(await file.arrayBuffer())));
  if (found === undefined) return;
  const formulas = found.sheets.flatMap(({ cells }) => cells).filter(({ formula }) => formula !== undefined).length;
  const hidden = found.sheets.filter((sheet) => sheet.hidden).length;
  const agreed = await ask({
    title: `Open ${file.name}?`,
    lines: [
      `It has ${count(found.sheets.length, "sheet")} with ${count(formulas, "formula")}. Values and formulas are read; colours, widths and pictures are not.`,
      ...(hidden === 0 ? [] : [`${count(hidden, "hidden sheet")} will be shown.`]),
      ...(found.outside.length === 0 ? [] : [`Not read, because it leads out of the file: ${found.outside.join(", ")}.`]),
      "It takes the place of the sheets that are open now. Save them first if you still need them.",
    ],
    yes: "Open and replace",
    no: "Keep my sheets",
  });
  if (agreed) openPlan(openedPlan(file.name.replace(/\.xlsx$/i, ""), found));
}

export function fileCommands(workbook: BenchWorkbook, openPlan: (plan: WorkbookPlan) => void): void {
  const chooser = byId<HTMLInputElement>("chooser");
  byId("open").addEventListener("click", () => chooser.click());
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    chooser.value = "";
    if (file === undefined) return;
    openFile(file, openPlan).catch((thrown: unknown) => tell({ title: `${file.name} is not opened`, lines: [messageOf(thrown)] }));
  });

  async function save(): Promise<void> {
    const plan = await workbook.plan();
    const bytes = await busy("Writing the file …", write(plan));
    if (bytes !== undefined) download(bytes, plan.name);
  }
  byId("save").addEventListener("click", () => {
    save().catch((thrown: unknown) => tell({ title: "The file is not written", lines: [messageOf(thrown)] }));
  });
}
