// Standard lengths, their tolerances, and the part of the point that carries no full thread.
import { ASME_B18_6_3_LENGTHS } from '../../standards/asme-b18-6-3-lengths';
import { ASME_B18_6_3_LENGTH_TOLERANCES } from '../../standards/asme-b18-6-3-length-tolerances';
import { ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES } from '../../standards/asme-b18-6-3-tapping-length-tolerances';
import { ISO_4759_1_LENGTH_LIMITS } from '../../standards/iso4759-1-length-limits';
import { ISO_7049_LENGTH_TOLERANCES } from '../../standards/iso7049-length-tolerances';
import { ISO_7049_TAPPING_SCREW_LENGTHS } from '../../standards/iso7049-tapping-screw-lengths';
import { ISO_888_LENGTHS } from '../../standards/iso888-lengths';
import type { Table } from '../../standards/table';
import { notInTable } from '../refuse';
import { valueOf, valueOrNone, worthOf } from '../table';
import type { Deviation } from '../read/deviation';
import { ownLengths, ownReading } from './own';
import type { Size } from './size';
import { type End, type Screw, threadTable } from './thread';

export const lengthTable = ({ family, own }: Size): Table =>
  own !== undefined
    ? ownLengths(own)
    : family === 'M'
      ? ISO_888_LENGTHS
      : family === 'ST'
        ? ISO_7049_TAPPING_SCREW_LENGTHS
        : ASME_B18_6_3_LENGTHS;

/** Standard nominal lengths, rising. */
export function standardLengthsMm(size: Size): readonly number[] {
  threadTable(size);
  const table = lengthTable(size);
  const held = lengthsIn.get(table) ?? table.rows.map(([row]) => valueOf(table, row, 'length'));
  lengthsIn.set(table, held);
  return held;
}

const lengthsIn = new WeakMap<Table, readonly number[]>();

/** Two lengths are the same within this: inch lengths are converted. */
const SAME_MM = 1e-6;

/** The row for "up to" this length. */
function bandUpTo(table: Table, lengthMm: number): string {
  // the last band of some tables is open
  const band = table.rows.find(([row]) => lengthMm <= (valueOrNone(table, row, 'upTo') ?? Infinity) + SAME_MM);
  if (band === undefined)
    throw notInTable(`no length tolerance is held above ${table.rows[table.rows.length - 1]?.[0]} (${table.standard})`);
  return band[0];
}

export function lengthDeviation(size: Size, lengthMm: number, end: End): Deviation {
  const { own } = size;
  if (own !== undefined) return { upperMm: worthOf([ownReading(own, 'lengthUpper')]), lowerMm: worthOf([ownReading(own, 'lengthLower')]) };
  if (size.family === 'M') {
    const row = ISO_4759_1_LENGTH_LIMITS.rows.find(([key]) => Math.abs(Number(key) - lengthMm) < SAME_MM)?.[0];
    if (row === undefined)
      throw notInTable(`${lengthMm} mm is not a nominal length of ${ISO_4759_1_LENGTH_LIMITS.standard}; see SCREW.LENGTHS`);
    return { upperMm: valueOf(ISO_4759_1_LENGTH_LIMITS, row, 'upper'), lowerMm: valueOf(ISO_4759_1_LENGTH_LIMITS, row, 'lower') };
  }
  if (size.family === 'ST') {
    const row = bandUpTo(ISO_7049_LENGTH_TOLERANCES, lengthMm);
    return {
      upperMm: valueOf(ISO_7049_LENGTH_TOLERANCES, row, `${end}Upper`),
      lowerMm: valueOf(ISO_7049_LENGTH_TOLERANCES, row, `${end}Lower`),
    };
  }
  const table: Table = size.family === 'UN' ? ASME_B18_6_3_LENGTH_TOLERANCES : ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES;
  const row = bandUpTo(table, lengthMm);
  const large = size.family === 'UN' && size.gauge === '1/4' ? 'Large' : '';
  return { upperMm: valueOf(table, row, `upper${large}`), lowerMm: valueOf(table, row, `lower${large}`) };
}

/** 1 where the length is one of the standard lengths of the screw. */
export const isStandardLength = (screw: Screw, lengthMm: number): number =>
  standardLengthsMm(screw.size).some(standardMm => Math.abs(standardMm - lengthMm) < SAME_MM) ? 1 : 0;

export const lengthDeviationOf = (screw: Screw, lengthMm: number, end: End): Deviation => lengthDeviation(screw.size, lengthMm, end);
