// Values as text: to read, and as every spreadsheet takes it from the clipboard.
import type { Cell } from '../core/kinds';

/** More digits say nothing of a part, and the last of sixteen are noise. */
const DIGITS = 6;

function exact(value: Cell | null): string {
  if (value === null) return '';
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}

/** What stands before the point stays whole. */
export function rounded(value: Cell | null): string {
  if (typeof value !== 'number') return exact(value);
  const whole = Math.trunc(Math.abs(value)).toString().length;
  return String(Number(value.toPrecision(Math.min(15, Math.max(DIGITS, whole)))));
}

const field = (text: string): string => (/["\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

export function tsv(rows: readonly (readonly (Cell | null)[])[]): string {
  return rows.map(row => row.map(value => field(exact(value))).join('\t')).join('\n');
}
