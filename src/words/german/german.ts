// Every word of our pages, in German.
import type { Words } from '../english';
import { BENCH } from './bench';
import { VIEWS } from './views';

export const GERMAN: Words = { ...VIEWS, bench: BENCH };
