// Variants where they were written down: the cell of each value, and what a table shows of it.
import { withUnit } from '../../../core/call';
import type { Cell } from '../../../core/kinds';
import { outputCell } from '../../../joint/rows';
import { isVerdict, unitOf } from '../../../joint/outputs';
import { boundsOf } from '../../../joint/graph';
import { type Variant } from '../../../joint/variant';
import { RULES } from '../../../joint/rules';
import { columnName, sheetPrefix } from '../../../sheet/addresses';
import { inRow, ROW } from '../../../sheet/row-forms';
import { quoted } from '../inputs';
import type { Limit, TableCell } from './joint-cells';

/** Rows of the sheet: the titles, and the first variant. */
export const HEAD = 3;
export const FIRST = 5;

/** What stands where there is no value any more. */
export const NO_VALUE = quoted('no value');

/** What was asked of which variants, and where they were written down. */
export interface WrittenVariants {
  readonly sheet: string;
  readonly variants: readonly Variant[];
  readonly heads: ReadonlyMap<string, number>;
  /** By row and column. */
  readonly values: readonly (readonly (Cell | undefined)[])[];
  /** Rows with inputs that are not followed. */
  readonly holding: readonly boolean[];
  /** Variants without formulas, each with the cell that says whether its inputs are as they were sent. */
  readonly fixedRows: ReadonlyMap<number, string>;
}

/** A cell of a row as other sheets name it. */
export const fixedIn = (sheet: string, cell: string, row: number): string =>
  `${sheetPrefix(sheet)}${inRow(cell.replace(ROW, `$${ROW}`), row)}`;

/** An output in row r of the table; row 0 is its header. `otherwise` stands where there is no value any more. */
export function tableCell(written: WrittenVariants, r: number, name: string, otherwise: string): TableCell {
  return r === 0 ? { name, value: withUnit(name, unitOf(name)), unit: '' } : named(written, r - 1, name, otherwise);
}

/** A value of variant v. */
export function named({ sheet, variants, heads, values, holding }: WrittenVariants, v: number, name: string, otherwise: string): TableCell {
  const unit = unitOf(name);
  const cellOf = (title: string): string => `${sheetPrefix(sheet)}$${columnName(heads.get(title) ?? 0)}$${FIRST + v + 1}`;
  const valueOf = (title: string): Cell | undefined => values[v]?.[heads.get(title) ?? 0];
  if (isVerdict(name)) {
    const title = name === 'reason' ? 'rule' : name;
    return { name, formula: cellOf(title), value: valueOf(title) ?? '', unit };
  }
  const value = outputCell(variants[v] as Variant, name);
  const title = withUnit(name, unit);
  if (valueOf(title) === undefined) return { name, value, unit };
  const kind = { number: 'ISNUMBER', string: 'ISTEXT' }[typeof value as string];
  const isThere = kind === undefined ? [] : [`${kind}(${cellOf(title)})`];
  const conditions = [...(holding[v] === true ? [cellOf('fixed inputs as sent')] : []), ...isThere];
  const formula = conditions.length === 0 ? cellOf(title) : `IF(AND(${conditions.join(',')}),${cellOf(title)},${otherwise})`;
  return { name, formula, value, unit, ...limitsOf(name, of => limitAt(cellOf(of), valueOf(of))) };
}

const limitAt = (formula: string, value: Cell | undefined): Limit | undefined => (value === undefined ? undefined : { formula, value });

/** What the first rule that judges this output asks of it. */
function limitsOf(output: string, cellOf: (title: string) => Limit | undefined): { readonly lower?: Limit; readonly upper?: Limit } {
  const [bound] = RULES.filter(({ value, when }) => value === output && when === undefined).flatMap(({ fail, review }) =>
    boundsOf(fail ?? review),
  );
  const limit =
    bound === undefined
      ? undefined
      : typeof bound.limit === 'number'
        ? { formula: String(bound.limit), value: bound.limit }
        : cellOf(withUnit(bound.limit, unitOf(bound.limit)));
  if (bound === undefined || limit === undefined) return {};
  return bound.side === 'below' || bound.side === 'at most' ? { lower: limit } : { upper: limit };
}
