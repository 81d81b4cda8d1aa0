// The language of the page: that of the browser until another is chosen, which is then kept.
import { languageOf, LANGUAGES, type PageLanguage } from '../words/speech';
import { byId, element } from './dom';

const key = 'bosswright.language';

/** A browser that keeps nothing speaks its own language. */
function keptText(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

export const keptLanguage = (): PageLanguage => languageOf(keptText() ?? navigator.language);

/** The page is loaded anew in the language that is chosen: what is typed is kept before, as whenever it is left. */
export function languageChoice(spoken: PageLanguage): void {
  const choice = byId<HTMLSelectElement>('language');
  choice.append(
    ...Object.entries(LANGUAGES).map(([code, name]) => {
      const option = element('option', name);
      option.value = code;
      option.lang = code;
      return option;
    }),
  );
  choice.value = spoken;
  choice.addEventListener('change', () => {
    localStorage.setItem(key, choice.value);
    location.reload();
  });
}
