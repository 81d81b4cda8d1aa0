// Apart from the names of the sheet engine, which the page reads before the engine is there.
import { IUndoRedoService } from '@univerjs/core';
import { workbookId, type Sheets } from './sheets';

/** All that is done is taken back by one undo. */
export function inOneStep({ injector }: Sheets, act: () => void): void {
  const step = injector.get(IUndoRedoService).__tempBatchingUndoRedo(workbookId);
  try {
    act();
  } finally {
    step.dispose();
  }
}
