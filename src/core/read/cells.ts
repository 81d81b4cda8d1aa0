// What was handed in, cell or range, before anything is read from it: blank, error, rows.
import type { CellError } from '../kinds';
import { errorName, quoted, wrongInput } from '../refuse';

export const isCellError = (raw: unknown): raw is CellError => typeof raw === 'object' && raw !== null && 'cellError' in raw;
export const isEmptyText = (raw: unknown): boolean => typeof raw === 'string' && raw.trim() === '';
/** Empty: a blank cell as some hosts send it, a left-out argument, empty text. */
export const isEmpty = (raw: unknown): boolean => raw === null || raw === undefined || isEmptyText(raw);
/** Blank: empty, or the bare 0 that other hosts send for a blank cell. */
export const isBlank = (raw: unknown): boolean => isEmpty(raw) || raw === 0;

/** How a message shows what was given. */
export function shown(raw: unknown): string {
  if (typeof raw === 'string') return quoted(raw);
  if (isCellError(raw)) return errorName(raw);
  if (Array.isArray(raw)) return `a range of ${raw.length} × ${Array.isArray(raw[0]) ? raw[0].length : 1} cells`;
  if (typeof raw === 'boolean') return raw ? 'TRUE' : 'FALSE';
  if (typeof raw === 'object' && raw !== null) return 'a value of another kind';
  return isEmpty(raw) ? 'blank' : String(raw);
}

export const rowsOf = (range: readonly unknown[]): unknown[][] => range.map(row => (Array.isArray(row) ? (row as unknown[]) : [row]));

/** A range as rows of cells; a 1 × 1 range is its cell. */
export function cellOrRows(raw: unknown): unknown {
  if (!Array.isArray(raw)) return raw;
  const rows = rowsOf(raw);
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

/** One row or column as a list; a single value is a list of one. */
export function asList(raw: unknown): readonly unknown[] {
  if (!Array.isArray(raw)) return [raw];
  const rows = rowsOf(raw);
  if (rows.length > 1 && rows.some(row => row.length > 1)) throw wrongInput('give one row or one column');
  return rows.length > 1 ? rows.map(row => row[0]) : (rows[0] ?? []);
}

/** Last row that is not blank, plus one. */
export function usedLength(raw: unknown): number {
  const list = asList(raw);
  let n = list.length;
  while (n > 0 && isBlank(list[n - 1])) n--;
  return n;
}
