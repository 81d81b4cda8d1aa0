// What is said of where a value comes from.
import type { Card } from '../../core/card';
import type { CardKind } from '../../core/kinds';
import type { Column } from '../../standards/table';

export type ColumnLimit = NonNullable<Column['limit']>;

const asItIs = (text: string): string => text;

export const SOURCES = {
  kind: (kind: CardKind): string => kind,
  title: asItIs,
  held: asItIs,
  /** What a table is about, its edition and its number. */
  table: asItIs,
  column: asItIs,
  limit: (limit: ColumnLimit): string => limit,
  note: asItIs,
};

export type SourceWords = typeof SOURCES;

/** `plane geometry (derived); ISO 4032 (read in 2 secondary copies)`. */
export const sourcesOf = ({ sources }: Card, said: SourceWords): string =>
  sources.map(({ title, held }) => `${said.title(title)} (${said.held(held)})`).join('; ');
