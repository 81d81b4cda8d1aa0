// A value of another sheet, shown.
import { address } from '../../sheet/addresses';
import type { PlanCell } from '../../sheet/plan';
import type { TableCell } from '../compile/joint/joint-cells';

export const liveCell = (
  row: number,
  column: number,
  { formula, value }: Pick<TableCell, 'formula' | 'value'>,
  format?: string,
): PlanCell => ({
  at: address(row, column),
  role: 'result',
  ...(formula === undefined ? {} : { formula: `=${formula}` }),
  value,
  ...(typeof value === 'number' && format !== undefined ? { format } : {}),
});
