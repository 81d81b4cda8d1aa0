// The languages of our pages.
import { ENGLISH, type Words } from './english';
import { GERMAN } from './german';

export const LANGUAGES = ['English', 'German'] as const;
export type Language = (typeof LANGUAGES)[number];

export type { Words };

export const WORDS: Readonly<Record<Language, Words>> = { English: ENGLISH, German: GERMAN };
