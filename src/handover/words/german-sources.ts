// Where a value comes from, in German. What the user says of an own screw or table stays as it is.
import type { CardKind } from '../../core/kinds';
import { HELD, SOURCE_TITLES, TABLE_TEXTS } from '../../german/sources';
import type { SourceWords } from './source-words';

const KINDS: Readonly<Record<CardKind, string>> = {
  geometry: 'Geometrie',
  'standard table': 'Normtabelle',
  'handbook formula': 'Handbuchformel',
  'common practice': 'gängige Praxis',
};

const from =
  (words: Readonly<Record<string, string>>) =>
  (text: string): string =>
    words[text] ?? text;

export const GERMAN_SOURCES: SourceWords = {
  kind: kind => KINDS[kind],
  title: from(SOURCE_TITLES),
  held: from({ ...HELD, 'given by you': 'von Ihnen angegeben' }),
  table: from({ ...TABLE_TEXTS, 'given by you': 'von Ihnen angegeben', 'its own numbers': 'eigene Zahlen' }),
};
