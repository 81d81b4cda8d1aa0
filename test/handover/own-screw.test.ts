// An own screw on the copy: its numbers stand in cells of the sheet of data, and a number that is changed there is followed.
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { OUTPUTS } from '../../src/joint/outputs';
import { call } from '../../src/registry';
import { address } from '../../src/sheet/addresses';
import type { SheetPlan } from '../../src/sheet/plan';
import { OF_THE_CONTRACT, OWN_ST29 } from '../kit/own-screw';
import { workedOut } from '../kit/worked-out';
import { handed, sheetNamed, workbookOf } from './kit';

/** The cell of the sheet of data with a number of the card. */
function dataCell(sheets: readonly SheetPlan[], title: string, row = 'own screw'): string {
  const cells = sheets.find(({ name }) => name === 'Data')?.cells ?? [];
  const column = cells.find(({ value }) => value === title)?.at.replace(/\d/g, '');
  const line = cells.find(({ value, role }) => role === 'label' && String(value) === row)?.at.replace(/\D/g, '');
  if (column === undefined || line === undefined) throw new Error(`${title} is not on the sheet of data`);
  return `${column}${line}`;
}

const typedInto = (sheets: readonly SheetPlan[], at: string, value: Cell, sheet = 'Data'): readonly SheetPlan[] =>
  sheets.map(plan =>
    plan.name === sheet ? { ...plan, cells: plan.cells.map(cell => (cell.at === at ? { ...cell, value } : cell)) } : plan,
  );

const near = (is: unknown, must: unknown): boolean =>
  typeof is === 'number' && typeof must === 'number' ? Math.abs(is - must) <= 1e-9 * Math.max(1, Math.abs(must)) : is === must;

describe('single calls', () => {
  const CALLS: readonly (readonly [formula: string, id: string, args: (own: string) => readonly unknown[]])[] = [
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
  const copy = handed(
    workbookOf({ A1: OF_THE_CONTRACT, ...Object.fromEntries(CALLS.map(([formula], i) => [`B${i + 1}`, `=ENCL.${formula}`])) }),
  );
  const sheets = copy.plan.sheets;
  const answers = (own: string): unknown[] =>
    CALLS.map(([, id, args]) => {
      const answer = call(id, args(own));
      return answer.ok ? answer.value : answer.message;
    });
  const worked = (plans: readonly SheetPlan[]): unknown[] => {
    const { values } = workedOut(plans, 'S');
    return CALLS.map((_, i) => values.get(`S!B${i + 1}`));
  };

  it('are live', () => {
    expect(copy.findings.filter(({ what }) => what !== 'live')).toEqual([]);
    expect(copy.live).toBe(CALLS.length);
  });

  it('give on the copy what they give in the add-in', () => {
    const [is, must] = [worked(sheets), answers(OF_THE_CONTRACT)];
    expect(must.every(value => typeof value === 'number')).toBe(true);
    expect(CALLS.flatMap(([formula], i) => (near(is[i], must[i]) ? [] : [`${formula}: ${String(is[i])}, not ${String(must[i])}`]))).toEqual(
      [],
    );
  });

  it.each([
    ['major diameter d1, max', 3.1, 'major 3.0/', 'major 3.1/', 7],
    ['major diameter d1, min', 2.95, 'major 3.0/2.9', 'major 3.0/2.95', 2],
    ['root diameter d2, max', 2.2, 'root 2.1/', 'root 2.2/', 6],
    ['pitch P', 1.5, 'pitch 1.34', 'pitch 1.5', 3],
    ['length without full thread y', 2.5, 'point 2', 'point 2.5', 2],
    ['flank angle, half the thread angle', 20, 'flank 15', 'flank 20', 1],
    ['head diameter dk, max', 5.8, 'head diameter 5.6/', 'head diameter 5.8/', 2],
    ['deviation of the length, max', 0.7, 'tolerance 0.5', 'tolerance +0.7/-0.5', 1],
  ])('%s typed anew on the sheet of data is followed, and nothing gives another number', (title, typed, before, after, least) => {
    const must = answers(OF_THE_CONTRACT.replace(before, after));
    const was = answers(OF_THE_CONTRACT);
    const is = worked(typedInto(sheets, dataCell(sheets, title), typed));
    const moved = must.flatMap((value, i) => (near(value, was[i]) ? [] : [i]));
    expect(moved.filter(i => near(is[i], must[i])).length).toBeGreaterThanOrEqual(least);
    // what does not follow says so
    expect(
      CALLS.flatMap(([formula], i) =>
        near(is[i], must[i]) || typeof is[i] === 'string' ? [] : [`${formula}: ${String(is[i])}, not ${String(must[i])}`],
      ),
    ).toEqual([]);
  });

  it('a text typed over the card gives no number', () => {
    const other = worked(typedInto(sheets, 'A1', OF_THE_CONTRACT.replace('major 3.0', 'major 3.1'), 'S'));
    expect(other.filter(value => typeof value === 'number')).toEqual([]);
  });

  it('says whose numbers they are', () => {
    const data = sheetNamed(copy, 'Data').cells.map(({ value }) => String(value));
    expect(data.some(text => text.startsWith('own screw, major 3.0/2.9'))).toBe(true);
    expect(data).toContain('given by you');
    const sources = sheetNamed(copy, 'Sources').cells.map(({ value }) => String(value));
    expect(sources).toContain('own screw');
  });
});

describe('a joint', () => {
  const JOINT: Readonly<Record<string, Cell>> = {
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
  const copyOf = (joint: Readonly<Record<string, Cell>>): readonly SheetPlan[] => {
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
  const answer = (joint: Readonly<Record<string, Cell>>): Cell[] => {
    const table = call('JOINT.TABLE', [[Object.keys(joint), Object.values(joint)], [OUTPUTS]]);
    if (!table.ok) throw new Error(table.message);
    return (table.value as Cell[][])[1] as Cell[];
  };
  const worked = (plans: readonly SheetPlan[]): unknown[] => {
    const { values } = workedOut(plans, 'S');
    return OUTPUTS.map((_, c) => values.get(`S!${address(6, c)}`));
  };
  const numbers = (
    joint: Readonly<Record<string, Cell>>,
    plans: readonly SheetPlan[],
  ): { readonly equal: number; readonly wrong: string[] } => {
    const [is, must] = [worked(plans), answer(joint)];
    const judged = OUTPUTS.flatMap((name, i) =>
      typeof is[i] === 'number' || is[i] === 'pass' || is[i] === 'fail' || is[i] === 'review'
        ? [[name, near(is[i], must[i]), `${name}: ${String(is[i])}, not ${String(must[i])}`] as const]
        : [],
    );
    return { equal: judged.filter(([, same]) => same).length, wrong: judged.filter(([, same]) => !same).map(([, , words]) => words) };
  };

  it('is the same on the copy, in all its outputs', () => {
    for (const joint of [JOINT, { ...JOINT, screw: OWN_ST29, length: 13 }, { ...JOINT, head: 'pan' }]) {
      const { equal, wrong } = numbers(joint, copyOf(joint));
      expect(wrong).toEqual([]);
      expect(equal).toBeGreaterThanOrEqual(44);
    }
  });

  it.each([
    ['major diameter d1, max', 3.1, 'major 3.0/', 'major 3.1/'],
    ['root diameter d2, max', 2.2, 'root 2.1/', 'root 2.2/'],
    ['pitch P', 1.5, 'pitch 1.34', 'pitch 1.5'],
    ['length without full thread y', 2.5, 'point 2', 'point 2.5'],
    ['flank angle, half the thread angle', 20, 'flank 15', 'flank 20'],
    ['head diameter dk, max', 5.8, 'head diameter 5.6/', 'head diameter 5.8/'],
    ['head height k, max', 2.6, 'head height 2.4/', 'head height 2.6/'],
    ['deviation of the length, max', 0.7, 'tolerance 0.5', 'tolerance +0.7/-0.5'],
  ])('%s typed anew on the sheet of data is followed', (title, typed, before, after) => {
    const sheets = copyOf(JOINT);
    const { equal, wrong } = numbers(
      { ...JOINT, screw: OF_THE_CONTRACT.replace(before, after) },
      typedInto(sheets, dataCell(sheets, title), typed),
    );
    expect(wrong).toEqual([]);
    expect(equal).toBeGreaterThanOrEqual(44);
  });

  it('a length that was picked holds for the card as sent', () => {
    const { length: _, ...picked } = JOINT;
    const sheets = copyOf(picked);
    expect(numbers(picked, sheets).equal).toBeGreaterThanOrEqual(44);
    const after = typedInto(sheets, dataCell(sheets, 'length without full thread y'), 5);
    expect(numbers({ ...picked, screw: OF_THE_CONTRACT.replace('point 2', 'point 5') }, after).wrong).toEqual([]);
  });
});
