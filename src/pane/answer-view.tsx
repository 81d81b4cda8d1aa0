// An answer as it would stand in the sheet, and its working.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import type { Cell } from '../core/kinds';
import { inWords } from './argument-words';
import { useNumbers, usePane, useWords } from './pane-context';
import type { Preview } from './preview';

/** Rows of a table that are shown before it is in the sheet. */
const MAX_ROWS = 12;

const unitOf = ({ result }: Card): string => ('unit' in result ? result.unit : '');

function Table({ rows, hasHeader }: { readonly rows: readonly (readonly Cell[])[]; readonly hasHeader: boolean }): JSX.Element {
  const W = useWords().functions;
  const numbers = useNumbers();
  const [header, body] = hasHeader ? [rows[0], rows.slice(1)] : [undefined, rows];
  return (
    <>
      {/* A wide table scrolls by the keyboard too. */}
      <div class="bw-scroll" tabIndex={0} role="region" aria-label={W.answer}>
        <table>
          {header !== undefined && (
            <thead>
              <tr>
                {header.map((name, i) => (
                  <th key={i} scope="col">
                    {numbers.cell(name)}
                  </th>
                ))}
              </tr>
            </thead>
          )}
          <tbody>
            {body.slice(0, MAX_ROWS).map((row, r) => (
              <tr key={r}>
                {row.map((value, c) => (
                  <td key={c} class={typeof value === 'number' ? 'bw-number' : ''}>
                    {numbers.cell(value)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {body.length > MAX_ROWS && <p class="bw-quiet">{W.rowsMore(body.length - MAX_ROWS)}</p>}
    </>
  );
}

function rowsOf({ result }: Card, value: Cell[][]): { readonly rows: Cell[][]; readonly hasHeader: boolean } {
  if (result.shape === 'row')
    return { rows: [result.columns.map(({ name, unit }) => (unit === '' ? name : `${name} (${unit})`)), ...value], hasHeader: true };
  return { rows: value, hasHeader: result.shape === 'table' };
}

function Result({ card, value }: { readonly card: Card; readonly value: Cell | Cell[][] }): JSX.Element {
  const numbers = useNumbers();
  if (Array.isArray(value)) return <Table {...rowsOf(card, value)} />;
  return (
    <p class="bw-value">
      {numbers.cell(value)} <small>{typeof value === 'number' ? unitOf(card) : ''}</small>
    </p>
  );
}

export function AnswerView({ answer, card }: { readonly answer: Preview | null; readonly card: Card }): JSX.Element {
  const W = useWords().functions;
  const { german } = usePane();
  return (
    <div class="bw-answer" aria-live="polite" aria-label={W.result} role="group">
      {answer?.is === 'answer' && (
        <>
          <Result card={card} value={answer.value} />
          {!Array.isArray(answer.value) && answer.working !== '' && (
            <p class="bw-lines bw-working" lang="en">
              {answer.working}
            </p>
          )}
          {card.caution !== undefined && <p class="bw-caution">{german?.cautionOf(card.id) ?? card.caution}</p>}
        </>
      )}
      {answer?.is === 'refused' && (
        <p class="bw-fault">
          <b>{W.noResult}</b>{' '}
          {answer.argument === undefined ? <span lang="en">{answer.message}</span> : W.seeAbove(inWords(answer.argument))}
        </p>
      )}
      {answer?.is === 'unknown' && <p class="bw-quiet">{W.bySheet(inWords(answer.argument))}</p>}
    </div>
  );
}
