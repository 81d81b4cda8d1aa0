// All functions by id, and the call that every host uses.
import { aboutCards } from './about/about.cards';
import { byId, callOf, CALCULATIONS } from './calculations';
import type { Card } from './core/card';
import { PRINTED_JOINT_CARDS } from './joint/printed-joint.cards';

/** The card of every function by its id. */
export const CARDS: ReadonlyMap<string, Card> = byId([
  ...CALCULATIONS.values(),
  ...PRINTED_JOINT_CARDS,
  ...aboutCards(id => CARDS.get(id)),
]);

export const call = callOf(CARDS);
