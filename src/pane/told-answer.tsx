// The answer to a question that was typed into the search, with what it rests on. What answers is fetched when something is asked.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Told } from './ask';
import type { ShownNumbers } from './numbers';
import { useNumbers, useWords } from './pane-context';

const MAX_ROWS = 12;

function valueWords({ value, unit }: Told, { cell }: ShownNumbers): string {
  if (typeof value !== 'object') return `${cell(value)} ${unit}`.trim();
  const rows = value.slice(0, MAX_ROWS).map(row => row.map(cell).join(' '));
  return `${rows.join('; ')}${value.length > MAX_ROWS ? ' …' : ''}`;
}

export function ToldAnswer({ asked, onTake }: { readonly asked: string; readonly onTake: (told: Told) => void }): JSX.Element | null {
  const W = useWords().functions;
  const numbers = useNumbers();
  const [told, setTold] = useState<Told>();
  useEffect(() => {
    let isAsked = true;
    if (asked.trim() === '') setTold(undefined);
    else
      import(/* webpackChunkName: "view-ask" */ './ask').then(
        ({ answerTo }) => isAsked && setTold(answerTo(asked)),
        (thrown: unknown) => console.warn(thrown),
      );
    return () => {
      isAsked = false;
    };
  }, [asked]);
  return (
    <div role="status" class="bw-told">
      {told !== undefined && (
        <>
          <p>
            <b>{valueWords(told, numbers)}</b>
          </p>
          <p class="bw-lines" lang="en">
            {told.working}
          </p>
          <p class="bw-quiet">
            <span lang="en">{told.source}</span>
            {told.defaults.length > 0 && W.byDefault(told.defaults.join(', '))}
          </p>
          <button type="button" onClick={() => onTake(told)}>
            {W.take(told.id)}
          </button>
        </>
      )}
    </div>
  );
}
