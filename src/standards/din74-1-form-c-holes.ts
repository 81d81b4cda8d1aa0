// DIN 74-1, form C: through holes and 80° countersinks for tapping screws.
// Edition: withdrawn; an older edition (edition from memory).
// Table: form C (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const DIN_74_1_FORM_C_HOLES = {
  standard: 'DIN 74-1',
  edition: 'withdrawn; an older edition (edition from memory)',
  subject: 'form C, through holes and 80° countersinks for tapping screws with DIN 7982 and DIN 7983 heads',
  table: 'form C (table number not read)',
  columns: [
    { key: 'hole', title: 'through hole d1', limit: 'nominal', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'countersinkDia',
      title: 'countersink diameter d2',
      limit: 'min',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Countersink angle 80° ± 1°.',
    },
    {
      key: 'countersinkDepth',
      title: 'countersink depth t1',
      limit: 'approx',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
  ],
  rows: [
    ['ST2.2', 2.4, 4.6, 1.3],
    ['ST2.9', 3.1, 5.9, 1.7],
    ['ST3.5', 3.7, 7.2, 2.1],
    ['ST3.9', 4.2, 8.1, 2.3],
    ['ST4.2', 4.5, 8.7, 2.5],
    ['ST4.8', 5.1, 10.1, 3],
  ],
} as const satisfies Table;
