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
import { type HelpLanguage, useLanguage } from './language';
import { FUNCTION_MISTAKES } from './mistakes';
import { FigureWithLegend, functionFile, Mistakes, topicFile, written } from './page';
import { TOPIC_WORDS } from './topic-words';
import { PlainTable } from './plain-table';
import { RelatedFunctions } from './related-functions';

function Sources({ card: { kind, sources } }: { readonly card: Card }): JSX.Element {
  const { words: W, english } = useLanguage();
  return (
    <section id="sources">
      <h2>{W.sources}</h2>
      <p>
        {W.kind}: {W.kinds[kind]}.
      </p>
      <ul lang={english}>
        {sources.map(({ title, held }) => (
          <li>
            {title}
            {title === held ? '' : <span class="quiet">: {held}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}

function EvidenceList({ card, evidence }: { readonly card: Card; readonly evidence: readonly Evidence[] }): JSX.Element {
  const {
    words: { evidence: W },
    english,
  } = useLanguage();
  const mine = evidenceOf(card.id, evidence);
  return (
    <section id="evidence">
      <h2>{W.heading}</h2>
      {!mine.some(isOutside) && <p>{W.none}</p>}
      <ul lang={english}>
        {mine.map(({ kind, source, test }) => (
          <li>
            {kind}
            {source === '' ? '' : `: ${source}`} <span class="quiet">({test})</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function functionPage(card: Card, english: Described, evidence: readonly Evidence[], language: HelpLanguage): string {
  const { words: W } = language;
  const listed = language.described(english);
  const figure = functionFigure(card, language.figures);
  const optional = (name: string): string =>
    listed.parameters.find(parameter => parameter.name === name)?.optional === true ? `[${name}]` : name;
  const isOwnShown = figure?.legend.some(({ isOwn }) => isOwn) === true;
  const caution = language.caution(card);
  const mistakes = [...(FUNCTION_MISTAKES[card.id] ?? []), ...TOPIC_WORDS[card.topic].mistakes];
  return written(language, {
    title: card.id,
    file: functionFile(card.id),
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
        {caution !== undefined && <p class="caution">{caution}</p>}
        <div class="beside">
          {figure !== undefined && (
            <FigureWithLegend figure={figure} caption={`${figure.caption(W.figures)}.${isOwnShown ? ` ${W.inBold}` : ''}`} />
          )}
          <div>
            <section id="formula">
              <h2>{W.formula}</h2>
              <Formula card={card} />
            </section>
            <Arguments card={card} listed={listed} />
            <Example card={card} />
          </div>
        </div>
        {card.id === 'JOINT.TABLE' && <JointLists />}
        <section id="mistakes">
          <h2>{W.mistakes}</h2>
          <Mistakes mistakes={mistakes.slice(0, 5)} />
          <p>
            <a href={topicFile(card.topic)}>{W.more(W.topics[card.topic])}</a>
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
