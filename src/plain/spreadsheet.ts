// A plain form as spreadsheet formulas that every spreadsheet program reads: operators and a short list of functions.
// Named steps go to cells of their own through `step`; what is used once stays inside its formula.
import { formNamed, type Form, type Tree } from './forms';

/** How tightly a printed piece holds together; a looser piece inside a tighter one gets brackets. */
const COMPARE = 1, SUM = 2, PRODUCT = 3, POWER = 4, SIGN = 5, ATOM = 6;

/** What stands for a value in a formula: a scalar, a range of cells, a list of scalars, or a record of any of them. */
export type Ref =
  | { readonly text: string; readonly level: number }
  | { readonly range: string }
  | { readonly items: readonly Ref[] }
  | { readonly parts: Readonly<Record<string, Ref>> };

type Scalar = Extract<Ref, { text: string }>;

export const atom = (text: string): Scalar => ({ text, level: ATOM });
export const number = (value: number): Scalar => ({ text: String(value).replace('e', 'E').replace('E+', 'E'), level: value < 0 ? SIGN : ATOM });
export const text = (value: string): Scalar => atom(`"${value.replace(/"/g, '""')}"`);

/** Puts a formula into a cell of its own and answers the cell; the name says what it is. */
export type Step = (name: string, formula: string) => string;

class Printer {
  constructor(private readonly step: Step) {}

  form(form: Form, args: readonly Ref[]): Ref {
    const env = new Map<string, Ref>(form.params.map((name, i) => [name, args[i] ?? atom('0')]));
    for (const [name, tree] of form.steps ?? []) env.set(name, this.hoisted(name, this.ref(tree, env)));
    return this.ref(form.result, env);
  }

  private hoisted(name: string, ref: Ref): Ref {
    return 'text' in ref && ref.level < ATOM ? atom(this.step(name, ref.text)) : ref;
  }

  private ref(tree: Tree, env: ReadonlyMap<string, Ref>): Ref {
    if (typeof tree === 'number') return number(tree);
    if (typeof tree === 'string') return tree === 'PI' && !env.has(tree) ? atom('PI()') : found(env, tree);
    const [op, ...rest] = tree as readonly [string, ...Tree[]];
    if (op === 'text') return text(String(rest[0]));
    if (op === 'of') return part(this.ref(rest[0] as Tree, env), String(rest[1]));
    if (op === 'list') return { items: rest.map(item => this.ref(item, env)) };
    if (op === 'record') return { parts: Object.fromEntries(Object.entries(rest[0] as unknown as Record<string, Tree>).map(([key, value]) => [key, this.ref(value, env)])) };
    const args = rest.map(item => this.ref(item, env));
    if (op === 'call') return this.call(String(rest[0]), rest.slice(1).map(item => this.ref(item, env)));
    return operation(op, args.map(scalar));
  }

  private call(name: string, args: readonly Ref[]): Ref {
    const maths = MATHS[name];
    if (maths !== undefined) return maths(...args);
    const form = formNamed(name);
    if (form === undefined) throw new TypeError(`no plain form of ${name}`);
    // an argument that the called formula reads more than once is worked out once
    return this.form(form, args.map((arg, i) => (uses(form, form.params[i] ?? '') > 1 ? this.hoisted(form.params[i] ?? '', arg) : arg)));
  }
}

function found(env: ReadonlyMap<string, Ref>, name: string): Ref {
  const ref = env.get(name);
  if (ref === undefined) throw new TypeError(`${name} stands for nothing`);
  return ref;
}

function part(owner: Ref, key: string): Ref {
  const ref = 'parts' in owner ? owner.parts[key] : undefined;
  if (ref === undefined) throw new TypeError(`no cell for ${key}`);
  return ref;
}

function scalar(ref: Ref): Scalar {
  if ('text' in ref) return ref;
  throw new TypeError('a list stands where one value is needed');
}

function uses(form: Form, name: string): number {
  let n = 0;
  const count = (tree: unknown): void => {
    if (tree === name) n++;
    else if (Array.isArray(tree)) tree.slice(1).forEach(count);
    else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(count);
  };
  (form.steps ?? []).forEach(([, tree]) => count(tree));
  count(form.result);
  return n;
}

const inside = (ref: Scalar, level: number): string => (ref.level < level ? `(${ref.text})` : ref.text);
/** To the right of − and ÷ an equal level needs brackets too. */
const right = (ref: Scalar, level: number): string => (ref.level <= level ? `(${ref.text})` : ref.text);
const fn = (name: string, ...args: string[]): Scalar => atom(`${name}(${args.join(',')})`);

function operation(op: string, [a = atom(''), b = atom(''), c = atom('')]: readonly Scalar[]): Scalar {
  switch (op) {
    case '+':
      return { text: `${inside(a, SUM)}+${inside(b, SUM)}`, level: SUM };
    case '-':
      return { text: `${inside(a, SUM)}-${right(b, SUM)}`, level: SUM };
    case '*':
      return { text: `${inside(a, PRODUCT)}*${inside(b, PRODUCT)}`, level: PRODUCT };
    case '/':
      return { text: `${inside(a, PRODUCT)}/${right(b, PRODUCT)}`, level: PRODUCT };
    case '^':
      return { text: `${inside(a, ATOM)}^${inside(b, ATOM)}`, level: POWER };
    case 'neg':
      // spreadsheets read -x^2 as (-x)^2, so whatever is negated is bracketed
      return { text: `-${inside(a, ATOM)}`, level: SIGN };
    case 'not':
      return fn('NOT', a.text);
    case 'and':
      return fn('AND', a.text, b.text);
    case 'or':
      return fn('OR', a.text, b.text);
    case 'if':
      return fn('IF', a.text, b.text, c.text);
    default:
      return { text: `${inside(a, SUM)}${op}${inside(b, SUM)}`, level: COMPARE };
  }
}

const plus = (a: Scalar, b: Scalar): Scalar => operation('+', [a, b]);
const minus = (a: Scalar, b: Scalar): Scalar => operation('-', [a, b]);
const times = (a: Scalar, b: Scalar): Scalar => operation('*', [a, b]);
const total = (terms: readonly Scalar[]): Scalar => (terms.length === 0 ? number(0) : terms.reduce(plus));

/** A sum over rows: of scalars term by term, of ranges by SUMPRODUCT with nothing but operators inside. */
function over(lists: readonly Ref[], term: (...row: Scalar[]) => Scalar): Scalar {
  if (lists.every(list => 'range' in list)) return fn('SUMPRODUCT', term(...lists.map(list => atom((list as { range: string }).range))).text);
  const rows = lists.map(list => ('items' in list ? list.items : undefined));
  const length = Math.max(...rows.map(row => row?.length ?? 0));
  return total(Array.from({ length }, (_, i) => term(...rows.map(row => scalar(row?.[i] ?? atom('0'))))));
}

const sign = (a: Scalar): Scalar => atom(`((${a.text}>0)-(${a.text}<0))`);
const isTrue = (a: Scalar): Scalar => ({ text: `0+(${a.text})`, level: SUM });
const square = (a: Scalar): Scalar => times(a, a);
const width = (upper: Scalar, lower: Scalar): Scalar => minus(upper, lower);
const one = (name: string) => (a: Ref): Scalar => fn(name, scalar(a).text);
const each = (name: string) => (...args: Ref[]): Scalar => fn(name, ...args.map(arg => scalar(arg).text));

/** The spreadsheet form of each entry of core/maths. */
export const MATHS: Readonly<Record<string, (...args: Ref[]) => Scalar>> = {
  tanDeg: a => fn('TAN', fn('RADIANS', scalar(a).text).text),
  cosDeg: a => fn('COS', fn('RADIANS', scalar(a).text).text),
  atanDeg: a => fn('DEGREES', fn('ATAN', scalar(a).text).text),
  sqrt: one('SQRT'),
  cbrt: a => operation('^', [scalar(a), atom('(1/3)')]),
  abs: one('ABS'),
  ln: one('LN'),
  min: each('MIN'),
  max: each('MAX'),
  wholeUp: a => fn('ROUNDUP', minus(scalar(a), number(1e-9)).text, '0'),
  normalTail: a => fn('NORMSDIST', operation('neg', [scalar(a)]).text),
  sum: list => ('range' in list ? fn('SUM', list.range) : over([list], a => a)),
  sumSquares: list => ('range' in list ? fn('SUMSQ', list.range) : over([list], square)),
  sumSquaredDifferences: (a, b) => over([a, b], (x, y) => square(minus(x, y))),
  sumProducts: (a, b) => over([a, b], times),
  sumWidths: (a, upper, lower) => over([a, upper, lower] as Ref[], (x, u, l) => times(times(x, sign(x)), width(u, l))),
  sumSquaredWidths: (a, upper, lower) => over([a, upper, lower] as Ref[], (x, u, l) => square(times(x, width(u, l)))),
  countWidths: (a, upper, lower) => over([a, upper, lower] as Ref[], (x, u, l) => isTrue({ text: `${times(x, width(u, l)).text}<>0`, level: COMPARE })),
  atMost: (a, b) => ({ text: `${scalar(a).text}<=${plus(scalar(b), number(1e-9)).text}`, level: COMPARE }),
  atLeast: (a, b) => ({ text: `${scalar(a).text}>=${minus(scalar(b), number(1e-9)).text}`, level: COMPARE }),
};

/** The formulas of a form, without the equals sign: one, a row of them, or rows. Without `step` all is in one formula. */
export function spreadsheetFormulas(form: Form, args: readonly Ref[], step?: Step): string | readonly (string | readonly string[])[] {
  const result = new Printer(step ?? ((_name, formula) => `(${formula})`)).form(form, args);
  return texts(result);
}

function texts(ref: Ref): string | (string | string[])[] {
  if ('text' in ref) return ref.text;
  if ('items' in ref) return ref.items.map(item => texts(item) as string | string[]);
  throw new TypeError('a formula must end in a value or a list of values');
}
