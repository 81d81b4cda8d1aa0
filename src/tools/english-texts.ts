// What functions.json, the cards and the tables say, as types: a text that has no German does not compile, nor does
// German of a text that is no more.
import type { Card } from '../core/card';
import { RULES } from '../joint/rules';
import type { Table } from '../standards/table';
import { phrasesOf, sentencesOf } from '../german/phrases';
import type { FunctionText } from './metadata';

const literal = (text: string): string => (text.includes("'") && !text.includes('"') ? `"${text}"` : `'${text.replaceAll("'", "\\'")}'`);

const union = (name: string, texts: readonly string[]): string =>
  `export type ${name} =\n${[...new Set(texts)].map(text => `  | ${literal(text)}`).join('\n')};\n`;

export const englishTexts = (functions: readonly FunctionText[], cards: readonly Card[], tables: readonly Table[]): string =>
  [
    union(
      'Sentence',
      functions.flatMap(({ description }) => sentencesOf(description)),
    ),
    union(
      'Phrase',
      functions.flatMap(({ parameters }) => parameters.flatMap(({ description }) => phrasesOf(description).flat())),
    ),
    union(
      'Cautioned',
      cards.flatMap(({ id, caution }) => (caution === undefined ? [] : [id])),
    ),
    union(
      'NotLive',
      cards.flatMap(({ notLive }) => notLive ?? []),
    ),
    union('HeldText', [
      ...cards.flatMap(({ sources }) => sources.map(({ held }) => held)),
      ...tables.flatMap(({ columns }) => columns.map(({ held }) => held)),
    ]),
    union('SourceTitle', [...cards.flatMap(({ sources }) => sources.map(({ title }) => title)), ...RULES.map(({ source }) => source)]),
    union(
      'TableText',
      tables.flatMap(({ subject, edition, table }) => [subject, edition, table]),
    ),
  ].join('\n');
