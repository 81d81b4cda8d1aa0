// What moves one output: its slope by each input, and what the tolerance of each makes of it.
import type { Cell, CellRange } from '../../core/kinds';
import type { Deviation } from '../../core/read/deviation';
import { Refused, wrongInput } from '../../core/refuse';
import { INPUTS } from '../inputs';
import { isVerdict, type Output } from '../outputs';
import { slotOf } from '../slots';
import { oneVariant } from '../table';
import type { Variant } from '../variant';
import { type Movable, movable, sizesOf } from './moved';
import { CIRCLE_OVER_WALL, numberWhen, numericOutput } from './numbers';

/** Of the size of the input. */
const STEP = 2 ** -15;
/** Slopes to both sides that differ by more are those of a corner. */
const CORNER = 1e-3;
/** A first step that differs by more from the second one is a jump. */
const JUMP = 0.5;

/** The tolerance of an input that has not one of its own name. */
const TOLERANCE: Readonly<Record<string, string>> = {
  length: 'length deviation',
  'insert length': 'insert tolerance',
  'insert below face': 'insert tolerance',
  'insert hole': 'pilot tolerance',
};

/** What limits an input to both sides, where something does. */
export function toleranceOf(variant: Variant, name: string): Deviation | undefined {
  const tolerance = TOLERANCE[name] ?? `${name} tolerance`;
  if (TOLERANCE[name] === undefined && !INPUTS.has(tolerance)) return undefined;
  const value = variant.outcome(tolerance);
  return typeof value === 'object' && value !== null && 'upperMm' in value ? (value as Deviation) : undefined;
}

/** To one side of here, from values at one and two steps; where the output jumps at once, the slope beyond. */
function slopeAhead(here: number, one: number | undefined, two: number | undefined): number | undefined {
  if (one === undefined || two === undefined) return undefined;
  const [first, second] = [one - here, two - one];
  return Math.abs(first - second) > JUMP * Math.abs(second) ? second : (3 * first - second) / 2;
}

/** Of values at equal steps; at a corner the steeper of its two slopes, at an end of the values that of the one side. */
function slopeOf(at: (steps: number) => number | undefined, step: number): number | undefined {
  const [here, up, farUp, down, farDown] = [at(0), at(1), at(2), at(-1), at(-2)];
  if (here === undefined) return undefined;
  const ahead = slopeAhead(here, up, farUp);
  const back = slopeAhead(here, down, farDown);
  const behind = back === undefined ? undefined : -back;
  const isSmooth = ahead !== undefined && behind !== undefined && Math.abs(ahead - behind) <= CORNER * Math.abs(ahead);
  if (!isSmooth) return ((Math.abs(ahead ?? 0) >= Math.abs(behind ?? 0) ? ahead : behind) ?? NaN) / step;
  const [near, far] = [((up as number) - (down as number)) / 2, ((farUp as number) - (farDown as number)) / 4];
  return (4 * near - far) / (3 * step);
}

interface Slope {
  readonly moving: Movable;
  readonly slope: number;
  readonly halfWidth: number | undefined;
  readonly change: number;
}

function slopeBy(joint: Variant, name: string, numeric: typeof CIRCLE_OVER_WALL): Slope | undefined {
  if (!numeric.plan.has(slotOf(name))) return undefined;
  const variant = joint.copy();
  const moving = movable(variant, name);
  if (moving === undefined) return undefined;
  const { now, limits } = moving;
  const tolerance = toleranceOf(variant, name);
  const step = STEP * sizesOf(variant, moving).own;
  const value = numberWhen(variant, moving, numeric);
  const isInside = (number: number): boolean =>
    number > (limits?.above ?? -Infinity) &&
    number >= (limits?.atLeast ?? -Infinity) &&
    number < (limits?.below ?? Infinity) &&
    number <= (limits?.atMost ?? Infinity);
  const slope = slopeOf(steps => (isInside(now + steps * step) ? value(now + steps * step) : undefined), step);
  if (slope === undefined || slope === 0 || Number.isNaN(slope)) return undefined;
  const halfWidth = tolerance && (tolerance.upperMm - tolerance.lowerMm) / 2;
  return { moving, slope, halfWidth, change: Math.abs(slope) * (halfWidth ?? 0) };
}

function whyNot(variant: Variant, output: Output): string {
  const outcome = isVerdict(output) ? undefined : variant.outcome(output);
  return outcome instanceof Refused ? `: ${outcome.message}` : '';
}

export function sensitivityRows(variant: Variant, output: unknown): Cell[][] {
  const { output: name, numeric } = numericOutput(output);
  variant.run(numeric.plan);
  if (numeric.of(variant) === undefined) throw wrongInput(`output: ${name} has no value${whyNot(variant, name)}`, 'output');
  const judged = name === 'sink ratio' ? CIRCLE_OVER_WALL : numeric;
  const slopes = [...INPUTS.keys()].flatMap(input => slopeBy(variant, input, judged) ?? []);
  const variance = slopes.reduce((sum, { change }) => sum + change ** 2, 0);
  return slopes
    .sort((a, b) => b.change - a.change || Math.abs(b.slope) - Math.abs(a.slope))
    .map(({ moving: { name: input, unit, now }, slope, halfWidth, change }) => [
      input,
      unit === '' ? '–' : unit,
      now,
      halfWidth ?? '–',
      slope,
      halfWidth === undefined ? '–' : change,
      halfWidth === undefined || variance === 0 ? '–' : change ** 2 / variance,
    ]);
}

/** What JOINT.SENSITIVITY gives below its header. */
export const jointSensitivity = (inputs: CellRange, output: unknown, base: CellRange | undefined): Cell[][] =>
  sensitivityRows(oneVariant(inputs, base), output);
