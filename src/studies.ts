// The functions that study one joint: loaded when a cell asks for the first of them.
import { byId, callOf } from './calculations';
import { STUDY_CARDS } from './joint/study/study.cards';

/** The call of these functions alone. */
export const call = callOf(byId(STUDY_CARDS));
