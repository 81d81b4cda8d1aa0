// ISO 2768-1, general tolerances for linear sizes, ± deviation.
// Edition: 1989.
// Table: linear sizes (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_2768_1_LINEAR = {
  standard: 'ISO 2768-1',
  edition: '1989',
  subject: 'general tolerances for linear sizes, ± deviation; not written for mouldings',
  table: 'linear sizes (table number not read)',
  columns: [
    {
      key: 'over',
      title: 'nominal size over',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies',
      note: 'The first band contains 0.5 mm itself (from memory).',
    },
    { key: 'upTo', title: 'nominal size up to', limit: 'nominal', unit: 'mm', held: 'read in 3 secondary copies' },
    { key: 'f', title: 'class f (fine), ±', unit: 'mm', held: 'read in 3 secondary copies' },
    { key: 'm', title: 'class m (medium), ±', unit: 'mm', held: 'read in 3 secondary copies' },
    {
      key: 'c',
      title: 'class c (coarse), ±',
      unit: 'mm',
      held: 'read in 3 secondary copies',
      note: 'Two copies print 0.15 / 0.2 in the first two bands; these belong to the older DIN 7168.',
    },
    { key: 'v', title: 'class v (very coarse), ±', unit: 'mm', held: 'read in 3 secondary copies' },
  ],
  rows: [
    ['0.5-3', 0.5, 3, 0.05, 0.1, 0.2, null],
    ['3-6', 3, 6, 0.05, 0.1, 0.3, 0.5],
    ['6-30', 6, 30, 0.1, 0.2, 0.5, 1],
    ['30-120', 30, 120, 0.15, 0.3, 0.8, 1.5],
    ['120-400', 120, 400, 0.2, 0.5, 1.2, 2.5],
    ['400-1000', 400, 1000, 0.3, 0.8, 2, 4],
    ['1000-2000', 1000, 2000, 0.5, 1.2, 3, 6],
    ['2000-4000', 2000, 4000, null, 2, 4, 8],
  ],
  exceptions: [
    { row: '0.5-3', key: 'c', held: 'read in 2 secondary copies' },
    { row: '3-6', key: 'c', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
