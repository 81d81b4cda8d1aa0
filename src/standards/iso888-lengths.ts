// ISO 888, nominal lengths of machine screws.
// Edition: 2012 (its own list was not read).
// Table: nominal lengths (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_888_LENGTHS = {
  standard: 'ISO 888',
  edition: '2012 (its own list was not read)',
  subject: 'nominal lengths of machine screws',
  table: 'nominal lengths (table number not read)',
  columns: [
    {
      key: 'length',
      title: 'nominal length l',
      limit: 'nominal',
      unit: 'mm',
      held: 'read under product standards in 2 secondary copies',
      note: 'Read in the length lists of ISO 1207, ISO 7046-2 and ISO 7380.',
    },
  ],
  rows: [
    ['2', 2],
    ['3', 3],
    ['4', 4],
    ['5', 5],
    ['6', 6],
    ['8', 8],
    ['10', 10],
    ['12', 12],
    ['14', 14],
    ['16', 16],
    ['20', 20],
    ['25', 25],
    ['30', 30],
    ['35', 35],
    ['40', 40],
    ['45', 45],
    ['50', 50],
    ['55', 55],
    ['60', 60],
  ],
  exceptions: [
    { row: '2', key: 'length', held: 'read under product standards in 1 secondary copy' },
    { row: '6', key: 'length', held: 'read under product standards in 3 secondary copies' },
    { row: '8', key: 'length', held: 'read under product standards in 3 secondary copies' },
    { row: '10', key: 'length', held: 'read under product standards in 3 secondary copies' },
    { row: '12', key: 'length', held: 'read under product standards in 3 secondary copies' },
    {
      row: '14',
      key: 'length',
      held: 'read under product standards in 2 secondary copies',
      note: 'Printed in brackets in ISO 1207: to be avoided.',
    },
    { row: '16', key: 'length', held: 'read under product standards in 3 secondary copies' },
    { row: '20', key: 'length', held: 'read under product standards in 3 secondary copies' },
    {
      row: '55',
      key: 'length',
      held: 'read under product standards in 2 secondary copies',
      note: 'Printed in brackets in ISO 1207: to be avoided.',
    },
  ],
} as const satisfies Table;
