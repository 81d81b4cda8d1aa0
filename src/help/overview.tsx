// The page of a topic, and the first page: all functions by topic, searched as you type.
import { type Topic, TOPICS } from '../core/card';
import { topicFigure } from './figure';
import type { Described } from './described-function';
import { DocumentList, type Documents } from './documents';
import { GERMAN, type HelpLanguage } from './language';
import { TOPIC_WORDS } from './topic-words';
import { FigureWithLegend, FunctionItem, Mistakes, slug, topicFile, written } from './page';

export function topicPage(topic: Topic, functions: readonly Described[], language: HelpLanguage): string {
  const { words: W } = language;
  const figure = topicFigure(topic, language.figures);
  return written(language, {
    title: W.topics[topic],
    file: topicFile(topic),
    root: '../',
    children: (
      <>
        <h1>{W.topics[topic]}</h1>
        <p class="lead">{W.about[topic]}</p>
        <div class="beside">
          {figure !== undefined && <FigureWithLegend figure={figure} caption={figure.caption(W.figures)} />}
          <section id="functions">
            <h2>{W.heading}</h2>
            <ul class="list">
              {functions.map(listed => (
                <FunctionItem listed={listed} root="../" />
              ))}
            </ul>
          </section>
        </div>
        <section id="mistakes">
          <h2>{W.mistakes}</h2>
          <Mistakes mistakes={TOPIC_WORDS[topic].mistakes} />
        </section>
      </>
    ),
  });
}

/** What a German word is looked for in. */
function germanText(listed: Described): string {
  const { description, parameters } = GERMAN.described(listed);
  return [description, ...parameters.map(parameter => parameter.description)].join(' ');
}

export type ByTopic = ReadonlyMap<Topic, readonly Described[]>;

export function indexPage(functions: ByTopic, documents: Documents, language: HelpLanguage): string {
  const { words: W } = language;
  return written(language, {
    title: W.heading,
    file: 'index.html',
    root: '',
    isSearched: true,
    children: (
      <>
        <h1>{W.heading}</h1>
        <p class="lead">{W.lead}</p>
        <search hidden id="search">
          <label for="asked">{W.find}</label>
          <input id="asked" type="search" autocomplete="off" spellcheck={false} placeholder={W.such} />
          <p id="count" class="quiet" role="status" />
          <p id="not-covered" role="status" />
          <ul id="found" class="list" />
        </search>
        <div id="all">
          <nav aria-label={W.topicsLabel}>
            <ul class="topics">
              {TOPICS.map(topic => (
                <li>
                  <a href={`#${slug(topic)}`}>{W.topics[topic]}</a>
                </li>
              ))}
            </ul>
          </nav>
          {TOPICS.map(topic => (
            <section id={slug(topic)}>
              <h2>
                <a href={topicFile(topic)}>{W.topics[topic]}</a>
              </h2>
              <ul class="list">
                {(functions.get(topic) ?? []).map(listed => (
                  <FunctionItem
                    listed={listed}
                    root=""
                    data-id={listed.id}
                    data-topic={topic}
                    data-description={listed.description}
                    data-arguments={listed.parameters.map(({ name, description }) => `${name} ${description}`).join(' ')}
                    data-german={germanText(listed)}
                  />
                ))}
              </ul>
            </section>
          ))}
        </div>
        <section id="documents">
          <h2>{W.readOn}</h2>
          <DocumentList documents={documents} />
        </section>
        <section id="cautions">
          <h2>{W.before}</h2>
          <ul>
            {W.cautions.map(([head, text]) => (
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
