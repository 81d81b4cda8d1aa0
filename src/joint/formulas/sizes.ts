// Sizes at their limits, choices between two, conditions.
import { atLeast } from '../../core/maths';
import { type Deviation } from '../../core/read/deviation';
import { lengthDeviation } from '../../core/screw/length';
import { type End, type Screw } from '../../core/screw/thread';
import { type PilotHeldAt, type Face } from './boss';

/** What is undefined until somebody gives it. */
export const notGiven = (): Deviation | undefined => undefined;

export function same(value: number): number {
  return value;
}

export function sameMm(valueMm: number): number {
  return valueMm;
}

export function largestMm(sizeMm: number, tol: Deviation): number {
  return sizeMm + tol.upperMm;
}

export function smallestMm(sizeMm: number, tol: Deviation): number {
  return sizeMm + tol.lowerMm;
}

export function chosen(isFirst: boolean, first: number, otherwise: number): number {
  return isFirst ? first : otherwise;
}

export function chosenN(isFirst: boolean, firstN: number, otherwiseN: number): number {
  return isFirst ? firstN : otherwiseN;
}

export function chosenMm(isFirst: boolean, firstMm: number, otherwiseMm: number): number {
  return isFirst ? firstMm : otherwiseMm;
}

export function chosenDeviation(isFirst: boolean, first: Deviation, otherwise: Deviation): Deviation {
  return { upperMm: isFirst ? first.upperMm : otherwise.upperMm, lowerMm: isFirst ? first.lowerMm : otherwise.lowerMm };
}

export function timesMm(factor: number, sizeMm: number): number {
  return factor * sizeMm;
}

export function timesD(factor: number, screw: Screw): number {
  return factor * screw.nominalMm;
}

export function sumMm(oneMm: number, otherMm: number): number {
  return oneMm + otherMm;
}

export function restMm(wholeMm: number, partMm: number): number {
  return wholeMm - partMm;
}

export function ratioOf(part: number, whole: number): number {
  return part / whole;
}

/** Of a size that may be left out. */
export function isThere(sizeMm: number): boolean {
  return sizeMm > 0;
}

/** A size that may be nothing, but not less. */
export function isAtLeastNone(sizeMm: number): boolean {
  return atLeast(sizeMm, 0);
}

export const isTappingScrew = ({ isTapping }: Screw): boolean => isTapping;

/** The tolerance of the table, or the user's own. */
export const lengthDeviationOr = (screw: Screw, lengthMm: number, end: End, own: Deviation | undefined): Deviation =>
  own ?? lengthDeviation(screw.size, lengthMm, end);

export function holds(isTrue: boolean): boolean {
  return isTrue;
}

/** Asked only where a value is given. */
export function given(value: number | undefined): number {
  return value as number;
}

export function isHidden(face: Face): boolean {
  return face !== 'show';
}

export function either(isOne: boolean, isOther: boolean): boolean {
  return isOne || isOther;
}

export function both(isOne: boolean, isOther: boolean): boolean {
  return isOne && isOther;
}

export function isNot(isTrue: boolean): boolean {
  return !isTrue;
}

export function isLarger(aMm: number, bMm: number): boolean {
  return aMm > bMm;
}

export function isHeldAtMid(heldAt: PilotHeldAt): boolean {
  return heldAt === 'mid';
}
