// ISO 273, clearance holes for bolts and screws.
// Edition: 1979 (edition from memory; one copy calls itself 2017, with the same values).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_273_CLEARANCE_HOLES = {
  standard: 'ISO 273',
  edition: '1979 (edition from memory; one copy calls itself 2017, with the same values)',
  subject: 'clearance holes for bolts and screws',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'fine',
      title: 'clearance hole dh, fine (H12)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'medium',
      title: 'clearance hole dh, medium (H13)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'coarse',
      title: 'clearance hole dh, coarse (H14)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'fineMax',
      title: 'clearance hole dh, fine, upper limit',
      limit: 'max',
      unit: 'mm',
      held: 'computed from the nominal hole and IT12 of ISO 286-1',
    },
    {
      key: 'mediumMax',
      title: 'clearance hole dh, medium, upper limit',
      limit: 'max',
      unit: 'mm',
      held: 'computed from the nominal hole and IT13 of ISO 286-1',
    },
    {
      key: 'coarseMax',
      title: 'clearance hole dh, coarse, upper limit',
      limit: 'max',
      unit: 'mm',
      held: 'computed from the nominal hole and IT14 of ISO 286-1',
    },
  ],
  rows: [
    ['M1.6', 1.7, 1.8, 2, 1.8, 1.94, 2.25],
    ['M2', 2.2, 2.4, 2.6, 2.3, 2.54, 2.85],
    ['M2.5', 2.7, 2.9, 3.1, 2.8, 3.04, 3.4],
    ['M3', 3.2, 3.4, 3.6, 3.32, 3.58, 3.9],
    ['M3.5', 3.7, 3.9, 4.2, 3.82, 4.08, 4.5],
    ['M4', 4.3, 4.5, 4.8, 4.42, 4.68, 5.1],
    ['M5', 5.3, 5.5, 5.8, 5.42, 5.68, 6.1],
    ['M6', 6.4, 6.6, 7, 6.55, 6.82, 7.36],
  ],
  exceptions: [
    { row: 'M3.5', key: 'fine', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'medium', held: 'read in 2 secondary copies' },
    { row: 'M3.5', key: 'coarse', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
