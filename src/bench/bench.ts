// The bench page: wires the spreadsheet, the side panel and the keeping of the workbook.
import { demoWorkbook } from "../demo/demo";
import { startBenchWorkbook } from "../hosts/bench/bench-workbook";
import { readFunctions } from "../hosts/bench/metadata";
import type { SheetPort } from "../sheet/port";
import "./bench.css";
import { byId } from "./dom";
import { keeping } from "./keeping";
import { panel } from "./panel";
import { parts } from "./parts";

declare global {
  interface Window {
    /** The canvas shows no cells to a program: browser tests read the sheets through the port. */
    bosswright?: { readonly port: SheetPort };
  }
}

function say(text: string): void {
  byId("kept").textContent = text;
}

function confirmBack(then: () => void): void {
  const dialog = byId<HTMLDialogElement>("confirm");
  byId("back").addEventListener("click", () => {
    dialog.returnValue = "";
    dialog.showModal();
  });
  dialog.addEventListener("close", () => {
    if (dialog.returnValue === "discard") then();
  });
}

function detailsButton(): void {
  const button = byId("details");
  button.addEventListener("click", () => button.setAttribute("aria-expanded", String(byId("panel").classList.toggle("open"))));
}

async function start(): Promise<void> {
  const functions = await readFunctions();
  byId("starting").remove();
  const workbook = startBenchWorkbook(byId("sheet"), functions);
  const kept = keeping(workbook, demoWorkbook, say);
  kept.start();
  panel(workbook, functions);
  parts();
  confirmBack(kept.backToDemo);
  detailsButton();
  window.bosswright = { port: workbook.port };
}

start().catch((thrown: unknown) => say(`The bench could not start: ${thrown instanceof Error ? thrown.message : String(thrown)}`));
