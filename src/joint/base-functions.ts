// The functions of the core inside the joint: a node that calls one keeps the limits of its card.
import type { Calculation, Param } from '../core/card';
import { CORE_CARDS } from '../core/cards';
import type { Formula, Made } from './graph';
import { isWithin } from './inputs';

const CARD_OF: ReadonlyMap<Formula, Calculation> = new Map(CORE_CARDS.map(card => [card.formula, card]));

export const cardOf = (formula: Formula): Calculation | undefined => CARD_OF.get(formula);

export interface LimitedArgument {
  readonly slot: number;
  readonly param: Param;
  readonly card: Calculation;
}

/** The arguments whose limits are to be checked, in these slots: an input that has the same limits has refused already. */
export function limitedArguments({ formula, args }: Made, slots: readonly number[]): readonly LimitedArgument[] {
  const card = cardOf(formula);
  return slots.flatMap((slot, i) => {
    const arg = args[i];
    const param = card?.params[i];
    if (card === undefined || param?.limits === undefined || (typeof arg === 'string' && isWithin(arg, param.limits))) return [];
    return { slot, param, card };
  });
}
