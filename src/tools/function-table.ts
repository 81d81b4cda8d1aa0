// The list of functions by topic: from cards and sentences, never by hand.
import { type Card, TOPICS } from '../core/card';
import { whatOf } from '../plain/forms';
import { inTable } from './markdown';

const ABOUT =
  'Every function has a help page: formula, arguments, an example worked out, common mistakes, sources, the plain form that a supplier ' +
  'gets, and what it was checked against. *Help* in the bench and the link under each function in the panel lead to them; `npm run ' +
  'build` writes them to `dist/help/` (open `index.html`, no server needed). `ENCL.ABOUT("BOSS.OD")` says the short of it in a cell.';

const signature = ({ id, params }: Card): string =>
  `ENCL.${id}(${params.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(', ')})`;

/** As Markdown. */
export function functionTable(cards: Iterable<Card>): string {
  const all = [...cards];
  return [
    ABOUT,
    ...TOPICS.flatMap(topic => {
      const mine = all.filter(card => card.topic === topic);
      if (mine.length === 0) return [];
      return [
        '',
        `## ${topic}`,
        '',
        '| function | gives |',
        '|---|---|',
        ...mine.map(card => `| \`${signature(card)}\` | ${inTable(whatOf(card.id))} |`),
      ];
    }),
  ].join('\n');
}
