// Cells out of Excel: a whole sheet in parts, or what stands round one cell in one exchange.
import type { Cell } from '../../core/kinds';
import { type Area, cellCount, LAST_PLACE, type Rectangle } from '../../sheet/addresses';
import { HEAD_ROWS, MOST_CELLS, windowRound } from '../../sheet/parts';
import type { Around, CalculationState, Selection, SheetCell, SheetPart } from '../../sheet/port';
import { FILE_SIGNS, type Signs } from '../../sheet/signs';
import { has, namesIn, sheetNamed } from './exchange';
import { ExcelRefusal } from './words';

/** Excel on the web refuses an answer that is too large. */
const MOST_CELLS_AT_ONCE = 50_000;

const isFormula = (content: unknown): content is string => typeof content === 'string' && content.startsWith('=');

const cellOf = (value: unknown, formula: unknown): SheetCell => ({
  value: value === '' || value === null ? null : (value as Cell),
  ...(isFormula(formula) && { formula }),
});

const cellsOf = ({ values, formulas }: Excel.Range): SheetCell[][] =>
  values.map((line, r) => line.map((value: unknown, c) => cellOf(value, formulas[r]?.[c])));

const PLACE = 'rowIndex,columnIndex,rowCount,columnCount';
const CONTENT = 'rowIndex,columnIndex,values,formulas';

const rectangleOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Rectangle => ({
  top: rowIndex,
  left: columnIndex,
  bottom: rowIndex + rowCount - 1,
  right: columnIndex + columnCount - 1,
});

const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Rectangle): Excel.Range =>
  sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);

export async function readSheet(context: Excel.RequestContext, name: string): Promise<SheetCell[][]> {
  const sheet = await sheetNamed(context, name);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load(`isNullObject,${PLACE}`);
  await context.sync();
  if (used.isNullObject) return [];
  const [rows, columns] = [used.rowIndex + used.rowCount, used.columnIndex + used.columnCount];
  const atOnce = Math.max(1, Math.floor(MOST_CELLS_AT_ONCE / columns));
  const cells: SheetCell[][] = [];
  for (let from = 0; from < rows; from += atOnce) {
    const part = sheet.getRangeByIndexes(from, 0, Math.min(atOnce, rows - from), columns);
    part.load('values,formulas');
    await context.sync();
    cells.push(...cellsOf(part));
  }
  return cells;
}

const partOf = (covers: Area, read: Excel.Range): SheetPart =>
  read.isNullObject ? { covers, top: 0, left: 0, cells: [] } : { covers, top: read.rowIndex, left: read.columnIndex, cells: cellsOf(read) };

/** In one exchange, whatever the size of the sheet. */
export async function readAround(context: Excel.RequestContext, { sheetName, at }: Selection): Promise<Around> {
  const { application, workbook } = context;
  const sheet = workbook.worksheets.getItem(sheetName);
  const window = windowRound(at);
  const used = sheet.getUsedRangeOrNullObject(true);
  const near = rangeOf(sheet, window).getUsedRangeOrNullObject(true);
  // The names of a long table stand at the top of its region, however far away that is.
  const region = sheet.getRange(at).getSurroundingRegion();
  const columns = rangeOf(sheet, { ...window, top: 0, bottom: LAST_PLACE.row });
  const head = region
    .getRow(0)
    .getResizedRange(HEAD_ROWS - 1, 0)
    .getIntersectionOrNullObject(columns);
  used.load(`isNullObject,${PLACE}`);
  near.load(`isNullObject,${CONTENT}`);
  region.load(PLACE);
  head.load(`isNullObject,${CONTENT}`);
  application.load('calculationMode,calculationState');
  await context.sync();
  const { top, left, right } = rectangleOf(region);
  const names = {
    sheet: sheetName,
    top,
    left: Math.max(left, window.left),
    bottom: top + HEAD_ROWS - 1,
    right: Math.min(right, window.right),
  };
  return {
    parts: [partOf(names, head), partOf({ sheet: sheetName, ...window }, near)],
    used: used.isNullObject ? null : rectangleOf(used),
    calculation: calculationOf(application),
  };
}

function calculationOf({ calculationMode, calculationState }: Excel.Application): CalculationState {
  if (calculationMode === Excel.CalculationMode.manual) return 'manual';
  return calculationState === Excel.CalculationState.done ? 'settled' : 'pending';
}

const sheetsIn = async (context: Excel.RequestContext, areas: readonly Area[]): Promise<(readonly [Area, Excel.Range])[]> => {
  const names = await namesIn(context);
  return areas.flatMap(area => {
    const name = names.find(one => one.toLowerCase() === area.sheet.toLowerCase());
    if (name === undefined) return [];
    const part = rangeOf(context.workbook.worksheets.getItem(name), area).getUsedRangeOrNullObject(true);
    return [[{ ...area, sheet: name }, part] as const];
  });
};

export async function readAreas(context: Excel.RequestContext, areas: readonly Area[]): Promise<SheetPart[]> {
  if (areas.length === 0) return [];
  const parts = await sheetsIn(context, areas);
  if (areas.reduce((sum, area) => sum + cellCount(area), 0) > MOST_CELLS) {
    for (const [, part] of parts) part.load(`isNullObject,${PLACE}`);
    await context.sync();
    const count = parts.reduce((sum, [, part]) => sum + (part.isNullObject ? 0 : part.rowCount * part.columnCount), 0);
    if (count > MOST_CELLS) throw new ExcelRefusal(({ manyCells }) => manyCells(count, MOST_CELLS));
  }
  for (const [, part] of parts) part.load(`isNullObject,${CONTENT}`);
  await context.sync();
  return parts.map(([area, part]) => partOf(area, part));
}

export async function sizesIn(context: Excel.RequestContext): Promise<{ sheetName: string; cells: number }[]> {
  const names = await namesIn(context);
  const used = names.map(name => context.workbook.worksheets.getItem(name).getUsedRangeOrNullObject(true));
  for (const range of used) range.load(`isNullObject,${PLACE}`);
  await context.sync();
  return names.map((sheetName, i) => {
    const range = used[i];
    return { sheetName, cells: range === undefined || range.isNullObject ? 0 : range.rowCount * range.columnCount };
  });
}

/** Since when Excel tells its decimal sign. */
const SIGNS = '1.11';

export async function signsIn(context: Excel.RequestContext): Promise<Signs> {
  if (!has(SIGNS)) return FILE_SIGNS;
  const { application } = context;
  application.load('decimalSeparator');
  await context.sync();
  return { decimal: application.decimalSeparator };
}
