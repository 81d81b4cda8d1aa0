// Ranges of one row or column: numbers, tolerances, words, text, any values.
import type { PrecedingArguments, Kind } from '../card';
import type { Limits } from '../kinds';
import { codeOf, errorWords, Refused, wrongInput } from '../refuse';
import { asList, isBlank, isCellError, shown } from './cells';
import type { Deviations } from './deviation';
import { checkLimits, limitWords, withinLimits } from './limits';
import { choice, DEVIATION, numeric, ONE } from './params';
import type { Quantity } from './quantity';

export type ListKind<T> = Kind<T> & {
  readonly shape: 'list';
  /** The same value for every one of n rows. */
  repeat(value: T, rows: number): T;
  count(value: T): number;
};

export const isList = (kind: Kind<unknown>): kind is ListKind<unknown> => kind.shape === 'list';

/** What lists of one value a row have in common. */
export const rowByRow = <E>() => ({
  ...ONE,
  shape: 'list' as const,
  repeat: (value: readonly E[], rows: number): readonly E[] => new Array<E>(rows).fill(value[0] as E),
  count: (value: readonly E[]): number => value.length,
});

function quantitiesOf<E>(kind: Kind<E>, raw: unknown, preceding: PrecedingArguments, limits: Limits | undefined): E[] {
  return asList(raw).map((entry, i, { length }) => {
    const where = length > 1 ? `row ${i + 1} ` : '';
    if (isCellError(entry)) throw new Refused(codeOf(entry), `${where}${errorWords(entry)}`);
    if (isBlank(entry)) throw wrongInput(`${where}is ${entry === 0 ? '0 or blank' : 'blank'}; ${zeroWords(kind.unit, limits)}`);
    try {
      const value = kind.read(entry, preceding);
      if (typeof value === 'number') checkLimits(value, limits, kind.unit);
      return value;
    } catch (fault) {
      throw fault instanceof Refused ? new Refused(fault.code, `${where}is ${shown(entry)}: ${fault.message}`) : fault;
    }
  });
}

/** How a true zero is written, where there may be one. */
function zeroWords(unit: string, limits: Limits | undefined): string {
  return withinLimits(0, limits) ? `write "0${unit === '' ? '' : ` ${unit}`}" for a true zero` : `must be ${limitWords(limits, unit)}`;
}

export function numbers(quantity: Quantity, limits?: Limits): ListKind<readonly number[]> {
  const of = numeric(quantity);
  return {
    ...rowByRow<number>(),
    is: 'list',
    of,
    limits,
    noun: `range of ${quantity.noun}s`,
    unit: quantity.unit,
    read: (raw, preceding) => quantitiesOf(of, raw, preceding, limits),
  };
}

export const DEVIATIONS: ListKind<Deviations> = {
  ...ONE,
  is: 'list',
  of: DEVIATION,
  limits: undefined,
  noun: 'range of tolerances',
  unit: 'mm',
  shape: 'list',
  read(raw, preceding) {
    const list = quantitiesOf(DEVIATION, raw, preceding, undefined);
    return { upperMm: list.map(d => d.upperMm), lowerMm: list.map(d => d.lowerMm) };
  },
  repeat: (value, rows) => ({
    upperMm: new Array<number>(rows).fill(value.upperMm[0] as number),
    lowerMm: new Array<number>(rows).fill(value.lowerMm[0] as number),
  }),
  count: value => value.upperMm.length,
};

// ---- text, words, any values ------------------------------------------------------------------------------------------

/** Each entry read; a fault says its row. */
function eachOf<E>(raw: unknown, read: (entry: unknown) => E): E[] {
  return asList(raw).map((entry, i) => {
    if (isCellError(entry)) throw new Refused(codeOf(entry), `row ${i + 1} ${errorWords(entry)}`);
    try {
      return read(entry);
    } catch (fault) {
      throw fault instanceof Refused ? new Refused(fault.code, `row ${i + 1} is ${shown(entry)}: ${fault.message}`) : fault;
    }
  });
}

/** What a cell holds, as it is. */
function cell(entry: unknown): number | string | boolean {
  if (typeof entry === 'string' || typeof entry === 'boolean' || (typeof entry === 'number' && Number.isFinite(entry))) return entry;
  throw wrongInput('give a number or text');
}

/** Names beside numbers; a blank one is `–`. */
export const LABELS: ListKind<readonly string[]> = {
  ...rowByRow<string>(),
  is: 'names',
  noun: 'range of names',
  read: raw => eachOf(raw, entry => (isBlank(entry) ? '–' : String(cell(entry)))),
};

/** Values of any kind, none of them blank. */
export const VALUES: ListKind<readonly (number | string | boolean)[]> = {
  ...rowByRow<number | string | boolean>(),
  is: 'values',
  noun: 'list of values',
  read: raw =>
    eachOf(raw, entry => {
      if (isBlank(entry)) throw wrongInput('a blank is not a value; write "0 mm" for a true zero');
      return cell(entry);
    }),
};

/** One of a few words in every place. */
export function words<W extends string>(noun: string, all: Readonly<Record<W, readonly string[]>>): ListKind<readonly W[]> {
  const of = choice(noun, all);
  return {
    ...rowByRow<W>(),
    is: 'list',
    of,
    limits: undefined,
    noun: `range of ${noun}s`,
    read: (raw, preceding) => eachOf(raw, entry => of.read(entry, preceding)),
  };
}
