import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { Joints } from '../../src/pane/find-joint';
import { movesOf, yieldOf } from '../../src/pane/joint-studies';
import { readWorkbook } from '../../src/pane/workbook';
import { value } from '../kit/ask';
import { LOGGER, variantOf } from '../figure/joints';
import { fakePort } from './fake-port';

describe('what moves the worst engagement', async () => {
  const port = fakePort(demoWorkbook);
  const joints = new Joints(await readWorkbook(port));
  const here = joints.at({ sheetName: 'Variants', at: 'B6' });
  if (here?.is !== 'joint') throw new Error('no joint');
  const { variant } = here.joint;
  const found = movesOf(variant, 'engagement min');
  const slope = (input: string): number | undefined => found.find(one => one.input === input)?.perUnit;

  it('is first the length with its tolerance, one for one', () => {
    expect(found[0]).toMatchObject({ input: 'length', unit: 'mm', now: 13, tolerance: 0.8 });
    expect(found[0]?.change).toBeCloseTo(0.8, 6);
    expect(slope('length')).toBeCloseTo(1, 6);
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
    expect(movesOf(variant.with('screw', 'M99x'), 'engagement min')).toEqual([]);
  });

  it('leaves the joint as it was', () => {
    const findings = JSON.stringify(variant.findings());
    yieldOf(variant);
    expect(JSON.stringify(variant.findings())).toBe(findings);
  });
});

describe('yield', () => {
  const joint = { ...LOGGER, length: 13, ratio: 1.7 };

  it('is that of JOINT.SIMULATE', () => {
    const rows = value('JOINT.SIMULATE', Object.entries(joint)) as unknown[][];
    const drawn = yieldOf(variantOf(joint));
    expect(drawn?.all).toEqual(rows.slice(-3).map(([name, share]) => [name, share]));
    expect(drawn?.all).toHaveLength(3);
    expect(drawn?.missed).toEqual(rows.slice(1, -3).flatMap(([rule, , ppm]) => (ppm === 0 ? [] : [[rule, ppm]])));
    expect(drawn?.missed.length).toBeGreaterThan(0);
  });
});
