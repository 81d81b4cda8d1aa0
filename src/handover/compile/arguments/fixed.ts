// A value that no formula follows.
import type { Ref } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { unchanged } from '../unchanged';
import { type BoundArgument, type Argument, isLiteral } from './argument';

/** A value that no formula follows. */
export function fixed(context: ConversionContext, argument: Argument, ref: Ref): BoundArgument | undefined {
  const conditions = unchanged(context, argument);
  return conditions === undefined ? undefined : { ref, conditions, live: isLiteral(argument.node) };
}
