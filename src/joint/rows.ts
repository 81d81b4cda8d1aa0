// Outputs as cells: those of one variant, or of one variant after another.
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { PLAN_OF_RULES } from './judge';
import { isVerdict, type Output } from './outputs';
import { madeOf, planOf, slotOf } from './slots';
import { Variant } from './variant';

/** One output as a cell: its value, or why there is none. */
export const outputCell = (variant: Variant, name: string): Cell =>
  isVerdict(name) ? variant.verdict(name) : cellOf(variant.outcome(name));

// what an output gives is a number or a word
const cellOf = (outcome: unknown): Cell => (outcome instanceof Refused ? `no value: ${outcome.message}` : (outcome as Cell));

/** The outputs of one variant after another, each given by what stands under these names. */
export function rowByRow(names: readonly string[], asked: readonly Output[]): (raws: readonly unknown[]) => Cell[] {
  const variant = new Variant(new Map());
  const columns = names.map(name => slotOf(name));
  const slots = asked.map(name => (isVerdict(name) ? name : slotOf(name)));
  const judged = asked.some(name => name === 'state' || name === 'reason') ? PLAN_OF_RULES : [];
  let plan = planOf([...slots.filter(slot => typeof slot === 'number'), ...judged]);
  // what no column makes is worked out with the first variant
  const isMoving: boolean[] = [];
  for (const column of columns) for (const slot of madeOf(column)) isMoving[slot] = true;
  const moving = plan.filter(slot => isMoving[slot]);
  return raws => {
    variant.turn(columns, raws);
    variant.run(plan);
    plan = moving;
    return slots.map(slot => (typeof slot === 'number' ? cellOf(variant.at(slot)) : variant.verdict(slot)));
  };
}
