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
  const [across, down] = [heading(x, 'x'), heading(y, 'y')];
  if (across.name === down.name) throw wrongInput(`y is ${down.name}, and so is x; name two inputs`, 'y');
  const [xs, ys] = [valuesOf(xValues, 'x_values', across), valuesOf(yValues, 'y_values', down)];
  const asked = outputName(output, 'output');
  const variant = oneVariant(inputs, base);
  const [tops, sides] = [xs.map(raw => labelOf(variant, across.name, raw)), ys.map(raw => labelOf(variant, down.name, raw))];
  const answer = turned(variant, [down.name, across.name], [asked]);
  const named = ({ name }: Heading): string => withUnit(name, unitOf(name));
  return [
    [`${named(across)} \\ ${named(down)}`, ...tops],
    ...ys.map((yRaw, i) => [sides[i] ?? '–', ...xs.map(xRaw => answer([yRaw, xRaw])[0] ?? '–')]),
  ];
}

const countOf = (range: CellRange, argument: string): number => used(listOf(range, argument), isBlank);

/** As JOINT.MAP gives it: a result too large for cells is refused before anything is worked out. */
export function jointMapCells(...args: Required<Parameters<typeof jointMap>>): Cell[][] {
  refuseTooLarge((countOf(args[2], 'x_values') + 1) * (countOf(args[4], 'y_values') + 1));
  return jointMap(...args);
}
