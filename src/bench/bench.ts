// The bench page: wires the spreadsheet, the side panel, the files and the keeping of the workbook.
import { demoWorkbook } from "../demo/demo";
import { startBenchWorkbook, type BenchWorkbook } from "../hosts/bench/bench-workbook";
import { readFunctions } from "../hosts/bench/metadata";
import type { SheetPort } from "../sheet/port";
import { ask } from "./ask";
import "./bench.css";
import { cellView } from "./cell";
import { byId } from "./dom";
import type { FigureView } from "./figure";
import { fileCommands } from "./file-commands";
import { keeping } from "./keeping";
import { parts } from "./parts";
import { tabs } from "./tabs";

declare global {
  interface Window {
    /** The canvas shows no cells to a program: browser tests read the sheets through the port. */
    bosswright?: { readonly port: SheetPort };
  }
}

/** The demo's point at once: its first choice fails, and the figure says why. */
const demoStart = { sheetName: "Variants", at: "E6" };

function say(text: string): void {
  byId("kept").textContent = text;
}

async function backToDemo(then: () => void): Promise<void> {
  const agreed = await ask({ title: "Back to the demo", lines: ["Your changes in this browser are discarded."], yes: "Discard and load the demo", no: "Keep my workbook" });
  if (agreed) then();
}

function detailsButton(): void {
  const button = byId("details");
  button.addEventListener("click", () => {
    button.ariaExpanded = String(byId("panel").classList.toggle("open"));
  });
}

/** The code of the figure is fetched with its tab. */
function figureTab(workbook: BenchWorkbook): (isShown: boolean) => void {
  let view: Promise<FigureView> | undefined;
  let wanted = false;
  return (isShown) => {
    wanted = isShown;
    byId("panel").classList.toggle("wide", isShown);
    if (isShown) view ??= import(/* webpackChunkName: "figure" */ "./figure").then(({ figureView }) => figureView(workbook));
    void view?.then(({ show, hide }) => (wanted ? show() : hide()));
  };
}

async function start(): Promise<void> {
  const functions = await readFunctions();
  byId("starting").remove();
  const workbook = startBenchWorkbook(byId("sheet"), functions);
  const showFigure = figureTab(workbook);
  const panel = tabs("tabs", (panelId) => showFigure(panelId === "figure-panel"));
  const kept = keeping(workbook, demoWorkbook, () => {
    void workbook.port.goTo(demoStart.sheetName, demoStart.at);
    panel.select("figure-tab");
  }, say);
  kept.start();
  cellView(workbook, functions);
  parts(panel.current);
  fileCommands(workbook, kept.openFile);
  byId("back").addEventListener("click", () => void backToDemo(kept.backToDemo));
  detailsButton();
  window.bosswright = { port: workbook.port };
}

start().catch((thrown: unknown) => say(`The bench could not start: ${thrown instanceof Error ? thrown.message : String(thrown)}`));
