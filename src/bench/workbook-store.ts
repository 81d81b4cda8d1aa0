// The workbook in the store of this browser, which all its tabs share, and those that could not be opened.
import type { Snapshot } from '../hosts/univer/snapshot';
import { format, readStored, type Kept, type StoredWorkbook } from './stored-format';

const key = 'bosswright.workbook';
/** The next ones have a number behind: a workbook that was put aside is never overwritten. */
const asideKey = 'bosswright.workbook.unreadable';

/** What this tab has read or written last: another text in the store is from another tab. */
let known: string | null = null;

/** What is kept; null if nothing is. */
export function readKept(): StoredWorkbook | null {
  known = localStorage.getItem(key);
  return known === null ? null : readStored(known);
}

export const isOfAnotherTab = (): boolean => localStorage.getItem(key) !== known;

/** From here on what another tab has kept may be overwritten. */
export function takeOver(): void {
  known = localStorage.getItem(key);
}

export function keep(workbook: Snapshot, demo: string): void {
  const text = JSON.stringify({ format, demo, keptAt: new Date().toISOString(), workbook } satisfies Kept);
  localStorage.setItem(key, text);
  known = text;
}

export function forget(): void {
  localStorage.removeItem(key);
  known = null;
}

export const keptText = (): string => localStorage.getItem(key) ?? '';

/** Moves a workbook that could not be opened out of the way. False without room or where the browser refuses: it is left as it was. */
export function setAside(): boolean {
  try {
    const text = localStorage.getItem(key);
    if (text === null) return true;
    let free = asideKey;
    for (let number = 2; localStorage.getItem(free) !== null; number++) free = `${asideKey}.${number}`;
    // Most stores have no room for two.
    localStorage.removeItem(key);
    try {
      localStorage.setItem(free, text);
    } catch (thrown) {
      localStorage.setItem(key, text);
      throw thrown;
    }
    known = null;
    return true;
  } catch {
    return false;
  }
}

export interface Aside {
  readonly key: string;
  readonly text: string;
}

/** All that was put aside, in order; none where the browser refuses. */
export function putAside(): Aside[] {
  try {
    const keys = Object.keys(localStorage).filter(each => each === asideKey || each.startsWith(`${asideKey}.`));
    return keys
      .sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
      .map(each => ({ key: each, text: localStorage.getItem(each) ?? '' }));
  } catch {
    return [];
  }
}

export function discardAside({ key: aside }: Aside): void {
  localStorage.removeItem(aside);
}

/** Tells when another tab has changed what is kept. */
export function onOtherTab(listener: () => void): void {
  addEventListener('storage', event => {
    if (event.storageArea === localStorage && (event.key === key || event.key === null) && isOfAnotherTab()) listener();
  });
}

/** A short mark that changes with the text (FNV-1a). */
export function markOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  return (hash >>> 0).toString(16);
}
