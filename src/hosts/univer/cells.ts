// Reads cells of the sheet engine, spilled ones included.
import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import type { Cell } from '../../core/kinds';
import type { SheetCell } from '../../sheet/port';
import { holds, nameOf, type Rectangle } from './addresses';
import { workbookId, type Sheets } from './sheets';
import { spillsOf } from './spills';
import type { ErrorNote } from './univer-adapter';

/** What the bench knows of a cell beyond what a task needs. */
export interface BenchCell extends SheetCell {
  /** The note that the plan gave the cell. */
  readonly note?: string;
  /** The cell whose formula spilled into this one: `F3`. */
  readonly spilledFrom?: string;
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
    const anchor = spills.find(spill => holds(spill.range, row, column) && (spill.row !== row || spill.column !== column));
    return {
      value,
      ...(formula !== null && formula !== undefined && { formula }),
      ...(custom?.error !== undefined && custom.error.code === value && { message: custom.error.message }),
      ...(custom?.note !== undefined && { note: custom.note }),
      ...(anchor !== undefined && { spilledFrom: nameOf({ startRow: anchor.row, startColumn: anchor.column }) }),
    };
  }

  function rectangle({ startRow, startColumn, endRow, endColumn }: Rectangle): BenchCell[][] {
    return Array.from({ length: endRow - startRow + 1 }, (_row, row) =>
      Array.from({ length: endColumn - startColumn + 1 }, (_column, column) => at(startRow + row, startColumn + column)),
    );
  }

  /** The rectangle from A1 that holds every cell with a value or a formula. */
  function used(): Rectangle | null {
    let endRow = -1;
    let endColumn = -1;
    const reach = (row: number, column: number) => {
      endRow = Math.max(endRow, row);
      endColumn = Math.max(endColumn, column);
    };
    matrix?.forValue((row, column, cell) => {
      if (valueOf(cell) !== null || cell?.f || cell?.si) reach(row, column);
    });
    for (const { range } of spills) reach(range.endRow, range.endColumn);
    return endRow < 0 ? null : { startRow: 0, startColumn: 0, endRow, endColumn };
  }

  return { at, rectangle, used };
}
