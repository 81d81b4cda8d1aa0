// One variant of the joint: every value once, the rules' findings. The graph is ordered once; a variant is a row of values in that order.
import type { Card, Earlier, Param } from '../core/card';
import { CORE_CARDS } from '../core/cards';
import type { Cell } from '../core/kinds';
import { type State, WORST_FIRST } from '../core/check/check';
import { atLeast, atMost } from '../core/maths';
import { isBlank, isEmpty, limitWords, readArgument, withinLimits } from '../core/read/params';
import { Refused, wrongInput } from '../core/refuse';
import { type Arg, type Bound, type Finding, type Input, type Made, NotApplicable, type Rule, type Values } from './graph';
import { INPUTS, type INPUT, isWithin } from './inputs';
import { NODES, type NODE } from './nodes';
import { RULES } from './rules';

const NAMES = [
  'feature wall',
  'recess diameter',
  'recess mouth',
  'recess depth',
  'subflush',
  'post OD',
  'hole',
  'sleeve OD',
  'grip',
  'screw length',
  'penetration max',
  'engagement',
  'engagement min',
  'engagement ratio',
  'hole depth needed',
  'hole depth',
  'bottom clearance',
  'pilot hole',
  'pilot mouth',
  'pilot at tip',
  'pilot bottom',
  'boss OD',
  'boss OD root',
  'boss wall',
  'boss wall root',
  'sink ratio',
  'slenderness',
  'pin ratio',
  'floor under hole',
  'landing ring',
  'board play',
  'board hold',
  'boss stack',
  'pull-out',
  'boss tear',
  'seat shear',
  'weakest',
  'boss mass',
  'all computed',
  'state',
  'reason',
] as const;

/** The value of each input and node. */
export type Joint = Values<typeof INPUT, typeof NODE>;
export type Name = keyof Joint & string;
export type Output = (typeof NAMES)[number];
export const OUTPUTS: readonly string[] = NAMES satisfies readonly (Name | keyof typeof VERDICTS)[];

/** Outputs that are about the other outputs and the rules. */
const VERDICTS = {
  'all computed': 'TRUE where every output that applies has a value',
  state: 'worst state of all rules',
  reason: 'first rule of that state, with value and limit',
} as const;

export const unitOf = (name: string): string => NODES.get(name)?.unit ?? INPUTS.get(name)?.unit ?? '';
export const isVerdict = (name: string): name is keyof typeof VERDICTS => name in VERDICTS;
export const meaningOf = (name: string): string =>
  isVerdict(name) ? VERDICTS[name] : (NODES.get(name)?.meaning ?? INPUTS.get(name)?.meaning ?? '');

const CARD_OF: ReadonlyMap<unknown, Card> = new Map(CORE_CARDS.map(card => [card.formula, card]));
export const cardOf = (formula: Made['formula']): Card | undefined => CARD_OF.get(formula);

export const rounded = (value: number): string => String(Math.round(value * 1000) / 1000);
const withUnit = (value: number, unit: string): string => (unit === '' ? rounded(value) : `${rounded(value)} ${unit}`);

// ---- the graph, ordered once -----------------------------------------------------------------------------------------

/** How a node, or the default of an input, is made: from values in these slots. */
interface Work {
  readonly formula: (...values: readonly unknown[]) => unknown;
  readonly from: readonly number[];
  /** Where many arguments are put together. */
  readonly args: unknown[];
  readonly where: readonly { readonly slot: number; readonly otherwise: Refused }[];
  /** Base functions keep their limits inside the joint too. */
  readonly limited: readonly { readonly slot: number; readonly param: Param; readonly card: Card }[];
  /** What names something, and inputs beside it, give: looked up once for each of them. */
  readonly isLookUp: boolean;
}

/** A place in the row of values. All have one shape, which makes them quick to read. */
interface Slot {
  readonly is: 'input' | 'node' | 'constant' | 'only' | 'or else';
  readonly input: Input | undefined;
  readonly work: Work | undefined;
  /** Of an input: by what its text is understood, and whether it is asked for. Of an argument: what it takes, and only where what is true. */
  readonly slot: number;
  readonly where: number;
  /** A constant, or what stands for a value that does not apply. */
  readonly value: unknown;
}

const SLOTS: Slot[] = [];
/** What each slot is made of. */
const NEEDS: (readonly number[])[] = [];
const SLOT = new Map<string, number>();

function placed(is: Slot['is'], parts: Partial<Slot>, more: readonly number[] = []): number {
  const slot: Slot = { is, input: undefined, work: undefined, slot: NO_SLOT, where: NO_SLOT, value: undefined, ...parts };
  NEEDS.push([slot.where, slot.slot, ...more].filter(needed => needed !== NO_SLOT));
  return SLOTS.push(slot) - 1;
}

const NO_SLOT = -1;

const makingOf = (name: string): Made | undefined => {
  const fallback = INPUTS.get(name)?.fallback;
  return NODES.get(name) ?? (fallback !== undefined && 'by' in fallback ? fallback : undefined);
};

/** Inputs that name what is found in tables. */
const NAMING: readonly string[] = ['screw', 'head', 'material'] satisfies readonly (keyof typeof INPUT)[];

function workOf({ formula, args }: Made, where: readonly string[], within: readonly string[]): Work {
  const card = cardOf(formula);
  const from = args.map(arg => argSlot(arg, within));
  return {
    formula: formula as Work['formula'],
    from,
    args: new Array<unknown>(from.length).fill(undefined),
    where: where.map(name => ({
      slot: slotOf(name, within),
      otherwise: new NotApplicable(NODES.get(name)?.otherwise ?? `${name} is false`),
    })),
    limited: (card?.params ?? []).flatMap((param, i) => {
      const [arg, slot] = [args[i], from[i]];
      const isKept = param.limits === undefined || (typeof arg === 'string' && isWithin(arg, param.limits));
      return isKept || slot === undefined ? [] : [{ slot, param, card: card as Card }];
    }),
    isLookUp: NAMING.includes(String(args[0])) && args.every(arg => (typeof arg === 'string' ? INPUTS.has(arg) : 'is' in arg)),
  };
}

/** The slot of a name: behind all that it is made of. */
function slotOf(name: string, within: readonly string[] = []): number {
  const known = SLOT.get(name);
  if (known !== undefined) return known;
  if (within.includes(name)) throw new TypeError(`the joint goes round in a circle: ${[...within, name].join(' ← ')}`);
  const [input, made, inside] = [INPUTS.get(name), makingOf(name), [...within, name]];
  if (input === undefined && made === undefined) throw new TypeError(`no such name in the joint: ${name}`);
  const beside = input?.beside === undefined ? NO_SLOT : slotOf(input.beside, inside);
  const where = input?.askedWhere === undefined ? NO_SLOT : slotOf(input.askedWhere.condition, inside);
  const work = made && workOf(made, NODES.get(name)?.where ?? [], inside);
  const needs = work === undefined ? [] : [...work.where.map(({ slot }) => slot), ...work.from];
  const slot = placed(input === undefined ? 'node' : 'input', { input, work, slot: beside, where }, needs);
  SLOT.set(name, slot);
  return slot;
}

function argSlot(arg: Arg, within: readonly string[]): number {
  if (typeof arg === 'string') return slotOf(arg, within);
  const key = JSON.stringify(arg, (_, value: unknown) => (value === Infinity ? 'Infinity' : value));
  const known = SLOT.get(key);
  if (known !== undefined) return known;
  const slot =
    'is' in arg
      ? placed('constant', { value: arg.is })
      : 'of' in arg
        ? placed('or else', { slot: slotOf(arg.of, within), value: arg.orElse })
        : placed('only', { where: slotOf(arg.where, within), slot: slotOf(arg.only, within) });
  SLOT.set(key, slot);
  return slot;
}

for (const name of [...INPUTS.keys(), ...NODES.keys()]) slotOf(name);

/** What is made of a slot, itself included. */
const MADE_OF_IT: readonly (readonly number[])[] = SLOTS.map((_, slot) => {
  const reached = new Set([slot]);
  for (let later = slot + 1; later < SLOTS.length; later++) if (NEEDS[later]?.some(needed => reached.has(needed))) reached.add(later);
  return [...reached];
});

/** What these slots are made of, themselves included, in order. */
function planOf(slots: readonly number[]): readonly number[] {
  const isNeeded = SLOTS.map(() => false);
  for (const slot of slots) isNeeded[slot] = true;
  for (let slot = SLOTS.length - 1; slot >= 0; slot--) {
    if (isNeeded[slot]) for (const other of NEEDS[slot] as readonly number[]) isNeeded[other] = true;
  }
  return SLOTS.flatMap((_, slot) => (isNeeded[slot] ? slot : []));
}

const PLANS = SLOTS.map((): readonly number[] | undefined => undefined);
const planTo = (slot: number): readonly number[] => (PLANS[slot] ??= planOf([slot]));

/** A rule on the row of values. A bound that is a number has no slot. */
interface Judge {
  readonly rule: Rule;
  readonly when: readonly number[];
  readonly value: number;
  readonly fail: number;
  readonly look: number;
  readonly softWhen: number;
  readonly plan: readonly number[];
}

function judgeOf(rule: Rule): Judge {
  const slotOrNone = (name: string | number | undefined): number => (typeof name === 'string' ? slotOf(name) : NO_SLOT);
  const when = (rule.when ?? []).map(name => slotOf(name));
  const [value, fail, look, softWhen] = [
    slotOf(rule.value),
    slotOrNone(rule.fail?.limit),
    slotOrNone(rule.look?.limit),
    slotOrNone(rule.softWhen),
  ];
  return { rule, when, value, fail, look, softWhen, plan: planOf([...when, value, fail, look, softWhen].filter(slot => slot !== NO_SLOT)) };
}

const JUDGES: readonly Judge[] = RULES.map(judgeOf);
const PLAN_OF_RULES = planOf(JUDGES.flatMap(({ plan }) => plan));

// ---- one variant -----------------------------------------------------------------------------------------------------

const UNKNOWN = Symbol('not worked out yet');
const NOT_NAMED = Symbol('no column of this name');

/** What was found, by one thing after another. */
type Found = Map<unknown, unknown>;

export class Variant {
  private readonly raws: unknown[] = new Array<unknown>(SLOTS.length).fill(NOT_NAMED);
  /** Refused where there is no value. */
  private readonly values: unknown[] = new Array<unknown>(SLOTS.length).fill(UNKNOWN);
  private readonly readings: (Found | undefined)[] = new Array<undefined>(SLOTS.length).fill(undefined);
  private readonly lookedUp: Found = new Map<unknown, unknown>();
  /** Null where no rule applies. */
  private worst: Finding | null | undefined;
  private readonly read: Earlier = { get: name => valueOf(this.values[slotOf(name)]) };

  /** @param given what was typed under each input name; names left out take their defaults. */
  constructor(given: ReadonlyMap<string, unknown>) {
    for (const [name, raw] of given) this.raws[slotOf(name)] = raw;
  }

  /** The same variant with one input typed anew. */
  with(name: string, raw: unknown): Variant {
    const other = new Variant(new Map());
    this.raws.forEach((own, slot) => (other.raws[slot] = own));
    this.values.forEach((own, slot) => (other.values[slot] = own));
    other.type(slotOf(name), raw);
    return other;
  }

  /** Turns into the next variant of a table: what its other values are not made of stays as it was worked out. */
  turn(slots: readonly number[], raws: readonly unknown[]): void {
    for (let i = 0; i < slots.length; i++) {
      const slot = slots[i] as number;
      if (this.raws[slot] !== raws[i]) this.type(slot, raws[i]);
    }
  }

  private type(slot: number, raw: unknown): void {
    this.raws[slot] = raw;
    this.worst = undefined;
    const made = MADE_OF_IT[slot] as readonly number[];
    for (let i = 0; i < made.length; i++) this.values[made[i] as number] = UNKNOWN;
  }

  /** Whether the user gave this input himself. */
  isGiven(name: string): boolean {
    const raw = this.raws[slotOf(name)];
    return raw !== NOT_NAMED && !isEmpty(raw) && !isDefaultWord(raw) && !(raw === 0 && INPUTS.get(name)?.param.blank === 'absent');
  }

  /** The value of an input or node. Throws Refused. */
  value<N extends Name>(name: N): Joint[N];
  value(name: string): unknown;
  value(name: string): unknown {
    return valueOf(this.outcome(name));
  }

  /** The value of an input or node, or why there is none. */
  outcome(name: string): unknown {
    const slot = slotOf(name);
    this.run(planTo(slot));
    return this.values[slot];
  }

  /** The value of an argument. Throws Refused. */
  arg(arg: Arg): unknown {
    const slot = argSlot(arg, []);
    this.run(planTo(slot));
    return valueOf(this.values[slot]);
  }

  /** What was worked out. */
  at(slot: number): unknown {
    return this.values[slot];
  }

  /** Works out what is not known yet. */
  run(plan: readonly number[]): void {
    const { values } = this;
    for (let i = 0; i < plan.length; i++) {
      const slot = plan[i] as number;
      if (values[slot] === UNKNOWN) values[slot] = this.work(slot);
    }
  }

  private work(at: number): unknown {
    const slot = SLOTS[at] as Slot;
    try {
      switch (slot.is) {
        case 'node':
          return this.made(slot.work as Work);
        case 'input':
          return this.input(at, slot);
        case 'constant':
          return slot.value;
        case 'only': {
          const isLookedAt = this.values[slot.where];
          return isLookedAt === true ? this.values[slot.slot] : isLookedAt instanceof Refused ? isLookedAt : undefined;
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

  private input(at: number, slot: Slot): unknown {
    const { param, fallback, askedWhere } = slot.input as Input;
    const raw = this.raws[at];
    if (typeof raw === 'number' && raw !== 0) return readArgument(param, raw, this.read);
    const asksForDefault = raw === NOT_NAMED || isDefaultWord(raw);
    if (!asksForDefault && !isBlank(raw)) {
      const readings = (this.readings[at] ??= new Map<unknown, unknown>());
      return once(slot.slot === NO_SLOT ? readings : further(readings, this.values[slot.slot]), raw, () =>
        readArgument(param, raw, this.read),
      );
    }
    if (!asksForDefault && param.blank === 'explicit')
      return wrongInput(`${param.name}: 0 or blank? write ${param.kind.unit === '°' ? '"0°"' : '"0 mm"'} for zero, or default`, param.name);
    if (askedWhere !== undefined) {
      const isAsked = this.values[slot.where];
      if (isAsked instanceof Refused) return isAsked;
      // a blank that nobody needs is no slip
      if (isAsked === false) return new NotApplicable(askedWhere.otherwise);
    }
    if (slot.work !== undefined) return this.made(slot.work);
    return fallback === undefined
      ? readArgument(param, undefined, this.read)
      : param.kind.read((fallback as { raw: unknown }).raw, this.read);
  }

  private made(work: Work): unknown {
    const { values } = this;
    const { where, from, limited } = work;
    for (let i = 0; i < where.length; i++) {
      const { slot, otherwise } = where[i] as Work['where'][number];
      const value = values[slot];
      if (value === false) return otherwise;
      if (value instanceof Refused) return value;
    }
    for (let i = 0; i < from.length; i++) {
      const value = values[from[i] as number];
      if (typeof value === 'object' && value instanceof Refused) return value;
    }
    for (let i = 0; i < limited.length; i++) {
      const { slot, param, card } = limited[i] as Work['limited'][number];
      const value = values[slot];
      if (typeof value === 'number' && !withinLimits(value, param.limits))
        return wrongInput(`${param.name} of ${card.id} is ${rounded(value)}; it must be ${limitWords(param.limits, param.kind.unit)}`);
    }
    const result = work.isLookUp ? this.looked(work) : this.applied(work);
    return typeof result === 'number' && !Number.isFinite(result) ? wrongInput('no finite result for these inputs') : result;
  }

  /** An array of arguments takes longer than most formulas: few go without, many share one. */
  private applied({ formula, from, args }: Work): unknown {
    const { values } = this;
    const { 0: a = 0, 1: b = 0, 2: c = 0, 3: d = 0 } = from;
    switch (from.length) {
      case 1:
        return formula(values[a]);
      case 2:
        return formula(values[a], values[b]);
      case 3:
        return formula(values[a], values[b], values[c]);
      case 4:
        return formula(values[a], values[b], values[c], values[d]);
      default:
        for (let i = 0; i < from.length; i++) args[i] = values[from[i] as number];
        return formula(...args);
    }
  }

  /** Once for each screw, head or material, with what stands beside it. */
  private looked(work: Work): unknown {
    const { from } = work;
    let found = further(this.lookedUp, work);
    for (let i = 0; i < from.length - 1; i++) found = further(found, this.values[from[i] as number]);
    return once(found, this.values[from[from.length - 1] as number], () => this.applied(work));
  }

  finding(rule: Rule): Finding | undefined {
    const judge = JUDGES.find(one => one.rule === rule) ?? judgeOf(rule);
    this.run(judge.plan);
    return this.judged(judge);
  }

  findings(): readonly Finding[] {
    this.run(PLAN_OF_RULES);
    return JUDGES.flatMap(judge => this.judged(judge) ?? []);
  }

  private judged(judge: Judge): Finding | undefined {
    const { rule } = judge;
    const state = this.stateOf(judge);
    if (state === undefined) return undefined;
    const value = this.values[judge.value];
    if (state === 'not checked' || typeof value !== 'number')
      return { rule, state, value: undefined, limit: undefined, bound: undefined, refusal: this.refusalOf(judge) };
    const [fail, look] = [this.limit(rule.fail, judge.fail), this.limit(rule.look, judge.look)] as [number, number];
    const isFail = rule.fail !== undefined && (rule.look === undefined || state === 'pass' || isBroken(value, rule.fail, fail));
    return { rule, state, value, limit: isFail ? fail : look, bound: isFail ? rule.fail : rule.look };
  }

  /** Nothing where the rule is left out. */
  private stateOf({ rule, when, value: slot, fail: failSlot, look: lookSlot, softWhen }: Judge): State | undefined {
    let isLeftOut = false;
    for (let i = 0; i < when.length; i++) {
      const condition = this.values[when[i] as number];
      if (condition instanceof Refused) return 'not checked';
      if (condition !== true) isLeftOut = true;
    }
    if (isLeftOut) return undefined;
    const value = this.values[slot];
    if (typeof value !== 'number') return rule.failsAs !== undefined && value instanceof rule.failsAs ? 'fail' : 'not checked';
    const fail = this.limit(rule.fail, failSlot);
    const look = this.limit(rule.look, lookSlot);
    if (fail instanceof Refused || look instanceof Refused) return 'not checked';
    if (rule.fail !== undefined && isBroken(value, rule.fail, fail as number)) {
      const isSoft = softWhen !== NO_SLOT && this.values[softWhen];
      return isSoft instanceof Refused ? 'not checked' : isSoft === true ? 'look' : 'fail';
    }
    return rule.look !== undefined && isBroken(value, rule.look, look as number) ? 'look' : 'pass';
  }

  /** Why a rule was not checked, or fails by what it judges: the first of what it reads that is refused. */
  private refusalOf({ rule, when, value, fail, look, softWhen }: Judge): Refused {
    const read = [...when, value].map(slot => this.values[slot]);
    const outcomes = [...read, this.limit(rule.fail, fail), this.limit(rule.look, look), this.values[softWhen]];
    return outcomes.find(outcome => outcome instanceof Refused) as Refused;
  }

  private limit(bound: Bound | undefined, slot: number): unknown {
    return slot === NO_SLOT ? bound?.limit : this.values[slot];
  }

  verdict(name: keyof typeof VERDICTS): string | boolean {
    if (name === 'all computed') return OUTPUTS.every(output => isVerdict(output) || this.applies(output));
    const worst = (this.worst ??= this.worstOf());
    if (name === 'state') return worst?.state ?? 'not checked';
    return worst === null || worst.state === 'pass' ? '–' : sentence(worst);
  }

  /** The first finding of the worst state. */
  private worstOf(): Finding | null {
    this.run(PLAN_OF_RULES);
    let first: Judge | undefined;
    let worst = WORST_FIRST.length;
    for (let i = 0; i < JUDGES.length && worst > 0; i++) {
      const state = this.stateOf(JUDGES[i] as Judge);
      const rank = state === undefined ? worst : WORST_FIRST.indexOf(state);
      if (rank < worst) [first, worst] = [JUDGES[i], rank];
    }
    return (first && this.judged(first)) ?? null;
  }

  /** Whether the output has a value, or has none because it does not apply. */
  private applies(output: string): boolean {
    const outcome = this.outcome(output);
    return !(outcome instanceof Refused) || outcome instanceof NotApplicable;
  }
}

/** What was found before, or is found now, a refusal too. */
function once(found: Found, key: unknown, work: () => unknown): unknown {
  const known = found.get(key);
  if (known !== undefined) return known;
  try {
    return kept(found, key, work());
  } catch (fault) {
    if (fault instanceof Refused) return kept(found, key, fault);
    throw fault;
  }
}

function further(found: Map<unknown, unknown>, key: unknown): Found {
  const known = found.get(key) as Found | undefined;
  return known ?? (kept(found, key, new Map<unknown, unknown>()) as Found);
}

function kept(found: Found, key: unknown, value: unknown): unknown {
  found.set(key, value);
  return value;
}

/** One output as a cell: its value, or why there is none. */
export const outputCell = (variant: Variant, name: string): Cell =>
  isVerdict(name) ? variant.verdict(name) : cellOf(variant.outcome(name));

const cellOf = (outcome: unknown): Cell => (outcome instanceof Refused ? `no value: ${outcome.message}` : (outcome as Cell));

/** The outputs of one variant after another, each given by what stands under these names. */
export function rowByRow(names: readonly string[], asked: readonly string[]): (raws: readonly unknown[]) => Cell[] {
  const variant = new Variant(new Map());
  const columns = names.map(name => slotOf(name));
  const slots = asked.map(name => (isVerdict(name) ? name : slotOf(name)));
  const judged = asked.some(name => name === 'state' || name === 'reason') ? PLAN_OF_RULES : [];
  let plan = planOf([...slots.filter(slot => typeof slot === 'number'), ...judged]);
  // what no column makes is worked out with the first variant
  const isMoving = SLOTS.map(() => false);
  for (const column of columns) for (const slot of MADE_OF_IT[column] as readonly number[]) isMoving[slot] = true;
  const moving = plan.filter(slot => isMoving[slot]);
  return raws => {
    variant.turn(columns, raws);
    variant.run(plan);
    plan = moving;
    return slots.map(slot => (typeof slot === 'number' ? cellOf(variant.at(slot)) : variant.verdict(slot)));
  };
}

function valueOf(outcome: unknown): unknown {
  if (outcome instanceof Refused) throw outcome;
  return outcome;
}

const isDefaultWord = (raw: unknown): boolean => typeof raw === 'string' && raw.trim().toLowerCase() === 'default';

function isBroken(value: number, { side }: Bound, limit: number): boolean {
  if (side === 'below') return !atLeast(value, limit);
  if (side === 'above') return !atMost(value, limit);
  return side === 'at most' ? atMost(value, limit) : atLeast(value, limit);
}

/** "engagement: engagement ratio 1.497 is below 2". */
export function sentence({ rule, state, value, limit, bound, refusal }: Finding): string {
  if (refusal !== undefined) return `${rule.name}: ${state === 'fail' ? '' : 'not checked, '}${refusal.message}`;
  if (rule.words !== undefined && state !== 'pass') return `${rule.name}: ${rule.words}`;
  const unit = unitOf(rule.value);
  return `${rule.name}: ${rule.value} ${withUnit(value ?? NaN, unit)} is ${bound?.side} ${withUnit(limit ?? NaN, unit)}`;
}
