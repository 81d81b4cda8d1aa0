// A plain form in words, with numbers or with symbols put in: "2.4 + 2·1.2 + 2·14·tan(0.5°)".
// Where every value is known, choices are decided and terms worth nothing are left out.
import * as M from '../core/maths';
import { formNamed, type Form, type Tree } from './forms';

/** How tightly a printed piece holds together; a looser piece inside a tighter one gets brackets. */
const CHOICE = 0,
  COMPARE = 1,
  SUM = 2,
  TOTAL = 3,
  PRODUCT = 4,
  SIGN = 5,
  POWER = 6,
  ATOM = 7;

/** A printed piece with its worth where that is known; a list has items, a record has parts. */
export interface Piece {
  readonly text: string;
  readonly level: number;
  readonly value?: number | boolean | string;
  readonly items?: readonly Piece[];
  readonly parts?: Readonly<Record<string, Piece>>;
}

/** Numbers as a person would write them: at most six significant digits. */
export const digits = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−');

export const symbol = (text: string): Piece => ({ text, level: ATOM });

/** A core value as a piece: numbers, words, lists, records. */
export function known(value: unknown): Piece {
  if (typeof value === 'number') return { text: digits(value), level: value < 0 ? SIGN : ATOM, value };
  if (typeof value === 'string' || typeof value === 'boolean') return { text: String(value), level: ATOM, value };
  if (Array.isArray(value)) return listOf(value.map(known));
  if (typeof value === 'object' && value !== null)
    return { text: '', level: ATOM, parts: Object.fromEntries(Object.entries(value).map(([key, part]) => [key, known(part)])) };
  return symbol('–');
}

const listOf = (items: readonly Piece[]): Piece => ({ text: items.map(({ text }) => text).join('; '), level: ATOM, items });
const inside = (piece: Piece, level: number): string => (piece.level < level ? `(${piece.text})` : piece.text);
const withValue = (text: string, level: number, value: Piece['value']): Piece =>
  value === undefined ? { text, level } : { text, level, value };

type Env = ReadonlyMap<string, Piece>;

/** The whole formula in one line, its steps put in. */
export function print(form: Form, args: readonly Piece[]): Piece {
  const env = bound(form, args);
  for (const [name, tree] of form.steps ?? []) env.set(name, piece(tree, env));
  return piece(form.result, env);
}

/** Step by step: each later step takes the worth of the earlier ones. */
export function printSteps(
  form: Form,
  args: readonly Piece[],
): { readonly steps: readonly { readonly name: string; readonly piece: Piece }[]; readonly result: Piece } {
  const env = bound(form, args);
  const steps = (form.steps ?? []).map(([name, tree]) => {
    const printed = piece(tree, env);
    env.set(name, printed.value === undefined ? printed : known(printed.value));
    return { name, piece: printed };
  });
  return { steps, result: piece(form.result, env) };
}

const bound = (form: Form, args: readonly Piece[]): Map<string, Piece> =>
  new Map(form.params.map((name, i) => [name, args[i] ?? symbol('–')]));

function piece(tree: Tree, env: Env): Piece {
  if (typeof tree === 'number') return known(tree);
  if (typeof tree === 'string') return env.get(tree) ?? (tree === 'PI' ? withValue('π', ATOM, Math.PI) : symbol(tree));
  const [op, ...rest] = tree as readonly [string, ...Tree[]];
  if (op === 'text') return known(rest[0]);
  if (op === 'call')
    return called(
      String(rest[0]),
      rest.slice(1).map(part => piece(part, env)),
    );
  if (op === 'of') return property(piece(rest[0] as Tree, env), String(rest[1]));
  if (op === 'record')
    return {
      text: '',
      level: ATOM,
      parts: Object.fromEntries(Object.entries(rest[0] as unknown as Record<string, Tree>).map(([key, part]) => [key, piece(part, env)])),
    };
  if (op === 'list') return listOf(rest.map(part => piece(part, env)));
  if (op === 'if') return choice(rest, env);
  const [a = symbol(''), b] = rest.map(part => piece(part, env));
  return b === undefined ? sign(op, a) : binary(op, a, b);
}

function property(owner: Piece, key: string): Piece {
  return owner.parts?.[key] ?? symbol(`${owner.text} ${key.replace(/(Mm|Deg)$/, '')}`.trim());
}

function choice([condition, whenTrue, whenFalse]: readonly Tree[], env: Env): Piece {
  const test = piece(condition as Tree, env);
  if (test.value !== undefined) return piece((test.value === true ? whenTrue : whenFalse) as Tree, env);
  return { text: `if ${test.text}: ${piece(whenTrue as Tree, env).text}, else ${piece(whenFalse as Tree, env).text}`, level: CHOICE };
}

function sign(op: string, a: Piece): Piece {
  if (op === 'not') return withValue(`not ${inside(a, ATOM)}`, COMPARE, a.value === undefined ? undefined : a.value !== true);
  return withValue(`−${inside(a, POWER)}`, SIGN, typeof a.value === 'number' ? -a.value : undefined);
}

const COMPARISONS: Readonly<Record<string, readonly [sign: string, of: (a: number, b: number) => boolean]>> = {
  '<': ['<', (a, b) => a < b],
  '<=': ['≤', (a, b) => a <= b],
  '>': ['>', (a, b) => a > b],
  '>=': ['≥', (a, b) => a >= b],
};
const ARITHMETIC: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
};
const RAISED: Readonly<Record<number, string>> = { 2: '²', 3: '³', 4: '⁴' };

function binary(op: string, a: Piece, b: Piece): Piece {
  const bothKnown = a.value !== undefined && b.value !== undefined;
  const comparison = COMPARISONS[op];
  if (comparison !== undefined)
    return withValue(
      `${a.text} ${comparison[0]} ${b.text}`,
      COMPARE,
      bothKnown ? comparison[1](a.value as number, b.value as number) : undefined,
    );
  if (op === '=' || op === '<>')
    return withValue(
      `${a.text} ${op === '=' ? '=' : '≠'} ${b.text}`,
      COMPARE,
      bothKnown ? (a.value === b.value) === (op === '=') : undefined,
    );
  if (op === 'and' || op === 'or')
    return withValue(
      `${a.text} ${op} ${b.text}`,
      COMPARE,
      bothKnown ? (op === 'and' ? a.value === true && b.value === true : a.value === true || b.value === true) : undefined,
    );
  const value = typeof a.value === 'number' && typeof b.value === 'number' ? ARITHMETIC[op]?.(a.value, b.value) : undefined;
  if (op === '+') return b.value === 0 ? a : a.value === 0 ? b : plus(a, b, value);
  if (op === '-') return b.value === 0 ? a : minus(a, b, value);
  if (op === '*') return value === 0 ? known(0) : withValue(`${inside(a, PRODUCT)}·${inside(b, SIGN)}`, PRODUCT, value);
  if (op === '/') return withValue(`${inside(a, PRODUCT)}/${inside(b, POWER)}`, PRODUCT, value);
  return withValue(`${inside(a, ATOM)}${RAISED[b.value as number] ?? `^${inside(b, ATOM)}`}`, POWER, value);
}

/** Taking away a negative number adds it. */
function minus(a: Piece, b: Piece, value: number | undefined): Piece {
  return b.level === SIGN
    ? withValue(`${inside(a, SUM)} + ${b.text.slice(1)}`, SUM, value)
    : withValue(`${inside(a, SUM)} − ${inside(b, TOTAL)}`, SUM, value);
}

/** A negative term is taken away, not added. */
function plus(a: Piece, b: Piece, value: number | undefined): Piece {
  return b.text.startsWith('−')
    ? withValue(`${inside(a, SUM)} − ${b.text.slice(1)}`, SUM, value)
    : withValue(`${inside(a, SUM)} + ${inside(b, SUM)}`, SUM, value);
}

const total = (terms: readonly Piece[]): Piece => terms.reduce((a, b) => binary('+', a, b), known(0));
const square = (a: Piece): Piece => binary('^', a, known(2));
const over = (name: string, args: readonly Piece[], of: (...values: number[]) => number): Piece => {
  const values = args.map(({ value }) => value);
  return withValue(
    `${name}(${args.map(({ text }) => text).join('; ')})`,
    ATOM,
    values.every(value => typeof value === 'number') ? of(...(values as number[])) : undefined,
  );
};
const root = (sign: string, a: Piece, of: (x: number) => number): Piece =>
  withValue(
    `${sign}${a.level === ATOM && a.items === undefined ? a.text : `(${a.text})`}`,
    ATOM,
    typeof a.value === 'number' ? of(a.value) : undefined,
  );
const degrees = (a: Piece): Piece => (typeof a.value === 'number' && a.level === ATOM ? { ...a, text: `${a.text}°` } : a);

/** A sum over rows, term by term where the rows are known, else in symbols: it ends at the next + or −, so anything else puts it in brackets. */
function sumOver(lists: readonly Piece[], term: (...row: Piece[]) => Piece, words: (...texts: string[]) => string): Piece {
  const rows = lists.map(({ items }) => items);
  if (rows.some(items => items === undefined)) return { text: `Σ ${words(...lists.map(({ text }) => text))}`, level: TOTAL };
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

function called(name: string, args: readonly Piece[]): Piece {
  const maths = MATHS[name];
  if (maths !== undefined) return maths(...args);
  const form = formNamed(name);
  if (form === undefined) throw new TypeError(`no printed form of ${name}`);
  return print(form, args);
}

/** A step's name in words: `shearStressMpa` is `shear stress`. */
export const stepWords = (name: string): string =>
  name
    .replace(/(MmPer|GPerCm3|Mpa|Mm4|Mm3|Mm2|Mm|Deg|Nmm|Nm|N)$/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
