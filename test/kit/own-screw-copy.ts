// Calls and a joint of an own screw handed over, and the same with one number of the card changed on the sheet of data of the copy.
import type { Cell } from '../../src/core/kinds';
import { OUTPUTS } from '../../src/joint/outputs';
import { call } from '../../src/registry';
import { address } from '../../src/sheet/addresses';
import type { SheetPlan } from '../../src/sheet/plan';
import { handed, workbookOf } from '../handover/kit';
import { OF_THE_CONTRACT } from './own-screw';

/** The cell of the sheet of data with a number of the card. */
export function dataCell(sheets: readonly SheetPlan[], title: string, row = 'own screw'): string {
  const cells = sheets.find(({ name }) => name === 'Data')?.cells ?? [];
  const column = cells.find(({ value }) => value === title)?.at.replace(/\d/g, '');
  const line = cells.find(({ value, role }) => role === 'label' && String(value) === row)?.at.replace(/\D/g, '');
  if (column === undefined || line === undefined) throw new Error(`${title} is not on the sheet of data`);
  return `${column}${line}`;
}

export const typedInto = (sheets: readonly SheetPlan[], at: string, value: Cell, sheet = 'Data'): readonly SheetPlan[] =>
  sheets.map(plan =>
    plan.name === sheet ? { ...plan, cells: plan.cells.map(cell => (cell.at === at ? { ...cell, value } : cell)) } : plan,
  );

export const near = (is: unknown, must: unknown): boolean =>
  typeof is === 'number' && typeof must === 'number' ? Math.abs(is - must) <= 1e-9 * Math.max(1, Math.abs(must)) : is === must;

export const CALLS: readonly (readonly [formula: string, id: string, args: (own: string) => readonly unknown[]])[] = [
  ['SCREW.MAJOR(A1)', 'SCREW.MAJOR', own => [own]],
  ['SCREW.MAJOR(A1,"min")', 'SCREW.MAJOR', own => [own, 'min']],
  ['SCREW.ROOT(A1)', 'SCREW.ROOT', own => [own]],
  ['SCREW.PITCH(A1)', 'SCREW.PITCH', own => [own]],
  ['SCREW.POINT(A1)', 'SCREW.POINT', own => [own]],
  ['SCREW.HEAD.DIAMETER(A1,"pan")', 'SCREW.HEAD.DIAMETER', own => [own, 'pan']],
  ['SCREW.HEAD.HEIGHT(A1,"pan","min")', 'SCREW.HEAD.HEIGHT', own => [own, 'pan', 'min']],
  ['HOLE.PILOT(A1,0.7)', 'HOLE.PILOT', own => [own, 0.7]],
  ['HOLE.THREAD.SHARE(A1,2.4)', 'HOLE.THREAD.SHARE', own => [own, 2.4]],
  ['HOLE.RELIEF(A1)', 'HOLE.RELIEF', own => [own]],
  ['ENGAGEMENT.RATIO(6,A1)', 'ENGAGEMENT.RATIO', own => [6, own]],
  ['PULLOUT(A1,6,38)', 'PULLOUT', own => [own, 6, 38]],
  ['PULLOUT.BOSS(6.4,A1,38)', 'PULLOUT.BOSS', own => [6.4, own, 38]],
  ['TORQUE.STRIP(900,A1,0.2)', 'TORQUE.STRIP', own => [900, own, 0.2]],
  ['TORQUE.CLAMP(200,A1,0.2,0.25,5.6,3.4)', 'TORQUE.CLAMP', own => [200, own, 0.2, 0.25, 5.6, 3.4]],
  ['RECESS.DIAMETER(A1,0.5)', 'RECESS.DIAMETER', own => [own, 0.5]],
  ['RECESS.DIAMETER(A1&" pan",0.5)', 'RECESS.DIAMETER', own => [`${own} pan`, 0.5]],
  ['RECESS.FLOAT(5.6,3.5,A1,0.1)', 'RECESS.FLOAT', own => [5.6, 3.5, own, 0.1]],
  ['BOSS.OD(A1&" 75 %",1.2)', 'BOSS.OD', own => [`${own} 75 %`, 1.2]],
  ['SCREW.BOTTOM(12,0.1,10,A1,4,0.1)', 'SCREW.BOTTOM', own => [12, 0.1, 10, own, 4, 0.1]],
  ['ENGAGEMENT(10,4,0.5,A1)', 'ENGAGEMENT', own => [10, 4, 0.5, own]],
];

export const callsCopy = handed(
  workbookOf({ A1: OF_THE_CONTRACT, ...Object.fromEntries(CALLS.map(([formula], i) => [`B${i + 1}`, `=ENCL.${formula}`])) }),
);
export const callCell = (i: number): string => `S!B${i + 1}`;
export const callAnswers = (own: string): unknown[] =>
  CALLS.map(([, id, args]) => {
    const answer = call(id, args(own));
    return answer.ok ? answer.value : answer.message;
  });

export const JOINT: Readonly<Record<string, Cell>> = {
  screw: OF_THE_CONTRACT,
  length: 12,
  material: 'ABS',
  wall: 2.5,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  hole: 3.5,
  'boss height': 14,
  load: 60,
  friction: 0.3,
  'drive torque': 0.1,
  'set torque': 0.3,
};
export const jointCopy = (joint: Readonly<Record<string, Cell>>): readonly SheetPlan[] => {
  const names = Object.keys(joint);
  return handed(
    workbookOf({
      ...Object.fromEntries(names.map((name, c) => [address(0, c), name])),
      ...Object.fromEntries(names.map((name, c) => [address(1, c), joint[name] as Cell])),
      ...Object.fromEntries(OUTPUTS.map((name, c) => [address(3, c), name])),
      A6: `=ENCL.JOINT.TABLE(A1:${address(1, names.length - 1)},A4:${address(3, OUTPUTS.length - 1)})`,
    }),
  ).plan.sheets;
};
export const jointAnswer = (joint: Readonly<Record<string, Cell>>): Cell[] => {
  const table = call('JOINT.TABLE', [[Object.keys(joint), Object.values(joint)], [OUTPUTS]]);
  if (!table.ok) throw new Error(table.message);
  return (table.value as Cell[][])[1] as Cell[];
};
export const jointCell = (c: number): string => `S!${address(6, c)}`;

/** Title of the column, number typed, the card before and after, how many of the calls follow at least. */
export const OF_CALLS = [
  ['major diameter d1, max', 3.1, 'major 3.0/', 'major 3.1/', 7],
  ['major diameter d1, min', 2.95, 'major 3.0/2.9', 'major 3.0/2.95', 2],
  ['root diameter d2, max', 2.2, 'root 2.1/', 'root 2.2/', 6],
  ['pitch P', 1.5, 'pitch 1.34', 'pitch 1.5', 3],
  ['length without full thread y', 2.5, 'point 2', 'point 2.5', 2],
  ['flank angle, half the thread angle', 20, 'flank 15', 'flank 20', 1],
  ['head diameter dk, max', 5.8, 'head diameter 5.6/', 'head diameter 5.8/', 2],
  ['deviation of the length, max', 0.7, 'tolerance 0.5', 'tolerance +0.7/-0.5', 1],
] as const;
export const OF_JOINT = [
  ['major diameter d1, max', 3.1, 'major 3.0/', 'major 3.1/'],
  ['root diameter d2, max', 2.2, 'root 2.1/', 'root 2.2/'],
  ['pitch P', 1.5, 'pitch 1.34', 'pitch 1.5'],
  ['length without full thread y', 2.5, 'point 2', 'point 2.5'],
  ['flank angle, half the thread angle', 20, 'flank 15', 'flank 20'],
  ['head diameter dk, max', 5.8, 'head diameter 5.6/', 'head diameter 5.8/'],
  ['head height k, max', 2.6, 'head height 2.4/', 'head height 2.6/'],
  ['deviation of the length, max', 0.7, 'tolerance 0.5', 'tolerance +0.7/-0.5'],
] as const;
