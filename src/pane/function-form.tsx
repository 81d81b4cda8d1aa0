// The arguments of one function, its answer while they are typed, and the way into the sheet.
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Param } from '../core/card';
import { call } from '../registry';
import type { Selection } from '../sheet/port';
import { AnswerView } from './answer-view';
import { ArgumentField } from './argument-field';
import { inWords } from './argument-words';
import { occupiedWords } from './occupied-cells';
import { cardOf, NAMESPACE, type ListedFunction } from './function-list';
import { preview, sheetsRead, type Preview } from './preview';
import { onSheet, picked } from './picked-references';
import { messageOf, placeName, usePane } from './pane-context';
import { formulaOf, typedArgument, type TypedArgument } from './typed-argument';
import { readSheets, sourceOf } from './workbook';

const NOWHERE: Selection = { sheetName: '', at: '' };

/** The answer to what is typed now; an older one that comes late is dropped. */
function useAnswer(listed: ListedFunction, given: readonly TypedArgument[], home: string): Preview | null {
  const { port, selection } = usePane();
  const [answer, setAnswer] = useState<Preview | null>(null);
  useEffect(() => {
    let isAsked = true;
    const names = sheetsRead(given, home);
    const read = port === undefined ? Promise.resolve(new Map()) : readSheets(port, names);
    read.then(
      grids => isAsked && setAnswer(preview(cardOf(listed), given, sourceOf(grids), home)),
      (thrown: unknown) => isAsked && setAnswer({ is: 'refused', message: messageOf(thrown) }),
    );
    return () => {
      isAsked = false;
    };
  }, [given, home, selection]);
  return answer;
}

function Target({ target, onHere }: { readonly target: Selection; readonly onHere: () => void }): JSX.Element {
  const { selection } = usePane();
  const isHere = selection === null || placeName(selection) === placeName(target);
  return (
    <p class="bw-target">
      Goes into <b>{placeName(target)}</b>
      {!isHere && (
        <button type="button" onClick={onHere}>
          Use {placeName(selection)} instead
        </button>
      )}
    </p>
  );
}

const aboutText = (id: string): string => {
  const about = call('ABOUT', [id]);
  return about.ok ? String(about.value) : about.message;
};

function About({ listed }: { readonly listed: ListedFunction }): JSX.Element {
  const text = useMemo(() => aboutText(listed.id), [listed]);
  return (
    <details class="bw-about">
      <summary>Formula, limits and sources</summary>
      <p class="bw-lines">{text}</p>
      <p>
        <a href={`help/${listed.id}.html`} target="_blank" rel="noopener">
          Help page (new window)
        </a>
      </p>
    </details>
  );
}

const refusalAt = (answer: Preview | null, { name }: Param): string | undefined =>
  answer?.is === 'refused' && answer.argument === name ? answer.message : undefined;

export function FunctionForm({ listed, onBack }: { readonly listed: ListedFunction; readonly onBack: () => void }): JSX.Element {
  const { port, selection, say, ask, work } = usePane();
  const { params } = useMemo(() => cardOf(listed), [listed]);
  const heading = useRef<HTMLHeadingElement>(null);
  const [target, setTarget] = useState<Selection | null>(selection);
  const [texts, setTexts] = useState<readonly string[]>(params.map(() => ''));
  const given = useMemo(() => params.map((param, i) => typedArgument(param, texts[i] ?? '')), [params, texts]);
  const home = (target ?? NOWHERE).sheetName;
  const answer = useAnswer(listed, given, home);
  const formula = formulaOf(`${NAMESPACE}.${listed.id}`, params, given);
  // before anything is drawn: the next key belongs to the form
  useLayoutEffect(() => heading.current?.focus(), []);
  // The workbook may tell its selection only after the form is open.
  useEffect(() => setTarget(earlier => earlier ?? selection), [selection]);

  const setText = (at: number, text: string) => setTexts(earlier => earlier.map((old, i) => (i === at ? text : old)));
  const moveTarget = () => {
    if (selection === null) return;
    setTexts(earlier => earlier.map((text, i) => (given[i]?.is === 'formula' ? onSheet(text, home, selection.sheetName) : text)));
    setTarget(selection);
  };
  const pick = (param: Param, at: number) => {
    if (selection !== null) setText(at, picked(texts[at] ?? '', selection, home, param.kind.shape !== 'one'));
  };
  const insert = async (event: Event) => {
    event.preventDefault();
    if (port === undefined || target === null) return;
    await work('Insert', async () => {
      const grid = (await readSheets(port, [target.sheetName])).get(target.sheetName) ?? [];
      const problem = occupiedWords(grid, target.at, answer?.is === 'answer' ? answer.value : undefined);
      if (problem !== undefined && !(await ask({ words: problem, yes: 'Insert all the same' }))) return;
      await port.write(target.sheetName, target.at, formula);
      await port.goTo(target.sheetName, target.at);
      say(`Inserted in ${placeName(target)}`);
    });
  };

  return (
    <form class="bw-form" onSubmit={event => void insert(event)} onKeyDown={event => event.key === 'Escape' && onBack()}>
      <button type="button" class="bw-back" onClick={onBack}>
        All functions
      </button>
      <h2 ref={heading} tabIndex={-1}>
        {listed.id}
      </h2>
      <p class="bw-lines">{listed.description}</p>
      {params.map((param, i) => (
        <ArgumentField
          key={param.name}
          param={param}
          parameter={listed.parameters[i]}
          text={texts[i] ?? ''}
          isReference={given[i]?.is === 'formula'}
          refusal={refusalAt(answer, param)}
          onText={text => setText(i, text)}
          onPick={port === undefined ? undefined : () => pick(param, i)}
        />
      ))}
      <AnswerView answer={answer} card={cardOf(listed)} />
      <p class="bw-formula">
        <code>{formula}</code>
      </p>
      {target !== null && <Target target={target} onHere={moveTarget} />}
      {port === undefined ? (
        <p class="bw-quiet">There is no sheet here: copy the formula, or open the pane in a workbook.</p>
      ) : (
        <button type="submit" class="bw-strong" disabled={target === null || answer?.is === 'incomplete'}>
          Insert into the sheet
        </button>
      )}
      {answer?.is === 'incomplete' && <p class="bw-quiet">Still to give: {answer.missing.map(inWords).join(', ')}</p>}
      <About listed={listed} />
    </form>
  );
}
