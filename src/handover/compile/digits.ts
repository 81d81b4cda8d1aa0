// How many digits of a value are shown; the value has all of them.
import type { Cell } from '../../core/kinds';

/** As many as a drawing would have. Whole numbers and words stay as they are. */
export function digitsOf(value: Cell | undefined): { readonly format?: string } {
  if (typeof value !== 'number' || Number.isInteger(value)) return {};
  const size = Math.abs(value);
  return { format: size >= 100 ? '0.0' : size >= 1 ? '0.00' : '0.000' };
}

/** One place more than a drawing, for reading a calculation. */
export const stepDigits = (value: Cell | undefined): { readonly format: string } =>
  typeof value === 'number' && !Number.isInteger(value) ? { format: Math.abs(value) >= 100 ? '0.0#' : '0.0###' } : { format: 'General' };
