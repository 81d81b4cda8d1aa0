// ISO 7049, length tolerances of tapping screws.
// Edition: 2011 (DIN EN ISO 7049:2011-11).
// Table: length tolerances (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7049_LENGTH_TOLERANCES = {
  standard: 'ISO 7049',
  edition: '2011 (DIN EN ISO 7049:2011-11)',
  subject: 'length tolerances of tapping screws',
  table: 'length tolerances (table number not read)',
  columns: [
    { key: 'upTo', title: 'nominal length up to', limit: 'nominal', unit: 'mm', held: 'from memory' },
    {
      key: 'coneUpper',
      title: 'upper deviation of the length, type C (cone)',
      limit: 'max',
      unit: 'mm',
      held: 'from memory',
    },
    {
      key: 'coneLower',
      title: 'lower deviation of the length, type C (cone)',
      limit: 'min',
      unit: 'mm',
      held: 'from memory',
    },
    {
      key: 'flatUpper',
      title: 'upper deviation of the length, type F (flat)',
      limit: 'max',
      unit: 'mm',
      held: 'from memory',
    },
    {
      key: 'flatLower',
      title: 'lower deviation of the length, type F (flat)',
      limit: 'min',
      unit: 'mm',
      held: 'from memory',
    },
  ],
  rows: [
    ['19', 19, 0.8, -0.8, 0, -0.8],
    ['38', 38, 1.3, -1.3, 0, -1.3],
    ['50', 50, 1.5, -1.5, 0, -1.5],
  ],
  exceptions: [
    { row: '19', key: 'coneUpper', held: 'read under GB 847-85 (ISO 7051:1983) to 13 mm, from memory to 19 mm' },
    { row: '19', key: 'coneLower', held: 'read under GB 847-85 (ISO 7051:1983) to 13 mm, from memory to 19 mm' },
    { row: '19', key: 'flatUpper', held: 'read under GB 847-85 (ISO 7051:1983) to 9.5 mm, from memory to 19 mm' },
    { row: '19', key: 'flatLower', held: 'read under GB 847-85 (ISO 7051:1983) to 9.5 mm, from memory to 19 mm' },
  ],
} as const satisfies Table;
