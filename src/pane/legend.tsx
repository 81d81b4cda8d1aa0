// What the letters on the drawing stand for.
import type { JSX } from 'preact';
import type { LegendEntry } from '../figure/section';
import { InGerman } from './in-german';
import { useNumbers, useWords } from './pane-context';

export function Legend({ legend, inch }: { readonly legend: readonly LegendEntry[]; readonly inch: boolean }): JSX.Element {
  const numbers = useNumbers();
  return (
    <table class="bw-legend">
      <caption class="bw-unseen">{useWords().figure.letters}</caption>
      <tbody>
        {legend.flatMap(({ letter, name, of, value, unit }) =>
          value === undefined
            ? []
            : [
                <tr key={letter}>
                  <th scope="row">{letter}</th>
                  <td>
                    {name}
                    {of === name && <InGerman name={of} />}
                  </td>
                  <td class="bw-number">{unit === 'mm' ? numbers.length(value, inch) : `${numbers.digits(value)}${unit}`}</td>
                </tr>,
              ],
        )}
      </tbody>
    </table>
  );
}
