// ISO 7049, nominal lengths of tapping screws.
// Edition: 2011 (DIN EN ISO 7049:2011-11).
// Table: commercial lengths (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7049_TAPPING_SCREW_LENGTHS = {
  standard: 'ISO 7049',
  edition: '2011 (DIN EN ISO 7049:2011-11)',
  subject: 'nominal lengths of tapping screws',
  table: 'commercial lengths (table number not read)',
  columns: [
    {
      key: 'length',
      title: 'nominal length l',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'ISO 7049 begins at ST2.2 × 4.5.',
    },
  ],
  rows: [
    ['4.5', 4.5],
    ['6.5', 6.5],
    ['9.5', 9.5],
    ['13', 13],
    ['16', 16],
    ['19', 19],
    ['22', 22],
    ['25', 25],
    ['32', 32],
    ['38', 38],
    ['45', 45],
    ['50', 50],
  ],
  exceptions: [
    { row: '4.5', key: 'length', held: 'read in 2 secondary copies' },
    { row: '6.5', key: 'length', held: 'read in 2 secondary copies' },
    { row: '9.5', key: 'length', held: 'read in 2 secondary copies' },
    { row: '13', key: 'length', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
