// Joints that studies are tested on, and how their tables are asked for.
import { value } from './ask';

/** The joint of the demo: a tapping screw in a boss under a board. */
export const DEMO = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  length: 16,
  wall: 2.5,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  hole: 3.4,
  relief: 0.8,
  pilot: 2.4,
  'pilot held at': 'mouth',
  'boss OD': 6.4,
  'boss height': 14,
  'hole depth': 14.75,
  'bottom gap': 1,
};

export type JointInputs = Readonly<Record<string, string | number>>;
export const inputsOf = (joint: JointInputs): unknown[][] => Object.entries(joint);
export const table = (id: string, ...args: unknown[]): unknown[][] => value(id, ...args) as unknown[][];
export const valueOf = (joint: JointInputs, output: string): unknown =>
  value('JOINT.VALUE', [Object.keys(joint)], [Object.values(joint)], output);
export const rowOf = (rows: readonly unknown[][], name: string): readonly unknown[] => rows.find(([first]) => first === name) ?? [];
