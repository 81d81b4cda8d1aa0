// Parameters of each kind, and how a raw argument becomes a value: error, blank, kind, limits, in this order.
import {
  type Blank,
  type PrecedingArguments,
  type Kind,
  type NameKind,
  NOTHING_READ,
  type Param,
  type Relation,
  type TextSource,
} from '../card';
import type { Limits } from '../kinds';
import { codeOf, errorWords, Refused, wrongInput } from '../refuse';
import { acceptedBy, accepts } from './accepts';
import { cellOrRows, isBlank, isCellError, rowsOf, shown } from './cells';
import { type Deviation, plusMinus, readDeviation } from './deviation';
import { checkLimits, limitWords, withinLimits } from './limits';
import { LENGTH, type Quantity } from './quantity';
import { readQuantity } from './read-quantity';
import { checkRelation, valueAt } from './relation';

// ---- kinds of one value ------------------------------------------------------------------------------------------

/** What most kinds have in common. */
export const ONE = { unit: '', shape: 'one', hasZero: false, inQuotes: undefined, from: undefined, takesEverything: false } as const;

/** A number with its unit, or text that names a table or a material. */
export function numeric(
  quantity: Quantity,
  from?: TextSource<number> & { readonly range?: (rows: readonly (readonly unknown[])[], preceding: PrecedingArguments) => number },
): Kind<number> {
  return {
    ...ONE,
    is: 'quantity',
    quantity,
    noun: quantity.noun,
    unit: quantity.unit,
    shape: from?.range === undefined ? 'one' : 'block',
    hasZero: from?.range === undefined,
    from,
    read(raw, preceding) {
      if (typeof raw === 'number') return finite(raw);
      if (typeof raw === 'boolean') throw wrongInput('TRUE/FALSE is not a number');
      if (typeof raw === 'string') return from?.read(raw, preceding) ?? readQuantity(raw, quantity);
      if (from?.range !== undefined && Array.isArray(raw)) return from.range(raw as unknown[][], preceding);
      throw wrongInput('give one value, not a range');
    },
  };
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw wrongInput('not a finite number');
  return value;
}

const halfWidth = numeric(LENGTH);

/** A tolerance, or text that names one. */
export const deviation = <D extends Deviation = Deviation>(from?: TextSource<D>): Kind<D | Deviation> => ({
  ...ONE,
  is: 'deviation',
  noun: 'tolerance',
  unit: 'mm',
  hasZero: true,
  from,
  read: (raw, preceding) =>
    typeof raw === 'string' ? (from?.read(raw, preceding) ?? readDeviation(raw)) : plusMinus(halfWidth.read(raw, NOTHING_READ)),
});

export const DEVIATION = deviation();

/** One of a few words; other spellings stand behind their word. */
export function choice<W extends string>(noun: string, words: Readonly<Record<W, readonly string[]>>): Kind<W> {
  const spelled = new Map<unknown, W>();
  const all = Object.entries(words) as [W, readonly string[]][];
  for (const [word, others] of all) for (const spelling of [word, ...others]) if (!spelled.has(spelling)) spelled.set(spelling, word);
  const kind: Kind<W> = {
    ...ONE,
    is: 'choice',
    words: all.map(([word]) => word),
    noun,
    read(raw) {
      const found = typeof raw === 'string' ? spelled.get(raw.trim().toLowerCase()) : undefined;
      if (found === undefined) throw wrongInput(`give one of ${accepts(kind)}`);
      return found;
    },
  };
  return kind;
}

export const putInQuotes = (inQuotes: string): string => `put the name in quotes, ${inQuotes}`;

/** Text that names something: sizes, heads, functions. */
export function named<T>(is: NameKind, example: string, read: (text: string, preceding: PrecedingArguments) => T): Kind<T> {
  const inQuotes = `"${example}"`;
  return {
    ...ONE,
    is,
    example,
    noun: is,
    inQuotes,
    read(raw, preceding) {
      if (typeof raw !== 'string') throw wrongInput(putInQuotes(inQuotes));
      return read(raw, preceding);
    },
  };
}

export const ANYTHING: Kind<unknown> = { ...ONE, is: 'anything', noun: 'value', takesEverything: true, read: raw => raw };

/** A value or a range, as it came: the call that is quoted reads it. */
export const AS_IT_CAME: Kind<unknown> = { ...ANYTHING, noun: 'value or range', shape: 'block' };

/** A rectangle of cells as it is. */
export const BLOCK: Kind<readonly (readonly unknown[])[]> = {
  ...ONE,
  is: 'block',
  noun: 'range',
  shape: 'block',
  read: raw => (Array.isArray(raw) ? rowsOf(raw) : [[raw]]),
};

// ---- a parameter and its raw argument ------------------------------------------------------------------------------

export interface ParamOptions extends Limits {
  readonly symbol?: string;
  readonly default?: number | string;
  readonly given?: string;
  readonly sameAs?: string;
  readonly blank?: Blank;
  readonly group?: string;
  readonly relation?: Relation;
  readonly uncounted?: string;
}

export function param<T>(name: string, kind: Kind<T>, options: ParamOptions = {}): Param<T> {
  const { symbol, default: fallback, given, sameAs, blank, group, relation, uncounted, above, atLeast, below, atMost } = options;
  const isUnlimited = above === undefined && atLeast === undefined && below === undefined && atMost === undefined;
  const limits = isUnlimited ? undefined : { above, atLeast, below, atMost };
  return {
    name,
    kind,
    symbol,
    limits,
    group,
    blank: blank ?? blankMeans(kind, limits, fallback, sameAs, given),
    optional: fallback !== undefined || sameAs !== undefined || blank === 'absent' || (typeof blank === 'object' && 'sameAs' in blank),
    relation,
    uncounted,
    takesNumbers: kind.is === 'quantity' && relation === undefined,
  };
}

/** Whether 0 lies inside the limits decides what a blank means, unless there is a default. */
function blankMeans(
  kind: Kind<unknown>,
  limits: Limits | undefined,
  fallback: number | string | undefined,
  sameAs: string | undefined,
  given: string | undefined,
): Blank {
  if (sameAs !== undefined) return { sameAs };
  if (fallback !== undefined) return given === undefined ? { default: fallback } : { default: fallback, given };
  return kind.hasZero && withinLimits(0, limits) ? 'zero' : 'refused';
}

/** A number that stands for itself, far the most frequent argument. */
export const isItself = ({ takesNumbers, limits }: Param, raw: unknown): raw is number =>
  typeof raw === 'number' && takesNumbers && raw !== 0 && Number.isFinite(raw) && withinLimits(raw, limits);

/** Reads one argument. Throws Refused with the argument's name, what was given and what is accepted. */
export function readArgument<T>(param: Param<T>, raw: unknown, preceding: PrecedingArguments): T | undefined {
  if (isItself(param, raw)) return raw as T;
  try {
    const { kind } = param;
    const value =
      !Array.isArray(raw) || kind.shape === 'list' || (kind.is === 'anything' && kind.shape === 'block') ? raw : cellOrRows(raw);
    if (!kind.takesEverything) {
      if (isCellError(value)) throw new Refused(codeOf(value), errorWords(value));
      if (isBlank(value)) return ofBlank(param, value, preceding);
    }
    return within(param, value, preceding);
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `${param.name} ${fault.message}`, param.name) : fault;
  }
}

/** A message shows what was given. */
function within<T>(param: Param<T>, value: unknown, preceding: PrecedingArguments, given = value): T {
  const { kind, limits } = param;
  try {
    const result = kind.read(value, preceding);
    if (typeof result === 'number') checkLimits(result, limits, kind.unit);
    return related(param, result, preceding);
  } catch (fault) {
    if (!(fault instanceof Refused) || kind.shape === 'list') throw fault;
    throw new Refused(fault.code, `is ${shown(given)}: ${fault.message}`);
  }
}

function related<T>({ relation, kind }: Param<T>, value: T, preceding: PrecedingArguments): T {
  // lists are related when all of them have their rows
  if (relation !== undefined && kind.shape !== 'list') checkRelation(relation, value, preceding);
  return value;
}

/** What a blank stands for. */
function ofBlank<T>(param: Param<T>, value: unknown, preceding: PrecedingArguments): T | undefined {
  const { kind, blank } = param;
  if (blank === 'zero') return within(param, 0, preceding, value);
  if (blank === 'absent') return undefined;
  if (blank === 'explicit') throw wrongInput(`is 0 or blank; write ${kind.unit === '°' ? '"0°"' : '"0 mm"'} for none`);
  if (blank === 'refused')
    throw wrongInput(
      `is ` +
        (value === 0 ? '0 or blank' : 'blank') +
        (kind.inQuotes === undefined ? `; ${required(param)}` : `: ${putInQuotes(kind.inQuotes)}`),
    );
  if ('default' in blank) {
    const brought = blank.given === undefined ? undefined : valueAt(blank.given, value, preceding);
    return leftOut(() => related(param, kind.read(brought ?? blank.default, preceding), preceding));
  }
  const same = preceding.get(blank.sameAs);
  const { take } = blank;
  return take !== undefined
    ? leftOut(() => take(same as never) as T)
    : leftOut(() => related(param, kind.read(same, preceding), preceding));
}

/** What stands for a blank may be refused by the arguments before it. */
function leftOut<T>(work: () => T): T {
  try {
    return work();
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `is left out: ${fault.message}`) : fault;
  }
}

function required(param: Param): string {
  const limits = limitWords(param.limits, param.kind.unit);
  return `give ${acceptedBy(param)}${limits === '' ? '' : `, ${limits}`}`;
}
