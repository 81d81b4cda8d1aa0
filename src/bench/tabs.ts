// A row of tabs by the pattern that keyboards and screen readers know: arrows move and show, Tab leaves into what is shown.
import { byId } from './dom';

export interface Tabs {
  /** The tab that is shown. */
  current(): HTMLElement;
  /** Shows a tab as if it were clicked. */
  choose(tabId: string): void;
  /** Marks a tab whose content is shown already. */
  mark(tabId: string): void;
}

export function tabs(listId: string, chosen: (tab: HTMLElement) => void): Tabs {
  const list = byId(listId);
  const all = [...list.querySelectorAll<HTMLElement>('[role="tab"]')];
  const current = (): HTMLElement => all.find(tab => tab.ariaSelected === 'true') ?? list;

  function mark(marked: HTMLElement): void {
    for (const tab of all) {
      tab.ariaSelected = String(tab === marked);
      tab.tabIndex = tab === marked ? 0 : -1;
    }
  }

  function choose(tab: HTMLElement): void {
    mark(tab);
    chosen(tab);
  }

  for (const tab of all) tab.addEventListener('click', () => choose(tab));
  list.addEventListener('keydown', event => {
    const here = all.indexOf(current());
    const next = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: -1 }[event.key];
    const tab = next === undefined ? undefined : all.at(next % all.length);
    if (tab === undefined) return;
    event.preventDefault();
    tab.focus();
    choose(tab);
  });
  return { current, choose: tabId => choose(byId(tabId)), mark: tabId => mark(byId(tabId)) };
}
