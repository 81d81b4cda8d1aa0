// What the sender fills in and chooses.
import type { ComponentChildren, JSX } from 'preact';
import type { CopySummary } from '../../files/jobs';
import type { HandoverChoice } from '../../handover/pages/choice';
import { PAPERS, type TitleBlock } from '../../handover/pages/title-block';
import { STATUSES } from '../../handover/words/status';
import { LANGUAGES } from '../../handover/words/language';
import type { CarriedKind } from '../../package/carried';
import { useLater } from '../lazy-view';
import { Carried, Ticks } from './hand-over-parts';

const TEXTS = [
  ['number', 40],
  ['revision', 10],
  ['madeBy', 60],
  ['checkedBy', 60],
] as const;

function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(number => String(number).padStart(2, '0')).join('-');
}

export const untitled = (): TitleBlock => ({
  part: '',
  number: '',
  revision: 'A',
  date: today(),
  status: STATUSES[0],
  madeBy: '',
  checkedBy: '',
});

function Field({ name, children }: { readonly name: string; readonly children: ComponentChildren }): JSX.Element {
  return (
    <label class="bw-field">
      {name} {children}
    </label>
  );
}

interface ChoiceOfProps<T extends string> {
  readonly name: string;
  readonly value: T;
  readonly of: readonly T[];
  /** As it is shown. */
  readonly words: Readonly<Record<T, string>>;
  readonly onChoose: (value: T) => void;
}

function ChoiceOf<T extends string>({ name, value, of, words, onChoose }: ChoiceOfProps<T>): JSX.Element {
  return (
    <Field name={name}>
      <select value={value} onChange={event => onChoose(of[event.currentTarget.selectedIndex] ?? value)}>
        {of.map(one => (
          <option key={one} value={one}>
            {words[one]}
          </option>
        ))}
      </select>
    </Field>
  );
}

export function TitleFields({
  title,
  onTitle,
}: {
  readonly title: TitleBlock;
  readonly onTitle: (title: TitleBlock) => void;
}): JSX.Element {
  const W = useLater().handOver;
  const set = (name: keyof TitleBlock) => (event: JSX.TargetedEvent<HTMLInputElement>) =>
    onTitle({ ...title, [name]: event.currentTarget.value });
  return (
    <fieldset>
      <legend>{W.titleBlock}</legend>
      <Field name={W.part}>
        <input type="text" required maxLength={80} autocomplete="off" value={title.part} onInput={set('part')} />
      </Field>
      {TEXTS.map(([name, longest]) => (
        <Field key={name} name={W[name]}>
          <input type="text" maxLength={longest} autocomplete="off" value={title[name]} onInput={set(name)} />
        </Field>
      ))}
      <Field name={W.date}>
        <input type="date" value={title.date} onInput={set('date')} />
      </Field>
      <ChoiceOf name={W.status} value={title.status} of={STATUSES} words={W.statuses} onChoose={status => onTitle({ ...title, status })} />
    </fieldset>
  );
}

interface ChoicesProps {
  readonly summary: CopySummary;
  /** What was asked for last; while it is worked out, the summary is of another. */
  readonly choice: HandoverChoice;
  readonly isWorking: boolean;
  readonly onChoice: (choice: HandoverChoice) => void;
  readonly along: readonly CarriedKind[];
  readonly onAlong: (along: readonly CarriedKind[]) => void;
}

export function Choices({ summary, choice, isWorking, onChoice, along, onAlong }: ChoicesProps): JSX.Element {
  const W = useLater().handOver;
  const { choosable, userSheets, carried } = summary;
  // other sheets and variants have other characteristics
  const { characteristics, ...ofSource } = choice;
  const asked = (names: readonly string[] | undefined, name: string, isTicked: boolean): boolean =>
    isWorking && names !== undefined ? names.includes(name) : isTicked;
  return (
    <>
      <fieldset>
        <legend>{W.pagesOf}</legend>
        <ChoiceOf name={W.paper} value={choice.paper} of={PAPERS} words={W.papers} onChoose={paper => onChoice({ ...choice, paper })} />
        <ChoiceOf
          name={W.language}
          value={choice.language}
          of={LANGUAGES}
          words={W.languages}
          onChoose={language => onChoice({ ...choice, language })}
        />
      </fieldset>
      <Ticks
        legend={W.sheets}
        of={userSheets.map(({ name, goesAlong }) => ({ name, isTicked: asked(choice.sheets, name, goesAlong) }))}
        onTicked={sheets => onChoice({ ...ofSource, sheets })}
      />
      <Ticks
        legend={W.variants}
        of={choosable.variants.map(({ label, state, isChosen }) => ({
          name: label,
          isTicked: asked(choice.variants, label, isChosen),
          state,
        }))}
        onTicked={variants => onChoice({ ...ofSource, variants })}
      />
      <Ticks
        legend={W.characteristics}
        of={choosable.characteristics.map(({ name, isChosen }) => ({ name, isTicked: asked(characteristics, name, isChosen) }))}
        onTicked={names => onChoice({ ...choice, characteristics: names })}
      />
      <Carried carried={carried} along={along} onAlong={onAlong} />
    </>
  );
}
