// Which study a cell belongs to, what is drawn of it, and that a map is drawn anew when an input is another.
import { describe, expect, it } from 'vitest';
import { compostGuide } from '../../src/demo/guide-compost';
import { Studies } from '../../src/pane/find-study';
import type { AtSelection } from '../../src/pane/followed';
import { Nearby } from '../../src/pane/nearby';
import { readWorkbook } from '../../src/pane/workbook';
import { address } from '../../src/sheet/addresses';
import type { PlanCell, WorkbookPlan } from '../../src/sheet/plan';
import { DEMO } from '../kit/study';
import { fakePort } from './fake-port';

const svgOf = (here: ReturnType<Studies['at']>): string => {
  if (here === undefined || typeof here.figure === 'string') throw new Error(`no figure: ${here?.figure ?? 'no study'}`);
  return here.figure.svg();
};

describe('the study of a cell in the guide', async () => {
  const studies = new Studies(await readWorkbook(fakePort(compostGuide)));
  const at = (sheetName: string, cell: string) => studies.at({ sheetName, at: cell });

  it.each(['D10', 'E11', 'M20', 'D20', 'M10'])('the map is found at %s', cell => {
    const here = at('Plane', cell);
    expect(here?.place).toEqual({ sheetName: 'Plane', at: 'D10' });
    expect(svgOf(here)).toContain('boss OD and wall: where the joint is good');
  });

  it.each(['A6', 'D9', 'C12', 'N12', 'E21', 'E5'])('and not at %s', cell => expect(at('Plane', cell)).toBeUndefined());

  it('what moves the thread is found in its table, a window and a yield have no figure', () => {
    expect(svgOf(at('Window', 'C19'))).toContain('What moves engagement min');
    expect(at('Window', 'B7')).toBeUndefined();
    expect(at('Yield', 'E14')).toBeUndefined();
  });
});

const JOINT = Object.entries(DEMO);
const VALUES = Array.from({ length: 60 }, (_, i) => i);
/** A joint in A and B, 60 walls in C, 60 bosses in D, a call in F1. */
const workbook = (call: string): WorkbookPlan => {
  const put = (row: number, column: number, value: string | number): PlanCell => ({ at: address(row, column), role: 'input', value });
  return {
    name: '',
    sheets: [
      {
        name: 'S',
        widths: [],
        cells: [
          ...JOINT.flatMap(([name, value], row) => [put(row, 0, name), put(row, 1, value)]),
          ...VALUES.flatMap(i => [put(i, 2, 1 + i / 20), put(i, 3, 4 + i / 10)]),
          { at: 'F1', role: 'result', formula: call },
        ],
      },
    ],
  };
};
const INPUTS = `A1:B${JOINT.length}`;
const MAP = `=ENCL.JOINT.MAP(${INPUTS},"boss OD",D1:D60,"wall",C1:C60)`;

describe('in words', async () => {
  const figure = async (call: string) => new Studies(await readWorkbook(fakePort(workbook(call)))).at({ sheetName: 'S', at: 'F1' })?.figure;

  it('a study that is refused says why', async () => {
    expect(await figure(`=ENCL.JOINT.MAP(${INPUTS},"boss OD",D1:D60,"boss ODD",C1:C60)`)).toContain('did you mean "boss OD"');
    expect(await figure(`=ENCL.JOINT.MAP(${INPUTS},"boss OD",D1:D60,"head",{"pan";"countersunk"})`)).toContain('no numbers');
    expect(await figure(`=ENCL.JOINT.SENSITIVITY(${INPUTS},"state")`)).toContain('is not a number');
  });

  it('values may fall, stand twice, or be one', async () => {
    const named = await figure(`=ENCL.JOINT.MAP(${INPUTS},"boss OD",{8,6,6,7},"wall",{2.5})`);
    expect(typeof named === 'string' ? named : named?.svg()).toContain('boss OD, mm from 6.00 to 8.00 across, wall, mm from 2.50 to 2.50');
  });

  it('values that another function makes are read from what the map shows', async () => {
    const shown = workbook(`=ENCL.JOINT.MAP(${INPUTS},"boss OD",SEQUENCE(1,3,5,1),"wall",SEQUENCE(2,1,2,0.5))`);
    const cells = [...[5, 6, 7].map((value, i) => [0, 6 + i, value] as const), [1, 5, 2] as const, [2, 5, 2.5] as const];
    for (const [row, column, value] of cells)
      (shown.sheets[0]?.cells as PlanCell[]).push({ at: address(row, column), role: 'result', value });
    const studies = new Studies(await readWorkbook(fakePort(shown)));
    const at = (cell: string) => studies.at({ sheetName: 'S', at: cell });
    expect(svgOf(at('F1'))).toContain('boss OD, mm from 5.00 to 7.00 across, wall, mm from 2.00 to 2.50');
    expect(['I3', 'F3', 'J3', 'I4'].map(cell => at(cell)?.place.at)).toEqual(['F1', 'F1', undefined, undefined]);
  });

  it('what cannot be followed is named', async () => {
    expect(await figure('=ENCL.JOINT.MAP(SORT(A1:B9),"boss OD",D1:D60,"wall",C1:C60)')).toBe(
      'inputs is made by a function that the figure does not follow: give cells',
    );
    expect(await figure(`=ENCL.JOINT.SENSITIVITY(${INPUTS},PROPER("x"))`)).toContain('output is made by a function');
  });

  it('no other formula is a study', async () => expect(await figure('=1+ENCL.SCREW.MAJOR("ST2.9")')).toBeUndefined());
});

describe('a map of 60 × 60 while its sheet is edited', () => {
  it('is kept in sight beside the joint that is edited, and drawn anew', async () => {
    const port = fakePort(workbook(MAP));
    const told: AtSelection[] = [];
    const nearby = new Nearby(
      port,
      here => void told.push(here),
      fault => {
        throw fault;
      },
    );
    const last = async (act: () => void): Promise<AtSelection> => {
      const before = told.length;
      act();
      while (told.length === before) await new Promise(resolve => setTimeout(resolve, 0));
      return told[told.length - 1] as AtSelection;
    };
    const first = await last(() => nearby.select({ sheetName: 'S', at: 'F1' }));
    expect(first.isOfStudy).toBe(true);
    const inJoint = await last(() => nearby.select({ sheetName: 'S', at: 'B3' }));
    expect([inJoint.isOfStudy, inJoint.found?.is, inJoint.study?.place.at]).toEqual([false, 'joint', 'F1']);
    const times: number[] = [];
    let before = svgOf(first.study);
    for (const length of [13, 16, 13, 16, 13]) {
      await port.write([{ sheetName: 'S', at: 'B3', content: length }]);
      const from = performance.now();
      const here = await last(() => nearby.changed('S'));
      const drawn = svgOf(here.study);
      times.push(performance.now() - from);
      expect(drawn).not.toBe(before);
      before = drawn;
    }
    console.log(`a map of 60 × 60 after an edit: ${Math.min(...times).toFixed(0)} ms, ${Math.max(...times).toFixed(0)} ms at most`);
    expect(Math.min(...times)).toBeLessThan(1000);
    nearby.stop();
  });
});
