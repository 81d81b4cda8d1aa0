// What the joint takes, answers and is judged by, on the page of its table.
import type { JSX } from 'preact';
import { useLanguage } from './language';
import { InEnglish, Named } from './page';
import { INPUTS } from '../joint/inputs';
import { meaningOf, OUTPUTS, unitOf } from '../joint/outputs';
import { RULES } from '../joint/rules';

interface JointListProps {
  readonly id: string;
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly (string | JSX.Element)[])[];
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

export function JointLists(): JSX.Element {
  const {
    words: { joint: W },
    beside,
    ruleBeside,
    broken,
    fallback,
  } = useLanguage();
  const inEnglish = (text: string): JSX.Element => <InEnglish>{text}</InEnglish>;
  const joined = (moves: readonly (string | readonly string[])[]): string =>
    moves.map(move => (typeof move === 'string' ? move : move.join(W.with))).join(', ');
  return (
    <>
      <List
        id="inputs"
        title={W.inputs}
        heads={W.inputHeads}
        rows={[...INPUTS].map(([name, { unit, defaultWords, meaning }]) => [
          inEnglish(name),
          orDash(unit),
          fallback(defaultWords),
          beside(name) ?? meaning,
        ])}
      />
      <List
        id="outputs"
        title={W.outputs}
        heads={W.outputHeads}
        rows={OUTPUTS.map(name => [inEnglish(name), orDash(unitOf(name)), beside(name) ?? meaningOf(name)])}
      />
      <List
        id="rules"
        title={W.rules}
        heads={W.ruleHeads}
        rows={RULES.map(rule => [
          <Named name={rule.name} words={ruleBeside(rule.name)} />,
          broken(rule),
          inEnglish(rule.value),
          inEnglish(rule.source),
          orDash(joined(rule.moves ?? [])),
        ])}
      />
    </>
  );
}
