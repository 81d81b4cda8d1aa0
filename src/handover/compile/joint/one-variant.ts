// The one variant that a check is asked for: its names over its values, or beside them.
import { type Header, headerOf, layoutOf } from '../../../joint/headings';
import { variantsOf } from '../../../joint/table';
import type { Variant } from '../../../joint/variant';
import type { Area } from '../../../sheet/addresses';
import type { KnownRows } from '../../../sheet/known';
import type { VariantCells } from './variant-cells';

/** Bare numbers under such a heading are no numbers of the joint. */
export const isInUnits = ({ headings }: Header): boolean => headings.some(({ unit }) => unit !== undefined);

/** Undefined where it is not one, or has units in its headings. Throws Refused. */
export function oneVariant(
  { sheet, top, left }: Area,
  rows: KnownRows,
  label: string,
): { readonly variant: Variant; readonly cells: VariantCells } | undefined {
  const layout = layoutOf(rows);
  const header = headerOf(layout.form === 'beside' ? layout.rows.map(row => rows[row]?.[0]) : (rows[0] ?? []));
  const [variant, ...others] = variantsOf(rows);
  if (variant === undefined || others.length > 0 || isInUnits(header)) return undefined;
  const names = header.headings.map(({ name }) => name);
  const cells: VariantCells = {
    names,
    label,
    at: i => {
      const place = header.columns[i] ?? 0;
      return layout.form === 'beside'
        ? { sheet, row: top + (layout.rows[place] ?? 0), column: left + 1 }
        : { sheet, row: top + 1, column: left + place };
    },
  };
  return { variant, cells };
}
