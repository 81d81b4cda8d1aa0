// A word to choose, and the records of the core that a text names.
import type { Param } from '../../../core/card';
import { isBlank } from '../../../core/read/cells';
import { atom, text } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { choiceFormula, choicesOf, quoted } from '../inputs';
import { type BoundArgument, type Argument, labelOf, isLiteral, cellOf, addressOf, oneCell } from './argument';
import { textStep } from './expression';
import { fixed } from './fixed';
import { boundNumber } from './number';

/** A record of the core: one number that stands in a cell is followed, the rest is not. */
export function boundRecord(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  value: object,
  label: string,
): BoundArgument | undefined {
  const numbers = Object.entries(value).filter((entry): entry is [string, number] => typeof entry[1] === 'number');
  const [first] = numbers;
  if (first !== undefined && numbers.length === 1) {
    const bound = boundNumber(context, param, argument, first[1], label);
    return bound && { ...bound, ref: { parts: { [first[0]]: bound.ref } } };
  }
  const parts = numbers.map(
    ([key, part]) =>
      [
        key,
        atom(context.steps.row({ label: `${label} ${key.replace(/(Mm|Deg)$/, '')}`, value: part, words: 'value, not live' }), part),
      ] as const,
  );
  return fixed(context, argument, { parts: Object.fromEntries(parts) });
}

export function boundWord(context: ConversionContext, param: Param, argument: Argument, value: string): BoundArgument | undefined {
  if (isLiteral(argument.node)) return { ref: text(value), conditions: [], live: true };
  const words = choicesOf(param);
  const area = oneCell(argument);
  const cell = area === undefined ? textStep(context, argument, labelOf(param)) : cellOf(area);
  if (cell === undefined) return fixed(context, argument, text(value));
  const raw =
    area === undefined ? context.source.evaluate(argument.node, argument.sheet) : context.source.value(area.sheet, addressOf(area));
  const fallback =
    typeof param.blank === 'object' && 'default' in param.blank && typeof param.blank.default === 'string'
      ? quoted(param.blank.default)
      : undefined;
  const row = context.steps.row({
    label: labelOf(param),
    formula: choiceFormula(cell, words, fallback, isBlank(raw) ? undefined : { typed: raw, means: value }),
    value,
    words: words.length === 0 ? 'as sent' : words.join(', '),
  });
  return { ref: atom(row, value), conditions: [], live: words.length > 1 };
}
