// The graph, ordered once: every value has a slot behind all that it is made of, and a variant is a row of values in that order.
import { type Refused, wrongInput } from '../core/refuse';
import { type LimitedArgument, limitedArguments } from './base-functions';
import { type Arg, type Input, type Made, NotApplicable } from './graph';
import { type InputName, INPUTS } from './inputs';
import { NODES } from './nodes';
import { SlotSet } from './slot-set';

/** No slot of this kind. */
export const NO_SLOT = -1;

/** What has to hold, in its slot; what comes where it does not. */
export interface Condition {
  readonly slot: number;
  readonly otherwise: Refused;
}

/** How a node, or the default of an input, is made: a formula on the values in these slots. */
export interface Derivation {
  readonly formula: (...values: readonly unknown[]) => unknown;
  readonly from: readonly number[];
  /** Where many arguments are put together. */
  readonly args: unknown[];
  readonly where: readonly Condition[];
  readonly limited: readonly LimitedArgument[];
  /** What names something, and inputs beside it, give: looked up once for each of them. */
  readonly isLookUp: boolean;
  /** Among all that is kept of look-ups. */
  readonly place: number;
}

/** A place in the row of values. All have the same fields, which makes them quick to read. */
export type Slot = {
  /** Of an input: by what its text is understood. Of an argument: what it takes. */
  readonly slot: number;
  /** Of an input: whether it is asked for. Of an argument: where it is taken. */
  readonly where: number;
  /** A constant, or what stands for a value that does not apply. */
  readonly value: unknown;
} & (
  | { readonly is: 'input'; readonly input: Input; readonly made: Derivation | undefined; readonly place: number }
  | { readonly is: 'node'; readonly input: undefined; readonly made: Derivation; readonly place: undefined }
  | {
      readonly is: 'constant' | 'only' | 'or else' | 'given';
      readonly input: undefined;
      readonly made: undefined;
      readonly place: undefined;
    }
);

export const SLOTS: Slot[] = [];
let lookUps = 0;
/** What each slot is made of. */
const NEEDS: (readonly number[])[] = [];
const SLOT = new Map<string, number>();

function placed(key: string, slot: Slot): number {
  const { made } = slot;
  const from = made === undefined ? [] : [...made.where.map(condition => condition.slot), ...made.from];
  NEEDS.push([slot.where, slot.slot, ...from].filter(needed => needed !== NO_SLOT));
  const place = SLOTS.push(slot) - 1;
  SLOT.set(key, place);
  return place;
}

/** What a slot of another sort does not have. */
const BARE = {
  is: 'constant',
  input: undefined,
  made: undefined,
  place: undefined,
  slot: NO_SLOT,
  where: NO_SLOT,
  value: undefined,
} as const;

/** The slot of a name: behind all that it is made of. */
export function slotOf(name: string, within: readonly string[] = []): number {
  const known = SLOT.get(name);
  if (known !== undefined) return known;
  if (within.includes(name)) throw new TypeError(`the joint goes round in a circle: ${[...within, name].join(' ← ')}`);
  const inside = [...within, name];
  const input = INPUTS.get(name);
  const node = NODES.get(name);
  if (node !== undefined) {
    const made = derivationOf(node, node.where ?? [], inside);
    return placed(name, { ...BARE, is: 'node', made });
  }
  if (input === undefined) throw new TypeError(`no such name in the joint: ${name}`);
  const slot = input.beside === undefined ? NO_SLOT : slotOf(input.beside, inside);
  const where = input.askedWhere === undefined ? NO_SLOT : slotOf(input.askedWhere.condition, inside);
  const { fallback } = input;
  const made = fallback === undefined || 'raw' in fallback ? undefined : derivationOf(fallback, [], inside);
  return placed(name, { ...BARE, is: 'input', input, made, slot, where, place: lookUps++ });
}

/** Inputs that name what is found in tables. */
const NAMING: readonly unknown[] = ['screw', 'head', 'material'] satisfies readonly InputName[];

function derivationOf(made: Made, where: readonly string[], within: readonly string[]): Derivation {
  const { args } = made;
  const from = args.map(arg => slotOfArg(arg, within));
  return {
    // the types of nodes and inputs hold that the formula takes what its arguments give
    formula: made.formula as Derivation['formula'],
    from,
    args: new Array<unknown>(from.length).fill(undefined),
    where: where.map(name => ({ slot: slotOf(name, within), otherwise: withoutIt(name) })),
    limited: limitedArguments(made, from),
    place: lookUps++,
    isLookUp: NAMING.includes(args[0]) && args.every(arg => (typeof arg === 'string' ? INPUTS.has(arg) : 'is' in arg)),
  };
}

/** What comes where a condition is false. */
function withoutIt(name: string): Refused {
  const { otherwise = `${name} is false`, isAsked } = NODES.get(name) ?? {};
  return isAsked ? wrongInput(otherwise) : new NotApplicable(otherwise);
}

/** The slot of what a formula takes. */
export function slotOfArg(arg: Arg, within: readonly string[] = []): number {
  if (typeof arg === 'string') return slotOf(arg, within);
  const key = JSON.stringify(arg, (_, value: unknown) => (value === Infinity ? 'Infinity' : value));
  const known = SLOT.get(key);
  if (known !== undefined) return known;
  if ('is' in arg) return placed(key, { ...BARE, value: arg.is });
  if ('given' in arg) return placed(key, { ...BARE, is: 'given', slot: slotOf(arg.given, within) });
  if ('of' in arg) return placed(key, { ...BARE, is: 'or else', slot: slotOf(arg.of, within), value: arg.orElse });
  return placed(key, { ...BARE, is: 'only', where: slotOf(arg.where, within), slot: slotOf(arg.only, within) });
}

for (const name of [...INPUTS.keys(), ...NODES.keys()]) slotOf(name);

export const noSlots = (): SlotSet => new SlotSet(SLOTS.length);

/** What each slot is made of, itself included: it stands behind all of it. */
const PLANS: SlotSet[] = [];
SLOTS.forEach((_, slot) => {
  const plan = noSlots();
  plan.add(slot);
  for (const needed of NEEDS[slot] ?? []) plan.addAll(PLANS[needed] as SlotSet);
  PLANS.push(plan);
});

export const planTo = (slot: number): SlotSet => PLANS[slot] as SlotSet;

/** What these slots are made of, themselves included. */
export function planOf(slots: readonly number[]): SlotSet {
  const plan = noSlots();
  for (const slot of slots) plan.addAll(planTo(slot));
  return plan;
}

const MADE_OF_IT = SLOTS.map(noSlots);
PLANS.forEach((plan, slot) => {
  for (const needed of plan.slots()) MADE_OF_IT[needed]?.add(slot);
});

/** What is made of a slot, itself included. */
export const madeOf = (slot: number): SlotSet => MADE_OF_IT[slot] as SlotSet;
