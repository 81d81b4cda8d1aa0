// What stands in the cell of an input, as a formula: a number or word in its limits, else the default.
import type { Param } from '../../../core/card';
import type { Ref } from '../../../plain/spreadsheet';
import { choiceFormula, choicesOf, numberFormula, quoted } from '../inputs';
import type { RowGuards } from './row-guards';
import { type RowInput, takesDefault } from './row-input';
import { NONE } from './row-refs';

export function inputFormula(
  param: Param,
  { cell, typed }: RowInput,
  fallback: Ref | undefined,
  value: number | string,
  /** The value as a number in a formula. */
  sent: string,
  related: readonly string[],
  guards: RowGuards,
): string {
  const otherwise = fallback !== undefined && 'text' in fallback ? fallback.text : undefined;
  const isDefault = takesDefault(typed);
  // a default without a formula holds for the inputs as sent
  const made =
    isDefault && otherwise === undefined
      ? `IF(${guards.unchanged(param.name)},${typeof value === 'string' ? quoted(value) : sent},${NONE})`
      : otherwise;
  if (typeof value === 'string') return choiceFormula(cell, choicesOf(param), made, isDefault ? undefined : { typed, means: value });
  return numberFormula(cell, param, made, typeof typed === 'string' && !isDefault ? { typed, means: sent } : undefined, related);
}
