// The thread of a screw: which table holds it, and the values the formulas use.
import { ASME_B1_1_UNIFIED_THREADS_2A } from '../../standards/asme-b1-1-unified-threads-2a';
import { ASME_B18_6_3_TYPE_AB_THREADS } from '../../standards/asme-b18-6-3-type-ab-threads';
import { ASME_B18_6_3_TYPE_B_THREADS } from '../../standards/asme-b18-6-3-type-b-threads';
import { ISO_1478_TAPPING_SCREW_THREADS } from '../../standards/iso1478-tapping-screw-threads';
import { ISO_965_2_METRIC_THREADS_6G } from '../../standards/iso965-2-metric-threads-6g';
import type { Table } from '../kinds';
import { notInTable, wrongInput } from '../refuse';
import { hasRow, tableRange, valueOf } from '../table';
import type { Family, Size } from './size';

const TABLES: Readonly<Record<Exclude<Family, '#'>, Table>> = {
  M: ISO_965_2_METRIC_THREADS_6G,
  ST: ISO_1478_TAPPING_SCREW_THREADS,
  UN: ASME_B1_1_UNIFIED_THREADS_2A,
  AB: ASME_B18_6_3_TYPE_AB_THREADS,
  B: ASME_B18_6_3_TYPE_B_THREADS,
};

const TAPPING: readonly Family[] = ['ST', 'AB', 'B'];

/** What formulas may take from a screw. `nominalMm` is d of every ratio: basic major for machine screws, major max for tapping screws. */
export interface Screw {
  readonly size: Size;
  readonly nominalMm: number;
  readonly majorMaxMm: number;
  readonly majorMinMm: number;
  readonly rootMaxMm: number;
  readonly pitchMm: number;
  readonly isTapping: boolean;
}

export function threadTable(size: Size): Table {
  if (size.family === '#') {
    const threads = ASME_B1_1_UNIFIED_THREADS_2A.rows.map(([key]) => key).filter(key => key.startsWith(`${size.gauge}-`));
    throw wrongInput(`the thread matters here; say ${[...threads, `${size.gauge} AB`].join(', ')} or ${size.gauge} B`);
  }
  return TABLES[size.family];
}

/** The row of the thread table: `#4` for `#4 AB`. */
export const threadRow = (size: Size): string => (size.family === 'AB' || size.family === 'B' ? size.gauge : size.text);

export function threadValueMm(size: Size, key: string): number {
  return valueOf(threadTable(size), threadRow(size), key);
}

export function pitchMm(size: Size): number {
  return size.family === 'M' || size.family === 'ST' ? threadValueMm(size, 'pitch') : 25.4 / threadValueMm(size, 'tpi');
}

export function nominalDiaMm(size: Size): number {
  return isTapping(size) ? threadValueMm(size, 'majorMax') : threadValueMm(size, 'nominal');
}

export const isTapping = (size: Size): boolean => TAPPING.includes(size.family);

const known = new Map<string, Screw>();

export function screwOf(size: Size): Screw {
  const held = known.get(size.text);
  if (held !== undefined) return held;
  const table = threadTable(size);
  if (!hasRow(table, threadRow(size))) throw notInTable(`${size.text} is not in ${tableRange(table)}`);
  const screw: Screw = {
    size,
    nominalMm: nominalDiaMm(size),
    majorMaxMm: threadValueMm(size, 'majorMax'),
    majorMinMm: threadValueMm(size, 'majorMin'),
    rootMaxMm: threadValueMm(size, 'rootMax'),
    pitchMm: pitchMm(size),
    isTapping: isTapping(size),
  };
  known.set(size.text, screw);
  return screw;
}
