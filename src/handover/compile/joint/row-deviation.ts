// A tolerance of a row: a half width is followed, and so is the default; a text with two deviations holds while it is as sent.
import { withUnit } from '../../../core/call';
import type { Param } from '../../../core/card';
import type { Input } from '../../../joint/graph';
import { atom, type Ref } from '../../../plain/spreadsheet';
import { quoted } from '../inputs';
import type { AskedVariant, SentNumber } from './asked-variant';
import { type RowInput, takesDefault } from './row-input';
import type { WriteCell } from './row-print';
import { halfWidth, NONE, textOf } from './row-refs';

export function deviationRef(
  put: WriteCell,
  variant: AskedVariant,
  name: string,
  { param, meaning }: Input,
  here: RowInput | undefined,
  fallback: Ref | undefined,
  isTwoSided = variant.isTwoSided(name),
): Ref {
  const title = withUnit(name, 'mm');
  const [upperMm, lowerMm] = [variant.side(name, 'upperMm'), variant.side(name, 'lowerMm')];
  if (here === undefined) {
    if (fallback !== undefined && 'parts' in fallback) return fallback;
    return halfWidth(put(title, `± ${meaning}; default`, undefined, upperMm.worth));
  }
  const { cell } = here;
  const [upper, lower] = sidesOf(fallback);
  const side = (half: string, otherwise: string, { text }: SentNumber): string => sideFormula(param, here, half, otherwise, text);
  if (!isTwoSided) return halfWidth(put(title, `± ${meaning}`, side(cell, upper, upperMm), upperMm.worth));
  const part = (which: string, half: string, otherwise: string, sent: SentNumber): Ref =>
    atom(put(`${name}, ${which} (mm)`, meaning, side(half, otherwise, sent), sent.worth), NaN);
  return { parts: { upperMm: part('upper', cell, upper, upperMm), lowerMm: part('lower', `-${cell}`, lower, lowerMm) } };
}

/** Upper and lower deviation of a default, as formulas. */
function sidesOf(fallback: Ref | undefined): readonly [upper: string, lower: string] {
  if (fallback === undefined) return [NONE, NONE];
  if ('parts' in fallback) return [textOf(fallback.parts['upperMm']), textOf(fallback.parts['lowerMm'])];
  return [textOf(fallback), `-${textOf(fallback)}`];
}

/** One side of it: `half` where the cell has a number, `otherwise` where it takes the default, `sent` where it has its text. */
function sideFormula({ blank }: Param, { cell, typed }: RowInput, half: string, otherwise: string, sent: string): string {
  const isExplicit = blank === 'explicit';
  const asNumber = isExplicit ? `IF(${cell}>=0,${half},${NONE})` : `IF(${cell}>0,${half},IF(${cell}=0,${otherwise},${NONE}))`;
  const asDefault = `IF(${isExplicit ? `${cell}="default"` : `OR(${cell}="",${cell}="default")`},${otherwise},${NONE})`;
  const isText = typeof typed === 'string' && !takesDefault(typed);
  const asText = isText ? `IF(${cell}=${quoted(typed)},${sent},${asDefault})` : asDefault;
  return `IF(ISNUMBER(${cell}),${asNumber},${asText})`;
}
