// What operators give for known values.
import type { ArithmeticOperator, BinaryOperator, RelationalOperator } from './tree';

export type Value = number | boolean | string;

const BINARY = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '=': (a, b) => a === b,
  '<>': (a, b) => a !== b,
  and: (a, b) => a && b,
  or: (a, b) => a || b,
} satisfies Operations as Readonly<Record<BinaryOperator, (a: Value, b: Value) => Value>>;

type Of<Ops extends string, Operand, Result> = Readonly<Record<Ops, (a: Operand, b: Operand) => Result>>;
type Operations = Of<ArithmeticOperator, number, number> &
  Of<Exclude<RelationalOperator, 'and' | 'or'>, Value, boolean> &
  Of<'and' | 'or', boolean, boolean>;

/** Undefined if an operand is not known. */
export const worth = (op: BinaryOperator, a: Value | undefined, b: Value | undefined): Value | undefined =>
  a === undefined || b === undefined ? undefined : BINARY[op](a, b);
export const negated = (a: Value | undefined): number | undefined => (typeof a === 'number' ? -a : undefined);
export const denied = (a: Value | undefined): boolean | undefined => (typeof a === 'boolean' ? !a : undefined);
