// The operators of ordinary sheets, as every program works them out: undefined where programs differ.
import type { Cell } from '../core/kinds';
import {
  allKnown,
  BY_ZERO,
  finite,
  isFault,
  joinedTexts,
  type Known,
  type KnownRows,
  numberOf,
  isOne,
  type One,
  printed,
  rowsOf,
} from './known';

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
export function ordered(a: Cell | null, b: Cell | null, operator: string): number | undefined {
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

function joined(a: Cell | null, b: Cell | null): One {
  const [left, right] = [printed(a), printed(b)];
  return left === undefined || right === undefined ? undefined : joinedTexts([left, right]);
}

/** An operator over rectangles, cell by cell; a single row or column goes along every other one. */
export function lifted(of: (...values: One[]) => One, args: readonly Known[]): Known {
  if (args.every(isOne)) return of(...args);
  const all = args.map(rowsOf).filter(rows => rows !== undefined);
  if (all.length < args.length) return undefined;
  const most = (of: (rows: KnownRows) => number): number => all.reduce((size, rows) => Math.max(size, of(rows)), 0);
  const [height, width] = [most(rows => rows.length), most(rows => rows[0]?.length ?? 0)];
  const at = (rows: KnownRows, r: number, c: number): One => rows[rows.length === 1 ? 0 : r]?.[rows[0]?.length === 1 ? 0 : c];
  return allKnown(
    Array.from({ length: height }, (_, r) => Array.from({ length: width }, (__, c) => of(...all.map(rows => at(rows, r, c))))),
  );
}
