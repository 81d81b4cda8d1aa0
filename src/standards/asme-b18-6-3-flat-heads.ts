// ASME B18.6.3, flat countersunk head screws, 82°: head dimensions.
// Edition: 2010 / 2013 (not shown in the copies read).
// Table: flat countersunk heads (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_FLAT_HEADS = {
  standard: 'ASME B18.6.3',
  edition: '2010 / 2013 (not shown in the copies read)',
  subject: 'flat countersunk head screws, 82°',
  table: 'flat countersunk heads (table number not read)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter A, theoretical',
      limit: 'sharp',
      unit: 'in',
      held: 'read in 1 secondary copy of an older edition; that it is the sharp diameter is from memory',
      note: 'For the cone; the visible edge is dkMax. H max belongs here: (A − D)/(2·tan 40°) gives it within 0.001 in.',
    },
    { key: 'dkMax', title: 'head diameter A', limit: 'max', unit: 'in', held: 'read in 3 secondary copies' },
    {
      key: 'dkMin',
      title: 'head diameter A',
      limit: 'min',
      unit: 'in',
      held: 'read in 3 secondary copies',
      note: 'An older edition has 0.147 (#2), 0.195 (#4), 0.244 (#6), 0.34 (#10).',
    },
    { key: 'kMax', title: 'head height H', limit: 'max', unit: 'in', held: 'read in 3 secondary copies' },
    { key: 'kMin', title: 'head height H', limit: 'min', unit: 'in', held: 'read in 2 secondary copies' },
  ],
  rows: [
    ['#0', null, 0.112, 0.096, 0.035, 0.026],
    ['#1', null, 0.137, 0.12, 0.043, 0.033],
    ['#2', 0.172, 0.162, 0.144, 0.051, 0.04],
    ['#3', null, 0.187, 0.167, 0.059, 0.047],
    ['#4', 0.225, 0.212, 0.191, 0.067, 0.055],
    ['#5', 0.252, 0.237, 0.215, 0.075, 0.062],
    ['#6', 0.279, 0.262, 0.238, 0.083, 0.069],
    ['#8', 0.332, 0.312, 0.285, 0.1, 0.084],
    ['#10', 0.385, 0.362, 0.333, 0.116, 0.098],
    ['1/4', 0.507, 0.477, 0.442, 0.153, 0.131],
  ],
  exceptions: [
    { row: '#3', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '1/4', key: 'dkMax', held: 'read in 2 secondary copies' },
    { row: '#3', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '1/4', key: 'dkMin', held: 'read in 2 secondary copies' },
    { row: '#3', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '1/4', key: 'kMax', held: 'read in 2 secondary copies' },
    { row: '#3', key: 'kMin', held: 'read in 1 secondary copy' },
    { row: '1/4', key: 'kMin', held: 'read in 1 secondary copy' },
  ],
} as const satisfies Table;
