// Where an input is looked at: near its present value closely, further off more widely, as far as its own limits go.
import type { Limits } from '../../core/kinds';

/** How large an input is, and what is large among its kind where that is more. */
export interface StudySizes {
  readonly own: number;
  readonly most: number;
}

/** Of a size: the first step, how steps grow, the largest of them, and how far they go. */
const FIRST = 0.01;
const GROWTH = 1.1;
const LARGEST = 0.05;
const FARTHEST = 9;
/** How near a limit that must not be reached is gone, of the way to it. */
const NEARLY = 0.999;

/** The numbers on one side of the present one, outwards. */
export function stepsFrom(now: number, { own, most }: StudySizes, limits: Limits | undefined, side: -1 | 1): number[] {
  const [open, closed] = side < 0 ? [limits?.above, limits?.atLeast] : [limits?.below, limits?.atMost];
  const end = open === undefined ? closed : now + NEARLY * (open - now);
  const steps: number[] = [];
  const far = now + side * FARTHEST * most;
  const last = end === undefined || side * (end - far) > 0 ? far : end;
  let step = FIRST * own;
  for (let number = now + side * step; side * (last - number) > 0; number += side * step) {
    steps.push(number);
    step = Math.min(GROWTH * step, LARGEST * (Math.abs(number - now) < FARTHEST * own ? own : most));
  }
  if (last !== now) steps.push(last);
  return steps;
}

/** The limit that ends the steps on that side, where it may be reached. */
export const closedEnd = (limits: Limits | undefined, side: -1 | 1): number | undefined => (side < 0 ? limits?.atLeast : limits?.atMost);
