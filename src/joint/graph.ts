// The joint as data: inputs, nodes, rules. Everything that speaks of the joint reads these declarations.
import type { Param } from '../core/card';
import type { State } from '../core/check/check';
import { Refused } from '../core/refuse';

type Formula = (...args: never[]) => unknown;

/** A name in the graph, a constant, or a name that is looked at only where another one is true. */
export type Arg = string | { readonly is: unknown } | { readonly only: string; readonly where: string };

export interface Made {
  readonly formula: Formula;
  readonly args: readonly Arg[];
}

export interface Input {
  readonly param: Param;
  readonly unit: string;
  readonly meaning: string;
  /** The default: made in the graph, or a word or number as a user would type it. */
  readonly fallback?: Made | { readonly raw: number | string };
  /** The default in words, for the list of inputs. */
  readonly defaultWords: string;
}

export interface Node extends Made {
  readonly name: string;
  readonly unit: string;
  readonly meaning: string;
}

/** The rule is broken where the value stands on this side of the limit (a name or a number). */
export interface Bound {
  readonly side: 'below' | 'above' | 'at most' | 'at least';
  readonly limit: string | number;
}

export interface Rule {
  readonly name: string;
  /** The node that is judged. */
  readonly value: string;
  readonly fail?: Bound;
  readonly look?: Bound;
  /** The rule is left out where this node is false. */
  readonly when?: string;
  /** A failure is only to be looked at where this node is true: sink on a hidden face. */
  readonly softWhen?: string;
  /** What to say of a broken rule where value and limit say little. */
  readonly words?: string;
  readonly basis: string;
  readonly source: string;
  /** Rules of the boss alone are checked by CHECK.BOSS too. */
  readonly boss?: true;
  /** Inputs that may be moved to meet the rule, in the order in which a designer would try. */
  readonly moves: readonly string[];
}

export interface Finding {
  readonly rule: Rule;
  readonly state: State;
  readonly value: number | undefined;
  readonly limit: number | undefined;
  readonly bound: Bound | undefined;
  /** Why it was not checked. */
  readonly refusal?: Refused;
}

/** A value that this variant of the joint does not have: no recess where the head lies on the board. */
export class NotApplicable extends Refused {
  constructor(why: string) {
    super('#N/A', `does not apply: ${why}`);
  }
}
