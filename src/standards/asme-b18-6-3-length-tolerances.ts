// ASME B18.6.3, length tolerances of machine screws.
// Edition: not shown in the copy read.
// Table: length tolerances (number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_LENGTH_TOLERANCES = {
  standard: 'ASME B18.6.3',
  edition: 'not shown in the copy read',
  subject: 'length tolerances of machine screws',
  table: 'length tolerances (table number not read)',
  columns: [
    { key: 'over', title: 'nominal length over', limit: 'nominal', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'upTo', title: 'nominal length up to', limit: 'nominal', unit: 'in', held: 'read in 1 secondary copy' },
    {
      key: 'upper',
      title: 'upper deviation of the length, #0 to #12',
      limit: 'max',
      unit: 'in',
      held: 'from memory',
      note: 'The copy prints the minus side only.',
    },
    {
      key: 'lower',
      title: 'lower deviation of the length, #0 to #12',
      limit: 'min',
      unit: 'in',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'upperLarge',
      title: 'upper deviation of the length, 1/4 to 3/4',
      limit: 'max',
      unit: 'in',
      held: 'from memory',
      note: 'The copy prints the minus side only.',
    },
    {
      key: 'lowerLarge',
      title: 'lower deviation of the length, 1/4 to 3/4',
      limit: 'min',
      unit: 'in',
      held: 'read in 1 secondary copy',
    },
  ],
  rows: [
    ['0-1/2', 0, 0.5, 0, -0.02, 0, -0.03],
    ['1/2-1', 0.5, 1, 0, -0.03, 0, -0.03],
    ['1-2', 1, 2, 0, -0.06, 0, -0.06],
    ['over 2', 2, null, 0, -0.09, 0, -0.09],
  ],
} as const satisfies Table;
