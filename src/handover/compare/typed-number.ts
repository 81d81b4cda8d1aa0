// A number that came back as text: with a decimal comma, or with its unit.
import type { Cell } from '../../core/kinds';
import { readAnyQuantity } from '../../core/read/read-quantity';
import { isQuantity } from '../compile/inputs';
import type { SeenGrid } from './seen';

/** Digits alone, as a person types them. */
export const typedNumber = (value: Cell | null): number | undefined =>
  typeof value === 'string' && /^\s*[+-]?\d+(?:[.,]\d+)?\s*$/.test(value) ? Number(value.replace(',', '.')) : undefined;

/** In core units. */
export const typedQuantity = (value: Cell | null): number | undefined =>
  typedNumber(value) ?? (typeof value === 'string' && isQuantity(value) ? readAnyQuantity(value)?.value : undefined);

const INCHES = /^(?:in|inch|inches|")$|[([]in[)\]]\s*$/i;

/** Beside or below a word for it: a bare number there is no number of a core unit. */
export function isInInches(grid: SeenGrid, row: number, column: number): boolean {
  const isWord = (r: number, c: number): boolean => INCHES.test(String(grid.value(r, c) ?? ''));
  return grid.filled(row).some(c => isWord(row, c)) || Array.from({ length: row }, (_, r) => r).some(r => isWord(r, column));
}
