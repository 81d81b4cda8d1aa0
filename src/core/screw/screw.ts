// Standard data in cells that is more than one look-up.
import type { Deviation } from '../read/deviation';
import { isCountersunk, type Head } from './head';
import { GIVEN } from './own';
import { lengthDeviation, standardLengthsMm } from './length';
import type { Size } from './size';
import { heldOf, valueOrNone } from '../table';
import type { Table } from '../../standards/table';
import { type End, threadRow, threadTable } from './thread';

/**
 * Standard nominal lengths, mm, rising, in one column.
 * size of the screw by name.
 * SCREW.LENGTHS: what the table does not hold is refused.
 * Source: ISO 888, ISO 7049, ASME B18.6.3; ISO 4759-1 limits (read in secondary copies; inch list and some tolerances from memory).
 */
export function standardLengths(size: Size): number[][] {
  return standardLengthsMm(size).map(lengthMm => [lengthMm]);
}

/**
 * Lower and upper deviation of a screw length, mm, in one row.
 * size of the screw by name; L nominal length, mm; end cone or flat.
 * SCREW.LENGTH.TOL accepts L above 0 mm; a length that the table does not hold is refused.
 * Source: ISO 888, ISO 7049, ASME B18.6.3; ISO 4759-1 limits (read in secondary copies; inch list and some tolerances from memory).
 */
export function lengthTolerances(size: Size, lengthMm: number, end: End): number[] {
  const { upperMm, lowerMm }: Deviation = lengthDeviation(size, lengthMm, end);
  return [lowerMm, upperMm];
}

type CardRow = [quantity: string, value: number | string, unit: string, limit: string, standard: string, held: string];

const edition = (table: Table): string => (table.edition === GIVEN ? GIVEN : `${table.standard}:${table.edition}`);

function tableRows(table: Table, row: string): CardRow[] {
  return table.columns.flatMap(({ key, title, unit, limit }): CardRow[] => {
    const value = valueOrNone(table, row, key);
    if (value === undefined) return [];
    // lengths are shown in mm, whatever the table prints
    return [[title, value, unit === 'in' ? 'mm' : unit, limit ?? '–', edition(table), heldOf(table, row, key)]];
  });
}

/**
 * Everything that is held for one screw with its head: quantity, value, unit, limit, standard and edition, how held.
 * size of the screw by name; head standard or trade word.
 * SCREW.CARD: a head that is not held for the size is refused.
 * Source: ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B) (read in secondary copies; each value says how in SCREW.CARD);
 * ISO 7045, 14583, 1580, 1207, 4762, 7380-1, 7046, 7047, 7049, 14585, 7050, 7051; DIN 7981; ASME B18.6.3 (read in secondary copies;
 * each value says how in SCREW.CARD).
 */
export function screwCard(size: Size, head: Head): CardRow[] {
  const { own } = size;
  const rows: CardRow[] = [
    ['size', size.text, '–', '–', edition(threadTable(size)), '–'],
    ['head', head.style, '–', '–', edition(head.table), '–'],
  ];
  if (isCountersunk(head))
    rows.push([
      'head angle (included)',
      head.angleDeg ?? '–',
      '°',
      'nominal',
      edition(head.table),
      own === undefined ? 'read in secondary copies' : GIVEN,
    ]);
  rows.push(...tableRows(threadTable(size), threadRow(size)));
  if (own === undefined) rows.push(...tableRows(head.table, size.gauge));
  else {
    if (own.lengths !== undefined) rows.push(['lengths', own.lengths.rows.map(([length]) => length).join(' '), 'mm', '–', GIVEN, GIVEN]);
    if (own.kind !== undefined) rows.push(['thread', own.kind, '–', '–', GIVEN, GIVEN]);
  }
  return rows;
}
