// A value that no formula follows.
import type { Ref } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { ownIn } from '../data-sheet';
import { sameAs } from '../inputs';
import { unchanged } from '../unchanged';
import { type BoundArgument, type Argument, isLiteral } from './argument';
import { textStep } from './expression';

/** A value that no formula follows, unless it reads the sheet of data. */
export function fixed(context: ConversionContext, argument: Argument, ref: Ref, readsData = false): BoundArgument | undefined {
  const { node, sheet } = argument;
  const conditions = unchanged(context, argument) ?? unchangedText(context, argument);
  if (conditions === undefined) return undefined;
  const asSent = readsData || node === null ? [] : context.data.asSent(ownIn(context.source.evaluate(node, sheet)));
  return { ref, conditions: [...conditions, ...asSent], live: isLiteral(node) };
}

/** What cannot be watched cell by cell is watched by what comes of it. */
function unchangedText(context: ConversionContext, argument: Argument): readonly string[] | undefined {
  const step = textStep(context, argument, 'text that is read');
  return step === undefined ? undefined : sameAs(step, context.source.evaluate(argument.node, argument.sheet));
}
