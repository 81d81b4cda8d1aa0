// The selected cell, and the joint and the stack that it is about: followed while the pane is seen, and not otherwise.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Selection, SheetPort } from '../sheet/port';
import { type AtSelection, type Followed, NOTHING_YET, SETTLED_MS } from './followed';
import type { Nearby } from './nearby';
import { messageOf } from './pane-context';

/** What follows the cell, fetched when the pane stands. */
export const toFollow = () => import(/* webpackChunkName: "view-nearby" */ './nearby');

/** @param showsJoint a view is open that needs what stands round the cell: for others nothing is read. */
export function useJoint(port: SheetPort | undefined, isSeen: boolean, showsJoint: boolean, say: (text: string) => void): Followed {
  const [selection, setSelection] = useState<Selection | null>(null);
  const [here, setHere] = useState<AtSelection>(NOTHING_YET);
  const [edits, setEdits] = useState(0);
  const latest = useRef<Selection | null>(null);
  const nearby = useRef<Nearby | undefined>(undefined);
  useEffect(() => {
    if (port === undefined || !isSeen) return undefined;
    let isOpen = true;
    let settling: ReturnType<typeof setTimeout> | undefined;
    const edited = () => setEdits(earlier => earlier + 1);
    const select = (now: Selection) => {
      latest.current = now;
      setSelection(now);
      nearby.current?.select(now);
    };
    const stop = port.watch({
      selected: select,
      changed(sheetName, area) {
        nearby.current?.changed(sheetName, area);
        edited();
      },
      gone: sheetName => nearby.current?.gone(sheetName),
      calculated(sheetName) {
        nearby.current?.calculated(sheetName);
        clearTimeout(settling);
        settling = setTimeout(edited, SETTLED_MS);
      },
    });
    port.selection().then(
      now => isOpen && now !== null && select(now),
      (thrown: unknown) => say(messageOf(thrown)),
    );
    return () => {
      isOpen = false;
      clearTimeout(settling);
      stop();
    };
  }, [port, isSeen]);
  useEffect(() => {
    // from now on nobody says what becomes of what was read before
    setHere(earlier => (earlier.known.size === 0 ? earlier : { ...earlier, known: NOTHING_YET.known }));
    if (port === undefined || !isSeen || !showsJoint) return undefined;
    const failed = (thrown: unknown) => say(messageOf(thrown));
    let isOpen = true;
    toFollow().then(({ Nearby: Following }) => {
      if (!isOpen) return;
      const fresh = new Following(port, setHere, failed);
      nearby.current = fresh;
      if (latest.current !== null) fresh.select(latest.current);
    }, failed);
    return () => {
      isOpen = false;
      nearby.current?.stop();
      nearby.current = undefined;
    };
  }, [port, isSeen, showsJoint]);
  return { ...here, selection, edits };
}
