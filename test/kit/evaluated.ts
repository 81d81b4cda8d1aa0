// A plain form worked out: the printer whose pieces are values.
import * as M from '../../src/core/maths';
import { formCalled } from '../../src/plain/forms';
import { type Form, printed, type Printer } from '../../src/plain/tree';
import { type Value, worth } from '../../src/plain/values';

const MATHS = M as unknown as Readonly<Record<string, (...args: readonly unknown[]) => unknown>>;

const unknownName = (name: string): never => {
  throw new TypeError(`${name} has no value`);
};

const VALUES: Printer<unknown> = {
  leftOut: unknownName,
  step: (_, value) => value,
  number: value => value,
  name: name => (name === 'PI' ? M.PI : unknownName(name)),
  text: words => words,
  of: (record, part) => (record as Readonly<Record<string, unknown>>)[part],
  list: items => items,
  record: parts => parts,
  call: (formula, args) => MATHS[formula]?.(...args) ?? evaluated(formCalled(formula), args),
  if: (condition, whenTrue, whenFalse) => (condition === true ? whenTrue() : whenFalse()),
  neg: a => -(a as number),
  not: a => a !== true,
  binary: (op, a, b) => worth(op, a as Value, b as Value),
};

export const evaluated = (form: Form, args: readonly unknown[]): unknown => printed(form, args, VALUES);
