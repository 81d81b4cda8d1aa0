// ISO 7051, cross recessed raised countersunk head tapping screws, 90°: head dimensions.
// Edition: 1983 and its successors (edition from memory).
// Table: 1 (from memory). Unit: mm.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ISO_7051_RAISED_COUNTERSUNK_HEADS = {
  standard: 'ISO 7051',
  edition: '1983 and its successors (edition from memory)',
  subject: 'cross recessed raised countersunk head tapping screws, 90°',
  table: 'Table 1 (from memory)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter dk, theoretical',
      limit: 'sharp',
      unit: 'mm',
      held: 'read under GB 847-85 (ISO 7051:1983)',
    },
    {
      key: 'dkMax',
      title: 'head diameter dk, actual',
      limit: 'max',
      unit: 'mm',
      held: 'read under GB 847-85 (ISO 7051:1983)',
    },
    {
      key: 'dkMin',
      title: 'head diameter dk, actual',
      limit: 'min',
      unit: 'mm',
      held: 'read under GB 847-85 (ISO 7051:1983)',
      note: 'Later editions have 6.94 / 8.04 / 8.94 for ST3.5 / ST4.2 / ST4.8 (from memory).',
    },
    {
      key: 'kMax',
      title: 'head height k, without the raised part',
      limit: 'max',
      unit: 'mm',
      held: 'read under GB 847-85 (ISO 7051:1983)',
    },
  ],
  rows: [
    ['ST2.2', 4.4, 3.8, 3.5, 1.1],
    ['ST2.9', 6.3, 5.5, 5.2, 1.7],
    ['ST3.5', 8.2, 7.3, 6.9, 2.35],
    ['ST4.2', 9.4, 8.4, 8, 2.6],
    ['ST4.8', 10.4, 9.3, 8.9, 2.8],
  ],
  exceptions: [
    {
      row: 'ST4.8',
      key: 'dkSharp',
      held: 'read under GB 847-85 (ISO 7051:1983)',
      note: 'The copy lost the leading 1 of 10.4; (10.4 − 4.8)/2 = 2.8 = k restores it.',
    },
  ],
} as const satisfies Table;
