// What changed inputs do to states, characteristics and all else that was worked out in the workbook that was sent: its plain
// formulas, worked out anew.
import { isState } from '../../core/check/check';
import { call } from '../../registry';
import { address, cellPosition } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy } from '../../sheet/headings';
import { type SourceCell, WorkbookValues } from '../../sheet/workbook-values';
import { CALCULATED } from '../pages/calculated';
import { COLUMN, HEAD_ROW } from '../pages/characteristics';
import { formOf, isCalculated, isOurs } from './forms';
import type { ChangedInput, Effect } from './returned-changes';
import { type ComparedWorkbook, type SeenGrid, gridOf } from './seen';

/** Of long numbers. */
const shown = (value: unknown): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(6)))
    : value === null || value === undefined || typeof value === 'object'
      ? 'no value'
      : cellText(String(value));

interface SeenResult {
  readonly row: number;
  readonly column: number;
  readonly label: string;
  /** Where it stands for the sender, where that is elsewhere. */
  readonly place?: readonly [sheet: string, at: string];
}

/** Cells that are looked at: what is measured, every state, and all else that the functions gave. */
function watched(grid: SeenGrid): SeenResult[] {
  const text = (row: number, column: number): string => String(grid.value(row, column) ?? '');
  const [isMeasured, isListed] = [formOf(grid) === 'measured', isCalculated(grid)];
  return [...grid.sheet.cells].flatMap(([at, { value, formula }]): SeenResult[] => {
    if (formula === undefined) return [];
    const { row, column } = cellPosition(at);
    if (isMeasured) return row >= HEAD_ROW && column === COLUMN.nominal ? [{ row, column, label: text(row, COLUMN.name) }] : [];
    if (!isListed) return isState(value) ? [{ row, column, label: namedBy(headingsOf(grid, row, column), 'of') ?? '' }] : [];
    const [, sheet = '', place = ''] = /^(.*) ([A-Z]+\d+)$/.exec(text(row, CALCULATED.place)) ?? [];
    return place === '' || column !== CALCULATED.value ? [] : [{ row, column, label: text(row, CALCULATED.name), place: [sheet, place] }];
  });
}

/** What a reader looks for first: states, then sizes that are measured, then the rest. */
const rankOf = ({ before, after }: Effect, isMeasured: boolean): number => (isState(before) || isState(after) ? 0 : isMeasured ? 1 : 2);

export function effectsOf(sent: ComparedWorkbook, inputs: readonly ChangedInput[]): Effect[] {
  const changed = new Map(inputs.map(({ sheet, at, value, means }) => [`${sheet}!${at}`, means ?? value]));
  const sheets = sent.sheets.map(sheet => {
    const cells = new Map<string, SourceCell>(sheet.cells);
    for (const [place, value] of changed) {
      const at = place.slice(place.lastIndexOf('!') + 1);
      if (place === `${sheet.name}!${at}`) cells.set(at, { value });
    }
    return { ...sheet, cells };
  });
  const after = new WorkbookValues({ ...sent, sheets }, call);
  const ranked: { readonly effect: Effect; readonly rank: number }[] = [];
  const told = new Set<string>();
  const grids = sent.sheets.map(gridOf).filter(grid => formOf(grid) === 'measured' || isCalculated(grid) || !isOurs(grid));
  // the list names what its cells are on the sheets of the sender
  for (const grid of [...grids.filter(isCalculated), ...grids.filter(one => !isCalculated(one))])
    for (const { row, column, label, place } of watched(grid)) {
      const at = address(row, column);
      const [sheet, there] = place ?? [grid.sheet.name, at];
      const [before, now] = [shown(grid.value(row, column)), shown(after.value(grid.sheet.name, at))];
      if (before === now || Number(before) === Number(now) || told.has(`${sheet}!${there}`)) continue;
      told.add(`${sheet}!${there}`);
      const effect = { sheet, at: there, label: cellText(label), before, after: now };
      ranked.push({ effect, rank: rankOf(effect, formOf(grid) === 'measured') });
    }
  return ranked.sort((a, b) => a.rank - b.rank).map(({ effect }) => effect);
}
