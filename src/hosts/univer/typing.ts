// What is being typed into a cell, in the grid or in the formula bar, with the place of the caret.
import { IEditorService } from '@univerjs/preset-sheets-core';
import type { Typed } from '../../sheet/port';
import { workbookId, type Sheets } from './sheets';

/** A key was pressed, the caret moved, or the edit began or ended. */
const isTyping = (id: string): boolean => id.startsWith('doc.') || id.startsWith('sheet.operation.set-cell-edit-visible');

/** What stands at the caret of the text that has the keyboard. */
export function typedNow({ injector }: Sheets): Typed & { readonly editor: string } {
  const editor = injector.get(IEditorService).getFocusEditor();
  const text = editor?.getDocumentData().body?.dataStream ?? '';
  return { text: text.replace(/\r\n$/, ''), caret: editor?.getSelectionRanges()[0]?.startOffset ?? 0, editor: editor?.getEditorId() ?? '' };
}

/** Answers how to stop. */
export function watchTyping(sheets: Sheets, listener: (typed: Typed | null) => void): () => void {
  let isWaiting = false;
  let told: Typed | null = null;
  const tell = () => {
    isWaiting = false;
    const { text, caret } = typedNow(sheets);
    const isOpen = sheets.api.getWorkbook(workbookId)?.isCellEditing() === true && text !== '';
    const now = isOpen ? { text, caret } : null;
    if (now?.text === told?.text && now?.caret === told?.caret) return;
    told = now;
    listener(now);
  };
  // The editor holds what was typed only after the command.
  const watching = sheets.commands.onCommandExecuted(({ id }) => {
    if (isWaiting || !isTyping(id)) return;
    isWaiting = true;
    setTimeout(tell);
  });
  return () => {
    watching.dispose();
  };
}
