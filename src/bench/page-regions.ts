// F6 goes from part to part of the page: the grid keeps the Tab key for itself.
import { byId } from './dom';

/** @param tab the tab that is shown. */
export function pageRegions(tab: () => HTMLElement): void {
  const sheet = byId('sheet');
  let inSheet: HTMLElement | null = null;
  sheet.addEventListener('focusin', ({ target }) => {
    inSheet = target instanceof HTMLElement ? target : null;
  });
  const stops = [
    { part: sheet, focus: () => inSheet?.focus() },
    { part: byId('panel'), focus: () => tab().focus() },
    { part: document.querySelector('header'), focus: () => byId('open').focus() },
  ];
  document.addEventListener(
    'keydown',
    event => {
      if (event.key !== 'F6') return;
      event.preventDefault();
      const here = stops.findIndex(({ part }) => part?.contains(document.activeElement));
      stops[(here + (event.shiftKey ? stops.length - 1 : 1)) % stops.length]?.focus();
    },
    true,
  );
}
