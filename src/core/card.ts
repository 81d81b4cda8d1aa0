// What a function is: its parameters with symbol, unit, limits and default, its result, its sources and an example.
// Messages, argument help, tables and property tests read cards; a formula never checks its own limits.
import type { CardKind, Limits, Source } from './kinds';
import type { Reading, TableValue } from '../standards/table';
import type { Quantity } from './read/quantity';
import { worthOf } from './table';

/** The arguments already read, by name. */
export interface PrecedingArguments {
  get(name: string): unknown;
}

/** For a value that is read by itself. */
export const NOTHING_READ: PrecedingArguments = new Map();

/** What a text names in place of the value itself: a screw, a head, a material. */
export interface TextSource<T> {
  /** Finish the sentence "or …". */
  readonly words: string;
  /** Undefined if the text is not of that form. */
  readonly read: (text: string, preceding: PrecedingArguments) => T | undefined;
  /** Which value of a table the text names, where it is one value as it stands there. */
  readonly tableValue?: (text: string) => TableValue | undefined;
  /** Which of several values it is, where that is no value of a table. */
  readonly which?: (text: string) => string | undefined;
}

/** How names of a kind are typed. */
export type NameKind = 'screw size' | 'screw' | 'nut' | 'head' | 'function name' | 'joint input' | 'joint output';

/** What each kind of argument is made of, as far as others need to know. */
export type Nature =
  | { readonly is: 'quantity'; readonly quantity: Quantity }
  /** The sharp diameter of a countersunk head, with the angle that its name brings. */
  | { readonly is: 'cone'; readonly quantity: Quantity }
  | { readonly is: 'whole' }
  /** A limit of a result: a length or "none". */
  | { readonly is: 'limit'; readonly quantity: Quantity }
  | { readonly is: 'deviation' }
  | { readonly is: 'size with limits'; readonly examples: string }
  | { readonly is: 'choice'; readonly words: readonly string[] }
  | { readonly is: NameKind; readonly example: string }
  | { readonly is: 'grade'; readonly examples: string; readonly held: string }
  | { readonly is: 'group'; readonly names: readonly string[]; readonly ownTable: string }
  | { readonly is: 'material'; readonly example: string }
  | { readonly is: 'list'; readonly of: Kind<unknown>; readonly limits: Limits | undefined }
  /** Names beside numbers. */
  | { readonly is: 'names' }
  /** What the cells of a list hold, as it is. */
  | { readonly is: 'values' }
  | { readonly is: 'block' }
  | { readonly is: 'anything' };

export type Kind<T> = Nature & {
  /** `length`, `screw size`, … */
  readonly noun: string;
  /** The core unit, or nothing. */
  readonly unit: string;
  /** `one`: a single value. `list`: one row or column. `block`: any rectangle. */
  readonly shape: 'one' | 'list' | 'block';
  /** 0 is a value of it, and a blank may count as 0. */
  readonly hasZero: boolean;
  /** How a name is typed, `"M3"`: in its place a number or a blank is most likely an unquoted one, which is a cell. */
  readonly inQuotes: string | undefined;
  /** What a text may name instead. */
  readonly from: TextSource<unknown> | undefined;
  /** Blanks, bare zeros and errors reach the reader too. */
  readonly takesEverything: boolean;
  /** A value that is neither blank nor an error, unless the kind takes everything. Throws Refused. */
  read(raw: unknown, preceding: PrecedingArguments): T;
};

/** For the end of a switch over kinds: the compiler names the kind that was forgotten. */
export const forgotten = (kind: never): never => kind;

// ---- relations between arguments -----------------------------------------------------------------------------------

/** The related argument itself. */
export const ITSELF = '';

/**
 * A number, an argument by its name, a part of one (`size.majorMaxMm`, `.sharpMm` of the related argument itself),
 * a formula of others under its name, or a sum of these.
 */
export type Term =
  | number
  | string
  | readonly ['-' | '*', Term, Term]
  | { readonly formula: Readonly<Record<string, (...args: never[]) => number>>; readonly of: readonly string[] };

export type Comparison = readonly [sign: '<' | '>' | '>=', left: Term, right: Term];

/** How an argument must stand to those before it. The reader checks it, the hand-over writes it as a condition. */
export type Relation =
  /** `words` finish the sentence "must be …" and stand among what is accepted; else the refusal says why. */
  | { readonly holds: readonly Comparison[]; readonly words: string }
  | { readonly holds: readonly Comparison[]; readonly refusal: (preceding: PrecedingArguments, value: unknown) => string }
  /** Of two limits one may be "none", and the upper one is above the lower one. */
  | { readonly upperOf: string };

/**
 * What a blank cell, a left-out argument and a bare 0 mean; a function cannot tell them apart.
 * refused: an error naming the argument. zero: the number 0. explicit: refused, zero must be written with its unit.
 * default: the given value, or that of a preceding parameter, or what a preceding parameter brings along. absent: the parameter has no
 * value, and none is taken.
 */
export type Blank =
  | 'refused'
  | 'zero'
  | 'explicit'
  | 'absent'
  /** `given` is where a preceding argument may have brought it along. */
  | { readonly default: number | string; readonly given?: string }
  | { readonly sameAs: string; readonly take?: (preceding: never) => unknown };

/** One argument: its name and kind, its symbol, its limits in the core unit of the kind, what a blank means. */
export interface Param<T = unknown> {
  readonly name: string;
  readonly kind: Kind<T>;
  readonly symbol: string | undefined;
  readonly limits: Limits | undefined;
  readonly blank: Blank;
  readonly optional: boolean;
  /** Lists of one group have a row each for the same things; their counts must agree. */
  readonly group: string | undefined;
  readonly relation: Relation | undefined;
  /** What a call without it leaves out of account, in words. */
  readonly uncounted: string | undefined;
  /** A number that is not 0 stands for itself. */
  readonly takesNumbers: boolean;
}

interface NamedQuantity {
  readonly name: string;
  readonly unit: string;
}

/** What a function gives, each number with its name and core unit. */
export type Result =
  | { readonly shape: 'number'; readonly name: string; readonly symbol?: string; readonly unit: string }
  | { readonly shape: 'text'; readonly name: string }
  /** One row, no header. */
  | { readonly shape: 'row'; readonly columns: readonly NamedQuantity[] }
  /** One column, no header. */
  | { readonly shape: 'column'; readonly name: string; readonly unit: string }
  /** A header row, then rows; no columns where the arguments decide. */
  | { readonly shape: 'table'; readonly columns: readonly NamedQuantity[] };

/** What a call of a function needs: its arguments, result and formula. */
export interface Calculation {
  readonly id: string;
  readonly topic: Topic;
  readonly params: readonly Param[];
  readonly result: Result;
  readonly formula: (...args: never[]) => unknown;
  /** What a look-up reads; its formula is the worth of this. */
  readonly reads: ((...args: never[]) => readonly Reading[]) | undefined;
  /** What its formula refuses is about its first argument: a look-up that finds nothing. */
  readonly refusesFirst: boolean;
}

/** What is said of a function and no call needs: the kind of its formula, sources, an example whose result is known, cautions. */
export interface CardWords {
  readonly kind: CardKind;
  readonly sources: readonly Source[];
  /** The result of a large table may be one of its rows, counted from 0. */
  readonly example:
    | { readonly args: readonly unknown[]; readonly result: unknown }
    | { readonly args: readonly unknown[]; readonly row: number; readonly values: readonly unknown[] };
  /** Why the hand-over has no live plain formula, where it has none. */
  readonly notLive?: string;
  /** A word of caution that belongs to every use: an estimate, a start value. */
  readonly caution?: string;
}

/** All that is known of one function. */
export interface Card extends Calculation, CardWords {}

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
  'Inserts and nuts',
  'Snap hooks (estimates)',
  'Pattern of holes',
  'Ribs, lip, mould',
  'Tolerances',
  'Checks, variants, trace',
  'The joint as one table',
] as const;

export type Topic = (typeof TOPICS)[number];

type Params<A extends readonly unknown[]> = { readonly [I in keyof A]: Param<A[I]> };

type Rest = Pick<Calculation, 'result'> & Partial<Pick<Calculation, 'refusesFirst'>>;

/** Ties the parameters' types to the formula's. All cards are laid out alike, for the speed of a call. */
export function card<A extends readonly unknown[]>(
  id: string,
  topic: Topic,
  params: Params<A>,
  formula: (...args: [...A]) => unknown,
  { result, refusesFirst = false }: Rest,
  reads?: Calculation['reads'],
): Calculation {
  return { id, topic, params, formula: formula as Calculation['formula'], result, reads, refusesFirst };
}

/** The card of a look-up: what it reads is said once. */
export function lookUp<A extends readonly unknown[]>(
  id: string,
  topic: Topic,
  params: Params<A>,
  reads: (...args: [...A]) => readonly Reading[],
  rest: Rest,
): Calculation {
  return card(id, topic, params, (...args: [...A]) => worthOf(reads(...args)), rest, reads as unknown as Calculation['reads']);
}

/** Calculations with their words: each has them, and there are none besides. */
export function described(calculations: readonly Calculation[], words: Readonly<Record<string, CardWords>>): readonly Card[] {
  const [known, said] = [calculations.map(({ id }) => id), Object.keys(words)];
  const [alone] = [...known.filter(id => !said.includes(id)), ...said.filter(id => !known.includes(id))];
  if (alone !== undefined) throw new Error(`${alone} has ${known.includes(alone) ? 'no words' : 'words, but no card'}`);
  return calculations.map(calculation => ({ ...calculation, ...(words[calculation.id] as CardWords) }));
}

export const GEOMETRY: readonly Source[] = [{ title: 'plane geometry', held: 'derived' }];
export const COMMON_PRACTICE: readonly Source[] = [{ title: 'common practice', held: 'common practice' }];
