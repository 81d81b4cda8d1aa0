// ISO 1478, tapping screw threads: limits and incomplete thread at the point.
// Edition: 1999.
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from '../core/kinds';

export const ISO_1478_TAPPING_SCREW_THREADS = {
  standard: 'ISO 1478',
  edition: '1999',
  subject: 'tapping screw threads',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'pitch', title: 'pitch P', limit: 'approx', unit: 'mm', held: 'read in 1 secondary copy',
      note: 'Rounded from 25.4 mm / threads per inch, e.g. ST2.9 25.4/24 = 1.058. One copy has 1.4 for ST3.9 (25.4/19 = 1.337).',
    },
    {
      key: 'majorMax', title: 'major diameter d1', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy',
      note: 'Not the nominal: ST2.2 is 2.24, ST4.2 is 4.22.',
    },
    { key: 'majorMin', title: 'major diameter d1', limit: 'min', unit: 'mm', held: 'read in 1 secondary copy' },
    { key: 'rootMax', title: 'core diameter d2', limit: 'max', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'rootMin', title: 'core diameter d2', limit: 'min', unit: 'mm', held: 'from memory, cross-checked',
      note: 'Checked against the minor diameter minimum of ASME B18.6.3 types AB and B.',
    },
    {
      key: 'pointDiaMax', title: 'diameter of the flat end d3, type F', limit: 'max', unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'pointDiaMin', title: 'diameter of the flat end d3, type F', limit: 'min', unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'pointCone', title: 'length of incomplete thread y, type C (cone)', limit: 'max', unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'pointFlat', title: 'length of incomplete thread y, type F (flat)', limit: 'max', unit: 'mm',
      held: 'read in 3 secondary copies',
    },
  ],
  rows: [
    ['ST1.5', 0.5, 1.52, 1.38, 0.91, 0.84, 0.79, 0.69, 1.4, 1.1],
    ['ST1.9', 0.6, 1.9, 1.76, 1.24, 1.17, 1.12, 1.02, 1.6, 1.2],
    ['ST2.2', 0.8, 2.24, 2.1, 1.63, 1.52, 1.47, 1.37, 2, 1.6],
    ['ST2.6', 0.9, 2.57, 2.43, 1.9, 1.8, 1.73, 1.6, 2.3, 1.8],
    ['ST2.9', 1.1, 2.9, 2.76, 2.18, 2.08, 2.01, 1.88, 2.6, 2.1],
    ['ST3.3', 1.3, 3.3, 3.12, 2.39, 2.29, 2.21, 2.08, 3, 2.5],
    ['ST3.5', 1.3, 3.53, 3.35, 2.64, 2.51, 2.41, 2.26, 3.2, 2.5],
    ['ST3.9', 1.3, 3.91, 3.73, 2.92, 2.77, 2.67, 2.51, 3.5, 2.7],
    ['ST4.2', 1.4, 4.22, 4.04, 3.1, 2.95, 2.84, 2.69, 3.7, 2.8],
    ['ST4.8', 1.6, 4.8, 4.62, 3.58, 3.43, 3.3, 3.12, 4.3, 3.2],
  ],
  exceptions: [
    { row: 'ST2.2', key: 'pitch', held: 'read in 3 secondary copies' },
    { row: 'ST2.9', key: 'pitch', held: 'read in 3 secondary copies' },
    { row: 'ST3.5', key: 'pitch', held: 'read in 3 secondary copies' },
    { row: 'ST4.2', key: 'pitch', held: 'read in 3 secondary copies' },
    { row: 'ST4.8', key: 'pitch', held: 'read in 3 secondary copies' },
    { row: 'ST2.2', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: 'ST2.9', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: 'ST3.5', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: 'ST4.2', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: 'ST4.8', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: 'ST1.5', key: 'pointCone', held: 'read in 1 secondary copy' },
    { row: 'ST1.9', key: 'pointCone', held: 'read in 1 secondary copy' },
    { row: 'ST2.6', key: 'pointCone', held: 'read in 1 secondary copy' },
    { row: 'ST3.3', key: 'pointCone', held: 'read in 1 secondary copy' },
    { row: 'ST3.9', key: 'pointCone', held: 'read in 2 secondary copies' },
    { row: 'ST1.5', key: 'pointFlat', held: 'read in 1 secondary copy' },
    { row: 'ST1.9', key: 'pointFlat', held: 'read in 1 secondary copy' },
    { row: 'ST2.6', key: 'pointFlat', held: 'read in 1 secondary copy' },
    { row: 'ST3.3', key: 'pointFlat', held: 'read in 1 secondary copy' },
    { row: 'ST3.9', key: 'pointFlat', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
