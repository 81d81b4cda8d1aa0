// The inputs of one or several joints in cells: what names them, and where each value stands.
import type { CellRange } from '../core/kinds';
import { layoutOf } from '../joint/headings';
import type { Area } from '../sheet/addresses';
import type { Selection } from '../sheet/port';

export interface InputCell {
  readonly value: unknown;
  /** Undefined where the value stands in the formula itself. */
  readonly place: Selection | undefined;
}

export interface JointInputs {
  readonly names: readonly InputCell[];
  readonly variants: readonly (readonly InputCell[])[];
  /** The rectangle that is read, where it is one. */
  readonly area: Area | undefined;
  /** A row of names with a variant in each further row, names beside values, or names and values apart. */
  readonly form: 'below' | 'beside' | 'apart';
  /** What replaces the defaults, as the call is given it. */
  readonly base?: CellRange;
}

/** As the joint reads them, with the place of each cell. */
export function jointInputsOf(rows: readonly (readonly InputCell[])[], area: Area | undefined): JointInputs {
  const layout = layoutOf(rows.map(row => row.map(({ value }) => value)));
  if (layout.form === 'beside') {
    const pairs = layout.rows.flatMap((row): (readonly [InputCell, InputCell])[] => {
      const [name, value] = rows[row] ?? [];
      return name === undefined || value === undefined ? [] : [[name, value]];
    });
    return { names: pairs.map(([name]) => name), variants: [pairs.map(([, value]) => value)], area, form: 'beside' };
  }
  const { width, height } = layout;
  return {
    names: rows[0]?.slice(0, width) ?? [],
    variants: rows.slice(1, height).map(row => row.slice(0, width)),
    area: area && { ...area, bottom: area.top + height - 1 },
    form: 'below',
  };
}
