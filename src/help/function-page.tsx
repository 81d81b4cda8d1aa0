// The page of one function, from its card, its plain form, its texts in functions.json and the list of evidence.
import type { JSX } from 'preact';
import { callCard, readArguments } from '../core/call';
import { type Card, forgotten, type Param } from '../core/card';
import type { Cell } from '../core/kinds';
import { accepts } from '../core/read/accepts';
import { limitWords } from '../core/read/limits';
import { relationWords } from '../core/read/relation';
import { heldOf } from '../core/table';
import { formOfCard } from '../plain/forms';
import { digits } from '../plain/print';
import { blankWords, exampleCall, nameOf } from '../about/about';
import { working } from '../about/working';
import { type Evidence, evidenceOf, isOutside } from './evidence';
import { functionFigure } from './figure';
import { Formula, Symbol } from './formula';
import { FUNCTION_MISTAKES, TOPIC_WORDS } from './mistakes';
import { FigureWithLegend, FunctionLink, Mistakes, topicFile, written } from './page';
import { plainSheet } from './plain-sheet';
import { jointNames, related, rulesOf } from './related';

/** An entry of functions.json. */
export interface Described {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly { readonly name: string; readonly description: string; readonly optional?: boolean }[];
}

const MOST_ROWS = 8;
const MOST_COLUMNS = 7;

/** What an argument takes beside the quantity that its text names. */
function alsoTakes(param: Param): string {
  const { kind } = param;
  switch (kind.is) {
    case 'quantity':
    case 'cone':
    case 'deviation':
      return kind.from === undefined ? '' : ` Also ${kind.from.words}${relationWords(param)}.`;
    case 'limit':
      return ' Also "none".';
    case 'group':
      return ` Also ${kind.ownTable}.`;
    case 'choice':
    case 'grade':
      return ` One of ${accepts(kind)}.`;
    case 'whole':
    case 'size with limits':
    case 'screw size':
    case 'screw':
    case 'head':
    case 'function name':
    case 'joint output':
    case 'material':
    case 'list':
    case 'names':
    case 'values':
    case 'block':
    case 'anything':
      return '';
    default:
      return forgotten(kind);
  }
}

function Argument({ param, text }: { readonly param: Param; readonly text: string }): JSX.Element {
  const { kind, limits, blank, name } = param;
  const bounds = [limitWords(limits, kind.unit), blankWords(blank)].filter(words => words !== '').join('; ');
  return (
    <>
      <dt>
        {param.symbol !== undefined && <Symbol text={nameOf(param)} />} <code>{name}</code> {kind.unit !== '' && <small>{kind.unit}</small>}
      </dt>
      <dd>
        {text}.{' '}
        <span class="quiet">
          {bounds[0]?.toUpperCase()}
          {bounds.slice(1)}.{alsoTakes(param)}
        </span>
      </dd>
    </>
  );
}

const Arguments = ({ card, listed }: { readonly card: Card; readonly listed: Described }): JSX.Element => (
  <section id="arguments">
    <h2>Arguments and symbols</h2>
    {card.params.length === 0 ? (
      <p>It has none.</p>
    ) : (
      <dl class="arguments">
        {card.params.map((param, i) => (
          <Argument param={param} text={listed.parameters[i]?.description ?? ''} />
        ))}
      </dl>
    )}
    {card.params.some(({ kind }) => kind.is === 'screw') && (
      <p class="quiet">
        Of the screw, mm, from the thread table of its standard: <Symbol text="d" /> nominal diameter, <Symbol text="d1" /> major diameter,
        max, <Symbol text="d2" /> root diameter, max, <Symbol text="P" /> pitch.
      </p>
    )}
  </section>
);

const shownCell = (value: Cell): string =>
  typeof value === 'number' ? digits(value) : typeof value === 'boolean' ? String(value).toUpperCase() : value;

function ResultTable({ rows }: { readonly rows: readonly (readonly Cell[])[] }): JSX.Element {
  const shown = rows.slice(0, MOST_ROWS).map(row => row.slice(0, MOST_COLUMNS));
  const isCut = rows.length > MOST_ROWS || (rows[0]?.length ?? 0) > MOST_COLUMNS;
  return (
    <>
      <div class="wide" role="group" aria-label="Result" tabIndex={0}>
        <table>
          <tbody>
            {shown.map(row => (
              <tr>
                {row.map(value => (
                  <td class={typeof value === 'number' ? 'number' : undefined}>{shownCell(value)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {isCut && (
        <p class="quiet">
          The first of {rows.length} rows and {rows[0]?.length} columns.
        </p>
      )}
    </>
  );
}

function Example({ card }: { readonly card: Card }): JSX.Element {
  const outcome = callCard(card, card.example.args);
  const value = outcome.ok ? outcome.value : outcome.message;
  const read = outcome.ok && card.reads !== undefined ? card.reads(...(readArguments(card, card.example.args) as never[])) : [];
  return (
    <section id="example">
      <h2>Example</h2>
      <p>
        <code class="call">{exampleCall(card)}</code>
      </p>
      {Array.isArray(value) ? (
        <ResultTable rows={value} />
      ) : (
        <p>
          gives <output>{shownCell(value)}</output>
          {card.result.shape === 'number' && ` ${card.result.unit}`}
        </p>
      )}
      {(Array.isArray(value) ? card.result.shape === 'row' && formOfCard(card.id) !== undefined : typeof value === 'number') && (
        <p class="working">{working(card, card.example.args)}</p>
      )}
      {read.map(({ table, row, key }) => (
        <p class="quiet">
          Read in {table.standard}, {table.edition}, {table.table}: {heldOf(table, row, key)}.
        </p>
      ))}
    </section>
  );
}

const Sources = ({ card: { kind, sources } }: { readonly card: Card }): JSX.Element => (
  <section id="sources">
    <h2>Sources</h2>
    <p>Kind: {kind}.</p>
    <ul>
      {sources.map(({ title, held }) => (
        <li>
          {title}
          {title === held ? '' : <span class="quiet">: {held}</span>}
        </li>
      ))}
    </ul>
  </section>
);

const PlainForm = ({ card }: { readonly card: Card }): JSX.Element => {
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
                      <code>{content}</code>
                    </td>
                    <td class="number">{value === undefined || value === null ? '' : shownCell(value)}</td>
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

function InTheJoint({ card }: { readonly card: Card }): JSX.Element | null {
  const names = jointNames(card);
  if (names.length === 0) return null;
  return (
    <>
      <p>In the joint it works out {names.join(', ')}.</p>
      {rulesOf(card).map(({ name, basis, source }) => (
        <p class="quiet">
          Rule “{name}”: {basis} ({source}).
        </p>
      ))}
    </>
  );
}

const RelatedFunctions = ({ card }: { readonly card: Card }): JSX.Element => (
  <section id="related">
    <h2>Related</h2>
    <InTheJoint card={card} />
    <dl class="related">
      {related(card).map(({ words, ids }) => (
        <>
          <dt>{words}</dt>
          <dd>
            {ids.map((id, i) => (
              <>
                {i > 0 && ', '}
                <FunctionLink id={id} root="" />
              </>
            ))}
          </dd>
        </>
      ))}
    </dl>
  </section>
);

const EvidenceList = ({ card, evidence }: { readonly card: Card; readonly evidence: readonly Evidence[] }): JSX.Element => {
  const mine = evidenceOf(card.id, evidence);
  return (
    <section id="evidence">
      <h2>Evidence</h2>
      {!mine.some(isOutside) && (
        <p>No check from outside is known: what stands here was worked by hand or by arithmetic, or follows from an identity.</p>
      )}
      <ul>
        {mine.map(({ kind, source, test }) => (
          <li>
            {kind}
            {source === '' ? '' : `: ${source}`} <span class="quiet">({test})</span>
          </li>
        ))}
      </ul>
    </section>
  );
};

export function functionPage(card: Card, listed: Described, evidence: readonly Evidence[]): string {
  const figure = functionFigure(card);
  const optional = (name: string): string =>
    listed.parameters.find(parameter => parameter.name === name)?.optional === true ? `[${name}]` : name;
  const mistakes = [...(FUNCTION_MISTAKES[card.id] ?? []), ...TOPIC_WORDS[card.topic].mistakes];
  return written({
    title: card.id,
    root: '',
    topic: card.topic,
    children: (
      <>
        <h1>{card.id}</h1>
        <p class="lead">{listed.description}</p>
        <p>
          <code class="call">
            =ENCL.{card.id}({card.params.map(({ name }) => optional(name)).join(', ')})
          </code>
        </p>
        {card.caution !== undefined && <p class="caution">{card.caution}</p>}
        <div class="beside">
          {figure !== undefined && (
            <FigureWithLegend
              figure={figure}
              caption={`The joint of the demo.${figure.legend.some(({ isOwn }) => isOwn) ? ' In bold: what this function works out there.' : ''}`}
            />
          )}
          <div>
            <section id="formula">
              <h2>Formula</h2>
              <Formula card={card} />
            </section>
            <Arguments card={card} listed={listed} />
            <Example card={card} />
          </div>
        </div>
        <section id="mistakes">
          <h2>Common mistakes</h2>
          <Mistakes mistakes={mistakes.slice(0, 5)} />
          <p>
            <a href={topicFile(card.topic)}>More on {card.topic}</a>
          </p>
        </section>
        <Sources card={card} />
        <PlainForm card={card} />
        <RelatedFunctions card={card} />
        <EvidenceList card={card} evidence={evidence} />
      </>
    ),
  });
}
