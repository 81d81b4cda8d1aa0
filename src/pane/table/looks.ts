// How the columns of a table look, by what stands above them: numbers rounded by their format, states coloured, reasons wrapped.
import { isOutput, unitOf } from '../../joint/outputs';
import { inputNamed } from '../../joint/headings';
import { address, type Area, cellPosition, type Rectangle } from '../../sheet/addresses';
import type { Dress, DropDown } from '../../sheet/dress';
import type { Selection } from '../../sheet/port';
import type { Grid } from '../workbook';

const SENTENCES = ['reason', 'reasons', 'remedy'];
const WORDS = ['weakest', 'margin rule', 'all computed'];
const COUNTS = ['fails', 'reviews'];
/** By the unit above the column; a share or a ratio has none. */
const FORMATS: Readonly<Record<string, string>> = { N: '0', MPa: '0.0', '°': '0.0' };

export type Looks = Pick<Dress, 'formats' | 'stateRanges' | 'wrapped'>;

/** The name without its unit. */
export const named = (heading: unknown): string =>
  String(heading ?? '')
    .replace(/\s*\([^()]*\)\s*$/, '')
    .trim();

const columnText = ({ top, bottom }: Rectangle, column: number): string => `${address(top + 1, column)}:${address(bottom, column)}`;

/** @param area the table with the row of its headings. */
export function looksOf(headings: readonly unknown[], area: Rectangle): Looks {
  const columns = headings.map((heading, c) => ({ name: named(heading), range: columnText(area, area.left + c) }));
  const ranges = (isWanted: (name: string) => boolean) => columns.filter(({ name }) => isWanted(name)).map(({ range }) => range);
  return {
    formats: columns.flatMap(({ name, range }) => {
      if (!isOutput(name) || [...SENTENCES, ...WORDS, 'state'].includes(name)) return [];
      return [{ range, format: COUNTS.includes(name) ? '0' : (FORMATS[unitOf(name)] ?? '0.00') }];
    }),
    stateRanges: ranges(name => name === 'state'),
    wrapped: ranges(name => SENTENCES.includes(name)),
  };
}

const isFilled = (grid: Grid, row: number, column: number): boolean => (grid[row]?.[column]?.value ?? null) !== null;

/** The table round a cell: upwards to its headings, and as far as these and the rows below go without a gap. */
export function tableRound(grid: Grid, { sheetName, at }: Selection): Area | undefined {
  const { row, column } = cellPosition(at);
  if (!isFilled(grid, row, column)) return undefined;
  let [top, left, right, bottom] = [row, column, column, row];
  while (top > 0 && isFilled(grid, top - 1, column)) top--;
  while (left > 0 && isFilled(grid, top, left - 1)) left--;
  while (isFilled(grid, top, right + 1)) right++;
  while (grid[bottom + 1]?.slice(left, right + 1).some(({ value }) => value !== null) === true) bottom++;
  return bottom === top ? undefined : { sheet: sheetName, top, left, bottom, right };
}

/** The looks of a table that is there; drop-downs where inputs are typed, and none where formulas stand. */
export function dressOf(grid: Grid, area: Area, choices: (name: string, range: string) => DropDown[]): Dress {
  const headings = Array.from({ length: area.right - area.left + 1 }, (_, c) => grid[area.top]?.[area.left + c]?.value ?? '');
  const isTyped = (column: number): boolean => grid.slice(area.top + 1, area.bottom + 1).every(line => line[column]?.formula === undefined);
  const isResults = headings.some(heading => named(heading) === 'state');
  return {
    sheetName: area.sheet,
    cells: [],
    ...looksOf(headings, area),
    dropDowns: isResults
      ? []
      : headings.flatMap((heading, c) => {
          const name = inputNamed(heading);
          const column = area.left + c;
          return name === undefined || !isTyped(column) ? [] : choices(name, columnText(area, column));
        }),
  };
}
