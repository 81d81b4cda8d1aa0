// One variant of the joint: what was typed, every value once, and what the rules find.
import type { PrecedingArguments } from '../core/card';
import { isBlank } from '../core/read/cells';
import { readArgument } from '../core/read/params';
import { Refused, wrongInput } from '../core/refuse';
import { derived } from './derive';
import { type Arg, type Finding, type Input, NotApplicable, type Rule } from './graph';
import { finding, judgeFor, JUDGES, marginOf, PLAN_OF_RULES, worstFinding } from './judge';
import { LookUps } from './look-up';
import type { Joint, JointName } from './nodes';
import { madeOf, NO_SLOT, planTo, type Slot, slotOf, slotOfArg, SLOTS } from './slots';

const UNKNOWN = Symbol('not worked out yet');
const NOT_NAMED = Symbol('no column of this name');

export class Variant {
  private readonly raws: unknown[] = new Array<unknown>(SLOTS.length).fill(NOT_NAMED);
  /** Refused where there is no value. */
  private readonly values: unknown[] = new Array<unknown>(SLOTS.length).fill(UNKNOWN);
  private readonly lookUps = new LookUps();
  /** Null if no rule applies. */
  private worstFound: Finding | null | undefined;
  private found: readonly Finding[] | undefined;
  private readonly read: PrecedingArguments = { get: name => valueOf(this.values[slotOf(name)]) };

  /**
   * @param given what was typed under each input name; names left out take their defaults.
   * @param base what replaces the default of an input.
   */
  constructor(
    given: ReadonlyMap<string, unknown>,
    private readonly base: ReadonlyMap<string, unknown> = new Map(),
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

  /** The same variant with one input typed anew. */
  with(name: string, raw: unknown): Variant {
    const other = new Variant(new Map(), this.base);
    this.raws.forEach((own, slot) => (other.raws[slot] = own));
    this.values.forEach((own, slot) => (other.values[slot] = own));
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
    this.worstFound = undefined;
    this.found = undefined;
    const made = madeOf(slot);
    for (let i = 0; i < made.length; i++) this.values[made[i] ?? NO_SLOT] = UNKNOWN;
  }

  /** Whether the user gave this input himself. */
  isGiven(name: string): boolean {
    return this.isTyped(slotOf(name));
  }

  private isTyped(slot: number): boolean {
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
    if (this.values[slot] === UNKNOWN) this.run(planTo(slot));
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
      this.worstFound = worstFinding(this.values, this.run) ?? null;
    }
    return this.worstFound ?? undefined;
  }

  /** How far a rule is from its fail limit, or nothing where there is no number to say. */
  margin(rule: Rule): number | undefined {
    const judge = judgeFor(rule);
    this.run(judge.plan);
    return this.outcome('screw') instanceof Refused ? undefined : marginOf(judge, this.values, this.value('screw').nominalMm);
  }

  /** The rule that is nearest to its fail limit, or farthest beyond it. */
  nearest(): { readonly rule: Rule; readonly margin: number } | undefined {
    this.run(PLAN_OF_RULES);
    if (this.outcome('screw') instanceof Refused) return undefined;
    const { nominalMm } = this.value('screw');
    let nearest: { readonly rule: Rule; readonly margin: number } | undefined;
    for (const judge of JUDGES) {
      const margin = marginOf(judge, this.values, nominalMm);
      if (margin !== undefined && (nearest === undefined || margin < nearest.margin)) nearest = { rule: judge.rule, margin };
    }
    return nearest;
  }

  /** What was worked out. */
  at(slot: number): unknown {
    return this.values[slot];
  }

  /** Works out what is not known yet. */
  readonly run = (plan: readonly number[]): void => {
    const { values } = this;
    for (let i = 0; i < plan.length; i++) {
      const at = plan[i] ?? NO_SLOT;
      if (values[at] === UNKNOWN) values[at] = this.work(at);
    }
  };

  private work(at: number): unknown {
    const slot = SLOTS[at] as Slot;
    try {
      switch (slot.is) {
        case 'node':
          return derived(slot.made, this.values, this.lookUps);
        case 'input':
          return this.input(at, slot);
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

  private input(at: number, { input, made, slot, where }: Slot & { readonly is: 'input' }): unknown {
    const { param, fallback, askedWhere } = input;
    const raw = this.raws[at];
    if (typeof raw === 'number' && raw !== 0 && askedWhere?.alone === undefined) return readArgument(param, raw, this.read);
    const asksForDefault = raw === NOT_NAMED || isDefaultWord(raw);
    if (askedWhere?.alone === true) {
      const isTaken = this.values[where];
      if (isTaken instanceof Refused) return isTaken;
      if (isTaken === false)
        return asksForDefault || isBlank(raw) || raw === this.base.get(param.name)
          ? new NotApplicable(askedWhere.otherwise)
          : wrongInput(`${param.name} is given, and ${askedWhere.otherwise}`, param.name);
    }
    if (!asksForDefault && !isBlank(raw)) {
      const readings = this.lookUps.beside(input);
      const found = slot === NO_SLOT ? readings : readings.beside(this.values[slot]);
      return found.get(raw) ?? firstRead(input, raw, this.read, found);
    }
    if (!asksForDefault && param.blank === 'explicit')
      return wrongInput(`${param.name}: 0 or blank? write ${zeroOf(param.kind.unit)} for zero, or default`, param.name);
    if (askedWhere !== undefined) {
      const isAsked = this.values[where];
      if (isAsked instanceof Refused) return isAsked;
      // a blank that nobody needs is no slip
      if (isAsked === false) return new NotApplicable(askedWhere.otherwise);
    }
    if (made !== undefined) return derived(made, this.values, this.lookUps);
    return fallback !== undefined && 'raw' in fallback
      ? param.kind.read(fallback.raw, this.read)
      : readArgument(param, undefined, this.read);
  }
}

/** On its own, so that only a first reading pays for a closure. */
const firstRead = ({ param }: Input, raw: unknown, read: PrecedingArguments, found: LookUps): unknown =>
  found.keep(raw, () => readArgument(param, raw, read));

function valueOf(outcome: unknown): unknown {
  if (outcome instanceof Refused) throw outcome;
  return outcome;
}

/** As a zero is written that is no blank; what has no unit is a share. */
const zeroOf = (unit: string): string => (unit === '°' ? '"0°"' : unit === '' ? '"0 %"' : `"0 ${unit}"`);

const isDefaultWord = (raw: unknown): boolean => typeof raw === 'string' && raw.trim().toLowerCase() === 'default';
