// Finding a function, by topic or by a word.
import type { JSX } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { notCovered } from '../words/not-covered';
import { FunctionForm } from './function-form';
import { groups, type Group, type ListedFunction } from './function-list';
import { usePane, useWords } from './pane-context';
import type { Told } from './ask';
import { ToldAnswer } from './told-answer';

const firstSentence = (text: string): string => text.split('\n')[0] ?? '';

function Entry({ listed, onOpen }: { readonly listed: ListedFunction; readonly onOpen: () => void }): JSX.Element {
  return (
    <li>
      <button type="button" class="bw-entry" data-id={listed.id} onClick={onOpen}>
        <b>{listed.id}</b> <span>{firstSentence(listed.description)}</span>
      </button>
    </li>
  );
}

interface ListProps {
  readonly group: Group;
  readonly onOpen: (listed: ListedFunction) => void;
}

const Entries = ({ group, onOpen }: ListProps): JSX.Element => (
  <ul class="bw-list">
    {group.functions.map(listed => (
      <Entry key={listed.id} listed={listed} onOpen={() => onOpen(listed)} />
    ))}
  </ul>
);

/** The arrow keys walk from the search field through what is shown. */
function walkEntries(event: KeyboardEvent, view: HTMLElement | null): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || view === null) return;
  const stops = [...view.querySelectorAll<HTMLElement>('input, summary, details[open] .bw-entry, .bw-found .bw-entry')];
  const here = stops.indexOf(event.target as HTMLElement);
  const next = here < 0 ? undefined : stops[here + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
}

function FunctionList({
  asked,
  onAsk,
  onOpen,
  onTake,
}: {
  readonly asked: string;
  readonly onAsk: (text: string) => void;
  readonly onOpen: (listed: ListedFunction) => void;
  readonly onTake: (told: Told) => void;
}): JSX.Element {
  const { functions } = usePane();
  const W = useWords().functions;
  const view = useRef<HTMLDivElement>(null);
  const found = useMemo(() => groups(functions, asked), [functions, asked]);
  const count = found.reduce((sum, group) => sum + group.functions.length, 0);
  const best = found[0]?.functions[0];
  const onEnter = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && asked.trim() !== '' && best !== undefined) onOpen(best);
  };
  return (
    <div ref={view} onKeyDown={event => walkEntries(event, view.current)}>
      <h2>{W.heading}</h2>
      <label for="bw-search">{W.find}</label>
      <input
        id="bw-search"
        type="search"
        autocomplete="off"
        spellcheck={false}
        placeholder={W.such}
        value={asked}
        onInput={event => onAsk(event.currentTarget.value)}
        onKeyDown={onEnter}
      />
      <p class="bw-quiet" role="status">
        {asked.trim() === '' ? W.all(functions.length) : W.found(count, functions.length)}
      </p>
      <p role="status">{notCovered(asked, W.notCovered)}</p>
      <ToldAnswer asked={asked} onTake={onTake} />
      {asked.trim() === ''
        ? found.map(group => (
            <details key={group.topic} class="bw-topic">
              <summary>
                {W.topics[group.topic]} <small>{group.functions.length}</small>
              </summary>
              <Entries group={group} onOpen={onOpen} />
            </details>
          ))
        : found.map(group => (
            <section key={group.topic} class="bw-found" aria-label={W.topics[group.topic]}>
              <h3>{W.topics[group.topic]}</h3>
              <Entries group={group} onOpen={onOpen} />
            </section>
          ))}
      {count === 0 && <p>{W.nothing}</p>}
    </div>
  );
}

export function FunctionsView(): JSX.Element {
  const view = useRef<HTMLDivElement>(null);
  const [asked, setAsked] = useState('');
  const { functions } = usePane();
  const [open, setOpen] = useState<ListedFunction | null>(null);
  const [texts, setTexts] = useState<readonly string[]>();
  const openWith = (listed: ListedFunction | undefined, given?: readonly string[]) => {
    if (listed === undefined) return;
    setTexts(given);
    setOpen(listed);
  };
  const back = () => {
    const id = open?.id;
    setOpen(null);
    // The entry is drawn again before it can take the focus.
    requestAnimationFrame(() =>
      (view.current?.querySelector<HTMLElement>(`[data-id="${id}"]`) ?? view.current?.querySelector<HTMLElement>('input'))?.focus(),
    );
  };
  return (
    <div ref={view}>
      <div hidden={open !== null}>
        <FunctionList
          asked={asked}
          onAsk={setAsked}
          onOpen={openWith}
          onTake={({ id, args }) =>
            openWith(
              functions.find(listed => listed.id === id),
              args,
            )
          }
        />
      </div>
      {open !== null && <FunctionForm key={open.id} listed={open} onBack={back} texts={texts} />}
    </div>
  );
}
