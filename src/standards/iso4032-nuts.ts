// ISO 4032, hexagon regular nuts, style 1, product grade A.
// Edition: 2012 (one copy names BS EN ISO 4032:2001, with the same digits).
// Table: not numbered in the copies read. Unit: mm.
// Copied from the collected records on 2026-11-29; re-read against the records.
import type { Table } from './table';

export const ISO_4032_NUTS = {
  standard: 'ISO 4032',
  edition: '2012 (one copy names BS EN ISO 4032:2001, with the same digits)',
  subject: 'hexagon regular nuts, style 1, product grade A',
  table: 'not numbered in the copies read',
  columns: [
    {
      key: 'flatsMax',
      title: 'width across flats s',
      limit: 'max',
      unit: 'mm',
      held: 'read in 4 secondary copies',
    },
    {
      key: 'flatsMin',
      title: 'width across flats s',
      limit: 'min',
      unit: 'mm',
      held: 'read in 4 secondary copies',
    },
    {
      key: 'cornersMin',
      title: 'width across corners e',
      limit: 'min',
      unit: 'mm',
      held: 'read in 4 secondary copies',
    },
    {
      key: 'heightMax',
      title: 'height m',
      limit: 'max',
      unit: 'mm',
      held: 'read in 4 secondary copies',
      note: 'one further copy rounds m of M5 and M6 to the values of another edition, 4.0 and 5.0; not followed',
    },
    {
      key: 'heightMin',
      title: 'height m',
      limit: 'min',
      unit: 'mm',
      held: 'read in 4 secondary copies',
      note: 'one further copy rounds m of M5 and M6 to the values of another edition, 4.0 and 5.0; not followed',
    },
  ],
  rows: [
    ['M1.6', 3.2, 3.02, 3.41, 1.3, 1.05],
    ['M2', 4, 3.82, 4.32, 1.6, 1.35],
    ['M2.5', 5, 4.82, 5.45, 2, 1.75],
    ['M3', 5.5, 5.32, 6.01, 2.4, 2.15],
    ['M3.5', 6, 5.82, 6.58, 2.8, 2.55],
    ['M4', 7, 6.78, 7.66, 3.2, 2.9],
    ['M5', 8, 7.78, 8.79, 4.7, 4.4],
    ['M6', 10, 9.78, 11.05, 5.2, 4.9],
  ],
  exceptions: [
    { row: 'M1.6', key: 'flatsMax', held: 'read in 3 secondary copies' },
    { row: 'M1.6', key: 'flatsMin', held: 'read in 3 secondary copies' },
    { row: 'M1.6', key: 'cornersMin', held: 'read in 3 secondary copies' },
    { row: 'M1.6', key: 'heightMax', held: 'read in 3 secondary copies' },
    { row: 'M1.6', key: 'heightMin', held: 'read in 3 secondary copies' },
    { row: 'M2', key: 'flatsMax', held: 'read in 3 secondary copies' },
    { row: 'M2', key: 'flatsMin', held: 'read in 3 secondary copies' },
    { row: 'M2', key: 'cornersMin', held: 'read in 3 secondary copies' },
    { row: 'M2', key: 'heightMax', held: 'read in 3 secondary copies' },
    { row: 'M2', key: 'heightMin', held: 'read in 3 secondary copies' },
    { row: 'M2.5', key: 'flatsMax', held: 'read in 3 secondary copies' },
    { row: 'M2.5', key: 'flatsMin', held: 'read in 3 secondary copies' },
    { row: 'M2.5', key: 'cornersMin', held: 'read in 3 secondary copies' },
    { row: 'M2.5', key: 'heightMax', held: 'read in 3 secondary copies' },
    { row: 'M2.5', key: 'heightMin', held: 'read in 3 secondary copies' },
    { row: 'M3.5', key: 'flatsMax', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'flatsMin', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'cornersMin', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'heightMax', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'heightMin', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
