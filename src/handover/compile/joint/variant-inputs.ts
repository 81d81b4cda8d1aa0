// The inputs of a variant as cells: what they accept, and texts with a unit that become numbers.
import type { Deviation } from '../../../core/read/deviation';
import { limitWords } from '../../../core/read/limits';
import { Refused } from '../../../core/refuse';
import { unitOf } from '../../../joint/outputs';
import { type Variant } from '../../../joint/variant';
import { INPUTS } from '../../../joint/inputs';
import { address, fixedCell } from '../../../sheet/addresses';
import type { Validation } from '../../../sheet/plan';
import type { ConversionContext } from '../context';
import { choicesOf, isQuantity } from '../inputs';
import type { RowInput } from './row-input';
import type { VariantCells } from './variant-cells';

type VariantContext = Omit<ConversionContext, 'inner' | 'steps'>;

/** The inputs of one variant as cells. A text with a unit becomes a number there. */
export function variantInputs(
  context: VariantContext,
  { names, at: spotOf }: VariantCells,
  variant: Variant,
): ReadonlyMap<string, RowInput> {
  return new Map(
    names.map((name, i): [string, RowInput] => {
      const { sheet, row, column } = spotOf(i);
      const at = address(row, column);
      const typed = context.source.value(sheet, at);
      validate(context, sheet, at, name);
      return [name, { cell: fixedCell(sheet, row, column), typed: asNumber(context, sheet, at, name, typed, variant) ?? typed }];
    }),
  );
}

function validate(context: VariantContext, sheet: string, at: string, name: string): void {
  const param = INPUTS.get(name)?.param;
  if (param === undefined || context.source.cell(sheet, at)?.formula !== undefined) return;
  const words = choicesOf(param);
  const limits = limitWords(param.limits, param.kind.unit);
  const shown = [
    name,
    param.kind.unit,
    limits,
    INPUTS.get(name)?.defaultWords === 'required' ? 'required' : `blank: ${INPUTS.get(name)?.defaultWords}`,
  ]
    .filter(word => word !== '')
    .join(', ');
  const isNumber = param.kind.unit !== '' || param.limits !== undefined;
  const validation: Validation | undefined =
    words.length > 0
      ? { range: at, words: shown, list: context.data.choices(name, words) }
      : isNumber
        ? { range: at, words: shown, ...param.limits }
        : undefined;
  if (validation !== undefined) context.validations.set(`${sheet}!${at}`, validation);
}

function asNumber(context: VariantContext, sheet: string, at: string, name: string, typed: unknown, variant: Variant): number | undefined {
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
