// A cell of steps. Its fields are written one by one: spread together they take more room, and a copy has hundreds of thousands.
import type { Cell } from '../../core/kinds';
import type { PlanCell } from '../../sheet/plan';
import { stepDigits } from './digits';

export function stepCell(
  at: string,
  role: PlanCell['role'],
  formulas: Pick<PlanCell, 'formula' | 'rowForm'> | undefined,
  value: Cell | undefined,
): PlanCell {
  const { format } = stepDigits(value);
  if (formulas?.formula === undefined || value === undefined)
    return { at, role, format, ...formulas, ...(value === undefined ? {} : { value }) };
  const { formula, rowForm } = formulas;
  return rowForm === undefined ? { at, role, format, formula, value } : { at, role, format, formula, rowForm, value };
}
