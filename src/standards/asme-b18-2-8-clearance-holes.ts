// ASME B18.2.8, clearance holes for bolts, screws and studs.
// Edition: 1999 (R2017).
// Table: 1a (limits in inches) and 3a (metric drills). Unit: in; the metric drills in mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_2_8_CLEARANCE_HOLES = {
  standard: 'ASME B18.2.8',
  edition: '1999 (R2017)',
  subject: 'clearance holes for bolts, screws and studs',
  table: "Tables 1a and 3a, by way of Machinery's Handbook, 31st edition",
  columns: [
    {
      key: 'closeMax',
      title: 'clearance hole, close fit',
      limit: 'max',
      unit: 'in',
      held: 'from memory, cross-checked',
      note: 'Charts of older tap drills carry this number too (#6 0.144 / 0.150); not used.',
    },
    {
      key: 'closeMin',
      title: 'clearance hole, close fit',
      limit: 'min',
      unit: 'in',
      held: 'from memory, cross-checked',
    },
    {
      key: 'normalMax',
      title: 'clearance hole, normal fit',
      limit: 'max',
      unit: 'in',
      held: 'from memory, cross-checked',
    },
    {
      key: 'normalMin',
      title: 'clearance hole, normal fit',
      limit: 'min',
      unit: 'in',
      held: 'from memory, cross-checked',
      note: 'The minimum agrees with the named drills (#1 No. 43 … 1/4 9/32), which were read.',
    },
    { key: 'looseMax', title: 'clearance hole, loose fit', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'looseMin', title: 'clearance hole, loose fit', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    {
      key: 'close',
      title: 'metric drill, close fit',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Column order rebuilt from running text.',
    },
    {
      key: 'normal',
      title: 'metric drill, normal fit',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
    { key: 'loose', title: 'metric drill, loose fit', limit: 'nominal', unit: 'mm', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 0.071, 0.067, 0.082, 0.076, 0.104, 0.094, 1.7, 1.9, 2.4],
    ['#1', 0.085, 0.081, 0.095, 0.089, 0.114, 0.104, 2.05, 2.25, 2.6],
    ['#2', 0.098, 0.094, 0.108, 0.102, 0.126, 0.116, 2.4, 2.6, 2.9],
    ['#3', 0.11, 0.106, 0.122, 0.116, 0.14, 0.128, 2.7, 2.9, 3.3],
    ['#4', 0.124, 0.12, 0.135, 0.128, 0.156, 0.144, 3, 3.3, 3.7],
    ['#5', 0.146, 0.141, 0.163, 0.156, 0.184, 0.172, 3.6, 4, 4.4],
    ['#6', 0.159, 0.154, 0.177, 0.17, 0.197, 0.185, 3.9, 4.3, 4.7],
    ['#8', 0.185, 0.18, 0.203, 0.196, 0.225, 0.213, 4.6, 5, 5.4],
    ['#10', 0.211, 0.206, 0.228, 0.221, 0.25, 0.238, 5.2, 5.6, 6],
    ['1/4', 0.272, 0.266, 0.29, 0.281, 0.311, 0.297, 6.7, 7.1, 7.5],
  ],
  exceptions: [
    {
      row: '#4',
      key: 'closeMax',
      held: 'from memory, cross-checked',
      note: '0.124 from memory; the H12 rule gives 0.125. Not settled.',
    },
    { row: '#0', key: 'normalMax', held: 'read in 2 secondary copies' },
    { row: '#0', key: 'normalMin', held: 'read in 2 secondary copies' },
    { row: '#10', key: 'looseMax', held: 'from memory, cross-checked' },
    { row: '#10', key: 'looseMin', held: 'from memory, cross-checked' },
  ],
} as const satisfies Table;
