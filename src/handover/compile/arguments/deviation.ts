// A tolerance as its two deviations.
import type { Param } from '../../../core/card';
import type { Deviation } from '../../../core/read/deviation';
import { leadingSize } from '../../../core/screw/size';
import { threadTable } from '../../../core/screw/thread';
import { atom, negative, type Ref } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { lengthToleranceFormulas } from '../length-tolerance';
import { unchanged } from '../unchanged';
import { type BoundArgument, type Argument, scalarText, isLiteral, cellOf, addressOf, firstCell } from './argument';
import { fixed } from './fixed';
import { boundNumber } from './number';

/** The half width of a tolerance that is the same both ways. */
export const halfOf = ({ upperMm, lowerMm }: Deviation): number | undefined => (upperMm + lowerMm === 0 ? upperMm : undefined);

/** A tolerance as its two deviations; a half width counts both ways. */
export function boundDeviation(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  value: Deviation,
  label: string,
): BoundArgument | undefined {
  const looked = screwTolerance(context, argument, value, label);
  if (looked !== undefined) return looked;
  const half = halfOf(value);
  const bound = half === undefined ? undefined : boundNumber(context, param, argument, half, label);
  if (half !== undefined && bound !== undefined && 'text' in bound.ref) {
    const { text: cell } = bound.ref;
    const conditions = bound.conditions.length === 0 ? [] : [...bound.conditions, `${cell}>=0`];
    return {
      ...bound,
      ref: { parts: { upperMm: atom(cell, half), lowerMm: negative(atom(cell, half)) } },
      conditions,
    };
  }
  const side = (which: string, worth: number): Ref =>
    atom(
      context.steps.row({
        label: `${label}, ${which}`,
        value: worth,
        unit: 'mm',
        words: isLiteral(argument.node) ? 'typed in the formula' : 'value, not live: one cell holds both deviations',
      }),
      worth,
    );
  return fixed(context, argument, { parts: { upperMm: side('upper', value.upperMm), lowerMm: side('lower', value.lowerMm) } });
}

/** "ST2.9 cone": the tolerance of the screw's length, by the length that was given before. Within a family all sizes share it. */
function screwTolerance(context: ConversionContext, argument: Argument, value: Deviation, label: string): BoundArgument | undefined {
  const worth = argument.node === null ? undefined : context.source.evaluate(argument.node, argument.sheet);
  const screw = typeof worth === 'string' ? leadingSize(worth) : undefined;
  const lengthRef = argument.preceding.get('length');
  const length = scalarText(lengthRef);
  if (
    screw === undefined ||
    length === undefined ||
    lengthRef === undefined ||
    !('value' in lengthRef) ||
    typeof lengthRef.value !== 'number'
  )
    return undefined;
  const { family, text: size } = screw.size;
  const formulas = lengthToleranceFormulas(context.data, screw.size, length, /^(f|type f|blunt)/i.test(screw.rest) ? '"flat"' : '"cone"');
  const first = firstCell(argument);
  const table = threadTable(screw.size);
  const isFollowed =
    (family === 'M' || family === 'ST') && first !== undefined && context.source.value(first.area.sheet, addressOf(first.area)) === size;
  const conditions = unchanged(context, argument, isFollowed ? first.node : undefined);
  if (conditions === undefined) return undefined;
  const side = (which: string, formula: string, worthMm: number): Ref =>
    atom(
      context.steps.row({
        label: `${label}, ${which}`,
        formula,
        value: worthMm,
        unit: 'mm',
        words: `from the table on ${context.data.name}, for "${String(worth)}"`,
      }),
      worthMm,
    );
  return {
    ref: { parts: { upperMm: side('upper', formulas.upper, value.upperMm), lowerMm: side('lower', formulas.lower, value.lowerMm) } },
    conditions: [...conditions, ...(isFollowed ? [`ISNUMBER(MATCH(${cellOf(first.area)},${context.data.names(table)},0))`] : [])],
    live: true,
  };
}
