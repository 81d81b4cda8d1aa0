// Outputs as cells: those of one variant, or of one variant after another.
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { isVerdict, type Output } from './outputs';
import { madeOf, planOf, slotOf } from './slots';
import { Variant } from './variant';
import { verdict } from './verdict';

/** One output as a cell: its value, or why there is none. */
export const outputCell = (variant: Variant, name: string): Cell =>
  isVerdict(name) ? verdict(variant, name) : cellOf(variant.outcome(name));

// what an output gives is a number or a word
const cellOf = (outcome: unknown): Cell => (outcome instanceof Refused ? `no value: ${outcome.message}` : (outcome as Cell));

/** The outputs of one variant after another, each given by what stands under these names. */
export const rowByRow = (
  names: readonly string[],
  asked: readonly Output[],
  base?: ReadonlyMap<string, unknown>,
): ((raws: readonly unknown[]) => Cell[]) => turned(new Variant(new Map(), base), names, asked);

/** The same of a variant that has other inputs beside these. */
export function turned(variant: Variant, names: readonly string[], asked: readonly Output[]): (raws: readonly unknown[]) => Cell[] {
  const columns = names.map(name => slotOf(name));
  const slots = asked.map(name => (isVerdict(name) ? name : slotOf(name)));
  let plan = planOf(slots.filter(slot => typeof slot === 'number'));
  // what no column makes is worked out with the first variant
  const isMoving: boolean[] = [];
  for (const column of columns) for (const slot of madeOf(column)) isMoving[slot] = true;
  const moving = plan.filter(slot => isMoving[slot]);
  return raws => {
    variant.turn(columns, raws);
    variant.run(plan);
    plan = moving;
    return slots.map(slot => (typeof slot === 'number' ? cellOf(variant.values[slot]) : verdict(variant, slot, asked)));
  };
}
