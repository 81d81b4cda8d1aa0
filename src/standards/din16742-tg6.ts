// DIN 16742, general tolerances of plastic mouldings, tolerance group TG6, ± deviation.
// Edition: 2013 (not shown in the copies read); ISO 20457:2018 has the same row.
// Table: tolerance group TG6 (number not read). Unit: mm.
// ISO/FDIS 20457 was registered on 2026-03-25 (stage 50.00, project page of a national body). The other groups are not held.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const DIN_16742_TG6 = {
  standard: 'DIN 16742',
  edition: '2013 (not shown in the copies read); ISO 20457:2018 has the same row',
  subject: 'general tolerances of plastic mouldings, tolerance group TG6, ± deviation',
  table: 'tolerance group TG6 (table number not read)',
  columns: [
    { key: 'over', title: 'nominal size over', limit: 'nominal', unit: 'mm', held: 'read in 2 secondary copies' },
    { key: 'upTo', title: 'nominal size up to', limit: 'nominal', unit: 'mm', held: 'read in 2 secondary copies' },
    { key: 'same', title: 'W, tied to one tool part, ±', unit: 'mm', held: 'read in 1 secondary copy' },
    {
      key: 'across',
      title: 'NW, not tied to one tool part, ±',
      unit: 'mm',
      held: 'read in 2 secondary copies',
      note: 'One copy calls this row TG2; its ten figures are those of TG6. Equal to W moved one band up.',
    },
  ],
  rows: [
    ['1-3', 1, 3, 0.07, 0.12],
    ['3-6', 3, 6, 0.12, 0.18],
    ['6-10', 6, 10, 0.18, 0.22],
    ['10-18', 10, 18, 0.22, 0.26],
    ['18-30', 18, 30, 0.26, 0.31],
    ['30-50', 30, 50, 0.31, 0.37],
    ['50-80', 50, 80, 0.37, 0.57],
    ['80-120', 80, 120, 0.57, 0.8],
    ['120-180', 120, 180, 0.8, 0.93],
    ['180-250', 180, 250, 0.93, 1.05],
    ['250-315', 250, 315, 1.05, 1.15],
    ['315-400', 315, 400, 1.15, 1.6],
    ['400-500', 400, 500, 1.6, 2.2],
    ['500-630', 500, 630, 2.2, 2.5],
    ['630-800', 630, 800, 2.5, 2.8],
    ['800-1000', 800, 1000, 2.8, 3.1],
  ],
  exceptions: [
    { row: '250-315', key: 'over', held: 'read in 1 secondary copy' },
    { row: '315-400', key: 'over', held: 'read in 1 secondary copy' },
    { row: '400-500', key: 'over', held: 'read in 1 secondary copy' },
    { row: '500-630', key: 'over', held: 'read in 1 secondary copy' },
    { row: '630-800', key: 'over', held: 'read in 1 secondary copy' },
    { row: '800-1000', key: 'over', held: 'read in 1 secondary copy' },
    { row: '250-315', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '315-400', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '400-500', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '500-630', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '630-800', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '800-1000', key: 'upTo', held: 'read in 1 secondary copy' },
    { row: '250-315', key: 'across', held: 'read in 1 secondary copy' },
    { row: '315-400', key: 'across', held: 'read in 1 secondary copy' },
    { row: '400-500', key: 'across', held: 'read in 1 secondary copy' },
    { row: '500-630', key: 'across', held: 'read in 1 secondary copy' },
    { row: '630-800', key: 'across', held: 'read in 1 secondary copy' },
    { row: '800-1000', key: 'across', held: 'read in 1 secondary copy' },
  ],
} as const satisfies Table;
