// Outputs as cells: those of one variant, or of one variant after another.
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { isVerdict, type Output } from './outputs';
import { planOf, slotOf } from './slots';
import { Variant } from './variant';
import { hasNoValue, verdict } from './verdict';

/** One output as a cell: its value, or why there is none. */
export const outputCell = (variant: Variant, name: string): Cell =>
  isVerdict(name) ? verdict(variant, name) : cellOf(variant.outcome(name));

// what an output gives is a number or a word
const cellOf = (outcome: unknown): Cell =>
  typeof outcome === 'object' && outcome instanceof Refused ? `no value: ${outcome.message}` : (outcome as Cell);

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
  const plan = planOf(slots.filter(slot => typeof slot === 'number'));
  return raws => {
    variant.turn(columns, raws);
    variant.run(plan);
    const { values } = variant;
    const beside = slots.some(slot => typeof slot === 'number' && hasNoValue(values[slot])) ? asked : [];
    const cells = new Array<Cell>(slots.length);
    for (let i = 0; i < slots.length; i++) {
      const slot = slots[i] as (typeof slots)[number];
      cells[i] = typeof slot === 'number' ? cellOf(values[slot]) : verdict(variant, slot, beside);
    }
    return cells;
  };
}
