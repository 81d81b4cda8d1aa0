// Parameters of each kind, and how a raw argument becomes a value: error, blank, kind, limits, in this order.
import { type Blank, type Earlier, type Kind, type NameKind, NOTHING_READ, type Param, type Relation, type TextSource } from '../card';
import type { CellError, Limits } from '../kinds';
import { codeOf, errorName, errorWords, quoted, Refused, wrongInput } from '../refuse';
import { acceptedBy, accepts } from './accepts';
import { type Deviation, type Deviations, plusMinus, readDeviation } from './deviation';
import { LENGTH, readQuantity, type Quantity } from './quantity';
import { checkRelation } from './relation';

export const isCellError = (raw: unknown): raw is CellError => typeof raw === 'object' && raw !== null && 'cellError' in raw;
export const isEmptyText = (raw: unknown): boolean => typeof raw === 'string' && raw.trim() === '';
/** Empty: a blank cell as some hosts send it, a left-out argument, empty text. */
export const isEmpty = (raw: unknown): boolean => raw === null || raw === undefined || isEmptyText(raw);
/** Blank: empty, or the bare 0 that other hosts send for a blank cell. */
export const isBlank = (raw: unknown): boolean => isEmpty(raw) || raw === 0;

/** How a message shows what was given. */
export function shown(raw: unknown): string {
  if (typeof raw === 'string') return quoted(raw);
  if (isCellError(raw)) return errorName(raw);
  if (Array.isArray(raw)) return `a range of ${raw.length} × ${Array.isArray(raw[0]) ? raw[0].length : 1} cells`;
  if (typeof raw === 'boolean') return raw ? 'TRUE' : 'FALSE';
  if (typeof raw === 'object' && raw !== null) return 'a value of another kind';
  return isEmpty(raw) ? 'blank' : String(raw);
}

export const rowsOf = (range: readonly unknown[]): unknown[][] => range.map(row => (Array.isArray(row) ? (row as unknown[]) : [row]));

/** A range as rows of cells; a 1 × 1 range is its cell. */
function cellOrRows(raw: unknown): unknown {
  if (!Array.isArray(raw)) return raw;
  const rows = rowsOf(raw);
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

// ---- kinds of one value ------------------------------------------------------------------------------------------

/** What most kinds have in common. */
export const ONE = { unit: '', shape: 'one', hasZero: false, inQuotes: undefined, from: undefined, takesEverything: false } as const;

/** A number with its unit, or text that names a table or a material. */
export function numeric(
  quantity: Quantity,
  from?: TextSource<number> & { readonly range?: (rows: readonly (readonly unknown[])[], earlier: Earlier) => number },
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
    read(raw, earlier) {
      if (typeof raw === 'number') return finite(raw);
      if (typeof raw === 'boolean') throw wrongInput('TRUE/FALSE is not a number');
      if (typeof raw === 'string') return from?.read(raw, earlier) ?? readQuantity(raw, quantity);
      if (from?.range !== undefined && Array.isArray(raw)) return from.range(raw as unknown[][], earlier);
      throw wrongInput('one value is asked for, not a range');
    },
  };
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw wrongInput('not a finite number');
  return value;
}

const halfWidth = numeric(LENGTH);

/** A tolerance, or text that names one. */
export const deviation = (from?: TextSource<Deviation>): Kind<Deviation> => ({
  ...ONE,
  is: 'deviation',
  noun: 'tolerance',
  unit: 'mm',
  hasZero: true,
  from,
  read: (raw, earlier) =>
    typeof raw === 'string' ? (from?.read(raw, earlier) ?? readDeviation(raw)) : plusMinus(halfWidth.read(raw, NOTHING_READ)),
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
export function named<T>(is: NameKind, example: string, read: (text: string, earlier: Earlier) => T): Kind<T> {
  const inQuotes = `"${example}"`;
  return {
    ...ONE,
    is,
    example,
    noun: is,
    inQuotes,
    read(raw, earlier) {
      if (typeof raw !== 'string') throw wrongInput(putInQuotes(inQuotes));
      return read(raw, earlier);
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

// ---- ranges ------------------------------------------------------------------------------------------------------

export type ListKind<T> = Kind<T> & {
  readonly shape: 'list';
  /** The same value for every one of n rows. */
  repeat(value: T, rows: number): T;
  count(value: T): number;
};

/** What lists of one value a row have in common. */
export const rowByRow = <E>() => ({
  ...ONE,
  shape: 'list' as const,
  repeat: (value: readonly E[], rows: number): readonly E[] => new Array<E>(rows).fill(value[0] as E),
  count: (value: readonly E[]): number => value.length,
});

/** One row or column as a list; a single value is a list of one. */
export function asList(raw: unknown): readonly unknown[] {
  if (!Array.isArray(raw)) return [raw];
  const rows = rowsOf(raw);
  if (rows.length > 1 && rows.some(row => row.length > 1)) throw wrongInput('give one row or one column');
  return rows.length > 1 ? rows.map(row => row[0]) : (rows[0] ?? []);
}

function entries<E>(kind: Kind<E>, raw: unknown, earlier: Earlier, limits: Limits | undefined): E[] {
  return asList(raw).map((entry, i, { length }) => {
    const where = length > 1 ? `row ${i + 1} ` : '';
    if (isCellError(entry)) throw new Refused(codeOf(entry), `${where}${errorWords(entry)}`);
    if (isBlank(entry)) throw wrongInput(`${where}is ${entry === 0 ? '0 or blank' : 'blank'}; ${zeroWords(kind.unit, limits)}`);
    try {
      const value = kind.read(entry, earlier);
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
    read: (raw, earlier) => entries(of, raw, earlier, limits),
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
  read(raw, earlier) {
    const list = entries(DEVIATION, raw, earlier, undefined);
    return { upperMm: list.map(d => d.upperMm), lowerMm: list.map(d => d.lowerMm) };
  },
  repeat: (value, rows) => ({
    upperMm: new Array<number>(rows).fill(value.upperMm[0] as number),
    lowerMm: new Array<number>(rows).fill(value.lowerMm[0] as number),
  }),
  count: value => value.upperMm.length,
};

// ---- limits ------------------------------------------------------------------------------------------------------

/** "above 0 mm and at most 1": nothing where there are no limits. */
export function limitWords(limits: Limits | undefined, unit: string): string {
  if (limits === undefined) return '';
  const u = unit === '' || unit === '°' ? unit : ` ${unit}`;
  const parts: string[] = [];
  if (limits.above !== undefined) parts.push(`above ${limits.above}${u}`);
  if (limits.atLeast !== undefined) parts.push(`at least ${limits.atLeast}${u}`);
  if (limits.below !== undefined) parts.push(`below ${limits.below}${u}`);
  if (limits.atMost !== undefined) parts.push(`at most ${limits.atMost}${u}`);
  return parts.join(' and ');
}

export function withinLimits(value: number, limits: Limits | undefined): boolean {
  if (limits === undefined) return true;
  const { above, atLeast, below, atMost } = limits;
  return (
    (above === undefined || value > above) &&
    (atLeast === undefined || value >= atLeast) &&
    (below === undefined || value < below) &&
    (atMost === undefined || value <= atMost)
  );
}

function checkLimits(value: number, limits: Limits | undefined, unit: string): void {
  if (!withinLimits(value, limits)) throw wrongInput(`must be ${limitWords(limits, unit)}`);
}

// ---- a parameter and its raw argument ------------------------------------------------------------------------------

export interface ParamOptions extends Limits {
  readonly symbol?: string;
  readonly default?: number | string;
  readonly sameAs?: string;
  readonly blank?: Blank;
  readonly group?: string;
  readonly relation?: Relation;
  readonly uncounted?: string;
}

export function param<T>(name: string, kind: Kind<T>, options: ParamOptions = {}): Param<T> {
  const { symbol, default: fallback, sameAs, blank, group, relation, uncounted, above, atLeast, below, atMost } = options;
  const isUnlimited = above === undefined && atLeast === undefined && below === undefined && atMost === undefined;
  const limits = isUnlimited ? undefined : { above, atLeast, below, atMost };
  return {
    name,
    kind,
    symbol,
    limits,
    group,
    blank: blank ?? blankMeans(kind, limits, fallback, sameAs),
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
): Blank {
  if (sameAs !== undefined) return { sameAs };
  if (fallback !== undefined) return { default: fallback };
  return kind.hasZero && withinLimits(0, limits) ? 'zero' : 'refused';
}

/** A number that stands for itself, far the most frequent argument. */
export const isItself = ({ takesNumbers, limits }: Param, raw: unknown): raw is number =>
  typeof raw === 'number' && takesNumbers && raw !== 0 && Number.isFinite(raw) && withinLimits(raw, limits);

/** Reads one argument. Throws Refused with the argument's name, what was given and what is accepted. */
export function readArgument<T>(param: Param<T>, raw: unknown, earlier: Earlier): T | undefined {
  if (isItself(param, raw)) return raw as T;
  try {
    const { kind } = param;
    const value =
      !Array.isArray(raw) || kind.shape === 'list' || (kind.is === 'anything' && kind.shape === 'block') ? raw : cellOrRows(raw);
    if (!kind.takesEverything) {
      if (isCellError(value)) throw new Refused(codeOf(value), errorWords(value));
      if (isBlank(value)) return ofBlank(param, value, earlier);
    }
    return within(param, value, earlier);
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `${param.name} ${fault.message}`, param.name) : fault;
  }
}

/** A message shows what was given. */
function within<T>(param: Param<T>, value: unknown, earlier: Earlier, given = value): T {
  const { kind, limits } = param;
  try {
    const result = kind.read(value, earlier);
    if (typeof result === 'number') checkLimits(result, limits, kind.unit);
    return related(param, result, earlier);
  } catch (fault) {
    if (!(fault instanceof Refused) || kind.shape === 'list') throw fault;
    throw new Refused(fault.code, `is ${shown(given)}: ${fault.message}`);
  }
}

function related<T>({ relation, kind }: Param<T>, value: T, earlier: Earlier): T {
  // lists are related when all of them have their rows
  if (relation !== undefined && kind.shape !== 'list') checkRelation(relation, value, earlier);
  return value;
}

/** What a blank stands for. */
function ofBlank<T>(param: Param<T>, value: unknown, earlier: Earlier): T | undefined {
  const { kind, blank } = param;
  if (blank === 'zero') return within(param, 0, earlier, value);
  if (blank === 'absent') return undefined;
  if (blank === 'explicit') throw wrongInput(`is 0 or blank; write ${kind.unit === '°' ? '"0°"' : '"0 mm"'} for none`);
  if (blank === 'refused')
    throw wrongInput(
      `is ${value === 0 ? '0 or blank' : 'blank'}${kind.inQuotes === undefined ? `; ${required(param)}` : `: ${putInQuotes(kind.inQuotes)}`}`,
    );
  if ('default' in blank) return related(param, kind.read(blank.default, earlier), earlier);
  const same = earlier.get(blank.sameAs);
  return blank.take === undefined ? related(param, kind.read(same, earlier), earlier) : (blank.take(same as never) as T);
}

function required(param: Param): string {
  const limits = limitWords(param.limits, param.kind.unit);
  return `give ${acceptedBy(param)}${limits === '' ? '' : `, ${limits}`}`;
}

/** Last row that is not blank, plus one. */
export function usedLength(raw: unknown): number {
  const list = asList(raw);
  let n = list.length;
  while (n > 0 && isBlank(list[n - 1])) n--;
  return n;
}
