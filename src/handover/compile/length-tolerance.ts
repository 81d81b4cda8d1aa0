// The tolerance of a screw's length, as it is read from the tables: on which sides of which formulas.
import { ASME_B18_6_3_LENGTH_TOLERANCES } from '../../standards/asme-b18-6-3-length-tolerances';
import { ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES } from '../../standards/asme-b18-6-3-tapping-length-tolerances';
import { ISO_4759_1_LENGTH_LIMITS } from '../../standards/iso4759-1-length-limits';
import { ISO_7049_LENGTH_TOLERANCES } from '../../standards/iso7049-length-tolerances';
import type { Table } from '../../standards/table';
import { ownReading } from '../../core/screw/own';
import type { Size } from '../../core/screw/size';
import type { DataSheet } from './data-sheet';

/** Upper and lower deviation for a length. `end` is a cell with the word, or the word in quotes. */
export function lengthToleranceFormulas(
  data: DataSheet,
  { family, gauge, own }: Size,
  length: string,
  end: string,
): { readonly upper: string; readonly lower: string } {
  if (own !== undefined) {
    const side = (key: string): string => {
      const { table, row } = ownReading(own, key);
      return data.lookup(table, key, `"${row}"`);
    };
    return { upper: side('lengthUpper'), lower: side('lengthLower') };
  }
  if (family === 'M') {
    const table = ISO_4759_1_LENGTH_LIMITS;
    return { upper: data.lookup(table, 'upper', length), lower: data.lookup(table, 'lower', length) };
  }
  const table: Table =
    family === 'ST'
      ? ISO_7049_LENGTH_TOLERANCES
      : family === 'UN'
        ? ASME_B18_6_3_LENGTH_TOLERANCES
        : ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES;
  // the gap at the end of an open band is a text, which is below no number
  const band = (key: string): string => `INDEX(${data.column(table, key)},SUMPRODUCT(0+(${data.column(table, 'upTo')}<${length}-1E-6))+1)`;
  if (family === 'ST') {
    const side = (which: string): string => `IF(${end}="flat",${band(`flat${which}`)},${band(`cone${which}`)})`;
    return { upper: side('Upper'), lower: side('Lower') };
  }
  const large = family === 'UN' && gauge === '1/4' ? 'Large' : '';
  return { upper: band(`upper${large}`), lower: band(`lower${large}`) };
}
