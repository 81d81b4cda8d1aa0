// The sizes of a variant that can be measured on a part, with limits where the joint has a tolerance for them.
import { withUnit } from '../../../core/call';
import type { Deviation } from '../../../core/read/deviation';
import { Refused } from '../../../core/refuse';
import { unitOf } from '../../../joint/outputs';
import type { Variant } from '../../../joint/variant';
import type { Ref } from '../../../plain/spreadsheet';
import { SIZES_OF_JOINT, type Measuring } from '../measuring';
import type { Limit } from './joint-cells';
import type { JointRow } from './joint-row';
import type { WriteCell } from './row-print';
import { textOf } from './row-refs';

/** A size with its limits in the row of the variant. */
export interface RowSize extends Measuring {
  readonly name: string;
  readonly lower?: Limit;
  readonly upper?: Limit;
  readonly toleranceMm?: number;
}

const partsOf = (row: JointRow, tolerance: string): Readonly<Record<string, Ref>> | undefined => {
  try {
    const ref = row.ref(tolerance);
    return 'parts' in ref ? ref.parts : undefined;
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
};

/** @param fixed a cell of the row as another sheet names it. */
export function measuredSizes(row: JointRow, variant: Variant, fixed: (cell: string) => string, put: WriteCell): RowSize[] {
  return Object.entries(SIZES_OF_JOINT).flatMap(([name, measuring]): RowSize[] => {
    const value = variant.outcome(name);
    const cell = row.cellOf(name);
    if (typeof value !== 'number' || Math.abs(value) < 0.005 || cell === undefined) return [];
    const { tolerance } = measuring;
    const deviation = tolerance === undefined ? undefined : (variant.outcome(tolerance) as Deviation | Refused);
    const parts = tolerance === undefined || deviation instanceof Refused ? undefined : partsOf(row, tolerance);
    if (deviation === undefined || deviation instanceof Refused || parts === undefined) return [{ name, ...measuring }];
    const limit = (which: string, key: 'upperMm' | 'lowerMm'): Limit => {
      const at = put(
        withUnit(`${name}, ${which}`, unitOf(name)),
        'size and its tolerance',
        `${cell}+(${textOf(parts[key])})`,
        () => value + deviation[key],
      );
      return { formula: fixed(at), value: value + deviation[key] };
    };
    return [
      {
        name,
        ...measuring,
        lower: limit('lower limit', 'lowerMm'),
        upper: limit('upper limit', 'upperMm'),
        toleranceMm: (deviation.upperMm - deviation.lowerMm) / 2,
      },
    ];
  });
}
