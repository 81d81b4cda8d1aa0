// The list of functions: functions.json joined with the cards, searched and grouped by topic. No DOM.
import { TOPICS, type Card, type Topic } from '../core/card';
import { search as find, wordsOf } from '../help/search';
import { CARDS } from '../registry';

/** The namespace in manifest.xml. */
export const NAMESPACE = 'ENCL';

export interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
  readonly dimensionality?: string;
}

/** An entry of functions.json, as far as the pane reads it. */
export interface ListedFunction {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
  /** The same in English, where the texts are those of another language. */
  readonly english?: ListedFunction;
}

export interface Group {
  readonly topic: Topic;
  readonly functions: readonly ListedFunction[];
}

export const cardOf = ({ id }: ListedFunction): Card => {
  const card = CARDS.get(id);
  if (card === undefined) throw new Error(`functions.json names ${id}, which has no card`);
  return card;
};

/** `ENCL.BOSS.OD(hole, wall, [distance], [draft])` */
export function signature({ id, parameters }: ListedFunction): string {
  return `${NAMESPACE}.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(', ')})`;
}

const argumentsOf = ({ parameters }: ListedFunction): string =>
  parameters.map(({ name, description }) => `${name}\n${description}`).join('\n');

/** As they are searched, best first; all where nothing is asked. */
export function search(functions: readonly ListedFunction[], asked: string): ListedFunction[] {
  return find(functions, asked, listed => ({
    id: listed.id,
    topic: cardOf(listed).topic,
    description: (listed.english ?? listed).description,
    arguments: argumentsOf(listed.english ?? listed),
    ...(listed.english && { german: [listed.description, argumentsOf(listed)] }),
  }));
}

/** By topic: in the order of the work, or best first where something was asked. */
export function groups(functions: readonly ListedFunction[], asked: string): Group[] {
  const found = search(functions, asked);
  const topics = wordsOf(asked).length === 0 ? TOPICS : [...new Set(found.map(listed => cardOf(listed).topic))];
  return topics
    .map(topic => ({ topic, functions: found.filter(listed => cardOf(listed).topic === topic) }))
    .filter(({ functions: some }) => some.length > 0);
}
