// Help while a formula is typed: the function whose argument the caret is in, and that argument.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { acceptedBy } from '../../core/read/accepts';
import { callsAt } from '../../sheet/typed-call';
import { call } from '../../registry';
import type { SheetPort, Typed } from '../../sheet/port';
import { blankWords, inWords } from '../argument-words';
import { examplesOf } from '../examples';
import { cardOf, type ListedFunction, NAMESPACE } from '../function-list';
import { useNumbers, usePane, useWords } from '../pane-context';
import { Lines } from './lines';

export interface TypedFunction {
  readonly listed: ListedFunction;
  readonly argument: number;
}

/** The innermost call of ours that is open at the caret; undefined where nothing is typed. */
export function useTyped(port: SheetPort): TypedFunction | undefined {
  const { functions } = usePane();
  const [typed, setTyped] = useState<Typed | null>(null);
  useEffect(() => port.watchTyping?.(setTyped), [port]);
  for (const { name, argument } of typed === null ? [] : callsAt(typed.text, typed.caret)) {
    const listed = functions.find(({ id }) => `${NAMESPACE}.${id}` === name);
    if (listed !== undefined) return { listed, argument };
  }
  return undefined;
}

/** Names or values between parentheses, the one of the argument marked. */
function Marked({
  name,
  parts,
  argument,
}: {
  readonly name: string;
  readonly parts: readonly string[];
  readonly argument: number;
}): JSX.Element {
  return (
    <code class="bw-lines">
      {name}(
      {parts.map((part, i) => (
        <span key={i}>
          {i > 0 && ', '}
          {i === argument ? <mark>{part}</mark> : part}
        </span>
      ))}
      )
    </code>
  );
}

export function TypedHelp({ listed, argument }: TypedFunction): JSX.Element {
  const { cell: W, functions } = useWords();
  const { german } = usePane();
  const numbers = useNumbers();
  const { params, example } = cardOf(listed);
  const param = params[argument];
  const name = `${NAMESPACE}.${listed.id}`;
  const answer = call(listed.id, example.args);
  return (
    <section class="bw-typed" aria-label={W.typing}>
      <h2>{listed.id}</h2>
      <p>
        <Marked name={name} parts={params.map(each => (each.optional ? `[${each.name}]` : each.name))} argument={argument} />
      </p>
      {param === undefined ? (
        <p class="bw-fault">{W.tooMany(params.length)}</p>
      ) : (
        <>
          <h3 aria-live="polite">{W.argument(inWords(param.name), argument + 1, params.length)}</h3>
          <Lines
            lines={[
              [W.meaning, listed.parameters[argument]?.description ?? ''],
              [W.unit, param.kind.unit],
              [W.limits, german?.acceptsInGerman(acceptedBy(param)) ?? acceptedBy(param)],
              [W.whenBlank, blankWords(param, functions.blank)],
            ]}
          />
        </>
      )}
      <h3>{W.example}</h3>
      <p>
        <Marked name={`=${name}`} parts={examplesOf([listed]).get(listed.id) ?? []} argument={argument} />
        {answer.ok && !Array.isArray(answer.value) && W.gives(numbers.cell(answer.value))}
      </p>
      <p class="bw-quiet bw-lines">{listed.description}</p>
    </section>
  );
}
