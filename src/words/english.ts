// Every word of our pages, in English. Another language is a table of the same type.
import { BENCH } from './bench';
import { VIEWS } from './views';

export const ENGLISH = { ...VIEWS, bench: BENCH };

export type Words = typeof ENGLISH;
