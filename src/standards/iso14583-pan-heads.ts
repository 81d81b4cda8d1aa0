// ISO 14583, hexalobular socket pan head screws: head dimensions.
// Edition: not shown; the text read is GB/T 2672-2017, its equivalent.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_14583_PAN_HEADS = {
  standard: 'ISO 14583',
  edition: 'not shown; the text read is GB/T 2672-2017, its equivalent',
  subject: 'hexalobular socket pan head screws',
  table: 'Table 1 (from memory)',
  columns: [
    { key: 'dkMax', title: 'head diameter dk', limit: 'max', unit: 'mm', held: 'read under GB/T 2672-2017' },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read under GB/T 2672-2017' },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read under GB/T 2672-2017' },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read under GB/T 2672-2017' },
  ],
  rows: [
    ['M2', 4, 3.7, 1.6, 1.46],
    ['M2.5', 5, 4.7, 2.1, 1.96],
    ['M3', 5.6, 5.3, 2.4, 2.26],
    ['M3.5', 7, 6.64, 2.6, 2.46],
    ['M4', 8, 7.64, 3.1, 2.92],
    ['M5', 9.5, 9.14, 3.7, 3.52],
    ['M6', 12, 11.57, 4.6, 4.3],
  ],
} as const satisfies Table;
