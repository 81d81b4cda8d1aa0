// What moves the selected joint, and how many of it are good.
import type { JSX } from 'preact';
import { stateOf } from '../joint/verdict';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { digits } from '../plain/print';
import type { LocatedJoint } from './find-joint';
import { DRAWN, movesOf, type Yield, yieldOf } from './joint-studies';
import { usePane } from './pane-context';

/** Moves that are shown. */
const STRONGEST = 6;

const rounded = (value: number): string => digits(Math.round(value * 1000) / 1000);

export function Moves({ joint }: { readonly joint: LocatedJoint }): JSX.Element | null {
  const strongest = useMemo(() => movesOf(joint.variant, 'engagement min').slice(0, STRONGEST), [joint]);
  const most = strongest[0]?.change ?? 0;
  if (strongest.length === 0) return null;
  return (
    <details class="bw-part">
      <summary>What moves the worst engagement most</summary>
      <p class="bw-quiet">Change of the full thread at worst case, mm: over the tolerance of an input, and for one unit more of it.</p>
      <table class="bw-levers">
        <thead>
          <tr>
            <th scope="col">input</th>
            <th scope="col">now</th>
            <th scope="col">over its tolerance</th>
            <th scope="col">for one more</th>
          </tr>
        </thead>
        <tbody>
          {strongest.map(({ input, unit, now, tolerance, perUnit, change }) => (
            <tr key={input}>
              <th scope="row">{input}</th>
              <td class="bw-number">
                {digits(now)}
                {tolerance !== undefined && ` ± ${digits(tolerance)}`} {unit}
              </td>
              <td class="bw-number">
                {change === undefined ? (
                  '–'
                ) : (
                  <>
                    <span class="bw-bar" aria-hidden="true" style={{ width: `${most === 0 ? 0 : (40 * change) / most}px` }} />±
                    {rounded(change)}
                  </>
                )}
              </td>
              <td class="bw-number">
                {perUnit > 0 && '+'}
                {rounded(perUnit)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

const percent = (share: number): string => `${digits(Math.round(share * 1e6) / 1e4)} %`;

/** Drawn when asked: it takes longer than all else that is shown. */
export function YieldBeside({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { say } = usePane();
  const [drawn, setDrawn] = useState<Yield | null>(null);
  // found anew it is the same joint as long as nothing of it was changed
  const inputs = JSON.stringify([joint.rows, joint.base]);
  useEffect(() => setDrawn(null), [inputs]);
  const draw = () => {
    const found = yieldOf(joint.variant);
    if (found === undefined) say('The yield has no value');
    else setDrawn(found);
  };
  if (drawn === null)
    return (
      <div class="bw-actions">
        <button type="button" onClick={draw}>
          Yield beside worst case
        </button>
      </div>
    );
  return (
    <section class="bw-part" aria-label="Yield beside worst case">
      <p class="bw-quiet">
        {digits(DRAWN)} joints drawn within their tolerances. It counts on sizes about the middle of their limits; the worst case does not.
      </p>
      <table class="bw-legend">
        <tbody>
          <tr>
            <th scope="row">worst case</th>
            <td class="bw-number">{stateOf(joint.variant)}</td>
          </tr>
          {drawn.all.map(([name, share]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="bw-number">{share === undefined ? 'not checked' : percent(share)}</td>
            </tr>
          ))}
          {drawn.missed.map(([rule, ppm]) => (
            <tr key={rule}>
              <th scope="row">{rule}</th>
              <td class="bw-number">{ppm === undefined ? 'not checked' : `${digits(Math.round(ppm))} ppm outside`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
