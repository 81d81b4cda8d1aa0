// ASME B18.6.3, cross recessed pan head screws: head dimensions.
// Edition: 2010 / 2013 (not shown in the copies read).
// Table: pan heads, recess types I, IA and II (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_PAN_HEADS = {
  standard: 'ASME B18.6.3',
  edition: '2010 / 2013 (not shown in the copies read)',
  subject: 'cross recessed pan head screws',
  table: 'pan heads, recess types I, IA and II (table number not read)',
  columns: [
    { key: 'dkMax', title: 'head diameter A', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'dkMin', title: 'head diameter A', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    {
      key: 'kMax',
      title: 'head height H',
      limit: 'max',
      unit: 'in',
      held: 'read in 1 secondary copy',
      note: 'A slotted pan head is lower; a square recess (type III) head is taller for #3 to #10.',
    },
    { key: 'kMin', title: 'head height H', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 0.116, 0.104, 0.044, 0.036],
    ['#1', 0.142, 0.13, 0.053, 0.044],
    ['#2', 0.167, 0.155, 0.062, 0.053],
    ['#3', 0.193, 0.18, 0.071, 0.062],
    ['#4', 0.219, 0.205, 0.08, 0.07],
    ['#5', 0.245, 0.231, 0.089, 0.079],
    ['#6', 0.27, 0.256, 0.097, 0.087],
    ['#8', 0.322, 0.306, 0.115, 0.105],
    ['#10', 0.373, 0.357, 0.133, 0.122],
    ['1/4', 0.492, 0.473, 0.175, 0.162],
  ],
} as const satisfies Table;
