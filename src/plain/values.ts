// What operators give for known values.
import type { Arithmetic, Relation } from './tree';

export type Value = number | boolean | string;

const ARITHMETIC: Readonly<Record<Arithmetic, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
};

const RELATIONS: Readonly<Record<Relation, (a: Value, b: Value) => boolean>> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '=': (a, b) => a === b,
  '<>': (a, b) => a !== b,
  and: (a, b) => a === true && b === true,
  or: (a, b) => a === true || b === true,
};

type Maybe = Value | undefined;

/** Nothing where an operand is not known. */
export const calculated = (op: Arithmetic, a: Maybe, b: Maybe): number | undefined =>
  typeof a === 'number' && typeof b === 'number' ? ARITHMETIC[op](a, b) : undefined;
export const related = (op: Relation, a: Maybe, b: Maybe): boolean | undefined =>
  a === undefined || b === undefined ? undefined : RELATIONS[op](a, b);
export const negated = (a: Maybe): number | undefined => (typeof a === 'number' ? -a : undefined);
export const denied = (a: Maybe): boolean | undefined => (a === undefined ? undefined : a !== true);
