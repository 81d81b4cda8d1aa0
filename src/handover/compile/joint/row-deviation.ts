// A tolerance of a row: a half width is followed, and so is the default; a text with two deviations holds while it is as sent.
import { withUnit } from '../../../core/call';
import type { Param } from '../../../core/card';
import type { Deviation } from '../../../core/read/deviation';
import type { Input } from '../../../joint/graph';
import { atom, number, type Ref } from '../../../plain/spreadsheet';
import { quoted } from '../inputs';
import { type RowInput, takesDefault, type WriteCell } from './row-input';
import { halfWidth, NONE, textOf } from './row-refs';

export function deviationRef(
  put: WriteCell,
  name: string,
  { param, meaning }: Input,
  { upperMm, lowerMm }: Deviation,
  here: RowInput | undefined,
  fallback: Ref | undefined,
  isTwoSided = upperMm + lowerMm !== 0,
): Ref {
  const title = withUnit(name, 'mm');
  if (here === undefined) {
    if (fallback !== undefined && 'parts' in fallback) return fallback;
    return halfWidth(put(title, `± ${meaning}; default`, undefined, upperMm), upperMm);
  }
  const { cell } = here;
  const [upper, lower] = sidesOf(fallback);
  const side = (half: string, otherwise: string, worth: number): string => sideFormula(param, here, half, otherwise, worth);
  if (!isTwoSided) return halfWidth(put(title, `± ${meaning}`, side(cell, upper, upperMm), upperMm), upperMm);
  const part = (which: string, half: string, otherwise: string, worth: number): Ref =>
    atom(put(`${name}, ${which} (mm)`, meaning, side(half, otherwise, worth), worth), worth);
  return { parts: { upperMm: part('upper', cell, upper, upperMm), lowerMm: part('lower', `-${cell}`, lower, lowerMm) } };
}

/** Upper and lower deviation of a default, as formulas. */
function sidesOf(fallback: Ref | undefined): readonly [upper: string, lower: string] {
  if (fallback === undefined) return [NONE, NONE];
  if ('parts' in fallback) return [textOf(fallback.parts['upperMm']), textOf(fallback.parts['lowerMm'])];
  return [textOf(fallback), `-${textOf(fallback)}`];
}

/** One side of it: `half` where the cell has a number, `otherwise` where it takes the default, `worth` where it has its text. */
function sideFormula({ blank }: Param, { cell, typed }: RowInput, half: string, otherwise: string, worth: number): string {
  const isExplicit = blank === 'explicit';
  const asNumber = isExplicit ? `IF(${cell}>=0,${half},${NONE})` : `IF(${cell}>0,${half},IF(${cell}=0,${otherwise},${NONE}))`;
  const asDefault = `IF(${isExplicit ? `${cell}="default"` : `OR(${cell}="",${cell}="default")`},${otherwise},${NONE})`;
  const isText = typeof typed === 'string' && !takesDefault(typed);
  const asText = isText ? `IF(${cell}=${quoted(typed)},${number(worth).text},${asDefault})` : asDefault;
  return `IF(ISNUMBER(${cell}),${asNumber},${asText})`;
}
