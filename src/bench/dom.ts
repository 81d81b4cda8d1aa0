// Short hands for the page.

export function byId<E extends HTMLElement = HTMLElement>(id: string): E {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no element "${id}"`);
  return found as E;
}

export function element<K extends keyof HTMLElementTagNameMap>(name: K, ...children: (Node | string)[]): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.append(...children);
  return made;
}

export const messageOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

/** Calls once when the dialog is closed; returns how to leave it. The event comes late: the dialog may be open again for something else. */
export function whenClosed(dialog: HTMLDialogElement, then: (returnValue: string) => void): () => void {
  const leave = () => dialog.removeEventListener('close', closed);
  function closed(): void {
    if (dialog.open) return;
    leave();
    then(dialog.returnValue);
  }
  dialog.addEventListener('close', closed);
  return leave;
}
