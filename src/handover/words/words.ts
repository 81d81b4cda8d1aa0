// What our pages say, by their language.
import { ENGLISH, type PageWords } from './english';
import { GERMAN } from './german';
import type { Language } from './language';

export type { PageWords };

export const WORDS: Readonly<Record<Language, PageWords>> = { English: ENGLISH, German: GERMAN };
