// A workbook file as cells. It may come from anybody.
import type { Cell } from '../../core/kinds';
import { readPackage, type StoredSheet, type UserPackage } from '../../package/read';
import type { StoredCell, StoredFormula, StoredValue } from '../../package/cells';
import { remarksIn, type SheetRemarks } from '../../package/remarks';
import { UnreadableFile } from '../../package/unreadable';
import { address, cellCount, lastPlace, type Place, rectangleOf } from '../../sheet/addresses';
import { isOwnCall, worksOnRanges } from '../../sheet/formula';
import type { DefinedName, FilledRange } from '../../sheet/plan';
import type { SheetCell } from '../../sheet/port';
import { callsOurs, fromFile } from '../../sheet/stored-formulas';
import type { SourceTable } from '../../sheet/workbook-values';
import { assertTame, outsideOf } from './gate';

export { UnreadableFile };

export interface ReadCell extends SheetCell {
  readonly at: string;
  /** The cell whose formula spilled into this one: `F3`. */
  readonly spilledFrom?: string;
  /** Where the formula works on ranges cell by cell. */
  readonly array?: FilledRange;
}

export interface ReadSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** The cells with a value or a formula, row by row. */
  readonly cells: readonly ReadCell[];
}

export interface ReadWorkbook {
  readonly sheets: readonly ReadSheet[];
  readonly names: readonly DefinedName[];
  readonly tables: readonly SourceTable[];
  /** Names of sheets that are one chart. */
  readonly otherSheets: readonly string[];
  /** What the file would fetch from elsewhere or carries besides cells: targets of links, names of parts. Nothing of it was read. */
  readonly outside: readonly string[];
}

/** Names of the program: print areas, titles. */
const BUILT_IN = /^_xlnm\./i;

/** Cells that formulas elsewhere fill, of one sheet. */
const MOST_FILLED = 4_000_000;

/** What a program shows of a formula that gave an error is its code. */
const valueOf = (value: StoredValue): Cell | null => (typeof value === 'object' ? value.error : (value ?? null));

/** Cells that a formula elsewhere filled, with the cell of that formula. */
function spills(cells: readonly StoredCell[]): Map<string, string> {
  const from = new Map<string, string>();
  let last: Place | undefined;
  let left = MOST_FILLED;
  for (const { at, formula } of cells) {
    if (formula?.area === undefined || !['array', 'dynamic'].includes(formula.kind)) continue;
    const area = rectangleOf(formula.area);
    last ??= lastPlace(cells.map(cell => cell.at));
    const filled = { ...area, bottom: Math.min(area.bottom, last.row), right: Math.min(area.right, last.column) };
    left -= cellCount(filled);
    if (left < 0) throw new UnreadableFile('formulasTooWide', MOST_FILLED);
    for (let row = filled.top; row <= filled.bottom; row++)
      for (let column = filled.left; column <= filled.right; column++) {
        const place = address(row, column);
        if (place !== at) from.set(place, at);
      }
  }
  return from;
}

/** A call of ours fills what it needs; Excel stores every cell around one as an array formula, of whatever it is made. */
function arrayOf(formula: string, at: string, { kind, area = at }: StoredFormula): FilledRange | undefined {
  if ((kind !== 'array' && kind !== 'dynamic') || (isOwnCall(formula) && area === at)) return undefined;
  if (callsOurs(formula) && area === at && !worksOnRanges(formula)) return undefined;
  return { range: area, ...(kind === 'dynamic' && { isDynamic: true }) };
}

function cellOf({ at, value, formula: stored }: StoredCell, spilledFrom: string | undefined): ReadCell {
  const spilled = spilledFrom === undefined ? {} : { spilledFrom };
  // a table of what-if cells is worked out by the program alone
  if (stored === undefined || stored.kind === 'dataTable') return { at, value: valueOf(value), ...spilled };
  const formula = `=${fromFile(stored.text)}`;
  const array = arrayOf(formula, at, stored);
  return { at, value: valueOf(value), formula, ...(array && { array }), ...spilled };
}

function sheetOf({ name, state, cells }: StoredSheet): ReadSheet {
  const spilled = spills(cells);
  return { name, hidden: state !== 'visible', cells: cells.map(cell => cellOf(cell, spilled.get(cell.at))) };
}

/** What stands in the cells of a package, as people type it. */
export const workbookIn = (file: UserPackage): ReadWorkbook => ({
  sheets: file.sheets.map(sheetOf),
  names: file.names.flatMap(({ name, meaning, sheet }) =>
    BUILT_IN.test(name) ? [] : [{ name, meaning, ...(sheet !== undefined && { sheet }) }],
  ),
  tables: file.tables.map(({ name, sheet, area, headerRows, totalsRows, columns }) => ({
    name,
    area: { sheet, ...rectangleOf(area) },
    headerRows,
    totalsRows,
    columns: columns.map(column => column.name),
  })),
  otherSheets: file.sheetNames.filter(name => !file.sheets.some(sheet => sheet.name === name)),
  outside: outsideOf(file),
});

export interface RemarkedWorkbook extends ReadWorkbook {
  readonly sheets: readonly (ReadSheet & SheetRemarks)[];
}

const NO_REMARKS: SheetRemarks = { comments: new Map(), fills: new Map(), shown: new Map(), beneath: () => '' };

/** With comments, colours and what formats make of numbers, for a comparison. */
export async function readWithRemarks(bytes: Uint8Array): Promise<RemarkedWorkbook> {
  try {
    const file = readPackage(bytes);
    assertTame(file);
    const [read, remarks] = [workbookIn(file), remarksIn(file)];
    return { ...read, sheets: read.sheets.map(sheet => ({ ...sheet, ...(remarks.get(sheet.name) ?? NO_REMARKS) })) };
  } catch (fault) {
    throw fault instanceof UnreadableFile ? fault : new UnreadableFile('noWorkbook');
  }
}

/** Of a file that nothing but its cells is wanted of: one that can run something is refused. */
export async function readWorkbook(bytes: Uint8Array): Promise<ReadWorkbook> {
  try {
    const file = readPackage(bytes);
    assertTame(file);
    return workbookIn(file);
  } catch (fault) {
    throw fault instanceof UnreadableFile ? fault : new UnreadableFile('noWorkbook');
  }
}
