// Tables of tolerances by size: "over … up to".
import type { Reading, Table } from '../../standards/table';
import { atLeast, atMost } from '../maths';
import { notInTable } from '../refuse';
import { valueOf } from '../table';

/** The band that holds the size, which is the first argument. The first band also holds its own lower limit. */
export function bandReading(table: Table, sizeMm: number, key: string): Reading {
  const bands = table.rows.map(([band]) => ({ band, overMm: valueOf(table, band, 'over'), upToMm: valueOf(table, band, 'upTo') }));
  const found = atLeast(sizeMm, bands[0]?.overMm ?? 0) ? bands.find(({ upToMm }) => atMost(sizeMm, upToMm)) : undefined;
  if (found === undefined)
    throw notInTable(
      `size is ${sizeMm} mm: outside ${table.standard}, which goes from ${bands[0]?.overMm} to ${bands[bands.length - 1]?.upToMm} mm`,
      'size',
    );
  return { table, row: found.band, key, bandOf: 0 };
}
