// ISO 10642, hexagon socket countersunk head screws, 90°: head dimensions.
// Edition: 2004 (edition from memory).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_10642_COUNTERSUNK_HEADS = {
  standard: 'ISO 10642',
  edition: '2004 (edition from memory)',
  subject: 'hexagon socket countersunk head screws, 90°',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter dk, theoretical',
      limit: 'sharp',
      unit: 'mm',
      held: 'read in 3 secondary copies',
      note: 'Larger than DIN 7991 (M3 max 6): the two do not fit the same countersink.',
    },
    {
      key: 'dkMin',
      title: 'head diameter dk, actual',
      limit: 'min',
      unit: 'mm',
      held: 'from memory',
      note: 'Two older tables print 5.82 / 7.78 / 9.78 / 11.73.',
    },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 3 secondary copies',
      note: 'DIN 7991 has 1.7 for M3.',
    },
  ],
  rows: [
    ['M3', 6.72, 5.54, 1.86],
    ['M4', 8.96, 7.53, 2.48],
    ['M5', 11.2, 9.43, 3.1],
    ['M6', 13.44, 11.34, 3.72],
  ],
} as const satisfies Table;
