// One output of a joint as a number while one input is moved.
import { wrongInput } from '../../core/refuse';
import { outputName } from '../headings';
import { PLAN_OF_RULES } from '../judge';
import { isVerdict, type Output } from '../outputs';
import type { SlotSet } from '../slot-set';
import { planOf, planTo, slotOf } from '../slots';
import type { Variant } from '../variant';
import { type Movable, mover } from './moved';

interface Numeric {
  readonly plan: SlotSet;
  /** Undefined where there is no number. */
  readonly of: (variant: Variant) => number | undefined;
}

const CIRCLE = slotOf('root circle');
const WALL = slotOf('wall');
const numberAt = (variant: Variant, slot: number): number | undefined => {
  const value = variant.values[slot];
  return typeof value === 'number' ? value : undefined;
};

/** An output that is a number. */
export function numericOutput(raw: unknown): { readonly output: Output; readonly numeric: Numeric } {
  const output = outputName(raw, 'output');
  if (output === 'margin') return { output, numeric: { plan: PLAN_OF_RULES, of: variant => variant.nearest()?.margin } };
  if (isVerdict(output) || output === 'weakest') throw wrongInput(`output: ${output} is not a number`, 'output');
  const slot = slotOf(output);
  return { output, numeric: { plan: planTo(slot), of: variant => numberAt(variant, slot) } };
}

/** Circle ÷ wall, whose slope is finite where the ratio begins. */
export const CIRCLE_OVER_WALL: Numeric = {
  plan: planOf([CIRCLE, WALL]),
  of: variant => {
    const [circleMm, wallMm] = [numberAt(variant, CIRCLE), numberAt(variant, WALL)];
    return circleMm === undefined || wallMm === undefined ? undefined : circleMm / wallMm;
  },
};

/** What the output is with the input at a number. */
export function numberWhen(variant: Variant, moving: Movable, { plan, of }: Numeric): (number: number) => number | undefined {
  variant.run(plan);
  const move = mover(variant, moving, plan);
  return number => {
    move(number);
    return of(variant);
  };
}
