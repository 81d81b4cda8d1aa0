// ASME B18.6.3, nominal lengths of inch screws.
// Edition: any recent edition (edition from memory).
// Table: nominal lengths (number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_LENGTHS = {
  standard: 'ASME B18.6.3',
  edition: 'any recent edition (edition from memory)',
  subject: 'nominal lengths of inch screws',
  table: 'nominal lengths (table number not read)',
  columns: [
    {
      key: 'length',
      title: 'nominal length',
      limit: 'nominal',
      unit: 'in',
      held: 'from memory',
      note: 'A copy says only that lengths run in steps of 1/16 in.',
    },
  ],
  rows: [
    ['1/8', 0.125],
    ['3/16', 0.1875],
    ['1/4', 0.25],
    ['5/16', 0.3125],
    ['3/8', 0.375],
    ['7/16', 0.4375],
    ['1/2', 0.5],
    ['5/8', 0.625],
    ['3/4', 0.75],
    ['7/8', 0.875],
    ['1', 1],
    ['1 1/4', 1.25],
    ['1 1/2', 1.5],
    ['1 3/4', 1.75],
    ['2', 2],
  ],
} as const satisfies Table;
