// ISO 7380-1, hexagon socket button head screws: head dimensions.
// Edition: 2011 (the copy read is headed ISO 7380).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7380_1_BUTTON_HEADS = {
  standard: 'ISO 7380-1',
  edition: '2011 (the copy read is headed ISO 7380)',
  subject: 'hexagon socket button head screws',
  table: 'Table 1 (from memory)',
  columns: [
    { key: 'dkMax', title: 'head diameter dk', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy' },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMin',
      title: 'head height k',
      limit: 'min',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'ASME B18.3.4M has 1.43 for M3.',
    },
  ],
  rows: [
    ['M3', 5.7, 5.4, 1.65, 1.4],
    ['M4', 7.6, 7.24, 2.2, 1.95],
    ['M5', 9.5, 9.14, 2.75, 2.5],
    ['M6', 10.5, 10.07, 3.3, 3],
  ],
  exceptions: [
    { row: 'M3', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: 'M3', key: 'kMax', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
