// The workbook as the pane reads it through the port: whole sheets, or the parts of sheets that were read so far.
import { call } from '../registry';
import { type Area, cellPosition, columnName, common, type Rectangle, round } from '../sheet/addresses';
import { type One, WorkbookValues, type SourceCell, type SourceSheet } from '../sheet/workbook-values';
import type { Around, Selection, SheetCell, SheetPart, SheetPort } from '../sheet/port';

/** Rows and columns count from the sheet's first; where nothing was read there are gaps. */
export type Grid = readonly (readonly SheetCell[])[];

const isUsed = ({ value, formula }: SheetCell): boolean => value !== null || formula !== undefined;

function sheetOf(name: string, grid: Grid): SourceSheet {
  const columns: string[] = [];
  const cells = new Map<string, SourceCell>();
  grid.forEach((row, r) =>
    row.forEach((cell, c) => {
      if (isUsed(cell)) cells.set(`${(columns[c] ??= columnName(c))}${r + 1}`, cell);
    }),
  );
  return { name, cells };
}

/** What was read of a sheet. */
export class KnownSheet {
  readonly grid: SheetCell[][] = [];

  /** @param used what it fills, where that is known. */
  constructor(
    private filled: Rectangle | null | undefined,
    readonly parts: SheetPart[],
  ) {
    for (const part of parts) this.place(part);
  }

  get used(): Rectangle | null | undefined {
    return this.filled;
  }

  /** What was blank is filled now, out of sight of what was read. */
  reach(area: Rectangle): void {
    if (this.filled !== undefined) this.filled = this.filled === null ? area : round(this.filled, area);
  }

  add(part: SheetPart): void {
    this.parts.push(part);
    this.place(part);
  }

  private place({ top, left, cells }: SheetPart): void {
    cells.forEach((line, r) => {
      const row = (this.grid[top + r] ??= []);
      line.forEach((cell, c) => {
        row[left + c] = cell;
      });
    });
  }

  /** Whether all of the rectangle was read, or lies where the sheet is blank. */
  knows(rectangle: Rectangle): boolean {
    const filled = this.used === undefined ? rectangle : this.used && common(rectangle, this.used);
    if (!filled) return true;
    const { top, left, bottom, right } = filled;
    return this.parts.some(({ covers: c }) => c.top <= top && c.left <= left && c.bottom >= bottom && c.right >= right);
  }

  knowsCell(row: number, column: number): boolean {
    const { used } = this;
    if (used === null) return true;
    if (used !== undefined && (row < used.top || row > used.bottom || column < used.left || column > used.right)) return true;
    return this.parts.some(({ covers: c }) => row >= c.top && row <= c.bottom && column >= c.left && column <= c.right);
  }

  /** All that it fills was read. */
  get isWhole(): boolean {
    return this.used === null || (this.used !== undefined && this.knows(this.used));
  }
}

/** By their names. */
export type KnownSheets = ReadonlyMap<string, KnownSheet>;

/** The cell; undefined where it was not read. */
export function cellIn(known: KnownSheets, { sheetName, at }: Selection): SheetCell | undefined {
  const { row, column } = cellPosition(at);
  const sheet = known.get(sheetName);
  return sheet?.knowsCell(row, column) === true ? (sheet.grid[row]?.[column] ?? { value: null }) : undefined;
}

export const knownAround = ({ used, parts }: Around): KnownSheet => new KnownSheet(used, [...parts]);

/** Values of what was read: a cell that was not is not known, and what depends on it is taken as the sheet shows it. */
export class PaneValues extends WorkbookValues {
  /** Areas that were asked for and not known. */
  readonly missing: Area[] = [];

  constructor(
    private readonly known: KnownSheets | undefined,
    grids: ReadonlyMap<string, Grid>,
  ) {
    super({ name: '', sheets: [...grids].map(([name, grid]) => sheetOf(name, grid)) }, call);
  }

  /** Whether an area can be read; where not, it is noted. */
  has(area: Area): boolean {
    if (this.knows(area)) return true;
    this.missing.push(area);
    return false;
  }

  knows(area: Area): boolean {
    return this.known === undefined || this.known.get(area.sheet)?.knows(area) === true;
  }

  /** The rows of an area that are known, from 0. */
  knownRows({ sheet, top, left, bottom, right }: Area): number[] {
    const sheetHere = this.known?.get(sheet);
    if (sheetHere === undefined) return [];
    const rows = sheetHere.parts.flatMap(({ covers }) => {
      if (covers.left > left || covers.right < Math.min(right, sheetHere.used?.right ?? right)) return [];
      const from = Math.max(top, covers.top);
      return Array.from({ length: Math.max(0, Math.min(bottom, covers.bottom) - from + 1) }, (_, r) => from + r - top);
    });
    return [...new Set(rows)].sort((a, b) => a - b);
  }

  override value(sheet: string, at: string): One {
    if (this.known !== undefined) {
      const { row, column } = cellPosition(at);
      if (this.known.get(sheet)?.knowsCell(row, column) !== true) return undefined;
    }
    return super.value(sheet, at);
  }
}

/** Values of sheets that were read as a whole. */
export const sourceOf = (grids: ReadonlyMap<string, Grid>): PaneValues => new PaneValues(undefined, grids);

/** Values of parts of sheets. */
export const valuesOfParts = (known: KnownSheets): PaneValues =>
  new PaneValues(known, new Map([...known].map(([name, { grid }]) => [name, grid])));

export const partsBySheet = (parts: readonly SheetPart[]): Map<string, KnownSheet> => {
  const known = new Map<string, KnownSheet>();
  for (const part of parts) {
    const sheet = known.get(part.covers.sheet);
    if (sheet === undefined) known.set(part.covers.sheet, new KnownSheet(undefined, [part]));
    else sheet.add(part);
  }
  return known;
};

/** Every sheet as a whole. */
export async function readWorkbook(port: SheetPort): Promise<Map<string, Grid>> {
  const grids = new Map<string, Grid>();
  for (const name of await port.sheetNames()) grids.set(name, await port.read(name));
  return grids;
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

/** A cell with a formula of ours, not yet parsed. */
export interface FormulaSite extends Selection {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/** Formulas that the pattern finds. */
export function sitesOn(sheetName: string, grid: Grid, pattern: RegExp): FormulaSite[] {
  const sites: FormulaSite[] = [];
  grid.forEach((line, row) =>
    line.forEach(({ formula }, column) => {
      if (formula !== undefined && pattern.test(formula))
        sites.push({ sheetName, at: `${columnName(column)}${row + 1}`, row, column, formula });
    }),
  );
  return sites;
}

/** Calls that are looked at for one selection: those nearest to it. */
const MOST_CALLS = 24;

/** The nearest first: those of its sheet by row, then by column. */
export function nearest(sites: readonly FormulaSite[], { sheetName, at }: Selection): readonly FormulaSite[] {
  const { row, column } = cellPosition(at);
  const far = (site: FormulaSite): number =>
    site.sheetName === sheetName ? Math.abs(site.row - row) * 100_000 + Math.abs(site.column - column) : Number.MAX_SAFE_INTEGER;
  return [...sites].sort((a, b) => far(a) - far(b)).slice(0, MOST_CALLS);
}
