// Every word of our pages, in English. Another language is a table of the same type.
import { BENCH } from './bench';
import { LATER } from './later';
import { VIEWS } from './views';

export const ENGLISH = { ...VIEWS, ...LATER, bench: BENCH };

export type Words = typeof ENGLISH;
