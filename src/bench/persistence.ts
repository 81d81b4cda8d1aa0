// Opens the kept workbook or the demo, and keeps what the user changes.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import type { Selection } from '../sheet/port';
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

const clock: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit' };

/** A browser may refuse its store. */
function tried<T>(act: () => T, otherwise: T): T {
  try {
    return act();
  } catch {
    return otherwise;
  }
}

export function persistence(workbook: BenchWorkbook, demo: Demo, say: (text: string) => void): Persistence {
  const demoMark = markOf(JSON.stringify(demo.plan));
  let startedFrom = demoMark;
  let unsaved = false;
  let timer = 0;
  /** Why what stands in the store must not be overwritten. */
  let held: Notice | undefined;

  const sayKept = (text: string) => say(`${text}${[demoMark, elsewhere].includes(startedFrom) ? '' : ' · the demo has changed since'}`);

  /** What was held back goes into the store after all, where nothing else holds it. */
  function anew(still?: Notice): void {
    hold(still);
    save();
  }

  function hold(notice: Notice | undefined): void {
    held = notice;
    showNotices([
      ...(notice === undefined ? [] : [notice]),
      ...putAside().map((aside, index) => asideNotice(aside, index, () => anew(held))),
    ]);
  }

  const changedElsewhere: Notice = {
    words: 'The workbook was changed in another tab of this browser. What you change here is not kept until you choose.',
    choices: [
      {
        words: 'Keep this one, discard the other',
        act() {
          takeOver();
          hold(undefined);
          unsaved = true;
          save();
        },
      },
      { words: 'Open the other, discard this one', act: start },
    ],
  };

  function save(): void {
    clearTimeout(timer);
    if (!unsaved) return;
    try {
      if (held === undefined && isOfAnotherTab()) hold(changedElsewhere);
      if (held !== undefined) {
        say('Not kept in this browser, for the reason below: use Save as .xlsx, or choose');
        return;
      }
      keep(workbook.snapshot(), startedFrom);
      unsaved = false;
      sayKept(`Saved in this browser ${new Date().toLocaleTimeString('en-GB', clock)}`);
    } catch (thrown) {
      const why = thrown instanceof Error ? thrown.name : String(thrown);
      say(`Not kept in this browser (${why}): use Save as .xlsx, or discard another workbook`);
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
    hold(
      isAside
        ? undefined
        : unopenedNotice(`The saved workbook could not be opened (${why}), and this browser has no room to put it aside.`, anew),
    );
    openDemo(isAside ? `The saved workbook could not be opened (${why}) and was put aside. This is the demo.` : 'Demo workbook');
  }

  function openKept(): void {
    const read = readKept();
    if (read?.is === 'damaged') return openDamaged(read.why);
    if (read?.is !== 'workbook') {
      hold(
        read === null
          ? undefined
          : unopenedNotice(
              'The workbook in this browser was saved by a newer version of this page: load the page anew to get that version.',
              anew,
            ),
      );
      return openDemo('Demo workbook');
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
    const when = keptAt === '' ? '' : ` ${new Date(keptAt).toLocaleString('en-GB', { day: 'numeric', month: 'short', ...clock })}`;
    sayKept(`Your workbook, as saved in this browser${when}`);
  }

  function start(): void {
    try {
      openKept();
    } catch (thrown) {
      console.warn(thrown);
      openDemo('This browser keeps nothing for this page. This is the demo.');
    }
  }

  /** Everything that is typed is kept before another workbook takes the place; what cannot be is asked about. */
  async function isLeft(): Promise<boolean> {
    await workbook.endTyping();
    save();
    return (
      !unsaved ||
      ask({
        title: 'Leave this workbook?',
        lines: ['What you changed in it is not kept in this browser, for the reason above the sheet. Save as .xlsx keeps it in a file.'],
        yes: 'Leave it, and lose the changes',
        no: 'Stay',
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
      openDemo('Demo workbook');
    },
    shelf: () => tried(shelf, []),
    discardShelved: discard,
  };
}
