// ISO 7046-2, cross recessed countersunk head screws, 90°: head dimensions.
// Edition: 1990; 2011 as DIN EN ISO 7046-2:2011-12.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7046_2_COUNTERSUNK_HEADS = {
  standard: 'ISO 7046-2',
  edition: '1990; 2011 as DIN EN ISO 7046-2:2011-12',
  subject: 'cross recessed countersunk head screws, 90°',
  table: 'Table 1 (from memory)',
  columns: [
    { key: 'dkMax', title: 'head diameter dk, actual', limit: 'max', unit: 'mm', held: 'read in 2 secondary copies' },
    {
      key: 'dkMin',
      title: 'head diameter dk, actual',
      limit: 'min',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Read in the 1990 edition only; ISO 7047 prints 6.94 / 8.04 / 8.94 / 10.87 for M3.5 / M4 / M5 / M6.',
    },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read in 2 secondary copies' },
  ],
  rows: [
    ['M2', 3.8, 3.5, 1.2],
    ['M2.5', 4.7, 4.4, 1.5],
    ['M3', 5.5, 5.2, 1.65],
    ['M3.5', 7.3, 6.9, 2.35],
    ['M4', 8.4, 8, 2.7],
    ['M5', 9.3, 8.9, 2.7],
    ['M6', 11.3, 10.9, 3.3],
  ],
} as const satisfies Table;
