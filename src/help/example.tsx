// The example of a function: its call, what it gives, its working, and where in a table it was read.
import type { JSX } from 'preact';
import { exampleCall } from '../about/about';
import { working } from '../about/working';
import { callCard, readArguments } from '../core/call';
import type { Card } from '../core/card';
import type { Cell } from '../core/kinds';
import { heldOf } from '../core/table';
import { formOfCard } from '../plain/forms';
import { useLanguage } from './language';
import { FormulaText } from './formula-text';
import { InEnglish } from './page';
import { shownCell } from './shown-cell';

const MAX_ROWS = 8;
const MAX_COLUMNS = 7;

function ResultTable({ rows }: { readonly rows: readonly (readonly Cell[])[] }): JSX.Element {
  const shown = rows.slice(0, MAX_ROWS).map(row => row.slice(0, MAX_COLUMNS));
  const { words: W, english, numbers } = useLanguage();
  const isCut = rows.length > MAX_ROWS || (rows[0]?.length ?? 0) > MAX_COLUMNS;
  return (
    <>
      <div class="wide" role="group" aria-label={W.result} tabIndex={0}>
        <table lang={english}>
          <tbody>
            {shown.map(row => (
              <tr>
                {row.map(value => (
                  <td class={typeof value === 'number' ? 'number' : undefined}>
                    {typeof value === 'number' ? numbers(shownCell(value)) : shownCell(value)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {isCut && <p class="quiet">{W.firstOf(rows.length, rows[0]?.length ?? 0)}</p>}
    </>
  );
}

export function Example({ card }: { readonly card: Card }): JSX.Element {
  const { words: W, english, numbers } = useLanguage();
  const outcome = callCard(card, card.example.args);
  const value = outcome.ok ? outcome.value : outcome.message;
  const read = outcome.ok && card.reads !== undefined ? card.reads(...(readArguments(card, card.example.args) as never[])) : [];
  return (
    <section id="example">
      <h2>{W.example}</h2>
      <p>
        <code class="call">
          <FormulaText text={exampleCall(card)} />
        </code>
      </p>
      {Array.isArray(value) ? (
        <ResultTable rows={value} />
      ) : (
        <p>
          {W.gives}{' '}
          <output lang={typeof value === 'number' ? undefined : english}>
            {typeof value === 'number' ? numbers(shownCell(value)) : shownCell(value)}
          </output>
          {card.result.shape === 'number' && ` ${card.result.unit}`}
        </p>
      )}
      {(Array.isArray(value) ? card.result.shape === 'row' && formOfCard(card.id) !== undefined : typeof value === 'number') && (
        <p class="working" lang={english}>
          {numbers(working(card, card.example.args))}
        </p>
      )}
      {read.map(({ table, row, key }) => (
        <p class="quiet">
          {W.readIn}{' '}
          <InEnglish>
            {table.standard}, {table.edition}, {table.table}: {heldOf(table, row, key)}.
          </InEnglish>
        </p>
      ))}
    </section>
  );
}
