// Variants side by side: their inputs, and what one JOINT.TABLE makes of them.
import type { Cell } from '../core/kinds';
import type { PlanCell, SheetPlan } from '../sheet/plan';
import { at, cell, table } from './sheet-rows';

export interface Variants<Name extends string> {
  readonly title: string;
  /** What every variant shares unless it says otherwise, in the order of the columns. */
  readonly common: Readonly<Record<Name, Cell>>;
  readonly list: readonly (readonly [label: string, changes: Partial<Record<Name, Cell>>])[];
  /** The reason stands last: it is long and runs on over the free columns. */
  readonly outputs: readonly string[];
}

export interface VariantTable<Name extends string> {
  readonly cells: PlanCell[];
  readonly stateRange: string;
  /** Cell with an input of a variant, both counted from 0. */
  input(name: Name, variant: number): string;
  /** Cell with a result of a variant. */
  output(name: string, variant: number): string;
  /** The first row that is free. */
  readonly next: number;
}

const HEADER = 5;
/** Blank rows below the variants are left out by the table, so that more can be typed in. */
const SPARE = 4;

export function variantTable<Name extends string>({ title, common, list, outputs }: Variants<Name>): VariantTable<Name> {
  const names = Object.keys(common);
  const last = HEADER + list.length + SPARE;
  const asked = last + 3;
  const result = asked + 1;
  const cells: PlanCell[] = [
    cell('A1', 'title', title),
    cell(
      'A2',
      'note',
      'One call computes every variant: =ENCL.JOINT.TABLE(inputs, outputs). Change a cell, or type another variant in ' +
        'the rows that are free.',
    ),
    cell(at(0, HEADER - 1), 'heading', 'Variants'),
    cell(at(0, HEADER), 'header', 'variant'),
    ...names.map((name, i) => cell(at(i + 1, HEADER), 'header', name)),
  ];
  list.forEach(([label, changes], v) => {
    const values = Object.values<Cell>({ ...common, ...changes });
    cells.push(cell(at(0, HEADER + 1 + v), 'label', label), ...values.map((value, i) => cell(at(i + 1, HEADER + 1 + v), 'input', value)));
  });
  for (let r = HEADER + 1 + list.length; r <= last; r++) names.forEach((_, i) => cells.push(cell(at(i + 1, r), 'input', '')));
  cells.push(cell(at(0, asked - 1), 'heading', 'Results'), cell(at(0, asked), 'label', 'results wanted (change a name to get another)'));
  outputs.forEach((name, i) => cells.push(cell(at(i + 1, asked), 'input', name)));
  cells.push(
    ...table(
      1,
      result,
      outputs.length,
      `=ENCL.JOINT.TABLE(${at(1, HEADER)}:${at(names.length, last)},${at(1, asked)}:${at(outputs.length, asked)})`,
      '0.00',
    ),
  );
  for (let v = 0; v < list.length + SPARE; v++) {
    const source = at(0, HEADER + 1 + v);
    cells.push(cell(at(0, result + 1 + v), 'label', `=IF(${source}="","",${source})`));
  }
  const next = result + list.length + SPARE + 1;
  return {
    cells,
    stateRange: `${at(1, result + 1)}:${at(1, next - 1)}`,
    input: (name, v) => at(names.indexOf(name) + 1, HEADER + 1 + v),
    output: (name, v) => at(outputs.indexOf(name) + 1, result + 1 + v),
    next,
  };
}

/** A sheet with the table alone. */
export function variantsSheetOf(
  { cells, stateRange }: Pick<VariantTable<string>, 'cells' | 'stateRange'>,
  widths: readonly number[],
): SheetPlan {
  return { name: 'Variants', widths, frozenRows: 1, cells, stateRanges: [stateRange] };
}
