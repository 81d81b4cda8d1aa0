// States: pass, review (people decide), fail, not checked.
import { atLeast, atMost } from '../maths';
import { readAnyQuantity } from '../read/read-quantity';
import { wrongInput } from '../refuse';

export type State = 'pass' | 'review' | 'fail' | 'not checked';

/** Worst first. A check that was not made is worse than one to be reviewed. */
export const WORST_FIRST: readonly State[] = ['fail', 'not checked', 'review', 'pass'];

/** A number to check; a bare 0, a blank, text and errors are nothing to check. A true zero has its unit. */
function checkable(raw: unknown): { value: number; noun: string } | undefined {
  if (typeof raw === 'number') return raw === 0 || !Number.isFinite(raw) ? undefined : { value: raw, noun: '' };
  if (typeof raw !== 'string') return undefined;
  return readAnyQuantity(raw);
}

function checked(value: unknown, limit: unknown, review: unknown, keeps: (value: number, limit: number) => boolean, side: string): State {
  const [v, l] = [checkable(value), checkable(limit)];
  const asked = review !== undefined;
  const k = asked ? checkable(review) : undefined;
  if (v === undefined || l === undefined || (asked && k === undefined)) return 'not checked';
  const nouns = [...new Set([v.noun, l.noun, k?.noun ?? ''])].filter(noun => noun !== '');
  if (nouns.length > 1) throw wrongInput(`value and limit are not the same quantity: ${nouns.join(' and ')}`, 'limit');
  if (k !== undefined && !keeps(k.value, l.value)) throw wrongInput(`review is ${k.value}: must be ${side} the limit ${l.value}`, 'review');
  if (!keeps(v.value, l.value)) return 'fail';
  return k === undefined || keeps(v.value, k.value) ? 'pass' : 'review';
}

/**
 * State of a value that must not pass a limit: pass, review, fail or not checked.
 * value to check; limit at most this; review above this it is to be reviewed.
 * CHECK.MAX: different quantities, and a review above the limit, are refused.
 * Source: common practice.
 */
export function checkMax(value: unknown, limit: unknown, review: unknown): State {
  return checked(value, limit, blankReview(review), atMost, 'at most');
}

/**
 * State of a value that must reach a limit: pass, review, fail or not checked.
 * value to check; limit at least this; review below this it is to be reviewed.
 * CHECK.MIN: different quantities, and a review below the limit, are refused.
 * Source: common practice.
 */
export function checkMin(value: unknown, limit: unknown, review: unknown): State {
  return checked(value, limit, blankReview(review), atLeast, 'at least');
}

/**
 * State of a gap: it fails at 0, where the two touch, and below; pass, review, fail or not checked.
 * value gap to check; review up to this it is to be reviewed.
 * CHECK.CLEAR: different quantities, and a negative review, are refused.
 * Source: common practice.
 */
export function checkClear(value: unknown, review: unknown): State {
  const [gap, edge] = [checkable(value), checkable(blankReview(review))];
  if (gap === undefined || (blankReview(review) !== undefined && edge === undefined)) return 'not checked';
  if (edge !== undefined && gap.noun !== '' && edge.noun !== '' && gap.noun !== edge.noun)
    throw wrongInput(`value and review are not the same quantity: ${gap.noun} and ${edge.noun}`, 'review');
  if (edge !== undefined && edge.value < 0) throw wrongInput(`review is ${edge.value}: must be at least 0`, 'review');
  if (atMost(gap.value, 0)) return 'fail';
  return edge !== undefined && atMost(gap.value, edge.value) ? 'review' : 'pass';
}

const blankReview = (review: unknown): unknown =>
  review === null || review === 0 || (typeof review === 'string' && review.trim() === '') ? undefined : review;

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
 * Worst of the states of a range: fail, not checked, review, pass. Blank cells, unknown words and errors count as not checked.
 * states any cells.
 * CHECK.WORST sets no limits.
 * Source: common practice.
 */
export function checkWorst(states: readonly (readonly unknown[])[]): State {
  return worstState(states.flat());
}
