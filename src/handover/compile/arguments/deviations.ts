// A list of tolerances, row by row.
import type { Param } from '../../../core/card';
import type { Deviations } from '../../../core/read/deviation';
import { atom, negative, type Ref } from '../../../plain/spreadsheet';
import type { Area } from '../../../sheet/addresses';
import { areaOf } from '../../../sheet/formula';
import type { ConversionContext } from '../context';
import { sameAs } from '../inputs';
import { exportedValue } from '../unchanged';
import { type BoundArgument, type Argument, cellOf, addressOf, rowsOf, spareRows } from './argument';
import { halfOf } from './deviation';
import { fixed } from './fixed';
import { boundList } from './list';
import { isNumberCell } from './number-cell';

/** Each row on its own: half widths are followed, other deviations stay. */
export function boundDeviations(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  { upperMm, lowerMm }: Deviations,
  label: string,
): BoundArgument | undefined {
  const halves = upperMm.map((upper, i) => halfOf({ upperMm: upper, lowerMm: lowerMm[i] ?? 0 }));
  const cells = argument.node === null ? undefined : rowsOf(areaOf(argument.node, argument.sheet));
  if (halves.every(half => half !== undefined) || cells === undefined || cells.length < upperMm.length)
    return sameBothWays(context, param, argument, { upperMm, lowerMm }, label);
  const rows = upperMm.map((upper, i): BoundArgument => {
    const [area, half, lower] = [cells[i] as Area, halves[i], lowerMm[i] ?? 0];
    const cell = cellOf(area);
    if (half !== undefined && isNumberCell(context, area, param.kind.unit, half))
      return {
        ref: { parts: { upperMm: atom(cell, half), lowerMm: negative(atom(cell, half)) } },
        conditions: [`ISNUMBER(${cell})`, `${cell}>=0`],
        live: true,
      };
    const side = (which: string, value: number): Ref =>
      atom(
        context.steps.row({
          label: `${label} ${i + 1}, ${which}`,
          value,
          unit: 'mm',
          words: 'value, not live: one cell holds both deviations',
        }),
        value,
      );
    return {
      ref: { parts: { upperMm: side('upper', upper), lowerMm: side('lower', lower) } },
      conditions: sameAs(cell, exportedValue(context, area.sheet, addressOf(area))) ?? [],
      live: false,
    };
  });
  const items = (key: string): Ref => ({ items: rows.map(({ ref }) => (ref as { parts: Record<string, Ref> }).parts[key] as Ref) });
  return {
    ref: { parts: { upperMm: items('upperMm'), lowerMm: items('lowerMm') } },
    conditions: rows.flatMap(({ conditions }) => conditions).concat(spareRows(cells.slice(upperMm.length))),
    live: rows.some(({ live }) => live),
  };
}

function sameBothWays(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  value: Deviations,
  label: string,
): BoundArgument | undefined {
  if (value.upperMm.every((upper, i) => upper + (value.lowerMm[i] ?? 0) === 0)) {
    const list = boundList(context, param, argument, value.upperMm, label);
    if (list === undefined) return undefined;
    const lower: Ref = { items: list.cells.map((cell, i) => negative(atom(cell, value.upperMm[i] ?? 0))) };
    return {
      ref: { parts: { upperMm: list.ref, lowerMm: lower } },
      conditions: [...list.conditions, ...[...new Set(list.cells)].map(cell => `${cell}>=0`)],
      live: list.live,
    };
  }
  const side = (list: readonly number[], which: string): Ref => ({
    items: list.map((deviation, i) =>
      atom(context.steps.row({ label: `${label} ${i + 1}, ${which}`, value: deviation, unit: 'mm', words: 'value, not live' }), deviation),
    ),
  });
  return fixed(context, argument, { parts: { upperMm: side(value.upperMm, 'upper'), lowerMm: side(value.lowerMm, 'lower') } });
}
