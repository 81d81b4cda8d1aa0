// Looks for a table of one's own: what they would be, then they.
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Dress } from '../../sheet/dress';
import type { SheetPort } from '../../sheet/port';
import type { Words } from '../../words/english';
import { usePane, useWords } from '../pane-context';
import { knownAround } from '../workbook';
import { dressOf, tableRound } from './looks';
import { choicesBelow, rangeText } from './new-table';

interface Looked {
  readonly range: string;
  readonly dress: Dress;
}

const linesOf = ({ formats, stateRanges, wrapped, dropDowns }: Dress, { lacks }: SheetPort, W: Words['table']): string[] => [
  ...formats.map(({ range, format }) => W.rounded(range, format)),
  ...stateRanges.map(range => W.coloured(range)),
  ...wrapped.map(range => W.wrapped(range)),
  ...(lacks?.includes('drop-downs') === true ? [] : dropDowns.map(({ range }) => W.chosen(range))),
];

export function FormatTable({ port }: { readonly port: SheetPort }): JSX.Element {
  const { selection, say, wrote, work, isBusy } = usePane();
  const W = useWords().table;
  const [looked, setLooked] = useState<Looked>();
  const look = () =>
    work(W.format, async () => {
      setLooked(undefined);
      if (selection === null) return say(W.noTable);
      const around = knownAround(await port.around(selection));
      const area = tableRound(around.grid, selection);
      if (area === undefined) return say(W.noTable);
      // One row more tells whether it ends here.
      if (!around.knows({ ...area, bottom: area.bottom + 1 })) return say(W.tooLong);
      setLooked({ range: rangeText(area), dress: dressOf(around.grid, area, choicesBelow) });
    });
  const format = ({ dress, range }: Looked) =>
    work(W.format, async () => {
      const takeOff = await port.dress?.(dress);
      setLooked(undefined);
      wrote(W.formatted(`${dress.sheetName}!${range}`), [], takeOff);
    });
  const lines = looked === undefined ? [] : linesOf(looked.dress, port, W);
  return (
    <section class="bw-form" aria-labelledby="bw-format-table">
      <h2 id="bw-format-table">{W.format}</h2>
      <p class="bw-quiet">{W.formatWords}</p>
      <button type="button" disabled={isBusy} onClick={() => void look()}>
        {W.look}
      </button>
      {looked !== undefined && lines.length === 0 && <p>{W.nothingToDo(looked.range)}</p>}
      {looked !== undefined && lines.length > 0 && (
        <>
          <ul aria-label={looked.range}>
            {lines.map(line => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <button type="button" class="bw-strong" disabled={isBusy} onClick={() => void format(looked)}>
            {W.format}: {looked.range}
          </button>
        </>
      )}
    </section>
  );
}
