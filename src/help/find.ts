// The first help page: finds functions while a word or a question is typed. Without this script the page lists them all.
import { FUNCTIONS as ENGLISH } from '../words/functions';
import { FUNCTIONS as GERMAN } from '../words/german/functions';
import { notCovered } from '../words/not-covered';
import { type Findable, search } from './search';

const W = document.documentElement.lang === 'de' ? GERMAN : ENGLISH;
const byId = (id: string): HTMLElement => document.getElementById(id) as HTMLElement;
const [place, field, count, aside] = [byId('search'), byId('asked') as HTMLInputElement, byId('count'), byId('not-covered')];
const [found, all] = [byId('found'), byId('all')];
const items = [...all.querySelectorAll<HTMLLIElement>('li[data-id]')];
const findable = ({ dataset: { id = '', topic = '', description = '', arguments: given = '', german = '' } }: HTMLLIElement): Findable => ({
  id,
  topic,
  description,
  arguments: given,
  german: ['', german],
});

function show(): void {
  const isAsked = field.value.trim() !== '';
  const hits = isAsked ? search(items, field.value, findable) : [];
  found.replaceChildren(...hits.map(item => item.cloneNode(true)));
  all.hidden = isAsked;
  aside.textContent = notCovered(field.value, W.notCovered);
  count.textContent = isAsked ? (hits.length === 0 ? W.nothing : W.found(hits.length, items.length)) : W.all(items.length);
}

/** The arrow keys walk from the field through what was found; Enter in the field opens the first. */
function walk(event: KeyboardEvent): void {
  const stops = [field, ...found.querySelectorAll('a')];
  const here = stops.indexOf(event.target as HTMLAnchorElement);
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  const next = event.key === 'Enter' && here === 0 ? stops[1] : step === undefined ? undefined : stops[here + step];
  if (next === undefined) return;
  event.preventDefault();
  if (event.key === 'Enter') next.click();
  else next.focus();
}

place.hidden = false;
field.addEventListener('input', show);
place.addEventListener('keydown', walk);
show();
