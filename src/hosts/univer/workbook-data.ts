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
import { address, cellPosition, holds, placesIn, type Rectangle, rectangleOf } from '../../sheet/addresses';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../sheet/plan';
import { WRAPPED_WHEN_MERGED } from '../../sheet/theme';
import { rangeOf } from './addresses';
import { looks, rowPx, sheetStyle, stateCell, stateLooks } from './looks';
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

export const columnPxOf = (characters: number): number => Math.round(characters * digitPx + sidesPx);

const columnPx = ({ widths }: SheetPlan, column: number): number => {
  const characters = widths[column];
  return characters === undefined ? plainColumnPx : columnPxOf(characters);
};

/** The width of a column in a plan. */
export const charactersOf = (px: number): number => Math.round(((px - sidesPx) / digitPx) * 10) / 10;

const widthPx = (plan: SheetPlan, { left, right }: Rectangle): number =>
  Array.from({ length: right - left + 1 }, (_, index) => columnPx(plan, left + index)).reduce((sum, px) => sum + px, 0);

/** Of the look of a cell that a state will stand in. */
const stateName = 'state';

/** Looks by name. A cell keeps the name: with the look in every cell a large sheet would be more than a browser keeps. */
export type Styles = Record<string, IStyleData>;

interface NamedStyle {
  readonly name: string;
  readonly style: IStyleData;
}

function styleOf({ role, format }: PlanCell, merged: boolean, state: boolean): NamedStyle {
  const isWrapped = merged && WRAPPED_WHEN_MERGED.includes(role);
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
  const merges = (plan.merged ?? []).map(rectangleOf);
  const states = (plan.stateRanges ?? []).map(rectangleOf);
  const cells: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, Partial<IRowData> & { h: number }> = {};
  for (const cell of plan.cells) {
    const place = cellPosition(cell.at);
    const { row, column } = place;
    const inside = (rectangle: Rectangle) => holds(rectangle, place);
    const merged = merges.find(inside);
    const { name, style } = styleOf(cell, merged !== undefined, states.some(inside));
    styles[name] = style;
    (cells[row] ??= {})[column] = cellData(cell, name);
    const width = widthPx(plan, merged ?? rectangleOf(cell.at));
    rowData[row] = { h: Math.max(rowData[row]?.h ?? 0, heightPx(cell, style, width)) };
  }
  if (states.length > 0) styles[stateName] = stateCell;
  for (const { row, column } of states.flatMap(placesIn)) (cells[row] ??= {})[column] ??= { s: stateName };
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
    mergeData: (plan.merged ?? []).map(rangeOf),
    ...(frozenRows > 0 && { freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 } }),
  };
}

/** Colours for the state words of a sheet. Rules by formula, since rules by text overlook the cells of a spilled table. */
export function stateRules({ stateRanges = [] }: Pick<SheetPlan, 'stateRanges'>): IConditionFormattingRule[] {
  return stateRanges.flatMap(range => {
    const { top, left } = rectangleOf(range);
    return Object.entries(stateLooks).map(([word, style]) => ({
      cfId: `${range} ${word}`,
      ranges: [rangeOf(range)],
      stopIfTrue: false,
      rule: {
        type: CFRuleType.highlightCell,
        subType: CFSubRuleType.formula,
        style,
        value: `=${address(top, left)}="${word}"`,
      },
    }));
  });
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
