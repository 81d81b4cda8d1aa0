// What a supplier gets of a function's example, as a table of cells and plain formulas.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import { FormulaText } from './formula-text';
import { plainSheet } from './plain-sheet';
import { shownCell } from './shown-cell';

export const PlainTable = ({ card }: { readonly card: Card }): JSX.Element => {
  const { rows, remark } = plainSheet(card);
  return (
    <section id="plain">
      <h2>As a supplier gets it</h2>
      {remark !== undefined && <p>In the hand-over copy of a sheet: {remark}.</p>}
      {rows.length > 0 && (
        <>
          <p class="quiet">The hand-over copy of a sheet with this example: plain formulas that every spreadsheet program reads.</p>
          <div class="wide" role="group" aria-label="Plain formulas" tabIndex={0}>
            <table>
              <thead>
                <tr>
                  <th scope="col">cell</th>
                  <th scope="col">what</th>
                  <th scope="col">formula</th>
                  <th scope="col">value</th>
                </tr>
              </thead>
              <tbody>
                {rows.map(({ at, words, content, value }) => (
                  <tr>
                    <td>{at}</td>
                    <td>{words}</td>
                    <td>
                      <code>
                        <FormulaText text={content} />
                      </code>
                    </td>
                    <td class="number">{shownCell(value ?? null)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </section>
  );
};
