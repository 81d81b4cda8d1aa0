// Functions that read a table: as INDEX and MATCH on the Data sheet, from what their card reads.
import type { Reading, Table } from '../core/kinds';
import { CARDS } from '../registry';

/** What a look-up needs of the hand-over: the cell with the size, and the formulas of the Data sheet. */
export interface Reader {
  /** Cell or quoted text of the size, for the row names of a table. */
  size(rowName: string): string;
  /** Cell of a numeric argument. */
  cell(index: number): string;
  lookup(table: Table, key: string, row: string): string;
  band(table: Table, key: string, size: string): string;
}

type LookUp = (reader: Reader, values: readonly unknown[]) => string | undefined;

/** The sum of what is read. */
export const readingsFormula = (reader: Reader, readings: readonly Reading[]): string =>
  readings
    .map(reading => term(reader, reading))
    .join('+')
    .replaceAll('+-', '-');

function term(reader: Reader, { table, key, row, times, over, bandOf, above }: Reading): string {
  if (bandOf !== undefined) {
    const band = reader.band(table, key, reader.cell(bandOf));
    return above === undefined ? band : `IF(${reader.cell(bandOf)}>${above},${band},NA())`;
  }
  const value = reader.lookup(table, key, reader.size(row));
  return over !== undefined ? `${over}/${value}` : times === -1 ? `-${value}` : times !== undefined ? `${times}*${value}` : value;
}

/** The formula of a look-up by function id. A table that the user brings himself is not on the Data sheet. */
export const LOOK_UPS: Readonly<Record<string, LookUp>> = Object.fromEntries(
  [...CARDS.values()].flatMap(({ id, reads }): [string, LookUp][] =>
    reads === undefined
      ? []
      : [
          [
            id,
            (reader, values) => {
              const readings = reads(...(values as never[]));
              return readings.some(({ table }) => table.edition === '') ? undefined : readingsFormula(reader, readings);
            },
          ],
        ],
  ),
);
