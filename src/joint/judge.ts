// The rules on a row of values: the state of each, and the finding where somebody asks for it.
import { type State, WORST_FIRST } from '../core/check/check';
import { atLeast, atMost } from '../core/maths';
import { Refused } from '../core/refuse';
import { boundsOf, type Bound, type Finding, type Rule } from './graph';
import { RULES } from './rules';
import type { SlotSet } from './slot-set';
import { NO_SLOT, noSlots, planOf, slotOf } from './slots';

interface PlacedBound {
  readonly bound: Bound;
  /** Where the limit stands; of a limit that is a number there is none. */
  readonly slot: number;
  readonly number: number;
  /** Where the size stands that it bounds. */
  readonly of: number;
}

/** A rule with the slots that it reads. */
export interface Judge {
  readonly rule: Rule;
  readonly when: readonly number[];
  readonly value: number;
  readonly fail: readonly PlacedBound[];
  readonly review: readonly PlacedBound[];
  readonly reviewWhere: number;
  /** All of these. */
  readonly judged: readonly number[];
  /** What a reader is shown in place of value and limit. */
  readonly needs: number;
  readonly has: number;
  readonly passesAt: number;
  readonly plan: SlotSet;
  /** What none of the rules before it has asked for, by words of the plan. */
  readonly fresh: readonly { readonly word: number; readonly bits: number }[];
}

function placedBound(bound: Bound, value: number): PlacedBound {
  const { limit } = bound;
  const of = bound.of === undefined ? value : slotOf(bound.of);
  return typeof limit === 'number' ? { bound, slot: NO_SLOT, number: limit, of } : { bound, slot: slotOf(limit), number: NaN, of };
}

function judgeOf(rule: Rule, asked: SlotSet): Judge {
  const when = (rule.when ?? []).map(name => slotOf(name));
  const value = slotOf(rule.value);
  const placed = (bounds: Rule['fail']): readonly PlacedBound[] => boundsOf(bounds).map(bound => placedBound(bound, value));
  const [fail, review] = [placed(rule.fail), placed(rule.review)];
  const reviewWhere = rule.reviewWhere === undefined ? NO_SLOT : slotOf(rule.reviewWhere.condition);
  const [needs, has] = rule.shown === undefined ? [NO_SLOT, NO_SLOT] : [slotOf(rule.shown.needs), slotOf(rule.shown.has)];
  const passesAt = rule.passesAt === undefined ? NO_SLOT : slotOf(rule.passesAt.size);
  const bounds = [...fail, ...review].flatMap(bound => [bound.of, bound.slot]);
  const judged = [...when, value, ...bounds, reviewWhere].filter(slot => slot !== NO_SLOT);
  const plan = planOf([...judged, ...[needs, has, passesAt].filter(slot => slot !== NO_SLOT)]);
  const fresh = Array.from(plan.words, (bits, word) => ({ word, bits: bits & ~(asked.words[word] ?? 0) })).filter(({ bits }) => bits !== 0);
  return { rule, when, value, fail, review, reviewWhere, judged, needs, has, passesAt, plan, fresh };
}

/** What all rules are made of. */
export const PLAN_OF_RULES = noSlots();
export const JUDGES: readonly Judge[] = RULES.map(rule => {
  const judge = judgeOf(rule, PLAN_OF_RULES);
  PLAN_OF_RULES.addAll(judge.plan);
  return judge;
});

export const judgeFor = (rule: Rule): Judge => JUDGES.find(judge => judge.rule === rule) ?? judgeOf(rule, noSlots());

/** Undefined if the rule is left out. */
export function finding(judge: Judge, values: readonly unknown[]): Finding | undefined {
  const { rule, fail, review } = judge;
  const state = stateOf(judge, values);
  if (state === undefined) return undefined;
  const value = values[judge.value];
  if (state === 'not checked' || typeof value !== 'number')
    return { rule, state, value: undefined, limit: undefined, bound: undefined, refusal: refusalOf(judge, values) };
  const broken = (bounds: readonly PlacedBound[]): PlacedBound | undefined => bounds.find(bound => isBroken(bound, values));
  const shown = broken(fail) ?? (state === 'pass' ? (fail[0] ?? review[0]) : (broken(review) ?? review[0] ?? fail[0]));
  const limit = shown && worthOf(shown, values);
  const judged = shown === undefined ? value : values[shown.of];
  const needs = values[judge.needs];
  const has = values[judge.has];
  const passesAt = values[judge.passesAt];
  return {
    rule,
    state,
    value: typeof judged === 'number' ? judged : value,
    limit: typeof limit === 'number' ? limit : undefined,
    bound: shown?.bound,
    ...(typeof needs === 'number' && typeof has === 'number' && { shown: { needs, has } }),
    ...(typeof passesAt === 'number' && { passesAt }),
  };
}

/**
 * How far a rule is from its fail limit: a share of the limit, or of d where that is 0; negative where it fails. Undefined if
 * there is no number to say.
 * @param nominalMm d; NaN where there is no screw.
 */
export function marginOf(judge: Judge, values: readonly unknown[], nominalMm: number): number | undefined {
  const state = stateOf(judge, values);
  if (state === undefined || state === 'not checked') return undefined;
  if (typeof values[judge.value] !== 'number') return state === 'fail' ? -1 : undefined;
  const rooms = judge.fail.map(bound => roomOf(bound, values, nominalMm)).filter(room => !Number.isNaN(room));
  return rooms.length === 0 ? undefined : Math.min(...rooms);
}

function roomOf(placed: PlacedBound, values: readonly unknown[], nominalMm: number): number {
  const limit = worthOf(placed, values) as number;
  return roomTo(placed, values) / (limit === 0 ? nominalMm : Math.abs(limit));
}

/** How far a size is on the good side of its bound, in its own unit; of what has no value, NaN. */
export function roomTo(placed: PlacedBound, values: readonly unknown[]): number {
  const value = values[placed.of];
  const limit = worthOf(placed, values);
  if (typeof value !== 'number' || typeof limit !== 'number') return NaN;
  const { side } = placed.bound;
  return side === 'below' || side === 'at most' ? value - limit : limit - value;
}

/**
 * The first finding of the worst state; undefined if no rule applies. A rule that fails ends the search.
 * @param run works out the slots of a word of a plan.
 */
export function worstFinding(values: readonly unknown[], run: (word: number, bits: number) => void): Finding | undefined {
  let first: Judge | undefined;
  let worst = WORST_FIRST.length;
  for (let i = 0; i < JUDGES.length && worst > 0; i++) {
    const judge = JUDGES[i] as Judge;
    for (let j = 0; j < judge.fresh.length; j++) {
      const { word, bits } = judge.fresh[j] as Judge['fresh'][number];
      run(word, bits);
    }
    const state = stateOf(judge, values);
    const rank = state === undefined ? worst : WORST_FIRST.indexOf(state);
    if (rank < worst) [first, worst] = [judge, rank];
  }
  if (first === undefined) return undefined;
  return finding(first, values);
}

/** Undefined if the rule is left out. */
export function stateOf({ rule, when, value: slot, fail, review, reviewWhere }: Judge, values: readonly unknown[]): State | undefined {
  let isLeftOut = false;
  for (let i = 0; i < when.length; i++) {
    const condition = values[when[i] ?? NO_SLOT];
    if (condition === true) continue;
    if (condition instanceof Refused) return 'not checked';
    isLeftOut = true;
  }
  if (isLeftOut) return undefined;
  const value = values[slot];
  if (typeof value !== 'number') return rule.failsAs !== undefined && value instanceof rule.failsAs ? 'fail' : 'not checked';
  let state: State = 'pass';
  for (let i = 0; i < fail.length; i++) {
    const bound = fail[i] as PlacedBound;
    if (!isKnown(bound, values)) return 'not checked';
    if (isBroken(bound, values)) state = 'fail';
  }
  for (let i = 0; i < review.length; i++) {
    const bound = review[i] as PlacedBound;
    if (!isKnown(bound, values)) return 'not checked';
    if (state === 'pass' && isBroken(bound, values)) state = 'review';
  }
  if (state !== 'pass') return state;
  if (reviewWhere === NO_SLOT) return 'pass';
  const isToBeReviewed = values[reviewWhere];
  return isToBeReviewed instanceof Refused ? 'not checked' : isToBeReviewed === true ? 'review' : 'pass';
}

/** What the limit is for these values. */
const worthOf = ({ slot, number }: PlacedBound, values: readonly unknown[]): unknown => (slot === NO_SLOT ? number : values[slot]);

const isKnown = (bound: PlacedBound, values: readonly unknown[]): boolean =>
  typeof values[bound.of] === 'number' && typeof worthOf(bound, values) === 'number';

function isBroken(placed: PlacedBound, values: readonly unknown[]): boolean {
  const value = values[placed.of];
  const at = worthOf(placed, values);
  if (typeof value !== 'number' || typeof at !== 'number') return false;
  const { side } = placed.bound;
  if (side === 'below') return !atLeast(value, at);
  if (side === 'above') return !atMost(value, at);
  return side === 'at most' ? atMost(value, at) : atLeast(value, at);
}

/** Why a rule was not checked, or fails by what it judges: the first of what it reads that is refused. */
function refusalOf({ judged }: Judge, values: readonly unknown[]): Refused | undefined {
  for (const slot of judged) {
    const outcome = values[slot];
    if (outcome instanceof Refused) return outcome;
  }
  return undefined;
}
