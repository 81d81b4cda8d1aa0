// The plane of two inputs of one joint: what each point of it is worth.
import type { State } from '../core/check/check';
import type { Cell } from '../core/kinds';
import { wrongInput } from '../core/refuse';
import type { AskedMap } from '../joint/study/map';
import { turned } from '../joint/rows';
import { unitOf } from '../joint/outputs';
import type { Variant } from '../joint/variant';
import type { Heights } from './contour';

export interface MapAxis {
  readonly name: string;
  readonly unit: string;
  /** Rising. */
  readonly values: readonly number[];
  /** Where the joint is now; undefined where it has no number. */
  readonly now: number | undefined;
}

/** States, margins and what stands in the way, by row of y and column of x. */
export interface StateMap {
  readonly x: MapAxis;
  readonly y: MapAxis;
  readonly states: readonly (readonly State[])[];
  readonly margins: Heights;
  /** What is wrong, in the words of its rule; blank where all passes. */
  readonly limits: readonly (readonly string[])[];
}

/** A map of more points is not drawn. */
const MOST_POINTS = 10_000;

/** Where each value stands when they rise, each once; undefined where one is no number. */
function rising(labels: readonly Cell[]): { readonly at: readonly number[]; readonly values: readonly number[] } | undefined {
  if (!labels.every(label => typeof label === 'number')) return undefined;
  const at = labels
    .map((_, i) => i)
    .sort((a, b) => (labels[a] as number) - (labels[b] as number))
    .filter((i, place, all) => place === 0 || labels[i] !== labels[all[place - 1] as number]);
  return { at, values: at.map(i => labels[i] as number) };
}

function limitOf(variant: Variant, state: State): string {
  const rule = state === 'pass' ? undefined : variant.worst()?.rule;
  return (state === 'review' ? rule?.doubtful : undefined) ?? rule?.broken ?? '';
}

/** What JOINT.MAP gives for state and margin. Throws Refused where it cannot be drawn. */
export function stateMapOf({ variant, across, down }: AskedMap): StateMap {
  const [x, y] = [rising(across.labels), rising(down.labels)];
  if (x === undefined || y === undefined)
    throw wrongInput(`${(x === undefined ? across : down).head.name} has values that are no numbers: such a map is not drawn`);
  if (x.at.length * y.at.length > MOST_POINTS)
    throw wrongInput(`the map has ${x.at.length * y.at.length} points; at most ${MOST_POINTS} are drawn`);
  const axis = (name: string, values: readonly number[]): MapAxis => {
    const now = variant.outcome(name);
    return { name, unit: unitOf(name), values, now: typeof now === 'number' ? now : undefined };
  };
  const axes = { x: axis(across.head.name, x.values), y: axis(down.head.name, y.values) };
  const moved = variant.copy();
  const answer = turned(moved, [down.head.name, across.head.name], ['state', 'margin']);
  const points = y.at.map(r =>
    x.at.map(c => {
      const [state, margin] = answer([down.raws[r], across.raws[c]]);
      return { state: state as State, margin: typeof margin === 'number' ? margin : undefined, limit: limitOf(moved, state as State) };
    }),
  );
  return {
    ...axes,
    states: points.map(row => row.map(({ state }) => state)),
    margins: points.map(row => row.map(({ margin }) => margin)),
    limits: points.map(row => row.map(({ limit }) => limit)),
  };
}
