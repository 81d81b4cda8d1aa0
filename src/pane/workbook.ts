// The workbook as the pane reads it through the port.
import { call } from '../registry';
import { address, cellPosition, type Area } from '../sheet/addresses';
import { WorkbookValues, type SourceCell, type SourceSheet } from '../sheet/workbook-values';
import type { Selection, SheetCell, SheetPort } from '../sheet/port';

export type Grid = readonly (readonly SheetCell[])[];

const isUsed = ({ value, formula }: SheetCell): boolean => value !== null || formula !== undefined;

export function sheetOf(name: string, grid: Grid): SourceSheet {
  const cells = grid.flatMap((row, r) => row.flatMap((cell, c): [string, SourceCell][] => (isUsed(cell) ? [[address(r, c), cell]] : [])));
  return { name, cells: new Map(cells) };
}

export const sourceOf = (grids: ReadonlyMap<string, Grid>): WorkbookValues =>
  new WorkbookValues({ name: '', sheets: [...grids].map(([name, grid]) => sheetOf(name, grid)) }, call);

/** Reads the sheets that there are of those asked for. */
export async function readSheets(port: SheetPort, names: readonly string[]): Promise<Map<string, Grid>> {
  const there = names.length === 0 ? [] : await port.sheetNames();
  const read = names.filter(name => there.includes(name)).map(async (name): Promise<[string, Grid]> => [name, await port.read(name)]);
  return new Map(await Promise.all(read));
}

export function holdsRow(area: Area | undefined, { sheetName, at }: Selection): boolean {
  const { row } = cellPosition(at);
  return area?.sheet === sheetName && row >= area.top && row <= area.bottom;
}

export function holdsCell(area: Area | undefined, place: Selection): boolean {
  const { column } = cellPosition(place.at);
  return area !== undefined && holdsRow(area, place) && column >= area.left && column <= area.right;
}

/** The last row without a gap from here on; the row above where the cell itself is blank. */
export function lastFilledRow(grid: Grid, from: number, column: number): number {
  let row = from;
  while ((grid[row]?.[column]?.value ?? null) !== null) row++;
  return row - 1;
}
