// A new table of variants at the selected cell, and looks for one that is there.
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { InGerman } from '../in-german';
import { JOINT_INPUT_NAMES } from '../../joint/inputs';
import { OUTPUTS } from '../../joint/outputs';
import { address, type Area } from '../../sheet/addresses';
import type { SheetPort } from '../../sheet/port';
import { inSigns } from '../../sheet/signs';
import type { Words } from '../../words/english';
import { shownCell } from '../../help/shown-cell';
import { messageOf, placeName, useNumbers, usePane, useWords } from '../pane-context';
import { partsBySheet } from '../workbook';
import { FormatTable } from './format-table';
import { newTable, type NewTable, rangeText, START } from './new-table';
import { SortTable } from './sort-table';

const FIRST_INPUTS = Object.keys(START);
const FIRST_OUTPUTS = ['engagement min', 'engagement ratio', 'bottom clearance', 'sink ratio', 'state', 'reason', 'remedy'];
const TICKED_OUTPUTS = ['engagement min', 'sink ratio', 'state', 'reason'];
const TICKED_INPUTS = FIRST_INPUTS.filter(name => name !== 'face');
const MOST_VARIANTS = 100;

interface TicksProps {
  readonly names: readonly string[];
  readonly ticked: ReadonlyMap<string, string>;
  readonly onTick: (name: string, isTicked: boolean) => void;
  /** Left out where there is nothing to type. */
  readonly onText?: (name: string, text: string) => void;
}

function Ticks({ names, ticked, onTick, onText }: TicksProps): JSX.Element {
  const W = useWords().table;
  return (
    <ul class="bw-ticks">
      {names.map(name => {
        const text = ticked.get(name);
        return (
          <li key={name}>
            <label>
              <input type="checkbox" checked={text !== undefined} onChange={event => onTick(name, event.currentTarget.checked)} /> {name}
              <InGerman name={name} />
            </label>
            {text !== undefined && onText !== undefined && (
              <input
                type="text"
                autocomplete="off"
                spellcheck={false}
                aria-label={W.firstValue(name)}
                value={text}
                onInput={event => onText(name, event.currentTarget.value)}
              />
            )}
          </li>
        );
      })}
    </ul>
  );
}

function useTicked(first: readonly string[]): [ReadonlyMap<string, string>, TicksProps['onTick'], (name: string, text: string) => void] {
  const [ticked, setTicked] = useState<ReadonlyMap<string, string>>(() => new Map(first.map(name => [name, START[name] ?? 'default'])));
  const set = (name: string, text: string) => setTicked(earlier => new Map(earlier).set(name, text));
  const tick: TicksProps['onTick'] = (name, isTicked) => {
    if (isTicked) set(name, START[name] ?? 'default');
    else setTicked(earlier => new Map([...earlier].filter(([other]) => other !== name)));
  };
  return [ticked, tick, set];
}

/** The first cell that is not free, in words; undefined where the table may stand. */
async function inTheWay(port: SheetPort, { inputs, results }: NewTable, W: Words['table']): Promise<string | undefined> {
  const parts = partsBySheet(await port.readAreas([inputs, results]));
  for (const { sheet, top, left, bottom, right } of [inputs, results]) {
    const grid = parts.get(sheet)?.grid ?? [];
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) {
        const cell = grid[row]?.[column];
        if (cell !== undefined && (cell.value !== null || cell.formula !== undefined)) return W.occupied(address(row, column));
      }
  }
  const edges = [inputs, results].flatMap(({ top, left, bottom, right }) =>
    [top, bottom].flatMap(row => Array.from({ length: right - left + 1 }, (_, c) => address(row, left + c))),
  );
  for (const at of edges) {
    const table = await port.tableAt?.({ sheetName: inputs.sheet, at });
    if (table !== undefined) return W.inTable(at, table);
  }
  return undefined;
}

function Shown({ table }: { readonly table: NewTable }): JSX.Element {
  const { port, signs } = usePane();
  const W = useWords().table;
  const numbers = useNumbers();
  const [header = [], first = []] = table.shown;
  const dropDowns = port?.lacks?.includes('drop-downs') === true ? W.noDropDowns : W.dropDowns;
  return (
    <>
      <ul>
        <li>{W.inputCells(rangeText(table.inputs), table.inputs.bottom - table.inputs.top)}</li>
        <li>
          {W.formulaCell(address(table.results.top, table.results.left))} <code class="bw-code">{inSigns(table.formula, signs)}</code>{' '}
          {W.filled(rangeText(table.results))}
        </li>
        {port?.dress !== undefined && (
          <>
            <li>{W.looks}</li>
            {table.dress.dropDowns.length > 0 && <li>{dropDowns(table.dress.dropDowns.map(({ range }) => range).join(', '))}</li>}
          </>
        )}
      </ul>
      <dl class="bw-first-row">
        {header.map((name, i) => (
          <div key={i}>
            <dt>{shownCell(name)}</dt>
            <dd>{numbers.cell(first[i] ?? null)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

const union = ({ inputs: a, results: b }: NewTable): Area => ({
  sheet: a.sheet,
  top: a.top,
  left: a.left,
  bottom: Math.max(a.bottom, b.bottom),
  right: Math.max(a.right, b.right),
});

function NewTableForm({ port }: { readonly port: SheetPort }): JSX.Element {
  const { selection, say, wrote, work, isBusy } = usePane();
  const W = useWords().table;
  const [inputs, tickInput, setInput] = useTicked(TICKED_INPUTS);
  const [outputs, tickOutput] = useTicked(TICKED_OUTPUTS);
  const [variants, setVariants] = useState(3);
  const [isBeside, setBeside] = useState(false);
  const table = useMemo(
    () =>
      selection === null
        ? undefined
        : newTable({
            place: selection,
            inputs: JOINT_INPUT_NAMES.flatMap(name => (inputs.has(name) ? [{ name, text: inputs.get(name) ?? '' }] : [])),
            outputs: OUTPUTS.filter(name => outputs.has(name)),
            variants,
            isBeside,
          }),
    [selection, inputs, outputs, variants, isBeside],
  );
  const isReady = table !== undefined && typeof table !== 'string';
  const write = async (event: Event) => {
    event.preventDefault();
    if (!isReady) return;
    await work(W.write, async () => {
      const obstacle = await inTheWay(port, table, W);
      if (obstacle !== undefined) return say(obstacle);
      const written = await port.write(table.entries);
      const place = `${table.inputs.sheet}!${rangeText(union(table))}`;
      try {
        wrote(W.written(place), written, await port.dress?.(table.dress));
      } catch (thrown) {
        // What is written can be taken back all the same.
        wrote(W.writtenPlain(place, messageOf(thrown)), written);
      }
    });
  };
  const rest = (all: readonly string[], first: readonly string[]) => all.filter(name => !first.includes(name));
  return (
    <form class="bw-form" onSubmit={event => void write(event)}>
      <h2>{W.heading}</h2>
      <p class="bw-quiet">{selection === null ? W.noCell : W.from(placeName(selection))}</p>
      <h3>{W.inputs}</h3>
      <Ticks names={FIRST_INPUTS} ticked={inputs} onTick={tickInput} onText={setInput} />
      <details class="bw-part">
        <summary>{W.moreInputs}</summary>
        <Ticks names={rest(JOINT_INPUT_NAMES, FIRST_INPUTS)} ticked={inputs} onTick={tickInput} onText={setInput} />
      </details>
      <h3>{W.outputs}</h3>
      <Ticks names={FIRST_OUTPUTS} ticked={outputs} onTick={tickOutput} />
      <details class="bw-part">
        <summary>{W.moreOutputs}</summary>
        <Ticks names={rest(OUTPUTS, FIRST_OUTPUTS)} ticked={outputs} onTick={tickOutput} />
      </details>
      <label>
        {W.variants}{' '}
        <input
          type="number"
          min={1}
          max={MOST_VARIANTS}
          value={variants}
          onInput={event => setVariants(Math.min(MOST_VARIANTS, Math.max(1, Math.trunc(event.currentTarget.valueAsNumber) || 1)))}
        />
      </label>
      <label>
        <input type="checkbox" checked={isBeside} onChange={event => setBeside(event.currentTarget.checked)} /> {W.isBeside}
      </label>
      <section class="bw-answer" aria-label={W.willWrite}>
        <h3>{W.willWrite}</h3>
        {table === undefined && <p>{W.nothing}</p>}
        {typeof table === 'string' && <p class="bw-fault">{W.refused(table)}</p>}
        {isReady && <Shown table={table} />}
      </section>
      <button type="submit" class="bw-strong" disabled={!isReady || isBusy}>
        {W.write}
      </button>
    </form>
  );
}

export function TableView(): JSX.Element {
  const { port } = usePane();
  const W = useWords().table;
  if (port === undefined)
    return (
      <>
        <h2>{W.heading}</h2>
        <p>{W.noWorkbook}</p>
      </>
    );
  return (
    <>
      <NewTableForm port={port} />
      {port.dress !== undefined && <FormatTable port={port} />}
      {port.lacks?.includes('sort') === true && <SortTable port={port} />}
    </>
  );
}
