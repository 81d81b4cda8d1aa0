// The workbooks that this browser keeps, and what a new one begins with.
import { GUIDES, type Guide } from '../demo/guides';
import { TEMPLATES } from '../demo/templates';
import type { Words } from '../words/english';
import { ask } from './message-dialog';
import { byId, element, whenClosed } from './dom';
import type { Shelved } from './workbook-store';

export interface Workbooks {
  shelf(): readonly Shelved[];
  name(): string;
  rename(name: string): void;
  open(key: string): void;
  begin(guide: Guide): void;
  discard(shelved: Shelved): void;
}

export function workbooksDialog(workbooks: Workbooks, { bench: W, sheets }: Pick<Words, 'bench' | 'sheets'>): void {
  const nameOf = (shelved: Shelved): string => shelved.kept?.workbook.name ?? W.unreadable;
  const dialog = byId<HTMLDialogElement>('workbooks-dialog');
  const name = byId<HTMLInputElement>('workbook-name');

  function button(words: string, act: () => void): HTMLButtonElement {
    const made = element('button', words);
    // Enter in the field of the name must close the dialog and open nothing.
    made.type = 'button';
    made.addEventListener('click', act);
    return made;
  }
  const listed = (guide: Guide): HTMLLIElement =>
    element(
      'li',
      button(sheets.guide(guide).title, () => dialog.close(`new ${guide.name}`)),
      element('p', sheets.guide(guide).sentence),
    );
  byId('templates-list').append(...TEMPLATES.map(listed));
  byId('guides-list').append(...GUIDES.map(listed));

  function kept(shelved: Shelved): HTMLLIElement {
    const open = button(nameOf(shelved), () => dialog.close(`open ${shelved.key}`));
    const drop = button(W.discard, () => void discard(shelved));
    drop.ariaLabel = W.discardOf(nameOf(shelved));
    const { keptAt = '' } = shelved.kept ?? {};
    const words = W.shelved(keptAt === '' ? undefined : new Date(keptAt), Math.ceil(shelved.text.length / 1000));
    return element('li', open, drop, element('p', words));
  }

  function list(): void {
    const others = workbooks.shelf().filter(({ isHere }) => !isHere);
    byId('kept-list').replaceChildren(...others.map(kept));
    byId('kept-none').hidden = others.length > 0;
  }

  async function discard(shelved: Shelved): Promise<void> {
    const agreed = await ask({
      title: W.discardAsked(nameOf(shelved)),
      lines: [W.noWayBack],
      yes: W.discardYes,
      no: W.discardNo,
    });
    if (!agreed) return;
    workbooks.discard(shelved);
    list();
    name.focus();
  }

  byId('workbooks').addEventListener('click', () => {
    name.value = workbooks.name();
    list();
    dialog.returnValue = '';
    dialog.showModal();
    whenClosed(dialog, returnValue => {
      const wanted = name.value.trim();
      if (wanted !== '' && wanted !== workbooks.name()) workbooks.rename(wanted);
      const [, what, of] = /^(open|new) (.+)$/.exec(returnValue) ?? [];
      if (what === 'open' && of !== undefined) workbooks.open(of);
      const guide = what === 'new' ? [...TEMPLATES, ...GUIDES].find(each => each.name === of) : undefined;
      if (guide !== undefined) workbooks.begin(guide);
    });
  });
}
