// The inputs of a variant as cells: texts with a unit become numbers there.
import type { Deviation } from '../../../core/read/deviation';
import { Refused } from '../../../core/refuse';
import { unitOf } from '../../../joint/outputs';
import { type Variant } from '../../../joint/variant';
import { address, fixedCell } from '../../../sheet/addresses';
import type { SharedContext } from '../context';
import { isQuantity } from '../inputs';
import { type RowInput, rowInput } from './row-input';
import type { VariantCells } from './variant-cells';

/** The inputs of one variant as cells. A text with a unit becomes a number there. */
export function variantInputs(
  context: SharedContext,
  { names, at: spotOf }: VariantCells,
  variant: Variant,
): ReadonlyMap<string, RowInput> {
  return new Map(
    names.map((name, i): [string, RowInput] => {
      const { sheet, row, column } = spotOf(i);
      const at = address(row, column);
      const typed = context.source.value(sheet, at);
      return [name, rowInput(fixedCell(sheet, row, column), asNumber(context, sheet, at, name, typed, variant) ?? typed)];
    }),
  );
}

function asNumber(context: SharedContext, sheet: string, at: string, name: string, typed: unknown, variant: Variant): number | undefined {
  if (typeof typed !== 'string' || !isQuantity(typed) || context.source.cell(sheet, at)?.formula !== undefined) return undefined;
  const value = orNothing(() => variant.value(name));
  const { upperMm, lowerMm } = typeof value === 'object' && value !== null ? (value as Partial<Deviation>) : {};
  const worth = upperMm !== undefined && lowerMm !== undefined && upperMm + lowerMm === 0 ? upperMm : value;
  if (typeof worth !== 'number') return undefined;
  const key = `${sheet}!${at}`;
  const known = context.converted.get(key);
  if (known !== undefined && known.value !== worth) return undefined;
  context.converted.set(key, { value: worth, unit: unitOf(name), typed });
  return worth;
}

export function orNothing<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}
