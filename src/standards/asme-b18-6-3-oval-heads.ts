// ASME B18.6.3, oval countersunk head screws, 82°: head dimensions.
// Edition: 2010 / 2013 (not shown in the copies read).
// Table: slotted oval heads (table number not read). Unit: in.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Table } from './table';

export const ASME_B18_6_3_OVAL_HEADS = {
  standard: 'ASME B18.6.3',
  edition: '2010 / 2013 (not shown in the copies read)',
  subject: 'oval countersunk head screws, 82°',
  table: 'slotted oval heads (table number not read)',
  columns: [
    {
      key: 'dkSharp',
      title: 'head diameter A, theoretical',
      limit: 'sharp',
      unit: 'in',
      held: 'from memory: same A as the flat head',
    },
    { key: 'dkMax', title: 'head diameter A', limit: 'max', unit: 'in', held: 'from memory: same A as the flat head' },
    { key: 'dkMin', title: 'head diameter A', limit: 'min', unit: 'in', held: 'from memory: same A as the flat head' },
    {
      key: 'kMax',
      title: 'total head height O, raised part included',
      limit: 'max',
      unit: 'in',
      held: 'read in 1 secondary copy',
      note: 'Read for slotted heads.',
    },
    {
      key: 'coneMax',
      title: 'head height H, without the raised part',
      limit: 'max',
      unit: 'in',
      held: 'from memory: same H as the flat head',
    },
  ],
  rows: [
    ['#0', null, 0.112, 0.096, 0.056, 0.035],
    ['#1', null, 0.137, 0.12, 0.068, 0.043],
    ['#2', 0.172, 0.162, 0.144, 0.08, 0.051],
    ['#3', null, 0.187, 0.167, 0.092, 0.059],
    ['#4', 0.225, 0.212, 0.191, 0.104, 0.067],
    ['#5', 0.252, 0.237, 0.215, 0.116, 0.075],
    ['#6', 0.279, 0.262, 0.238, 0.128, 0.083],
    ['#8', 0.332, 0.312, 0.285, 0.152, 0.1],
    ['#10', 0.385, 0.362, 0.333, 0.176, 0.116],
    ['1/4', 0.507, 0.477, 0.442, 0.232, 0.153],
  ],
} as const satisfies Table;
