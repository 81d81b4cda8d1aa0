// What a page speaks: its words, fetched in the language that is wanted.
import type * as German from '../german/beside';
import type { LaterWords } from './later';
import type { ViewWords } from './views';

export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;
/** By its code in BCP 47, as `lang` takes it. */
export type PageLanguage = keyof typeof LANGUAGES;

export interface Speech {
  readonly language: PageLanguage;
  readonly words: ViewWords;
  /** Fetches what some views say, when the page stands. */
  readonly later: () => Promise<LaterWords>;
  /** Fetches what the English of cells is in German, when the page stands; left out in English. */
  readonly beside?: () => Promise<typeof German>;
}

/** Of a language as a host or a browser names it: `de-CH`. */
export const languageOf = (code: string | undefined): PageLanguage => (/^de\b/i.test(code ?? '') ? 'de' : 'en');

async function speechIn(language: PageLanguage): Promise<Speech> {
  if (language === 'en') {
    const { VIEWS } = await import(/* webpackChunkName: "view-english" */ './views');
    return { language, words: VIEWS, later: async () => (await import(/* webpackChunkName: "view-laterenglish" */ './later')).LATER };
  }
  const { VIEWS } = await import(/* webpackChunkName: "view-german" */ './german/views');
  return {
    language,
    words: VIEWS,
    later: async () => (await import(/* webpackChunkName: "view-latergerman" */ './german/later')).LATER,
    beside: () => import(/* webpackChunkName: "view-beside" */ '../german/beside'),
  };
}

/** In English where the words of the other language cannot be fetched. The page says to browsers and screen readers what it speaks. */
export async function speech(language: PageLanguage): Promise<Speech> {
  const spoken = await speechIn(language).catch(() => speechIn('en'));
  document.documentElement.lang = spoken.language === 'en' ? 'en-GB' : spoken.language;
  return spoken;
}
