// The descriptions of the functions, as they are published beside the pane.
import type { PageLanguage } from '../words/speech';
import type { ListedFunction } from './function-list';

async function listedIn(file: string): Promise<readonly ListedFunction[]> {
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return ((await response.json()) as { readonly functions: readonly ListedFunction[] }).functions;
}

/** Entries in German, each with the English one of the same id. */
export function besideEnglish(german: readonly ListedFunction[], functions: readonly ListedFunction[]): readonly ListedFunction[] {
  const byId = new Map(german.map(listed => [listed.id, listed]));
  return functions.map(english => ({ ...(byId.get(english.id) ?? english), english }));
}

/** In German where they can be had. */
export async function described(language: PageLanguage): Promise<readonly ListedFunction[]> {
  const [functions, german] = await Promise.all([
    listedIn('functions.json'),
    language === 'de' ? listedIn('functions-de.json').catch(() => []) : [],
  ]);
  return german.length === 0 ? functions : besideEnglish(german, functions);
}
