// The pane in Excel; opened as a plain page it shows the functions without a workbook.
import { Storage, StorageType } from "@microsoft/office-js-helpers";
import type { ListedFunction } from "./list";
import { mountPane } from "./mount";
import type { KeptView } from "./services";

// Opened as a plain page without a network there is no Office.js; functions.js, loaded next, then registers with nobody.
globalThis.CustomFunctions ??= { associate() {} } as unknown as typeof CustomFunctions;

/** Of the storage helper only get and set keep their word; a browser may refuse storage to a page in a frame, as Excel on the web is. */
function keptView(): KeptView | undefined {
  try {
    const kept = new Storage<string>("bosswright", StorageType.LocalStorage);
    return { get: (key) => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) };
  } catch {
    return undefined;
  }
}

async function readFunctions(): Promise<readonly ListedFunction[]> {
  const response = await fetch("functions.json");
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return ((await response.json()) as { readonly functions: readonly ListedFunction[] }).functions;
}

async function start(): Promise<void> {
  const kept = keptView();
  const functions = await readFunctions();
  const place = document.getElementById("pane") as HTMLElement;
  mountPane(place, { hostName: "this page", functions, ...(kept !== undefined && { kept }) });
}

start().catch((thrown: unknown) => {
  (document.getElementById("pane") as HTMLElement).textContent = `The pane could not start: ${String(thrown)}`;
});
