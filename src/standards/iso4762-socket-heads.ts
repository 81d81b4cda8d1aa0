// ISO 4762, hexagon socket head cap screws: head dimensions.
// Edition: 2004.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_4762_SOCKET_HEADS = {
  standard: 'ISO 4762',
  edition: '2004',
  subject: 'hexagon socket head cap screws',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk, knurled head',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'The maximum that a recess must clear.',
    },
    {
      key: 'dkPlainMax',
      title: 'head diameter dk, plain head',
      limit: 'max',
      unit: 'mm',
      held: 'read in 3 secondary copies',
      note: 'The copies include DIN 912 and GB/T 2671.2 tables, which share this head.',
    },
    {
      key: 'dkMin',
      title: 'head diameter dk',
      limit: 'min',
      unit: 'mm',
      held: 'read in 2 secondary copies',
      note: 'An older national table has 5.2 / 6.64 / 8.14 / 9.64 for M3 / M4 / M5 / M6.',
    },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read in 3 secondary copies' },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 2 secondary copies' },
  ],
  rows: [
    ['M1.6', 3.14, 3, 2.86, 1.6, 1.46],
    ['M2', 3.98, 3.8, 3.62, 2, 1.86],
    ['M2.5', 4.68, 4.5, 4.32, 2.5, 2.36],
    ['M3', 5.68, 5.5, 5.32, 3, 2.86],
    ['M4', 7.22, 7, 6.78, 4, 3.82],
    ['M5', 8.72, 8.5, 8.28, 5, 4.82],
    ['M6', 10.22, 10, 9.78, 6, 5.7],
  ],
  exceptions: [
    { row: 'M1.6', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: 'M6', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: 'M1.6', key: 'dkPlainMax', held: 'read in 2 secondary copies' },
    { row: 'M1.6', key: 'kMin', held: 'read in 1 secondary copy' },
  ],
} as const satisfies Table;
