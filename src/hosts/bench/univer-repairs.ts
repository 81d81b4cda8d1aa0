// Places where sheet engine 0.25.1 loses something that the bench needs. Each has a browser test.
import { DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY, type ICellData } from "@univerjs/core";
import { IEditorService, SetFormulaCalculationResultMutation, type ISetFormulaCalculationResultMutation } from "@univerjs/preset-sheets-core";
import type { CellCustom } from "./cells";
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

/** The engine needs this long to open the edit after a click. */
const editOpensMs = 150;

/** A click in the formula bar opens the edit but leaves the focus in the in-cell editor, so that what is typed is lost. */
export function typingInTheFormulaBar({ api, injector }: Sheets): void {
  document.addEventListener("pointerup", ({ target }) => {
    const isText = target instanceof Element && target.closest('canvas, [data-u-comp="editor"]')?.closest('[data-u-comp="formula-bar"]');
    if (!isText) return;
    setTimeout(() => {
      if (api.getWorkbook(workbookId)?.isCellEditing() !== true) return;
      const editors = injector.get(IEditorService);
      editors.focus(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY);
      editors.getEditor(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY)?.focus();
    }, editOpensMs);
  }, true);
}
