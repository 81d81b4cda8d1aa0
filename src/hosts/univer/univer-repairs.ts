// Places where sheet engine 0.25.1 loses something that the bench needs. Each has a browser test.
import { DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY, type ICellData } from '@univerjs/core';
import {
  IDescriptionService,
  IEditorService,
  IShortcutService,
  KeyCode,
  SetFormulaCalculationResultMutation,
  type ISetFormulaCalculationResultMutation,
} from '@univerjs/preset-sheets-core';
import type { CellCustom } from './cells';
import { workbookId, type Sheets } from './sheets';
import { typedNow } from './typing';

/**
 * An answer replaces all that is kept with its cell: the note would be lost, and the message of an error that is gone would stay.
 * One that comes when its formula is gone, undone or typed over, would stand in the cell all the same.
 */
export function answersInTheirCells({ api, commands }: Sheets): void {
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const workbook = api.getWorkbook(workbookId)?.getWorkbook();
    for (const [sheetId, rows] of Object.entries((params as ISetFormulaCalculationResultMutation).unitData[workbookId] ?? {})) {
      const matrix = workbook?.getSheetBySheetId(sheetId)?.getCellMatrix();
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, cell] of Object.entries((columns ?? {}) as Record<string, ICellData | null>)) {
          const now = matrix?.getValue(Number(row), Number(column));
          const kept = now?.custom as CellCustom | null | undefined;
          if (!now?.f && !now?.si) delete columns?.[Number(column)];
          else if (cell && kept) cell.custom = { ...(kept.note !== undefined && { note: kept.note }), ...cell.custom };
        }
      }
    }
  });
}

/** The engine needs this long to open the edit after a click. */
const editOpensMs = 150;

/** A click in the formula bar opens the edit but leaves the focus in the in-cell editor, so that what is typed is lost. */
export function typingInTheFormulaBar({ api, injector }: Sheets): void {
  document.addEventListener(
    'pointerup',
    ({ target }) => {
      const isText = target instanceof Element && target.closest('canvas, [data-u-comp="editor"]')?.closest('[data-u-comp="formula-bar"]');
      if (!isText) return;
      setTimeout(() => {
        if (api.getWorkbook(workbookId)?.isCellEditing() !== true) return;
        const editors = injector.get(IEditorService);
        editors.focus(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY);
        editors.getEditor(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY)?.focus();
      }, editOpensMs);
    },
    true,
  );
}

/** Begins the names of the engine's commands for the keys of the list of suggestions. */
const suggestionKeys = 'sheet.formula-embedding-editor.search_function.';
/** The engine lists so many. */
const mostSuggestions = 10;

/**
 * The list of suggestions comes a while after the last key, and stays until after the next: Enter and Tab
 * would put a name of the list over what was typed since.
 * They take one only while what stands at the caret is its beginning; else they do what they do without a list.
 */
export function onlyFittingSuggestions(sheets: Sheets): void {
  const { injector, commands } = sheets;
  const descriptions = injector.get(IDescriptionService);
  const shortcuts = injector.get(IShortcutService);

  /** The name that ends at the caret, and all that stands around it. */
  function typed(): { readonly name: string; readonly after: string; readonly around: string } {
    const { text, caret, editor } = typedNow(sheets);
    const [name = ''] = /[\p{L}\p{N}._]*$/u.exec(text.slice(0, caret)) ?? [];
    const after = text.slice(caret);
    return { name, after, around: JSON.stringify([editor, text.slice(0, caret - name.length), after]) };
  }

  let listedFor = '';
  const list = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  // By the alphabet: the first one that fits a whole name is then that name itself.
  descriptions.getSearchListByNameFirstLetter = name => {
    listedFor = typed().around;
    return list(name).sort((a, b) => (a.name < b.name ? -1 : 1));
  };

  function isFitting(): boolean {
    const marked = document.querySelector('[data-u-comp="sheets-formula-editor"] > .univer-bg-gray-200 > :first-child')?.textContent ?? '';
    const { name, after, around } = typed();
    return marked !== '' && marked.toUpperCase().startsWith(name.toUpperCase()) && around === listedFor && !after.startsWith('(');
  }

  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = shortcut => {
    const takes = shortcut.id.startsWith(suggestionKeys) && (shortcut.binding === KeyCode.ENTER || shortcut.binding === KeyCode.TAB);
    if (!takes) return register(shortcut);
    // The mark would stay where it was in the list before.
    if (shortcut.binding === KeyCode.ENTER)
      for (let up = 0; up < mostSuggestions; up++) commands.syncExecuteCommand(shortcut.id, { keyCode: KeyCode.ARROW_UP });
    return register({ ...shortcut, preconditions: isFitting });
  };
}
