// An own screw on the copy, worked out anew by two spreadsheet programs: as sent, and with every number of the card changed on the sheet
// of data.
import { describe, expect, test } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { OUTPUTS } from '../../src/joint/outputs';
import type { SheetPlan } from '../../src/sheet/plan';
import { OF_THE_CONTRACT } from '../kit/own-screw';
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
  OF_JOINT,
  typedInto,
} from '../kit/own-screw-copy';
import { recalculate, type Values } from './harness';

const POISON = -999;
const poisoned = (sheets: readonly SheetPlan[]): readonly SheetPlan[] =>
  sheets.map(sheet => ({ ...sheet, cells: sheet.cells.map(cell => (cell.formula === undefined ? cell : { ...cell, value: POISON })) }));

async function programs(sheets: readonly SheetPlan[]): Promise<readonly Values[]> {
  const { libreoffice, gnumeric } = await recalculate(await writeWorkbook({ name: 'Own screw', sheets: poisoned(sheets) }));
  return [libreoffice, gnumeric];
}

/** Numbers and states that are what they must be; those that are not; a text in place of a number says that it does not follow. */
function compared(
  values: Values,
  cells: readonly string[],
  must: readonly unknown[],
): { readonly equal: number; readonly wrong: string[] } {
  const judged = cells
    .map((at, i) => [at, values.get(at), must[i]] as const)
    .filter(([, is]) => typeof is === 'number' || ['pass', 'review', 'fail'].includes(is as string));
  return {
    equal: judged.filter(([, is, value]) => near(is, value)).length,
    wrong: judged.filter(([, is, value]) => !near(is, value)).map(([at, is, value]) => `${at}: ${String(is)}, not ${String(value)}`),
  };
}

/** Every number of the card at once, and that of none. */
const CHANGES = [
  ['as sent', []],
  ['every number changed', OF_JOINT],
] as const;

describe.each(CHANGES)('%s', (_, changes) => {
  const own = changes.reduce((card, [, , before, after]) => card.replace(before, after), OF_THE_CONTRACT);
  const changed = (sheets: readonly SheetPlan[]): readonly SheetPlan[] =>
    changes.reduce((plans, [title, typed]) => typedInto(plans, dataCell(plans, title), typed), sheets);

  test('single calls follow, or give no number', async () => {
    for (const values of await programs(changed(callsCopy.plan.sheets))) {
      const { equal, wrong } = compared(
        values,
        CALLS.map((_, i) => callCell(i)),
        callAnswers(own),
      );
      expect(wrong).toEqual([]);
      expect(equal).toBeGreaterThan(CALLS.length / 2);
    }
  });

  test('all of the joint follows', async () => {
    for (const values of await programs(changed(jointCopy(JOINT)))) {
      const { equal, wrong } = compared(
        values,
        OUTPUTS.map((_, c) => jointCell(c)),
        jointAnswer({ ...JOINT, screw: own }),
      );
      expect(wrong).toEqual([]);
      expect(equal).toBeGreaterThanOrEqual(44);
    }
  });
});
