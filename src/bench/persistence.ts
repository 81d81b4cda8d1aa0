// Opens the kept workbook or the demo, and keeps what the user changes.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import type { Selection } from '../sheet/port';
import { ask } from './message-dialog';
import { messageOf } from './dom';
import { downloadFile } from '../pane/download';
import {
  discardAside,
  forget,
  isOfAnotherTab,
  keep,
  keptText,
  markOf,
  onOtherTab,
  putAside,
  readKept,
  setAside,
  takeOver,
  type Aside,
} from './workbook-store';
import { showNotices, type Notice } from './notices';

const pauseMs = 500;

/** Stands where the mark of the demo would, for a workbook that did not start from it. */
const elsewhere = '';

interface Persistence {
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

const clock: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit' };

const sized = ({ length }: string): string => (length < 1000 ? `${length} characters` : `${Math.round(length / 1000)} thousand characters`);

/** A workbook that this page cannot read is saved as the text that it is. */
function saveText(text: string, name: string): void {
  downloadFile(text, 'application/json', `${name}.json`);
}

async function discardIfAgreed(what: string, discard: () => void): Promise<void> {
  if (await ask({ title: 'Discard for good?', lines: [what, 'Nothing brings it back.'], yes: 'Discard it', no: 'Leave it' })) discard();
}

export function persistence(workbook: BenchWorkbook, demo: Demo, say: (text: string) => void): Persistence {
  const demoMark = markOf(JSON.stringify(demo.plan));
  let startedFrom = demoMark;
  let unsaved = false;
  let timer = 0;
  /** Why what stands in the store must not be overwritten. */
  let held: Notice | undefined;

  const sayKept = (text: string) => say(`${text}${[demoMark, elsewhere].includes(startedFrom) ? '' : ' · the demo has changed since'}`);

  function asideNotice(aside: Aside, index: number): Notice {
    const words = `A workbook that could not be opened was put aside (${sized(aside.text)}).`;
    return {
      words,
      choices: [
        { words: 'Save what was put aside', act: () => saveText(aside.text, `put aside ${index + 1}`) },
        {
          words: 'Discard it…',
          act: () =>
            void discardIfAgreed(words, () => {
              discardAside(aside);
              hold(held);
              save();
            }),
        },
      ],
    };
  }

  function hold(notice: Notice | undefined): void {
    held = notice;
    showNotices([...(notice === undefined ? [] : [notice]), ...putAside().map(asideNotice)]);
  }

  /** What is in the store stays there until the user has decided. */
  const unopened = (words: string): Notice => ({
    words: `${words} It is left as it is, and what you change here is not kept in this browser.`,
    choices: [
      { words: 'Save it as a file', act: () => saveText(keptText(), 'kept workbook') },
      {
        words: 'Discard it…',
        act: () =>
          void discardIfAgreed(words, () => {
            forget();
            hold(undefined);
            save();
          }),
      },
    ],
  });

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
      say(`Not kept in this browser (${thrown instanceof Error ? thrown.name : String(thrown)}): use Save as .xlsx`);
    }
  }

  workbook.onEdit(() => {
    unsaved = true;
    clearTimeout(timer);
    timer = window.setTimeout(save, pauseMs);
  });
  onOtherTab(() => hold(changedElsewhere));
  addEventListener('pagehide', save);
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
    hold(isAside ? undefined : unopened(`The saved workbook could not be opened (${why}), and this browser has no room to put it aside.`));
    openDemo(isAside ? `The saved workbook could not be opened (${why}) and was put aside. This is the demo.` : 'Demo workbook');
  }

  function openKept(): void {
    const read = readKept();
    if (read?.is === 'damaged') return openDamaged(read.why);
    if (read?.is !== 'workbook') {
      hold(
        read === null
          ? undefined
          : unopened('The workbook in this browser was saved by a newer version of this page: load the page anew to get that version.'),
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

  return {
    start,
    openPlan(plan, at) {
      workbook.openPlan(plan, at);
      startedFrom = elsewhere;
      unsaved = true;
      save();
    },
    backToDemo() {
      try {
        // What another tab keeps is not this tab's to discard.
        if (held === undefined && isOfAnotherTab()) hold(changedElsewhere);
        if (held === undefined) forget();
      } catch {
        // Storage that is refused holds nothing either.
      }
      openDemo('Demo workbook');
    },
  };
}
