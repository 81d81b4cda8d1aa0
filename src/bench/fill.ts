// The words that stand on the page from the start. The build puts the English ones in; those of another language take their place.
import type { Words } from '../words/english';
import { textAt } from '../words/text-at';

export function fill(words: Pick<Words, 'bench'>): void {
  for (const filled of document.querySelectorAll<HTMLElement>('[data-words]'))
    filled.textContent = textAt(words, filled.dataset.words ?? '');
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-href]')) link.href = textAt(words, link.dataset['href'] ?? '');
  for (const named of document.querySelectorAll<HTMLElement>('[data-label]')) named.ariaLabel = textAt(words, named.dataset.label ?? '');
}
