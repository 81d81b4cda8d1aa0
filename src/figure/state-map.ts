// The plane of two inputs of one joint: what each point of it is worth.
import type { State } from '../core/check/check';
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

/** States and margins by row of y and column of x. */
export interface StateMap {
  readonly x: MapAxis;
  readonly y: MapAxis;
  readonly states: readonly (readonly State[])[];
  readonly margins: Heights;
}

/** What JOINT.MAP gives for state and margin. */
export function stateMapOf(variant: Variant, x: string, xValues: readonly number[], y: string, yValues: readonly number[]): StateMap {
  const axis = (name: string, values: readonly number[]): MapAxis => {
    const now = variant.outcome(name);
    return { name, unit: unitOf(name), values, now: typeof now === 'number' ? now : undefined };
  };
  const axes = { x: axis(x, xValues), y: axis(y, yValues) };
  const answer = turned(variant.copy(), [y, x], ['state', 'margin']);
  const rows = yValues.map(down => xValues.map(across => answer([down, across])));
  return {
    ...axes,
    states: rows.map(row => row.map(([state]) => state as State)),
    margins: rows.map(row => row.map(([, margin]) => (typeof margin === 'number' ? margin : undefined))),
  };
}
