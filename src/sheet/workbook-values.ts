// The workbook that is handed over, as it was read: values and formulas. What has no value yet is worked out here,
// as far as arguments of our functions need it.
import type { Cell } from '../core/kinds';
import { type CallById, Evaluator } from './evaluator';
import { address, type Area } from './addresses';
import { outermostCalls, parseFormula } from './formula';
import { ERROR_CODE, isFault, isRows, type Known, type KnownRows, one, type One } from './known';
import type { FilledRange } from './plan';

export { isFault, isRows, type Known } from './known';

export interface SourceCell {
  readonly value: Cell | null;
  readonly formula?: string;
  /** The formula works on ranges cell by cell, which the same one without its braces does not. */
  readonly array?: FilledRange;
}

export interface SourceSheet {
  readonly name: string;
  readonly isHidden?: boolean;
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
  readonly tables?: readonly SourceTable[];
  /** What defined names stand for, by `nameKey`: `Joint!$B$4`. */
  readonly names?: ReadonlyMap<string, string>;
}

/** `hole`, or `joint!hole` where the name holds on one sheet alone. */
export const nameKey = (name: string, sheet?: string): string => (sheet === undefined ? name : `${sheet}!${name}`).toLowerCase();

export class WorkbookValues extends Evaluator {
  private readonly sheets: ReadonlyMap<string, SourceSheet>;
  private readonly crowded = new Set<string>();
  private readonly spilled = new Map<string, Cell>();
  private readonly known = new Map<string, Known>();
  private readonly open = new Set<string>();
  private readonly circular = new Set<string>();
  /** Cells that were blank when they were read. */
  private readonly blank = new Set<string>();
  private isStale = false;

  constructor(
    readonly workbook: SourceWorkbook,
    callOurs: CallById,
  ) {
    super(callOurs);
    this.sheets = new Map(workbook.sheets.map(sheet => [sheet.name, sheet]));
  }

  cell(sheet: string, at: string): SourceCell | undefined {
    return this.sheets.get(sheet)?.cells.get(at);
  }

  /** The value of a cell: worked out from its formula, or as it was read. */
  override value(sheet: string, at: string): One {
    if (!this.sheets.has(sheet)) return undefined;
    const cell = this.cell(sheet, at);
    if (this.crowded.has(`${sheet}!${at}`)) return { cellError: '#SPILL!' };
    if (cell?.formula === undefined) return cell?.value ?? this.spilled.get(`${sheet}!${at}`) ?? this.blankAt(`${sheet}!${at}`);
    const worked = one(this.result(sheet, at));
    const first = isRows(worked) ? worked[0]?.[0] : worked;
    if (first !== undefined) return first;
    if (cell.value === null) return undefined;
    return typeof cell.value === 'string' && ERROR_CODE.test(cell.value) ? { cellError: cell.value } : cell.value;
  }

  private blankAt(key: string): null {
    this.blank.add(key);
    return null;
  }

  /** What the formula of a cell gives; a table spills over its neighbours. */
  result(sheet: string, at: string): Known {
    const key = `${sheet}!${at}`;
    if (this.known.has(key)) return this.known.get(key);
    if (this.open.has(key)) {
      for (const link of [...this.open].slice([...this.open].indexOf(key))) this.circular.add(link);
      return undefined;
    }
    this.open.add(key);
    const { formula = '', array } = this.cell(sheet, at) ?? {};
    const tree = parseFormula(formula);
    // with its braces a formula may give another value than is worked out here; those of ours are given theirs by the host
    const isOver = array !== undefined && outermostCalls(tree ?? null).length === 0;
    const result = isOver ? undefined : this.evaluate(tree, sheet);
    this.open.delete(key);
    if (this.circular.has(key)) return this.remember(key, undefined);
    return this.isTooDeep ? undefined : this.remember(key, result);
  }

  private remember(key: string, result: Known): Known {
    this.known.set(key, result);
    return result;
  }

  /** Whether its formula leads back to the cell itself, as far as it was followed. */
  isCircular(sheet: string, at: string): boolean {
    return this.circular.has(`${sheet}!${at}`);
  }

  /** Lets a table spill, so that cells that point at spilled ones find them. */
  spill(sheet: string, row: number, column: number, rows: KnownRows): void {
    rows.forEach((line, r) =>
      line.forEach((value, c) => {
        if (value === null || isFault(value)) return;
        const key = `${sheet}!${address(row + r, column + c)}`;
        this.isStale ||= this.blank.has(key) && !this.spilled.has(key);
        this.spilled.set(key, value);
      }),
    );
  }

  /** The table of this cell has no room. */
  crowd(sheet: string, at: string): void {
    const key = `${sheet}!${at}`;
    this.isStale ||= !this.crowded.has(key);
    this.crowded.add(key);
  }

  /** Whether a cell was read before a table spilled over it or found no room: what was worked out until then is forgotten. */
  startAnew(): boolean {
    if (!this.isStale) return false;
    this.isStale = false;
    this.blank.clear();
    this.known.clear();
    this.circular.clear();
    return true;
  }

  protected override spilledAt(sheet: string, at: string): Known {
    return this.cell(sheet, at)?.formula === undefined ? undefined : this.result(sheet, at);
  }
}
