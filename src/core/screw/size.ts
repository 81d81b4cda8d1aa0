// Screw sizes as text: M3, ST2.9, #4-40, #4 AB, #4 B, #4 where the thread does not matter, and an own screw.
import { wrongInput } from '../refuse';
import { notOwn, OWN, ownScrew, type OwnScrew } from './own';

export type Family = 'M' | 'ST' | 'UN' | 'AB' | 'B' | '#' | 'own';

export interface Size {
  /** As the tables print it. */
  readonly text: string;
  readonly family: Family;
  /** The row in tables that do not care for the thread: `#4` for `#4-40` and `#4 AB`. */
  readonly gauge: string;
  /** The numbers of a screw that no table holds. */
  readonly own?: OwnScrew;
}

const FORMS: readonly { readonly form: RegExp; readonly size: (a: string, b: string) => Size }[] = [
  { form: /^M ?(\d{1,2}(?:\.\d{1,2})?)(?![\d.])/i, size: a => ({ text: `M${a}`, family: 'M', gauge: `M${a}` }) },
  { form: /^ST ?(\d{1,2}(?:\.\d{1,2})?)(?![\d.])/i, size: a => ({ text: `ST${a}`, family: 'ST', gauge: `ST${a}` }) },
  { form: /^(# ?\d{1,2}|1\/4) ?- ?(\d{2})(?!\d)/i, size: (a, b) => ({ text: `${tight(a)}-${b}`, family: 'UN', gauge: tight(a) }) },
  {
    form: /^(# ?\d{1,2}|1\/4) ?(AB|B)(?![a-z])/i,
    size: (a, b) => ({ text: `${tight(a)} ${b.toUpperCase()}`, family: b.toUpperCase() as 'AB' | 'B', gauge: tight(a) }),
  },
  { form: /^(# ?\d{1,2})(?!\d)/, size: a => ({ text: tight(a), family: '#', gauge: tight(a) }) },
  // a bare 1/4 could be a fraction of an inch: only with a word behind it that is not a unit, or alone where a size is asked for
  { form: /^(1\/4)(?= [a-z])(?! in\b)/i, size: a => ({ text: a, family: '#', gauge: a }) },
];

const tight = (text: string): string => text.replace(' ', '');

export const SIZE_WORDS = 'M3, ST2.9, #4-40, #4 AB or #4 B';

export interface Leading {
  readonly size: Size;
  readonly rest: string;
}

const BEGINS_LIKE_A_SIZE = /^\s*(?:[ms#rpflhc]|1\/4)/i;
/** Texts read before: a sheet asks for the same few sizes again and again. */
const known = new Map<string, Leading>();
const MOST_KNOWN = 200;
const LONGEST_KNOWN = 400;

/** A size at the start of the text and what stands behind it; nothing where the text does not begin with a size. */
export function leadingSize(text: string): Leading | undefined {
  if (!BEGINS_LIKE_A_SIZE.test(text)) return undefined;
  const held = known.get(text);
  if (held !== undefined) return held;
  const found = scanned(text);
  if (found !== undefined && text.length <= LONGEST_KNOWN) {
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(text, found);
  }
  return found;
}

function scanned(text: string): Leading | undefined {
  const trimmed = text
    .trim()
    .replace(/[\s\u00a0]+/g, ' ')
    .replace(/^((?:M|ST) ?\d{1,2}),(?=\d)/i, '$1.');
  for (const { form, size } of FORMS) {
    const found = form.exec(trimmed);
    if (found !== null) return { size: size(found[1] ?? '', found[2] ?? ''), rest: trimmed.slice(found[0].length).trim() };
  }
  const own = ownScrew(trimmed);
  return own && { size: { text: OWN, family: 'own', gauge: OWN, own: own.own }, rest: own.rest };
}

export function parseSize(text: string): Size {
  if (text.trim() === '1/4') return { text: '1/4', family: '#', gauge: '1/4' };
  const found = leadingSize(text);
  if (found?.size.own !== undefined && found.rest !== '') throw notOwn(found.rest);
  if (found === undefined || found.rest !== '') throw wrongInput(`not a screw size; say ${SIZE_WORDS}, or an own screw`);
  return found.size;
}
