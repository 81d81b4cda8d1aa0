// Cells of the user that are numbers on the hand-over, and what they accept there.
import type { Param } from '../../../core/card';
import type { Limits } from '../../../core/kinds';
import { limitWords } from '../../../core/read/limits';
import type { Area } from '../../../sheet/addresses';
import type { ConversionContext } from '../context';
import { isQuantity } from '../inputs';
import { labelOf, addressOf } from './argument';

/** Whether a cell of the user is a number here: as it was, or made one from a text with its unit. */
export function isNumberCell(context: ConversionContext, area: Area, unit: string, value: number): boolean {
  const at = addressOf(area);
  const raw = context.source.value(area.sheet, at);
  if (typeof raw === 'number') return raw === value;
  if (typeof raw !== 'string' || !isQuantity(raw) || context.source.cell(area.sheet, at)?.formula !== undefined) return false;
  const key = `${area.sheet}!${at}`;
  const known = context.converted.get(key);
  if (known !== undefined && (known.value !== value || known.unit !== unit)) return false;
  context.converted.set(key, { value, unit, typed: raw });
  return true;
}

/** A cell that several calls read must be within the limits of all. */
export function validate(context: ConversionContext, area: Area, param: Param): void {
  const at = addressOf(area);
  if (param.kind.takesEverything || context.source.cell(area.sheet, at)?.formula !== undefined) return;
  const key = `${area.sheet}!${at}`;
  const known = context.validations.get(key);
  if (known?.list !== undefined) return;
  const limits = tightest(known ?? {}, param.limits ?? {});
  const name = known?.words.split(',')[0] ?? labelOf(param);
  const words = [name, param.kind.unit, limitWords(limits, param.kind.unit)].filter(word => word !== '').join(', ');
  context.validations.set(key, { range: at, words, ...limits });
}

function tightest(a: Limits, b: Limits): Limits {
  const both = (x: number | undefined, y: number | undefined, of: (...values: number[]) => number): number | undefined =>
    x === undefined || y === undefined ? (x ?? y) : of(x, y);
  const [above, atLeast] = [both(a.above, b.above, Math.max), both(a.atLeast, b.atLeast, Math.max)];
  const [below, atMost] = [both(a.below, b.below, Math.min), both(a.atMost, b.atMost, Math.min)];
  // of two lower limits the tighter one says it all
  const isAbove = above !== undefined && (atLeast === undefined || above >= atLeast);
  const isBelow = below !== undefined && (atMost === undefined || below <= atMost);
  return { ...(isAbove ? { above } : { atLeast }), ...(isBelow ? { below } : { atMost }) };
}
