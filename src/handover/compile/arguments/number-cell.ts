// Cells of the user that are numbers on the hand-over.
import type { Area } from '../../../sheet/addresses';
import type { ConversionContext } from '../context';
import { isQuantity } from '../inputs';
import { addressOf } from './argument';

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
