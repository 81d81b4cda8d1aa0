// What is shown at a cell under the mouse: the message of its error, or its note.
import { InterceptorEffectEnum } from '@univerjs/core';
import { CellAlertManagerService, CellAlertType, INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { sheetReader, type CellCustom } from './cells';
import { noteMark } from './looks';
import { workbookId, type Sheets } from './sheets';

/** The engine's own box over an error cell, with its key: a box under the same key takes its place. */
const alertKey = 'SHEET_FORMULA_ALERT';
/** The engine shows its box after 100 ms. */
const afterTheirsMs = 200;

/** Shows the message of an error, or the note of the cell, at the cell. */
export function cellBoxes(sheets: Sheets): void {
  const { api, injector } = sheets;
  let timer = 0;
  api.addEvent(api.Event.CellHover, ({ row, column }) => {
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      const sheet = api.getWorkbook(workbookId)?.getActiveSheet();
      if (!sheet) return;
      const { value, message, note } = sheetReader(sheets, sheet.getSheetId()).at(row, column);
      const text = message ?? note;
      if (text === undefined) return;
      injector.get(CellAlertManagerService).showAlert({
        type: message === undefined ? CellAlertType.INFO : CellAlertType.ERROR,
        title: message === undefined ? 'Note' : String(value),
        message: text,
        width: 280,
        height: 90,
        key: alertKey,
        location: { unitId: workbookId, subUnitId: sheet.getSheetId(), row, col: column },
      });
    }, afterTheirsMs);
  });
}

/** A mark in the corner of each cell that has a note. */
export function markNotes({ injector }: Sheets): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    handler: (cell, { rawData }, next) => {
      const { note } = (rawData?.custom ?? {}) as CellCustom;
      return next(note === undefined ? cell : { ...cell, markers: { ...cell?.markers, tr: noteMark } });
    },
  });
}
