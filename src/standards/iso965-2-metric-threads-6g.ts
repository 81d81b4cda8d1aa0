// ISO 965-2, metric coarse threads of tolerance class 6g, with pitch and basic diameters of ISO 261, 262, 724 and 68-1.
// Edition: 1998 (edition from memory); the other standards are named in the column titles.
// Table: limits of size (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_965_2_METRIC_THREADS_6G = {
  standard: 'ISO 965-2',
  edition: '1998 (edition from memory)',
  subject: 'metric coarse threads, tolerance class 6g',
  table: 'limits of size, medium quality (table number not read)',
  columns: [
    {
      key: 'nominal',
      title: 'basic major diameter d (designation)',
      limit: 'nominal',
      unit: 'mm',
      held: 'by designation',
    },
    {
      key: 'pitch',
      title: 'coarse pitch P (ISO 261 and ISO 262:1998)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'majorMax',
      title: 'major diameter d, 6g (ISO 965-2)',
      limit: 'max',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'majorMin',
      title: 'major diameter d, 6g (ISO 965-2)',
      limit: 'min',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'pitchDiaMax',
      title: 'pitch diameter d2, 6g (ISO 965-2)',
      limit: 'max',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'pitchDiaMin',
      title: 'pitch diameter d2, 6g (ISO 965-2)',
      limit: 'min',
      unit: 'mm',
      held: 'read in 3 secondary copies',
    },
    {
      key: 'rootMax',
      title: 'minor diameter d1, 6g, flat root (ASME B1.13M-2005, as ISO 965)',
      limit: 'max',
      unit: 'mm',
      held: 'read in 2 secondary copies',
    },
    {
      key: 'rootMin',
      title: 'minor diameter d3, 6g, rounded root (ASME B1.13M-2005, as ISO 965)',
      limit: 'min',
      unit: 'mm',
      held: 'read in 2 secondary copies',
    },
    {
      key: 'pitchDiaBasic',
      title: 'basic pitch diameter d2 (ISO 724:1993)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Recomputed as d − 0.649519·P.',
    },
    {
      key: 'd1Basic',
      title: 'basic minor diameter D1, internal thread (ISO 724:1993)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 2 secondary copies',
      note: 'Recomputed as d − 1.082532·P.',
    },
    {
      key: 'd3Basic',
      title: 'core diameter d3, rounded root, design form (ISO 68-1 and ISO 724)',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 1 secondary copy',
      note: 'Recomputed as d − 1.226869·P.',
    },
  ],
  rows: [
    ['M1.6', 1.6, 0.35, 1.581, 1.496, 1.354, 1.291, 1.202, 1.075, 1.373, 1.221, 1.171],
    ['M2', 2, 0.4, 1.981, 1.886, 1.721, 1.654, 1.548, 1.408, 1.74, 1.567, 1.509],
    ['M2.5', 2.5, 0.45, 2.48, 2.38, 2.188, 2.117, 1.993, 1.84, 2.208, 2.013, 1.948],
    ['M3', 3, 0.5, 2.98, 2.874, 2.655, 2.58, 2.438, 2.272, 2.675, 2.459, 2.387],
    ['M3.5', 3.5, 0.6, 3.479, 3.354, 3.089, 3.004, 2.829, 2.634, 3.11, 2.85, 2.764],
    ['M4', 4, 0.7, 3.978, 3.838, 3.523, 3.433, 3.22, 3.002, 3.545, 3.242, 3.141],
    ['M5', 5, 0.8, 4.976, 4.826, 4.456, 4.361, 4.11, 3.868, 4.48, 4.134, 4.019],
    ['M6', 6, 1, 5.974, 5.794, 5.324, 5.212, 4.891, 4.596, 5.35, 4.917, 4.773],
  ],
  exceptions: [
    { row: 'M6', key: 'pitchDiaMax', held: 'read in 2 secondary copies' },
    { row: 'M6', key: 'pitchDiaMin', held: 'read in 2 secondary copies' },
    { row: 'M6', key: 'rootMax', held: 'read in 1 secondary copy' },
    { row: 'M6', key: 'rootMin', held: 'read in 1 secondary copy' },
  ],
} as const satisfies Table;
