// The arguments of one function, its answer while they are typed, and the way into the sheet.
import type { JSX } from 'preact';
import { useContext, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Param } from '../core/card';
import { cellPosition } from '../sheet/addresses';
import type { CellEntry, Selection } from '../sheet/port';
import { inSigns } from '../sheet/signs';
import type { Words } from '../words/english';
import { AboutFunction } from './about-function';
import { AnswerView } from './answer-view';
import { ArgumentField } from './argument-field';
import { inWords } from './argument-words';
import { firstOf } from './in-table';
import { occupiedWords } from './occupied-cells';
import { cardOf, NAMESPACE, type ListedFunction } from './function-list';
import { areasRead, preview, type Preview } from './preview';
import { onSheet, picked } from './picked-references';
import { messageOf, placeName, ShownContext, usePane, useWords } from './pane-context';
import { formulaOf, typedArgument, type TypedArgument } from './typed-argument';
import { type KnownSheets, partsBySheet, valuesOfParts } from './workbook';

const NOWHERE: Selection = { sheetName: '', at: '' };
const NOTHING_READ: KnownSheets = new Map();

/** The answer to what is typed now; an older one that comes late is dropped. One read at a time, and none that others have made. */
function useAnswer(listed: ListedFunction, given: readonly TypedArgument[], home: string): Preview | null {
  const { port, known, edits } = usePane();
  const isShown = useContext(ShownContext);
  const [answer, setAnswer] = useState<Preview | null>(null);
  const reading = useRef(Promise.resolve());
  const areas = useMemo(() => areasRead(given, home), [given, home]);
  const atHand = areas.every(area => known.get(area.sheet)?.knows(area) === true) ? known : undefined;
  useEffect(() => {
    if (!isShown) return undefined;
    let isAsked = true;
    const show = (sheets: KnownSheets) => isAsked && setAnswer(preview(cardOf(listed), given, valuesOfParts(sheets), home));
    if (port === undefined || atHand !== undefined) show(atHand ?? NOTHING_READ);
    else
      reading.current = reading.current
        .then(async () => isAsked && show(partsBySheet(await port.readAreas(areas))))
        .catch((thrown: unknown) => void (isAsked && setAnswer({ is: 'refused', message: messageOf(thrown) })))
        .then(() => undefined);
    return () => {
      isAsked = false;
    };
  }, [given, home, atHand, edits, isShown]);
  return answer;
}

function Target({ target, onHere }: { readonly target: Selection; readonly onHere: () => void }): JSX.Element {
  const { selection } = usePane();
  const W = useWords().functions;
  const isHere = selection === null || placeName(selection) === placeName(target);
  return (
    <p class="bw-target">
      {W.goesInto} <b>{placeName(target)}</b>
      {!isHere && (
        <button type="button" onClick={onHere}>
          {W.useInstead(placeName(selection))}
        </button>
      )}
    </p>
  );
}

/** What spills has no room in a table. */
const inTableWords = ({ at }: Selection, table: string, id: string, W: Words['functions']): string =>
  `${W.inTable(at, table)}${id === 'JOINT.TABLE' ? W.valueInTable : ''}${W.indexInTable}`;

const refusalAt = (answer: Preview | null, { name }: Param): string | undefined =>
  answer?.is === 'refused' && answer.argument === name ? answer.message : undefined;

/** A call that stands in a cell, to be written back there. */
export interface StandingCall {
  readonly place: Selection;
  readonly texts: readonly string[];
  /** What stands round it in its formula, the equals sign first. */
  readonly around: readonly [before: string, after: string];
}

export function FunctionForm({
  listed,
  onBack,
  standing,
  texts: known,
}: {
  readonly listed: ListedFunction;
  readonly onBack?: () => void;
  readonly standing?: StandingCall;
  /** What the first arguments are, where that is known. */
  readonly texts?: readonly string[] | undefined;
}): JSX.Element {
  const { port, selection, signs, wrote, ask, work } = usePane();
  const W = useWords().functions;
  const { params } = useMemo(() => cardOf(listed), [listed]);
  const heading = useRef<HTMLHeadingElement>(null);
  const [target, setTarget] = useState<Selection | null>(standing?.place ?? selection);
  const [texts, setTexts] = useState<readonly string[]>(standing?.texts ?? params.map((_, i) => known?.[i] ?? ''));
  const given = useMemo(() => params.map((param, i) => typedArgument(param, texts[i] ?? '', signs)), [params, texts, signs]);
  const home = (target ?? NOWHERE).sheetName;
  const answer = useAnswer(listed, given, home);
  const alone = formulaOf(`${NAMESPACE}.${listed.id}`, params, given);
  const formula = standing === undefined ? alone : standing.around.join(alone.slice(1));
  // before anything is drawn: the next key belongs to the form
  useLayoutEffect(() => {
    if (standing === undefined) heading.current?.focus();
  }, []);
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
  // A function of the sheet has the name that it has in the user's language.
  const isLocal = signs.decimal === ',' && given.some(one => one.is === 'formula' && one.text.includes('('));
  const entry = (place: Selection, content: string): CellEntry =>
    isLocal ? { ...place, content: inSigns(content, signs), isLocal } : { ...place, content };
  const value = answer?.is === 'answer' ? answer.value : undefined;
  const [rows, columns] = Array.isArray(value) ? [value.length, value[0]?.length ?? 1] : [1, 1];
  /** What fits the cell: in a table the first value of several; undefined where the user would rather not. */
  const fitted = async (place: Selection): Promise<string | undefined> => {
    // what stands round a call may take one of its values already
    const isAlone = standing === undefined || standing.around.join('') === '=';
    const table = isAlone && rows * columns > 1 ? await port?.tableAt?.(place) : undefined;
    if (table === undefined) return formula;
    return (await ask({ words: inTableWords(place, table, listed.id, W), yes: W.insertFirst })) ? firstOf(formula) : undefined;
  };
  const writeBack = async (event: Event) => {
    event.preventDefault();
    if (port === undefined || standing === undefined) return;
    await work(W.writeBack, async () => {
      const { place } = standing;
      const content = await fitted(place);
      if (content !== undefined) wrote(W.writtenBack(placeName(place)), await port.write([entry(place, content)]));
    });
  };
  const insert = async (event: Event) => {
    event.preventDefault();
    if (port === undefined || target === null) return;
    await work(W.insert, async () => {
      const content = await fitted(target);
      if (content === undefined) return;
      const { row, column } = cellPosition(target.at);
      const room = { sheet: home, top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
      const grid = partsBySheet(await port.readAreas([room])).get(home)?.grid ?? [];
      const problem = occupiedWords(grid, target.at, content === formula ? value : undefined, W);
      if (problem !== undefined && !(await ask({ words: problem, yes: W.insertAnyway }))) return;
      const before = await port.write([entry(target, content)]);
      await port.goTo(target.sheetName, target.at);
      wrote(W.inserted(placeName(target)), before);
    });
  };

  return (
    <form
      class="bw-form"
      onSubmit={event => void (standing === undefined ? insert(event) : writeBack(event))}
      onKeyDown={event => event.key === 'Escape' && onBack?.()}
    >
      {onBack !== undefined && (
        <button type="button" class="bw-back" onClick={onBack}>
          {W.allFunctions}
        </button>
      )}
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
        <code>{inSigns(formula, signs)}</code>
      </p>
      {target !== null && standing === undefined && <Target target={target} onHere={moveTarget} />}
      {port === undefined ? (
        <p class="bw-quiet">{W.noSheet}</p>
      ) : (
        <button type="submit" class="bw-strong" disabled={target === null || answer?.is === 'incomplete'}>
          {standing === undefined ? W.insertInto : W.writeBack}
        </button>
      )}
      {answer?.is === 'incomplete' && <p class="bw-quiet">{W.stillToGive(answer.missing.map(inWords).join(', '))}</p>}
      <AboutFunction listed={listed} />
    </form>
  );
}
