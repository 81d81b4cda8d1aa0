// A number: typed, from a cell with its limits and default, from other cells, or out of a table.
import { limitFormulas } from '../limits';
import type { Param } from '../../../core/card';
import { isBlank } from '../../../core/read/cells';
import { OWN } from '../../../core/screw/own';
import { limitWords } from '../../../core/read/limits';
import { partOf } from '../../../core/read/relation';
import { atom, number } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { quoted } from '../inputs';
import { ownIn } from '../data-sheet';
import { unchanged } from '../unchanged';
import { type BoundArgument, type Argument, scalarText, isSignedLiteral, cellOf, addressOf, oneCell, firstCell } from './argument';
import { expression } from './expression';
import { fixed } from './fixed';
import { isNumberCell } from './number-cell';

const rowWords = (what: string, limits: string): string => (limits === '' ? what : `${what}, ${limits}`);

export function boundNumber(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  value: number,
  label: string,
): BoundArgument | undefined {
  const { node, sheet } = argument;
  const { kind, limits, blank } = param;
  const words = limitWords(limits, kind.unit);
  const row = (formula: string | undefined, what: string): string =>
    context.steps.row({ label, ...(formula === undefined ? {} : { formula }), value, unit: kind.unit, words: what });
  const inLimits = (input: string, cell = input): string[] => [`ISNUMBER(${cell})`, ...limitFormulas(input, limits)];
  const sameArgument =
    typeof blank !== 'object'
      ? undefined
      : 'sameAs' in blank
        ? blank.take === undefined
          ? scalarText(argument.preceding.get(blank.sameAs))
          : undefined
        : partText(argument, blank.given);
  if (node === null && sameArgument !== undefined)
    return { ref: atom(row(sameArgument, 'left out: the same'), value), conditions: [], live: true };
  if (isSignedLiteral(node)) {
    const what =
      node === null ? 'left out: the default' : typeof node.value === 'string' ? `typed as "${node.value}"` : 'typed in the formula';
    const input = context.steps.row({ label, value, unit: kind.unit, words: rowWords(what, words), isInput: true });
    return { ref: atom(input, value), conditions: inLimits(input), live: true };
  }
  const fallback =
    typeof blank !== 'object'
      ? undefined
      : 'default' in blank
        ? (sameArgument ?? (typeof blank.default === 'number' ? number(blank.default).text : undefined))
        : sameArgument;
  const area = oneCell(argument);
  if (area === undefined) {
    const worth = context.source.evaluate(node, sheet);
    if (typeof worth !== 'string' && !Array.isArray(worth)) {
      if (fallback === undefined && isBlank(worth) && value !== 0)
        return fixed(context, argument, atom(row(undefined, 'blank: value, not live'), value));
      const made = expression(context, argument);
      const input = row(
        fallback === undefined || fallback === '0' ? made : `IF(${made}=0,${fallback},${made})`,
        rowWords('from other cells', words),
      );
      return { ref: atom(input, value), conditions: inLimits(input), live: true };
    }
    return (
      (typeof worth === 'string' ? lookedUp(context, param, argument, worth, row, value) : undefined) ??
      (ownIn(worth) === undefined ? undefined : fromText(context, param, argument, worth, row, value)) ??
      fixed(context, argument, atom(row(undefined, 'value, not live'), value))
    );
  }
  const cell = cellOf(area);
  const raw = context.source.value(area.sheet, addressOf(area));
  if (isBlank(raw) || isNumberCell(context, area, kind.unit, value)) {
    // a blank that takes what another argument brings along has no formula
    if (isBlank(raw) && fallback === undefined && value !== 0)
      return fixed(context, argument, atom(row(undefined, 'blank: value, not live'), value));
    // not every program takes a blank for a number
    const zero = blank === 'zero' || fallback === '0' ? `IF(${cell}="",0,${cell})` : cell;
    const formula =
      fallback === undefined || fallback === '0'
        ? zero
        : `IF(ISNUMBER(${cell}),IF(${cell}=0,${fallback},${cell}),IF(${cell}="",${fallback},${cell}))`;
    const input = row(formula, rowWords('input', words));
    return { ref: atom(input, value), conditions: inLimits(input, blank === 'refused' || blank === 'explicit' ? cell : input), live: true };
  }
  return fromText(context, param, argument, raw, row, value);
}

/** A text stays as it was sent; the value of a table that it names is read there. */
function fromText(
  context: ConversionContext,
  { kind }: Param,
  argument: Argument,
  text: unknown,
  row: (formula: string | undefined, what: string) => string,
  value: number,
): BoundArgument | undefined {
  const looked = typeof text === 'string' ? kind.from?.tableValue?.(text) : undefined;
  const formula = looked && context.data.lookup(looked.table, looked.key, quoted(looked.row));
  const bound = fixed(context, argument, atom(row(formula, `from the text "${String(text)}"`), value), looked !== undefined);
  return bound && { ...bound, live: bound.live || looked?.row === OWN };
}

/** What an argument before it brings along. */
function partText({ preceding }: Argument, path = ''): string | undefined {
  const [name, part = ''] = partOf(path);
  const owner = preceding.get(name);
  return owner !== undefined && 'parts' in owner ? scalarText(owner.parts[part]) : undefined;
}

/** `size cell & " " & head`: the row of the table follows the size cell, the table itself stays. */
function lookedUp(
  context: ConversionContext,
  { kind }: Param,
  argument: Argument,
  worth: string,
  row: (formula: string, what: string) => string,
  value: number,
): BoundArgument | undefined {
  const first = firstCell(argument);
  const found = kind.from?.tableValue?.(worth);
  const conditions = first === undefined ? undefined : unchanged(context, argument, first.node);
  if (
    first === undefined ||
    found === undefined ||
    conditions === undefined ||
    context.source.value(first.area.sheet, addressOf(first.area)) !== found.row
  )
    return undefined;
  return {
    ref: atom(
      row(context.data.lookup(found.table, found.key, cellOf(first.area)), `from the table on ${context.data.name}, for "${worth}"`),
      value,
    ),
    conditions,
    live: true,
  };
}
