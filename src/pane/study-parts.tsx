// What moves the selected joint, and how many of it are good.
import type { JSX } from 'preact';
import { stateOf } from '../joint/verdict';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { LocatedJoint } from './find-joint';
import { DRAWN, movesOf, type Yield, yieldOf } from './joint-studies';
import { RuleNamed } from './findings';
import { InGerman } from './in-german';
import { useNumbers, usePane, useWords } from './pane-context';
import { StateWord } from './state-word';

/** Moves that are shown. */
const STRONGEST = 6;

const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

export function Moves({ joint }: { readonly joint: LocatedJoint }): JSX.Element | null {
  const W = useWords().check;
  const { digits } = useNumbers();
  const strongest = useMemo(() => movesOf(joint.variant, 'engagement min').slice(0, STRONGEST), [joint]);
  const most = strongest[0]?.change ?? 0;
  if (strongest.length === 0) return null;
  return (
    <details class="bw-part">
      <summary>{W.moves}</summary>
      <p class="bw-quiet">{W.movesWords}</p>
      <table class="bw-levers">
        <thead>
          <tr>
            <th scope="col">{W.movesColumns.input}</th>
            <th scope="col">{W.movesColumns.now}</th>
            <th scope="col">{W.movesColumns.over}</th>
            <th scope="col">{W.movesColumns.one}</th>
          </tr>
        </thead>
        <tbody>
          {strongest.map(({ input, unit, now, tolerance, perUnit, change }) => (
            <tr key={input}>
              <th scope="row">
                {input}
                <InGerman name={input} />
              </th>
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
                    {digits(thousandths(change))}
                  </>
                )}
              </td>
              <td class="bw-number">
                {perUnit > 0 && '+'}
                {digits(thousandths(perUnit))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** Drawn when asked: it takes longer than all else that is shown. */
export function YieldBeside({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { say } = usePane();
  const W = useWords().check;
  const { digits } = useNumbers();
  const percent = (share: number): string => `${digits(Math.round(share * 1e6) / 1e4)} %`;
  const [drawn, setDrawn] = useState<Yield | null>(null);
  // found anew it is the same joint as long as nothing of it was changed
  const inputs = JSON.stringify([joint.rows, joint.base]);
  useEffect(() => setDrawn(null), [inputs]);
  const draw = () => {
    const found = yieldOf(joint.variant);
    if (found === undefined) say(W.noYield);
    else setDrawn(found);
  };
  if (drawn === null)
    return (
      <div class="bw-actions">
        <button type="button" onClick={draw}>
          {W.yield}
        </button>
      </div>
    );
  return (
    <section class="bw-part" aria-label={W.yield}>
      <p class="bw-quiet">{W.yieldWords(DRAWN)}</p>
      <table class="bw-legend">
        <tbody>
          <tr>
            <th scope="row">{W.worst}</th>
            <td class="bw-number">
              <StateWord state={stateOf(joint.variant)} />
            </td>
          </tr>
          {drawn.all.map(([name, share]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="bw-number">{share === undefined ? W.notChecked : percent(share)}</td>
            </tr>
          ))}
          {drawn.missed.map(([rule, ppm]) => (
            <tr key={rule}>
              <th scope="row">
                <RuleNamed name={rule} />
              </th>
              <td class="bw-number">{ppm === undefined ? W.notChecked : W.outside(digits(Math.round(ppm)))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
