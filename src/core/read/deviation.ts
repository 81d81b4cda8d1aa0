// Tolerances as people write them: 0.1, "±0.1", "+0/-0.8", "0 / -0.8", "10 %".
import { wrongInput } from '../refuse';
import { LENGTH, readQuantity, unitsOf } from './quantity';

/** Upper and lower deviation from the nominal size, mm. */
export interface Deviation {
  readonly upperMm: number;
  readonly lowerMm: number;
}

/** The deviations of a stack, one entry a row. */
export interface Deviations {
  readonly upperMm: readonly number[];
  readonly lowerMm: readonly number[];
}

export const plusMinus = (halfWidthMm: number): Deviation => ({ upperMm: halfWidthMm, lowerMm: halfWidthMm === 0 ? 0 : -halfWidthMm });

const SIGNS = ['+', '-', '−'];

/** Position of the stroke between two deviations, or -1. A stroke inside a fraction has no sign behind it. */
function strokeAt(text: string): number {
  for (let i = 1; i < text.length; i++) {
    if (text[i] !== '/') continue;
    const rest = text.slice(i + 1).trimStart();
    if (SIGNS.includes(rest[0] ?? '')) return i;
  }
  const last = text.lastIndexOf('/');
  const rest = text.slice(last + 1).trim();
  return last > 0 && SIGNS.includes(text[0] ?? '') && (rest === '0' || rest.startsWith('0 ')) ? last : -1;
}

const hasUnit = (text: string): boolean => /[^\d.,+\-−/\s]/.test(text);

/** The unit at the end of the text, or nothing. */
const unitOf = (text: string): string => text.replace(/^[\d.,+\-−/\s]*/, '');

export function readDeviation(text: string): Deviation {
  const trimmed = text.trim();
  const stroke = strokeAt(trimmed);
  if (stroke < 0) {
    const half = trimmed.startsWith('±') ? trimmed.slice(1) : trimmed.startsWith('+-') || trimmed.startsWith('+/-') ? trimmed.slice(trimmed.indexOf('-') + 1) : trimmed;
    const halfWidthMm = readQuantity(half, LENGTH);
    if (halfWidthMm < 0) throw wrongInput('a tolerance is a half width of 0 or more, or "+a/-b"');
    return plusMinus(halfWidthMm);
  }
  const lower = trimmed.slice(stroke + 1);
  const upper = trimmed.slice(0, stroke);
  const upperMm = readQuantity(hasUnit(upper) ? upper : `${upper} ${unitOf(lower)}`, LENGTH);
  const lowerMm = readQuantity(lower, LENGTH);
  if (lowerMm > upperMm) throw wrongInput('the first deviation must be the upper one: "+0.1/-0.2"');
  return { upperMm, lowerMm };
}

export const DEVIATION_EXAMPLE = `0.1 for ±0.1, or "+0/-0.8"; units: ${unitsOf(LENGTH)}`;
