// ISO 1580, slotted pan head screws: head dimensions.
// Edition: not shown in the copy read.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_1580_SLOTTED_PAN_HEADS = {
  standard: 'ISO 1580',
  edition: 'not shown in the copy read',
  subject: 'slotted pan head screws',
  table: 'Table 1 (from memory)',
  columns: [
    { key: 'dkMax', title: 'head diameter dk', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy' },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Lower than the cross recessed ISO 7045 head of the same diameter.',
    },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['M2', 4, 3.7, 1.3, 1.16],
    ['M2.5', 5, 4.7, 1.5, 1.36],
    ['M3', 5.6, 5.3, 1.8, 1.66],
    ['M3.5', 7, 6.64, 2.1, 1.96],
    ['M4', 8, 7.64, 2.4, 2.26],
    ['M5', 9.5, 9.14, 3, 2.86],
    ['M6', 12, 11.57, 3.6, 3.3],
  ],
} as const satisfies Table;
