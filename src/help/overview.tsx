// The page of a topic, and the first page: all functions by topic, searched as you type.
import { type Card, type Topic, TOPICS } from '../core/card';
import { inGerman } from '../german/metadata';
import { CAUTIONS } from './cautions';
import { topicFigure } from './figure';
import type { Described } from './described-function';
import { DocumentList, type Documents } from './documents';
import { TOPIC_WORDS } from './topic-words';
import { FigureWithLegend, FunctionItem, Mistakes, slug, topicFile, written } from './page';

export function topicPage(topic: Topic, cards: readonly Card[]): string {
  const { about, mistakes } = TOPIC_WORDS[topic];
  const figure = topicFigure(topic);
  return written({
    title: topic,
    root: '../',
    children: (
      <>
        <h1>{topic}</h1>
        <p class="lead">{about}</p>
        <div class="beside">
          {figure !== undefined && <FigureWithLegend figure={figure} caption={figure.words} />}
          <section id="functions">
            <h2>Functions</h2>
            <ul class="list">
              {cards.map(card => (
                <FunctionItem card={card} root="../" />
              ))}
            </ul>
          </section>
        </div>
        <section id="mistakes">
          <h2>Common mistakes</h2>
          <Mistakes mistakes={mistakes} />
        </section>
      </>
    ),
  });
}

/** What a German word is looked for in. */
function germanText(listed: Described): string {
  const { description, parameters } = inGerman(listed);
  return [description, ...parameters.map(parameter => parameter.description)].join(' ');
}

export function indexPage(cards: readonly Card[], described: ReadonlyMap<string, Described>, documents: Documents): string {
  return written({
    title: 'Functions',
    root: '',
    isSearched: true,
    children: (
      <>
        <h1>Functions</h1>
        <p class="lead">
          Cell functions for the screw joints of two-part moulded housings. Every function has a page with its formula, its arguments, an
          example, its sources and what it was checked against.
        </p>
        <search hidden id="search">
          <label for="asked">Find by name, trade word or question</label>
          <input id="asked" type="search" autocomplete="off" spellcheck={false} placeholder="standoff, core pin, which pilot hole …" />
          <p id="count" class="quiet" role="status" />
          <p id="not-covered" role="status" />
          <ul id="found" class="list" />
        </search>
        <div id="all">
          <nav aria-label="Topics">
            <ul class="topics">
              {TOPICS.map(topic => (
                <li>
                  <a href={`#${slug(topic)}`}>{topic}</a>
                </li>
              ))}
            </ul>
          </nav>
          {TOPICS.map(topic => (
            <section id={slug(topic)}>
              <h2>
                <a href={topicFile(topic)}>{topic}</a>
              </h2>
              <ul class="list">
                {cards
                  .filter(card => card.topic === topic)
                  .map(card => {
                    const listed = described.get(card.id);
                    const { description = '', parameters = [] } = listed ?? {};
                    return (
                      <FunctionItem
                        card={card}
                        root=""
                        data-id={card.id}
                        data-topic={topic}
                        data-description={description}
                        data-arguments={parameters.map(({ name, description: text }) => `${name} ${text}`).join(' ')}
                        data-german={listed && germanText(listed)}
                      />
                    );
                  })}
              </ul>
            </section>
          ))}
        </div>
        <section id="documents">
          <h2>Read on</h2>
          <DocumentList documents={documents} />
        </section>
        <section id="cautions">
          <h2>Before you rely on a number</h2>
          <ul>
            {CAUTIONS.map(([head, text]) => (
              <li>
                {head !== '' && <b>{head} </b>}
                {text}
              </li>
            ))}
          </ul>
        </section>
      </>
    ),
  });
}
