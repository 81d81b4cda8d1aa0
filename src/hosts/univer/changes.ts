// What happens in the sheets, told once for all that one action does.
import type { Sheets } from './sheets';

/** The selection moved, or something on a sheet is another than before. */
const isChange = (id: string): boolean =>
  id.startsWith('sheet.mutation.') ||
  id.startsWith('formula.mutation.') ||
  id === 'sheet.operation.set-selections' ||
  id === 'sheet.operation.set-worksheet-active';

/** Answers how to stop. */
export function onChange({ commands }: Sheets, listener: () => void): () => void {
  let isWaiting = false;
  let isWatching = true;
  const watching = commands.onCommandExecuted(({ id }) => {
    if (isWaiting || !isChange(id)) return;
    isWaiting = true;
    queueMicrotask(() => {
      isWaiting = false;
      if (isWatching) listener();
    });
  });
  return () => {
    isWatching = false;
    watching.dispose();
  };
}
