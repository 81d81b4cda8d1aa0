// The joint and the stack of the selected cell, read anew with every selection.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Selection, SheetPort } from '../sheet/port';
import { Joints, type JointHere } from './find-joint';
import { Stacks, type Stack } from './find-stack';
import { messageOf } from './pane-context';
import { readSheets, sourceOf, type Grid } from './workbook';

export interface AtSelection {
  readonly found: JointHere;
  readonly stack: Stack | undefined;
}

/** A cell that is about neither leaves the last one in sight. Other sheets are read when the sheet is left. */
export function useJoint(
  port: SheetPort | undefined,
  selection: Selection | null,
  isWatched: boolean,
  say: (text: string) => void,
): AtSelection {
  const [found, setFound] = useState<AtSelection>({ found: undefined, stack: undefined });
  const grids = useRef<ReadonlyMap<string, Grid>>(new Map());
  const sheet = useRef<string | undefined>(undefined);
  const shown = useRef<Selection | null>(null);
  const shownStack = useRef<Selection | null>(null);
  useEffect(() => {
    if (port === undefined || !isWatched) return undefined;
    let isWanted = true;
    const read = async () => {
      const isSame = selection !== null && selection.sheetName === sheet.current;
      const names = isSame ? [selection.sheetName] : await port.sheetNames();
      const fresh = await readSheets(port, names);
      if (!isWanted) return;
      grids.current = isSame ? new Map([...grids.current, ...fresh]) : fresh;
      sheet.current = selection?.sheetName;
      const source = sourceOf(grids.current);
      const joints = new Joints(grids.current, source);
      const stacks = new Stacks(grids.current, source);
      const here = selection === null ? undefined : joints.at(selection);
      if (here !== undefined) shown.current = selection;
      const isStack = selection !== null && !joints.holds(selection) && stacks.at(selection) !== undefined;
      if (isStack || here !== undefined) shownStack.current = isStack ? selection : null;
      setFound({
        found: here ?? (shown.current === null ? undefined : joints.at(shown.current)) ?? joints.first() ?? null,
        stack: shownStack.current === null ? undefined : stacks.at(shownStack.current),
      });
    };
    read().catch((thrown: unknown) => isWanted && say(messageOf(thrown)));
    return () => {
      isWanted = false;
    };
  }, [port, selection, isWatched]);
  return found;
}
