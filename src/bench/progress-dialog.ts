// A job that takes longer than half a second shows that it runs, and can be stopped.
import { byId, whenClosed } from './dom';
import type { Running } from '../files/jobs';

const patienceMs = 500;

export async function withProgress<T>(words: string, { done, stop }: Running<T>): Promise<T | undefined> {
  const dialog = byId<HTMLDialogElement>('busy');
  byId('busy-words').textContent = words;
  const timer = setTimeout(() => dialog.showModal(), patienceMs);
  const leave = whenClosed(dialog, stop);
  try {
    return await done;
  } finally {
    clearTimeout(timer);
    leave();
    dialog.close();
  }
}
