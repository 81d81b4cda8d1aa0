// Tabs by the pattern that keyboards and screen readers know: arrows move and show, Tab leaves into what is shown.
import { byId } from "./dom";

export interface Tabs {
  current(): HTMLElement;
  select(tabId: string): void;
}

/** @param shown is told the id of each panel that comes up. */
export function tabs(listId: string, shown: (panelId: string) => void): Tabs {
  const list = byId(listId);
  const all = [...list.querySelectorAll<HTMLElement>('[role="tab"]')];
  const panelOf = (tab: HTMLElement): string => tab.getAttribute("aria-controls") ?? "";
  const current = (): HTMLElement => all.find((tab) => tab.ariaSelected === "true") ?? list;

  function select(chosen: HTMLElement): void {
    for (const tab of all) {
      tab.ariaSelected = String(tab === chosen);
      tab.tabIndex = tab === chosen ? 0 : -1;
      byId(panelOf(tab)).hidden = tab !== chosen;
    }
    shown(panelOf(chosen));
  }

  for (const tab of all) tab.addEventListener("click", () => select(tab));
  list.addEventListener("keydown", (event) => {
    const here = all.indexOf(current());
    const next = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: -1 }[event.key];
    const tab = next === undefined ? undefined : all.at(next % all.length);
    if (tab === undefined) return;
    event.preventDefault();
    tab.focus();
    select(tab);
  });
  return { current, select: (tabId) => select(byId(tabId)) };
}
