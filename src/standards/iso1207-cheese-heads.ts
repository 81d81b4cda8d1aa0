// ISO 1207, slotted cheese head screws: head dimensions.
// Edition: not shown in the copies read.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_1207_CHEESE_HEADS = {
  standard: 'ISO 1207',
  edition: 'not shown in the copies read',
  subject: 'slotted cheese head screws',
  table: 'Table 1 (from memory)',
  columns: [
    { key: 'dkMax', title: 'head diameter dk', limit: 'max', unit: 'mm', held: 'read in 2 secondary copies' },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'The older DIN 84 head has 1 / 1.3 / 1.6 for M1.6 / M2 / M2.5.',
    },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['M1.6', 3, 2.86, 1.1, 0.96],
    ['M2', 3.8, 3.62, 1.4, 1.26],
    ['M2.5', 4.5, 4.32, 1.8, 1.66],
    ['M3', 5.5, 5.32, 2, 1.86],
    ['M3.5', 6, 5.82, 2.4, 2.26],
    ['M4', 7, 6.78, 2.6, 2.46],
    ['M5', 8.5, 8.28, 3.3, 3.12],
    ['M6', 10, 9.78, 3.9, 3.6],
  ],
  exceptions: [
    { row: 'M3.5', key: 'dkMax', held: 'read in 1 secondary copy' },
    { row: 'M3', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: 'M4', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: 'M5', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: 'M6', key: 'kMax', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
