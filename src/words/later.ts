// What views say that are seldom the first: fetched when the pane stands.
import { ABOUT } from './about';
import { COMPARE, HAND_OVER } from './files';

export const LATER = { handOver: HAND_OVER, compare: COMPARE, about: ABOUT };

export type LaterWords = typeof LATER;
