// The workbooks in the store of this browser, which all its tabs share, and those that could not be opened.
import type { Snapshot } from '../hosts/univer/snapshot';
import { format, readStored, type Kept, type StoredWorkbook } from './stored-format';

/** The first one's; the next ones have a number behind. */
const firstKey = 'bosswright.workbook';
/** A workbook that was put aside is never overwritten either. */
const asideKey = 'bosswright.workbook.unreadable';
/** Which workbook a tab that is new opens. */
const lastKey = 'bosswright.last';
/** Which workbook this tab has open, kept through a reload. */
const sessionKey = 'bosswright.here';

/** The workbook of this tab. */
let key = firstKey;
/** What this tab has read or written last of it: another text in the store is from another tab. */
let known: string | null = null;

function freeOf(first: string): string {
  let free = first;
  for (let number = 2; localStorage.getItem(free) !== null; number++) free = `${first}.${number}`;
  return free;
}

const numbered = (first: string): string[] =>
  Object.keys(localStorage)
    .filter(each => each === first || (each.startsWith(`${first}.`) && /^\d+$/.test(each.slice(first.length + 1))))
    .sort((a, b) => a.length - b.length || (a < b ? -1 : 1));

/** From here on this tab has that workbook. */
export function turnTo(workbookKey: string): void {
  key = workbookKey;
  known = null;
  sessionStorage.setItem(sessionKey, key);
}

/** A place that is free, for a workbook that this tab begins. */
export const turnToFree = (): void => turnTo(freeOf(firstKey));

/** The workbook that this tab had, else the one kept last, else the first that is there. */
export function turnToLast(): void {
  const here = sessionStorage.getItem(sessionKey);
  const last = localStorage.getItem(lastKey);
  turnTo(here ?? (last !== null && localStorage.getItem(last) !== null ? last : (numbered(firstKey)[0] ?? firstKey)));
}

/** Which workbook this tab has. */
export const hereKey = (): string => key;

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
  localStorage.setItem(lastKey, key);
  known = text;
}

export function forget(): void {
  localStorage.removeItem(key);
  known = null;
}

export const keptText = (): string => localStorage.getItem(key) ?? '';

export interface Shelved {
  readonly key: string;
  readonly text: string;
  /** Left out where it cannot be read. */
  readonly kept?: Kept;
  readonly isHere: boolean;
}

/** All workbooks that are kept, the latest first. */
export function shelf(): Shelved[] {
  const all = numbered(firstKey).map((each): Shelved => {
    const text = localStorage.getItem(each) ?? '';
    const read = readStored(text);
    return { key: each, text, ...(read.is === 'workbook' && { kept: read.kept }), isHere: each === key };
  });
  return all.sort((a, b) => ((a.kept?.keptAt ?? '') < (b.kept?.keptAt ?? '') ? 1 : -1));
}

/** Moves a workbook that could not be opened out of the way. False without room or where the browser refuses: it is left as it was. */
export function setAside(): boolean {
  try {
    const text = localStorage.getItem(key);
    if (text === null) return true;
    const free = freeOf(asideKey);
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
    return numbered(asideKey).map(each => ({ key: each, text: localStorage.getItem(each) ?? '' }));
  } catch {
    return [];
  }
}

/** For good: one that was put aside, or one from the shelf. */
export function discard({ key: unwanted }: { readonly key: string }): void {
  localStorage.removeItem(unwanted);
}

/** Tells when another tab has changed what this one has open. */
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
