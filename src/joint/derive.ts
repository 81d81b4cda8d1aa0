// What a formula of the joint gives for a row of values, or why it gives nothing.
import { rounded } from '../core/decimal';
import { LIMIT_MARGIN } from '../core/maths';
import { limitWords, withinLimits } from '../core/read/limits';
import { Refused, wrongInput } from '../core/refuse';
import { LookUps } from './look-up';
import type { LimitedArgument } from './base-functions';
import { type Condition, type Derivation, NO_SLOT } from './slots';

export function derived(derivation: Derivation, values: readonly unknown[], lookUps: LookUps[]): unknown {
  const { where, from, limited } = derivation;
  for (let i = 0; i < where.length; i++) {
    const { slot, otherwise } = where[i] as Condition;
    const value = values[slot];
    if (value === false) return otherwise;
    if (value instanceof Refused) return value;
  }
  for (let i = 0; i < from.length; i++) {
    const value = values[from[i] ?? NO_SLOT];
    if (typeof value === 'object' && value instanceof Refused) return value;
  }
  for (let i = 0; i < limited.length; i++) {
    const { slot, param, card } = limited[i] as LimitedArgument;
    const value = values[slot];
    if (typeof value === 'number' && !withinLimits(value, param.limits, LIMIT_MARGIN))
      return wrongInput(`${param.name} of ${card.id} is ${rounded(value)}: must be ${limitWords(param.limits, param.kind.unit)}`);
  }
  const result = derivation.isLookUp ? lookedUp(derivation, values, lookUps) : applied(derivation, values);
  return typeof result === 'number' && !Number.isFinite(result) ? wrongInput('no finite result for these inputs') : result;
}

/** An array of arguments takes longer than most formulas: few go without, many share one. */
function applied({ formula, from, args }: Derivation, values: readonly unknown[]): unknown {
  const { 0: a = 0, 1: b = 0, 2: c = 0, 3: d = 0 } = from;
  switch (from.length) {
    case 1:
      return formula(values[a]);
    case 2:
      return formula(values[a], values[b]);
    case 3:
      return formula(values[a], values[b], values[c]);
    case 4:
      return formula(values[a], values[b], values[c], values[d]);
    default:
      for (let i = 0; i < from.length; i++) args[i] = values[from[i] ?? NO_SLOT];
      return formula(...args);
  }
}

/** Once for each screw, head or material, with what stands beside it. */
function lookedUp(derivation: Derivation, values: readonly unknown[], lookUps: LookUps[]): unknown {
  const { from } = derivation;
  let found = (lookUps[derivation.place] ??= new LookUps());
  let key = values[from[0] ?? NO_SLOT];
  for (let i = 1; i < from.length; i++) {
    found = found.beside(key);
    key = values[from[i] ?? NO_SLOT];
  }
  return found.get(key) ?? firstLookUp(derivation, values, found, key);
}

/** On its own, so that only a first look-up pays for a closure. */
const firstLookUp = (derivation: Derivation, values: readonly unknown[], found: LookUps, key: unknown): unknown =>
  found.keep(key, () => applied(derivation, values));
