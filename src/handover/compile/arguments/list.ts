// A list of numbers: the user's cells one by one, so that each can be signed and checked.
import { limitFormulas } from '../limits';
import type { Param } from '../../../core/card';
import { atom } from '../../../plain/spreadsheet';
import { type Area, isOneCell } from '../../../sheet/addresses';
import { areaOf } from '../../../sheet/formula';
import type { ConversionContext } from '../context';
import { listLimits } from '../inputs';
import { MOST_WATCHED, unchanged } from '../unchanged';
import { type BoundArgument, type Argument, scalarText, isLiteral, cellOf, rowsOf, spareRows } from './argument';
import { boundNumber } from './number';
import { isNumberCell } from './number-cell';

interface BoundList extends BoundArgument {
  readonly cells: readonly string[];
}

/** Rows of a list: the user's cells one by one, so that each can be signed and checked. */
export function boundList(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  values: readonly number[],
  label: string,
): BoundList | undefined {
  const { node, sheet } = argument;
  const area = node === null ? undefined : areaOf(node, sheet);
  const unit = param.kind.unit;
  const limits = listLimits(param);
  if (area === undefined || isOneCell(area)) {
    const [value = 0] = values;
    if (values.every(item => item === value)) {
      const one = boundNumber(context, { ...param, ...(limits === undefined ? {} : { limits }) }, argument, value, label);
      const cell = one === undefined ? undefined : scalarText(one.ref);
      if (one === undefined || cell === undefined) return undefined;
      return { ...one, ref: { items: values.map(item => atom(cell, item)) }, cells: values.map(() => cell) };
    }
  } else {
    const areas = rowsOf(area) ?? [];
    if (values.every((value, i) => areas[i] !== undefined && isNumberCell(context, areas[i], unit, value))) {
      const cells = values.map((_, i) => cellOf(areas[i] as Area));
      if (areas.length - values.length > MOST_WATCHED) return undefined;
      return {
        ref: { items: cells.map((cell, i) => atom(cell, values[i])) },
        conditions: [...new Set(cells)]
          .flatMap(cell => [`ISNUMBER(${cell})`, ...limitFormulas(cell, limits)])
          .concat(spareRows(areas.slice(values.length))),
        live: true,
        cells,
      };
    }
  }
  const conditions = unchanged(context, argument);
  if (conditions === undefined) return undefined;
  const cells = values.map((value, i) =>
    context.steps.row({
      label: `${label} ${i + 1}`,
      value,
      unit,
      words: isLiteral(node) || node?.type === 'ArrayExpression' ? 'typed in the formula' : 'value, not live',
    }),
  );
  return { ref: { items: cells.map((cell, i) => atom(cell, values[i])) }, conditions, live: isLiteral(node), cells };
}
