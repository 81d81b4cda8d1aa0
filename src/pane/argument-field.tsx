import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Param } from '../core/card';
import { blankWords, choicesOf, inWords, labelOf } from './argument-words';
import type { Parameter } from './function-list';
import { useWords } from './pane-context';

interface Props {
  readonly param: Param;
  readonly parameter: Parameter | undefined;
  readonly text: string;
  readonly isReference: boolean;
  readonly refusal: string | undefined;
  readonly onText: (text: string) => void;
  /** Left out where there is no sheet to pick from. */
  readonly onPick: (() => void) | undefined;
}

export function ArgumentField({ param, parameter, text, isReference, refusal, onText, onPick }: Props): JSX.Element {
  const id = useId();
  const W = useWords().functions;
  const choices = choicesOf(param);
  return (
    <div class="bw-argument">
      <label for={id}>
        {labelOf(param)}
        {param.optional && <small> {W.optional}</small>}
      </label>
      <div class="bw-field">
        <input
          id={id}
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={text}
          class={isReference ? 'bw-code' : ''}
          placeholder={blankWords(param, W.blank)}
          list={choices.length === 0 ? undefined : `${id}-choices`}
          aria-invalid={refusal !== undefined}
          aria-describedby={`${id}-help`}
          onInput={event => onText(event.currentTarget.value)}
        />
        {onPick !== undefined && (
          <button type="button" onClick={onPick} aria-label={W.takeCellFor(inWords(param.name))}>
            {W.takeCell}
          </button>
        )}
      </div>
      {choices.length > 0 && (
        <datalist id={`${id}-choices`}>
          {choices.map(choice => (
            <option key={choice} value={choice} />
          ))}
        </datalist>
      )}
      <p id={`${id}-help`} class={refusal === undefined ? 'bw-quiet' : 'bw-fault'} lang={refusal === undefined ? undefined : 'en'}>
        {refusal ?? `${parameter?.description ?? ''}${param.kind.shape === 'one' ? '' : W.range}`}
      </p>
    </div>
  );
}
