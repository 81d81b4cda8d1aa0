// Clearance holes: ISO 273 for metric, ASME B18.2.8 for inch sizes, DIN 74-1 form C where it is asked for by name.
import { ASME_B18_2_8_CLEARANCE_HOLES } from '../../standards/asme-b18-2-8-clearance-holes';
import { DIN_74_1_FORM_C_HOLES } from '../../standards/din74-1-form-c-holes';
import { ISO_273_CLEARANCE_HOLES } from '../../standards/iso273-clearance-holes';
import type { Reading } from '../../standards/table';
import { notInTable } from '../refuse';
import { worthOf } from '../table';
import type { Size } from './size';

export const FITS = {
  fine: ['close'],
  medium: ['normal'],
  coarse: ['loose'],
  'din 74-1': ['din 74', 'form c'],
} as const;
export type Fit = keyof typeof FITS;

export const HOLE_LIMITS = { nominal: [], max: [], min: [] } as const;
export type HoleLimit = keyof typeof HOLE_LIMITS;

const INCH: Readonly<Record<Exclude<Fit, 'din 74-1'>, string>> = { fine: 'close', medium: 'normal', coarse: 'loose' };

/**
 * Where the clearance hole d_h is read, mm: ISO 273 for metric sizes, ASME B18.2.8 for inch sizes, DIN 74-1 where it is named.
 * size of the screw by name; fit fine, medium, coarse or DIN 74-1; limit nominal, max or min.
 * HOLE.CLEARANCE: what the table does not hold is refused.
 * Source: ISO 273:1979; ASME B18.2.8-1999; DIN 74-1 form C (withdrawn) (read in secondary copies; each value says how in SCREW.CARD).
 */
export function clearanceReadings(size: Size, fit: Fit, limit: HoleLimit): Reading[] {
  const row = size.gauge;
  if (size.own !== undefined) throw notInTable(`no standard clearance hole is available for an own screw; give the hole in mm`);
  if (fit === 'din 74-1') {
    if (limit !== 'nominal') throw notInTable(`${DIN_74_1_FORM_C_HOLES.standard} has nominal holes only here`);
    return [{ table: DIN_74_1_FORM_C_HOLES, row, key: 'hole' }];
  }
  if (size.family === 'ST')
    throw notInTable(
      `no standard clearance hole is available for ${size.text}; say fit "DIN 74-1" for its form C through hole, or give the hole in mm`,
    );
  if (size.family === 'M') return [{ table: ISO_273_CLEARANCE_HOLES, row, key: limit === 'max' ? `${fit}Max` : fit }];
  return [{ table: ASME_B18_2_8_CLEARANCE_HOLES, row, key: INCH[fit] + (limit === 'max' ? 'Max' : limit === 'min' ? 'Min' : '') }];
}

export const clearanceHoleMm = (size: Size, fit: Fit, limit: HoleLimit): number => worthOf(clearanceReadings(size, fit, limit));
