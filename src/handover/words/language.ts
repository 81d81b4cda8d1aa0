/** The languages of our pages. */
export const LANGUAGES = ['English', 'German'] as const;
export type Language = (typeof LANGUAGES)[number];
