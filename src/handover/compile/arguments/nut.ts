// A nut by the row of its table.
import type { Nut } from '../../../core/insert/nut';
import { atom } from '../../../plain/spreadsheet';
import { ISO_4032_NUTS } from '../../../standards/iso4032-nuts';
import type { ConversionContext } from '../context';
import type { Argument, BoundArgument } from './argument';
import { sizeKey } from './screw';

export function boundNut(context: ConversionContext, argument: Argument, nut: Nut): BoundArgument | undefined {
  const found = sizeKey(context, argument, nut.row);
  if (found === undefined) return undefined;
  const cell = context.steps.row({
    label: 'nut: width across flats, max',
    formula: context.data.lookup(ISO_4032_NUTS, 'flatsMax', found.key),
    value: nut.flatsMaxMm,
    unit: 'mm',
    words: `from the table on ${context.data.name}`,
    source: `${ISO_4032_NUTS.standard}:${context.sourceWords.table(ISO_4032_NUTS.edition)}`,
  });
  return { ref: { parts: { flatsMaxMm: atom(cell, nut.flatsMaxMm) } }, conditions: found.conditions, live: found.live };
}
