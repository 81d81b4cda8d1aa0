// Which joint a cell is about, on the demo sheets and on small sheets of other forms.
import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { stateOf } from '../../src/joint/verdict';
import { Joints, type FoundJoint, type LocatedJoint } from '../../src/pane/find-joint';
import { readWorkbook } from '../../src/pane/workbook';
import { OUTPUTS } from '../../src/joint/outputs';
import { address } from '../../src/sheet/addresses';
import type { SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { fakePort } from './fake-port';

async function jointsOf(workbook: WorkbookPlan): Promise<Joints> {
  const port = fakePort(workbook);
  return new Joints(await readWorkbook(port));
}

const found = (one: FoundJoint | undefined): LocatedJoint => {
  if (one?.is !== 'joint') throw new Error(`no joint: ${JSON.stringify(one)}`);
  return one.joint;
};

/** Rows of texts and numbers from A1; texts that begin with `=` are formulas. */
const sheet = (name: string, rows: readonly (readonly (string | number)[])[]): SheetPlan => ({
  name,
  widths: [],
  cells: rows.flatMap((row, r) =>
    row.map((value, c) => ({
      at: `${String.fromCharCode(65 + c)}${r + 1}`,
      role: 'text' as const,
      ...(String(value).startsWith('=') ? { formula: String(value) } : { value }),
    })),
  ),
});

const NAMES = ['screw', 'head', 'wall', 'board plane', 'boss height', 'hole'];
const SHORT = ['ST2.9', 'ISO 7049', 2.5, 5.5, 14, 3.4];
const THICK = ['ST3.5', 'ISO 7049', 2.5, 5.5, 14, 4];

describe('the joint of a cell in the demo', async () => {
  const joints = await jointsOf(demoWorkbook);
  const at = (cell: string): LocatedJoint => found(joints.at({ sheetName: 'Variants', at: cell }));

  it('is that of its row among the inputs, or left of them', () => {
    expect(at('C6').label).toBe('A  first choice');
    expect(at('A7')).toMatchObject({ label: 'B  shorter', number: 2, of: 8, place: { sheetName: 'Variants', at: 'B7' } });
    expect(at('C6').variant.value('length')).toBe(13);
    expect(at('C7').variant.value('length')).toBe(9.5);
  });

  it('is that of its row in the table that spills', () => {
    expect(at('D22').label).toBe('A  first choice');
    expect(at('A23').label).toBe('B  shorter');
    expect(at('N29').label).toBe('H  thinner screw');
  });

  it('is the first where a name is selected, and none below the tables', () => {
    expect(at('B5').number).toBe(1);
    expect(at('B21').number).toBe(1);
    expect(joints.at({ sheetName: 'Variants', at: 'B60' })).toBeUndefined();
    expect(joints.at({ sheetName: 'Read me', at: 'A1' })).toBeUndefined();
  });

  it('is the list of names and values wherever its sheet is selected, though no call reads it', () => {
    const joint = found(joints.at({ sheetName: 'Joint', at: 'B40' }));
    expect(joint.place).toEqual({ sheetName: 'Joint', at: 'B5' });
    expect(joint.variant.value('length')).toBe(16);
    expect(joint.cells.get('length')).toEqual({ sheetName: 'Joint', at: 'B8' });
    expect([...joint.cells.keys()]).toEqual(expect.arrayContaining(['screw', 'boss OD', 'bottom gap']));
    expect(stateOf(joint.variant)).toBe('review');
  });
});

describe('the joint of a cell on sheets of other forms', () => {
  it('is found through a card with its variant, across sheets', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('In', [NAMES, SHORT, THICK]), sheet('Out', [['=ENCL.JOINT.CARD(In!A1:F3,2)']])],
    });
    expect(found(joints.at({ sheetName: 'Out', at: 'C7' })).number).toBe(2);
    expect(found(joints.at({ sheetName: 'Out', at: 'C7' })).place).toEqual({ sheetName: 'In', at: 'A3' });
    expect(found(joints.at({ sheetName: 'In', at: 'B2' })).number).toBe(1);
  });

  it('is found through names and values that stand apart', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('S', [NAMES, ['between'], SHORT, ['=ENCL.JOINT.VALUE(A1:F1,A3:F3,"boss OD")']])],
    });
    expect(found(joints.at({ sheetName: 'S', at: 'A4' })).cells.get('wall')).toEqual({ sheetName: 'S', at: 'C3' });
  });

  it('is found through names beside values that a check reads', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('S', [...NAMES.map((name, i) => [name, SHORT[i] ?? '']), ['=ENCL.CHECK.JOINT(A1:B6)']])],
    });
    for (const cell of ['A3', 'B1', 'A8', 'G9'])
      expect(found(joints.at({ sheetName: 'S', at: cell })).variant.value('wall'), cell).toBe(2.5);
  });

  it('is found in a formula around the call', async () => {
    const joints = await jointsOf({ name: '', sheets: [sheet('S', [NAMES, SHORT, ['=INDEX(ENCL.JOINT.TABLE(A1:F2),2,1)', 'x']])] });
    expect(found(joints.at({ sheetName: 'S', at: 'A3' })).number).toBe(1);
  });

  it('is found as variants that no call reads, and as values in the formula itself', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('S', [NAMES, SHORT, THICK]), sheet('T', [['=ENCL.CHECK.JOINT({"screw","M3";"head","pan";"wall",2})']])],
    });
    expect(found(joints.at({ sheetName: 'S', at: 'D3' }))).toMatchObject({ number: 2, of: 2 });
    expect(found(joints.at({ sheetName: 'T', at: 'A1' }))).toMatchObject({ place: undefined });
  });

  it('is found under labels and units, and is called by its first label', async () => {
    const names = ['(free words)', 'screw', 'head', 'note', 'wall (in)', 'board plane', 'boss height', 'hole'];
    const joints = await jointsOf({
      name: '',
      sheets: [
        sheet('S', [names, ['short', 'ST2.9', 'ISO 7049', 'x', 0.1, 5.5, 14, 3.4], ['thick', 'ST3.5', 'ISO 7049', 'y', 0.1, 5.5, 14, 4]]),
        sheet('T', [['=ENCL.JOINT.TABLE(S!A1:H3)']]),
        sheet('U', [['=ENCL.JOINT.TABLE(S!A1:H3,{"note","state","(Free words)"})']]),
        sheet('L', [
          ['screw', 'note', 'head', 'wall (in)', 'board plane', 'boss height'],
          ['ST2.9', 'x', 'ISO 7049', 0.1, 5.5, 14],
        ]),
      ],
    });
    const second = found(joints.at({ sheetName: 'S', at: 'E3' }));
    expect(second).toMatchObject({ label: 'thick', number: 2, of: 2 });
    expect(second.variant.value('wall')).toBeCloseTo(2.54, 9);
    expect(second.cells.get('wall')).toEqual({ sheetName: 'S', at: 'E3' });
    expect(second.cells.size).toBe(6);
    // the labels have columns of their own in what spills, and no column lies behind the last
    expect(found(joints.at({ sheetName: 'U', at: 'C2' })).label).toBe('short');
    expect(joints.holds({ sheetName: 'U', at: 'C2' })).toBe(true);
    expect(joints.holds({ sheetName: 'U', at: 'D2' })).toBe(false);
    expect(joints.holds({ sheetName: 'T', at: address(1, OUTPUTS.length) })).toBe(true);
    expect(joints.holds({ sheetName: 'T', at: address(1, OUTPUTS.length + 1) })).toBe(false);
    expect(found(joints.at({ sheetName: 'L', at: 'D2' })).variant.value('wall')).toBeCloseTo(2.54, 9);
  });

  it('has the base that its call is given', async () => {
    const base = [
      ['pin limit', 5],
      ['relief', 1],
    ];
    const joints = await jointsOf({
      name: '',
      sheets: [
        sheet('B', base),
        sheet('S', [NAMES, SHORT, ['=ENCL.JOINT.TABLE(A1:F2,,B!A1:B2)']]),
        sheet('V', [NAMES, SHORT, ['=ENCL.JOINT.VALUE(A1:F1,A2:F2,"boss OD",B!A1:B2)']]),
        sheet('C', [NAMES, SHORT, ['=ENCL.CHECK.JOINT(A1:F2,B!A1:B2)']]),
        sheet('D', [NAMES, SHORT, ['=ENCL.JOINT.CARD(A1:F2,1,B!A1:B2)']]),
        sheet('N', [NAMES, SHORT, ['=ENCL.JOINT.TABLE(A1:F2)']]),
      ],
    });
    const sizes = (sheetName: string): unknown[] => {
      const { variant } = found(joints.at({ sheetName, at: 'A2' }));
      return [variant.value('pin limit'), variant.value('relief')];
    };
    for (const name of ['S', 'V', 'C', 'D']) expect(sizes(name), name).toEqual([5, 1]);
    expect(sizes('N')).toEqual([7, 0.5]);
  });

  it('is refused with its reason and its place', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('S', [['screw', 'wal', 'hole'], ['M3', 2, 3.4], ['=ENCL.JOINT.TABLE(A1:C2)']])],
    });
    expect(joints.at({ sheetName: 'S', at: 'A2' })).toMatchObject({
      is: 'refused',
      message: expect.stringContaining('wal') as string,
      place: { sheetName: 'S', at: 'A1' },
    });
  });

  it('is not seen in three names, nor in names without a screw', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [
        sheet('S', [
          ['screw', 'M3'],
          ['head', 'pan'],
          ['wall', 2],
        ]),
        sheet('T', [
          ['head', 'pan'],
          ['wall', 2],
          ['hole', 3],
          ['board', 1],
        ]),
      ],
    });
    expect(joints.first()).toBeUndefined();
  });

  it('is listed once, whoever reads it', async () => {
    const joints = await jointsOf({
      name: '',
      sheets: [sheet('S', [NAMES, SHORT, THICK, ['=ENCL.JOINT.TABLE(A1:F3)'], [''], [''], [''], ['=ENCL.JOINT.TABLE(A1:F3)']])],
    });
    expect(joints.all().map(one => found(one).number)).toEqual([1, 2]);
  });
});
