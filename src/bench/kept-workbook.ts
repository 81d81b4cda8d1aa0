// The workbook as this browser keeps it between visits.
import type { Snapshot } from "../hosts/bench/bench-workbook";

const key = "bosswright.workbook";
const unreadableKey = "bosswright.workbook.unreadable";
const format = 1;

interface Kept {
  readonly format: typeof format;
  /** Mark of the demo that the workbook started from. */
  readonly demo: string;
  readonly workbook: Snapshot;
}

function isKept(data: unknown): data is Kept {
  const { format: given, demo, workbook } = (data ?? {}) as Partial<Kept>;
  return given === format && typeof demo === "string" && Array.isArray(workbook?.sheetOrder) && workbook.sheetOrder.length > 0
    && workbook.sheetOrder.every((id) => typeof workbook.sheets?.[id] === "object");
}

/** What is kept; null if nothing is. Throws if it cannot be read. */
export function readKept(): Kept | null {
  const text = localStorage.getItem(key);
  if (text === null) return null;
  const data: unknown = JSON.parse(text);
  if (!isKept(data)) throw new Error("it has another form");
  return data;
}

/** Moves a workbook that could not be opened out of the way, so that nothing of it is lost. False if the browser refuses. */
export function setAside(): boolean {
  try {
    const text = localStorage.getItem(key);
    localStorage.removeItem(key);
    if (text !== null) localStorage.setItem(unreadableKey, text);
    return true;
  } catch {
    return false;
  }
}

export function keep(workbook: Snapshot, demo: string): void {
  localStorage.setItem(key, JSON.stringify({ format, demo, workbook } satisfies Kept));
}

export function forget(): void {
  localStorage.removeItem(key);
}

/** A short mark that changes with the text (FNV-1a). */
export function markOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  return (hash >>> 0).toString(16);
}
