// The remedies of a joint, each with what it writes and what else it changes.
import type { JSX } from 'preact';
import { call } from '../../registry';
import type { SheetPort } from '../../sheet/port';
import type { LocatedJoint } from '../find-joint';
import { RuleNamed } from '../findings';
import { placeName, useNumbers, usePane, useWords } from '../pane-context';
import { cellIn } from '../workbook';
import { effectOf, entriesOf, waysOf, type InputChange } from './remedy-effect';

const REMEDY_COLUMN = 6;

function remediesOf({ rows, base }: LocatedJoint): string[] {
  const table = call('CHECK.JOINT', [rows, base]);
  return table.ok && Array.isArray(table.value) ? [...new Set(table.value.slice(1).map(row => String(row[REMEDY_COLUMN])))] : [];
}

const changeWords = (way: readonly InputChange[], joiner: string): string => way.map(({ name, text }) => `${name} ${text}`).join(joiner);

function Way({
  way,
  joint,
  port,
}: {
  readonly way: readonly InputChange[];
  readonly joint: LocatedJoint;
  readonly port: SheetPort;
}): JSX.Element {
  const { wrote, work, isBusy, known } = usePane();
  const { cell: W, frame } = useWords();
  const numbers = useNumbers();
  const entries = entriesOf(way, joint, place => cellIn(known, place)?.formula !== undefined);
  const effect = effectOf(way, joint);
  const words = numbers.sentence(changeWords(way, frame.remedyWords[' with ']));
  return (
    <li>
      {entries === undefined ? (
        <b>{words}</b>
      ) : (
        <button
          type="button"
          disabled={isBusy}
          onClick={() => void work(words, async () => wrote(W.applied(words), await port.write(entries)))}
        >
          {W.apply(words)}
        </button>
      )}{' '}
      <span>
        {entries === undefined
          ? W.cannot
          : W.writes(entries.map(entry => `${placeName(entry)}: ${numbers.cell(entry.content)}`).join(', '))}
      </span>
      {effect.length === 0 ? (
        <span class="bw-quiet">{W.changesNothing}</span>
      ) : (
        <span>
          {W.changes}{' '}
          {effect.map(({ rule, from, to }, i) => (
            <span key={rule}>
              {i > 0 && '; '}
              <RuleNamed name={rule} />: <span lang="en">{`${from} → ${to}`}</span>
            </span>
          ))}
        </span>
      )}
    </li>
  );
}

export function Remedies({ joint, port }: { readonly joint: LocatedJoint; readonly port: SheetPort }): JSX.Element | null {
  const { cell: W, frame } = useWords();
  const ways = remediesOf(joint).flatMap(waysOf);
  if (ways.length === 0) return null;
  return (
    <>
      <h3>{W.ways}</h3>
      <ul class="bw-findings">
        {ways.map(way => (
          <Way key={changeWords(way, frame.remedyWords[' with '])} way={way} joint={joint} port={port} />
        ))}
      </ul>
    </>
  );
}
