// What views say that are seldom the first, in German.
import type { LaterWords } from '../later';
import { ABOUT } from './about';
import { COMPARE, HAND_OVER } from './files';

export const LATER: LaterWords = { handOver: HAND_OVER, compare: COMPARE, about: ABOUT };
