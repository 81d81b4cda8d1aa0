// An own screw on the copy: its numbers stand in cells of the sheet of data, and a number that is changed there is followed.
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { OUTPUTS } from '../../src/joint/outputs';
import type { SheetPlan } from '../../src/sheet/plan';
import { OF_THE_CONTRACT, OWN_ST29 } from '../kit/own-screw';
import {
  callAnswers,
  callCell,
  CALLS,
  callsCopy,
  dataCell,
  JOINT,
  jointAnswer,
  jointCell,
  jointCopy,
  near,
  OF_CALLS,
  OF_JOINT,
  typedInto,
} from '../kit/own-screw-copy';
import { workedOut } from '../kit/worked-out';
import { sheetNamed } from './kit';

describe('single calls', () => {
  const sheets = callsCopy.plan.sheets;
  const worked = (plans: readonly SheetPlan[]): unknown[] => {
    const { values } = workedOut(plans, 'S');
    return CALLS.map((_, i) => values.get(callCell(i)));
  };

  it('are live', () => {
    expect(callsCopy.findings.filter(({ what }) => what !== 'live')).toEqual([]);
    expect(callsCopy.live).toBe(CALLS.length);
  });

  it('give on the copy what they give in the add-in', () => {
    const [is, must] = [worked(sheets), callAnswers(OF_THE_CONTRACT)];
    expect(must.every(value => typeof value === 'number')).toBe(true);
    expect(CALLS.flatMap(([formula], i) => (near(is[i], must[i]) ? [] : [`${formula}: ${String(is[i])}, not ${String(must[i])}`]))).toEqual(
      [],
    );
  });

  it.each(OF_CALLS)(
    '%s typed anew on the sheet of data is followed, and nothing gives another number',
    (title, typed, before, after, least) => {
      const must = callAnswers(OF_THE_CONTRACT.replace(before, after));
      const was = callAnswers(OF_THE_CONTRACT);
      const is = worked(typedInto(sheets, dataCell(sheets, title), typed));
      const moved = must.flatMap((value, i) => (near(value, was[i]) ? [] : [i]));
      expect(moved.filter(i => near(is[i], must[i])).length).toBeGreaterThanOrEqual(least);
      // what does not follow says so
      expect(
        CALLS.flatMap(([formula], i) =>
          near(is[i], must[i]) || typeof is[i] === 'string' ? [] : [`${formula}: ${String(is[i])}, not ${String(must[i])}`],
        ),
      ).toEqual([]);
    },
  );

  it('a text typed over the card gives no number', () => {
    const other = worked(typedInto(sheets, 'A1', OF_THE_CONTRACT.replace('major 3.0', 'major 3.1'), 'S'));
    expect(other.filter(value => typeof value === 'number')).toEqual([]);
  });

  it('says whose numbers they are', () => {
    const data = sheetNamed(callsCopy, 'Data').cells.map(({ value }) => String(value));
    expect(data.some(text => text.startsWith('own screw, major 3.0/2.9'))).toBe(true);
    expect(data).toContain('given by you');
    const sources = sheetNamed(callsCopy, 'Sources').cells.map(({ value }) => String(value));
    expect(sources).toContain('own screw');
  });
});

describe('a joint', () => {
  const worked = (plans: readonly SheetPlan[]): unknown[] => {
    const { values } = workedOut(plans, 'S');
    return OUTPUTS.map((_, c) => values.get(jointCell(c)));
  };
  const numbers = (
    joint: Readonly<Record<string, Cell>>,
    plans: readonly SheetPlan[],
  ): { readonly equal: number; readonly wrong: string[] } => {
    const [is, must] = [worked(plans), jointAnswer(joint)];
    const judged = OUTPUTS.flatMap((name, i) =>
      typeof is[i] === 'number' || is[i] === 'pass' || is[i] === 'fail' || is[i] === 'review'
        ? [[name, near(is[i], must[i]), `${name}: ${String(is[i])}, not ${String(must[i])}`] as const]
        : [],
    );
    return { equal: judged.filter(([, same]) => same).length, wrong: judged.filter(([, same]) => !same).map(([, , words]) => words) };
  };

  it('is the same on the copy, in all its outputs', () => {
    for (const joint of [JOINT, { ...JOINT, screw: OWN_ST29, length: 13 }, { ...JOINT, head: 'pan' }]) {
      const { equal, wrong } = numbers(joint, jointCopy(joint));
      expect(wrong).toEqual([]);
      expect(equal).toBeGreaterThanOrEqual(44);
    }
  });

  it.each(OF_JOINT)('%s typed anew on the sheet of data is followed', (title, typed, before, after) => {
    const sheets = jointCopy(JOINT);
    const { equal, wrong } = numbers(
      { ...JOINT, screw: OF_THE_CONTRACT.replace(before, after) },
      typedInto(sheets, dataCell(sheets, title), typed),
    );
    expect(wrong).toEqual([]);
    expect(equal).toBeGreaterThanOrEqual(44);
  });

  it('a length that was picked holds for the card as sent', () => {
    const { length: _, ...picked } = JOINT;
    const sheets = jointCopy(picked);
    expect(numbers(picked, sheets).equal).toBeGreaterThanOrEqual(44);
    const after = typedInto(sheets, dataCell(sheets, 'length without full thread y'), 5);
    expect(numbers({ ...picked, screw: OF_THE_CONTRACT.replace('point 2', 'point 5') }, after).wrong).toEqual([]);
  });
});
