import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { Joints } from '../../src/pane/find-joint';
import { sensitivities } from '../../src/pane/sensitivities';
import { readWorkbook } from '../../src/pane/workbook';
import { fakePort } from './fake-port';

describe('what moves the worst engagement', async () => {
  const port = fakePort(demoWorkbook);
  const joints = new Joints(await readWorkbook(port));
  const first = joints.at({ sheetName: 'Variants', at: 'B6' });
  const found = first?.is === 'joint' ? sensitivities(first.joint.variant, 'engagement min') : [];
  const slope = (input: string): number | undefined => found.find(one => one.input === input)?.perUnit;

  it('is first the length, one for one', () => {
    expect(found[0]?.input).toBe('length');
    expect(slope('length')).toBeCloseTo(1, 6);
    expect(found[0]?.perTenth).toBeCloseTo(1.3, 6);
  });

  it('is taken away by seat and relief one for one, by the board with its tolerance of a tenth', () => {
    expect(slope('seat')).toBeCloseTo(-1, 6);
    expect(slope('relief')).toBeCloseTo(-1, 6);
    expect(slope('seat tolerance')).toBeCloseTo(-1, 6);
    expect(slope('board')).toBeCloseTo(-1.1, 6);
  });

  it('is not what does not touch it', () => {
    for (const input of ['wall', 'boss OD', 'pilot', 'hole', 'outside draft']) expect(slope(input), input).toBeUndefined();
  });

  it('is nothing where the engagement has no value', () => {
    if (first?.is !== 'joint') throw new Error('no joint');
    expect(sensitivities(first.joint.variant.with('screw', 'M99x'), 'engagement min')).toEqual([]);
  });

  it('is the length of a machine screw too, by the next standard length', () => {
    if (first?.is !== 'joint') throw new Error('no joint');
    const machine = first.joint.variant.with('screw', 'M3').with('head', 'ISO 7045').with('length', 12);
    expect(sensitivities(machine, 'engagement min')[0]).toMatchObject({ input: 'length' });
  });
});
