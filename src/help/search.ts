// Functions by name, trade word, sentence and argument; a question that has more words than any function is met as far as it goes.
import { foldGerman, idsByGerman, stemGerman } from './german';
import { idsBySynonym } from './synonyms';

/** What is searched of a function. */
export interface Findable {
  readonly id: string;
  readonly topic: string;
  readonly description: string;
  /** Names and texts of the arguments. */
  readonly arguments: string;
  /** The same in German, where it is at hand: description, then names and texts of the arguments. */
  readonly german?: readonly [description: string, given: string];
}

/** Words as they are typed; a mark behind a word is none of it. */
export const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/\s+/)
    .map(word => word.replace(/[?!,;:]+$|[.]$/g, ''))
    .filter(word => word !== '');

/** How well a word fits: 0 not at all; in the name best, then a trade word, the sentence, an argument. */
function fit(
  { id, topic, description, arguments: given, german = NO_GERMAN }: Findable,
  word: string,
  synonymous: ReadonlySet<string>,
): number {
  const name = id.toLowerCase();
  if (name === word) return 7;
  if (name.startsWith(word)) return 6;
  if (name.includes(`.${word}`)) return 5;
  if (synonymous.has(id)) return 4;
  if ('encl.'.includes(word) || name.includes(word)) return 3;
  const stem = stemGerman(word);
  if (`${description}\n${topic}`.toLowerCase().includes(word) || foldGerman(german[0]).includes(stem)) return 2;
  return given.toLowerCase().includes(word) || foldGerman(german[1]).includes(stem) ? 1 : 0;
}

const NO_GERMAN = ['', ''] as const;
const idsByWord = (word: string): ReadonlySet<string> => new Set([...idsBySynonym(word), ...idsByGerman(word)]);

interface Scored<T> {
  readonly found: T;
  readonly score: number;
}

const bestFirst = <T>(scored: readonly Scored<T>[]): T[] => [...scored].sort((a, b) => b.score - a.score).map(({ found }) => found);

/** Functions that fit every word, best first; all words may be one trade word. Where none fits all, those that fit the rare words best. */
export function search<T>(functions: readonly T[], asked: string, findable: (one: T) => Findable): T[] {
  const words = wordsOf(asked);
  if (words.length === 0) return [...functions];
  const whole = idsByWord(words.join(' '));
  const synonyms = words.map(idsByWord);
  const rated = functions
    .map(found => ({ found, seen: findable(found) }))
    .map(({ found, seen }) => ({
      found,
      isWhole: whole.has(seen.id),
      fits: words.map((word, i) => fit(seen, word, synonyms[i] ?? new Set())),
      seen,
    }));
  const all = rated
    .map(({ found, isWhole, fits }) => ({
      found,
      score: isWhole ? 4 * words.length : fits.includes(0) ? 0 : fits.reduce((sum, one) => sum + one, 0),
    }))
    .filter(({ score }) => score > 0);
  return all.length > 0 ? bestFirst(all) : nearest(rated, words);
}

const MAX_NEAR = 12;
/** A word that hardly tells functions apart says nothing, nor does one of two letters without a digit: it stands in too many others. */
const COMMON_SHARE = 0.25;
const saysNothing = (word: string): boolean => /^\D{1,2}$/.test(word);

interface Rated<T> {
  readonly found: T;
  readonly seen: Findable;
  readonly fits: readonly number[];
}

/** A word counts the more, the fewer functions have it; two words in a row may be a trade word. */
function nearest<T>(rated: readonly Rated<T>[], words: readonly string[]): T[] {
  const pairs = words.slice(1).map((word, i) => idsBySynonym(`${words[i]} ${word}`));
  const weights = words.map((word, i) => {
    const holders = rated.filter(({ fits }) => (fits[i] ?? 0) > 0).length;
    return holders === 0 || saysNothing(word) || holders > COMMON_SHARE * rated.length ? 0 : Math.log(rated.length / holders);
  });
  const scored = rated.map(({ found, seen, fits }) => ({
    found,
    score: fits.reduce((sum, one, i) => sum + one * (weights[i] ?? 0), 0) + pairs.filter(ids => ids.has(seen.id)).length * PAIR_SCORE,
  }));
  const most = Math.max(...scored.map(({ score }) => score));
  return most === 0 ? [] : bestFirst(scored.filter(({ score }) => score >= most / 2)).slice(0, MAX_NEAR);
}

const PAIR_SCORE = 12;
