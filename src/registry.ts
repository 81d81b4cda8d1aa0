// All functions by id with what is said of them, and the call that every host uses.
import { aboutCards } from './about/about.cards';
import { ABOUT_WORDS } from './about/about.words';
import { byId, callOf, CALCULATIONS } from './calculations';
import type { Outcome } from './core/call';
import { type Card, described } from './core/card';
import { CORE_WORDS } from './core/words';
import { JOINT_WORDS } from './joint/joint.words';
import { PRINTED_JOINT_CARDS } from './joint/printed-joint.cards';
import { STUDY_CARDS } from './joint/study/study.cards';
import { STUDY_WORDS } from './joint/study/study.words';
import { VARIANT_WORDS } from './joint/variants.words';

/** The card of every function by its id. */
export const CARDS: ReadonlyMap<string, Card> = byId(
  described([...CALCULATIONS, ...PRINTED_JOINT_CARDS, ...STUDY_CARDS, ...aboutCards(id => CARDS.get(id))], {
    ...CORE_WORDS,
    ...JOINT_WORDS,
    ...STUDY_WORDS,
    ...VARIANT_WORDS,
    ...ABOUT_WORDS,
  }),
);

/** Works out one function as a cell does: bare numbers in core units, or text with units. What it refuses comes back as a refusal. */
export const call: (id: string, args: readonly unknown[]) => Outcome = callOf(CARDS);
