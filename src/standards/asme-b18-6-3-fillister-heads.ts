// ASME B18.6.3, slotted fillister head screws: head dimensions.
// Edition: 2010 / 2013 (not shown in the copies read).
// Table: fillister heads (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_FILLISTER_HEADS = {
  standard: 'ASME B18.6.3',
  edition: '2010 / 2013 (not shown in the copies read)',
  subject: 'slotted fillister head screws',
  table: 'fillister heads (table number not read)',
  columns: [
    { key: 'dkMax', title: 'head diameter A', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'dkMin', title: 'head diameter A', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'kMax', title: 'total head height O', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'kMin', title: 'total head height O', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'sideMax', title: 'side height H', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'sideMin', title: 'side height H', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 0.096, 0.083, 0.055, 0.047, 0.043, 0.038],
    ['#1', 0.118, 0.104, 0.066, 0.058, 0.053, 0.045],
    ['#2', 0.14, 0.124, 0.083, 0.066, 0.062, 0.053],
    ['#3', 0.161, 0.145, 0.095, 0.077, 0.07, 0.061],
    ['#4', 0.183, 0.166, 0.107, 0.088, 0.079, 0.069],
    ['#5', 0.205, 0.187, 0.12, 0.1, 0.088, 0.078],
    ['#6', 0.226, 0.208, 0.132, 0.111, 0.096, 0.086],
    ['#8', 0.27, 0.25, 0.156, 0.133, 0.113, 0.102],
    ['#10', 0.313, 0.292, 0.18, 0.156, 0.13, 0.118],
    ['1/4', 0.414, 0.389, 0.237, 0.207, 0.17, 0.155],
  ],
} as const satisfies Table;
