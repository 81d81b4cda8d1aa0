// A joint with a threaded insert of our own: what changes against a thread in plastic, worked by hand, and what is refused.
import { describe, expect, test } from 'vitest';
import { value } from '../kit/ask';
import { OWN_M3 } from '../kit/own-screw';
import type { Inputs } from '../kit/sound-joint';

type Row = readonly unknown[];

const tanDeg = (deg: number): number => Math.tan((deg * Math.PI) / 180);

/** M3 (P 0.5, ISO 7045 head, length 10 ± 0.29 by js15, hole 3.4 ± 0.1), grip 2.5 ± 0.1 and a board of 1.6 ± 0.16. */
const M3: Inputs = {
  screw: 'M3',
  head: 'pan',
  material: 'strength 40 MPa; density 1.05; sink limit 0.6',
  wall: 3,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  'boss height': 9,
  safety: 2,
  'insert diameter': 4.6,
  'insert length': 5.7,
  'insert hole': 4,
};
/** M2.5 (P 0.45, length 8 ± 0.29, hole 2.9 ± 0.1), grip 2 ± 0.1 and a board of 1 ± 0.1; the insert 0.2 below the face. */
const M25: Inputs = {
  screw: 'M2.5',
  head: 'pan',
  'yield stress': 50,
  wall: 2.5,
  'board plane': 5.2,
  seat: 2,
  board: 1,
  'boss height': 7,
  'insert diameter': 3.9,
  'insert length': 4,
  'insert hole': 3.4,
  'insert below face': 0.2,
  'insert tolerance': '+0.2/-0.05',
};

const cells = (inputs: Inputs, outputs: readonly string[], base?: Inputs): Row =>
  (
    value(
      'JOINT.TABLE',
      [Object.keys(inputs), Object.values(inputs)],
      [outputs],
      ...(base === undefined ? [] : [Object.entries(base)]),
    ) as Row[]
  )[1] as Row;
const cell = (inputs: Inputs, output: string): unknown => cells(inputs, [output])[0];
const ruleOf = (inputs: Inputs, rule: string): Row | undefined =>
  (value('CHECK.JOINT', Object.entries(inputs)) as Row[]).find(([name]) => name === rule);

/** boss of od at its face, h high, hole of d at its face and as deep */
const massG = (od: number, h: number, d: number, densityGPerCm3: number): number => {
  const frustum = (top: number, bottom: number): number => ((Math.PI * h) / 12) * (top ** 2 + top * bottom + bottom ** 2);
  return ((frustum(od, od + 2 * h * tanDeg(0.5)) - frustum(d, d - 2 * h * tanDeg(0.25))) * densityGPerCm3) / 1000;
};

describe('by hand', () => {
  test.each<[string, Inputs, Readonly<Record<string, unknown>>]>([
    [
      'M3, moulded to be pressed in',
      M3,
      {
        // 8 has 8 − 0.29 − 4.36 − 0.1 − 1 = 2.25, below 1 × 3
        'screw length': 10,
        engagement: 10 - 4.1 - 1,
        'engagement min': 10 - 0.29 - 4.36 - 0.1 - 1,
        'engagement ratio': 4.25 / 3,
        'penetration max': 10 + 0.29 - (4.1 - 0.26),
        'hole depth needed': 6.45 + 0.5 + 0.1,
        'hole depth': 9,
        'boss OD': 2 * 4.6,
        'boss OD root': 9.2 + 18 * tanDeg(0.5),
        'boss wall': (9.2 - 4) / 2,
        'boss wall root': (9.2 + 18 * tanDeg(0.5) - (4 - 18 * tanDeg(0.25))) / 2,
        slenderness: 9 / 9.2,
        'pin ratio': 9 / 4,
        'landing ring': (9.2 - 3.5) / 2,
        'pull-out': ((40 / Math.sqrt(3)) * Math.PI * 4.6 * 5.7 * 0.5) / 2,
        'boss tear': (40 * (Math.PI / 4) * (9.2 ** 2 - 4.6 ** 2)) / 2,
        'seat shear': ((40 / Math.sqrt(3)) * Math.PI * 5.3 * 2.4) / 2,
        weakest: 'seat shear',
        'boss mass': massG(9.2, 9, 4, 1.05),
        state: 'pass',
      },
    ],
    [
      'M3, 12 long: the thread ends with the insert',
      { ...M3, length: 12 },
      { engagement: 5.7, 'engagement min': 5.7 - 0.1, 'engagement ratio': 5.6 / 3, 'hole depth needed': 12 + 0.35 - 3.84 + 0.6 },
    ],
    [
      'M3, moulded in: no hole of its own',
      { ...M3, 'insert hole': null },
      { 'boss wall': (9.2 - 4.6) / 2, 'pin ratio': 9 / 4.6, 'boss mass': massG(9.2, 9, 4.6, 1.05), state: 'pass' },
    ],
    [
      'M2.5, below the face',
      M25,
      {
        // 6 has 6 − 0.24 − 3.2 − 0.4 − 0.9 = 1.26
        'screw length': 8,
        engagement: 8 - 3 - 0.2 - 0.9,
        // deepest, + 0.2, by the depth; shortest, − 0.05, by its own end
        'engagement min': 8 - 0.29 - 3.2 - 0.4 - 0.9,
        'engagement ratio': 3.21 / 2.5,
        'hole depth needed': 8 + 0.29 - 2.8 + 0.6,
        'boss OD': 7.8,
        'boss wall': (7.8 - 3.4) / 2,
        'boss wall root': (7.8 + 14 * tanDeg(0.5) - (3.4 - 14 * tanDeg(0.25))) / 2,
        'pin ratio': 7 / 3.4,
        'landing ring': (7.8 - 3) / 2,
        'pull-out': (50 / Math.sqrt(3)) * Math.PI * 3.9 * 4 * 0.5,
        'boss tear': 50 * (Math.PI / 4) * (7.8 ** 2 - 3.9 ** 2),
      },
    ],
    ['M2.5, the whole insert', { ...M25, length: 10 }, { engagement: 4, 'engagement min': 4 - 0.05, 'engagement ratio': 3.95 / 2.5 }],
    [
      'M2.5, a board hole that asks for more than the insert',
      { ...M25, sleeve: 1.3, 'board hole': 5.6, 'insert ratio': 1.8 },
      // held by 0.5 on a hole of 5.7 that is 0.9 aside, round a sleeve of 4.9 − 0.1
      { 'sleeve OD': 4.9, 'boss OD': 5.7 + 2 * 0.5 + 0.9, 'landing ring': (4.9 - 3) / 2 },
    ],
    ['M2.5, an insert that asks for more than the board hole', { ...M25, sleeve: 1.3, 'board hole': 5.6 }, { 'boss OD': 2 * 3.9 }],
  ])('%s', (_, inputs, expected) => {
    const names = Object.keys(expected);
    const found = Object.fromEntries(cells(inputs, names).map((given, i) => [names[i], given]));
    expect(found).toEqual(
      Object.fromEntries(
        Object.entries(expected).map(([name, must]) => [name, typeof must === 'number' ? (expect.closeTo(must, 9) as unknown) : must]),
      ),
    );
  });

  test('the ratio required by default is 1, a ratio given stays', () => {
    expect(ruleOf(M3, 'engagement')?.slice(1, 3)).toEqual([expect.closeTo(4.25 / 3, 9), 1]);
    expect(ruleOf({ ...M3, length: 10, ratio: 1.5 }, 'engagement')?.slice(2, 5)).toEqual([1.5, expect.any(String), 'fail']);
    const inPlastic = { ...M3, length: 10, 'insert diameter': null, 'thread share': 0.8, 'od ratio': 2 };
    expect(ruleOf(inPlastic, 'engagement')?.[2]).toBe(2);
  });

  test.each(['pilot hole', 'pilot mouth', 'pilot at tip', 'pilot bottom', 'thread share min', 'strip torque'])(
    '%s does not apply, and takes nothing from the row',
    output => {
      const torques = { friction: 0.2, 'drive torque': 0.1, 'set torque': 0.3 };
      expect(cells({ ...M3, ...torques }, [output, 'all computed', 'state'])).toEqual([
        'no value: does not apply: the thread is in the insert',
        true,
        'pass',
      ]);
    },
  );
});

describe('one answer with the functions of an insert', () => {
  test.each<[string, unknown, unknown]>([
    ['boss OD', cell(M3, 'boss OD'), value('INSERT.BOSS.OD', 4.6)],
    ['boss OD by its ratio', cell({ ...M3, 'insert ratio': 2.5 }, 'boss OD'), value('INSERT.BOSS.OD', 4.6, 2.5)],
    ['engagement', cell(M3, 'engagement'), value('INSERT.ENGAGEMENT', 10, 4.1, 5.7, 0, 'M3')],
    ['engagement below the face', cell(M25, 'engagement'), value('INSERT.ENGAGEMENT', 8, 3, 4, 0.2, 'M2.5')],
    ['pull-out', cell(M3, 'pull-out'), value('INSERT.PULLOUT', 4.6, 5.7, 40, 0.5, 2)],
    ['ring under the mating part', ruleOf(M3, 'insert not drawn out')?.[1], value('INSERT.LANDING', 4.6, 3.5)],
    [
      'ring where the largest hole is read from a size',
      ruleOf({ ...M25, 'insert below face': 0, 'insert tolerance': 0.05 }, 'insert not drawn out')?.[1],
      value('INSERT.LANDING', 3.9, 2.9 + 0.1),
    ],
    ['hole depth asked', ruleOf({ ...M3, 'hole depth': 6.5, length: 8 }, 'insert held')?.[2], value('INSERT.HOLE.DEPTH', 5.7)],
    [
      'hole depth asked by a margin',
      ruleOf({ ...M25, 'hole depth': 6.5, 'insert margin': 3 }, 'insert held')?.[2],
      value('INSERT.HOLE.DEPTH', 4, 3, 0.2),
    ],
  ])('%s', (_, joint, direct) => {
    expect(direct).toBeGreaterThan(0);
    expect(joint).toBeCloseTo(direct as number, 12);
  });
});

describe('what an insert does not take', () => {
  const IN_PLASTIC: Readonly<Record<string, unknown>> = {
    pilot: 2.5,
    'pilot held at': 'mouth',
    'thread share': 0.8,
    relief: 0.5,
    'relief diameter': 3.4,
    'od ratio': 2,
    'thread limit': 0.2,
    'tightness limit': 0.97,
    'tightness review': 1,
    'od limit': 1.8,
  };
  const named = Object.entries(IN_PLASTIC);

  test.each(named)('%s given in the row is refused', (name, typed) => {
    const [state, reason, computed] = cells({ ...M3, [name]: typed }, ['state', 'reason', 'all computed']);
    expect(reason).toContain(`${name} is given, but the thread is in the insert: leave it blank`);
    expect([state, computed]).toEqual(['not checked', false]);
  });

  test.each(named)('%s given without an insert is taken', (name, typed) => {
    const pierced = {
      ...M3,
      'insert diameter': null,
      'insert length': null,
      'insert hole': null,
      pilot: 2.6,
      'od ratio': 2,
      [name]: typed,
    };
    expect(String(cell({ ...pierced, 'thread share': 0.8 }, 'reasons'))).not.toContain(`${name} is given`);
  });

  test.each(named)('%s left blank, by default or in the base is not', (name, typed) => {
    const must = cells(M3, ['state', 'boss OD', 'engagement min', 'margin']);
    for (const left of [null, '', 'default'])
      expect(cells({ ...M3, [name]: left }, ['state', 'boss OD', 'engagement min', 'margin']), String(left)).toEqual(must);
    expect(cells(M3, ['state', 'boss OD', 'engagement min', 'margin'], { [name]: typed })).toEqual(must);
  });

  test('a screw that taps its thread', () => {
    const tapping = { ...M3, screw: 'ST2.9', hole: 3.4, length: 13, 'boss height': 11 };
    expect(cells(tapping, ['state', 'all computed', 'reason', 'engagement min', 'pull-out'])).toEqual([
      'not checked',
      true,
      expect.stringContaining('an insert takes a machine screw, and this is a tapping screw'),
      expect.stringContaining('this is a tapping screw'),
      expect.stringContaining('this is a tapping screw'),
    ]);
    expect(cell({ ...M3, screw: OWN_M3, hole: 3.4 }, 'state')).toBe('pass');
  });

  test('an insert without its length', () => {
    const [state, reason, engagement] = cells({ ...M3, 'insert length': null }, ['state', 'reason', 'engagement min']);
    expect(state).toBe('not checked');
    expect(reason).toContain('insert length is blank');
    expect(engagement).toContain('no value: insert length is blank');
  });

  test('sizes of an insert where there is none are not asked for', () => {
    const { 'insert diameter': _, ...none } = M3;
    const one = cells({ ...none, pilot: 2.6, 'od ratio': 2 }, ['state', 'boss OD', 'pull-out']);
    const { 'insert length': __, 'insert hole': ___, ...bare } = none;
    expect(one).toEqual(cells({ ...bare, pilot: 2.6, 'od ratio': 2 }, ['state', 'boss OD', 'pull-out']));
  });
});
