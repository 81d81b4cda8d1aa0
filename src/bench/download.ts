import { element } from "./dom";

const fileType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The browser may begin to read the file after the click has returned. */
const keptMs = 60_000;

/** Saves a workbook file under a name that every system takes; answers that name. */
export function download(bytes: Uint8Array, title: string): string {
  const name = `${title.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, "_").trim() || "workbook"}.xlsx`;
  const url = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: fileType }));
  const link = element("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), keptMs);
  return name;
}
