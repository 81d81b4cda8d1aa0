// The pane: five views over one workbook. It talks to the workbook through the sheet port alone.
import { render, type ComponentType, type JSX } from 'preact';
import { useEffect, useErrorBoundary, useMemo, useRef, useState } from 'preact/hooks';
import type { Selection } from '../sheet/port';
import { ConfirmDialog, type Asking } from './confirm-dialog';
import { lazyView, type LazyView } from './lazy-view';
import type { PaneServices } from './pane-services';
import { messageOf, PaneContext, type PaneState } from './pane-context';
import { useJoint } from './use-joint';
import { useTask } from './use-task';
import { ProgressBar } from './progress-bar';

/** Fetched when the pane stands, the one that is shown first. */
const FigureView = lazyView(() => import(/* webpackChunkName: "view-figure" */ './figure-view').then(module => module.FigureView));
const FunctionsView = lazyView(() =>
  import(/* webpackChunkName: "view-functions" */ './functions-view').then(module => module.FunctionsView),
);
const SheetsView = lazyView(() => import(/* webpackChunkName: "view-sheets" */ './sheets-view').then(module => module.SheetsView));
const CheckView = lazyView(() => import(/* webpackChunkName: "view-check" */ './check-view').then(module => module.CheckView));
const AboutView = lazyView(() => import(/* webpackChunkName: "view-about" */ './about-view').then(module => module.AboutView));

const VIEWS: readonly { readonly name: string; readonly View: LazyView; readonly showsJoint?: true }[] = [
  { name: 'Figure', View: FigureView, showsJoint: true },
  { name: 'Functions', View: FunctionsView },
  { name: 'Sheets', View: SheetsView },
  { name: 'Check', View: CheckView, showsJoint: true },
  { name: 'About', View: AboutView },
];

const ABOUT = VIEWS.length - 1;
/** Where there is no workbook, the functions say most. */
const WITHOUT_WORKBOOK = 1;

const STEPS: Readonly<Record<string, (from: number) => number>> = {
  ArrowRight: from => from + 1,
  ArrowLeft: from => from - 1,
  Home: () => 0,
  End: () => VIEWS.length - 1,
};

function Tabs({ active, onChoose }: { readonly active: number; readonly onChoose: (view: number) => void }): JSX.Element {
  const buttons = useRef<(HTMLButtonElement | null)[]>([]);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = (step(active) + VIEWS.length) % VIEWS.length;
    onChoose(next);
    buttons.current[next]?.focus();
  };
  return (
    <div class="bw-tabs" role="tablist" aria-label="Views" onKeyDown={onKeyDown}>
      {VIEWS.map(({ name }, view) => (
        <button
          key={name}
          ref={button => {
            buttons.current[view] = button;
          }}
          type="button"
          role="tab"
          id={`bw-tab-${name}`}
          aria-controls={`bw-view-${name}`}
          aria-selected={view === active}
          tabIndex={view === active ? 0 : -1}
          onClick={() => onChoose(view)}
        >
          {name}
        </button>
      ))}
    </div>
  );
}

/** A view that breaks says so and leaves the others alone. */
function Guarded({ View }: { readonly View: ComponentType }): JSX.Element {
  const [fault, retry] = useErrorBoundary();
  if (fault === undefined) return <View />;
  return (
    <>
      <p class="bw-fault">This view failed: {messageOf(fault)}</p>
      <p>
        <button type="button" onClick={retry}>
          Try again
        </button>
      </p>
    </>
  );
}

function useSelection({ port }: PaneServices, say: (text: string) => void): Selection | null {
  const [selection, setSelection] = useState<Selection | null>(null);
  useEffect(() => {
    if (port === undefined) return undefined;
    let isOpen = true;
    port.selection().then(
      now => isOpen && setSelection(earlier => earlier ?? now),
      (thrown: unknown) => say(messageOf(thrown)),
    );
    const stop = port.onSelection(now => setSelection({ ...now }));
    return () => {
      isOpen = false;
      stop();
    };
  }, [port]);
  return selection;
}

function Pane({ services }: { readonly services: PaneServices }): JSX.Element {
  const kept = VIEWS.findIndex(({ name }) => name === services.kept?.get('view'));
  const [active, setActive] = useState(kept >= 0 ? kept : services.port === undefined ? WITHOUT_WORKBOOK : 0);
  const [opened, setOpened] = useState<ReadonlySet<number>>(new Set([active]));
  const [said, say] = useState('');
  const { progress, work, stop } = useTask(say);
  const isBusy = progress !== null;
  const [asking, setAsking] = useState<Asking | null>(null);
  const selection = useSelection(services, say);
  const here = useJoint(services.port, selection, VIEWS[active]?.showsJoint === true, say);

  const choose = (view: number) => {
    say('');
    setActive(view);
    setOpened(earlier => new Set([...earlier, view]));
    services.kept?.set('view', VIEWS[view]?.name ?? '');
  };
  const shared: PaneState = useMemo(
    () => ({
      ...services,
      ...here,
      selection,
      isBusy,
      say,
      work,
      ask: question => new Promise(answer => setAsking({ question, answer })),
    }),
    [services, selection, here, isBusy],
  );

  return (
    <PaneContext.Provider value={shared}>
      <Tabs active={active} onChoose={choose} />
      {VIEWS.map(({ name, View }, view) => (
        // A view that was opened stays, so that nothing typed is lost.
        <section
          key={name}
          class="bw-view"
          role="tabpanel"
          id={`bw-view-${name}`}
          aria-labelledby={`bw-tab-${name}`}
          hidden={view !== active}
        >
          {opened.has(view) && <Guarded View={View} />}
        </section>
      ))}
      {active !== ABOUT && (
        <p class="bw-foot">
          An aid to sizing, for trained people: make and test a prototype.{' '}
          <button type="button" class="bw-link" onClick={() => choose(ABOUT)}>
            All cautions
          </button>
        </p>
      )}
      {progress !== null && <ProgressBar progress={progress} onStop={stop} />}
      <p class="bw-said" role="status">
        {said}
      </p>
      {asking !== null && <ConfirmDialog asking={asking} onDone={() => setAsking(null)} />}
    </PaneContext.Provider>
  );
}

/** Shows the pane in the element; returns how to take it away. */
export function mountPane(element: HTMLElement, services: PaneServices): () => void {
  element.replaceChildren();
  element.classList.add('bw-pane');
  render(<Pane services={services} />, element);
  performance.mark('bosswright pane');
  // What is fetched now is there when the network is not.
  setTimeout(() => VIEWS.forEach(({ View: { ready } }) => void ready().catch(() => {})));
  return () => render(null, element);
}
