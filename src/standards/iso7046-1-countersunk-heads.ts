// ISO 7046-1, cross recessed countersunk head screws, 90°: head dimensions.
// Held as equal to ISO 2009 (both take the head form of ISO 7721, from memory), so the values are that table's.
import type { Table } from './table';
import { ISO_2009_COUNTERSUNK_HEADS } from './iso2009-countersunk-heads';

export const ISO_7046_1_COUNTERSUNK_HEADS = {
  ...ISO_2009_COUNTERSUNK_HEADS,
  standard: 'ISO 7046-1',
  subject: 'cross recessed countersunk head screws, 90°',
} as const satisfies Table;
