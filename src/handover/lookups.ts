// Functions that read a table: as INDEX and MATCH on the Data sheet, from the table's own declaration.
import { ASME_B18_2_8_CLEARANCE_HOLES } from '../standards/asme-b18-2-8-clearance-holes';
import { DIN_74_1_FORM_C_HOLES } from '../standards/din74-1-form-c-holes';
import { ISO_273_CLEARANCE_HOLES } from '../standards/iso273-clearance-holes';
import { ISO_2768_1_LINEAR } from '../standards/iso2768-1-linear';
import { ISO_286_1_IT_GRADES } from '../standards/iso286-1-it-grades';
import type { Table } from '../core/kinds';
import type { Fit, HoleLimit } from '../core/screw/clearance';
import { DIAMETER_KEYS, type Head, type HeadLimit, HEIGHT_KEYS } from '../core/screw/head';
import type { End } from '../core/screw/length';
import type { Size } from '../core/screw/size';
import { isTapping, threadRow, threadTable } from '../core/screw/thread';

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

const thread = (key: (size: Size, values: readonly unknown[]) => string): LookUp => (reader, values) => {
  const size = values[0] as Size;
  return reader.lookup(threadTable(size), key(size, values), reader.size(threadRow(size)));
};

const headColumn = (keys: Readonly<Record<HeadLimit, string>>): LookUp => (reader, values) => {
  const [size, head, limit] = values as [Size, Head, HeadLimit];
  const row = reader.size(size.gauge);
  const value = reader.lookup(head.table, keys[limit], row);
  return keys === HEIGHT_KEYS && head.style === 'raised countersunk' && head.heightIsTotal !== true ? `${value}+${reader.lookup(head.table, 'fApprox', row)}` : value;
};

const pitch: LookUp = (reader, values) => {
  const size = values[0] as Size;
  const row = reader.size(threadRow(size));
  return size.family === 'M' || size.family === 'ST' ? reader.lookup(threadTable(size), 'pitch', row) : `25.4/${reader.lookup(threadTable(size), 'tpi', row)}`;
};

const INCH_FITS: Readonly<Record<string, string>> = { fine: 'close', medium: 'normal', coarse: 'loose' };

export const LOOK_UPS: Readonly<Record<string, LookUp>> = {
  'SCREW.MAJOR': thread((size, [, limit]) => (limit === 'nominal' ? (isTapping(size) ? 'majorMax' : 'nominal') : limit === 'max' ? 'majorMax' : 'majorMin')),
  'SCREW.ROOT': thread((_size, [, limit]) => (limit === 'max' ? 'rootMax' : 'rootMin')),
  'SCREW.PITCH': pitch,
  'SCREW.POINT': (reader, values) => {
    const [size, end] = values as [Size, End];
    if (size.family === 'M' || size.family === 'UN') return `2*${pitch(reader, values)}`;
    return reader.lookup(threadTable(size), size.family === 'ST' ? (end === 'cone' ? 'pointCone' : 'pointFlat') : 'pointTaperMax', reader.size(threadRow(size)));
  },
  'SCREW.HEAD.DIAMETER': headColumn(DIAMETER_KEYS),
  'SCREW.HEAD.HEIGHT': headColumn(HEIGHT_KEYS),
  'HOLE.CLEARANCE': (reader, values) => {
    const [size, fit, limit] = values as [Size, Fit, HoleLimit];
    if (fit === 'din 74-1') return reader.lookup(DIN_74_1_FORM_C_HOLES, 'hole', reader.size(size.gauge));
    if (size.family === 'M') return reader.lookup(ISO_273_CLEARANCE_HOLES, limit === 'max' ? `${fit}Max` : fit, reader.size(size.gauge));
    return reader.lookup(ASME_B18_2_8_CLEARANCE_HOLES, `${INCH_FITS[fit]}${limit === 'max' ? 'Max' : limit === 'min' ? 'Min' : ''}`, reader.size(size.gauge));
  },
  'TOL.IT': (reader, values) => reader.band(ISO_286_1_IT_GRADES, values[1] as string, reader.cell(0)),
  'TOL.GENERAL': (reader, values) => reader.band(ISO_2768_1_LINEAR, values[1] as string, reader.cell(0)),
  'TOL.MOULDED': (reader, values) => {
    const table = values[1] as Table;
    return table.standard === 'your own table' ? undefined : reader.band(table, values[2] as string, reader.cell(0));
  },
};
