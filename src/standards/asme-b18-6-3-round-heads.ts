// ASME B18.6.3, slotted round head screws: head dimensions.
// Edition: an earlier ASA edition (edition from memory).
// Table: A26 of a handbook of 1956. Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_ROUND_HEADS = {
  standard: 'ASME B18.6.3',
  edition: 'an earlier ASA edition (edition from memory)',
  subject: 'slotted round head screws',
  table: 'Table A26 of a handbook of 1956',
  columns: [
    {
      key: 'dkMax',
      title: 'head diameter A',
      limit: 'max',
      unit: 'in',
      held: 'read in 1 secondary copy',
      note: 'An earlier edition; the standard keeps round heads only as not for new design.',
    },
    { key: 'dkMin', title: 'head diameter A', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'kMax', title: 'head height H', limit: 'max', unit: 'in', held: 'read in 1 secondary copy' },
    { key: 'kMin', title: 'head height H', limit: 'min', unit: 'in', held: 'read in 1 secondary copy' },
  ],
  rows: [
    ['#0', 0.113, 0.099, 0.053, 0.043],
    ['#1', 0.138, 0.122, 0.061, 0.051],
    ['#2', 0.162, 0.146, 0.069, 0.059],
    ['#3', 0.187, 0.169, 0.078, 0.067],
    ['#4', 0.211, 0.193, 0.086, 0.075],
    ['#5', 0.236, 0.217, 0.095, 0.083],
    ['#6', 0.26, 0.24, 0.103, 0.091],
    ['#8', 0.309, 0.287, 0.12, 0.107],
    ['#10', 0.359, 0.334, 0.137, 0.123],
    ['1/4', 0.472, 0.443, 0.175, 0.16],
  ],
  exceptions: [
    { row: '#2', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#8', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#10', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#8', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#10', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#8', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#10', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#2', key: 'kMin', held: 'read in 2 secondary copies' },
    { row: '#4', key: 'kMin', held: 'read in 2 secondary copies' },
    { row: '#6', key: 'kMin', held: 'read in 2 secondary copies' },
    { row: '#8', key: 'kMin', held: 'read in 2 secondary copies' },
    { row: '#10', key: 'kMin', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
