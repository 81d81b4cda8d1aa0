// ASME B18.6.3, slotted pan head screws: head dimensions.
// Edition: 2010 / 2013 (not shown in the copies read).
// Table: slotted pan heads (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_SLOTTED_PAN_HEADS = {
  standard: 'ASME B18.6.3',
  edition: '2010 / 2013 (not shown in the copies read)',
  subject: 'slotted pan head screws',
  table: 'slotted pan heads (table number not read)',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter A',
      limit: 'max',
      unit: 'in',
      held: 'from memory: the standard gives one A for slotted and recessed pan heads',
    },
    {
      key: 'dkMin',
      title: 'head diameter A',
      limit: 'min',
      unit: 'in',
      held: 'from memory: the standard gives one A for slotted and recessed pan heads',
    },
    { key: 'kMax', title: 'head height H', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'kMin', title: 'head height H', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 0.116, 0.104, 0.039, 0.031],
    ['#1', 0.142, 0.13, 0.046, 0.038],
    ['#2', 0.167, 0.155, 0.053, 0.045],
    ['#3', 0.193, 0.18, 0.06, 0.051],
    ['#4', 0.219, 0.205, 0.068, 0.058],
    ['#5', 0.245, 0.231, 0.075, 0.065],
    ['#6', 0.27, 0.256, 0.082, 0.072],
    ['#8', 0.322, 0.306, 0.096, 0.085],
    ['#10', 0.373, 0.357, 0.11, 0.099],
    ['1/4', 0.492, 0.473, 0.144, 0.13],
  ],
} as const satisfies Table;
