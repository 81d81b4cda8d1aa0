// What changed inputs do to the states and characteristics of the workbook that was sent: its plain formulas, worked out anew.
import { isState } from '../../core/check/check';
import { call } from '../../registry';
import { address, cellPosition } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy } from '../../sheet/headings';
import { type SourceCell, WorkbookValues } from '../../sheet/workbook-values';
import { COLUMN, HEAD_ROW } from '../pages/characteristics';
import { formOf, isOurs } from './forms';
import type { ChangedInput, Effect } from './returned-changes';
import { type ComparedWorkbook, type SeenGrid, gridOf } from './seen';

/** Of long numbers. */
const shown = (value: unknown): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(6)))
    : value === null || value === undefined || typeof value === 'object'
      ? 'no value'
      : cellText(String(value));

/** Cells that are looked at. */
function watched(grid: SeenGrid): (readonly [row: number, column: number, label: string])[] {
  const isMeasured = formOf(grid) === 'measured';
  return [...grid.sheet.cells].flatMap(([at, { value, formula }]) => {
    if (formula === undefined) return [];
    const { row, column } = cellPosition(at);
    if (isMeasured)
      return row >= HEAD_ROW && column === COLUMN.nominal ? [[row, column, String(grid.value(row, COLUMN.name) ?? '')] as const] : [];
    return isState(value) ? [[row, column, namedBy(headingsOf(grid, row, column), 'of') ?? ''] as const] : [];
  });
}

export function effectsOf(sent: ComparedWorkbook, inputs: readonly ChangedInput[]): Effect[] {
  const changed = new Map(inputs.map(input => [`${input.sheet}!${input.at}`, input.value]));
  const sheets = sent.sheets.map(sheet => {
    const cells = new Map<string, SourceCell>(sheet.cells);
    for (const [place, value] of changed) {
      const at = place.slice(place.lastIndexOf('!') + 1);
      if (place === `${sheet.name}!${at}`) cells.set(at, { value });
    }
    return { ...sheet, cells };
  });
  const after = new WorkbookValues({ ...sent, sheets }, call);
  return sent.sheets
    .map(gridOf)
    .filter(grid => formOf(grid) === 'measured' || !isOurs(grid))
    .flatMap(grid =>
      watched(grid).flatMap(([row, column, label]): Effect[] => {
        const at = address(row, column);
        const [before, now] = [shown(grid.value(row, column)), shown(after.value(grid.sheet.name, at))];
        return before === now || Number(before) === Number(now)
          ? []
          : [{ sheet: grid.sheet.name, at, label: cellText(label), before, after: now }];
      }),
    );
}
