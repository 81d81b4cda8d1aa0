// Usual sizes of housing parts, against which a slip of the unit shows. They are wide: what lies outside is asked about, not wrong.
import type { Table } from '../../standards/table';

const held = 'common practice';

export const UNIT_BANDS = {
  standard: 'usual sizes of small housings',
  edition: '',
  subject: 'sizes that a length of this kind usually has',
  table: '',
  columns: [
    { key: 'low', title: 'usual from', limit: 'min', unit: 'mm', held },
    { key: 'high', title: 'usual to', limit: 'max', unit: 'mm', held },
  ],
  rows: [
    ['wall', 0.8, 6],
    ['screw', 1.6, 6.4],
    ['head', 2.8, 14],
    ['board edge', 12, 500],
    ['board thickness', 0.4, 3.2],
    ['height', 2, 120],
  ],
} as const satisfies Table;

export type LengthKind = (typeof UNIT_BANDS)['rows'][number][0];
