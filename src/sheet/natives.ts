// The functions and operators of ordinary sheets, as every program works them out. Nothing where programs differ.
import { normalTail } from '../core/maths';
import type { Cell, CellError } from '../core/kinds';

/** A value, a rectangle of values, or nothing where it is not known here. */
export type Known = One | Rows;
export type One = Cell | null | CellError | undefined;
export type Rows = readonly (readonly (Cell | null | CellError)[])[];

export const ERROR_CODE = /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!)$/;

export const isRows = (value: Known): value is Rows => Array.isArray(value);
export const isFault = (value: Known): value is CellError => typeof value === 'object' && value !== null && 'cellError' in value;
/** A rectangle of one cell is that cell. */
export const one = (value: Known): Known => (isRows(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value);
export const scalar = (value: Known): One => {
  const single = one(value);
  return isRows(single) ? undefined : single;
};
const rowsOf = (value: Known): Rows | undefined => (isRows(value) ? value : value === undefined ? undefined : [[value]]);

const fault = (cellError: string): CellError => ({ cellError });
const [NOT_FOUND, NO_NUMBER, NO_VALUE, BY_ZERO, NO_CELL] = ['#N/A', '#NUM!', '#VALUE!', '#DIV/0!', '#REF!'].map(fault) as [
  CellError,
  CellError,
  CellError,
  CellError,
  CellError,
];

/** A text with a figure in it may be read as a number or date, or not, by the program and its language. */
const textAsNumber = (text: string): CellError | undefined => (/\d/.test(text) || text.trim() === '' ? undefined : NO_VALUE);

function numberOf(value: One): number | CellError | undefined {
  if (typeof value === 'string') return textAsNumber(value);
  return typeof value === 'boolean' ? Number(value) : value === null ? 0 : value;
}

const finite = (value: number): number | CellError => (Number.isFinite(value) ? value : NO_NUMBER);

/** All arguments as numbers; the first error among them goes along. */
function withNumbers(args: readonly Known[], of: (...numbers: number[]) => Known): Known {
  const numbers: number[] = [];
  for (const arg of args) {
    const number = numberOf(scalar(arg));
    if (typeof number !== 'number') return number;
    numbers.push(number);
  }
  return of(...numbers);
}

const math =
  (of: (...numbers: number[]) => number) =>
  (args: readonly Known[]): Known =>
    withNumbers(args, (...numbers) => finite(of(...numbers)));

export function unary(operator: string, value: One): One {
  if (operator === '+' || operator === '@') return value;
  const number = numberOf(value);
  return typeof number !== 'number' ? number : operator === '-' ? -number : operator === '%' ? number / 100 : undefined;
}

const sign = (a: number, b: number): number => (Math.abs(a - b) <= 1e-15 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : a - b);

const ARITHMETIC: Readonly<Record<string, (a: number, b: number) => One>> = {
  '+': (a, b) => finite(a + b),
  '-': (a, b) => finite(a - b),
  '*': (a, b) => finite(a * b),
  '/': (a, b) => (b === 0 ? BY_ZERO : finite(a / b)),
  '^': (a, b) => (a === 0 && b === 0 ? undefined : finite(a ** b)),
};
const COMPARISONS: Readonly<Record<string, (order: number) => boolean>> = {
  '=': order => order === 0,
  '<>': order => order !== 0,
  '<': order => order < 0,
  '<=': order => order <= 0,
  '>': order => order > 0,
  '>=': order => order >= 0,
};

export function binary(operator: string, a: One, b: One): One {
  if (a === undefined || b === undefined) return undefined;
  if (isFault(a)) return a;
  if (isFault(b)) return b;
  if (operator === '&') return joined(a, b);
  const compare = COMPARISONS[operator];
  if (compare !== undefined) {
    const order = ordered(a, b, operator);
    return order === undefined ? undefined : compare(order);
  }
  const [x, y] = [numberOf(a), numberOf(b)];
  return typeof x !== 'number' ? x : typeof y !== 'number' ? y : ARITHMETIC[operator]?.(x, y);
}

/** Numbers come before texts, texts before truths; a blank is the least of its partner's kind. */
function ordered(a: Cell | null, b: Cell | null, operator: string): number | undefined {
  const rank = (value: Cell | null): number | undefined =>
    value === null ? undefined : ['number', 'string', 'boolean'].indexOf(typeof value);
  const [x, y] = [rank(a) ?? rank(b) ?? 0, rank(b) ?? rank(a) ?? 0];
  if (x !== y) return x - y;
  if (x === 0) return sign(Number(a), Number(b));
  if (x === 2) return Number(a) - Number(b);
  const isSame = sameText(String(a ?? ''), String(b ?? ''));
  return isSame ? 0 : operator === '=' || operator === '<>' ? 1 : undefined;
}

const sameText = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** How other numbers print depends on the program. */
const printed = (value: One): string | undefined =>
  typeof value === 'string'
    ? value
    : value === null
      ? ''
      : typeof value === 'number' && Number.isInteger(value)
        ? String(value)
        : undefined;

function joined(a: Cell | null, b: Cell | null): One {
  const [left, right] = [printed(a), printed(b)];
  return left === undefined || right === undefined ? undefined : left + right;
}

/** An operator over rectangles, cell by cell; a single row or column goes along every other one. */
export function lifted(of: (...values: One[]) => One, args: readonly Known[]): Known {
  if (!args.some(isRows)) return of(...(args as One[]));
  const rectangles = args.map(rowsOf);
  if (rectangles.includes(undefined)) return undefined;
  const all = rectangles as Rows[];
  const height = Math.max(...all.map(rows => rows.length));
  const width = Math.max(...all.map(rows => rows[0]?.length ?? 0));
  const at = (rows: Rows, r: number, c: number): One => rows[rows.length === 1 ? 0 : r]?.[rows[0]?.length === 1 ? 0 : c];
  const result = Array.from({ length: height }, (_, r) => Array.from({ length: width }, (__, c) => of(...all.map(rows => at(rows, r, c)))));
  return result.some(row => row.includes(undefined)) ? undefined : (result as Rows);
}

/** The numbers of all arguments: of a range its numbers only, alone what can be read as one. */
function numbersOf(args: readonly Known[]): readonly number[] | CellError | undefined {
  const numbers: number[] = [];
  for (const arg of args) {
    if (isRows(arg)) {
      for (const value of arg.flat()) {
        if (isFault(value)) return value;
        if (typeof value === 'number') numbers.push(value);
      }
    } else if (isFault(arg)) return arg;
    else if (typeof arg === 'number') numbers.push(arg);
    else if (arg !== null) return undefined;
  }
  return numbers;
}

const over =
  (of: (numbers: readonly number[]) => number) =>
  (args: readonly Known[]): Known => {
    const numbers = numbersOf(args);
    return numbers === undefined || 'cellError' in numbers ? numbers : finite(of(numbers));
  };

export const isTruth = (value: One): boolean | CellError | undefined =>
  typeof value === 'string' ? undefined : value === undefined || isFault(value) ? value : Boolean(value);

const truths =
  (of: (values: readonly boolean[]) => boolean) =>
  (args: readonly Known[]): Known => {
    // programs differ in what a blank cell is worth here
    const values = args.map(arg => (arg === null ? undefined : isTruth(scalar(arg))));
    const wrong = values.find(isFault);
    return wrong ?? (values.includes(undefined) ? undefined : of(values as boolean[]));
  };

/** As many digits as a program keeps: 1.005·100 is 100.5. */
const decimal = (value: number): number => Number(value.toPrecision(15));
const rounding = (of: (magnitude: number) => number) =>
  math((value, places = 0) => {
    const scale = 10 ** Math.trunc(places);
    return (Math.sign(value) * of(decimal(Math.abs(value) * scale))) / scale || 0;
  });

const textual =
  (of: (text: string, ...numbers: number[]) => Known) =>
  ([first, ...rest]: readonly Known[]): Known => {
    const value = scalar(first);
    if (isFault(value)) return value;
    const text = printed(value);
    return text === undefined ? undefined : withNumbers(rest, (...numbers) => of(text, ...numbers));
  };

const WILD = /[*?~]/;

/** Position of a value in a row or column, counted from 0: the same one, or the last that is not above it. A number is never a text. */
function found(value: One, list: readonly One[], isSorted: boolean): number | CellError | undefined {
  if (value === undefined || isFault(value)) return value;
  if (value === null || list.some(isFault)) return value === null ? NOT_FOUND : undefined;
  if (typeof value === 'string' && WILD.test(value)) return undefined;
  const order = (item: One): number | undefined =>
    item === null || item === undefined || isFault(item) || typeof item !== typeof value
      ? undefined
      : ordered(item, value, isSorted ? '<' : '=');
  if (!isSorted) {
    const i = list.findIndex(item => order(item) === 0);
    return i < 0 ? NOT_FOUND : i;
  }
  if (typeof value !== 'number') return undefined;
  const i = list.reduce((last: number, item, n) => ((order(item) ?? 1) <= 0 ? n : last), -1);
  return i < 0 ? NOT_FOUND : i;
}

const line = (value: Known): readonly One[] | undefined => {
  const rows = rowsOf(value);
  return rows === undefined || (rows.length > 1 && (rows[0]?.length ?? 0) > 1) ? undefined : rows.flat();
};

const isExact = (flag: Known): boolean => scalar(flag) === false || scalar(flag) === 0;

function match([value, list, type = 1]: readonly Known[]): Known {
  const items = line(list);
  if (items === undefined || (type !== 0 && type !== 1 && type !== false)) return undefined;
  const i = found(scalar(value), items, !isExact(type));
  return typeof i === 'number' ? i + 1 : i;
}

function index([table, first, second]: readonly Known[]): Known {
  const rows = rowsOf(table);
  if (isFault(table)) return table;
  if (rows === undefined) return undefined;
  return withNumbers([first, ...(second === undefined ? [] : [second])], (a, b) => {
    const [row, column] = (rows.length === 1 && b === undefined ? [1, a] : [a, b ?? 1]).map(Math.trunc) as [number, number];
    if (row < 1 || column < 1) return undefined;
    const line_ = rows[row - 1];
    return line_ === undefined || column > line_.length ? NO_CELL : line_[column - 1];
  });
}

function vlookup([value, table, column, flag = true]: readonly Known[]): Known {
  const rows = rowsOf(table);
  if (rows === undefined) return undefined;
  const i = found(
    scalar(value),
    rows.map(row => row[0]),
    !isExact(flag),
  );
  return typeof i === 'number' ? index([rows, i + 1, column]) : i;
}

function lookup([value, list, results = list]: readonly Known[]): Known {
  const [items, values] = [line(list), line(results)];
  if (items === undefined || values === undefined) return undefined;
  const i = found(scalar(value), items, true);
  return typeof i === 'number' ? (values[i] ?? NOT_FOUND) : i;
}

function sumproduct(args: readonly Known[]): Known {
  const product = lifted(
    (...values) => values.reduce((a, b) => (isFault(a) ? a : isFault(b) ? b : Number(a) * (typeof b === 'number' ? b : 0)), 1),
    args,
  );
  const rows = rowsOf(product);
  return rows === undefined ? undefined : over(numbers => numbers.reduce((a, b) => a + b, 0))([rows]);
}

/** Units of CONVERT by what they measure, each as so many of the first one. */
const UNITS: readonly Readonly<Record<string, number>>[] = [
  { m: 1, mm: 1e-3, cm: 1e-2, km: 1e3, um: 1e-6, in: 0.0254, ft: 0.3048, yd: 0.9144 },
  { N: 1, kN: 1e3, mN: 1e-3, lbf: 4.4482216152605 },
  { Pa: 1, kPa: 1e3, MPa: 1e6, psi: 6894.757293168 },
  { g: 1, kg: 1e3, mg: 1e-3, lbm: 453.59237 },
];

function converted([value, from, to]: readonly Known[]): Known {
  if (typeof from !== 'string' || typeof to !== 'string') return undefined;
  const units = UNITS.find(each => from in each && to in each);
  return units === undefined ? undefined : withNumbers([value], x => (x * (units[from] ?? NaN)) / (units[to] ?? NaN));
}

/** The point below which this share of the normal distribution lies. */
function normalPoint(share: number): number {
  let [low, high] = [-40, 40];
  for (let n = 0; n < 100; n++) {
    const middle = (low + high) / 2;
    if (normalTail(-middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Every function of the allow-list but IF and IFERROR, which look at some of their arguments only. */
export const NATIVE: Readonly<Record<string, (args: readonly Known[]) => Known>> = {
  ABS: math(Math.abs),
  ACOS: math(Math.acos),
  ASIN: math(Math.asin),
  ATAN: math(Math.atan),
  ATAN2: args => withNumbers(args, (x, y) => (x === 0 && y === 0 ? BY_ZERO : Math.atan2(y as number, x as number))),
  COS: math(Math.cos),
  SIN: math(Math.sin),
  TAN: math(Math.tan),
  SQRT: math(Math.sqrt),
  EXP: math(Math.exp),
  LN: math(Math.log),
  LOG10: math(Math.log10),
  PI: () => Math.PI,
  RADIANS: math(degrees => ((degrees as number) * Math.PI) / 180),
  DEGREES: math(radians => ((radians as number) * 180) / Math.PI),
  MIN: over(numbers => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  MAX: over(numbers => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  SUM: over(numbers => numbers.reduce((a, b) => a + b, 0)),
  SUMSQ: over(numbers => numbers.reduce((a, b) => a + b * b, 0)),
  SUMPRODUCT: sumproduct,
  ROUND: rounding(magnitude => Math.round(magnitude)),
  ROUNDUP: rounding(Math.ceil),
  ROUNDDOWN: rounding(Math.floor),
  CEILING: args =>
    withNumbers(args, (value = 0, step = 1) =>
      step === 0 ? 0 : value > 0 && step < 0 ? NO_NUMBER : value < 0 ? undefined : Math.ceil(decimal(value / step)) * step,
    ),
  INT: math(Math.floor),
  MOD: args => withNumbers(args, (value = 0, by = 0) => (by === 0 ? BY_ZERO : value - by * Math.floor(value / by))),
  AND: truths(values => values.every(Boolean)),
  OR: truths(values => values.some(Boolean)),
  NOT: ([value]) => {
    const truth = isTruth(scalar(value));
    return typeof truth === 'boolean' ? !truth : truth;
  },
  ISNUMBER: ([value]) => {
    const single = scalar(value);
    return single === undefined ? undefined : typeof single === 'number';
  },
  INDEX: index,
  MATCH: match,
  LOOKUP: lookup,
  VLOOKUP: vlookup,
  TRIM: textual(text => text.trim().replace(/ +/g, ' ')),
  LEFT: textual((text, count = 1) => (count < 0 ? NO_VALUE : text.slice(0, Math.trunc(count)))),
  MID: textual((text, from = 0, count = 0) =>
    from < 1 || count < 0 ? NO_VALUE : text.slice(Math.trunc(from) - 1, Math.trunc(from) - 1 + Math.trunc(count)),
  ),
  FIND: ([part, text, from = 1]) => {
    const sought = printed(scalar(part));
    return sought === undefined
      ? undefined
      : textual((whole, start = 1) => (start < 1 || !whole.includes(sought, start - 1) ? NO_VALUE : whole.indexOf(sought, start - 1) + 1))([
          text,
          from,
        ]);
  },
  LEN: textual(text => text.length),
  SUBSTITUTE: ([text, part, by, which]) => {
    const [old, put] = [printed(scalar(part)), printed(scalar(by))];
    if (old === undefined || put === undefined || which !== undefined) return undefined;
    return textual(whole => (old === '' ? whole : whole.split(old).join(put)))([text]);
  },
  CONVERT: converted,
  NORMSDIST: math(z => normalTail(-(z as number))),
  NORMSINV: args => withNumbers(args, share => (share === undefined || share <= 0 || share >= 1 ? NO_NUMBER : normalPoint(share))),
  NA: () => NOT_FOUND,
};
