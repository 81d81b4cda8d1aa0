// What can be measured on a moulded part: sizes of the joint and results of single calls, with the tolerance that the same call has.
import type { InputName } from '../../joint/inputs';

export type Method = 'pin gauge' | 'calliper' | 'depth gauge' | 'coordinate measuring' | 'section cut';

export interface Measuring {
  readonly method: Method;
  /** The input that holds its tolerance. */
  readonly tolerance?: InputName;
}

/** By the name in the joint; what follows from two others is not measured beside them. */
export const SIZES_OF_JOINT: Readonly<Record<string, Measuring>> = {
  'board plane': { method: 'coordinate measuring', tolerance: 'board plane tolerance' },
  seat: { method: 'depth gauge', tolerance: 'seat tolerance' },
  hole: { method: 'pin gauge', tolerance: 'hole tolerance' },
  'recess diameter': { method: 'pin gauge' },
  'recess depth': { method: 'depth gauge' },
  'cone angle': { method: 'coordinate measuring' },
  'post OD': { method: 'calliper' },
  sleeve: { method: 'depth gauge', tolerance: 'sleeve tolerance' },
  'sleeve OD': { method: 'calliper' },
  'pilot mouth': { method: 'pin gauge', tolerance: 'pilot tolerance' },
  'insert hole': { method: 'pin gauge', tolerance: 'pilot tolerance' },
  'hole depth': { method: 'depth gauge', tolerance: 'hole depth tolerance' },
  'relief diameter': { method: 'pin gauge' },
  relief: { method: 'depth gauge', tolerance: 'relief tolerance' },
  'boss OD': { method: 'calliper' },
  'boss height': { method: 'coordinate measuring' },
  'recess draft': { method: 'coordinate measuring' },
  'outside draft': { method: 'coordinate measuring' },
  'hole draft': { method: 'coordinate measuring' },
  wall: { method: 'section cut' },
};

export interface MeasuringCall {
  readonly method: Method;
  /** The argument that holds its tolerance. */
  readonly tolerance?: string;
  /** What it gives is the least or the largest that may be. */
  readonly limit?: 'lower' | 'upper';
}

/** By the function: those that give a size of a part, and not of a screw, a gap between parts or a stack. */
export const SIZES_OF_CALLS: Readonly<Record<string, MeasuringCall>> = {
  'BOSS.OD': { method: 'calliper' },
  'BOSS.OD.RULE': { method: 'calliper' },
  'BOSS.WALL': { method: 'section cut' },
  'DRAFT.ANGLE': { method: 'coordinate measuring' },
  'DRAFT.SIZE': { method: 'calliper' },
  'HOLE.AT': { method: 'pin gauge' },
  'HOLE.CLEARANCE': { method: 'pin gauge' },
  'HOLE.DEPTH': { method: 'depth gauge', tolerance: 'depth_tol' },
  'HOLE.FIXED': { method: 'pin gauge', limit: 'lower' },
  'HOLE.FLOATING': { method: 'pin gauge', limit: 'lower' },
  'HOLE.FLOOR': { method: 'section cut' },
  'HOLE.MOUTH': { method: 'pin gauge' },
  'HOLE.PILOT': { method: 'pin gauge' },
  'HOLE.PROJECTED': { method: 'pin gauge', limit: 'lower' },
  'HOLE.RELIEF': { method: 'pin gauge' },
  'INSERT.BOSS.OD': { method: 'calliper' },
  'INSERT.HOLE.DEPTH': { method: 'depth gauge' },
  'NUT.POCKET': { method: 'pin gauge' },
  'NUT.POCKET.CORNER': { method: 'pin gauge' },
  'PATTERN.SLOT': { method: 'pin gauge' },
  'RECESS.DEPTH': { method: 'depth gauge' },
  'RECESS.DEPTH.MIN': { method: 'depth gauge', limit: 'lower' },
  'RECESS.DIAMETER': { method: 'pin gauge' },
  'RECESS.FLOAT': { method: 'pin gauge', limit: 'lower' },
  'RECESS.SEAT': { method: 'depth gauge' },
  'RIB.BASE': { method: 'section cut' },
  'RIB.TIP': { method: 'section cut' },
  'WALL.FEATURE': { method: 'section cut' },
};
