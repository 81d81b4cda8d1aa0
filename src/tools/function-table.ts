// The list of functions by topic, as the README shows it: from cards and sentences, never by hand.
import { type Card, TOPICS } from '../core/card';
import { whatOf } from '../plain/forms';
import { inTable } from './markdown';

const signature = ({ id, params }: Card): string =>
  `ENCL.${id}(${params.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(', ')})`;

export function functionTable(cards: Iterable<Card>): string {
  const all = [...cards];
  return TOPICS.flatMap(topic => {
    const mine = all.filter(card => card.topic === topic);
    if (mine.length === 0) return [];
    return [
      '',
      `**${topic}**`,
      '',
      '| function | gives |',
      '|---|---|',
      ...mine.map(card => `| \`${signature(card)}\` | ${inTable(whatOf(card.id))} |`),
    ];
  }).join('\n');
}
