// A sheet for comparison: its cells by row and column, with remarks and colours where the file was read for them.
import type { SeenSheet } from '../../sheet/headings';
import { address, cellPosition } from '../../sheet/addresses';
import type { SourceCell, SourceSheet, SourceWorkbook } from '../../sheet/workbook-values';

/** What people put on cells besides values. */
export interface Remarks {
  /** By address. */
  readonly comments: ReadonlyMap<string, string>;
  /** Grounds that are not white: `FFE699`, or `?` where the file names a colour in another way. */
  readonly fills: ReadonlyMap<string, string>;
  /** What a cell without a ground of its own has from its row or column. */
  readonly beneath: (at: string) => string;
}

export interface SeenCell extends SourceCell {
  /** How its number reads in its format: `2026-03-05`, `0.6 %`. */
  readonly said?: string;
  /** Its number stands for a day, a month or a time. */
  readonly isDate?: boolean;
}

export interface ComparedSheet extends SourceSheet, Partial<Remarks> {
  readonly cells: ReadonlyMap<string, SeenCell>;
}

export interface ComparedWorkbook extends SourceWorkbook {
  readonly sheets: readonly ComparedSheet[];
}

export const NOTHING: SeenCell = { value: null };
export const isBlank = ({ value, formula }: SourceCell): boolean => formula === undefined && (value === null || value === '');

export interface SeenGrid extends SeenSheet {
  readonly sheet: ComparedSheet;
  readonly rows: number;
  readonly columns: number;
  cell(row: number, column: number): SeenCell;
  /** Columns of the filled cells of a row. */
  filled(row: number): readonly number[];
}

export function gridOf(sheet: ComparedSheet): SeenGrid {
  const filled = new Map<number, number[]>();
  let [rows, columns] = [0, 0];
  for (const [at, cell] of sheet.cells) {
    if (isBlank(cell)) continue;
    const { row, column } = cellPosition(at);
    const here = filled.get(row);
    if (here === undefined) filled.set(row, [column]);
    else here.push(column);
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  }
  for (const here of filled.values()) here.sort((a, b) => a - b);
  const cell = (row: number, column: number): SeenCell => sheet.cells.get(address(row, column)) ?? NOTHING;
  return {
    sheet,
    rows,
    columns,
    cell,
    filled: row => filled.get(row) ?? [],
    value: (row, column) => {
      const { value } = cell(row, column);
      return value === null || value === '' ? undefined : value;
    },
    isWorkedOut: (row, column) => cell(row, column).formula !== undefined,
  };
}
