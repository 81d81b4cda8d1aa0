import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { ENGLISH } from '../../src/words/english';
import { checkWorkbook } from '../../src/pane/check-workbook';
import { fakePort } from './fake-port';

describe('the check of a workbook', () => {
  it('lists the joints worst first and stops when told', async () => {
    const port = fakePort(demoWorkbook);
    const names = await port.sheetNames();
    const steps: number[] = [];
    const whole = await checkWorkbook(port, ENGLISH.check, done => steps.push(done) > 0);
    expect(steps).toEqual(names.map((_, i) => i));
    expect(whole.isPartial).toBe(false);
    expect(whole.joints.find(({ joint }) => joint.label === 'A  first choice')).toMatchObject({
      state: 'fail',
      reason: expect.stringContaining('has 1.497') as string,
    });
    const states = whole.joints.map(({ state }) => state);
    expect(
      [...states].sort(
        (a, b) => ['fail', 'not checked', 'review', 'pass'].indexOf(a) - ['fail', 'not checked', 'review', 'pass'].indexOf(b),
      ),
    ).toEqual(states);
    expect((await checkWorkbook(port, ENGLISH.check, done => done < 1)).isPartial).toBe(true);
  });
});
