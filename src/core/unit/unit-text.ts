// Lengths as text: in both units, and asked about where the unit looks wrong.
import { fixedText } from '../decimal';
import { valueOf } from '../table';
import { type LengthKind, UNIT_BANDS } from './unit-bands';

const INCH_MM = 25.4;
const METRE_MM = 1000;

/**
 * A length in mm and in inches, as text.
 * l length, mm; mm_places decimals of the mm; in_places decimals of the inches.
 * DUAL accepts mm_places, in_places at least 1 and at most 9.
 * Source: international inch of 1959: 25.4 mm exactly (from memory).
 */
export function dualText(lengthMm: number, mmPlaces: number, inPlaces: number): string {
  return `${fixedText(lengthMm, mmPlaces)} mm (${fixedText(lengthMm / INCH_MM, inPlaces)} in)`;
}

const SLIPS = [
  { what: 'inches', timesMm: INCH_MM },
  { what: 'metres', timesMm: METRE_MM },
  { what: 'a radius', timesMm: 2 },
] as const;

const ROUND: readonly LengthKind[] = ['screw', 'head'];

/**
 * `ok`, or the slips that would bring the length into its usual band.
 * l length, mm; kind of length: wall, screw, head, board edge, board thickness or height.
 * UNIT.CHECK accepts l above 0 mm; other kinds are refused.
 * Source: common practice.
 */
export function unitCheck(lengthMm: number, kind: LengthKind): string {
  const [low, high] = [valueOf(UNIT_BANDS, kind, 'low'), valueOf(UNIT_BANDS, kind, 'high')];
  const usual = (mm: number): boolean => mm >= low && mm <= high;
  if (usual(lengthMm)) return 'ok';
  const slips = SLIPS.filter(({ what, timesMm }) => usual(lengthMm * timesMm) && (what !== 'a radius' || ROUND.includes(kind)));
  const guess = slips.map(({ what, timesMm }) => `${what} (then ${fixedText(lengthMm * timesMm, 2)} mm)`).join(' or ');
  const band = `${kind} is usually ${low} to ${high} mm`;
  return guess === '' ? `not usual: ${band}` : `looks like ${guess}; ${band}`;
}
