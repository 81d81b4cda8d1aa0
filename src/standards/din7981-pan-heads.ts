// DIN 7981, cross recessed pan head tapping screws: head dimensions.
// Edition: withdrawn, replaced by ISO 7049 (edition from memory).
// Table: not numbered in the copy read. Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const DIN_7981_PAN_HEADS = {
  standard: 'DIN 7981',
  edition: 'withdrawn, replaced by ISO 7049 (edition from memory)',
  subject: 'cross recessed pan head tapping screws',
  table: 'not numbered in the copy read',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter dk',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'ISO 7049 differs: 4 for ST2.2, 7 for ST3.5, 8 for ST4.2.',
    },
    { key: 'dkMin', title: 'head diameter dk', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height k',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'ISO 7049 differs: 1.6 / 2.4 / 2.6 / 3.1 / 3.7 for ST2.2 / ST2.9 / ST3.5 / ST4.2 / ST4.8.',
    },
    { key: 'kMin', title: 'head height k', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['ST2.2', 4.2, 3.9, 1.8, 1.55],
    ['ST2.9', 5.6, 5.3, 2.2, 1.95],
    ['ST3.5', 6.9, 6.54, 2.6, 2.35],
    ['ST3.9', 7.5, 7.14, 2.8, 2.55],
    ['ST4.2', 8.2, 7.84, 3.05, 2.75],
    ['ST4.8', 9.5, 9.14, 3.55, 3.25],
  ],
} as const satisfies Table;
