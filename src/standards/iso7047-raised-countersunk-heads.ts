// ISO 7047, cross recessed raised countersunk head screws, 90°: head dimensions.
// Edition: 1994 / 2011 (edition from memory).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7047_RAISED_COUNTERSUNK_HEADS = {
  standard: 'ISO 7047',
  edition: '1994 / 2011 (edition from memory)',
  subject: 'cross recessed raised countersunk head screws, 90°',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter dk, theoretical',
      limit: 'sharp',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    { key: 'dkMax', title: 'head diameter dk, actual', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'dkMin',
      title: 'head diameter dk, actual',
      limit: 'min',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'ISO 7046-2 prints 6.9 / 8 / 8.9 / 10.9 for M3.5 / M4 / M5 / M6.',
    },
    {
      key: 'kMax',
      title: 'head height k, without the raised part',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'fApprox',
      title: 'height of the raised part f',
      limit: 'approx',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'rfApprox',
      title: 'radius of the raised part rf',
      limit: 'approx',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
  ],
  rows: [
    ['M1.6', 3.6, 3, 2.7, 1, 0.4, 3],
    ['M2', 4.4, 3.8, 3.5, 1.2, 0.5, 4],
    ['M2.5', 5.5, 4.7, 4.4, 1.5, 0.6, 5],
    ['M3', 6.3, 5.5, 5.2, 1.65, 0.7, 6],
    ['M3.5', 8.2, 7.3, 6.94, 2.35, 0.8, 8.5],
    ['M4', 9.4, 8.4, 8.04, 2.7, 1, 9.5],
    ['M5', 10.4, 9.3, 8.94, 2.7, 1.2, 9.5],
    ['M6', 12.6, 11.3, 10.87, 3.3, 1.4, 12],
  ],
} as const satisfies Table;
