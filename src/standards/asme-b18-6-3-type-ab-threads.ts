// ASME B18.6.3, tapping screw threads, type AB.
// Edition: 2013 (read under the former number B18.6.4).
// Table: type AB (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_TYPE_AB_THREADS = {
  standard: 'ASME B18.6.3',
  edition: '2013 (read under the former number B18.6.4)',
  subject: 'tapping screw threads, type AB',
  table: 'type AB (table number not read)',
  columns: [
    { key: 'tpi', title: 'threads per inch', limit: 'nominal', unit: '1/in', held: 'read in 1 secondary copy' },
    { key: 'majorMax', title: 'major diameter D', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'majorMin', title: 'major diameter D', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'rootMax', title: 'minor diameter d', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'rootMin', title: 'minor diameter d', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 48, 0.06, 0.054, 0.036, 0.033],
    ['#1', 42, 0.075, 0.069, 0.049, 0.046],
    ['#2', 32, 0.088, 0.082, 0.064, 0.06],
    ['#3', 28, 0.101, 0.095, 0.075, 0.071],
    ['#4', 24, 0.114, 0.108, 0.086, 0.082],
    ['#5', 20, 0.13, 0.123, 0.094, 0.09],
    ['#6', 20, 0.139, 0.132, 0.104, 0.099],
    ['#8', 18, 0.166, 0.159, 0.122, 0.116],
    ['#10', 16, 0.189, 0.182, 0.141, 0.135],
    ['1/4', 14, 0.246, 0.237, 0.192, 0.185],
  ],
  exceptions: [
    { row: '#2', key: 'tpi', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'tpi', held: 'read in 2 secondary copies' },
    { row: '#5', key: 'tpi', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'tpi', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: '#5', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'majorMax', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'majorMin', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'majorMin', held: 'read in 2 secondary copies' },
    { row: '#5', key: 'majorMin', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'majorMin', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'rootMax', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'rootMax', held: 'read in 2 secondary copies' },
    { row: '#5', key: 'rootMax', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'rootMax', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'rootMin', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'rootMin', held: 'read in 2 secondary copies' },
    { row: '#5', key: 'rootMin', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'rootMin', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
