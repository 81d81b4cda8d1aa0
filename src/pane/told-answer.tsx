// The answer to a question that was typed into the search, with what it rests on. What answers is fetched when something is asked.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Cell } from '../core/kinds';
import type { Told } from './ask';
import { useWords } from './pane-context';
import { digits } from '../plain/print';

const shownCell = (cell: Cell): string => (typeof cell === 'number' ? digits(cell) : String(cell));

const MAX_ROWS = 12;

function valueWords({ value, unit }: Told): string {
  if (typeof value !== 'object') return `${shownCell(value)} ${unit}`.trim();
  const rows = value.slice(0, MAX_ROWS).map(row => row.map(shownCell).join(' '));
  return `${rows.join('; ')}${value.length > MAX_ROWS ? ' …' : ''}`;
}

export function ToldAnswer({ asked, onTake }: { readonly asked: string; readonly onTake: (told: Told) => void }): JSX.Element | null {
  const W = useWords().functions;
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
            <b>{valueWords(told)}</b>
          </p>
          <p class="bw-lines">{told.working}</p>
          <p class="bw-quiet">
            {told.source}
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
