// All help pages by file name: made at build, static, without a network.
import { TOPICS } from '../core/card';
import { EVIDENCE } from '../evidence/list';
import { CARDS } from '../registry';
import type { Described } from './described-function';
import { documentFile, documentPage, type Documents } from './documents';
import { functionPage } from './function-page';
import { indexPage, topicPage } from './overview';
import { functionFile, topicFile } from './page';

export function helpPages(functions: readonly Described[], documents: Documents): ReadonlyMap<string, string> {
  const described = new Map(functions.map(listed => [listed.id, listed]));
  const cards = [...CARDS.values()].filter(({ id }) => described.has(id));
  return new Map([
    ['index.html', indexPage(cards, described, documents)],
    ...TOPICS.map(
      topic =>
        [
          topicFile(topic),
          topicPage(
            topic,
            cards.filter(card => card.topic === topic),
          ),
        ] as const,
    ),
    ...cards.map(card => [functionFile(card.id), functionPage(card, described.get(card.id) as Described, EVIDENCE)] as const),
    ...[...documents].map(([name, text]) => [documentFile(name), documentPage(text)] as const),
  ]);
}
