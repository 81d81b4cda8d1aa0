// The list of functions: functions.json joined with the cards, grouped by topic and searched by name and trade word. No DOM.
import { TOPICS, type Card, type Topic } from "../core/card";
import { CARDS } from "../registry";
import { idsBySynonym } from "./synonyms";

/** The namespace in manifest.xml. */
export const NAMESPACE = "ENCL";

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
  readonly helpUrl?: string;
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
  return `${NAMESPACE}.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

const wordsOf = (text: string): string[] => text.toLowerCase().split(/\s+/).filter((word) => word !== "");

/** How well a word fits: 0 not at all; in the name best, then a trade word, the sentence, an argument. */
function fit(listed: ListedFunction, word: string, synonymous: ReadonlySet<string>): number {
  const id = listed.id.toLowerCase();
  if (id === word) return 7;
  if (id.startsWith(word)) return 6;
  if (id.includes(`.${word}`)) return 5;
  if (synonymous.has(listed.id)) return 4;
  if (`${NAMESPACE}.`.toLowerCase().includes(word) || id.includes(word)) return 3;
  if (`${listed.description}\n${cardOf(listed).topic}`.toLowerCase().includes(word)) return 2;
  return listed.parameters.some(({ name, description }) => `${name}\n${description}`.toLowerCase().includes(word)) ? 1 : 0;
}

/** Functions that fit every word, best first; the words together may be one trade word. */
export function search(functions: readonly ListedFunction[], asked: string): ListedFunction[] {
  const words = wordsOf(asked);
  const whole = idsBySynonym(words.join(" "));
  const synonyms = words.map(idsBySynonym);
  const scored = functions.map((listed) => {
    const fits = words.map((word, i) => fit(listed, word, synonyms[i] ?? new Set()));
    const score = whole.has(listed.id) ? 4 * words.length : fits.includes(0) ? 0 : fits.reduce((sum, one) => sum + one, 0);
    return { listed, score };
  });
  return scored.filter(({ score }) => score > 0 || words.length === 0).sort((a, b) => b.score - a.score).map(({ listed }) => listed);
}

/** By topic: in the order of the work, or best first where something was asked. */
export function groups(functions: readonly ListedFunction[], asked: string): Group[] {
  const found = search(functions, asked);
  const topics = wordsOf(asked).length === 0 ? TOPICS : [...new Set(found.map((listed) => cardOf(listed).topic))];
  return topics.map((topic) => ({ topic, functions: found.filter((listed) => cardOf(listed).topic === topic) })).filter(({ functions: some }) => some.length > 0);
}
