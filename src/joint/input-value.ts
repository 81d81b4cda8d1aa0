// What stands under an input of a variant: what was typed, its default, or why there is neither.
import type { PrecedingArguments } from '../core/card';
import { isBlank } from '../core/read/cells';
import { readArgument } from '../core/read/params';
import { Refused, wrongInput } from '../core/refuse';
import { derived } from './derive';
import { type Input, NotApplicable } from './graph';
import { LookUps } from './look-up';
import { NO_SLOT, type Slot } from './slots';

export const NOT_NAMED = Symbol('no column of this name');

/** What an input is read beside. */
export interface InputSource {
  readonly values: readonly unknown[];
  readonly lookUps: LookUps[];
  readonly read: PrecedingArguments;
  readonly base: ReadonlyMap<string, unknown>;
}

export function inputValue(
  raw: unknown,
  { input, made, slot, where, place }: Slot & { readonly is: 'input' },
  { values, lookUps, read, base }: InputSource,
): unknown {
  const { param, fallback, askedWhere } = input;
  if (typeof raw === 'number' && raw !== 0 && askedWhere?.alone === undefined) return readArgument(param, raw, read);
  const asksForDefault = raw === NOT_NAMED || isDefaultWord(raw);
  if (askedWhere?.alone === true) {
    const isTaken = values[where];
    if (isTaken instanceof Refused) return isTaken;
    if (isTaken === false)
      return asksForDefault || isBlank(raw) || raw === base.get(param.name)
        ? new NotApplicable(askedWhere.otherwise)
        : wrongInput(`${param.name} is given, but ${askedWhere.otherwise}: leave it blank`, param.name);
  }
  if (!asksForDefault && !isBlank(raw)) {
    const readings = (lookUps[place] ??= new LookUps());
    const found = slot === NO_SLOT ? readings : readings.beside(values[slot]);
    return found.get(raw) ?? firstRead(input, raw, read, found);
  }
  if (!asksForDefault && param.blank === 'explicit')
    return wrongInput(`${param.name}: 0 or blank? write ${zeroOf(param.kind.unit)} for zero, or default`, param.name);
  if (askedWhere !== undefined) {
    const isAsked = values[where];
    if (isAsked instanceof Refused) return isAsked;
    // a blank that nobody needs is no slip
    if (isAsked === false) return new NotApplicable(askedWhere.otherwise);
  }
  if (made !== undefined) return derived(made, values, lookUps);
  return fallback !== undefined && 'raw' in fallback ? param.kind.read(fallback.raw, read) : readArgument(param, undefined, read);
}

/** On its own, so that only a first reading pays for a closure. */
const firstRead = ({ param }: Input, raw: unknown, read: PrecedingArguments, found: LookUps): unknown =>
  found.keep(raw, () => readArgument(param, raw, read));

/** As a zero is written that is no blank; what has no unit is a share. */
const zeroOf = (unit: string): string => (unit === '°' ? '"0°"' : unit === '' ? '"0 %"' : `"0 ${unit}"`);

export const isDefaultWord = (raw: unknown): boolean => typeof raw === 'string' && raw.trim().toLowerCase() === 'default';
