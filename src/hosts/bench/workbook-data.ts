// A plan as the data of the sheet engine.
import {
  CellValueType, LocaleType, WrapStrategy, type ICellData, type IRange, type IWorkbookData, type IWorksheetData,
} from "@univerjs/core";
import { deserializeRangeWithSheet } from "@univerjs/preset-sheets-core";
import {
  CFRuleType, CFSubRuleType, CFTextOperator, SHEET_CONDITIONAL_FORMATTING_PLUGIN, type IConditionFormattingRule,
} from "@univerjs/preset-sheets-conditional-formatting";
import type { PlanCell, SheetPlan, WorkbookPlan } from "../../sheet/plan";
import { looks, rowPx, sheetStyle, stateCell, stateLooks, wrappedWhenMerged } from "./looks";
import { workbookId } from "./sheets";

const characterPx = 7.5;
const paddingPx = 10;
const plainRowPx = 24;
const spareRows = 100;
const leastColumns = 26;

export const rangeOf = (a1: string): IRange => deserializeRangeWithSheet(a1).range;

const holds = (range: IRange, row: number, column: number): boolean =>
  row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;

function cellData({ value, formula, role, format, note }: PlanCell, merged: boolean, state: boolean): ICellData {
  const types = { number: CellValueType.NUMBER, string: CellValueType.STRING, boolean: CellValueType.BOOLEAN };
  return {
    s: {
      ...looks[role],
      ...(merged && wrappedWhenMerged.includes(role) && { tb: WrapStrategy.WRAP }),
      ...(state && stateCell),
      ...(format !== undefined && { n: { pattern: format } }),
    },
    ...(formula !== undefined && { f: formula }),
    ...(value !== undefined && { v: typeof value === "boolean" ? Number(value) : value, t: types[typeof value as keyof typeof types] }),
    ...(note !== undefined && { custom: { note } }),
  };
}

export function worksheetData(plan: SheetPlan): Partial<IWorksheetData> {
  const mergeData = (plan.merged ?? []).map(rangeOf);
  const states = (plan.stateRanges ?? []).map(rangeOf);
  const cells: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, { h: number }> = {};
  for (const cell of plan.cells) {
    const { startRow, startColumn } = rangeOf(cell.at);
    const inside = (range: IRange) => holds(range, startRow, startColumn);
    (cells[startRow] ??= {})[startColumn] = cellData(cell, mergeData.some(inside), states.some(inside) && cell.role !== "header");
    const height = rowPx[cell.role];
    if (height !== undefined) rowData[startRow] = { h: height };
  }
  const lastRow = Math.max(0, ...Object.keys(cells).map(Number));
  const frozenRows = plan.frozenRows ?? 0;
  return {
    name: plan.name,
    rowCount: lastRow + spareRows,
    columnCount: Math.max(leastColumns, plan.widths.length),
    defaultStyle: sheetStyle,
    defaultRowHeight: plainRowPx,
    rowData,
    columnData: Object.fromEntries(plan.widths.map((characters, column) => [column, { w: Math.round(characters * characterPx + paddingPx) }])),
    cellData: cells,
    mergeData,
    ...(frozenRows > 0 && { freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 } }),
  };
}

/** Colours for the state words of a sheet. */
export function stateRules(plan: SheetPlan): IConditionFormattingRule[] {
  const ranges = (plan.stateRanges ?? []).map(rangeOf);
  if (ranges.length === 0) return [];
  return Object.entries(stateLooks).map(([word, style]) => ({
    cfId: `state ${word}`,
    ranges,
    stopIfTrue: false,
    rule: { type: CFRuleType.highlightCell, subType: CFSubRuleType.text, operator: CFTextOperator.equal, value: word, style },
  }));
}

export function workbookData(plan: WorkbookPlan): IWorkbookData {
  const sheets = plan.sheets.map((sheet, index) => ({ id: `sheet${index + 1}`, sheet }));
  return {
    id: workbookId,
    name: plan.name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map(({ id, sheet }) => [id, { ...worksheetData(sheet), id }])),
    resources: [{
      name: SHEET_CONDITIONAL_FORMATTING_PLUGIN,
      data: JSON.stringify(Object.fromEntries(sheets.map(({ id, sheet }) => [id, stateRules(sheet)]))),
    }],
  };
}
