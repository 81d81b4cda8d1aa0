// The rules on a row of values: the state of each, and the finding where somebody asks for it.
import { type State, WORST_FIRST } from '../core/check/check';
import { atLeast, atMost } from '../core/maths';
import { Refused } from '../core/refuse';
import type { Bound, Finding, Rule } from './graph';
import { RULES } from './rules';
import { NO_SLOT, planOf, slotOf } from './slots';

interface PlacedBound {
  readonly bound: Bound;
  /** Where the limit stands; of a limit that is a number there is none. */
  readonly slot: number;
  readonly number: number;
}

/** A rule with the slots that it reads. */
export interface Judge {
  readonly rule: Rule;
  readonly when: readonly number[];
  readonly value: number;
  readonly fail: PlacedBound | undefined;
  readonly look: PlacedBound | undefined;
  readonly softWhen: number;
  readonly plan: readonly number[];
}

function placedBound(bound: Bound | undefined): PlacedBound | undefined {
  if (bound === undefined) return undefined;
  const { limit } = bound;
  return typeof limit === 'number' ? { bound, slot: NO_SLOT, number: limit } : { bound, slot: slotOf(limit), number: NaN };
}

function judgeOf(rule: Rule): Judge {
  const when = (rule.when ?? []).map(name => slotOf(name));
  const value = slotOf(rule.value);
  const [fail, look] = [placedBound(rule.fail), placedBound(rule.look)];
  const softWhen = rule.softWhen === undefined ? NO_SLOT : slotOf(rule.softWhen);
  const read = [...when, value, fail?.slot ?? NO_SLOT, look?.slot ?? NO_SLOT, softWhen];
  return { rule, when, value, fail, look, softWhen, plan: planOf(read.filter(slot => slot !== NO_SLOT)) };
}

export const JUDGES: readonly Judge[] = RULES.map(judgeOf);
export const PLAN_OF_RULES = planOf(JUDGES.flatMap(({ plan }) => plan));

export const judgeFor = (rule: Rule): Judge => JUDGES.find(judge => judge.rule === rule) ?? judgeOf(rule);

/** Undefined if the rule is left out. */
export function finding(judge: Judge, values: readonly unknown[]): Finding | undefined {
  const { rule, fail, look } = judge;
  const state = stateOf(judge, values);
  if (state === undefined) return undefined;
  const value = values[judge.value];
  if (state === 'not checked' || typeof value !== 'number')
    return { rule, state, value: undefined, limit: undefined, bound: undefined, refusal: refusalOf(judge, values) };
  const isFail = fail !== undefined && (look === undefined || state === 'pass' || isBroken(value, fail, worthOf(fail, values)));
  const shown = isFail ? fail : look;
  const limit = worthOf(shown, values);
  return { rule, state, value, limit: typeof limit === 'number' ? limit : undefined, bound: shown?.bound };
}

/** The first finding of the worst state; undefined if no rule applies. */
export function worstFinding(values: readonly unknown[]): Finding | undefined {
  let first: Judge | undefined;
  let worst = WORST_FIRST.length;
  for (const judge of JUDGES) {
    const state = stateOf(judge, values);
    const rank = state === undefined ? worst : WORST_FIRST.indexOf(state);
    if (rank < worst) [first, worst] = [judge, rank];
    if (worst === 0) break;
  }
  return first && finding(first, values);
}

/** Undefined if the rule is left out. */
function stateOf({ rule, when, value: slot, fail, look, softWhen }: Judge, values: readonly unknown[]): State | undefined {
  let isLeftOut = false;
  for (const one of when) {
    const condition = values[one];
    if (condition instanceof Refused) return 'not checked';
    if (condition !== true) isLeftOut = true;
  }
  if (isLeftOut) return undefined;
  const value = values[slot];
  if (typeof value !== 'number') return rule.failsAs !== undefined && value instanceof rule.failsAs ? 'fail' : 'not checked';
  const failAt = worthOf(fail, values);
  const lookAt = worthOf(look, values);
  if (failAt instanceof Refused || lookAt instanceof Refused) return 'not checked';
  if (isBroken(value, fail, failAt)) {
    const isSoft = softWhen !== NO_SLOT && values[softWhen];
    return isSoft instanceof Refused ? 'not checked' : isSoft === true ? 'look' : 'fail';
  }
  return isBroken(value, look, lookAt) ? 'look' : 'pass';
}

/** What the limit is for these values; undefined if there is none. */
function worthOf(limit: PlacedBound | undefined, values: readonly unknown[]): number | Refused | undefined {
  if (limit === undefined) return undefined;
  if (limit.slot === NO_SLOT) return limit.number;
  const value = values[limit.slot];
  return typeof value === 'number' || value instanceof Refused ? value : undefined;
}

function isBroken(value: number, limit: PlacedBound | undefined, at: number | Refused | undefined): boolean {
  if (limit === undefined || typeof at !== 'number') return false;
  const { side } = limit.bound;
  if (side === 'below') return !atLeast(value, at);
  if (side === 'above') return !atMost(value, at);
  return side === 'at most' ? atMost(value, at) : atLeast(value, at);
}

/** Why a rule was not checked, or fails by what it judges: the first of what it reads that is refused. */
function refusalOf({ when, value, fail, look, softWhen }: Judge, values: readonly unknown[]): Refused | undefined {
  const read = [...when, value, fail?.slot ?? NO_SLOT, look?.slot ?? NO_SLOT, softWhen].map(slot => values[slot]);
  return read.find(outcome => outcome instanceof Refused);
}
