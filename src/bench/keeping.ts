// Opens the kept workbook or the demo, and keeps what the user changes.
import type { BenchWorkbook } from "../hosts/bench/bench-workbook";
import type { WorkbookPlan } from "../sheet/plan";
import type { Selection } from "../sheet/port";
import { forget, keep, markOf, readKept, setAside } from "./kept-workbook";

const pauseMs = 500;

/** Stands where the mark of the demo would, for a workbook that did not start from it. */
const elsewhere = "";

interface Keeping {
  start(): void;
  /** Opens a file or a guide in the place of what is open. */
  openPlan(plan: WorkbookPlan, at?: Selection): void;
  backToDemo(): void;
}

export interface Demo {
  readonly plan: WorkbookPlan;
  readonly start: Selection;
  /** Told when it is shown. */
  opened(): void;
}

export function keeping(workbook: BenchWorkbook, demo: Demo, say: (text: string) => void): Keeping {
  const demoMark = markOf(JSON.stringify(demo.plan));
  let startedFrom = demoMark;
  let unsaved = false;
  let refused = false;
  let timer = 0;

  const sayKept = (text: string) => say(`${text}${[demoMark, elsewhere].includes(startedFrom) ? "" : " · the demo has changed since"}`);

  function save(): void {
    clearTimeout(timer);
    if (!unsaved) return;
    unsaved = false;
    refused = true;
    try {
      keep(workbook.snapshot(), startedFrom);
      refused = false;
      sayKept(`Saved in this browser ${new Date().toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" })}`);
    } catch (thrown) {
      say(`Not kept in this browser (${thrown instanceof Error ? thrown.name : String(thrown)}): use Save as .xlsx`);
    }
  }

  workbook.onEdit(() => {
    unsaved = true;
    clearTimeout(timer);
    timer = window.setTimeout(save, pauseMs);
  });
  addEventListener("pagehide", save);
  // The browser then asks before it leaves what would be lost.
  addEventListener("beforeunload", (event) => {
    save();
    if (refused || workbook.isTyping()) event.preventDefault();
  });

  // The demo is kept only once it is changed: a newer demo then reaches everyone who left it as it was.
  function openDemo(text: string): void {
    unsaved = refused = false;
    startedFrom = demoMark;
    workbook.openPlan(demo.plan, demo.start);
    demo.opened();
    say(text);
  }

  function openKept(): boolean {
    const kept = readKept();
    if (kept === null) return false;
    workbook.open(kept.workbook);
    startedFrom = kept.demo;
    sayKept("Your workbook, as saved in this browser");
    return true;
  }

  return {
    start() {
      try {
        if (!openKept()) openDemo("Demo workbook");
      } catch (thrown) {
        console.warn(thrown);
        openDemo(setAside() ? "The saved workbook could not be opened and was put aside. This is the demo." : "This browser keeps nothing for this page. This is the demo.");
      }
    },
    openPlan(plan, at) {
      workbook.openPlan(plan, at);
      startedFrom = elsewhere;
      unsaved = true;
      save();
    },
    backToDemo() {
      try {
        forget();
      } catch {
        // Storage that is refused holds nothing either.
      }
      openDemo("Demo workbook");
    },
  };
}
