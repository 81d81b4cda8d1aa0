// ASME B18.6.3, length tolerances of tapping screws.
// Edition: former B18.6.4 (edition from memory).
// Table: length tolerances (number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES = {
  standard: 'ASME B18.6.3',
  edition: 'former B18.6.4 (edition from memory)',
  subject: 'length tolerances of tapping screws, types AB and B',
  table: 'length tolerances (table number not read)',
  columns: [
    { key: 'over', title: 'nominal length over', limit: 'nominal', unit: 'in', held: 'from memory' },
    { key: 'upTo', title: 'nominal length up to', limit: 'nominal', unit: 'in', held: 'from memory' },
    { key: 'upper', title: 'upper deviation of the length', limit: 'max', unit: 'in', held: 'from memory' },
    { key: 'lower', title: 'lower deviation of the length', limit: 'min', unit: 'in', held: 'from memory' },
  ],
  rows: [
    ['0-3/4', 0, 0.75, 0.03, -0.03],
    ['3/4-1 1/2', 0.75, 1.5, 0.05, -0.05],
    ['over 1 1/2', 1.5, null, 0.06, -0.06],
  ],
} as const satisfies Table;
