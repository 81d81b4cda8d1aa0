// Reading one value of a published table, in core units. Nothing is interpolated or extrapolated.
import type { Column, Reading, Table } from '../standards/table';
import { notInTable } from './refuse';

/** What a unit of a table is in the core's own. */
export const MM: Readonly<Record<string, number>> = { mm: 1, in: 25.4, '1/in': 1, deg: 1, µm: 0.001 };

export function columnOf(table: Table, key: string): Column | undefined {
  return table.columns.find(column => column.key === key);
}

/** "ISO 7045 (M1.6 to M6)". */
export function tableRange(table: Table): string {
  return `${table.standard} (${table.rows[0]?.[0]} to ${table.rows[table.rows.length - 1]?.[0]})`;
}

export function hasRow(table: Table, row: string): boolean {
  return table.rows.some(([key]) => key === row);
}

/** The value; undefined if the table has a gap or no such row or column. */
export function valueOrNone(table: Table, row: string, key: string): number | undefined {
  const i = table.columns.findIndex(column => column.key === key);
  const value = table.rows.find(([name]) => name === row)?.[i + 1];
  return i < 0 || typeof value !== 'number' ? undefined : value * (MM[table.columns[i]?.unit ?? ''] ?? 1);
}

export function valueOf(table: Table, row: string, key: string): number {
  const value = valueOrNone(table, row, key);
  if (value !== undefined) return value;
  const title = columnOf(table, key)?.title ?? key;
  throw notInTable(hasRow(table, row) ? `${title} of ${row} is not held for ${table.standard}` : `${row} is not in ${tableRange(table)}`);
}

/** How one value is held: its own exception, or its column's word. */
export function heldOf(table: Table, row: string, key: string): string {
  return table.exceptions?.find(e => e.row === row && e.key === key)?.held ?? columnOf(table, key)?.held ?? '';
}

/** The sum of what was read. */
export function worthOf(readings: readonly Reading[]): number {
  return readings.reduce((sum, { table, row, key, times = 1, over }) => {
    const value = valueOf(table, row, key);
    return sum + (over === undefined ? times * value : over / value);
  }, 0);
}
