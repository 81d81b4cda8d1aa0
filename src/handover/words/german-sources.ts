// Where a value comes from, in German. What the user says of an own screw or table stays as it is.
import type { CardKind } from '../../core/kinds';
import { COLUMN_NAMES, COLUMN_NOTES } from '../../german/columns';
import { namesOf } from '../../german/phrases';
import { HELD, SOURCE_TITLES, TABLE_TEXTS } from '../../german/sources';
import type { ColumnLimit, SourceWords } from './source-words';

const KINDS: Readonly<Record<CardKind, string>> = {
  geometry: 'Geometrie',
  'standard table': 'Normtabelle',
  'handbook formula': 'Handbuchformel',
  'common practice': 'gängige Praxis',
};

const LIMITS: Readonly<Record<ColumnLimit, string>> = {
  max: 'max.',
  min: 'min.',
  nominal: 'Nennwert',
  sharp: 'scharfkantig',
  approx: 'ungefähr',
};

const from =
  (words: Readonly<Record<string, string>>) =>
  (text: string): string =>
    words[text] ?? text;

const name = from(COLUMN_NAMES);

export const GERMAN_SOURCES: SourceWords = {
  kind: kind => KINDS[kind],
  title: from(SOURCE_TITLES),
  held: from(HELD),
  table: from(TABLE_TEXTS),
  column: title => namesOf(title).map(name).join(''),
  limit: limit => LIMITS[limit],
  note: from(COLUMN_NOTES),
};
