// Lists of what goes along, and of what becomes of formulas.
import type { JSX } from 'preact';
import type { CarriedChoice } from '../../files/jobs';
import type { HandoverFinding } from '../../handover/read/finding';
import type { CarriedKind } from '../../package/carried';
import type { Words } from '../../words/english';
import { InGerman } from '../in-german';
import { useLater } from '../lazy-view';

/** More lines than anyone reads. */
const MOST_LINES = 200;

interface TickListProps {
  readonly legend: string;
  readonly of: readonly { readonly name: string; readonly isTicked: boolean; readonly state?: string }[];
  readonly onTicked: (names: readonly string[]) => void;
}

/** Nothing where there is nothing to choose. */
export function Ticks({ legend, of, onTicked }: TickListProps): JSX.Element | null {
  if (of.length === 0) return null;
  const tick = (name: string, now: boolean) => onTicked(of.flatMap(one => ((one.name === name ? now : one.isTicked) ? [one.name] : [])));
  return (
    <fieldset>
      <legend>{legend}</legend>
      <ul class="bw-ticks">
        {of.map(({ name, isTicked, state }) => (
          <li key={name}>
            <label>
              <input type="checkbox" checked={isTicked} onChange={event => tick(name, event.currentTarget.checked)} /> {name}
              {state !== undefined && <small> {state}</small>}
              <InGerman name={name} />
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

interface CarriedProps {
  readonly carried: readonly CarriedChoice[];
  readonly along: readonly CarriedKind[];
  readonly onAlong: (along: readonly CarriedKind[]) => void;
}

export function Carried({ carried, along, onAlong }: CarriedProps): JSX.Element {
  const W = useLater().handOver;
  if (carried.length === 0) return <p class="bw-quiet">{W.carriedNothing}</p>;
  return (
    <fieldset>
      <legend>{W.carried}</legend>
      <ul class="bw-ticks">
        {carried.map(({ kind, amount, isAsked }) => (
          <li key={kind}>
            {isAsked ? (
              <label>
                <input
                  type="checkbox"
                  checked={along.includes(kind)}
                  onChange={({ currentTarget: { checked } }) =>
                    onAlong([...along.filter(other => other !== kind), ...(checked ? [kind] : [])])
                  }
                />{' '}
                {W.carriedOf(kind, amount)}
              </label>
            ) : (
              W.stays(W.carriedOf(kind, amount))
            )}
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

export function Findings({ findings }: { readonly findings: readonly HandoverFinding[] }): JSX.Element {
  const W = useLater().handOver;
  const kinds = Object.keys(W.found) as readonly (keyof Words['handOver']['found'])[];
  return (
    <>
      {kinds.map(what => {
        const lines = findings.filter(finding => finding.what === what);
        if (lines.length === 0) return null;
        return (
          <details key={what} class="bw-part bw-titled">
            <summary>
              {W.found[what]}: {lines.length}
            </summary>
            <ul tabIndex={0}>
              {lines.slice(0, MOST_LINES).map(({ sheet, at, words }, i) => (
                <li key={i}>
                  {sheet} {at}: {words}
                </li>
              ))}
              {lines.length > MOST_LINES && <li>{W.more(lines.length - MOST_LINES)}</li>}
            </ul>
          </details>
        );
      })}
    </>
  );
}
