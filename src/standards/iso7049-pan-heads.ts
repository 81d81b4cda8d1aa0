// ISO 7049, cross recessed pan head tapping screws: head dimensions.
// Edition: 2011 (DIN EN ISO 7049:2011-11).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7049_PAN_HEADS = {
  standard: 'ISO 7049',
  edition: '2011 (DIN EN ISO 7049:2011-11)',
  subject: 'cross recessed pan head tapping screws',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'DIN 7981 has 4.2 for ST2.2, 6.9 for ST3.5, 8.2 for ST4.2, and is at times listed under this number.',
    },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'DIN 7981 differs: 1.8 / 2.2 / 2.6 / 3.05 / 3.55.',
    },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['ST2.2', 4, 3.7, 1.6, 1.4],
    ['ST2.9', 5.6, 5.3, 2.4, 2.15],
    ['ST3.5', 7, 6.64, 2.6, 2.35],
    ['ST4.2', 8, 7.64, 3.1, 2.8],
    ['ST4.8', 9.5, 9.14, 3.7, 3.4],
  ],
} as const satisfies Table;
