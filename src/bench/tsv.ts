// Values as text that every spreadsheet takes from the clipboard.
import type { Cell } from '../core/kinds';

export function shown(value: Cell | null): string {
  if (value === null) return '';
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}

const field = (text: string): string => (/["\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

export function tsv(rows: readonly (readonly (Cell | null)[])[]): string {
  return rows.map(row => row.map(value => field(shown(value))).join('\t')).join('\n');
}
