// Functions that read a table: as INDEX and MATCH on the Data sheet, from what their card reads.
import type { Reading, Table } from '../../standards/table';
import { atom, type Scalar, spreadsheetRef } from '../../plain/spreadsheet';
import type { Tree } from '../../plain/tree';
import { CARDS } from '../../registry';

/** What a look-up needs of the hand-over: the cell with the size, and the formulas of the Data sheet. */
export interface Reader {
  /** Cell or quoted text of the size, for the row names of a table. */
  size(rowName: string): string;
  /** Cell of a numeric argument. */
  cell(index: number): string;
  /** By the cell or text of the row; `name` is that of the row now. */
  lookup(table: Table, key: string, row: string, name: string): string;
  band(table: Table, key: string, size: string): string;
}

type LookUp = (reader: Reader, values: readonly unknown[]) => string | undefined;

/** The sum of what is read. */
export function readingsRef(reader: Reader, readings: readonly Reading[]): Scalar {
  const params = readings.map((_, i) => `reading ${i}`);
  const sum = readings.reduce<Tree | undefined>((before, { times = 1, over }, i) => {
    const read = params[i] as string;
    const size = over !== undefined ? (['/', over, read] as const) : Math.abs(times) === 1 ? read : (['*', Math.abs(times), read] as const);
    if (before === undefined) return times < 0 ? ['neg', size] : size;
    return [times < 0 ? '-' : '+', before, size];
  }, undefined);
  return spreadsheetRef(
    { params, result: sum ?? 0 },
    readings.map(reading => atom(read(reader, reading))),
  ) as Scalar;
}

function read(reader: Reader, { table, key, row, bandOf, above }: Reading): string {
  if (bandOf === undefined) return reader.lookup(table, key, reader.size(row), row);
  const band = reader.band(table, key, reader.cell(bandOf));
  return above === undefined ? band : `IF(${reader.cell(bandOf)}>${above},${band},NA())`;
}

/** The formula of a look-up by function id. A table that the user brings is not on the Data sheet. */
export const LOOK_UPS: Readonly<Record<string, LookUp>> = Object.fromEntries(
  [...CARDS.values()].flatMap(({ id, reads }): [string, LookUp][] =>
    reads === undefined
      ? []
      : [
          [
            id,
            (reader, values) => {
              const readings = reads(...(values as never[]));
              return readings.some(({ table }) => table.edition === '') ? undefined : readingsRef(reader, readings).text;
            },
          ],
        ],
  ),
);
