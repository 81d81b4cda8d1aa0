// The languages of our pages.
import { ENGLISH, type PageWords } from './english';
import { GERMAN } from './german';

export const LANGUAGES = ['English', 'German'] as const;
export type Language = (typeof LANGUAGES)[number];

export type { PageWords };

export const WORDS: Readonly<Record<Language, PageWords>> = { English: ENGLISH, German: GERMAN };
