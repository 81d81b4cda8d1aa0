// ISO 14585, hexalobular socket pan head tapping screws: head dimensions.
// Edition: 2011 (edition from memory).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_14585_PAN_HEADS = {
  standard: 'ISO 14585',
  edition: '2011 (edition from memory)',
  subject: 'hexalobular socket pan head tapping screws',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk',
      limit: 'max',
      unit: 'mm',
      held: 'read under ISO 7049',
      note: 'That ISO 14585 uses the head of ISO 7049 is from memory.',
    },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read under ISO 7049' },
    { key: 'kMax', title: 'head height k', limit: 'max', unit: 'mm', held: 'read under ISO 7049' },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read under ISO 7049' },
  ],
  rows: [
    ['ST2.2', 4, 3.7, 1.6, 1.4],
    ['ST2.9', 5.6, 5.3, 2.4, 2.15],
    ['ST3.5', 7, 6.64, 2.6, 2.35],
    ['ST4.2', 8, 7.64, 3.1, 2.8],
    ['ST4.8', 9.5, 9.14, 3.7, 3.4],
  ],
} as const satisfies Table;
