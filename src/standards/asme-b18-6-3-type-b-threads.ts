// ASME B18.6.3, tapping screw threads, types B and BP.
// Edition: 2013.
// Table: 5, by way of Machinery's Handbook, 31st edition. Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_TYPE_B_THREADS = {
  standard: 'ASME B18.6.3',
  edition: '2013',
  subject: 'tapping screw threads, types B and BP',
  table: "Table 5, by way of Machinery's Handbook, 31st edition",
  columns: [
    { key: 'tpi', title: 'threads per inch', limit: 'nominal', unit: '1/in', held: 'read in 2 secondary copies' },
    { key: 'majorMax', title: 'major diameter D', limit: 'max', unit: 'in', held: 'read in 2 secondary copies' },
    { key: 'majorMin', title: 'major diameter D', limit: 'min', unit: 'in', held: 'read in 2 secondary copies' },
    { key: 'rootMax', title: 'minor diameter d', limit: 'max', unit: 'in', held: 'read in 2 secondary copies' },
    { key: 'rootMin', title: 'minor diameter d', limit: 'min', unit: 'in', held: 'read in 2 secondary copies' },
    { key: 'pointDiaMax', title: 'point diameter, type B', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'pointDiaMin', title: 'point diameter, type B', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    {
      key: 'pointTaperMax',
      title: 'length of the point taper L, type B',
      limit: 'max',
      unit: 'in',
      held: 'read in 1 secondary copy',
    },
    {
      key: 'pointTaperMin',
      title: 'length of the point taper L, type B',
      limit: 'min',
      unit: 'in',
      held: 'read in 1 secondary copy',
    },
  ],
  rows: [
    ['#0', 48, 0.06, 0.054, 0.036, 0.033, 0.031, 0.027, 0.042, 0.031],
    ['#1', 42, 0.075, 0.069, 0.049, 0.046, 0.044, 0.04, 0.048, 0.036],
    ['#2', 32, 0.088, 0.082, 0.064, 0.06, 0.058, 0.054, 0.062, 0.047],
    ['#3', 28, 0.101, 0.095, 0.075, 0.071, 0.068, 0.063, 0.071, 0.054],
    ['#4', 24, 0.114, 0.108, 0.086, 0.082, 0.079, 0.074, 0.083, 0.063],
    ['#5', 20, 0.13, 0.123, 0.094, 0.09, 0.087, 0.082, 0.1, 0.075],
    ['#6', 20, 0.139, 0.132, 0.104, 0.099, 0.095, 0.089, 0.1, 0.075],
    ['#8', 18, 0.166, 0.159, 0.122, 0.116, 0.112, 0.106, 0.111, 0.083],
    ['#10', 16, 0.189, 0.182, 0.141, 0.135, 0.13, 0.123, 0.125, 0.094],
    ['1/4', 14, 0.246, 0.237, 0.192, 0.185, 0.179, 0.171, 0.143, 0.107],
  ],
  exceptions: [
    { row: '#0', key: 'tpi', held: 'read in 1 secondary copy' },
    { row: '#1', key: 'tpi', held: 'read in 1 secondary copy' },
    { row: '#3', key: 'tpi', held: 'read in 1 secondary copy' },
    { row: '#0', key: 'majorMax', held: 'read in 1 secondary copy' },
    { row: '#1', key: 'majorMax', held: 'read in 1 secondary copy' },
    { row: '#3', key: 'majorMax', held: 'read in 1 secondary copy' },
    { row: '#0', key: 'majorMin', held: 'read in 1 secondary copy' },
    { row: '#1', key: 'majorMin', held: 'read in 1 secondary copy' },
    { row: '#3', key: 'majorMin', held: 'read in 1 secondary copy' },
    { row: '#0', key: 'rootMax', held: 'read in 1 secondary copy' },
    { row: '#1', key: 'rootMax', held: 'read in 1 secondary copy' },
    { row: '#3', key: 'rootMax', held: 'read in 1 secondary copy' },
    { row: '#0', key: 'rootMin', held: 'read in 1 secondary copy' },
    { row: '#1', key: 'rootMin', held: 'read in 1 secondary copy' },
    { row: '#3', key: 'rootMin', held: 'read in 1 secondary copy' },
  ],
} as const satisfies Table;
