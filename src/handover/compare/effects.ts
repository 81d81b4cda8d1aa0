// What an answer does to states, characteristics and all else that was worked out in the workbook that was sent: its formulas as they
// read now, worked out anew.
import { isState } from '../../core/check/check';
import { address, cellPosition } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy, type SeenSheet } from '../../sheet/headings';
import type { One, WorkbookValues } from '../../sheet/workbook-values';
import { CALCULATED } from '../pages/calculated';
import { COLUMN, HEAD_ROW } from '../pages/characteristics';
import { formOf, isCalculated, isOurs } from './forms';
import type { CellPlaces } from './places';
import type { Effect } from './returned-changes';
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
function watched(grid: SeenGrid, of: string): SeenResult[] {
  const text = (row: number, column: number): string => String(grid.value(row, column) ?? '');
  const [isMeasured, isListed] = [formOf(grid) === 'measured', isCalculated(grid)];
  return [...grid.sheet.cells].flatMap(([at, { value, formula }]): SeenResult[] => {
    if (formula === undefined) return [];
    const { row, column } = cellPosition(at);
    if (isMeasured) return row >= HEAD_ROW && column === COLUMN.nominal ? [{ row, column, label: text(row, COLUMN.name) }] : [];
    if (!isListed) return isState(value) ? [{ row, column, label: namedBy(headingsOf(grid, row, column), of) ?? '' }] : [];
    const [, sheet = '', place = ''] = /^(.*) ([A-Z]+\d+)$/.exec(text(row, CALCULATED.place)) ?? [];
    return place === '' || column !== CALCULATED.value ? [] : [{ row, column, label: text(row, CALCULATED.name), place: [sheet, place] }];
  });
}

/** What a reader looks for first: states, then sizes that are measured, then the rest. */
const rankOf = ({ before, after }: Effect, isMeasured: boolean): number => (isState(before) || isState(after) ? 0 : isMeasured ? 1 : 2);

/** Results of a sheet that came back, found by what they are called where rows that they read were put elsewhere. */
class ResultsNow {
  private readonly seen: SeenSheet;
  private readonly named = new Map<number, ReadonlyMap<string, number>>();

  constructor(
    private readonly grid: SeenGrid,
    private readonly after: WorkbookValues,
  ) {
    this.seen = {
      value: (row, column) => {
        const value = grid.isWorkedOut(row, column) ? this.at(row, column) : grid.value(row, column);
        return typeof value === 'object' || value === '' ? undefined : value;
      },
      isWorkedOut: grid.isWorkedOut,
    };
  }

  private at(row: number, column: number): One {
    return this.after.value(this.grid.sheet.name, address(row, column));
  }

  private called(row: number, column: number): string | undefined {
    return namedBy(headingsOf(this.seen, row, column), 'of');
  }

  of(row: number, column: number, name: string | undefined): One {
    if (name === undefined || this.called(row, column) === name) return this.at(row, column);
    const rows = this.named.get(column) ?? this.rowsIn(column);
    this.named.set(column, rows);
    return this.at(rows.get(name) ?? row, column);
  }

  private rowsIn(column: number): ReadonlyMap<string, number> {
    const rows = Array.from({ length: this.grid.rows }, (_, row) => row).filter(row => this.grid.isWorkedOut(row, column));
    return new Map(rows.flatMap(row => (name => (name === undefined ? [] : [[name, row] as const]))(this.called(row, column))));
  }
}

/** @param after what came back, worked out anew. */
export function effectsOf(sent: ComparedWorkbook, all: readonly CellPlaces[], after: WorkbookValues, of: string): Effect[] {
  const results = new Map<SeenGrid, ResultsNow>();
  const ofSheet = new Map(all.map(places => [places.sent.sheet.name, places]));
  const now = (sheet: string, row: number, column: number): One => {
    const places = ofSheet.get(sheet);
    const there = places?.there(row, column);
    if (places === undefined || there === undefined) return undefined;
    const here = results.get(there.grid) ?? new ResultsNow(there.grid, after);
    results.set(there.grid, here);
    return here.of(there.row, there.column, namedBy(headingsOf(places.sent, row, column), 'of'));
  };
  const ranked: { readonly effect: Effect; readonly rank: number }[] = [];
  const told = new Set<string>();
  const grids = sent.sheets.map(gridOf).filter(grid => formOf(grid) === 'measured' || isCalculated(grid) || !isOurs(grid));
  // the list names what its cells are on the sheets of the sender
  for (const grid of [...grids.filter(isCalculated), ...grids.filter(one => !isCalculated(one))])
    for (const { row, column, label, place } of watched(grid, of)) {
      const [sheet, at] = place ?? [grid.sheet.name, address(row, column)];
      const spot = cellPosition(at);
      const is = now(sheet, spot.row, spot.column);
      const [before, said] = [shown(grid.value(row, column)), shown(is)];
      if (is === undefined || before === said || Number(before) === Number(said) || told.has(`${sheet}!${at}`)) continue;
      told.add(`${sheet}!${at}`);
      const effect = { sheet, at, label: cellText(label), before, after: said };
      ranked.push({ effect, rank: rankOf(effect, formOf(grid) === 'measured') });
    }
  return ranked.sort((a, b) => a.rank - b.rank).map(({ effect }) => effect);
}
