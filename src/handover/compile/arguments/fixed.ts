// A value that no formula follows.
import type { Ref } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { ownIn } from '../data-sheet';
import { unchanged } from '../unchanged';
import { type BoundArgument, type Argument, isLiteral } from './argument';

/** A value that no formula follows, unless it reads the sheet of data. */
export function fixed(context: ConversionContext, argument: Argument, ref: Ref, readsData = false): BoundArgument | undefined {
  const { node, sheet } = argument;
  const conditions = unchanged(context, argument);
  if (conditions === undefined) return undefined;
  const asSent = readsData || node === null ? [] : context.data.asSent(ownIn(context.source.evaluate(node, sheet)));
  return { ref, conditions: [...conditions, ...asSent], live: isLiteral(node) };
}
