// The functions of ordinary sheets, as every program works them out: undefined where programs differ.
import { normalTail } from '../core/maths';
import type { CellError } from '../core/kinds';
import { BY_ZERO, finite, isFault, isRows, type Known, NO_NUMBER, NOT_FOUND, type One, rowsOf, scalar, withNumbers } from './known';
import { CONDITIONS } from './native-conditions';
import { hlookup, index, lookup, match, vlookup, xlookup } from './native-lookups';
import { TEXTS } from './native-texts';
import { lifted } from './operators';

const math =
  (of: (...numbers: number[]) => number) =>
  (args: readonly Known[]): Known =>
    withNumbers(args, (...numbers) => finite(of(...numbers)));

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
    const known = values.filter(value => typeof value === 'boolean');
    return wrong ?? (known.length < values.length ? undefined : of(known));
  };

/** As many digits as a program keeps: 1.005·100 is 100.5. */
const decimal = (value: number): number => Number(value.toPrecision(15));
const rounding = (of: (magnitude: number) => number) =>
  math((value, places = 0) => {
    const scale = 10 ** Math.trunc(places);
    return (Math.sign(value) * of(decimal(Math.abs(value) * scale))) / scale || 0;
  });

/** Up or down to a multiple: below 0, programs go different ways. */
const stepped =
  (of: (steps: number) => number) =>
  (args: readonly Known[]): Known =>
    withNumbers(args, (value = 0, step = 1) =>
      value < 0 || (step === 0 && of !== Math.ceil)
        ? undefined
        : step === 0
          ? 0
          : value > 0 && step < 0
            ? NO_NUMBER
            : of(decimal(value / step)) * step,
    );

/** To the nearest multiple. What is half way only as a decimal number goes up in one program and down in another. */
function rounded(value = 0, step = 0): Known {
  if (step === 0) return 0;
  if (value * step < 0) return NO_NUMBER;
  const steps = value / step;
  return decimal(steps) % 1 === 0.5 && steps % 1 !== 0.5 ? undefined : Math.round(decimal(steps)) * step;
}

/** The n-th of all numbers, from the largest down or the smallest up. */
const placed =
  (order: (a: number, b: number) => number) =>
  ([list, place]: readonly Known[]): Known => {
    const numbers = numbersOf([list]);
    if (numbers === undefined || 'cellError' in numbers) return numbers;
    return withNumbers([place], (n = 0) => (n < 1 || n > numbers.length ? NO_NUMBER : [...numbers].sort(order)[Math.trunc(n) - 1]));
  };

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? NaN) + (sorted[Math.floor(half)] ?? NaN)) / 2;
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

/** Every function of the allow-list but those that look at some of their arguments only: the evaluator knows them. */
export const NATIVE: Readonly<Record<string, (args: readonly Known[]) => Known>> = {
  ABS: math(Math.abs),
  ACOS: math(Math.acos),
  ASIN: math(Math.asin),
  ATAN: math(Math.atan),
  ATAN2: args => withNumbers(args, (x = NaN, y = NaN) => (x === 0 && y === 0 ? BY_ZERO : Math.atan2(y, x))),
  COS: math(Math.cos),
  SIN: math(Math.sin),
  TAN: math(Math.tan),
  SQRT: math(Math.sqrt),
  EXP: math(Math.exp),
  LN: math(Math.log),
  LOG10: math(Math.log10),
  PI: () => Math.PI,
  TRUE: () => true,
  FALSE: () => false,
  RADIANS: math((degrees = NaN) => (degrees * Math.PI) / 180),
  DEGREES: math((radians = NaN) => (radians * 180) / Math.PI),
  MIN: over(numbers => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  MAX: over(numbers => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  SUM: over(numbers => numbers.reduce((a, b) => a + b, 0)),
  SUMSQ: over(numbers => numbers.reduce((a, b) => a + b * b, 0)),
  AVERAGE: args => {
    const numbers = numbersOf(args);
    if (numbers === undefined || 'cellError' in numbers) return numbers;
    return numbers.length === 0 ? BY_ZERO : finite(numbers.reduce((a, b) => a + b, 0) / numbers.length);
  },
  MEDIAN: over(median),
  COUNT: args => (args.every(isRows) ? args.flatMap(arg => arg.flat()).filter(value => typeof value === 'number').length : undefined),
  COUNTA: args => (args.every(isRows) ? args.flatMap(arg => arg.flat()).filter(value => value !== null).length : undefined),
  LARGE: placed((a, b) => b - a),
  SMALL: placed((a, b) => a - b),
  SUMPRODUCT: sumproduct,
  ROUND: rounding(magnitude => Math.round(magnitude)),
  ROUNDUP: rounding(Math.ceil),
  ROUNDDOWN: rounding(Math.floor),
  CEILING: stepped(Math.ceil),
  FLOOR: stepped(Math.floor),
  'CEILING.MATH': ([value, step]) => stepped(Math.ceil)([value, step ?? 1]),
  'FLOOR.MATH': ([value, step]) => stepped(Math.floor)([value, step ?? 1]),
  MROUND: args => withNumbers(args, rounded),
  TRUNC: rounding(Math.floor),
  SIGN: math(Math.sign),
  POWER: args => (args.length === 2 ? withNumbers(args, (x = 0, y = 0) => (x === 0 && y === 0 ? undefined : finite(x ** y))) : undefined),
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
  ISERROR: ([value]) => {
    const single = scalar(value);
    return single === undefined ? undefined : isFault(single);
  },
  INDEX: index,
  MATCH: match,
  LOOKUP: lookup,
  VLOOKUP: vlookup,
  HLOOKUP: hlookup,
  XLOOKUP: xlookup,
  ...TEXTS,
  ...CONDITIONS,
  CONVERT: converted,
  NORMSDIST: math((z = NaN) => normalTail(-z)),
  NORMSINV: args => withNumbers(args, share => (share === undefined || share <= 0 || share >= 1 ? NO_NUMBER : normalPoint(share))),
  NA: () => NOT_FOUND,
};
