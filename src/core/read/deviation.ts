// Tolerances as people write them: 0.1, "±0.1", "+0/-0.8", "0 / -0.8", "10 %".
import { wrongInput } from '../refuse';
import { LENGTH, unitsOf } from './quantity';
import { readQuantity } from './read-quantity';

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

/** The half width on both sides. */
export function plusMinus(halfWidthMm: number): Deviation {
  if (halfWidthMm < 0) throw wrongInput('a tolerance is a half width of 0 or more, or "+a/-b"');
  return { upperMm: halfWidthMm, lowerMm: halfWidthMm === 0 ? 0 : -halfWidthMm };
}

export const PLUS_MINUS = ['±', '+-', '+−', '+/-', '+/−'];

/** Position of the stroke between two deviations, or -1. A stroke inside a fraction has neither a sign nor 0 behind it. */
export const strokeAt = (text: string): number => text.search(/\/\s*[+\-−]|\/\s*0(?![\d.,])[^/]*$/);

/** Everything that is not part of a number. */
export const unitsIn = (text: string): string[] => text.split(/[\d.,+\-−/\s]+/).filter(part => part !== '');

/** The text with the unit of what follows it, where it has none. */
export function withUnitOf(text: string, following: string): string {
  const units = new Set(unitsIn(following));
  if (unitsIn(text).length > 0 || units.size === 0) return text;
  if (units.size > 1) throw wrongInput('give every size its unit');
  return `${text} ${[...units][0]}`;
}

export function readDeviation(text: string): Deviation {
  const trimmed = text.trim();
  const mark = PLUS_MINUS.find(sign => trimmed.startsWith(sign));
  if (mark !== undefined) return plusMinus(readQuantity(trimmed.slice(mark.length), LENGTH));
  const stroke = strokeAt(trimmed);
  if (stroke < 0) {
    if (trimmed.startsWith('+')) throw wrongInput('one side only; write "+0.1/-0", or "±0.1" for both');
    return plusMinus(readQuantity(trimmed, LENGTH));
  }
  const lower = trimmed.slice(stroke + 1);
  const upperMm = readQuantity(withUnitOf(trimmed.slice(0, stroke), lower), LENGTH);
  const lowerMm = readQuantity(lower, LENGTH);
  if (lowerMm > upperMm) throw wrongInput('the first deviation must be the upper one: "+0.1/-0.2"');
  return { upperMm, lowerMm };
}

export const DEVIATION_EXAMPLE = `0.1 for ±0.1, or "+0/-0.8"; units: ${unitsOf(LENGTH)}`;
