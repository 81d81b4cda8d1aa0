// The page of one function, from its card, its plain form, its texts in functions.json and the list of evidence.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import { Arguments } from './arguments';
import type { Described } from './described-function';
import { type Evidence, evidenceOf, isOutside } from '../evidence/evidence';
import { Example } from './example';
import { functionFigure } from './figure';
import { JointLists } from './joint-lists';
import { Formula } from './formula';
import { FormulaText } from './formula-text';
import { FUNCTION_MISTAKES } from './mistakes';
import { FigureWithLegend, Mistakes, topicFile, written } from './page';
import { TOPIC_WORDS } from './topic-words';
import { PlainTable } from './plain-table';
import { RelatedFunctions } from './related-functions';

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

const EvidenceList = ({ card, evidence }: { readonly card: Card; readonly evidence: readonly Evidence[] }): JSX.Element => {
  const mine = evidenceOf(card.id, evidence);
  return (
    <section id="evidence">
      <h2>Evidence</h2>
      {!mine.some(isOutside) && (
        <p>No check from outside is known: the values were worked out by hand or by arithmetic, or follow from an identity.</p>
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
  const isOwnShown = figure?.legend.some(({ isOwn }) => isOwn) === true;
  const caption = `${figure?.words}.${isOwnShown ? ' In bold: what this function works out.' : ''}`;
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
            <FormulaText text={`=ENCL.${card.id}(${card.params.map(({ name }) => optional(name)).join(', ')})`} />
          </code>
        </p>
        {card.caution !== undefined && <p class="caution">{card.caution}</p>}
        <div class="beside">
          {figure !== undefined && <FigureWithLegend figure={figure} caption={caption} />}
          <div>
            <section id="formula">
              <h2>Formula</h2>
              <Formula card={card} />
            </section>
            <Arguments card={card} listed={listed} />
            <Example card={card} />
          </div>
        </div>
        {card.id === 'JOINT.TABLE' && <JointLists />}
        <section id="mistakes">
          <h2>Common mistakes</h2>
          <Mistakes mistakes={mistakes.slice(0, 5)} />
          <p>
            <a href={topicFile(card.topic)}>More on {card.topic}</a>
          </p>
        </section>
        <Sources card={card} />
        <PlainTable card={card} />
        <RelatedFunctions card={card} />
        <EvidenceList card={card} evidence={evidence} />
      </>
    ),
  });
}
