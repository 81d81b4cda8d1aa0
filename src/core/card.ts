// What a function is: its parameters with symbol, unit, limits and default, its result, its sources and an example.
// Messages, argument help, tables and property tests read cards; a formula never checks its own limits.
import type { CardKind, Limits, Reading, Source, TableValue } from './kinds';
import { worthOf } from './table';

/** The arguments already read, by name. */
export interface Earlier {
  get(name: string): unknown;
}

/** For a value that is read by itself. */
export const NOTHING_READ: Earlier = new Map();

export interface Kind<T> {
  /** `length`, `screw size`, … */
  readonly noun: string;
  /** The core unit, or nothing. */
  readonly unit: string;
  /** What is accepted, in words. */
  readonly accepts: string;
  /** `one`: a single value. `list`: one row or column. `block`: any rectangle. */
  readonly shape: 'one' | 'list' | 'block';
  /** How a name is typed, `"M3"`: in its place a number or a blank is most likely an unquoted one, which is a cell. */
  readonly inQuotes?: string;
  /** Which value of a table a text names, where it is one value as it stands there. */
  readonly tableValue?: ((text: string) => TableValue | undefined) | undefined;
  /** Blanks, bare zeros and errors reach the reader too. */
  readonly takesEverything?: true;
  /** A value that is neither blank nor an error, unless the kind takes everything. Throws Refused. */
  read(raw: unknown, earlier: Earlier): T;
}

/**
 * What a blank cell, a left-out argument and a bare 0 mean; a function cannot tell them apart.
 * refused: an error naming the argument. zero: the number 0. explicit: refused, zero must be written with its unit.
 * default: the given value, or that of an earlier parameter, or what an earlier parameter brings along. absent: the parameter has no value, and none is taken.
 */
export type Blank =
  | 'refused'
  | 'zero'
  | 'explicit'
  | 'absent'
  | { readonly default: number | string }
  | { readonly sameAs: string; readonly take?: (earlier: never) => unknown };

export interface Param<T = unknown> {
  readonly name: string;
  readonly kind: Kind<T>;
  readonly symbol: string | undefined;
  readonly limits: Limits | undefined;
  readonly blank: Blank;
  readonly optional: boolean;
  /** Lists of one group have a row each for the same things; their counts must agree. */
  readonly group: string | undefined;
}

interface Named {
  readonly name: string;
  readonly unit: string;
}

export type Result =
  | { readonly shape: 'number'; readonly name: string; readonly symbol?: string; readonly unit: string }
  | { readonly shape: 'text'; readonly name: string }
  /** One row, no header. */
  | { readonly shape: 'row'; readonly columns: readonly Named[] }
  /** One column, no header. */
  | { readonly shape: 'column'; readonly name: string; readonly unit: string }
  /** A header row, then rows; no columns where the arguments decide. */
  | { readonly shape: 'table'; readonly columns: readonly Named[] };

export interface Card {
  readonly id: string;
  readonly topic: Topic;
  readonly params: readonly Param[];
  readonly result: Result;
  readonly formula: (...args: never[]) => unknown;
  readonly kind: CardKind;
  readonly sources: readonly Source[];
  /** The result of a large table may be one of its rows, counted from 0. */
  readonly example:
    | { readonly args: readonly unknown[]; readonly result: unknown }
    | { readonly args: readonly unknown[]; readonly row: number; readonly values: readonly unknown[] };
  /** What a look-up reads; its formula is the worth of this. */
  readonly reads?: (...args: never[]) => readonly Reading[];
  /** Why the hand-over has no live plain formula, where it has none. */
  readonly notLive?: string;
  /** A word of caution that belongs to every use: an estimate, a start value. */
  readonly caution?: string;
}

export const TOPICS = [
  'Units',
  'Screws and standard data',
  'Holes and core pins',
  'Draft',
  'Boss and wall',
  'Head recess',
  'Grip, engagement, screw length',
  'Strength (estimates)',
  'Board and supports',
  'Ribs, lip, mould',
  'Tolerances',
  'Checks, variants, trace',
  'The joint as one table',
] as const;

export type Topic = (typeof TOPICS)[number];

type Params<A extends readonly unknown[]> = { readonly [I in keyof A]: Param<A[I]> };

/** Ties the parameters' types to the formula's. */
export function card<A extends readonly unknown[]>(
  id: string,
  topic: Topic,
  params: Params<A>,
  formula: (...args: [...A]) => unknown,
  rest: Omit<Card, 'id' | 'topic' | 'params' | 'formula'>,
): Card {
  return { id, topic, params, formula: formula as Card['formula'], ...rest };
}

/** The card of a look-up: what it reads is said once. */
export function lookUp<A extends readonly unknown[]>(
  id: string,
  topic: Topic,
  params: Params<A>,
  reads: (...args: [...A]) => readonly Reading[],
  rest: Omit<Card, 'id' | 'topic' | 'params' | 'formula' | 'reads'>,
): Card {
  return {
    id,
    topic,
    params,
    formula: (...args: [...A]) => worthOf(reads(...args)),
    reads: reads as unknown as NonNullable<Card['reads']>,
    ...rest,
  } as Card;
}

export const GEOMETRY: readonly Source[] = [{ title: 'plane geometry', held: 'derived' }];
export const COMMON_PRACTICE: readonly Source[] = [{ title: 'common practice', held: 'common practice' }];
