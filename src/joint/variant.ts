// One variant of the joint: what was typed, every value once, and what the rules find.
import type { PrecedingArguments } from '../core/card';
import type { State } from '../core/check/check';
import { isBlank } from '../core/read/cells';
import { Refused } from '../core/refuse';
import { derived } from './derive';
import { type Arg, type Finding, NotApplicable, type Rule } from './graph';
import { type InputSource, inputValue, isDefaultWord, NOT_NAMED } from './input-value';
import { finding, type Judge, judgeFor, JUDGES, marginOf, PLAN_OF_RULES, roomTo, stateOf, worstFinding } from './judge';
import { type LookUps } from './look-up';
import type { Joint, JointName } from './nodes';
import { firstSlot, type SlotSet } from './slot-set';
import { madeOf, NO_SLOT, noSlots, planTo, type Slot, slotOf, slotOfArg, SLOTS } from './slots';

const PUT = Symbol('put as it was read');

export class Variant implements InputSource {
  private readonly raws: unknown[] = new Array<unknown>(SLOTS.length).fill(NOT_NAMED);
  /** Refused where there is no value. */
  readonly values: unknown[] = new Array<unknown>(SLOTS.length).fill(undefined);
  /** Where a value is worked out. */
  private readonly known = noSlots();
  readonly lookUps: LookUps[] = [];
  /** Null if no rule applies. */
  private worstFound: Finding | null | undefined;
  private found: readonly Finding[] | undefined;
  readonly read: PrecedingArguments = { get: name => valueOf(this.values[slotOf(name)]) };

  /**
   * @param given what was typed under each input name; names left out take their defaults.
   * @param base what replaces the default of an input.
   */
  constructor(
    given: ReadonlyMap<string, unknown>,
    readonly base: ReadonlyMap<string, unknown> = new Map(),
  ) {
    for (const [name, raw] of base) this.raws[slotOf(name)] = raw;
    for (const [name, raw] of given) this.raws[slotOf(name)] = this.orBase(slotOf(name), raw);
  }

  /** What was typed, or what the base has where the default is asked for. */
  private orBase(slot: number, raw: unknown): unknown {
    if (this.base.size === 0) return raw;
    const param = SLOTS[slot]?.input?.param;
    if (param === undefined || !this.base.has(param.name)) return raw;
    return isDefaultWord(raw) || (isBlank(raw) && param.blank !== 'explicit') ? this.base.get(param.name) : raw;
  }

  /** The same variant, to be changed by itself. */
  copy(): Variant {
    const other = new Variant(new Map(), this.base);
    this.raws.forEach((own, slot) => (other.raws[slot] = own));
    this.values.forEach((own, slot) => (other.values[slot] = own));
    other.known.addAll(this.known);
    return other;
  }

  /** The same variant with one input typed anew. */
  with(name: string, raw: unknown): Variant {
    const other = this.copy();
    other.type(slotOf(name), raw);
    return other;
  }

  /** Turns into the next variant of a table: what its other values are not made of stays as it was worked out. */
  turn(slots: readonly number[], raws: readonly unknown[]): void {
    let i = 0;
    for (const slot of slots) {
      const raw = this.orBase(slot, raws[i++]);
      if (this.raws[slot] !== raw) this.type(slot, raw);
    }
  }

  private type(slot: number, raw: unknown): void {
    this.raws[slot] = raw;
    this.forget();
    this.known.removeAll(madeOf(slot));
  }

  private forget(): void {
    this.worstFound = undefined;
    this.found = undefined;
  }

  /** Puts a value in a slot, as one that was read there; what is made of it is worked out `anew`. */
  put(slot: number, value: unknown): void {
    this.raws[slot] = PUT;
    this.keep(slot, value);
  }

  /** Puts what is read of a number under an input, beside what it is read with. */
  reread(slot: number, number: number): void {
    this.raws[slot] = number;
    this.keep(slot, this.work(slot));
  }

  /** Works out again what these slots hold, each behind what it is made of. */
  anew(plan: readonly number[]): void {
    for (let i = 0; i < plan.length; i++) {
      const at = plan[i] ?? NO_SLOT;
      this.keep(at, this.work(at));
    }
    this.forget();
  }

  private keep(slot: number, value: unknown): void {
    this.values[slot] = value;
    this.known.add(slot);
  }

  /** How a rule stands on what was worked out; undefined if it is left out. */
  stateOf(judge: Judge): State | undefined {
    return stateOf(judge, this.values);
  }

  /** How far the nearest of these bounds is; NaN where there is no number to say. */
  roomOf(bounds: Judge['fail']): number {
    let least = Infinity;
    for (let i = 0; i < bounds.length; i++) least = Math.min(least, roomTo(bounds[i] as Judge['fail'][number], this.values));
    return least;
  }

  /** Whether the user gave this input. */
  isGiven(name: string): boolean {
    return this.isTyped(slotOf(name));
  }

  /** The same by its slot. */
  isTyped(slot: number): boolean {
    const raw = this.raws[slot];
    return raw !== NOT_NAMED && !isBlank(raw) && !isDefaultWord(raw);
  }

  /** The value of an input or node. Throws Refused. */
  value<N extends JointName>(name: N): Joint[N];
  value(name: string): unknown;
  value(name: string): unknown {
    return valueOf(this.outcome(name));
  }

  /** The value of an input or node, or why there is none. */
  outcome(name: string): unknown {
    return this.outcomeAt(slotOf(name));
  }

  private outcomeAt(slot: number): unknown {
    if (!this.known.has(slot)) this.run(planTo(slot));
    return this.values[slot];
  }

  /** The value of an argument. Throws Refused. */
  arg(arg: Arg): unknown {
    return valueOf(this.outcomeAt(slotOfArg(arg)));
  }

  finding(rule: Rule): Finding | undefined {
    const judge = judgeFor(rule);
    this.run(judge.plan);
    return finding(judge, this.values);
  }

  findings(): readonly Finding[] {
    if (this.found === undefined) {
      this.run(PLAN_OF_RULES);
      this.found = JUDGES.flatMap(judge => finding(judge, this.values) ?? []);
    }
    return this.found;
  }

  /** The first finding of the worst state; undefined if no rule applies. */
  worst(): Finding | undefined {
    if (this.worstFound === undefined) {
      this.worstFound = worstFinding(this.values, this.runWord) ?? null;
    }
    return this.worstFound ?? undefined;
  }

  /** How far a rule is from its fail limit, or nothing where there is no number to say. */
  margin(rule: Rule): number | undefined {
    const judge = judgeFor(rule);
    this.run(judge.plan);
    return marginOf(judge, this.values, this.nominalMm());
  }

  private nominalMm(): number {
    return this.outcome('screw') instanceof Refused ? NaN : this.value('screw').nominalMm;
  }

  /** The rule that is nearest to its fail limit, or farthest beyond it. */
  nearest(): { readonly rule: Rule; readonly margin: number } | undefined {
    this.run(PLAN_OF_RULES);
    const nominalMm = this.nominalMm();
    let nearest: { readonly rule: Rule; readonly margin: number } | undefined;
    for (const judge of JUDGES) {
      const margin = marginOf(judge, this.values, nominalMm);
      if (margin !== undefined && (nearest === undefined || margin < nearest.margin)) nearest = { rule: judge.rule, margin };
    }
    return nearest;
  }

  /** Works out what is not known yet. */
  run({ words }: SlotSet): void {
    for (let word = 0; word < words.length; word++) this.runWord(word, words[word] ?? 0);
  }

  private readonly runWord = (word: number, bits: number): void => {
    const { values, known } = this;
    const due = bits & ~(known.words[word] ?? 0);
    if (due === 0) return;
    for (let left = due; left !== 0; left &= left - 1) {
      const slot = firstSlot(word, left);
      values[slot] = this.work(slot);
    }
    known.words[word] = (known.words[word] ?? 0) | due;
  };

  private work(at: number): unknown {
    const slot = SLOTS[at] as Slot;
    try {
      switch (slot.is) {
        case 'node':
          return derived(slot.made, this.values, this.lookUps);
        case 'input':
          return inputValue(this.raws[at], slot, this);
        case 'constant':
          return slot.value;
        case 'given':
          return this.isTyped(slot.slot);
        case 'only': {
          const condition = this.values[slot.where];
          return condition === true ? this.values[slot.slot] : condition instanceof Refused ? condition : undefined;
        }
        case 'or else': {
          const value = this.values[slot.slot];
          return value instanceof NotApplicable ? slot.value : value;
        }
      }
    } catch (fault) {
      if (fault instanceof Refused) return fault;
      throw fault;
    }
  }
}

function valueOf(outcome: unknown): unknown {
  if (outcome instanceof Refused) throw outcome;
  return outcome;
}
