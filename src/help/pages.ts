// All help pages by file name: made at build, static, without a network. The documents are in English alone.
import { TOPICS } from '../core/card';
import { EVIDENCE } from '../evidence/list';
import { CARDS } from '../registry';
import type { Described } from './described-function';
import { documentFile, documentPage, type Documents } from './documents';
import { functionPage } from './function-page';
import { type HelpLanguage, LANGUAGES } from './language';
import { type ByTopic, indexPage, topicPage } from './overview';
import { functionFile, topicFile } from './page';

type Page = readonly [file: string, text: string];

export function helpPages(functions: readonly Described[], documents: Documents): ReadonlyMap<string, string> {
  const described = new Map(functions.map(listed => [listed.id, listed]));
  const cards = [...CARDS.values()].flatMap(card => {
    const listed = described.get(card.id);
    return listed === undefined ? [] : [{ card, listed }];
  });
  const byTopic: ByTopic = new Map(
    TOPICS.map(topic => [topic, cards.filter(({ card }) => card.topic === topic).map(({ listed }) => listed)] as const),
  );
  const pagesIn = (language: HelpLanguage): Page[] => [
    ['index.html', indexPage(byTopic, documents, language)],
    ...TOPICS.map((topic): Page => [topicFile(topic), topicPage(topic, byTopic.get(topic) ?? [], language)]),
    ...cards.map(({ card, listed }): Page => [functionFile(card.id), functionPage(card, listed, EVIDENCE, language)]),
  ];
  return new Map([
    ...LANGUAGES.flatMap(language => pagesIn(language).map(([file, text]): Page => [`${language.folder}${file}`, text])),
    ...[...documents].map(([name, text]): Page => [documentFile(name), documentPage(text)]),
  ]);
}
