// What functions.json says, and which functions have a caution, as types: a text that has no German does not compile, nor does
// German of a text that is no more.
import { phrasesOf, sentencesOf } from '../german/phrases';
import type { FunctionText } from './metadata';

const literal = (text: string): string => (text.includes("'") && !text.includes('"') ? `"${text}"` : `'${text.replaceAll("'", "\\'")}'`);

const union = (name: string, texts: readonly string[]): string =>
  `export type ${name} =\n${[...new Set(texts)].map(text => `  | ${literal(text)}`).join('\n')};\n`;

export const englishTexts = (functions: readonly FunctionText[], cautioned: readonly string[]): string =>
  [
    union(
      'Sentence',
      functions.flatMap(({ description }) => sentencesOf(description)),
    ),
    union(
      'Phrase',
      functions.flatMap(({ parameters }) => parameters.flatMap(({ description }) => phrasesOf(description).flat())),
    ),
    union('Cautioned', cautioned),
  ].join('\n');
