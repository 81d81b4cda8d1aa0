// Opens the kept workbook or the demo, and keeps what the user changes.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import type { Selection } from '../sheet/port';
import type { Words } from '../words/english';
import { ask } from './message-dialog';
import { byId, messageOf } from './dom';
import { asideNotice, unopenedNotice } from './kept-notices';
import {
  discard,
  hereKey,
  isOfAnotherTab,
  keep,
  markOf,
  onOtherTab,
  putAside,
  readKept,
  setAside,
  shelf,
  takeOver,
  turnTo,
  turnToFree,
  type Shelved,
} from './workbook-store';
import { showNotices, type Notice } from './notices';
import { keepPicture } from './sheet-picture';

const pauseMs = 500;

/** Stands where the mark of the demo would, for a workbook that did not start from it. */
const elsewhere = '';

interface Persistence {
  start(): void;
  /** Opens a file, a template or a guide as one more workbook. */
  openPlan(plan: WorkbookPlan, at?: Selection): Promise<void>;
  /** Opens one that is kept. */
  openShelved(key: string): Promise<void>;
  openDemo(): Promise<void>;
  shelf(): readonly Shelved[];
  discardShelved(shelved: Shelved): void;
}

export interface Demo {
  readonly plan: WorkbookPlan;
  readonly start: Selection;
  /** Told when it is shown. */
  opened(): void;
}

/** A browser may refuse its store. */
function tried<T>(act: () => T, otherwise: T): T {
  try {
    return act();
  } catch {
    return otherwise;
  }
}

export function persistence(workbook: BenchWorkbook, demo: Demo, W: Words['bench'], say: (text: string) => void): Persistence {
  const demoMark = markOf(JSON.stringify(demo.plan));
  let startedFrom = demoMark;
  let unsaved = false;
  let timer = 0;
  /** Why what stands in the store must not be overwritten. */
  let held: Notice | undefined;

  const sayKept = (text: string) => say([demoMark, elsewhere].includes(startedFrom) ? text : W.demoChanged(text));

  /** What was held back goes into the store after all, where nothing else holds it. */
  function anew(still?: Notice): void {
    hold(still);
    save();
  }

  function hold(notice: Notice | undefined): void {
    held = notice;
    showNotices([
      ...(notice === undefined ? [] : [notice]),
      ...putAside().map((aside, index) => asideNotice(aside, index, W, () => anew(held))),
    ]);
  }

  const changedElsewhere: Notice = {
    words: W.changedElsewhere,
    choices: [
      {
        words: W.keepThis,
        act() {
          takeOver();
          hold(undefined);
          unsaved = true;
          save();
        },
      },
      { words: W.openOther, act: start },
    ],
  };

  function save(): void {
    clearTimeout(timer);
    if (!unsaved) return;
    try {
      if (held === undefined && isOfAnotherTab()) hold(changedElsewhere);
      if (held !== undefined) {
        say(W.notKept);
        return;
      }
      keep(workbook.snapshot(), startedFrom);
      unsaved = false;
      sayKept(W.saved(new Date()));
    } catch (thrown) {
      const why = thrown instanceof Error ? thrown.name : String(thrown);
      say(W.notKeptWhy(why));
    }
  }

  workbook.onEdit(() => {
    unsaved = true;
    clearTimeout(timer);
    timer = window.setTimeout(save, pauseMs);
  });
  onOtherTab(() => hold(changedElsewhere));
  addEventListener('pagehide', () => {
    save();
    tried(() => keepPicture(byId('sheet'), hereKey()), undefined);
  });
  // The browser then asks before it leaves what would be lost.
  addEventListener('beforeunload', event => {
    save();
    if (unsaved || workbook.isTyping()) event.preventDefault();
  });

  // The demo is kept only once it is changed: a newer demo then reaches everyone who left it as it was.
  function openDemo(text: string): void {
    unsaved = false;
    startedFrom = demoMark;
    workbook.openPlan(demo.plan, demo.start);
    demo.opened();
    say(text);
  }

  function openDamaged(why: string): void {
    const isAside = setAside();
    hold(isAside ? undefined : unopenedNotice(W.damaged(why), W, anew));
    openDemo(isAside ? W.damagedAside(why) : W.demo);
  }

  function openKept(): void {
    const read = readKept();
    if (read?.is === 'damaged') return openDamaged(read.why(W.damage));
    if (read?.is !== 'workbook') {
      hold(read === null ? undefined : unopenedNotice(W.newer, W, anew));
      return openDemo(W.demo);
    }
    const {
      kept: { workbook: snapshot, demo: from, keptAt },
    } = read;
    try {
      workbook.open(snapshot);
    } catch (thrown) {
      console.warn(thrown);
      return openDamaged(messageOf(thrown));
    }
    unsaved = false;
    startedFrom = from;
    hold(undefined);
    sayKept(W.openedAs(keptAt === '' ? undefined : new Date(keptAt)));
  }

  function start(): void {
    try {
      openKept();
    } catch (thrown) {
      console.warn(thrown);
      openDemo(W.keepsNothing);
    }
  }

  /** Everything that is typed is kept before another workbook takes the place; what cannot be is asked about. */
  async function isLeft(): Promise<boolean> {
    await workbook.endTyping();
    save();
    return (
      !unsaved ||
      ask({
        title: W.leaveAsked,
        lines: [W.leaveWords],
        yes: W.leaveYes,
        no: W.leaveNo,
      })
    );
  }

  function freeName(name: string): string {
    const taken = new Set(tried(shelf, []).map(({ kept }) => kept?.workbook.name));
    let free = name;
    for (let number = 2; taken.has(free); number++) free = `${name} ${number}`;
    return free;
  }

  return {
    start,
    async openPlan(plan, at) {
      if (!(await isLeft())) return;
      const name = freeName(plan.name);
      tried(turnToFree, undefined);
      hold(undefined);
      workbook.openPlan({ ...plan, name }, at);
      startedFrom = elsewhere;
      unsaved = true;
      save();
    },
    async openShelved(key) {
      if (!(await isLeft())) return;
      turnTo(key);
      hold(undefined);
      start();
    },
    async openDemo() {
      if (!(await isLeft())) return;
      tried(turnToFree, undefined);
      hold(undefined);
      openDemo(W.demo);
    },
    shelf: () => tried(shelf, []),
    discardShelved: discard,
  };
}
