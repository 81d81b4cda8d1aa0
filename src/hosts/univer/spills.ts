// Tables that one formula fills: where they lie, and how their cells look.
import { InterceptorEffectEnum, type IRange } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { holds, type Place, type Rectangle } from '../../sheet/addresses';
import { rectangleOf } from './addresses';
import { workbookId, type Sheets } from './sheets';

/** The cell with the formula, and the whole table. */
export interface Spill extends Place {
  readonly area: Rectangle;
}

export function spillsOf({ formulas }: Sheets, sheetId: string): Spill[] {
  return Object.entries(formulas.getArrayFormulaRange()[workbookId]?.[sheetId] ?? {}).flatMap(([row, columns]) =>
    Object.entries(columns ?? {}).map(([column, range]) => ({
      row: Number(row),
      column: Number(column),
      area: rectangleOf(range as IRange),
    })),
  );
}

/** After the engine has put the value in (100), before it formats numbers. */
const priority = 90;

/** A cell that has no look of its own takes that of the formula's cell, number format included. */
export function dressSpills(sheets: Sheets): void {
  sheets.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style,
    handler: (cell, { row, col, subUnitId, worksheet }, next) => {
      if (cell?.s || !sheets.formulas.getArrayFormulaCellData()[workbookId]?.[subUnitId]?.[row]?.[col]) return next(cell);
      const spill = spillsOf(sheets, subUnitId).find(({ area }) => holds(area, { row, column: col }));
      const look = spill && worksheet.getCellRaw(spill.row, spill.column)?.s;
      return next(look ? { ...cell, s: look } : cell);
    },
  });
}
