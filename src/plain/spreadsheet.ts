// A plain form as spreadsheet formulas that every spreadsheet program reads: operators and a short list of functions.
// Named steps go to cells of their own through `step`; what is used once stays inside its formula.
// Where the worth of every argument is known, each piece carries its worth: the cached value of its cell.
import * as M from '../core/maths';
import { formNamed, type Form, type Tree } from './forms';

/** How tightly a printed piece holds together; a looser piece inside a tighter one gets brackets. */
const COMPARE = 1,
  SUM = 2,
  PRODUCT = 3,
  POWER = 4,
  SIGN = 5,
  ATOM = 6;

export type Worth = number | boolean | string;

/** What stands for a value in a formula: a scalar, a range of cells, a list of scalars, or a record of any of them. */
export type Ref =
  | { readonly text: string; readonly level: number; readonly value?: Worth }
  | { readonly range: string; readonly values?: readonly Worth[] }
  | { readonly items: readonly Ref[] }
  | { readonly parts: Readonly<Record<string, Ref>> };

type Scalar = Extract<Ref, { text: string }>;

const scalarOf = (text: string, level: number, value: Worth | undefined): Scalar =>
  value === undefined ? { text, level } : { text, level, value };
export const atom = (text: string, value?: Worth): Scalar => scalarOf(text, ATOM, value);
export const number = (value: number): Scalar =>
  scalarOf(String(value).replace('e', 'E').replace('E+', 'E'), value < 0 ? SIGN : ATOM, value);
export const text = (value: string): Scalar => atom(`"${value.replace(/"/g, '""')}"`, value);

/** Puts a formula into a cell of its own and answers the cell; the name says what it is. */
export type Step = (name: string, formula: string, value: Worth | undefined) => string;

class Printer {
  constructor(private readonly step: Step) {}

  form(form: Form, args: readonly Ref[]): Ref {
    const env = new Map<string, Ref>(form.params.map((name, i) => [name, args[i] ?? atom('0')]));
    for (const [name, tree] of form.steps ?? []) env.set(name, this.hoisted(name, this.ref(tree, env)));
    return this.ref(form.result, env);
  }

  private hoisted(name: string, ref: Ref): Ref {
    return 'text' in ref && ref.level < ATOM ? atom(this.step(name, ref.text, ref.value), ref.value) : ref;
  }

  private ref(tree: Tree, env: ReadonlyMap<string, Ref>): Ref {
    if (typeof tree === 'number') return number(tree);
    if (typeof tree === 'string') return tree === 'PI' && !env.has(tree) ? atom('PI()', Math.PI) : found(env, tree);
    const [op, ...rest] = tree as readonly [string, ...Tree[]];
    if (op === 'text') return text(String(rest[0]));
    if (op === 'of') return part(this.ref(rest[0] as Tree, env), String(rest[1]));
    if (op === 'list') return { items: rest.map(item => this.ref(item, env)) };
    if (op === 'record')
      return {
        parts: Object.fromEntries(
          Object.entries(rest[0] as unknown as Record<string, Tree>).map(([key, value]) => [key, this.ref(value, env)]),
        ),
      };
    if (op === 'call')
      return this.call(
        String(rest[0]),
        rest.slice(1).map(item => this.ref(item, env)),
      );
    return operation(
      op,
      rest.map(item => scalar(this.ref(item, env))),
    );
  }

  private call(name: string, args: readonly Ref[]): Ref {
    const maths = MATHS[name];
    if (maths !== undefined) return maths(...args);
    const form = formNamed(name);
    if (form === undefined) throw new TypeError(`no plain form of ${name}`);
    // an argument that the called formula reads more than once is worked out once
    return this.form(
      form,
      args.map((arg, i) => (uses(form, form.params[i] ?? '') > 1 ? this.hoisted(form.params[i] ?? '', arg) : arg)),
    );
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

const BINARY: Readonly<Record<string, (a: never, b: never) => Worth>> = {
  '+': (a: number, b: number) => a + b,
  '-': (a: number, b: number) => a - b,
  '*': (a: number, b: number) => a * b,
  '/': (a: number, b: number) => a / b,
  '^': (a: number, b: number) => a ** b,
  '<': (a: number, b: number) => a < b,
  '<=': (a: number, b: number) => a <= b,
  '>': (a: number, b: number) => a > b,
  '>=': (a: number, b: number) => a >= b,
  '=': (a: Worth, b: Worth) => a === b,
  '<>': (a: Worth, b: Worth) => a !== b,
  and: (a: boolean, b: boolean) => a && b,
  or: (a: boolean, b: boolean) => a || b,
};

function worth(op: string, a: Scalar, b: Scalar): Worth | undefined {
  return a.value === undefined || b.value === undefined ? undefined : BINARY[op]?.(a.value as never, b.value as never);
}

function operation(op: string, [a = atom(''), b = atom(''), c = atom('')]: readonly Scalar[]): Scalar {
  const value = worth(op, a, b);
  switch (op) {
    case '+':
      return scalarOf(`${inside(a, SUM)}+${inside(b, SUM)}`, SUM, value);
    case '-':
      return scalarOf(`${inside(a, SUM)}-${right(b, SUM)}`, SUM, value);
    case '*':
      return scalarOf(`${inside(a, PRODUCT)}*${inside(b, PRODUCT)}`, PRODUCT, value);
    case '/':
      return scalarOf(`${inside(a, PRODUCT)}/${right(b, PRODUCT)}`, PRODUCT, value);
    case '^':
      return scalarOf(`${inside(a, ATOM)}^${inside(b, ATOM)}`, POWER, value);
    case 'neg':
      // spreadsheets read -x^2 as (-x)^2, so whatever is negated is bracketed
      return scalarOf(`-${inside(a, ATOM)}`, SIGN, typeof a.value === 'number' ? -a.value : undefined);
    case 'not':
      return atom(`NOT(${a.text})`, typeof a.value === 'boolean' ? !a.value : undefined);
    case 'and':
    case 'or':
      return atom(`${op.toUpperCase()}(${a.text},${b.text})`, value);
    case 'if':
      return atom(`IF(${a.text},${b.text},${c.text})`, a.value === undefined ? undefined : a.value === true ? b.value : c.value);
    default:
      return scalarOf(`${inside(a, SUM)}${op}${inside(b, SUM)}`, COMPARE, value);
  }
}

const plus = (a: Scalar, b: Scalar): Scalar => operation('+', [a, b]);
const minus = (a: Scalar, b: Scalar): Scalar => operation('-', [a, b]);
const times = (a: Scalar, b: Scalar): Scalar => operation('*', [a, b]);
const total = (terms: readonly Scalar[]): Scalar => (terms.length === 0 ? number(0) : terms.reduce(plus));

const rowsOf = (list: Ref): readonly Worth[] | undefined => {
  if ('range' in list) return list.values;
  const values = 'items' in list ? list.items.map(item => ('text' in item ? item.value : undefined)) : [undefined];
  return values.some(value => value === undefined) ? undefined : (values as Worth[]);
};

/** What a sum over rows is worth, by the maths module itself. */
function listWorth(lists: readonly Ref[], of: (...lists: never[]) => number): number | undefined {
  const rows = lists.map(rowsOf);
  return rows.some(values => values === undefined) ? undefined : of(...(rows as never[]));
}

/** A sum over rows: of scalars term by term, of ranges by SUMPRODUCT with nothing but operators inside. */
function over(lists: readonly Ref[], of: (...lists: never[]) => number, term: (...row: Scalar[]) => Scalar): Scalar {
  const value = listWorth(lists, of);
  if (lists.every(list => 'range' in list))
    return atom(`SUMPRODUCT(${term(...lists.map(list => atom((list as { range: string }).range))).text})`, value);
  const rows = lists.map(list => ('items' in list ? list.items : undefined));
  const length = Math.max(...rows.map(row => row?.length ?? 0));
  const { text: terms, level } = total(Array.from({ length }, (_, i) => term(...rows.map(row => scalar(row?.[i] ?? number(0))))));
  return scalarOf(terms, level, value);
}

const sign = (a: Scalar): Scalar => atom(`((${a.text}>0)-(${a.text}<0))`);
const square = (a: Scalar): Scalar => times(a, a);
const each =
  (name: string, of: (...values: number[]) => number) =>
  (...args: Ref[]): Scalar => {
    const scalars = args.map(scalar);
    const values = scalars.map(({ value }) => value);
    return atom(
      `${name}(${scalars.map(({ text: piece }) => piece).join(',')})`,
      values.every(value => typeof value === 'number') ? of(...(values as number[])) : undefined,
    );
  };
const valued = (a: Scalar, of: Ref, work: (x: number) => number): Scalar => {
  const x = scalar(of).value;
  return scalarOf(a.text, a.level, typeof x === 'number' ? work(x) : undefined);
};

/** The spreadsheet form of each entry of core/maths. */
export const MATHS: Readonly<Record<string, (...args: Ref[]) => Scalar>> = {
  tanDeg: a => valued(atom(`TAN(RADIANS(${scalar(a).text}))`), a, M.tanDeg),
  cosDeg: a => valued(atom(`COS(RADIANS(${scalar(a).text}))`), a, M.cosDeg),
  atanDeg: a => valued(atom(`DEGREES(ATAN(${scalar(a).text}))`), a, M.atanDeg),
  sqrt: each('SQRT', M.sqrt),
  cbrt: a => valued(operation('^', [scalar(a), atom('(1/3)')]), a, M.cbrt),
  abs: each('ABS', M.abs),
  ln: each('LN', M.ln),
  min: each('MIN', M.min),
  max: each('MAX', M.max),
  wholeUp: a => valued(atom(`ROUNDUP(${minus(scalar(a), number(1e-9)).text},0)`), a, M.wholeUp),
  normalTail: a => valued(atom(`NORMSDIST(${operation('neg', [scalar(a)]).text})`), a, M.normalTail),
  sum: list => ('range' in list ? atom(`SUM(${list.range})`, listWorth([list], M.sum)) : over([list], M.sum, a => a)),
  sumSquaredDifferences: (a, b) => over([a, b], M.sumSquaredDifferences, (x, y) => square(minus(x, y))),
  sumProducts: (a, b) => over([a, b], M.sumProducts, times),
  sumWidths: (...lists) => over(lists, M.sumWidths, (x = atom(''), u = atom(''), l = atom('')) => times(times(x, sign(x)), minus(u, l))),
  sumSquaredWidths: (...lists) =>
    over(lists, M.sumSquaredWidths, (x = atom(''), u = atom(''), l = atom('')) => square(times(x, minus(u, l)))),
  countWidths: (...lists) =>
    over(lists, M.countWidths, (x = atom(''), u = atom(''), l = atom('')) =>
      scalarOf(`0+(${times(x, minus(u, l)).text}<>0)`, SUM, undefined),
    ),
  atMost: (a, b) => operation('<=', [scalar(a), plus(scalar(b), number(1e-9))]),
  atLeast: (a, b) => operation('>=', [scalar(a), minus(scalar(b), number(1e-9))]),
};

export interface CellFormula {
  readonly formula: string;
  readonly value?: Worth;
}

/** The formulas of a form, without the equals sign: one, a row of them, or rows. Without `step` all is in one formula. */
export function spreadsheetFormulas(
  form: Form,
  args: readonly Ref[],
  step?: Step,
): CellFormula | readonly (CellFormula | readonly CellFormula[])[] {
  return cells(spreadsheetRef(form, args, step));
}

/** The same as a reference that other formulas can take. */
export function spreadsheetRef(form: Form, args: readonly Ref[], step?: Step): Ref {
  return new Printer(step ?? ((_name, formula) => `(${formula})`)).form(form, args);
}

function cells(ref: Ref): CellFormula | (CellFormula | CellFormula[])[] {
  if ('text' in ref) return ref.value === undefined ? { formula: ref.text } : { formula: ref.text, value: ref.value };
  if ('items' in ref) return ref.items.map(item => cells(item) as CellFormula | CellFormula[]);
  throw new TypeError('a formula must end in a value or a list of values');
}
