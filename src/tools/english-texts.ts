// What functions.json, the cards and the tables say, as types: a text that has no German does not compile, nor does
// German of a text that is no more.
import type { Card } from '../core/card';
import { ownExample, ownLengths, ownScrew } from '../core/screw/own';
import { RULES } from '../joint/rules';
import type { Table } from '../standards/table';
import { namesOf, phrasesOf, sentencesOf } from '../german/phrases';
import type { FunctionText } from './metadata';

const literal = (text: string): string => (text.includes("'") && !text.includes('"') ? `"${text}"` : `'${text.replaceAll("'", "\\'")}'`);

const union = (name: string, texts: readonly string[]): string =>
  `export type ${name} =\n${[...new Set(texts)].map(text => `  | ${literal(text)}`).join('\n')};\n`;

/** Those of an own screw with all that it can have. */
function ownTables(): readonly Table[] {
  const read = ownScrew(ownExample());
  return read === undefined ? [] : [read.own.table, ownLengths(read.own)];
}

export const englishTexts = (functions: readonly FunctionText[], cards: readonly Card[], tables: readonly Table[]): string => {
  const own = ownTables();
  const columns = [...tables, ...own].flatMap(table => table.columns);
  return [
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
    union('HeldText', [...cards.flatMap(({ sources }) => sources.map(({ held }) => held)), ...columns.map(({ held }) => held)]),
    union('SourceTitle', [...cards.flatMap(({ sources }) => sources.map(({ title }) => title)), ...RULES.map(({ source }) => source)]),
    union('TableText', [
      ...tables.flatMap(({ subject, edition, table }) => [subject, edition, table]),
      ...own.flatMap(({ standard, edition, table }) => [standard, edition, table]),
    ]),
    union(
      'ColumnName',
      columns.flatMap(({ title }) => namesOf(title).filter((name, i) => i % 2 === 0 && /[a-z]{2}/.test(name))),
    ),
    union(
      'ColumnNote',
      columns.flatMap(({ note }) => note ?? []),
    ),
  ].join('\n');
};
