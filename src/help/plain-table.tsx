// What a supplier gets of a function's example, as a table of cells and plain formulas.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import { useLanguage } from './language';
import { FormulaText } from './formula-text';
import { InEnglish } from './page';
import { plainSheet } from './plain-sheet';
import { shownCell } from './shown-cell';

export const PlainTable = ({ card }: { readonly card: Card }): JSX.Element => {
  const {
    words: { plain: W },
    english,
    numbers,
  } = useLanguage();
  const { rows, remark } = plainSheet(card);
  return (
    <section id="plain">
      <h2>{W.heading}</h2>
      {remark !== undefined && (
        <p>
          {W.remark} <InEnglish>{remark}.</InEnglish>
        </p>
      )}
      {rows.length > 0 && (
        <>
          <p class="quiet">{W.words}</p>
          <div class="wide" role="group" aria-label={W.formulas} tabIndex={0}>
            <table>
              <thead>
                <tr>
                  {W.columns.map(column => (
                    <th scope="col">{column}</th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map(({ at, words, content, value }) => (
                  <tr>
                    <td>{at}</td>
                    <td lang={english}>{words}</td>
                    <td>
                      <code>
                        <FormulaText text={content} />
                      </code>
                    </td>
                    <td class="number">{typeof value === 'number' ? numbers(shownCell(value)) : shownCell(value ?? null)}</td>
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
