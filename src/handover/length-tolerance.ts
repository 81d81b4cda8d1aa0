// The tolerance of a screw's length, as it is read from the tables: on which sides of which formulas.
import { ISO_4759_1_LENGTH_LIMITS } from '../standards/iso4759-1-length-limits';
import { ISO_7049_LENGTH_TOLERANCES } from '../standards/iso7049-length-tolerances';
import type { Size } from '../core/screw/size';
import type { DataSheet } from './data-sheet';

/** Upper and lower deviation for a length; nothing where the family's table is not read by formula. `end` is a cell with the word, or the word in quotes. */
export function lengthToleranceFormulas(data: DataSheet, { family }: Size, length: string, end: string): { readonly upper: string; readonly lower: string } | undefined {
  if (family === 'M') {
    const table = ISO_4759_1_LENGTH_LIMITS;
    return { upper: data.lookup(table, 'upper', length), lower: data.lookup(table, 'lower', length) };
  }
  if (family !== 'ST') return undefined;
  const table = ISO_7049_LENGTH_TOLERANCES;
  const band = (key: string): string => `INDEX(${data.column(table, key)},SUMPRODUCT(0+(${data.column(table, 'upTo')}<${length}-1E-6))+1)`;
  const side = (which: string): string => `IF(${end}="flat",${band(`flat${which}`)},${band(`cone${which}`)})`;
  return { upper: side('Upper'), lower: side('Lower') };
}
