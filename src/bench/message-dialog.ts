// One dialog that asks or tells.
import type { Words } from '../words/english';
import { byId, element, whenClosed } from './dom';

interface Message {
  readonly title: string;
  readonly lines: readonly string[];
}

function open({ title, lines }: Message, buttons: readonly HTMLButtonElement[]): Promise<string> {
  const dialog = byId<HTMLDialogElement>('ask');
  byId('ask-title').textContent = title;
  byId('ask-lines').replaceChildren(...lines.map(line => element('p', line)));
  byId('ask-buttons').replaceChildren(...buttons);
  dialog.returnValue = '';
  dialog.showModal();
  return new Promise(resolve => whenClosed(dialog, resolve));
}

function button(words: string, value: string): HTMLButtonElement {
  const made = element('button', words);
  made.value = value;
  return made;
}

/** Escape means no. */
export async function ask({ yes, no, ...words }: Message & { readonly yes: string; readonly no: string }): Promise<boolean> {
  const agree = button(yes, 'yes');
  agree.className = 'strong';
  return (await open(words, [button(no, 'no'), agree])) === 'yes';
}

export async function tell(message: Message, { page }: Words['bench']): Promise<void> {
  await open(message, [button(page.close, '')]);
}
