// One joint over two of its inputs.
import { refuseTooLarge, withUnit } from '../../core/call';
import type { Cell, CellRange } from '../../core/kinds';
import { isBlank } from '../../core/read/cells';
import { cut, wrongInput } from '../../core/refuse';
import { type Heading, heading, inUnit, listOf, outputName, used } from '../headings';
import { unitOf } from '../outputs';
import { turned } from '../rows';
import { labelCell, oneVariant } from '../table';
import type { Variant } from '../variant';

function valuesOf(range: CellRange, argument: string, head: Heading): readonly unknown[] {
  const list = listOf(range, argument);
  const values = list.slice(0, used(list, isBlank));
  if (values.length === 0) throw wrongInput(`${argument} has no values`, argument);
  const blank = values.findIndex(isBlank);
  if (blank >= 0) throw wrongInput(`${argument} is blank at ${blank + 1}; write a true zero with its unit`, argument);
  return values.map(raw => inUnit(raw, head));
}

/** A value beside the map: the number that was read, or what was typed. */
function labelOf(variant: Variant, name: string, raw: unknown): Cell {
  if (typeof raw === 'number') return raw;
  const value = variant.with(name, raw).outcome(name);
  if (typeof value === 'number') return value;
  return typeof raw === 'string' ? cut(raw) : labelCell(raw);
}

/** One input of the plane: its values as they were typed, and as they are shown. */
interface AskedAxis {
  readonly head: Heading;
  readonly raws: readonly unknown[];
  readonly labels: readonly Cell[];
}

export interface AskedMap {
  readonly variant: Variant;
  readonly across: AskedAxis;
  readonly down: AskedAxis;
}

/** The plane that is asked for. Throws Refused. */
export function askedMap(
  inputs: CellRange,
  x: unknown,
  xValues: CellRange,
  y: unknown,
  yValues: CellRange,
  base: CellRange | undefined,
): AskedMap {
  const [across, down] = [heading(x, 'x'), heading(y, 'y')];
  if (across.name === down.name) throw wrongInput(`y is ${down.name}, and so is x; name two inputs`, 'y');
  const [xs, ys] = [valuesOf(xValues, 'x_values', across), valuesOf(yValues, 'y_values', down)];
  const variant = oneVariant(inputs, base);
  const axis = (head: Heading, raws: readonly unknown[]): AskedAxis => ({
    head,
    raws,
    labels: raws.map(raw => labelOf(variant, head.name, raw)),
  });
  return { variant, across: axis(across, xs), down: axis(down, ys) };
}

/** What JOINT.MAP gives, of any size. */
export function jointMap(
  inputs: CellRange,
  x: unknown,
  xValues: CellRange,
  y: unknown,
  yValues: CellRange,
  output: unknown,
  base?: CellRange,
): Cell[][] {
  const asked = outputName(output, 'output');
  const { variant, across, down } = askedMap(inputs, x, xValues, y, yValues, base);
  const answer = turned(variant, [down.head.name, across.head.name], [asked]);
  const named = ({ head: { name } }: AskedAxis): string => withUnit(name, unitOf(name));
  return [
    [`${named(across)} \\ ${named(down)}`, ...across.labels],
    ...down.raws.map((yRaw, i) => [down.labels[i] ?? '–', ...across.raws.map(xRaw => answer([yRaw, xRaw])[0] ?? '–')]),
  ];
}

const countOf = (range: CellRange, argument: string): number => used(listOf(range, argument), isBlank);

/** As JOINT.MAP gives it: a result too large for cells is refused before anything is worked out. */
export function jointMapCells(...args: Required<Parameters<typeof jointMap>>): Cell[][] {
  refuseTooLarge((countOf(args[2], 'x_values') + 1) * (countOf(args[4], 'y_values') + 1));
  return jointMap(...args);
}
