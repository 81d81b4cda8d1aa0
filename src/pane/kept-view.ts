// How the pane was left the last time, by the storage helper. Of it only get and set keep their word.
import type { KeptView } from './pane-services';

const STORED = 'bosswright';

export async function keptView(): Promise<KeptView | undefined> {
  try {
    const { Storage, StorageType } = await import(/* webpackChunkName: "view-kept" */ '@microsoft/office-js-helpers');
    const kept = new Storage<string>(STORED, StorageType.LocalStorage);
    return { get: key => kept.get(key) ?? null, set: (key, value) => void kept.set(key, value) };
  } catch {
    // A browser may refuse storage to a page in a frame, as Excel on the web is.
    return undefined;
  }
}
