// The functions that need no words: all but those that print formulas.
import { callCard, type Outcome } from './core/call';
import type { Calculation } from './core/card';
import { CORE_CARDS } from './core/cards';
import { cut } from './core/refuse';
import { JOINT_CARDS } from './joint/joint.cards';
import { VARIANT_CARDS } from './joint/variants.cards';

export const byId = <C extends Calculation>(cards: readonly C[]): ReadonlyMap<string, C> => new Map(cards.map(card => [card.id, card]));

export const CALCULATIONS: readonly Calculation[] = [...CORE_CARDS, ...JOINT_CARDS, ...VARIANT_CARDS];

/** The call of a function among these, as a cell makes it. */
export const callOf =
  (cards: ReadonlyMap<string, Calculation>) =>
  (id: string, args: readonly unknown[]): Outcome => {
    const card = cards.get(id);
    return card === undefined ? { ok: false, code: '#VALUE!', message: `there is no function ${cut(id)}` } : callCard(card, args);
  };

/** The call of these functions alone. */
export const call = callOf(byId(CALCULATIONS));
