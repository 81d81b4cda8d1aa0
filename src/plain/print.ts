// A plain form in words, with numbers or with symbols put in: "2.4 + 2·1.2 + 2·14·tan(0.5°)".
// Where every value is known, choices are decided and terms worth nothing are left out.
import * as M from '../core/maths';
import { digits } from './digits';
import { formCalled } from './forms';
import { type BinaryOperator, eachPart, type Form, isLooser, type Level, printed, type Printer, type RelationalOperator } from './tree';
import { denied, negated, type Value, worth } from './values';

/** A printed piece with its worth where that is known; a list has items, a record has parts. */
export interface Piece {
  readonly text: string;
  readonly level: Level;
  readonly value?: Value;
  readonly items?: readonly Piece[];
  readonly parts?: Readonly<Record<string, Piece>>;
}

export const symbol = (text: string): Piece => ({ text, level: 'atom' });
/** A name of several words: under a power or a root it stands in brackets. */
export const phrase = (text: string): Piece => ({ text, level: 'power' });

/** A core value as a piece: numbers, words, lists, records. */
export function known(value: unknown): Piece {
  if (typeof value === 'number') return { text: digits(value), level: value < 0 ? 'sign' : 'atom', value };
  if (typeof value === 'string' || typeof value === 'boolean') return { text: String(value), level: 'atom', value };
  if (Array.isArray(value)) return listOf(value.map(known));
  if (typeof value === 'object' && value !== null) return recordOf(eachPart(value as Record<string, unknown>, known));
  return symbol('–');
}

const listOf = (items: readonly Piece[]): Piece => ({ text: items.map(({ text }) => text).join('; '), level: 'atom', items });
const recordOf = (parts: Readonly<Record<string, Piece>>): Piece => ({ text: '', level: 'atom', parts });
const inside = (piece: Piece, level: Level): string => (isLooser(piece.level, level) ? `(${piece.text})` : piece.text);
const withValue = (text: string, level: Level, value: Piece['value']): Piece =>
  value === undefined ? { text, level } : { text, level, value };

const WORDS: Printer<Piece> = {
  leftOut: () => symbol('–'),
  step: (_, piece) => piece,
  number: known,
  name: name => (name === 'PI' ? withValue('π', 'atom', Math.PI) : symbol(name)),
  text: known,
  of: (owner, key) => owner.parts?.[key] ?? symbol(`${owner.text} ${key.replace(/(Mm|Deg)$/, '')}`.trim()),
  list: listOf,
  record: recordOf,
  call: (formula, args) => MATHS[formula]?.(...args) ?? print(formCalled(formula), args),
  if: ({ text, value }, whenTrue, whenFalse) =>
    value === undefined
      ? { text: `if ${text}: ${whenTrue().text}, else ${whenFalse().text}`, level: 'choice' }
      : value === true
        ? whenTrue()
        : whenFalse(),
  neg: a => withValue(`−${inside(a, 'power')}`, 'sign', negated(a.value)),
  not: a => withValue(`not ${inside(a, 'atom')}`, 'relation', denied(a.value)),
  binary,
};

/** The whole formula in one line, its steps put in. */
export const print = (form: Form, args: readonly Piece[]): Piece => printed(form, args, WORDS);

/** Step by step: each later step takes the worth of the earlier ones. */
export function printSteps(
  form: Form,
  args: readonly Piece[],
): { readonly steps: readonly { readonly name: string; readonly piece: Piece }[]; readonly result: Piece } {
  const steps: { name: string; piece: Piece }[] = [];
  const step = (name: string, piece: Piece): Piece => {
    steps.push({ name, piece });
    return piece.value === undefined ? piece : known(piece.value);
  };
  const result = printed(form, args, { ...WORDS, step });
  return { steps, result };
}

/** Signs that are not written as they are typed. */
const SIGNS: Readonly<Partial<Record<RelationalOperator, string>>> = { '<=': '≤', '>=': '≥', '<>': '≠' };
export const signOf = (op: RelationalOperator): string => SIGNS[op] ?? op;
const RAISED: Readonly<Record<number, string>> = { 2: '²', 3: '³', 4: '⁴' };

/** What adds or takes away nothing is left out, and so is what a nothing multiplies. */
function binary(op: BinaryOperator, a: Piece, b: Piece): Piece {
  const value = worth(op, a.value, b.value);
  switch (op) {
    case '+':
      return b.value === 0 ? a : a.value === 0 ? b : withValue(`${inside(a, 'sum')} ${plus(b)}`, 'sum', value);
    case '-':
      return b.value === 0 ? a : withValue(`${inside(a, 'sum')} ${minus(b)}`, 'sum', value);
    case '*':
      return value === 0 ? known(0) : withValue(`${inside(a, 'product')}·${inside(b, 'sign')}`, 'product', value);
    case '/':
      return withValue(`${inside(a, 'product')}/${inside(b, 'power')}`, 'product', value);
    case '^':
      return withValue(`${inside(a, 'atom')}${RAISED[b.value as number] ?? `^${inside(b, 'atom')}`}`, 'power', value);
    default:
      return withValue(`${inside(a, 'relation')} ${signOf(op)} ${inside(b, 'relation')}`, 'relation', value);
  }
}

/** A negative term is taken away, not added; taking it away adds it. */
const plus = (b: Piece): string => (b.text.startsWith('−') ? `− ${b.text.slice(1)}` : `+ ${inside(b, 'sum')}`);
const minus = (b: Piece): string => (b.level === 'sign' ? `+ ${b.text.slice(1)}` : `− ${inside(b, 'series')}`);

const total = (terms: readonly Piece[]): Piece => terms.reduce((a, b) => binary('+', a, b), known(0));
const square = (a: Piece): Piece => binary('^', a, known(2));
const over = (name: string, args: readonly Piece[], of: (...values: number[]) => number): Piece => {
  const values = args.map(({ value }) => value);
  return withValue(
    `${name}(${args.map(({ text }) => text).join('; ')})`,
    'atom',
    values.every(value => typeof value === 'number') ? of(...(values as number[])) : undefined,
  );
};
const root = (sign: string, a: Piece, of: (x: number) => number): Piece => ({
  ...over(sign, [a], of),
  ...(a.level === 'atom' && a.items === undefined ? { text: `${sign}${a.text}` } : {}),
});
const degrees = (a: Piece): Piece => (typeof a.value === 'number' && a.level === 'atom' ? { ...a, text: `${a.text}°` } : a);

/**
 * A sum over rows, term by term where the rows are known, else in symbols: it ends at the next + or −, so anything else puts it
 * in brackets.
 */
function sumOver(lists: readonly Piece[], term: (...row: Piece[]) => Piece, words: (...texts: string[]) => string): Piece {
  const rows = lists.map(({ items }) => items);
  if (rows.some(items => items === undefined)) return { text: `Σ ${words(...lists.map(({ text }) => text))}`, level: 'series' };
  return total((rows[0] ?? []).map((_, i) => term(...rows.map(items => items?.[i] ?? known(0)))));
}

const product = (a: Piece, b: Piece): Piece => binary('*', a, b);
const width = (upper: Piece, lower: Piece): Piece => binary('-', upper, lower);
const size = (a: Piece): Piece => (typeof a.value === 'number' ? known(Math.abs(a.value)) : symbol(`|${a.text}|`));

function counted(lists: readonly Piece[]): Piece {
  const [a, upper, lower] = lists.map(({ items }) => items?.map(({ value }) => value as number));
  return a === undefined || upper === undefined || lower === undefined ? symbol('n') : known(M.countWidths(a, upper, lower));
}

/** The printed form of each entry of core/maths. */
const MATHS: Readonly<Record<string, (...args: Piece[]) => Piece>> = {
  tanDeg: a => over('tan', [degrees(a)], M.tanDeg),
  cosDeg: a => over('cos', [degrees(a)], M.cosDeg),
  atanDeg: a => over('arctan', [a], M.atanDeg),
  sqrt: a => root('√', a, M.sqrt),
  cbrt: a => root('∛', a, M.cbrt),
  abs: a => over('abs', [a], M.abs),
  ln: a => over('ln', [a], M.ln),
  min: (...args) => over('min', args, M.min),
  max: (...args) => over('max', args, M.max),
  wholeUp: a => over('round up', [a], M.wholeUp),
  normalTail: a => over('normal tail beyond ', [a], M.normalTail),
  sum: list =>
    sumOver(
      [list],
      item => item,
      text => text,
    ),
  sumSquaredDifferences: (a, b) =>
    sumOver(
      [a, b],
      (x, y) => square(binary('-', x, y)),
      (x, y) => `(${x} − ${y})²`,
    ),
  sumProducts: (a, b) => sumOver([a, b], product, (x, y) => `${x}·${y}`),
  sumWidths: (a, upper, lower) =>
    sumOver(
      [a, upper, lower] as Piece[],
      (x, u, l) => product(size(x), width(u, l)),
      (x, u, l) => `|${x}|·(${u} − ${l})`,
    ),
  sumSquaredWidths: (a, upper, lower) =>
    sumOver(
      [a, upper, lower] as Piece[],
      (x, u, l) => square(product(x, width(u, l))),
      (x, u, l) => `(${x}·(${u} − ${l}))²`,
    ),
  countWidths: (...lists) => counted(lists),
  atMost: (a, b) => binary('<=', a, b),
  atLeast: (a, b) => binary('>=', a, b),
};

/** A step's name in words: `shearStressMpa` is `shear stress`. */
export const stepWords = (name: string): string =>
  name
    .replace(/(MmPer|GPerCm3|Mpa|Mm4|Mm3|Mm2|Mm|Deg|Nmm|Nm|N)$/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
