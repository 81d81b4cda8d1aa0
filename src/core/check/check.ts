// States: pass, look (to be reviewed), fail, not checked.
import { atLeast, atMost } from '../maths';
import { readAnyQuantity } from '../read/read-quantity';
import { wrongInput } from '../refuse';

export type State = 'pass' | 'look' | 'fail' | 'not checked';

/** Worst first. A check that was not made is worse than one to be reviewed. */
export const WORST_FIRST: readonly State[] = ['fail', 'not checked', 'look', 'pass'];

/** A number to check; a bare 0, a blank, text and errors are nothing to check. A true zero has its unit. */
function checkable(raw: unknown): { value: number; noun: string } | undefined {
  if (typeof raw === 'number') return raw === 0 || !Number.isFinite(raw) ? undefined : { value: raw, noun: '' };
  if (typeof raw !== 'string') return undefined;
  return readAnyQuantity(raw);
}

function checked(value: unknown, limit: unknown, look: unknown, keeps: (value: number, limit: number) => boolean, side: string): State {
  const [v, l] = [checkable(value), checkable(limit)];
  const asked = look !== undefined;
  const k = asked ? checkable(look) : undefined;
  if (v === undefined || l === undefined || (asked && k === undefined)) return 'not checked';
  const nouns = [...new Set([v.noun, l.noun, k?.noun ?? ''])].filter(noun => noun !== '');
  if (nouns.length > 1) throw wrongInput(`value and limit are not the same quantity: ${nouns.join(' and ')}`, 'limit');
  if (k !== undefined && !keeps(k.value, l.value)) throw wrongInput(`look is ${k.value}; it must be ${side} the limit ${l.value}`, 'look');
  if (!keeps(v.value, l.value)) return 'fail';
  return k === undefined || keeps(v.value, k.value) ? 'pass' : 'look';
}

/**
 * State of a value that must not pass a limit: pass, look, fail or not checked.
 * value to check; limit at most this; look above this it is looked at.
 * CHECK.MAX: different quantities, and a look above the limit, are refused.
 * Source: common practice.
 */
export function checkMax(value: unknown, limit: unknown, look: unknown): State {
  return checked(value, limit, blankLook(look), atMost, 'at most');
}

/**
 * State of a value that must reach a limit: pass, look, fail or not checked.
 * value to check; limit at least this; look below this it is looked at.
 * CHECK.MIN: different quantities, and a look below the limit, are refused.
 * Source: common practice.
 */
export function checkMin(value: unknown, limit: unknown, look: unknown): State {
  return checked(value, limit, blankLook(look), atLeast, 'at least');
}

const blankLook = (look: unknown): unknown =>
  look === null || look === 0 || (typeof look === 'string' && look.trim() === '') ? undefined : look;

export function isState(word: unknown): word is State {
  return WORST_FIRST.includes(word as State);
}

/** Blank cells, unknown words and errors count as not checked; no state at all is not checked. */
export function worstState(states: readonly unknown[]): State {
  const words = states
    .map(word => (typeof word === 'string' ? word.trim().toLowerCase() : word))
    .map((word): State => (isState(word) ? word : 'not checked'));
  return WORST_FIRST.find(state => words.includes(state)) ?? 'not checked';
}

/**
 * Worst of the states of a range: fail, not checked, look, pass. Blank cells, unknown words and errors count as not checked.
 * states any cells.
 * CHECK.WORST sets no limits.
 * Source: common practice.
 */
export function checkWorst(states: readonly (readonly unknown[])[]): State {
  return worstState(states.flat());
}
