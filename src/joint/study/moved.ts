// One joint of which one input is moved: what follows from it is worked out again, and nothing is read by its words.
import type { Limits } from '../../core/kinds';
import { plusMinus, type Deviation } from '../../core/read/deviation';
import { Refused } from '../../core/refuse';
import { INPUTS } from '../inputs';
import { type Judge, JUDGES, PLAN_OF_RULES } from '../judge';
import { madeOf, NO_SLOT, type Slot, SLOTS, slotOf } from '../slots';
import type { SlotSet } from '../slot-set';
import type { Variant } from '../variant';
import type { StudySizes } from './steps';

/** An input that is a number, and how it is moved. */
export interface Movable {
  readonly name: string;
  readonly slot: number;
  readonly unit: string;
  readonly now: number;
  readonly limits: Limits | undefined;
  /** Another input stands in its way: it is read anew each time. */
  readonly isRelated: boolean;
  readonly valueOf: (number: number) => unknown;
}

const itself = (number: number): number => number;

const halfWidthOf = (value: unknown): unknown => {
  if (typeof value !== 'object' || value === null || !('upperMm' in value)) return undefined;
  const { upperMm, lowerMm } = value as Deviation;
  return upperMm === -lowerMm ? upperMm : undefined;
};

/** Undefined where it is no number, or has none in this joint. A tolerance is moved by its half width. */
export function movable(variant: Variant, name: string): Movable | undefined {
  const param = INPUTS.get(name)?.param;
  if (param === undefined || (param.kind.is !== 'quantity' && param.kind.is !== 'deviation')) return undefined;
  const isTolerance = param.kind.is === 'deviation';
  const value = variant.outcome(name);
  const now = isTolerance ? halfWidthOf(value) : value;
  if (typeof now !== 'number') return undefined;
  return {
    name,
    slot: slotOf(name),
    unit: param.kind.unit,
    now,
    limits: isTolerance ? { atLeast: 0 } : param.limits,
    isRelated: param.relation !== undefined,
    valueOf: isTolerance ? plusMinus : itself,
  };
}

/** An input that is 0 has no size of its own. */
export function sizesOf(variant: Variant, { now, unit }: Movable): StudySizes {
  const screw = variant.outcome('screw');
  const usual = unit === 'mm' && !(screw instanceof Refused) ? variant.value('screw').nominalMm : unit === '' ? 0.1 : 1;
  return { own: now === 0 ? usual : Math.abs(now), most: Math.max(usual, Math.abs(now)) };
}

/** Of a condition, which may be a value that is there or not: a screw. */
const isFalse = (value: unknown): boolean => value === false || value === undefined || value instanceof Refused;

function follows(variant: Variant, { is, slot, where, input, made }: Slot, at: number, moved: readonly boolean[]): boolean {
  const isMoved = (one: number): boolean => one !== NO_SLOT && moved[one] === true;
  const isOff = (one: number): boolean => one !== NO_SLOT && !isMoved(one) && isFalse(variant.values[one]);
  if (input !== undefined && variant.isTyped(at)) return isMoved(slot) || isMoved(where);
  if (is === 'only' && isOff(where)) return false;
  if (isMoved(slot) || isMoved(where)) return true;
  if (made === undefined || (is === 'node' && made.where.some(condition => isOff(condition.slot)))) return false;
  return made.from.some(isMoved) || made.where.some(condition => isMoved(condition.slot));
}

const never = (): boolean => false;

/** Where something else stands when these slots are moved; what is fixed stays. */
export function movedWith(variant: Variant, slots: readonly number[], isFixed: (slot: number) => boolean = never): readonly boolean[] {
  const moved = SLOTS.map(() => false);
  for (const slot of slots) moved[slot] = true;
  const behind = [...new Set(slots.flatMap(slot => madeOf(slot).slots()))].sort((a, b) => a - b);
  for (const at of behind) if (moved[at] !== true && !isFixed(at)) moved[at] = follows(variant, SLOTS[at] as Slot, at, moved);
  return moved;
}

/** Moves an input to a number and works out what of this plan follows. */
export function mover(variant: Variant, moving: Movable, plan: SlotSet): (number: number) => void {
  const moved = movedWith(variant, [moving.slot]);
  const following = plan.slots().filter(slot => moved[slot] === true && slot !== moving.slot);
  return number => {
    put(variant, moving, number);
    variant.anew(following);
  };
}

function put(variant: Variant, { slot, isRelated, valueOf }: Movable, number: number): void {
  if (isRelated) variant.reread(slot, number);
  else variant.put(slot, valueOf(number));
}

/** How the joint stands: a rule fails, or cannot be checked that could be; some are to be reviewed; all pass. */
export const FAILS = 0;
export const HOLDS = 1;
export const PASSES = 2;

/** No rule that was watched. */
const STILL = -1;

/** What was seen of a joint with its input at a number. */
export interface StudyLook {
  readonly at: number;
  readonly standing: number;
  /** The first rule that fails, or else that is to be reviewed, by its place among those watched. */
  readonly rule: number;
  /** The room of each rule to where it fails and to where it is reviewed; NaN where it has no number, or was not asked any more. */
  readonly toFail: Float64Array;
  readonly toReview: Float64Array;
}

interface WatchedRule {
  readonly judge: Judge;
  /** What it reads that no rule before it has read. */
  readonly further: readonly number[];
  /** Not checked before anything was moved. */
  readonly isUnchecked: boolean;
}

const readBy = ({ when, value, fail, review, reviewWhere }: Judge): readonly number[] =>
  [...when, value, reviewWhere, ...[...fail, ...review].flatMap(({ of, slot }) => [of, slot])].filter(slot => slot !== NO_SLOT);

/** A joint whose rules are looked at while one input is moved. Those that do not follow it are judged once. */
export class Watch {
  private readonly watched: readonly WatchedRule[];
  private readonly still: number;
  private readonly failing: Judge | undefined;

  constructor(
    private readonly variant: Variant,
    private readonly moving: Movable,
  ) {
    variant.run(PLAN_OF_RULES);
    const moved = movedWith(variant, [moving.slot]);
    const feels = (judge: Judge): boolean =>
      readBy(judge).some(slot => moved[slot] === true) &&
      !judge.when.some(condition => moved[condition] !== true && variant.values[condition] === false);
    const states = JUDGES.map(judge => variant.stateOf(judge));
    const known = new Set([moving.slot]);
    this.watched = JUDGES.flatMap((judge, i) => {
      if (!feels(judge)) return [];
      const further = judge.plan.slots().filter(slot => moved[slot] === true && !known.has(slot));
      for (const slot of further) known.add(slot);
      return { judge, further, isUnchecked: states[i] === 'not checked' };
    });
    const unmoved = JUDGES.flatMap((judge, i) => (feels(judge) ? [] : { judge, state: states[i] }));
    this.failing = unmoved.find(({ state }) => state === 'fail')?.judge;
    this.still =
      this.failing !== undefined ? FAILS : unmoved.every(({ state }) => state === undefined || state === 'pass') ? PASSES : HOLDS;
  }

  get isFelt(): boolean {
    return this.watched.length > 0;
  }

  /** What fails wherever the input is moved. */
  get hopeless(): Judge | undefined {
    return this.failing;
  }

  /** How the joint stands with the input at this number. */
  look(number: number): StudyLook {
    const { variant, watched } = this;
    put(variant, this.moving, number);
    const [toFail, toReview] = [new Float64Array(watched.length).fill(NaN), new Float64Array(watched.length).fill(NaN)];
    let [standing, rule] = [this.still, STILL];
    for (let i = 0; i < watched.length; i++) {
      const { judge, further, isUnchecked } = watched[i] as WatchedRule;
      variant.anew(further);
      const state = variant.stateOf(judge);
      if (state === undefined) continue;
      toFail[i] = variant.roomOf(judge.fail);
      toReview[i] = Math.min(toFail[i] as number, variant.roomOf(judge.review));
      if (state === 'pass') continue;
      if (state === 'fail' || (state === 'not checked' && !isUnchecked)) return { at: number, standing: FAILS, rule: i, toFail, toReview };
      standing = HOLDS;
      if (rule === STILL) rule = i;
    }
    return { at: number, standing, rule, toFail, toReview };
  }

  /** The rule that stands in the way of something better, by its name. */
  nameOf({ rule }: StudyLook): string {
    return this.watched[rule]?.judge.rule.name ?? '';
  }
}
