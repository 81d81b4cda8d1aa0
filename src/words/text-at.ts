// A text of the table by its path, for what stands on a page and not in code: `bench.page.open`.
import type { Words } from './english';
import { START } from './start';

export function textAt(words: Pick<Words, 'bench'>, path: string): string {
  let at: unknown = words;
  for (const name of path.split('.')) at = (at as Readonly<Record<string, unknown>> | undefined)?.[name];
  if (typeof at !== 'string') throw new Error(`there are no words at ${path}`);
  return at;
}

/** The first script of the pane with what it says in it. */
export const withStartWords = (script: string): string => script.replace("'START_WORDS'", JSON.stringify(START));

/** A page with the English words in it: what is marked with `data-words` and `data-label`. */
export const withWords = (html: string, words: Pick<Words, 'bench'>): string =>
  html
    .replaceAll(/(data-words="([^"]+)"[^>]*>)(?=<)/g, (_, tag: string, path: string) => `${tag}${textAt(words, path)}`)
    .replaceAll(/data-label="([^"]+)"/g, (whole, path: string) => `${whole} aria-label="${textAt(words, path)}"`);
