// A hexagon nut in a pocket of the moulded part.
import { ISO_4032_NUTS } from '../../standards/iso4032-nuts';
import type { Reading } from '../../standards/table';
import { sqrt } from '../maths';
import type { Size } from '../screw/size';
import { valueOf } from '../table';

/** What formulas may take from a nut. */
export interface Nut {
  /** Its row in the table. */
  readonly row: string;
  readonly flatsMaxMm: number;
}

/** The nut of a size; what the table does not hold is refused. */
export const nutOf = ({ gauge }: Size): Nut => ({ row: gauge, flatsMaxMm: valueOf(ISO_4032_NUTS, gauge, 'flatsMax') });

/**
 * Width S across the flats of a pocket for a hexagon nut, mm: the widest nut goes in.
 * size of the nut, by its thread; c allowance, mm.
 * NUT.POCKET accepts c at least 0 mm.
 * Source: ISO 4032 width across flats (read in secondary copies); allowance of 0.1 mm (common practice, from memory).
 */
export function nutPocketMm(nut: Nut, allowanceMm: number): number {
  return nut.flatsMaxMm + allowanceMm;
}

/**
 * Width E across the corners of that pocket, mm: of a regular hexagon with sharp corners.
 * size of the nut, by its thread; c allowance, mm.
 * NUT.POCKET.CORNER accepts c at least 0 mm.
 * Source: ISO 4032 width across flats (read in secondary copies); allowance of 0.1 mm (common practice, from memory);
 * plane geometry (derived).
 */
export function nutPocketCornerMm(nut: Nut, allowanceMm: number): number {
  return (2 * nutPocketMm(nut, allowanceMm)) / sqrt(3);
}

/** Which end of the tolerance of a nut. */
export type NutLimit = 'max' | 'min';

/**
 * Where the height m of a hexagon nut is read, mm.
 * size of the nut, by its thread; limit max or min.
 * NUT.HEIGHT: what the table does not hold is refused.
 * Source: ISO 4032 (read in secondary copies).
 */
export function nutHeightReadings({ gauge }: Size, limit: NutLimit): Reading[] {
  return [{ table: ISO_4032_NUTS, row: gauge, key: limit === 'max' ? 'heightMax' : 'heightMin' }];
}
