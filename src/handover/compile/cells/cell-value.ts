// A value that goes along without its formula.
import type { Cell } from '../../../core/kinds';
import { cellText } from '../../../sheet/cell-text';
import type { PlanCell } from '../../../sheet/plan';
import { isFault, isRows, type Known } from '../../../sheet/workbook-values';
import type { Conversion } from '../conversion';

export const cellOf = (known: Known): Cell | undefined => {
  const value = isRows(known) ? known[0]?.[0] : known;
  return value === undefined || value === null
    ? undefined
    : isFault(value)
      ? value.cellError
      : typeof value === 'string'
        ? cellText(value)
        : value;
};

/** A formula as it was typed, without the name of the add-in: nothing in the file should look as if it were needed. */
export const typed = (formula: string): string => cellText(formula.replace(/ENCL\./gi, ''));

export const valued = (value: Cell | undefined): { readonly value?: Cell } => (value === undefined ? {} : { value });

/** A cell that was a formula and is not any more, with the words of it. */
export const fixedCell = ({ said }: Conversion, cell: PlanCell, formula: string): PlanCell => ({
  ...cell,
  isFixed: true,
  note: said.wasFormula(typed(formula)),
});

export function asValue(
  conversion: Conversion,
  sheet: string,
  at: string,
  formula: string,
  value: Cell | undefined,
  why: string,
): PlanCell {
  conversion.findings.push(
    value === undefined
      ? { sheet, at, what: 'error', words: `${why}; ${conversion.said.valueNotKnown}`, values: 1 }
      : { sheet, at, what: 'value, not live', words: why, values: 1 },
  );
  return fixedCell(conversion, { at, role: 'result', value: value ?? '' }, formula);
}
