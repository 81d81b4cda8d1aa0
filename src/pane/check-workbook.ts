// A workbook gone through: its joints by state, and the problems in its formulas.
import { stateOf, verdict } from '../joint/verdict';
import { WORST_FIRST, type State } from '../core/check/check';
import type { SheetPort } from '../sheet/port';
import type { Words } from '../words/english';
import { Joints, type LocatedJoint } from './find-joint';
import { problemsOf, type Problem } from './problems';
import type { Grid } from './workbook';

export interface WorkbookCheck {
  /** Worst first. */
  readonly joints: readonly { readonly joint: LocatedJoint; readonly state: State; readonly reason: string }[];
  readonly problems: readonly Problem[];
  /** It was stopped before all sheets were read. */
  readonly isPartial: boolean;
}

/** @param step told after each sheet; false stops. */
export async function checkWorkbook(
  port: SheetPort,
  W: Words['check'],
  step: (done: number, of: number) => boolean,
): Promise<WorkbookCheck> {
  const names = await port.sheetNames();
  const grids = new Map<string, Grid>();
  for (const name of names) {
    if (!step(grids.size, names.length)) break;
    grids.set(name, await port.read(name));
  }
  const found = new Joints(grids).all();
  const joints = found.flatMap(one =>
    one.is === 'joint'
      ? [{ joint: one.joint, state: stateOf(one.joint.variant), reason: String(verdict(one.joint.variant, 'reason')) }]
      : [],
  );
  return {
    joints: joints.sort((a, b) => WORST_FIRST.indexOf(a.state) - WORST_FIRST.indexOf(b.state)),
    problems: problemsOf(grids, W),
    isPartial: grids.size < names.length,
  };
}
