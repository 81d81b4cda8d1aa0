// Places where sheet engine 0.25.1 loses something that the bench needs. Each has a browser test.
import { DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY, type ICellData } from "@univerjs/core";
import {
  CellAlertManagerService, CellAlertType, IEditorService, SetFormulaCalculationResultMutation, type ISetFormulaCalculationResultMutation,
} from "@univerjs/preset-sheets-core";
import { sheetReader, type CellCustom } from "./cells";
import { workbookId, type Sheets } from "./sheets";

/** An answer replaces all that is kept with its cell: the note would be lost, and the message of an error that is gone would stay. */
export function keepCellNotes({ api, commands }: Sheets): void {
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const workbook = api.getWorkbook(workbookId)?.getWorkbook();
    for (const [sheetId, rows] of Object.entries((params as ISetFormulaCalculationResultMutation).unitData[workbookId] ?? {})) {
      const matrix = workbook?.getSheetBySheetId(sheetId)?.getCellMatrix();
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, cell] of Object.entries((columns ?? {}) as Record<string, ICellData | null>)) {
          const kept = matrix?.getValue(Number(row), Number(column))?.custom as CellCustom | null | undefined;
          if (cell && kept) cell.custom = { ...(kept.note !== undefined && { note: kept.note }), ...cell.custom };
        }
      }
    }
  });
}

/** The engine's own box over an error cell, with its key: a box under the same key takes its place. */
const alertKey = "SHEET_FORMULA_ALERT";
/** The engine shows its box after 100 ms. */
const afterTheirsMs = 200;

/** Shows our message, or the note of the cell, in the box at the cell. */
export function errorBox(sheets: Sheets): void {
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
        title: message === undefined ? "Note" : String(value),
        message: text,
        width: 280,
        height: 90,
        key: alertKey,
        location: { unitId: workbookId, subUnitId: sheet.getSheetId(), row, col: column },
      });
    }, afterTheirsMs);
  });
}

/** The engine needs this long to open the edit after a click. */
const editOpensMs = 150;

/** A click in the formula bar opens the edit but leaves the focus in the in-cell editor, so that what is typed is lost. */
export function typingInTheFormulaBar({ api, injector }: Sheets): void {
  document.addEventListener("pointerup", ({ target }) => {
    if (!(target instanceof Element) || target.closest('[data-u-comp="formula-bar"]') === null) return;
    setTimeout(() => {
      if (api.getWorkbook(workbookId)?.isCellEditing() !== true) return;
      const editors = injector.get(IEditorService);
      editors.focus(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY);
      editors.getEditor(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY)?.focus();
    }, editOpensMs);
  }, true);
}
