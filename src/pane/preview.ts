// The answer of a call before it is in a cell.
import type { Card, Param } from '../core/card';
import type { Cell } from '../core/kinds';
import type { Area } from '../sheet/addresses';
import { areaOf, beamOf, parseFormula, walk } from '../sheet/formula';
import { isFault, type Known, type WorkbookValues } from '../sheet/workbook-values';
import { call } from '../registry';
import type { TypedArgument } from './typed-argument';

export type Preview =
  | { readonly is: 'incomplete'; readonly missing: readonly string[] }
  | { readonly is: 'answer'; readonly value: Cell | Cell[][]; readonly working: string }
  | { readonly is: 'refused'; readonly message: string; readonly argument?: string }
  /** A piece of a formula that only the sheet can work out. */
  | { readonly is: 'unknown'; readonly argument: string };

/** Blanks that have no meaning of their own. */
export const isMissing = ({ blank, optional }: Param, given: TypedArgument | undefined): boolean =>
  given?.is === 'blank' && !optional && (blank === 'refused' || blank === 'explicit');

/** The areas that the arguments read. */
export const areasRead = (given: readonly TypedArgument[], home: string): Area[] =>
  given.flatMap(argument => {
    const tree = argument.is === 'formula' ? parseFormula(argument.text) : undefined;
    return tree === undefined ? [] : [...walk(tree)].flatMap(node => areaOf(node, home) ?? beamOf(node, home) ?? []);
  });

function worth(argument: TypedArgument, source: WorkbookValues, home: string): Known {
  if (argument.is === 'blank') return null;
  if (argument.is === 'value') return argument.value;
  if (argument.is === 'list') return argument.values.map(value => [value]);
  return source.evaluate(parseFormula(argument.text), home);
}

const unfilled = (params: readonly Param[], given: readonly TypedArgument[]): string[] =>
  params.filter((param, i) => isMissing(param, given[i])).map(({ name }) => name);

/** @param home the sheet on which the formula will stand. */
export function preview(card: Card, given: readonly TypedArgument[], source: WorkbookValues, home: string): Preview {
  const missing = unfilled(card.params, given);
  if (missing.length > 0) return { is: 'incomplete', missing };
  const args = given.map(argument => worth(argument, source, home));
  const unknown = args.indexOf(undefined);
  if (unknown >= 0) return { is: 'unknown', argument: card.params[unknown]?.name ?? '' };
  const answer = call(card.id, args);
  if (!answer.ok)
    return { is: 'refused', message: answer.message, ...(answer.argument === undefined ? {} : { argument: answer.argument }) };
  const worked = call('WORKING', [card.id, ...args.map(arg => (isFault(arg) ? null : arg))]);
  return { is: 'answer', value: answer.value, working: worked.ok ? String(worked.value) : '' };
}
