// DIN 16901, general tolerances of plastic mouldings, group 130, ± deviation.
// Edition: 1982, withdrawn 2009.
// Table: general tolerances (number not read). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const DIN_16901_130 = {
  standard: 'DIN 16901',
  edition: '1982, withdrawn 2009',
  subject: 'general tolerances of plastic mouldings, group 130, ± deviation',
  table: 'general tolerances, group 130 (table number not read)',
  columns: [
    {
      key: 'over',
      title: 'nominal size over',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies, two of them related',
    },
    {
      key: 'upTo',
      title: 'nominal size up to',
      limit: 'nominal',
      unit: 'mm',
      held: 'read in 3 secondary copies, two of them related',
    },
    {
      key: 'across',
      title: 'series A, not tied to one tool part, ±',
      unit: 'mm',
      held: 'read in 3 secondary copies, two of them related',
    },
    {
      key: 'same',
      title: 'series B, tied to one tool part, ±',
      unit: 'mm',
      held: 'read in 3 secondary copies, two of them related',
      note: 'A less 0.1 in every band.',
    },
  ],
  rows: [
    ['0-1', 0, 1, 0.18, 0.08],
    ['1-3', 1, 3, 0.19, 0.09],
    ['3-6', 3, 6, 0.2, 0.1],
    ['6-10', 6, 10, 0.21, 0.11],
    ['10-15', 10, 15, 0.23, 0.13],
    ['15-22', 15, 22, 0.25, 0.15],
    ['22-30', 22, 30, 0.27, 0.17],
    ['30-40', 30, 40, 0.3, 0.2],
    ['40-53', 40, 53, 0.34, 0.24],
    ['53-70', 53, 70, 0.38, 0.28],
    ['70-90', 70, 90, 0.44, 0.34],
    ['90-120', 90, 120, 0.51, 0.41],
    ['120-160', 120, 160, 0.6, 0.5],
    ['160-200', 160, 200, 0.7, 0.6],
    ['200-250', 200, 250, 0.9, 0.8],
    ['250-315', 250, 315, 1.1, 1],
    ['315-400', 315, 400, 1.3, 1.2],
    ['400-500', 400, 500, 1.6, 1.5],
    ['500-630', 500, 630, 2, 1.9],
    ['630-800', 630, 800, 2.5, 2.4],
    ['800-1000', 800, 1000, 3, 2.9],
  ],
} as const satisfies Table;
