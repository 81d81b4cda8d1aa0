// The value of one input at which an output has its target.
import { rounded } from '../../core/decimal';
import type { CellRange } from '../../core/kinds';
import { wrongInput } from '../../core/refuse';
import { inputName } from '../headings';
import { unitOf } from '../outputs';
import { oneVariant } from '../table';
import { withUnit } from '../words';
import type { Variant } from '../variant';
import { movable, sizesOf } from './moved';
import { numberWhen, numericOutput } from './numbers';
import { stepsFrom } from './steps';

/** What is nearer to the target than this, of it or of 1, has it; across a jump there is no such value. */
const MET = 1e-9;

/** Between two numbers with the target between their outputs; undefined where the output jumps over it. */
function rootBetween(excess: (number: number) => number | undefined, from: number, to: number, near: number): number | undefined {
  let [a, b] = [from, to];
  let [atA, atB] = [excess(a), excess(b)];
  for (;;) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) break;
    const there = excess(middle);
    if (there === undefined) return undefined;
    if (there === 0) return middle;
    if (there > 0 === (atA as number) > 0) [a, atA] = [middle, there];
    else [b, atB] = [middle, there];
  }
  const [best, left] = Math.abs(atA as number) <= Math.abs(atB as number) ? [a, atA] : [b, atB];
  return Math.abs(left as number) <= near ? best : undefined;
}

export function solved(variant: Variant, name: string, output: unknown, target: number): number {
  const moving = movable(variant, name);
  if (moving === undefined) throw wrongInput(`name: ${name} has no number in this joint that can be moved`, 'name');
  const { output: asked, numeric } = numericOutput(output);
  const value = numberWhen(variant, moving, numeric);
  const { now, limits, unit } = moving;
  const reached: number[] = [];
  const excess = (number: number): number | undefined => {
    const there = value(number);
    if (there === undefined) return undefined;
    reached.push(there);
    return there - target;
  };
  const near = MET * Math.max(1, Math.abs(target));
  const here = excess(now);
  if (here !== undefined && Math.abs(here) <= 1e-3 * near) return now;
  const sizes = sizesOf(variant, moving);
  const [first] = ([-1, 1] as const)
    .flatMap(side => firstRoot(excess, [now, ...stepsFrom(now, sizes, limits, side)], near) ?? [])
    .sort((a, b) => Math.abs(a - now) - Math.abs(b - now));
  if (first !== undefined) return first;
  const reach =
    reached.length === 0
      ? 'it has no value there'
      : `it reaches ${rounded(Math.min(...reached), 6)} to ${withUnit(Math.max(...reached), unitOf(asked), 6)}`;
  const whole = [-1, 1].map(side => stepsFrom(now, sizes, limits, side as -1 | 1).pop() ?? now) as [number, number];
  throw wrongInput(
    `target is ${rounded(target, 6)}: ${asked} does not reach it with ${name} from ${rounded(whole[0])} to ` +
      `${withUnit(whole[1], unit)}; ${reach}`,
    'target',
  );
}

function firstRoot(excess: (number: number) => number | undefined, numbers: readonly number[], near: number): number | undefined {
  let before: number | undefined;
  for (let i = 0; i < numbers.length; i++) {
    const there = excess(numbers[i] as number);
    if (there === 0) return numbers[i];
    if (before !== undefined && there !== undefined && before > 0 !== there > 0) {
      const root = rootBetween(excess, numbers[i - 1] as number, numbers[i] as number, near);
      if (root !== undefined) return root;
    }
    before = there;
  }
  return undefined;
}

/** What JOINT.SOLVE gives. Throws Refused. */
export const jointSolve = (inputs: CellRange, name: unknown, output: unknown, target: number, base: CellRange | undefined): number =>
  solved(oneVariant(inputs, base), inputName(name, 'name'), output, target);
