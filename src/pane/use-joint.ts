// The selected cell, and the joint and the stack that it is about: followed while the pane is seen, and not otherwise.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Selection, SheetPort } from '../sheet/port';
import { type AtSelection, type Followed, Nearby, NOTHING_YET } from './nearby';
import { messageOf } from './pane-context';

/** @param showsJoint a view is open that needs what stands round the cell: for others nothing is read. */
export function useJoint(port: SheetPort | undefined, isSeen: boolean, showsJoint: boolean, say: (text: string) => void): Followed {
  const [selection, setSelection] = useState<Selection | null>(null);
  const [here, setHere] = useState<AtSelection>(NOTHING_YET);
  const latest = useRef<Selection | null>(null);
  const nearby = useRef<Nearby | undefined>(undefined);
  useEffect(() => {
    if (port === undefined || !isSeen) return undefined;
    let isOpen = true;
    const select = (now: Selection) => {
      latest.current = now;
      setSelection(now);
      nearby.current?.select(now);
    };
    const stop = port.watch({
      selected: select,
      changed(sheetName, area) {
        nearby.current?.changed(sheetName, area);
        // What a form has read of it is read again.
        setSelection(earlier => earlier && { ...earlier });
      },
      calculated: sheetName => nearby.current?.calculated(sheetName),
    });
    port.selection().then(
      now => isOpen && now !== null && select(now),
      (thrown: unknown) => say(messageOf(thrown)),
    );
    return () => {
      isOpen = false;
      stop();
    };
  }, [port, isSeen]);
  useEffect(() => {
    if (port === undefined || !isSeen || !showsJoint) return undefined;
    const fresh = new Nearby(port, setHere, thrown => say(messageOf(thrown)));
    nearby.current = fresh;
    if (latest.current !== null) fresh.select(latest.current);
    return () => {
      fresh.stop();
      nearby.current = undefined;
    };
  }, [port, isSeen, showsJoint]);
  return { ...here, selection };
}
