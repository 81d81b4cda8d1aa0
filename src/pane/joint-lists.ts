// Lists of joint inputs that no call needs to read: names with values beside or below them.
import { inputNamed, isHeading } from '../joint/headings';
import { address, type Area } from '../sheet/addresses';
import type { WorkbookValues } from '../sheet/workbook-values';
import { jointInputsOf, type InputCell, type JointInputs } from './joint-inputs';
import { lastFilledRow, type Grid } from './workbook';

/** Fewer names may be about anything. */
const MIN_NAMES = 4;

/** The rectangle of a list that begins here: names downwards with values beside them, or names to the right with values below. */
function listFrom(grid: Grid, sheet: string, top: number, left: number): Area | undefined {
  const isName = (row: number, column: number): boolean => inputNamed(grid[row]?.[column]?.value) !== undefined;
  let bottom = top;
  while (isName(bottom + 1, left) && !isName(bottom + 1, left + 1)) bottom++;
  if (bottom - top + 1 >= MIN_NAMES) return { sheet, top, left, bottom, right: left + 1 };
  let right = left;
  while (isHeading(grid[top]?.[right + 1]?.value)) right++;
  const names = Array.from({ length: right - left + 1 }, (_, c) => left + c).filter(column => isName(top, column));
  const lastRow = lastFilledRow(grid, top + 1, left);
  return names.length >= MIN_NAMES && lastRow > top ? { sheet, top, left, bottom: lastRow, right } : undefined;
}

function cellsIn({ sheet, top, left, bottom, right }: Area, source: WorkbookValues): InputCell[][] {
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => {
      const at = address(top + r, left + c);
      return { value: source.value(sheet, at) ?? null, place: { sheetName: sheet, at } };
    }),
  );
}

export function jointListsOn(sheetName: string, grid: Grid, source: WorkbookValues): JointInputs[] {
  return grid.flatMap((line, row) =>
    line.flatMap(({ value }, column) => {
      if (typeof value !== 'string' || !/screw/i.test(value) || inputNamed(value) !== 'screw') return [];
      const area = listFrom(grid, sheetName, row, column);
      return area === undefined ? [] : [jointInputsOf(cellsIn(area, source), area)];
    }),
  );
}
