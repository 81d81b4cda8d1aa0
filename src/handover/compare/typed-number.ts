// A number that came back as text: with a decimal comma, or with its unit.
import type { Cell } from '../../core/kinds';
import { readAnyQuantity } from '../../core/read/read-quantity';
import { isQuantity } from '../compile/inputs';
import type { SeenGrid } from './seen';

/** Digits alone, as a person types them; `1,000` may be 1 or 1000. */
export const typedNumber = (value: Cell | null): number | undefined =>
  typeof value === 'string' && /^\s*[+-]?(?:\d+(?:[.]\d+)?|0,\d+|\d+,(?!\d{3}\s*$)\d+)\s*$/.test(value)
    ? Number(value.replace(',', '.'))
    : undefined;

/** In core units. */
const typedQuantity = (value: Cell | null): number | undefined =>
  typedNumber(value) ?? (typeof value === 'string' && isQuantity(value) ? readAnyQuantity(value)?.value : undefined);

const INCHES = /^(?:in|inch|inches|")$|[([]in[)\]]\s*$/i;

/** Beside or below a word for it: a bare number there is no number of a core unit. */
function isInInches(grid: SeenGrid, row: number, column: number): boolean {
  const isWord = (r: number, c: number): boolean => INCHES.test(String(grid.value(r, c) ?? ''));
  return grid.filled(row).some(c => isWord(row, c)) || Array.from({ length: row }, (_, r) => r).some(r => isWord(r, column));
}

export interface Meaning {
  /** As it is written into a cell. */
  readonly value: Cell | null;
  /** What a text stands for, in core units. */
  readonly means?: number;
}

/** What came back for a cell that was sent. */
export function meaningOf(sent: SeenGrid, row: number, column: number, value: Cell | null): Meaning {
  const was = sent.cell(row, column).value;
  if (typeof value !== 'string' || (typeof was !== 'number' && typedQuantity(was) === undefined)) return { value };
  const bare = typedNumber(value);
  if (bare !== undefined) return { value: bare };
  const means = isInInches(sent, row, column) ? undefined : typedQuantity(value);
  return { value, ...(means !== undefined && { means }) };
}

/** Of a size that was measured. */
export function resultOf(value: Cell | null): Meaning {
  const means = typedQuantity(value);
  return { value, ...(means !== undefined && { means }) };
}
