// The joint of the selected cell, read anew with every selection.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Selection, SheetPort } from "../sheet/port";
import { Joints, type JointHere } from "./find-joint";
import { messageOf } from "./shared";
import { readSheets, type Grid } from "./workbook";

/** A cell that is about no joint leaves the last one in sight. Other sheets are read when the sheet is left. */
export function useJoint(port: SheetPort | undefined, selection: Selection | null, isWatched: boolean, say: (text: string) => void): JointHere {
  const [found, setFound] = useState<JointHere>(undefined);
  const grids = useRef<ReadonlyMap<string, Grid>>(new Map());
  const sheet = useRef<string | undefined>(undefined);
  const shown = useRef<Selection | null>(null);
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
      const joints = new Joints(grids.current);
      const here = selection === null ? undefined : joints.at(selection);
      if (here !== undefined) shown.current = selection;
      setFound(here ?? (shown.current === null ? undefined : joints.at(shown.current)) ?? joints.first() ?? null);
    };
    read().catch((thrown: unknown) => isWanted && say(messageOf(thrown)));
    return () => { isWanted = false; };
  }, [port, selection, isWatched]);
  return found;
}
