// Reads cells of the sheet engine, spilled ones included.
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import type { Cell } from '../../core/kinds';
import { address, holds, type Rectangle } from '../../sheet/addresses';
import type { SheetCell } from '../../sheet/port';
import { workbookId, type Sheets } from './sheets';
import { spillsOf } from './spills';
import type { ErrorNote } from './univer-adapter';

/** What the bench knows of a cell beyond what a task needs. */
export interface BenchCell extends SheetCell {
  /** The note that the plan gave the cell. */
  readonly note?: string;
}

/** Engine data that may be kept with a cell. */
export interface CellCustom {
  readonly note?: string;
  readonly error?: ErrorNote;
}

function valueOf(cell: Nullable<ICellData>): Cell | null {
  if (cell === null || cell === undefined) return null;
  const rich = cell.p?.body?.dataStream;
  if (rich !== undefined) return rich.replace(/\r\n$/, '');
  if (cell.v === null || cell.v === undefined) return null;
  return cell.t === CellValueType.BOOLEAN ? Boolean(cell.v) : cell.v;
}

/** Reader of the cells of one sheet. */
export function sheetReader(sheets: Sheets, sheetId: string) {
  const matrix = sheets.api.getWorkbook(workbookId)?.getWorkbook().getSheetBySheetId(sheetId)?.getCellMatrix();
  const spilled = sheets.formulas.getArrayFormulaCellData()[workbookId]?.[sheetId];
  const spills = spillsOf(sheets, sheetId).filter(({ row, column }) => matrix?.getValue(row, column)?.v !== '#SPILL!');

  function at(row: number, column: number): BenchCell {
    const own = matrix?.getValue(row, column);
    const custom = own?.custom as CellCustom | null | undefined;
    const value = valueOf(own) ?? valueOf(spilled?.[row]?.[column] as Nullable<ICellData>);
    const formula = sheets.formulas.getFormulaStringByCell(row, column, sheetId, workbookId);
    const anchor = spills.find(spill => holds(spill.area, { row, column }) && (spill.row !== row || spill.column !== column));
    return {
      value,
      ...(formula !== null && formula !== undefined && { formula }),
      ...(custom?.error !== undefined && custom.error.code === value && { message: custom.error.message }),
      ...(custom?.note !== undefined && { note: custom.note }),
      ...(anchor !== undefined && { spilledFrom: address(anchor.row, anchor.column) }),
    };
  }

  function rectangle({ top, left, bottom, right }: Rectangle): BenchCell[][] {
    return Array.from({ length: bottom - top + 1 }, (_row, row) =>
      Array.from({ length: right - left + 1 }, (_column, column) => at(top + row, left + column)),
    );
  }

  /** The rectangle from A1 that holds every cell with a value or a formula. */
  function used(): Rectangle | null {
    let bottom = -1;
    let right = -1;
    const reach = (row: number, column: number) => {
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    };
    matrix?.forValue((row, column, cell) => {
      if (valueOf(cell) !== null || cell?.f || cell?.si) reach(row, column);
    });
    for (const { area } of spills) reach(area.bottom, area.right);
    return bottom < 0 ? null : { top: 0, left: 0, bottom, right };
  }

  return { at, rectangle, used };
}
