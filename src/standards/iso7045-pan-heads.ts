// ISO 7045, cross recessed pan head screws: head dimensions.
// Edition: 1994 / 2011 (not shown in the copy read).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7045_PAN_HEADS = {
  standard: 'ISO 7045',
  edition: '1994 / 2011 (not shown in the copy read)',
  subject: 'cross recessed pan head screws',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'The older DIN 7985 head is wider (M3 6, M5 10) and is at times listed under this number.',
    },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'DIN 7985 (M3 2.52, M5 3.95) and slotted ISO 1580 (M3 1.8) are at times listed under this number.',
    },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['M1.6', 3.2, 2.9, 1.3, 1.16],
    ['M2', 4, 3.7, 1.6, 1.46],
    ['M2.5', 5, 4.7, 2.1, 1.96],
    ['M3', 5.6, 5.3, 2.4, 2.26],
    ['M3.5', 7, 6.64, 2.6, 2.46],
    ['M4', 8, 7.64, 3.1, 2.92],
    ['M5', 9.5, 9.14, 3.7, 3.52],
    ['M6', 12, 11.57, 4.6, 4.3],
  ],
} as const satisfies Table;
