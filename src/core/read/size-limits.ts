// A size with its tolerance as text: "1.6 ±10%", "3.2 +0.1/-0", "10 -0.2/-0.4", "3.4..3.6".
import type { Kind } from '../card';
import { type Refused, wrongInput } from '../refuse';
import { PLUS_MINUS, readDeviation, strokeAt, unitsIn, withUnitOf } from './deviation';
import { ONE } from './params';
import { LENGTH, SHARE, unitsOf } from './quantity';
import { readQuantity } from './read-quantity';

export interface SizeLimits {
  readonly nominalMm: number;
  readonly lowerMm: number;
  readonly upperMm: number;
}

const EXAMPLES = '"1.6 ±10%", "1.6 ±0.16", "3.2 +0.1/-0", "10 -0.2/-0.4" or "3.4..3.6"';

const notLimits = (): Refused =>
  wrongInput(`not a size with its limits; give ${EXAMPLES}; units: ${unitsOf(LENGTH)}, one at the end holds for all`);

/** A bare number behind a size in another unit than mm could be meant either way. */
function refuseBare(text: string, before: string): void {
  if (unitsIn(text).length === 0 && unitsIn(before).some(unit => unit !== 'mm')) throw wrongInput('give the tolerance its unit too');
}

/** Where the deviations begin, or -1: at the last sign before their stroke, or at the last word before it. */
function deviationsAt(text: string): number {
  const stroke = strokeAt(text);
  if (stroke < 0) return -1;
  const before = text.slice(0, stroke).trimEnd();
  const sign = Math.max(before.lastIndexOf('+'), before.lastIndexOf('-'), before.lastIndexOf('−'));
  return sign > 0 ? sign : before.lastIndexOf(' ');
}

export function readSizeLimits(given: string): SizeLimits {
  const text = given.trim().replace('…', '..');
  const dots = text.indexOf('..');
  if (dots > 0) {
    const [from, to] = [text.slice(0, dots), text.slice(dots + 2)];
    refuseBare(to, from);
    const lowerMm = readQuantity(withUnitOf(from, to), LENGTH);
    const upperMm = readQuantity(to, LENGTH);
    if (lowerMm > upperMm) throw wrongInput('the lower limit comes first: "3.4..3.6"');
    return { nominalMm: (lowerMm + upperMm) / 2, lowerMm, upperMm };
  }
  const sign = PLUS_MINUS.find(mark => text.includes(mark));
  const at = sign === undefined ? deviationsAt(text) : text.indexOf(sign);
  if (at <= 0) throw notLimits();
  const size = text.slice(0, at);
  const deviations = text.slice(at + (sign?.length ?? 0));
  if (deviations.endsWith('%')) {
    if (sign === undefined) throw wrongInput('per cent is read as ± only: "1.6 ±10%"');
    const share = readQuantity(deviations, SHARE);
    if (share < 0) throw notLimits();
    const nominalMm = readQuantity(size, LENGTH);
    const halfMm = share * Math.abs(nominalMm);
    return { nominalMm, lowerMm: nominalMm - halfMm, upperMm: nominalMm + halfMm };
  }
  refuseBare(deviations, size);
  const deviation = readDeviation(deviations);
  const nominalMm = readQuantity(withUnitOf(size, deviations), LENGTH);
  return { nominalMm, lowerMm: nominalMm + deviation.lowerMm, upperMm: nominalMm + deviation.upperMm };
}

export const SIZE_LIMITS: Kind<SizeLimits> = {
  ...ONE,
  is: 'size with limits',
  examples: EXAMPLES,
  noun: 'size with limits',
  unit: 'mm',
  read(raw) {
    if (typeof raw !== 'string') throw wrongInput('put the size and its tolerance in quotes, "1.6 ±10%"');
    return readSizeLimits(raw);
  },
};
