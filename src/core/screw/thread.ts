// The thread of a screw: which table holds it, and the values the formulas use.
import { ASME_B1_1_UNIFIED_THREADS_2A } from '../../standards/asme-b1-1-unified-threads-2a';
import { ASME_B18_6_3_TYPE_AB_THREADS } from '../../standards/asme-b18-6-3-type-ab-threads';
import { ASME_B18_6_3_TYPE_B_THREADS } from '../../standards/asme-b18-6-3-type-b-threads';
import { ISO_1478_TAPPING_SCREW_THREADS } from '../../standards/iso1478-tapping-screw-threads';
import { ISO_965_2_METRIC_THREADS_6G } from '../../standards/iso965-2-metric-threads-6g';
import type { Reading, Table } from '../../standards/table';
import { notInTable, wrongInput } from '../refuse';
import { hasRow, tableRange, worthOf } from '../table';
import { flankDegOf, isOwnTapping, ownReading } from './own';
import type { Family, Size } from './size';

const TABLES: Readonly<Record<Exclude<Family, '#' | 'own'>, Table>> = {
  M: ISO_965_2_METRIC_THREADS_6G,
  ST: ISO_1478_TAPPING_SCREW_THREADS,
  UN: ASME_B1_1_UNIFIED_THREADS_2A,
  AB: ASME_B18_6_3_TYPE_AB_THREADS,
  B: ASME_B18_6_3_TYPE_B_THREADS,
};

export type End = 'cone' | 'flat';

const TAPPING: readonly Family[] = ['ST', 'AB', 'B'];

/** What formulas may take from a screw. `nominalMm` is d of every ratio: basic major for machine screws, major max for tapping screws. */
export interface Screw {
  readonly size: Size;
  readonly nominalMm: number;
  readonly majorMaxMm: number;
  readonly majorMinMm: number;
  readonly rootMaxMm: number;
  readonly pitchMm: number;
  /** Half the thread angle. */
  readonly flankDeg: number;
  readonly isTapping: boolean;
}

export function threadTable(size: Size): Table {
  if (size.own !== undefined) return size.own.table;
  if (size.family === '#') {
    const threads = ASME_B1_1_UNIFIED_THREADS_2A.rows.map(([key]) => key).filter(key => key.startsWith(`${size.gauge}-`));
    throw wrongInput(`the thread matters here; say ${[...threads, `${size.gauge} AB`].join(', ')} or ${size.gauge} B`);
  }
  return TABLES[size.family as keyof typeof TABLES];
}

/** The row of the thread table: `#4` for `#4 AB`. */
export const threadRow = (size: Size): string => (size.family === 'AB' || size.family === 'B' ? size.gauge : size.text);

/** The sizes of a screw's thread table, as they are typed. */
export const familySizes = (size: Size): readonly string[] =>
  threadTable(size).rows.map(([row]) => (size.family === 'AB' || size.family === 'B' ? `${row} ${size.family}` : row));

const reading = (size: Size, key: string): Reading =>
  size.own === undefined ? { table: threadTable(size), row: threadRow(size), key } : ownReading(size.own, key);

export type MajorLimit = 'max' | 'min' | 'nominal';

/**
 * Where the major diameter d1 is read, mm; d of every ratio is `nominal`: basic major for machine screws, major max for tapping screws.
 * size of the screw by name; limit max, min or nominal.
 * SCREW.MAJOR: what the table does not hold is refused.
 * Source: ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B) (read in secondary copies; each value says how in SCREW.CARD).
 */
export function majorReadings(size: Size, limit: MajorLimit): Reading[] {
  return [
    reading(size, limit === 'min' ? 'majorMin' : limit === 'max' || size.own !== undefined || isTapping(size) ? 'majorMax' : 'nominal'),
  ];
}

/**
 * Where the root diameter d2 is read, mm.
 * size of the screw by name; limit max or min.
 * SCREW.ROOT: what the table does not hold is refused.
 * Source: ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B) (read in secondary copies; each value says how in SCREW.CARD).
 */
export function rootReadings(size: Size, limit: 'max' | 'min'): Reading[] {
  return [reading(size, limit === 'max' ? 'rootMax' : 'rootMin')];
}

/**
 * Where the pitch P is read, mm.
 * size of the screw by name.
 * SCREW.PITCH: what the table does not hold is refused.
 * Source: ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B) (read in secondary copies; each value says how in SCREW.CARD).
 */
export function pitchReadings(size: Size): Reading[] {
  return size.family === 'M' || size.family === 'ST' || size.own !== undefined
    ? [reading(size, 'pitch')]
    : [{ ...reading(size, 'tpi'), over: 25.4 }];
}

/**
 * Where the length y at the point without full thread is read, mm. Machine screws: two pitches.
 * size of the screw by name; end cone or flat.
 * SCREW.POINT: what the table does not hold is refused.
 * Source: ISO 1478 y; ASME B18.6.3 type B point taper; ISO 4753 two pitches for machine screws (read in secondary copies;
 * ISO 4753 from memory).
 */
export function pointReadings(size: Size, end: End): Reading[] {
  if (size.own !== undefined) return [reading(size, 'point')];
  if (size.family === 'ST') return [reading(size, end === 'cone' ? 'pointCone' : 'pointFlat')];
  if (size.family === 'B') return [reading(size, 'pointTaperMax')];
  if (size.family === 'AB') throw notInTable(`no point length is held for type AB (${threadTable(size).standard}); give the length in mm`);
  return pitchReadings(size).map(pitch => (pitch.over === undefined ? { ...pitch, times: 2 } : { ...pitch, over: 2 * pitch.over }));
}

export const nominalDiaMm = (size: Size): number => worthOf(majorReadings(size, 'nominal'));
export const pointMm = (size: Size, end: End): number => worthOf(pointReadings(size, end));

export const isTapping = ({ family, own }: Size): boolean => (own === undefined ? TAPPING.includes(family) : isOwnTapping(own));

export type ScrewSize = 'nominalMm' | 'majorMaxMm' | 'majorMinMm' | 'rootMaxMm' | 'pitchMm';

/** Where each size of a screw is read. */
export const SIZE_READINGS: Readonly<Record<ScrewSize, (size: Size) => readonly Reading[]>> = {
  nominalMm: size => majorReadings(size, 'nominal'),
  majorMaxMm: size => majorReadings(size, 'max'),
  majorMinMm: size => majorReadings(size, 'min'),
  rootMaxMm: size => rootReadings(size, 'max'),
  pitchMm: pitchReadings,
};

const known = new Map<string, Screw>();

const ownKnown = new WeakMap<Size, Screw>();

/** What the user left out is refused when somebody asks for it. */
function ownScrewOf(size: Size): Screw {
  const screw = { size, flankDeg: flankDegOf(size.own) };
  const late = (part: string, get: () => unknown): void => void Object.defineProperty(screw, part, { get, enumerable: false });
  for (const part of Object.keys(SIZE_READINGS) as ScrewSize[]) late(part, () => worthOf(SIZE_READINGS[part](size)));
  late('isTapping', () => isTapping(size));
  ownKnown.set(size, screw as Screw);
  return screw as Screw;
}

export function screwOf(size: Size): Screw {
  if (size.own !== undefined) return ownKnown.get(size) ?? ownScrewOf(size);
  const held = known.get(size.text);
  if (held !== undefined) return held;
  const table = threadTable(size);
  if (!hasRow(table, threadRow(size))) throw notInTable(`${size.text} is not in ${tableRange(table)}`);
  const sizeMm = (part: ScrewSize): number => worthOf(SIZE_READINGS[part](size));
  const screw: Screw = {
    size,
    nominalMm: sizeMm('nominalMm'),
    majorMaxMm: sizeMm('majorMaxMm'),
    majorMinMm: sizeMm('majorMinMm'),
    rootMaxMm: sizeMm('rootMaxMm'),
    pitchMm: sizeMm('pitchMm'),
    flankDeg: flankDegOf(undefined),
    isTapping: isTapping(size),
  };
  known.set(size.text, screw);
  return screw;
}
