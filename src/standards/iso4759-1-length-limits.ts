// ISO 4759-1, deviations of the length of machine screws, product grade A (js15 up to 150 mm).
// Edition: 2000 (edition from memory).
// Table: length limits (number not read). Unit: mm.
// Not for tapping screws, whose limits are much wider.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_4759_1_LENGTH_LIMITS = {
  standard: 'ISO 4759-1',
  edition: '2000 (edition from memory)',
  subject: 'length limits of machine screws, product grade A (js15 up to 150 mm)',
  table: 'length limits (table number not read)',
  columns: [
    {
      key: 'upper',
      title: 'upper deviation of the length l',
      limit: 'max',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Read as limits of size; the deviation is limit less nominal.',
    },
    {
      key: 'lower',
      title: 'lower deviation of the length l',
      limit: 'min',
      unit: 'mm',
      held: 'read in 1 secondary copy',
    },
  ],
  rows: [
    ['2', 0.2, -0.2],
    ['3', 0.2, -0.2],
    ['4', 0.24, -0.24],
    ['5', 0.24, -0.24],
    ['6', 0.24, -0.24],
    ['8', 0.29, -0.29],
    ['10', 0.29, -0.29],
    ['12', 0.35, -0.35],
    ['14', 0.35, -0.35],
    ['16', 0.35, -0.35],
    ['20', 0.42, -0.42],
    ['25', 0.42, -0.42],
    ['30', 0.42, -0.42],
    ['35', 0.5, -0.5],
    ['40', 0.5, -0.5],
    ['45', 0.5, -0.5],
    ['50', 0.5, -0.5],
    ['55', 0.6, -0.6],
    ['60', 0.6, -0.6],
  ],
  exceptions: [
    { row: '2', key: 'upper', held: 'from memory, cross-checked' },
    { row: '3', key: 'upper', held: 'from memory, cross-checked' },
    { row: '4', key: 'upper', held: 'from memory, cross-checked' },
    { row: '5', key: 'upper', held: 'from memory, cross-checked' },
    { row: '14', key: 'upper', held: 'from memory, cross-checked' },
    { row: '20', key: 'upper', held: 'read in 2 secondary copies' },
    { row: '25', key: 'upper', held: 'read in 2 secondary copies' },
    { row: '30', key: 'upper', held: 'read in 2 secondary copies' },
    { row: '35', key: 'upper', held: 'read in 2 secondary copies' },
    { row: '40', key: 'upper', held: 'read in 2 secondary copies' },
    { row: '2', key: 'lower', held: 'from memory, cross-checked' },
    { row: '3', key: 'lower', held: 'from memory, cross-checked' },
    { row: '4', key: 'lower', held: 'from memory, cross-checked' },
    { row: '5', key: 'lower', held: 'from memory, cross-checked' },
    { row: '14', key: 'lower', held: 'from memory, cross-checked' },
    { row: '20', key: 'lower', held: 'read in 2 secondary copies' },
    { row: '25', key: 'lower', held: 'read in 2 secondary copies' },
    { row: '30', key: 'lower', held: 'read in 2 secondary copies' },
    { row: '35', key: 'lower', held: 'read in 2 secondary copies' },
    { row: '40', key: 'lower', held: 'read in 2 secondary copies' },
  ],
} as const satisfies Table;
