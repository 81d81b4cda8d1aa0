// DIN 7991, hexagon socket countersunk head screws, 90°: head dimensions.
// Edition: withdrawn, replaced by ISO 10642 (edition from memory).
// Table: not numbered in the copies read. Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const DIN_7991_COUNTERSUNK_HEADS = {
  standard: 'DIN 7991',
  edition: 'withdrawn, replaced by ISO 10642 (edition from memory)',
  subject: 'hexagon socket countersunk head screws, 90°',
  table: 'not numbered in the copies read',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk',
      limit: 'max',
      unit: 'mm',
      held: 'read in 2 secondary copies',
      note: 'Smaller than ISO 10642 (M3 theoretical 6.72): the two do not fit the same countersink.',
    },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read in 2 secondary copies' },
  ],
  rows: [
    ['M3', 6, 5.7, 1.7],
    ['M4', 8, 7.64, 2.3],
    ['M5', 10, 9.64, 2.8],
    ['M6', 12, 11.57, 3.3],
  ],
} as const satisfies Table;
