// The joint as data: inputs, nodes, rules. Everything that speaks of the joint reads these declarations.
import type { Param } from '../core/card';
import type { State } from '../core/check/check';
import type { Reading } from '../standards/table';
import { Refused } from '../core/refuse';
import { worthOf } from '../core/table';

export type Formula = (...args: never[]) => unknown;

/**
 * What a formula takes: the value of a name; a constant; a name that is taken only where another one is true;
 * a name that may not apply, and the number that stands for it then; whether the user gave an input.
 */
export type Arg =
  | string
  | { readonly is: unknown }
  | { readonly only: string; readonly where: string }
  | { readonly of: string; readonly orElse: number }
  | { readonly given: string };

/** How a spreadsheet gives what a formula gives. */
type Printed =
  /** As the formula stands. */
  | { readonly by: 'formula' }
  /** What a table has for it: the formula is the worth of this. */
  | { readonly by: 'readings'; readonly reads: (...args: never[]) => readonly Reading[] }
  /** From the tables of tolerances, by screw, length and end. */
  | { readonly by: 'length tolerances' }
  /** As the argument that the formula lets through. */
  | { readonly by: 'argument' }
  /** Not at all: it is what it was for the arguments that were sent. */
  | { readonly by: 'nothing'; readonly notLive: string };

/** How a value comes from others. */
export type Made = Printed & { readonly formula: Formula; readonly args: readonly Arg[] };

type How<P, F, A> = P & { readonly formula: F; readonly args: A };

/** A value by a formula of others, which is printed as it stands; one that cannot be stops the build. */
export const made = <F extends Formula, const A extends readonly Arg[]>(formula: F, ...args: A): How<{ readonly by: 'formula' }, F, A> => ({
  by: 'formula',
  formula,
  args,
});

/** A value that tables hold for others. */
export const fromTables = <P extends readonly unknown[], const A extends readonly Arg[]>(
  reads: (...values: P) => readonly Reading[],
  ...args: A
): How<{ readonly by: 'readings'; readonly reads: (...values: P) => readonly Reading[] }, (...values: P) => number, A> => ({
  by: 'readings',
  reads,
  formula: (...values) => worthOf(reads(...values)),
  args,
});

/** A value that a spreadsheet gives in a way of its own. */
export const printedBy = <
  B extends Exclude<Made['by'], 'formula' | 'readings' | 'nothing'>,
  F extends Formula,
  const A extends readonly Arg[],
>(
  by: B,
  formula: F,
  ...args: A
): How<{ readonly by: B }, F, A> => ({ by, formula, args });

/** A value that no formula of a spreadsheet follows. */
export const notLive = <F extends Formula, const A extends readonly Arg[]>(
  why: string,
  formula: F,
  ...args: A
): How<{ readonly by: 'nothing'; readonly notLive: string }, F, A> => ({ by: 'nothing', notLive: why, formula, args });

/** The names that an argument reads. */
export function namesIn(arg: Arg): readonly string[] {
  if (typeof arg === 'string') return [arg];
  if ('only' in arg) return [arg.where, arg.only];
  return 'of' in arg ? [arg.of] : 'given' in arg ? [arg.given] : [];
}

export interface Input {
  readonly param: Param;
  readonly unit: string;
  readonly meaning: string;
  /** The default: made in the graph, or a word or number as a user would type it. */
  readonly fallback?: Made | { readonly raw: number | string };
  /** The default in words, for the list of inputs. */
  readonly defaultWords: string;
  /** The input by which its text is understood: a head by its screw. */
  readonly beside?: string;
  /** Asked for where this is true; elsewhere a blank one does not apply, for this reason. Taken there `alone`: a typed one is refused. */
  readonly askedWhere?: { readonly condition: string; readonly otherwise: string; readonly alone?: true };
}

export type Node = Made & {
  readonly unit: string;
  readonly meaning: string;
  /** What must have a value, and be true where it is a condition, before this one applies; in this order. */
  readonly where?: readonly string[];
  /** Of a condition: why what hangs on it does not apply where it is false. */
  readonly otherwise?: string;
  /** Or rather: what hangs on it does apply, and this is to be given for it. */
  readonly isAsked?: true;
};

/** The rule is broken where the value stands on this side of the limit (a name or a number). */
export interface Bound<N extends string = string> {
  readonly side: 'below' | 'above' | 'at most' | 'at least';
  readonly limit: N | number;
  /** Another size than the one that the rule judges. */
  readonly of?: N;
}

export const boundsOf = (bounds: Bound | readonly Bound[] | undefined): readonly Bound[] =>
  bounds === undefined ? [] : 'side' in bounds ? [bounds] : bounds;

export interface Rule<Size extends string = string, Condition extends string = string, Moved extends string = string> {
  /** What holds where the rule passes. */
  readonly name: string;
  /** What is wrong where it does not. */
  readonly broken: string;
  /** What a reader may want to know beside it: the size at which the rule would pass. */
  readonly passesAt?: { readonly words: string; readonly size: Size };
  /** The same where it is only to be reviewed. */
  readonly doubtful?: string;
  /** The size that is judged. */
  readonly value: Size;
  /** What a reader is shown of it, where that says more: what is needed and what there is. */
  readonly shown?: { readonly words: readonly [before: string, after: string]; readonly needs: Size; readonly has: Size };
  /** One bound, or several of which each may break it. */
  readonly fail?: Bound<Size> | readonly Bound<Size>[];
  readonly review?: Bound<Size> | readonly Bound<Size>[];
  /** To be reviewed wherever this is true, whatever the size. */
  readonly reviewWhere?: { readonly condition: Condition; readonly words: string };
  /** The rule is left out where one of these is false. */
  readonly when?: readonly Condition[];
  /** A value that is refused in this way is an answer about the joint: the rule fails. */
  readonly failsAs?: abstract new (...args: never[]) => Refused;
  readonly basis: string;
  readonly source: string;
  /** Rules of the boss alone are checked by CHECK.BOSS too. */
  readonly boss?: true;
  /** What may be moved to meet the rule, in the order in which a moulder would try; a pair is moved together. */
  readonly moves: readonly (Moved | readonly [Moved, Moved])[];
}

export interface Finding {
  readonly rule: Rule;
  readonly state: State;
  readonly value: number | undefined;
  readonly limit: number | undefined;
  readonly bound: Bound | undefined;
  /** What is needed and what there is, where that says more. */
  readonly shown?: { readonly needs: number; readonly has: number };
  readonly passesAt?: number;
  /** Why it was not checked. */
  readonly refusal?: Refused | undefined;
}

/** A value that this variant of the joint does not have: no recess where the head lies on the board. */
export class NotApplicable extends Refused {
  constructor(readonly why: string) {
    super('#N/A', `does not apply: ${why}`);
  }
}

// ---- the types of all values -----------------------------------------------------------------------------------------

type Inputs = Readonly<Record<string, { readonly param: Param }>>;
type Nodes = Readonly<Record<string, Made>>;

/** The value of each name. */
export type Values<I extends Inputs, N extends Nodes> = {
  readonly [K in keyof I]: I[K] extends { readonly param: Param<infer T> } ? T : never;
} & { readonly [K in keyof N]: ReturnType<N[K]['formula']> };

/** The names whose value is of that type. */
export type NamesOf<V, T> = { [K in keyof V]: V[K] extends T ? K : never }[keyof V] & string;

interface NoSuchName {
  readonly 'no such name in the joint': never;
}

type Taken<V, A> = A extends keyof V
  ? V[A]
  : A extends { readonly is: infer C }
    ? C
    : A extends { readonly only: infer O; readonly where: keyof V }
      ? O extends keyof V
        ? V[O]
        : NoSuchName
      : A extends { readonly given: keyof V }
        ? boolean
        : A extends { readonly of: infer O; readonly orElse: number }
          ? O extends keyof V
            ? V[O]
            : NoSuchName
          : NoSuchName;

interface TooManyArguments {
  readonly 'more arguments than the formula takes': never;
}

/** The formula that would take these arguments: what is declared must be one. */
type Fitting<V, M> = M extends { readonly formula: (...args: infer P) => unknown; readonly args: infer A extends readonly unknown[] }
  ? A['length'] extends P['length']
    ? { readonly formula: (...args: { -readonly [I in keyof A]: Taken<V, A[I]> }) => unknown; readonly where?: readonly (keyof V)[] }
    : TooManyArguments
  : unknown;

/** Nodes whose arguments are names of the joint with values that their formulas take. */
export const nodesOn =
  <I extends Inputs>() =>
  <const N extends Nodes>(nodes: N & { readonly [K in keyof N]: Fitting<Values<I, N>, N[K]> }): N =>
    nodes;

/** Defaults, likewise. */
export type FittingDefaults<I extends Inputs, N extends Nodes> = {
  readonly [K in keyof I]: I[K] extends { readonly fallback: infer M } ? { readonly fallback: Fitting<Values<I, N>, M> } : unknown;
};
