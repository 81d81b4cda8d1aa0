// A plan as the data of the sheet engine.
import {
  CellValueType,
  LocaleType,
  WrapStrategy,
  type ICellData,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from '@univerjs/core';
import {
  CFRuleType,
  CFSubRuleType,
  SHEET_CONDITIONAL_FORMATTING_PLUGIN,
  type IConditionFormattingRule,
} from '@univerjs/preset-sheets-conditional-formatting';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../sheet/plan';
import { holds, nameOf, rangeOf, type Rectangle } from './addresses';
import { looks, rowPx, sheetStyle, stateCell, stateLooks, wrappedWhenMerged } from './looks';
import { workbookId } from './sheets';

const spareRows = 100;
const leastColumns = 26;
const plainColumnPx = 88;
const digitPx = 7.5;
/** A letter of running text is narrower than a digit. */
const letterPx = 5.9;
const sidesPx = 12;
const plainRowPx = 24;
const linePx = 17;

const columnPx = ({ widths }: SheetPlan, column: number): number => {
  const characters = widths[column];
  return characters === undefined ? plainColumnPx : Math.round(characters * digitPx + sidesPx);
};

/** The width of a column in a plan. */
export const charactersOf = (px: number): number => Math.round(((px - sidesPx) / digitPx) * 10) / 10;

const widthPx = (plan: SheetPlan, { startColumn, endColumn }: Rectangle): number =>
  Array.from({ length: endColumn - startColumn + 1 }, (_, index) => columnPx(plan, startColumn + index)).reduce((sum, px) => sum + px, 0);

/** Of the look of a cell that a state will stand in. */
const stateName = 'state';

/** Looks by name. A cell keeps the name: with the look in every cell a large sheet would be more than a browser keeps. */
export type Styles = Record<string, IStyleData>;

interface Look {
  readonly name: string;
  readonly style: IStyleData;
}

function lookOf({ role, format }: PlanCell, merged: boolean, state: boolean): Look {
  const isWrapped = merged && wrappedWhenMerged.includes(role);
  return {
    name: [role, ...(isWrapped ? ['wrapped'] : []), ...(state ? [stateName] : []), ...(format === undefined ? [] : [format])].join(' '),
    style: {
      ...looks[role],
      ...(isWrapped && { tb: WrapStrategy.WRAP }),
      ...(state && stateCell),
      ...(format !== undefined && { n: { pattern: format } }),
    },
  };
}

function cellData({ value, formula, note }: PlanCell, style: string): ICellData {
  const types = { number: CellValueType.NUMBER, string: CellValueType.STRING, boolean: CellValueType.BOOLEAN };
  return {
    s: style,
    ...(formula !== undefined && { f: formula }),
    ...(value !== undefined && { v: typeof value === 'boolean' ? Number(value) : value, t: types[typeof value as keyof typeof types] }),
    ...(note !== undefined && { custom: { note } }),
  };
}

/** The engine wraps a text but leaves the row of a new workbook as it is. A header that a formula will fill is given two lines. */
function heightPx({ role, value }: PlanCell, style: IStyleData, width: number): number {
  if (style.tb !== WrapStrategy.WRAP) return rowPx[role] ?? plainRowPx;
  const lines = value === undefined ? 2 : Math.ceil((String(value).length * letterPx) / (width - sidesPx));
  return Math.max(plainRowPx, lines * linePx + 7);
}

/** @param styles is given the looks that the sheet uses. */
export function worksheetData(plan: SheetPlan, styles: Styles): Partial<IWorksheetData> {
  const mergeData = (plan.merged ?? []).map(rangeOf);
  const states = (plan.stateRanges ?? []).map(rangeOf);
  const cells: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, Partial<IRowData> & { h: number }> = {};
  for (const cell of plan.cells) {
    const own = rangeOf(cell.at);
    const inside = (range: Rectangle) => holds(range, own.startRow, own.startColumn);
    const merged = mergeData.find(inside);
    const { name, style } = lookOf(cell, merged !== undefined, states.some(inside));
    styles[name] = style;
    (cells[own.startRow] ??= {})[own.startColumn] = cellData(cell, name);
    rowData[own.startRow] = { h: Math.max(rowData[own.startRow]?.h ?? 0, heightPx(cell, style, widthPx(plan, merged ?? own))) };
  }
  if (states.length > 0) styles[stateName] = stateCell;
  for (const { startRow, startColumn, endRow, endColumn } of states) {
    for (let row = startRow; row <= endRow; row++) {
      for (let column = startColumn; column <= endColumn; column++) (cells[row] ??= {})[column] ??= { s: stateName };
    }
  }
  const lastRow = Math.max(0, ...Object.keys(cells).map(Number));
  const frozenRows = plan.frozenRows ?? 0;
  return {
    name: plan.name,
    rowCount: lastRow + spareRows,
    columnCount: Math.max(leastColumns, plan.widths.length),
    defaultStyle: sheetStyle,
    defaultColumnWidth: plainColumnPx,
    defaultRowHeight: plainRowPx,
    rowData,
    columnData: Object.fromEntries(plan.widths.map((_, column) => [column, { w: columnPx(plan, column) }])),
    cellData: cells,
    mergeData,
    ...(frozenRows > 0 && { freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 } }),
  };
}

/** Colours for the state words of a sheet. Rules by formula, since rules by text overlook the cells of a spilled table. */
export function stateRules(plan: SheetPlan): IConditionFormattingRule[] {
  const ranges = (plan.stateRanges ?? []).map(rangeOf);
  return ranges.flatMap(range =>
    Object.entries(stateLooks).map(([word, style]) => ({
      cfId: `${nameOf(range)} ${word}`,
      ranges: [range],
      stopIfTrue: false,
      rule: {
        type: CFRuleType.highlightCell,
        subType: CFSubRuleType.formula,
        style,
        value: `=${nameOf({ startRow: range.startRow, startColumn: range.startColumn })}="${word}"`,
      },
    })),
  );
}

export function workbookData(plan: WorkbookPlan): IWorkbookData {
  const styles: Styles = {};
  const sheets = plan.sheets.map((sheet, index) => ({ id: `sheet${index + 1}`, sheet, data: worksheetData(sheet, styles) }));
  return {
    id: workbookId,
    name: plan.name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map(({ id, data }) => [id, { ...data, id }])),
    resources: [
      {
        name: SHEET_CONDITIONAL_FORMATTING_PLUGIN,
        data: JSON.stringify(Object.fromEntries(sheets.map(({ id, sheet }) => [id, stateRules(sheet)]))),
      },
    ],
  };
}
