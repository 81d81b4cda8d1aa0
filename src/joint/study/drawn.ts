// The dimensions of one joint that are drawn: each with the limits that it lies in, and the half whose tool makes it.
import type { Deviation } from '../../core/read/deviation';
import { Refused } from '../../core/refuse';
import { headHeightReadings } from '../../core/screw/head';
import { majorReadings, rootReadings, type Screw } from '../../core/screw/thread';
import { worthOf } from '../../core/table';
import type { Reading } from '../../standards/table';
import { PLAN_OF_RULES } from '../judge';
import type { JointName } from '../nodes';
import { planOf, SLOTS, slotOf } from '../slots';
import type { Variant } from '../variant';
import { movedWith } from './moved';

/** Dimensions of one half are made by one tool; what is bought, or is no dimension of the plastic, goes its own way. */
type MadeBy = 'head half' | 'thread half' | 'itself';

const SIZES = [
  ['board plane', 'board plane tolerance', 'head half'],
  ['seat', 'seat tolerance', 'head half'],
  ['sleeve', 'sleeve tolerance', 'head half'],
  ['sleeve OD', 'hole tolerance', 'head half'],
  ['hole', 'hole tolerance', 'head half'],
  ['relief', 'relief tolerance', 'thread half'],
  ['pilot', 'pilot tolerance', 'thread half'],
  ['hole depth', 'hole depth tolerance', 'thread half'],
  ['insert hole', 'pilot tolerance', 'thread half'],
  ['board', 'board tolerance', 'itself'],
  ['gap', 'gap tolerance', 'itself'],
  ['board hole', 'board hole tolerance', 'itself'],
  ['insert length', 'insert tolerance', 'itself'],
  ['insert below face', 'insert tolerance', 'itself'],
  ['length', 'length deviation', 'itself'],
] as const satisfies readonly (readonly [JointName, JointName, MadeBy])[];
const TOLERANCES = [...new Set(SIZES.map(([, tolerance]) => slotOf(tolerance)))];

/** A size of 0 is one that is not there; a flush insert is. */
const CAN_BE_NONE: JointName = 'insert below face';

/** Made once, on the nominal joint: the recess for its head, the sleeve beside its hole, the pilot for its thread. */
const MADE_ONCE = (['recess diameter', 'sleeve OD', 'pilot held depth'] satisfies JointName[]).map(name => slotOf(name));

const EXACT: Deviation = { upperMm: 0, lowerMm: 0 };

type ScrewPart = 'majorMaxMm' | 'majorMinMm' | 'rootMaxMm';
/** A screw that formulas read, of which sizes are drawn. */
type DrawnScrew = Omit<Screw, ScrewPart> & Record<ScrewPart, number>;

export interface Drawn {
  readonly madeBy: MadeBy;
  readonly middle: number;
  readonly half: number;
  /** Where it stands in the joint, and in its screw. */
  readonly slots: readonly number[];
  readonly parts: readonly ScrewPart[];
}

const between = (low: number, high: number, madeBy: MadeBy, names: readonly JointName[], parts: readonly ScrewPart[] = []): Drawn[] =>
  high > low ? [{ madeBy, middle: (low + high) / 2, half: (high - low) / 2, slots: names.map(name => slotOf(name)), parts }] : [];

function sizes(variant: Variant): Drawn[] {
  return SIZES.flatMap(([name, tolerance, madeBy]) => {
    const [size, deviation] = [variant.outcome(name), variant.outcome(tolerance)];
    if (typeof size !== 'number' || (size === 0 && name !== CAN_BE_NONE) || deviation instanceof Refused) return [];
    const { upperMm, lowerMm } = deviation as Deviation;
    return between(size + lowerMm, size + upperMm, madeBy, [name]);
  });
}

/** What a table has not cannot be drawn. */
function heldOr(readings: () => readonly Reading[]): number {
  try {
    return worthOf(readings());
  } catch (fault) {
    if (fault instanceof Refused) return NaN;
    throw fault;
  }
}

function bought(variant: Variant): Drawn[] {
  const [screw, head] = [variant.outcome('screw'), variant.outcome('head')];
  if (screw instanceof Refused) return [];
  const { size } = variant.value('screw');
  const [major, root] = [majorReadings, rootReadings].map(readings =>
    (['min', 'max'] as const).map(limit => heldOr(() => readings(size, limit))),
  ) as [number[], number[]];
  const thread = [
    ...between(major[0] ?? NaN, major[1] ?? NaN, 'itself', ['major max', 'major min'], ['majorMaxMm', 'majorMinMm']),
    ...between(root[0] ?? NaN, root[1] ?? NaN, 'itself', ['root max'], ['rootMaxMm']),
  ];
  if (head instanceof Refused) return thread;
  const height = (limit: 'min' | 'max'): number => heldOr(() => headHeightReadings(size, variant.value('head'), limit));
  const [widest, narrowest] = [variant.outcome('head diameter'), variant.outcome('head diameter min')];
  return [
    ...thread,
    ...(typeof widest === 'number' && typeof narrowest === 'number'
      ? between(narrowest, widest, 'itself', ['head diameter', 'head diameter min'])
      : []),
    ...(variant.isGiven('head height') ? [] : between(height('min'), height('max'), 'itself', ['head height'])),
  ];
}

/** Reads as its screw does, but for the sizes that are drawn. */
function drawnScrew(screw: Screw, drawn: readonly Drawn[]): DrawnScrew {
  const one = Object.create(screw) as DrawnScrew;
  for (const part of drawn.flatMap(({ parts }) => parts)) Object.defineProperty(one, part, { value: NaN, writable: true });
  return one;
}

/** What is drawn of a joint, and how a draw is put into it: values in the order of what is drawn, and all that follows worked out. */
export function drawnJoint(variant: Variant): { readonly drawn: readonly Drawn[]; readonly put: (values: ArrayLike<number>) => void } {
  variant.run(PLAN_OF_RULES);
  variant.run(planOf([...SIZES.map(([name]) => slotOf(name)), ...TOLERANCES, ...MADE_ONCE]));
  const drawn = [...sizes(variant), ...bought(variant)];
  const asScrew = (['screw', 'tapping screw'] satisfies JointName[])
    .map(name => slotOf(name))
    .filter(slot => !(variant.values[slot] instanceof Refused));
  const screw = asScrew.length === 0 ? undefined : drawnScrew(variant.value('screw'), drawn);
  for (const slot of asScrew) variant.put(slot, screw);
  // the limits of a size are in its draw
  const exact = TOLERANCES.filter(slot => !(variant.values[slot] instanceof Refused));
  for (const slot of exact) variant.put(slot, EXACT);
  const moved = [...asScrew, ...drawn.flatMap(({ slots }) => slots)];
  const isFixed = (at: number): boolean => {
    const slot = SLOTS[at];
    return slot === undefined || slot.is === 'input' || slot.is === 'given' || slot.made?.isLookUp === true || MADE_ONCE.includes(at);
  };
  const following = (from: readonly number[]): readonly number[] => {
    const follows = movedWith(variant, from, isFixed);
    return PLAN_OF_RULES.slots().filter(slot => follows[slot] === true && !from.includes(slot));
  };
  variant.anew(following([...exact, ...moved]));
  const plan = following(moved);
  const put = (values: ArrayLike<number>): void => {
    for (let i = 0; i < drawn.length; i++) {
      const { slots, parts } = drawn[i] as Drawn;
      const value = values[i] as number;
      for (const slot of slots) variant.put(slot, value);
      if (screw !== undefined) for (const part of parts) screw[part] = value;
    }
    variant.anew(plan);
  };
  return { drawn, put };
}
