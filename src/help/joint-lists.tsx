// What the joint takes, answers and is judged by, on the page of its table.
import type { JSX } from 'preact';
import { INPUTS } from '../joint/inputs';
import { meaningOf, OUTPUTS, unitOf } from '../joint/outputs';
import { RULES } from '../joint/rules';

interface JointListProps {
  readonly id: string;
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const List = ({ id, title, heads, rows }: JointListProps): JSX.Element => (
  <section id={id}>
    <h2>{title}</h2>
    <div class="wide sentences" role="group" aria-label={title} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {heads.map(head => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells]) => (
            <tr>
              <th scope="row">{name}</th>
              {cells.map(cell => (
                <td>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  </section>
);

const orDash = (text: string): string => (text === '' ? '–' : text);

export const JointLists = (): JSX.Element => (
  <>
    <List
      id="inputs"
      title="Inputs"
      heads={['name', 'unit', 'default', 'meaning']}
      rows={[...INPUTS].map(([name, { unit, defaultWords, meaning }]) => [name, orDash(unit), defaultWords, meaning])}
    />
    <List
      id="outputs"
      title="Outputs"
      heads={['name', 'unit', 'meaning']}
      rows={OUTPUTS.map(name => [name, orDash(unitOf(name)), meaningOf(name)])}
    />
    <List
      id="rules"
      title="Rules, and what mends them"
      heads={['rule', 'where it is broken', 'judges', 'source', 'remedies change']}
      rows={RULES.map(({ name, broken, value, source, moves }) => [
        name,
        broken,
        value,
        source,
        orDash((moves ?? []).map(move => (typeof move === 'string' ? move : move.join(' with '))).join(', ')),
      ])}
    />
  </>
);
