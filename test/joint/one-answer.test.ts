// One question, one answer: what the joint says, the single functions and the SCREW.LENGTH functions say for the same data.
import { describe, expect, test } from 'vitest';
import { call } from '../../src/registry';
import { number, value } from '../kit/ask';
import { type Inputs, SOUND } from '../kit/sound-joint';

type Rows = unknown[][];
const of = (inputs: Inputs, output: string): unknown =>
  (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [[output]]) as Rows)[1]?.[0];
const LAYERS = [[2.5], [1.6]];
const DEVIATIONS = [[0.1], [0.16]];

describe('screw length', () => {
  // the hole is 0.1 shallower at its least, which SCREW.LENGTH takes as part of the gap that it is given
  const asked = (size: string, ratio: number, depth: number, reliefTol: unknown, end: string): readonly unknown[] =>
    [size, LAYERS, DEVIATIONS, ratio, depth - 0.1, 0.5, 0.5, reliefTol, end] as const;
  const joint = (screw: string, ratio: number, depth: number, reliefTol: unknown, end: string): Inputs => ({
    ...SOUND,
    screw,
    end,
    length: 'default',
    seat: 2.5,
    hole: 4.5,
    ratio,
    relief: 0.5,
    'relief tolerance': reliefTol === 0 ? '0 mm' : reliefTol,
    'hole depth': depth,
    'boss height': 24,
    'bottom gap': 0.5,
    pilot: 'default',
    'pilot held at': 'mouth',
  });

  const CASES = ['ST2.2', 'ST2.9', 'ST3.5', 'ST4.2', 'M3', 'M4'].flatMap(size =>
    [1.2, 1.6, 2, 2.4].flatMap(ratio =>
      [10, 13, 14, 16, 20].flatMap(depth =>
        ([0, 0.1, 0.4] as const).flatMap(reliefTol =>
          (size.startsWith('ST') ? ['cone', 'flat'] : ['cone']).map(end => ({ size, ratio, depth, reliefTol, end })),
        ),
      ),
    ),
  );

  test('picked by the joint and by SCREW.LENGTH.PICK, or by neither; COMMON counts it', () => {
    let [found, none, differ] = [0, 0, 0];
    const lengths = new Set<unknown>();
    for (const { size, ratio, depth, reliefTol, end } of CASES) {
      const args = asked(size, ratio, depth, reliefTol, end);
      const answer = call('SCREW.LENGTH.PICK', args);
      const picked = answer.ok ? answer.value : undefined;
      const ours = of(joint(size, ratio, depth, reliefTol, end), 'screw length');
      const what = `${size} ${end}, ratio ${ratio}, hole ${depth}, relief ± ${reliefTol}`;
      if (picked === undefined) {
        none++;
        expect(ours, what).toMatch(/^no value: no standard length/);
        continue;
      }
      found++;
      lengths.add(picked);
      expect(ours, what).toBe(picked);
      const common = value('SCREW.LENGTH.COMMON', size, [[4.1]], [[0.26]], [[depth - 0.1]], ratio, 0.5, 0.5, reliefTol, end) as Rows;
      expect(common.find(([length, count]) => Number(count) > 0 && typeof length === 'number')?.[0], what).toBe(picked);
      if (reliefTol !== 0.4) continue;
      if (number('SCREW.LENGTH.PICK', ...asked(size, ratio, depth, 0, end)) !== picked) differ++;
    }
    expect([found > 100, none > 100, lengths.size > 5]).toEqual([true, true, true]);
    // the tolerance of the relief is no idle argument
    expect(differ).toBeGreaterThan(0);
  });

  test('and why a length does not do is told in the same words', () => {
    const told = new Set<string>();
    let compared = 0;
    for (const screw of ['ST2.2', 'ST2.9', 'ST3.5', 'M3'])
      for (const depth of [4, 6.02, 8, 10.02, 12, 14.75]) {
        const inputs = { ...joint(screw, 2, depth, 0.1, 'cone'), 'hole depth tolerance': '0 mm' };
        const [, ...rows] = value('SCREW.LENGTH.TABLE', screw, LAYERS, DEVIATIONS, 2, depth, 0.5, 0.5, 0.1) as Rows;
        for (const [length, , ratio, needed, state, reason] of rows) {
          const ours = { ...inputs, length };
          // the gap alone: the screw ends above the boss
          if (Number(needed) < 0.5) continue;
          expect(of(ours, 'engagement ratio')).toBeCloseTo(ratio as number, 9);
          expect(of(ours, 'hole depth needed')).toBeCloseTo(needed as number, 9);
          const reasons = String(of(ours, 'reasons')).split('; ');
          const ofLength = reasons.filter(text => /full thread|screw bottoms|room under the tip/.test(text));
          expect([...ofLength].sort().join('; ') || '–', `${screw} × ${String(length)}`).toBe(String(reason).split('; ').sort().join('; '));
          expect(state).toBe(ofLength.length === 0 ? 'pass' : 'fail');
          ofLength.forEach(text => told.add(text.replace(/:.*/, '')));
          compared += ofLength.length;
        }
      }
    expect(told).toEqual(new Set(['too little full thread', 'screw bottoms', 'little room under the tip']));
    expect(compared).toBeGreaterThan(200);
  });

  test('the review’s joint: 16, with the tolerance of the relief and without', () => {
    const layers = [[1.4], [1.6]];
    const tolerances = [[0.1], [0.16]];
    // 13 − 0.8 − 3.26 − 0.5 − 2.6 = 5.84, 2.014 d; with 0.1 more of relief 5.74, 1.979 d
    expect(number('SCREW.LENGTH.PICK', 'ST2.9', layers, tolerances, 2, 16, 0.5, 0.5)).toBe(13);
    expect(number('SCREW.LENGTH.PICK', 'ST2.9', layers, tolerances, 2, 16, 0.5, 0.5, 0.1)).toBe(16);
    const { relief: _, ...rest } = SOUND;
    const inputs = { ...rest, seat: 1.4, length: 'default', 'hole depth': 16.1, 'boss height': 16.1, 'bottom gap': 0.5 };
    expect(of(inputs, 'screw length')).toBe(16);
    expect(of({ ...inputs, 'relief tolerance': '0 mm' }, 'screw length')).toBe(13);
  });
});

test('seat shear: the smallest head on the thinnest seat, of the joint and of PULLOUT.SEAT', () => {
  // 38/√3 · π · 5.3 · 2.4, yield of ABS at the low end of its family
  expect(of(SOUND, 'seat shear')).toBeCloseTo((38 / Math.sqrt(3)) * Math.PI * 5.3 * 2.4, 9);
  expect(of(SOUND, 'seat shear')).toBeCloseTo(number('PULLOUT.SEAT', 'ST2.9 pan', 2.4, 'ABS'), 9);
});

describe('point', () => {
  test.each([
    ['ST2.9', 'cone', 2.6],
    ['ST2.9', 'flat', 2.1],
    ['M3', 'cone', 1],
  ])('%s %s: %d, by name and in the joint', (screw, end, point) => {
    expect(number('SCREW.POINT', screw, end)).toBeCloseTo(point, 9);
    const inputs = { ...SOUND, screw, end };
    const byName = number('ENGAGEMENT', 16, LAYERS, 0.8, `${screw} ${end}`);
    expect(byName).toBeCloseTo(16 - 4.1 - 0.8 - point, 9);
    expect(of(inputs, 'engagement')).toBeCloseTo(byName, 9);
    const [least = NaN] =
      (value('ENGAGEMENT.LIMITS', 16, `${screw} ${end}`, LAYERS, DEVIATIONS, 0.8, 0.1, `${screw} ${end}`) as number[][])[0] ?? [];
    expect(of(inputs, 'engagement min')).toBeCloseTo(least, 9);
    // the screw that the tolerance names brings its point, left out, blank or a bare 0
    for (const blank of [[], [null], [0], ['']]) {
      const answer = value('ENGAGEMENT.LIMITS', 16, `${screw} ${end}`, LAYERS, DEVIATIONS, 0.8, 0.1, ...blank);
      expect((answer as number[][])[0]?.[1]).toBeCloseTo(16 - 4.1 - 0.8 - point, 9);
      expect((answer as number[][])[0]?.[0]).toBeCloseTo(least, 9);
    }
  });

  test('another point that is given is taken, none by "0 mm", and so it is where no screw is named', () => {
    const nominal = (tolerance: unknown, ...point: unknown[]): unknown =>
      (value('ENGAGEMENT.LIMITS', 16, tolerance, LAYERS, DEVIATIONS, 0.8, 0.1, ...point) as number[][])[0]?.[1];
    expect(nominal('ST2.9', 1.5)).toBeCloseTo(9.6, 9);
    expect(nominal('ST2.9', 'ST2.9 flat')).toBeCloseTo(9, 9);
    expect(nominal('ST2.9', '0 mm')).toBeCloseTo(11.1, 9);
    for (const tolerance of [0.8, '±0.8', '+0/-0.8', 0, null]) expect(nominal(tolerance)).toBeCloseTo(11.1, 9);
  });

  test('a screw whose point no table holds asks for it', () => {
    const asked = ['ENGAGEMENT.LIMITS', [16, '#4 AB', LAYERS, DEVIATIONS, 0.8, 0.1]] as const;
    expect(call(...asked)).toMatchObject({
      ok: false,
      code: '#N/A',
      argument: 'point',
      message: expect.stringMatching(/^point is left out: no point length is held for type AB .*give the length in mm$/) as unknown,
    });
    expect(call(asked[0], [...asked[1], 2])).toMatchObject({ ok: true });
  });

  test('working says whose point it is, or that none is counted', () => {
    const working = (id: string, ...args: unknown[]): unknown => value('WORKING', id, ...args);
    const ofLimits = (tolerance: unknown, ...point: unknown[]): unknown =>
      working('ENGAGEMENT.LIMITS', 16, tolerance, LAYERS, DEVIATIONS, 0.8, 0.1, ...point);
    expect(ofLimits('ST2.9 flat')).toMatch(/^point "ST2.9 flat" = 2.1 mm/);
    expect(ofLimits('ST2.9 flat')).not.toContain('point not counted');
    expect(ofLimits(0.8)).toMatch(/^point not counted/);
    expect(ofLimits('ST2.9 flat', '0 mm')).not.toMatch(/not counted|2\.1/);
    expect(working('ENGAGEMENT', 16, LAYERS, 0.8)).toMatch(/^point not counted/);
    expect(working('ENGAGEMENT', 16, LAYERS, 0.8, 'ST2.9 flat')).not.toContain('not counted');
  });
});

test('pull-out: worst engagement and worst share, by PULLOUT', () => {
  for (const pilot of [2.3, 2.46, 2.54, 2.6]) {
    const inputs = { ...SOUND, pilot, 'pilot held at': 'mouth' };
    const share = (2.76 - pilot - 0.05) / (2.9 - 2.18);
    expect(of(inputs, 'thread share min')).toBeCloseTo(share, 9);
    expect(of(inputs, 'pull-out')).toBeCloseTo(number('PULLOUT', 'ST2.9', 7.34, 'ABS', 1, share), 6);
  }
});

test('a wider pilot holds less, never the same (2.18 to 2.7)', () => {
  const forces = [2.36, 2.46, 2.54, 2.62, 2.7].map(pilot => of({ ...SOUND, pilot, 'pilot held at': 'mouth' }, 'pull-out') as number);
  expect(forces.every((force, i) => i === 0 || force < (forces[i - 1] ?? 0))).toBe(true);
});

test('floor: HOLE.FLOOR with the deepest hole', () => {
  for (const depth of [14.7, 15, 16.4])
    expect(of({ ...SOUND, 'hole depth': depth }, 'floor under hole')).toBeCloseTo(number('HOLE.FLOOR', 3, 14, depth + 0.1), 9);
});

test('hold: BOARD.HOLD with the largest board hole on the smallest screw or sleeve', () => {
  expect(of({ ...SOUND, 'board hole': 3.5 }, 'board hold')).toBeCloseTo(number('BOARD.HOLD', 6, 3.6, 2.76), 9);
  expect(of({ ...SOUND, sleeve: 2, 'board hole': 5.8, 'boss OD': 8 }, 'board hold')).toBeCloseTo(
    number('BOARD.HOLD', 8, 5.9, 3.4 + 2 - 0.1),
    9,
  );
});

test('strip torque and the window of the set torque: TORQUE.STRIP and TORQUE.WINDOW', () => {
  const inputs = { ...SOUND, friction: 0.2, 'drive torque': 0.08 };
  const strip = of(inputs, 'strip torque') as number;
  expect(strip).toBeCloseTo(number('TORQUE.STRIP', of(SOUND, 'pull-out'), 'ST2.9', 0.2), 9);
  const [, row = []] = value('TORQUE.WINDOW', 0.08, strip) as unknown[][];
  const [low, high] = row.slice(2) as [number, number];
  const state = (set: number): unknown =>
    (value('CHECK.JOINT', Object.entries({ ...inputs, 'set torque': set })) as Rows).find(
      ([name]) => name === 'set torque in its window',
    )?.[4];
  expect([low - 1e-6, low + 1e-6, high - 1e-6, high + 1e-6].map(state)).toEqual(['review', 'pass', 'pass', 'review']);
});
