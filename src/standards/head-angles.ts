// Included angles of countersunk heads: ISO 7721-1, ASME B18.6.3 and DIN 7982.
// Edition: with each table below. Table: head figures (not numbered). Unit: degree.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7721_1_HEAD_ANGLE = {
  standard: 'ISO 7721-1',
  edition: 'not shown in the copies read (edition from memory)',
  subject: 'head angle of ISO countersunk and raised countersunk heads',
  table: 'figure (from memory)',
  columns: [
    {
      key: 'angle',
      title: 'head angle',
      limit: 'nominal',
      unit: 'deg',
      held: 'read in 2 secondary copies',
      note: 'Read under ISO 7047 and DIN 7991. ISO 7050 and ISO 7051 have the same 90°: (dk − d)/2 = k.',
    },
    { key: 'angleMax', title: 'head angle', limit: 'max', unit: 'deg', held: 'read under DIN 7991' },
    { key: 'angleMin', title: 'head angle', limit: 'min', unit: 'deg', held: 'read under DIN 7991' },
  ],
  rows: [['all', 90, 92, 90]],
} as const satisfies Table;

export const ASME_B18_6_3_HEAD_ANGLE = {
  standard: 'ASME B18.6.3',
  edition: 'any recent edition (edition from memory)',
  subject: 'head angle of flat and oval countersunk heads',
  table: 'figure (from memory)',
  columns: [
    { key: 'angle', title: 'head angle', limit: 'nominal', unit: 'deg', held: 'read in 2 secondary copies' },
    { key: 'angleMax', title: 'head angle', limit: 'max', unit: 'deg', held: 'read in 2 secondary copies' },
    { key: 'angleMin', title: 'head angle', limit: 'min', unit: 'deg', held: 'from memory' },
  ],
  rows: [['all', 82, 82, 80]],
} as const satisfies Table;

export const DIN_7982_HEAD_ANGLE = {
  standard: 'DIN 7982',
  edition: 'withdrawn (edition from memory)',
  subject: 'head angle of countersunk head tapping screws to DIN 7982 and DIN 7983',
  table: 'figure (from memory)',
  columns: [
    {
      key: 'angle',
      title: 'head angle',
      limit: 'nominal',
      unit: 'deg',
      held: 'read under DIN 74-1, form C',
      note: 'The copy gives the countersink as 80° ± 1°. ISO 7050 heads are 90°, not 80°.',
    },
  ],
  rows: [['all', 80]],
} as const satisfies Table;
