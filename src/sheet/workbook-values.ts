// The workbook that is handed over, as it was read: values and formulas. What has no value yet is worked out here,
// as far as arguments of our functions need it.
import type { Cell } from '../core/kinds';
import { type CallById, Evaluator } from './evaluator';
import { address, type Area, cellPosition, lastPlace, type Place } from './addresses';
import { isOwnCall, outermostCalls, parseFormula } from './formula';
import { ERROR_CODE, isFault, isRows, type Known, type KnownRows, one, type One } from './known';
import type { FilledRange } from './plan';

export { isFault, isRows, type Known, type One } from './known';

export interface SourceCell {
  readonly value: Cell | null;
  readonly formula?: string;
  /** The formula works on ranges cell by cell, which the same one without its braces does not. */
  readonly array?: FilledRange;
}

export interface SourceSheet {
  readonly name: string;
  /** By address, `B4`. */
  readonly cells: ReadonlyMap<string, SourceCell>;
}

/** A named table of a sheet, all rows of which have the same columns. */
export interface SourceTable {
  readonly name: string;
  readonly area: Area;
  /** Rows at its top with the names of the columns, and at its end with totals. */
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly string[];
}

export interface SourceWorkbook {
  readonly name: string;
  readonly sheets: readonly SourceSheet[];
  /** Names of sheets without cells: those that are one chart. */
  readonly otherSheets?: readonly string[];
  readonly tables?: readonly SourceTable[];
  /** What defined names stand for, by `nameKey`: `Joint!$B$4`. */
  readonly names?: ReadonlyMap<string, string>;
}

/** `hole`, or `joint!hole` where the name holds on one sheet alone. */
export const nameKey = (name: string, sheet?: string): string => (sheet === undefined ? name : `${sheet}!${name}`).toLowerCase();

/** One sheet while it is worked out, by address. */
class WorkedSheet {
  readonly known = new Map<string, Known>();
  readonly spilled = new Map<string, Cell>();
  /** What each table put where. */
  readonly tables = new Map<string, ReadonlyMap<string, Cell>>();
  readonly crowded = new Set<string>();
  /** Cells without a value of their own that were read. */
  readonly read = new Set<string>();
  private last: Place | undefined;

  constructor(readonly cells: ReadonlyMap<string, SourceCell>) {}

  lastPlace(): Place {
    this.last ??= lastPlace([...this.cells.keys(), ...this.spilled.keys()]);
    return this.last;
  }

  filledUpTo({ row, column }: Place): void {
    const { row: lastRow, column: lastColumn } = this.lastPlace();
    this.last = { row: Math.max(lastRow, row), column: Math.max(lastColumn, column) };
  }
}

export class WorkbookValues extends Evaluator {
  private readonly sheets: ReadonlyMap<string, WorkedSheet>;
  private readonly open = new Set<string>();
  private readonly circular = new Set<string>();
  /** The innermost cell of a chain that is too long. */
  private deepest: readonly [sheet: string, at: string] | undefined;
  private isStale = false;

  constructor(
    readonly workbook: SourceWorkbook,
    callOurs: CallById,
  ) {
    super(callOurs);
    this.sheets = new Map(workbook.sheets.map(({ name, cells }) => [name, new WorkedSheet(cells)]));
  }

  cell(sheet: string, at: string): SourceCell | undefined {
    return this.sheets.get(sheet)?.cells.get(at);
  }

  /** Which row, counted from 0, it is of a table that spilled over it. */
  rowOfTable(sheet: string, at: string): number | undefined {
    const tables = this.sheets.get(sheet)?.tables ?? [];
    for (const [from, cells] of tables)
      if ((from === at && cells.size > 0) || cells.has(at)) return cellPosition(at).row - cellPosition(from).row;
    return undefined;
  }

  protected override lastOf(sheet: string): Place {
    return this.sheets.get(sheet)?.lastPlace() ?? { row: 0, column: 0 };
  }

  protected override valueAt(sheet: string, row: number, column: number): One {
    return this.value(sheet, address(row, column));
  }

  /** The value of a cell: worked out from its formula, or as it was read. */
  value(sheet: string, at: string): One {
    const here = this.sheets.get(sheet);
    if (here === undefined) return undefined;
    if (here.crowded.has(at)) return { cellError: '#SPILL!' };
    const cell = here.cells.get(at);
    if (cell?.formula === undefined) {
      const own = cell?.value ?? null;
      if (own !== null) return own;
      here.read.add(at);
      return here.spilled.get(at) ?? null;
    }
    const worked = one(this.result(sheet, at));
    const first = isRows(worked) ? worked[0]?.[0] : worked;
    return first !== undefined || cell.value === null ? first : asRead(cell.value);
  }

  /** What the formula of a cell gives; a table spills over its neighbours. */
  result(sheet: string, at: string): Known {
    const here = this.sheets.get(sheet);
    if (here === undefined) return undefined;
    if (here.known.has(at)) return here.known.get(at);
    const key = `${sheet}!${at}`;
    if (this.open.has(key)) {
      const chain = [...this.open];
      chain.slice(chain.indexOf(key)).forEach(link => this.circular.add(link));
      return undefined;
    }
    return this.open.size > 0 ? this.attempt(here, sheet, at) : this.followed(here, sheet, at);
  }

  /** A chain that is too long is begun anew from its innermost cell, until the whole of it is known. */
  private followed(first: WorkedSheet, firstSheet: string, firstAt: string): Known {
    const waiting: (readonly [string, string])[] = [];
    let [sheet, at] = [firstSheet, firstAt];
    for (;;) {
      const result = this.attempt(this.sheets.get(sheet) ?? first, sheet, at);
      const deepest = this.isTooDeep ? this.deepest : undefined;
      this.isTooDeep = false;
      this.deepest = undefined;
      if (deepest !== undefined) {
        const [nextSheet, nextAt] = deepest;
        const chain = [...waiting, [sheet, at] as const];
        const begun = chain.findIndex(([s, a]) => s === nextSheet && a === nextAt);
        if (begun < 0) {
          waiting.push([sheet, at]);
          [sheet, at] = deepest;
          continue;
        }
        // alone, it is a formula that is too deep in itself
        if (begun < chain.length - 1) chain.slice(begun).forEach(([s, a]) => this.circular.add(`${s}!${a}`));
        this.sheets.get(sheet)?.known.set(at, undefined);
      }
      const next = waiting.pop();
      if (next === undefined) return result;
      [sheet, at] = next;
    }
  }

  private attempt(here: WorkedSheet, sheet: string, at: string): Known {
    const key = `${sheet}!${at}`;
    this.open.add(key);
    const { formula = '', array } = here.cells.get(at) ?? {};
    // with its braces a formula may give another value than is worked out here; those of ours are given theirs by the host
    const isOver =
      array !== undefined &&
      (outermostCalls(parseFormula(formula) ?? null).length === 0 || (isOwnCall(formula) && array.range.includes(':')));
    const result = isOver ? undefined : this.valueOfFormula(formula, sheet);
    this.open.delete(key);
    if (this.isTooDeep) {
      this.deepest ??= [sheet, at];
      return undefined;
    }
    const settled = this.circular.has(key) ? undefined : result;
    here.known.set(at, settled);
    return settled;
  }

  /** Whether its formula leads back to the cell itself, as far as it was followed. */
  isCircular(sheet: string, at: string): boolean {
    return this.circular.has(`${sheet}!${at}`);
  }

  /** Lets a table spill, so that cells that point at spilled ones find them; without rows there is no room. */
  spill(sheet: string, at: string, rows: KnownRows | undefined): void {
    const here = this.sheets.get(sheet);
    if (here === undefined) return;
    const before = here.tables.get(at) ?? new Map<string, Cell>();
    if (rows?.length === 0 && before.size === 0 && !here.crowded.has(at)) return;
    const { row, column } = cellPosition(at);
    const after = new Map<string, Cell>();
    rows?.forEach((line, r) =>
      line.forEach((value, c) => {
        if (value !== null && !isFault(value) && (r > 0 || c > 0)) after.set(address(row + r, column + c), value);
      }),
    );
    for (const place of before.keys()) if (!after.has(place)) here.spilled.delete(place);
    for (const [place, value] of after) here.spilled.set(place, value);
    const hasChanged = (place: string): boolean => here.read.has(place) && before.get(place) !== after.get(place);
    this.isStale ||= [...before.keys(), ...after.keys()].some(hasChanged) || here.crowded.has(at) !== (rows === undefined);
    if (rows === undefined) here.crowded.add(at);
    else here.crowded.delete(at);
    here.tables.set(at, after);
    if (rows !== undefined && after.size > 0) here.filledUpTo({ row: row + rows.length - 1, column: column + (rows[0]?.length ?? 1) - 1 });
  }

  /** Whether a cell was read before a table spilled over it or found no room: what was worked out until then is forgotten. */
  startAnew(): boolean {
    if (!this.isStale) return false;
    this.isStale = false;
    for (const { read, known } of this.sheets.values()) {
      read.clear();
      known.clear();
    }
    this.circular.clear();
    this.forgetAreas();
    return true;
  }

  protected override spilledAt(sheet: string, at: string): Known {
    return this.cell(sheet, at)?.formula === undefined ? undefined : this.result(sheet, at);
  }
}

const asRead = (value: Cell): One => (typeof value === 'string' && ERROR_CODE.test(value) ? { cellError: value } : value);
