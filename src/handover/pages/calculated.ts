// Calculated values, on the screen: what follows the sheets and cannot be measured on a part, or was not chosen to be.
import { isState } from '../../core/check/check';
import { address, cellPosition, fixedCell } from '../../sheet/addresses';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { withStates } from '../../sheet/ranges';
import type { LiveResult } from '../compile/conversion';
import { digitsOf } from '../compile/digits';
import type { PageWords } from '../words/words';

const WIDTHS = [60, 22, 16, 10];
/** Rows of headings, and the columns of the list. */
export const CALCULATED = { headRow: 3, name: 0, place: 1, value: 2 } as const;
const HEAD_ROW = CALCULATED.headRow;
export const MOST_CALCULATED = 400;

export interface NamedResult {
  readonly name: string;
  readonly result: LiveResult;
}

export function calculatedSheet(name: string, results: readonly NamedResult[], left: number, { calculated }: PageWords): SheetPlan {
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: calculated.title },
    { at: 'A2', role: 'note', value: left === 0 ? calculated.note : `${calculated.note} ${calculated.left(left)}` },
    ...calculated.headers.map((value, c): PlanCell => ({ at: address(HEAD_ROW - 1, c), role: 'header', value })),
    ...results.flatMap(({ name: label, result }, i): PlanCell[] => {
      const { row, column } = cellPosition(result.at);
      const at = (c: number): string => address(HEAD_ROW + i, c);
      return [
        {
          at: at(CALCULATED.name),
          role: 'label',
          value: isState(result.value) && !/\bstate\b/.test(label) ? `${label}: ${calculated.state}` : label,
        },
        { at: at(CALCULATED.place), role: 'note', value: `${result.sheet} ${result.at}` },
        {
          at: at(CALCULATED.value),
          role: 'result',
          formula: `=${fixedCell(result.sheet, row, column)}`,
          value: result.value,
          ...digitsOf(result.value),
        },
        { at: at(3), role: 'unit', value: result.unit },
      ];
    }),
  ];
  return withStates({ name, widths: WIDTHS, frozenRows: HEAD_ROW, cells });
}
