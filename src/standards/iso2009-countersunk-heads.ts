// ISO 2009, slotted countersunk head screws, 90°: head dimensions.
// Edition: 1994 / 2011 (edition from memory).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_2009_COUNTERSUNK_HEADS = {
  standard: 'ISO 2009',
  edition: '1994 / 2011 (edition from memory)',
  subject: 'slotted countersunk head screws, 90°',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter dk, theoretical',
      limit: 'sharp',
      unit: 'mm',
      held: 'read under ISO 7047',
      note: 'That the two standards share the head form of ISO 7721 is from memory.',
    },
    {
      key: 'dkMax',
      title: 'head diameter dk, actual',
      limit: 'max',
      unit: 'mm',
      held: 'read under ISO 7047 and ISO 7046-2',
    },
    {
      key: 'dkMin',
      title: 'head diameter dk, actual',
      limit: 'min',
      unit: 'mm',
      held: 'from memory, cross-checked',
      note: 'Equal to ISO 7047, where they were read; ISO 7046-2 prints 6.9 / 8 / 8.9 / 10.9 for M3.5 / M4 / M5 / M6.',
    },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read under ISO 7047 and ISO 7046-2' },
  ],
  rows: [
    ['M1.6', 3.6, 3, 2.7, 1],
    ['M2', 4.4, 3.8, 3.5, 1.2],
    ['M2.5', 5.5, 4.7, 4.4, 1.5],
    ['M3', 6.3, 5.5, 5.2, 1.65],
    ['M3.5', 8.2, 7.3, 6.94, 2.35],
    ['M4', 9.4, 8.4, 8.04, 2.7],
    ['M5', 10.4, 9.3, 8.94, 2.7],
    ['M6', 12.6, 11.3, 10.87, 3.3],
  ],
  exceptions: [
    { row: 'M1.6', key: 'dkMax', held: 'read under ISO 7047' },
    { row: 'M1.6', key: 'kMax', held: 'read under ISO 7047' },
  ],
} as const satisfies Table;
