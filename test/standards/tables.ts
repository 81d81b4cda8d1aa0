// Every published table, and reading one printed value (no conversion, no rounding).
import type { Table } from '../../src/standards/table';
import { ASME_B1_1_UNIFIED_THREADS_2A } from '../../src/standards/asme-b1-1-unified-threads-2a';
import { ASME_B18_2_8_CLEARANCE_HOLES } from '../../src/standards/asme-b18-2-8-clearance-holes';
import { ASME_B18_6_3_FILLISTER_HEADS } from '../../src/standards/asme-b18-6-3-fillister-heads';
import { ASME_B18_6_3_FLAT_HEADS } from '../../src/standards/asme-b18-6-3-flat-heads';
import { ASME_B18_6_3_LENGTH_TOLERANCES } from '../../src/standards/asme-b18-6-3-length-tolerances';
import { ASME_B18_6_3_LENGTHS } from '../../src/standards/asme-b18-6-3-lengths';
import { ASME_B18_6_3_OVAL_HEADS } from '../../src/standards/asme-b18-6-3-oval-heads';
import { ASME_B18_6_3_PAN_HEADS } from '../../src/standards/asme-b18-6-3-pan-heads';
import { ASME_B18_6_3_ROUND_HEADS } from '../../src/standards/asme-b18-6-3-round-heads';
import { ASME_B18_6_3_SLOTTED_PAN_HEADS } from '../../src/standards/asme-b18-6-3-slotted-pan-heads';
import { ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES } from '../../src/standards/asme-b18-6-3-tapping-length-tolerances';
import { ASME_B18_6_3_TYPE_AB_THREADS } from '../../src/standards/asme-b18-6-3-type-ab-threads';
import { ASME_B18_6_3_TYPE_B_THREADS } from '../../src/standards/asme-b18-6-3-type-b-threads';
import { DIN_16742_TG6 } from '../../src/standards/din16742-tg6';
import { DIN_16901_130 } from '../../src/standards/din16901-130';
import { DIN_74_1_FORM_C_HOLES } from '../../src/standards/din74-1-form-c-holes';
import { DIN_7981_PAN_HEADS } from '../../src/standards/din7981-pan-heads';
import { DIN_7991_COUNTERSUNK_HEADS } from '../../src/standards/din7991-countersunk-heads';
import { ISO_7721_1_HEAD_ANGLE, ASME_B18_6_3_HEAD_ANGLE, DIN_7982_HEAD_ANGLE } from '../../src/standards/head-angles';
import { ISO_10642_COUNTERSUNK_HEADS } from '../../src/standards/iso10642-countersunk-heads';
import { ISO_1207_CHEESE_HEADS } from '../../src/standards/iso1207-cheese-heads';
import { ISO_14583_PAN_HEADS } from '../../src/standards/iso14583-pan-heads';
import { ISO_14585_PAN_HEADS } from '../../src/standards/iso14585-pan-heads';
import { ISO_1478_TAPPING_SCREW_THREADS } from '../../src/standards/iso1478-tapping-screw-threads';
import { ISO_1580_SLOTTED_PAN_HEADS } from '../../src/standards/iso1580-slotted-pan-heads';
import { ISO_2009_COUNTERSUNK_HEADS } from '../../src/standards/iso2009-countersunk-heads';
import { ISO_273_CLEARANCE_HOLES } from '../../src/standards/iso273-clearance-holes';
import { ISO_2768_1_LINEAR } from '../../src/standards/iso2768-1-linear';
import { ISO_286_1_IT_GRADES } from '../../src/standards/iso286-1-it-grades';
import { ISO_4032_NUTS } from '../../src/standards/iso4032-nuts';
import { ISO_4759_1_LENGTH_LIMITS } from '../../src/standards/iso4759-1-length-limits';
import { ISO_4762_SOCKET_HEADS } from '../../src/standards/iso4762-socket-heads';
import { ISO_7045_PAN_HEADS } from '../../src/standards/iso7045-pan-heads';
import { ISO_7046_1_COUNTERSUNK_HEADS } from '../../src/standards/iso7046-1-countersunk-heads';
import { ISO_7046_2_COUNTERSUNK_HEADS } from '../../src/standards/iso7046-2-countersunk-heads';
import { ISO_7047_RAISED_COUNTERSUNK_HEADS } from '../../src/standards/iso7047-raised-countersunk-heads';
import { ISO_7049_LENGTH_TOLERANCES } from '../../src/standards/iso7049-length-tolerances';
import { ISO_7049_PAN_HEADS } from '../../src/standards/iso7049-pan-heads';
import { ISO_7049_TAPPING_SCREW_LENGTHS } from '../../src/standards/iso7049-tapping-screw-lengths';
import { ISO_7050_COUNTERSUNK_HEADS } from '../../src/standards/iso7050-countersunk-heads';
import { ISO_7051_RAISED_COUNTERSUNK_HEADS } from '../../src/standards/iso7051-raised-countersunk-heads';
import { ISO_7380_1_BUTTON_HEADS } from '../../src/standards/iso7380-1-button-heads';
import { ISO_888_LENGTHS } from '../../src/standards/iso888-lengths';
import { ISO_965_2_METRIC_THREADS_6G } from '../../src/standards/iso965-2-metric-threads-6g';

export const TABLES: Readonly<Record<string, Table>> = {
  ASME_B1_1_UNIFIED_THREADS_2A,
  ASME_B18_2_8_CLEARANCE_HOLES,
  ASME_B18_6_3_FILLISTER_HEADS,
  ASME_B18_6_3_FLAT_HEADS,
  ASME_B18_6_3_LENGTH_TOLERANCES,
  ASME_B18_6_3_LENGTHS,
  ASME_B18_6_3_OVAL_HEADS,
  ASME_B18_6_3_PAN_HEADS,
  ASME_B18_6_3_ROUND_HEADS,
  ASME_B18_6_3_SLOTTED_PAN_HEADS,
  ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES,
  ASME_B18_6_3_TYPE_AB_THREADS,
  ASME_B18_6_3_TYPE_B_THREADS,
  DIN_16742_TG6,
  DIN_16901_130,
  DIN_74_1_FORM_C_HOLES,
  DIN_7981_PAN_HEADS,
  DIN_7991_COUNTERSUNK_HEADS,
  ISO_7721_1_HEAD_ANGLE,
  ASME_B18_6_3_HEAD_ANGLE,
  DIN_7982_HEAD_ANGLE,
  ISO_10642_COUNTERSUNK_HEADS,
  ISO_1207_CHEESE_HEADS,
  ISO_14583_PAN_HEADS,
  ISO_14585_PAN_HEADS,
  ISO_1478_TAPPING_SCREW_THREADS,
  ISO_1580_SLOTTED_PAN_HEADS,
  ISO_2009_COUNTERSUNK_HEADS,
  ISO_273_CLEARANCE_HOLES,
  ISO_2768_1_LINEAR,
  ISO_286_1_IT_GRADES,
  ISO_4032_NUTS,
  ISO_4759_1_LENGTH_LIMITS,
  ISO_4762_SOCKET_HEADS,
  ISO_7045_PAN_HEADS,
  ISO_7046_1_COUNTERSUNK_HEADS,
  ISO_7046_2_COUNTERSUNK_HEADS,
  ISO_7047_RAISED_COUNTERSUNK_HEADS,
  ISO_7049_LENGTH_TOLERANCES,
  ISO_7049_PAN_HEADS,
  ISO_7049_TAPPING_SCREW_LENGTHS,
  ISO_7050_COUNTERSUNK_HEADS,
  ISO_7051_RAISED_COUNTERSUNK_HEADS,
  ISO_7380_1_BUTTON_HEADS,
  ISO_888_LENGTHS,
  ISO_965_2_METRIC_THREADS_6G,
};

export function table(name: string): Table {
  const found = TABLES[name];
  if (found === undefined) throw new Error(`${name} is not a table`);
  return found;
}

export function printed(of: Table, row: string, key: string): number {
  const i = of.columns.findIndex(column => column.key === key);
  const value = of.rows.find(([name]) => name === row)?.[i + 1];
  if (i < 0 || typeof value !== 'number') throw new Error(`${of.standard} ${row} ${key} is not in the table`);
  return value;
}

export function heldAs(of: Table, row: string, key: string): string {
  const exception = of.exceptions?.find(single => single.row === row && single.key === key);
  return exception?.held ?? of.columns.find(column => column.key === key)?.held ?? '';
}

export function column(of: Table, key: string): readonly (number | null)[] {
  const i = of.columns.findIndex(entry => entry.key === key);
  if (i < 0) throw new Error(`${of.standard} has no column ${key}`);
  return of.rows.map(row => row[i + 1] as number | null);
}

export const rowsOf = (of: Table): readonly string[] => of.rows.map(([row]) => row);
