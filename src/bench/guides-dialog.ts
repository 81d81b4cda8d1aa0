// The list of guides: one is chosen, agreed to, and opened.
import { GUIDES, type Guide } from '../demo/guides';
import { ask } from './message-dialog';
import { byId, element, whenClosed } from './dom';

function listed({ name, title, sentence }: Guide): HTMLLIElement {
  const open = element('button', title);
  open.value = name;
  return element('li', open, element('p', sentence));
}

/** @returns what was chosen; undefined if the list was closed. */
function chosen(): Promise<Guide | undefined> {
  const dialog = byId<HTMLDialogElement>('guides-dialog');
  dialog.returnValue = '';
  dialog.showModal();
  return new Promise(resolve => whenClosed(dialog, returnValue => resolve(GUIDES.find(({ name }) => name === returnValue))));
}

export function guidesDialog(open: (guide: Guide) => void): void {
  byId('guides-list').append(...GUIDES.map(listed));

  async function offer(): Promise<void> {
    const guide = await chosen();
    if (guide === undefined) return;
    const agreed = await ask({
      title: guide.title,
      lines: [
        'It takes the place of the sheets that are open now; your changes in this browser are discarded. Save them first ' +
          'if you still need them.',
      ],
      yes: 'Open the guide',
      no: 'Keep my workbook',
    });
    if (agreed) open(guide);
  }
  byId('guides').addEventListener('click', () => void offer());
}
