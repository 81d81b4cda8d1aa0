// The pane: views over one workbook. It talks to the workbook through the sheet port alone.
import { render, type ComponentType, type JSX } from 'preact';
import { useCallback, useEffect, useErrorBoundary, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { CalculationState, CellEntry } from '../sheet/port';
import { ConfirmDialog, type Asking } from './confirm-dialog';
import type { KeptView, PaneServices } from './pane-services';
import { messageOf, PaneContext, type PaneState, ShownContext, useWords } from './pane-context';
import { toFollow, useJoint } from './use-joint';
import { useSigns } from './use-signs';
import { useTask } from './use-task';
import { ProgressBar } from './progress-bar';
import { VIEWS } from './views';

const ABOUT = VIEWS.length - 1;
/** Where there is no workbook, the functions say most. */
const WITHOUT_WORKBOOK = 1;

const STEPS: Readonly<Record<string, (from: number) => number>> = {
  ArrowRight: from => from + 1,
  ArrowLeft: from => from - 1,
  Home: () => 0,
  End: () => VIEWS.length - 1,
};

interface Said {
  readonly said: string;
  /** What stood where something was written. */
  readonly before: readonly CellEntry[];
  /** What else is taken back: looks, for example. */
  readonly alsoBack?: (() => Promise<void>) | undefined;
}

function Tabs({ active, onChoose }: { readonly active: number; readonly onChoose: (view: number) => void }): JSX.Element {
  const { views, names } = useWords().frame;
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
    <div class="bw-tabs" role="tablist" aria-label={views} onKeyDown={onKeyDown}>
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
          {names[name]}
        </button>
      ))}
    </div>
  );
}

/** A view that breaks says so and leaves the others alone. */
function Guarded({ View }: { readonly View: ComponentType }): JSX.Element {
  const W = useWords().frame;
  const [fault, retry] = useErrorBoundary();
  if (fault === undefined) return <View />;
  return (
    <>
      <p class="bw-fault">{W.viewFailed(messageOf(fault))}</p>
      <p>
        <button type="button" onClick={retry}>
          {W.tryAgain}
        </button>
      </p>
    </>
  );
}

/** The German of what cells hold, fetched when the pane can be used; without it the English stands alone. */
function useBeside({ beside }: PaneServices): PaneState['german'] {
  const [german, setGerman] = useState<PaneState['german']>();
  useEffect(() => {
    beside?.().then(setGerman, (thrown: unknown) => console.warn(thrown));
  }, []);
  return german;
}

/** How the pane was left, which nothing waits for. */
function useKept({ kept }: PaneServices): KeptView | undefined {
  const [keptView, setKeptView] = useState<KeptView>();
  useEffect(() => void kept?.().then(setKeptView), []);
  return keptView;
}

/** In what the pane may be ahead of the cells, or behind them. */
function CalculationNotice({ calculation }: { readonly calculation: CalculationState }): JSX.Element {
  return (
    <p class="bw-quiet" role="status">
      {useWords().frame.calculation[calculation]}
    </p>
  );
}

interface PaneProps {
  readonly services: PaneServices;
  readonly isSeen: boolean;
  /** A view that was asked for outside the pane, each time anew. */
  readonly asked: { readonly view: string } | undefined;
}

function Pane({ services, isSeen, asked }: PaneProps): JSX.Element {
  const W = services.words.frame;
  const keptView = useKept(services);
  const german = useBeside(services);
  const [chosen, setChosen] = useState<number>();
  const left = VIEWS.findIndex(({ name }) => name === keptView?.get('view'));
  const active = chosen ?? (left >= 0 ? left : services.port === undefined ? WITHOUT_WORKBOOK : 0);
  const opened = useRef(new Set<number>());
  opened.current.add(active);
  const [{ said, before, alsoBack }, setSaid] = useState<Said>({ said: '', before: [] });
  const say = useCallback((text: string) => setSaid({ said: text, before: [] }), []);
  const wrote = useCallback<PaneState['wrote']>((text, old, also) => setSaid({ said: text, before: old, alsoBack: also }), []);
  const { progress, work, stop } = useTask(say, W.failed);
  const isBusy = progress !== null;
  const [asking, setAsking] = useState<Asking | null>(null);
  const signs = useSigns(services.port, isSeen);
  const here = useJoint(services.port, isSeen, VIEWS[active]?.showsJoint === true, say);

  const takeBack = () =>
    work(W.takeBack, async () => {
      if (before.length > 0) await services.port?.write(before);
      await alsoBack?.();
      say(W.takenBack);
    });
  const choose = (view: number) => {
    say('');
    setChosen(view);
    keptView?.set('view', VIEWS[view]?.name ?? '');
  };
  // at once: later it would undo what keys have chosen since
  useLayoutEffect(() => {
    const view = VIEWS.findIndex(({ name }) => name === asked?.view);
    if (view >= 0) choose(view);
  }, [asked]);
  const shared: PaneState = useMemo(
    () => ({
      ...services,
      ...here,
      signs,
      ...(german !== undefined && { german }),
      ...(keptView !== undefined && { keptView }),
      isBusy,
      say,
      wrote,
      work,
      ask: question => new Promise(answer => setAsking({ question, answer })),
    }),
    [services, ...Object.values(here), signs, german, keptView, isBusy],
  );

  return (
    <PaneContext.Provider value={shared}>
      <Tabs active={active} onChoose={choose} />
      <CalculationNotice calculation={here.calculation} />
      {VIEWS.map(({ name, View }, view) => (
        // A view that was opened stays, so that nothing typed is lost.
        <section
          key={name}
          class="bw-view"
          role="tabpanel"
          id={`bw-view-${name}`}
          aria-labelledby={`bw-tab-${name}`}
          hidden={view !== active}
          // how the pane was left is no longer asked once somebody works in it
          onFocusIn={() => setChosen(view)}
        >
          <ShownContext.Provider value={isSeen && view === active}>
            {opened.current.has(view) && <Guarded View={View} />}
          </ShownContext.Provider>
        </section>
      ))}
      {active !== ABOUT && (
        <p class="bw-foot">
          {W.foot}{' '}
          <button type="button" class="bw-link" onClick={() => choose(ABOUT)}>
            {W.allCautions}
          </button>
        </p>
      )}
      {progress !== null && <ProgressBar progress={progress} onStop={stop} />}
      <p class="bw-said" role="status">
        {said}
      </p>
      {(before.length > 0 || alsoBack !== undefined) && (
        <button type="button" class="bw-take-back" disabled={isBusy} onClick={() => void takeBack()}>
          {W.takeBack}
        </button>
      )}
      {asking !== null && <ConfirmDialog asking={asking} onDone={() => setAsking(null)} />}
    </PaneContext.Provider>
  );
}

/** The pane as it stands in an element. */
export interface MountedPane {
  /** While it is not seen, the pane follows nothing and reads nothing; what was typed stays. */
  show(isSeen: boolean): void;
  /** Opens the view of that name. */
  open(view: string): void;
}

/** What is fetched now is there when the network is not; one after another, so that what is seen comes first. */
async function fetchRest({ later }: PaneServices): Promise<void> {
  for (const fetch of [toFollow, ...VIEWS.map(({ View: { ready } }) => ready), later]) await fetch().catch(() => undefined);
}

/** Shows the pane in the element. */
export function mountPane(element: HTMLElement, services: PaneServices): MountedPane {
  element.replaceChildren();
  element.classList.add('bw-pane');
  let isSeen = true;
  let asked: PaneProps['asked'];
  const draw = () => render(<Pane services={services} isSeen={isSeen} asked={asked} />, element);
  draw();
  performance.mark('bosswright pane');
  setTimeout(() => void fetchRest(services));
  return {
    show(now) {
      isSeen = now;
      draw();
    },
    open(view) {
      asked = { view };
      draw();
    },
  };
}
