// The rows of a table in another order: looked at, then written.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { call } from '../../registry';
import { type Area, cellPosition } from '../../sheet/addresses';
import type { SheetPort } from '../../sheet/port';
import { type Sorted, sortTable } from '../../sheet/sort-table';
import { placeName, useNumbers, usePane, useWords } from '../pane-context';
import { type Grid, readWorkbook } from '../workbook';
import { tableRound } from './looks';
import { rangeText } from './new-table';

/** Rows of the new order that are shown. */
const MOST_SHOWN = 12;

interface SortLooked {
  readonly area: Area;
  readonly headings: readonly string[];
  readonly column: number;
  readonly isFalling: boolean;
  readonly grids: ReadonlyMap<string, Grid>;
}

/** In mm. */
function numberOf(text: string): number | undefined {
  const length = call('LENGTH.MM', [text]);
  return length.ok && typeof length.value === 'number' ? length.value : undefined;
}

function Order({ looked: { area, column, grids }, sorted }: { readonly looked: SortLooked; readonly sorted: Sorted }): JSX.Element {
  const W = useWords().table;
  const numbers = useNumbers();
  const line = (row: number): string =>
    [...new Set([area.left, column])].map(c => numbers.cell(grids.get(area.sheet)?.[row]?.[c]?.value ?? null)).join(' · ');
  return (
    <>
      <h3 id="bw-new-order">{W.order}</h3>
      <ol aria-labelledby="bw-new-order">
        {sorted.order.slice(0, MOST_SHOWN).map(row => (
          <li key={row}>{line(row)}</li>
        ))}
      </ol>
      {sorted.order.length > MOST_SHOWN && <p class="bw-quiet">{W.more(sorted.order.length - MOST_SHOWN)}</p>}
      {sorted.otherRows.length > 0 && <p class="bw-caution">{W.otherRows(sorted.otherRows.join(', '))}</p>}
      {sorted.outside.length > 0 && <p class="bw-caution">{W.outside(sorted.outside.join(', '))}</p>}
    </>
  );
}

export function SortTable({ port }: { readonly port: SheetPort }): JSX.Element {
  const { selection, edits, say, wrote, work, isBusy } = usePane();
  const W = useWords().table;
  const numbers = useNumbers();
  const [looked, setLooked] = useState<SortLooked>();
  // It may be another table by now.
  useEffect(() => setLooked(undefined), [selection, edits]);
  const look = () =>
    work(W.sort, async () => {
      setLooked(undefined);
      if (selection === null) return say(W.noTable);
      const grids = await readWorkbook(port);
      const area = tableRound(grids.get(selection.sheetName) ?? [], selection);
      if (area === undefined) return say(W.noTable);
      const line = grids.get(area.sheet)?.[area.top]?.slice(area.left, area.right + 1) ?? [];
      setLooked({
        area,
        grids,
        headings: line.map(({ value }) => numbers.cell(value)),
        column: cellPosition(selection.at).column,
        isFalling: false,
      });
    });
  const sorted = looked && sortTable(looked.grids, { ...looked, numberOf });
  const write = ({ entries }: Sorted, range: string) =>
    work(W.sort, async () => {
      const before = await port.write(entries);
      setLooked(undefined);
      wrote(W.sorted(range), before);
    });
  const range = looked === undefined ? '' : placeName({ sheetName: looked.area.sheet, at: rangeText(looked.area) });
  return (
    <section class="bw-form" aria-labelledby="bw-sort-table">
      <h2 id="bw-sort-table">{W.sort}</h2>
      <p class="bw-quiet">{W.sortWords}</p>
      <button type="button" disabled={isBusy} onClick={() => void look()}>
        {W.lookSorted}
      </button>
      {looked !== undefined && sorted !== undefined && (
        <>
          <label>
            {W.sortBy}{' '}
            <select value={looked.column} onChange={event => setLooked({ ...looked, column: Number(event.currentTarget.value) })}>
              {looked.headings.map((heading, c) => (
                <option key={c} value={looked.area.left + c}>
                  {heading}
                </option>
              ))}
            </select>
          </label>
          <label>
            <input
              type="checkbox"
              checked={looked.isFalling}
              onChange={event => setLooked({ ...looked, isFalling: event.currentTarget.checked })}
            />{' '}
            {W.falling}
          </label>
          {'filledFrom' in sorted ? (
            <p class="bw-fault">{W.spills(sorted.filledFrom)}</p>
          ) : (
            <>
              <Order looked={looked} sorted={sorted} />
              {sorted.entries.length === 0 ? (
                <p>{W.isSorted(range)}</p>
              ) : (
                <button type="button" class="bw-strong" disabled={isBusy} onClick={() => void write(sorted, range)}>
                  {W.sort}: {range}
                </button>
              )}
            </>
          )}
        </>
      )}
    </section>
  );
}
