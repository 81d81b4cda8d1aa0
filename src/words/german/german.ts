// Every word of our pages, in German.
import type { Words } from '../english';
import { BENCH } from './bench';
import { LATER } from './later';
import { VIEWS } from './views';

export const GERMAN: Words = { ...VIEWS, ...LATER, bench: BENCH };
