// What the arguments of a call become on the hand-over: cells of the user's sheets where they can, else values that hold
// while the cells they came from are as they were sent.
import { forgotten, type Nature, type Param } from '../../../core/card';
import type { Deviation, Deviations } from '../../../core/read/deviation';
import type { Nut } from '../../../core/insert/nut';
import type { Screw } from '../../../core/screw/thread';
import { atom } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { type BoundArgument, type Argument, labelOf } from './argument';
import { boundDeviation } from './deviation';
import { boundDeviations } from './deviations';
import { fixed } from './fixed';
import { boundList } from './list';
import { boundNumber } from './number';
import { boundNut } from './nut';
import { boundScrew } from './screw';
import { boundWord, boundRecord } from './word';

/** One argument, by its kind. Undefined where its cells cannot be followed or watched. */
export function bind(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  value: unknown,
  needed: ReadonlySet<string>,
): BoundArgument | undefined {
  const label = labelOf(param);
  const { kind } = param;
  if (value === undefined) return fixed(context, argument, atom('""', ''));
  switch (kind.is) {
    case 'quantity':
    case 'whole':
    case 'limit':
    case 'anything':
      return typeof value === 'number'
        ? boundNumber(context, param, argument, value, label)
        : boundWord(context, param, argument, value as string);
    case 'choice':
    case 'grade':
    case 'function name':
    case 'joint input':
    case 'joint output':
      return boundWord(context, param, argument, value as string);
    case 'screw':
      return boundScrew(context, argument, value as Screw, needed);
    case 'nut':
      return boundNut(context, argument, value as Nut);
    case 'deviation':
      return boundDeviation(context, param, argument, value as Deviation, label);
    case 'list':
      return boundRows(context, param, argument, kind.of.is, value, label);
    case 'cone':
    case 'size with limits':
    case 'screw size':
    case 'head':
    case 'group':
    case 'material':
      return boundRecord(context, param, argument, value as object, label);
    case 'names':
    case 'values':
    case 'block':
      return fixed(context, argument, { parts: {} });
    default:
      return forgotten(kind);
  }
}

function boundRows(
  context: ConversionContext,
  param: Param,
  argument: Argument,
  of: Nature['is'],
  value: unknown,
  label: string,
): BoundArgument | undefined {
  if (of === 'quantity') return boundList(context, param, argument, value as readonly number[], label);
  return of === 'deviation'
    ? boundDeviations(context, param, argument, value as Deviations, label)
    : fixed(context, argument, { parts: {} });
}
