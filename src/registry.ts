// All functions by id, and the call that every host uses.
import { callCard, type Outcome } from './core/call';
import type { Card } from './core/card';
import { CORE_CARDS } from './core/cards';
import { cut } from './core/refuse';
import { JOINT_CARDS } from './joint/joint.cards';
import { VARIANT_CARDS } from './joint/variants.cards';
import { aboutCards } from './about/about.cards';

/** The card of every function by its id. */
export const CARDS: ReadonlyMap<string, Card> = new Map(
  [...CORE_CARDS, ...JOINT_CARDS, ...VARIANT_CARDS, ...aboutCards(id => CARDS.get(id))].map(card => [card.id, card]),
);

/** Works out one function as a cell does: bare numbers in core units, or text with units. What it refuses comes back as a refusal. */
export function call(id: string, args: readonly unknown[]): Outcome {
  const card = CARDS.get(id);
  return card === undefined ? { ok: false, code: '#VALUE!', message: `there is no function ${cut(id)}` } : callCard(card, args);
}
