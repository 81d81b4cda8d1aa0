// A plain form as spreadsheet formulas that every spreadsheet program reads: operators and a short list of functions.
// Named steps go to cells of their own through `step`; what is used once stays inside its formula.
// Where the worth of every argument is known, each piece carries its worth: the cached value of its cell.
import * as M from '../core/maths';
import { formCalled } from './forms';
import { type BinaryOperator, type Form, isLooser, type Level, printed, type Printer, type RelationalOperator, visit } from './tree';
import { denied, negated, type Value, worth } from './values';

/** What stands for a value in a formula: a scalar, a range of cells, a list of scalars, or a record of any of them. */
export type Ref =
  | { readonly text: string; readonly level: Level; readonly value?: Value }
  | { readonly range: string; readonly values?: readonly Value[] }
  | { readonly items: readonly Ref[] }
  | { readonly parts: Readonly<Record<string, Ref>> };

export type Scalar = Extract<Ref, { text: string }>;

const SIGN: Level = 'spreadsheet sign';

const scalarOf = (text: string, level: Level, value: Value | undefined): Scalar =>
  value === undefined ? { text, level } : { text, level, value };
export const atom = (text: string, value?: Value): Scalar => scalarOf(text, 'atom', value);
export const number = (value: number): Scalar =>
  scalarOf(String(value).replace('e', 'E').replace('E+', 'E'), value < 0 ? SIGN : 'atom', value);
/** A formula takes no text of more than 255 characters: a longer one is put together. */
const TEXT_PIECES = /[^]{1,120}/gu;
export const text = (value: string): Scalar =>
  atom((value.match(TEXT_PIECES) ?? ['']).map(piece => `"${piece.replace(/"/g, '""')}"`).join('&'), value);

/** Puts a formula into a cell of its own and answers the cell; the name says what it is. */
export type Step = (name: string, formula: string, value: Value | undefined) => string;

class Formulas implements Printer<Ref> {
  constructor(private readonly put: Step) {}

  step(name: string, ref: Ref): Ref {
    return 'text' in ref && isLooser(ref.level, 'atom') ? atom(this.put(name, ref.text, ref.value), ref.value) : ref;
  }

  call(formula: string, args: readonly Ref[]): Ref {
    const maths = MATHS[formula];
    if (maths !== undefined) return maths(...args);
    const form = formCalled(formula);
    // an argument that the called formula reads more than once is worked out once
    const hoisted = args.map((arg, i) => {
      const param = form.params[i] ?? '';
      return (uses(form).get(param) ?? 0) > 1 ? this.step(param, arg) : arg;
    });
    return printed(form, hoisted, this);
  }

  if(condition: Ref, whenTrue: () => Ref, whenFalse: () => Ref): Ref {
    const [a, b, c] = [scalar(condition), scalar(whenTrue()), scalar(whenFalse())];
    return atom(`IF(${a.text},${b.text},${c.text})`, a.value === undefined ? undefined : a.value === true ? b.value : c.value);
  }

  readonly leftOut = (): Ref => atom('0');
  readonly number = number;
  readonly name = named;
  readonly text = text;
  readonly of = part;
  readonly list = (items: readonly Ref[]): Ref => ({ items });
  readonly record = (parts: Readonly<Record<string, Ref>>): Ref => ({ parts });
  readonly neg = (a: Ref): Ref => negative(scalar(a));
  readonly not = (a: Ref): Ref => atom(`NOT(${scalar(a).text})`, denied(scalar(a).value));
  readonly binary = (op: BinaryOperator, a: Ref, b: Ref): Ref => binary(op, scalar(a), scalar(b));
}

function named(name: string): Ref {
  if (name === 'PI') return atom('PI()', Math.PI);
  throw new TypeError(`${name} stands for nothing`);
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

const used = new WeakMap<Form, ReadonlyMap<string, number>>();

/** How often the form reads each name. */
function uses(form: Form): ReadonlyMap<string, number> {
  const known = used.get(form);
  if (known !== undefined) return known;
  const counts = new Map<string, number>();
  visit(form, { name: met => void counts.set(met, (counts.get(met) ?? 0) + 1) });
  used.set(form, counts);
  return counts;
}

const inside = (ref: Scalar, level: Level): string => (isLooser(ref.level, level) ? `(${ref.text})` : ref.text);
/** To the right of − and ÷ an equal level needs brackets too. */
const right = (ref: Scalar, level: Level): string => (isLooser(level, ref.level) ? ref.text : `(${ref.text})`);
/** The text of a reference where anything may stand around it. */
export const operand = (ref: Scalar): string => inside(ref, 'atom');
export const negative = (ref: Scalar): Scalar => scalarOf(`-${operand(ref)}`, SIGN, negated(ref.value));

function binary(op: BinaryOperator, a: Scalar, b: Scalar): Scalar {
  const value = worth(op, a.value, b.value);
  switch (op) {
    case '+':
      return scalarOf(`${inside(a, 'sum')}+${inside(b, 'sum')}`, 'sum', value);
    case '-':
      return scalarOf(`${inside(a, 'sum')}-${right(b, 'sum')}`, 'sum', value);
    case '*':
      return scalarOf(`${inside(a, 'product')}*${inside(b, 'product')}`, 'product', value);
    case '/':
      return scalarOf(`${inside(a, 'product')}/${right(b, 'product')}`, 'product', value);
    case '^':
      return scalarOf(`${operand(a)}^${operand(b)}`, 'power', value);
    case 'and':
    case 'or':
      return atom(`${op.toUpperCase()}(${a.text},${b.text})`, value);
    default:
      return scalarOf(`${inside(a, 'sum')}${op satisfies RelationalOperator}${inside(b, 'sum')}`, 'relation', value);
  }
}

const plus = (a: Scalar, b: Scalar): Scalar => binary('+', a, b);
export const minus = (a: Scalar, b: Scalar): Scalar => binary('-', a, b);
const times = (a: Scalar, b: Scalar): Scalar => binary('*', a, b);
const total = (terms: readonly Scalar[]): Scalar => (terms.length === 0 ? number(0) : terms.reduce(plus));

const rowsOf = (list: Ref): readonly Value[] | undefined => {
  if ('range' in list) return list.values;
  const values = 'items' in list ? list.items.map(item => ('text' in item ? item.value : undefined)) : [undefined];
  return values.some(value => value === undefined) ? undefined : (values as Value[]);
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
  cbrt: a => valued(binary('^', scalar(a), atom('(1/3)')), a, M.cbrt),
  abs: each('ABS', M.abs),
  ln: each('LN', M.ln),
  min: each('MIN', M.min),
  max: each('MAX', M.max),
  wholeUp: a => valued(atom(`ROUNDUP(${minus(scalar(a), number(1e-9)).text},0)`), a, M.wholeUp),
  normalTail: a => valued(atom(`NORMSDIST(${negative(scalar(a)).text})`), a, M.normalTail),
  sum: list => ('range' in list ? atom(`SUM(${list.range})`, listWorth([list], M.sum)) : over([list], M.sum, a => a)),
  sumSquaredDifferences: (a, b) => over([a, b], M.sumSquaredDifferences, (x, y) => square(minus(x, y))),
  sumProducts: (a, b) => over([a, b], M.sumProducts, times),
  sumWidths: (...lists) => over(lists, M.sumWidths, (x = atom(''), u = atom(''), l = atom('')) => times(times(x, sign(x)), minus(u, l))),
  sumSquaredWidths: (...lists) =>
    over(lists, M.sumSquaredWidths, (x = atom(''), u = atom(''), l = atom('')) => square(times(x, minus(u, l)))),
  countWidths: (...lists) =>
    over(lists, M.countWidths, (x = atom(''), u = atom(''), l = atom('')) =>
      scalarOf(`0+(${times(x, minus(u, l)).text}<>0)`, 'sum', undefined),
    ),
  atMost: (a, b) => binary('<=', scalar(a), plus(scalar(b), number(1e-9))),
  atLeast: (a, b) => binary('>=', scalar(a), minus(scalar(b), number(1e-9))),
};

export interface CellFormula {
  readonly formula: string;
  readonly value?: Value;
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
  return printed(form, args, new Formulas(step ?? ((_name, formula) => `(${formula})`)));
}

function cells(ref: Ref): CellFormula | (CellFormula | CellFormula[])[] {
  if ('text' in ref) return ref.value === undefined ? { formula: ref.text } : { formula: ref.text, value: ref.value };
  if ('items' in ref) return ref.items.map(item => cells(item) as CellFormula | CellFormula[]);
  throw new TypeError('a formula must end in a value or a list of values');
}
