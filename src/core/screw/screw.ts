// Standard data in cells that is more than one look-up.
import type { Deviation } from '../read/deviation';
import { isCountersunk, type Head } from './head';
import { lengthDeviation, standardLengthsMm } from './length';
import type { Size } from './size';
import { heldOf, valueOrNone } from '../table';
import type { Table } from '../../standards/table';
import { type End, threadRow, threadTable } from './thread';

export function standardLengths(size: Size): number[][] {
  return standardLengthsMm(size).map(lengthMm => [lengthMm]);
}

export function lengthTolerances(size: Size, lengthMm: number, end: End): number[] {
  const { upperMm, lowerMm }: Deviation = lengthDeviation(size, lengthMm, end);
  return [lowerMm, upperMm];
}

type CardRow = [quantity: string, value: number | string, unit: string, limit: string, standard: string, held: string];

const edition = (table: Table): string => `${table.standard}:${table.edition}`;

function tableRows(table: Table, row: string): CardRow[] {
  return table.columns.flatMap(({ key, title, unit, limit }): CardRow[] => {
    const value = valueOrNone(table, row, key);
    if (value === undefined) return [];
    // lengths are shown in mm, whatever the table prints
    return [[title, value, unit === 'in' ? 'mm' : unit, limit ?? '–', edition(table), heldOf(table, row, key)]];
  });
}

/** Everything that is held for one screw with its head. */
export function screwCard(size: Size, head: Head): CardRow[] {
  const rows: CardRow[] = [
    ['size', size.text, '–', '–', edition(threadTable(size)), '–'],
    ['head', head.style, '–', '–', edition(head.table), '–'],
  ];
  if (isCountersunk(head))
    rows.push(['head angle (included)', head.angleDeg ?? '–', '°', 'nominal', edition(head.table), 'read in secondary copies']);
  rows.push(...tableRows(threadTable(size), threadRow(size)), ...tableRows(head.table, size.gauge));
  return rows;
}
