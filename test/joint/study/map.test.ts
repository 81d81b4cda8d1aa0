// A map against JOINT.TABLE, which is handed each of its joints in full.
import { describe, expect } from 'vitest';
import { refusal } from '../../kit/ask';
import { refereed } from '../../kit/refereed';
import { DEMO, inputsOf, type JointInputs, table } from '../../kit/study';

const test = refereed('joint/study/map.test.ts');

const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const withBoth = (joint: JointInputs, x: string, y: string, xs: readonly unknown[], ys: readonly unknown[]): unknown[][] => {
  const others = Object.entries(joint).filter(([name]) => name !== x && name !== y);
  return [
    [...others.map(([name]) => name), x, y],
    ...ys.flatMap(down => xs.map(across => [...others.map(([, given]) => given), across, down])),
  ];
};

describe('every cell is that of JOINT.TABLE', () => {
  const PLANES: readonly (readonly [x: string, xs: number[], y: string, ys: number[]])[] = [
    ['boss OD', spread(4, 9, 90), 'wall', spread(1, 4, 70)],
    ['pilot', spread(2, 2.9, 60), 'hole draft', spread(0.1, 2, 60)],
    ['hole depth', spread(10, 17, 60), 'boss height', spread(10, 18, 60)],
    ['seat', spread(1, 4, 50), 'board plane', spread(2, 8, 50)],
    ['length', spread(8, 20, 100), 'relief', spread(0.1, 3, 100)],
  ];

  test.each(PLANES)('state over %s and %j of the plane', (x, xs, y, ys) => {
    const map = table(
      'JOINT.MAP',
      inputsOf(DEMO),
      x,
      [xs],
      y,
      ys.map(one => [one]),
    );
    const states = table('JOINT.TABLE', withBoth(DEMO, x, y, xs, ys), [['state']])
      .slice(1)
      .map(([state]) => state);
    expect(map.slice(1).flatMap(row => row.slice(1))).toEqual(states);
    expect(new Set(states).size).toBeGreaterThan(1);
  });

  test.each(PLANES)('margin over %s and %j of the plane', (x, xs, y, ys) => {
    const [across, down] = [xs.filter((_, i) => i % 5 === 0), ys.filter((_, i) => i % 5 === 0)];
    const map = table(
      'JOINT.MAP',
      inputsOf(DEMO),
      x,
      [across],
      y,
      down.map(one => [one]),
      'margin',
    );
    const margins = table('JOINT.TABLE', withBoth(DEMO, x, y, across, down), [['margin']])
      .slice(1)
      .map(([margin]) => margin);
    expect(map.slice(1).flatMap(row => row.slice(1))).toEqual(margins);
    expect(margins.filter(margin => typeof margin === 'number').length).toBeGreaterThan(50);
  });

  test('numbers over a plane, typed with their units', () => {
    const map = table('JOINT.MAP', inputsOf(DEMO), 'wall (in)', [[0.08, '2.5 mm']], 'seat', [['0 mm'], [2]], 'engagement min');
    expect(map).toEqual([
      ['wall (mm) \\ seat (mm)', expect.closeTo(2.032, 12), 2.5],
      [0, expect.closeTo(9.94, 10), expect.closeTo(9.94, 10)],
      [2, expect.closeTo(7.84, 10), expect.closeTo(7.84, 10)],
    ]);
  });

  test('what is no number: screws along the top', () => {
    const map = table(
      'JOINT.MAP',
      inputsOf({ ...DEMO, 'od ratio': 2.2 }),
      'screw',
      [['ST2.9', 'ST3.5', 'M77']],
      'seat',
      [[2.5]],
      'engagement',
    );
    expect(map[0]).toEqual(['screw \\ seat (mm)', 'ST2.9', 'ST3.5', 'M77']);
    expect(map[1]?.[1]).toBeCloseTo(16 - 4.1 - 0.8 - 2.6, 10);
    expect(map[1]?.[3]).toContain('no value: ');
  });
});

test('a default follows what is moved, and a base counts', () => {
  const open = [
    ['screw', 'ST2.9'],
    ['head', 'pan'],
    ['wall', 2],
    ['board plane', 6],
    ['hole', 3.4],
    ['boss height', 14],
    ['board', 1.6],
  ];
  // seat: the largest of 0.8·head wall, 0.6·d and 1.5
  const map = table('JOINT.MAP', open, 'wall', [[2, 2.5]], 'head wall', [['default'], [3]], 'grip', [
    ['board', 2],
    ['material', 'ABS'],
  ]);
  expect(map.slice(1).map(row => row.slice(1))).toEqual([
    [expect.closeTo(0.6 * 2.9 + 1.6, 10), expect.closeTo(0.8 * 2.5 + 1.6, 10)],
    [expect.closeTo(2.4 + 1.6, 10), expect.closeTo(2.4 + 1.6, 10)],
  ]);
});

describe('what is refused', () => {
  const ask = (...args: unknown[]): string => refusal('JOINT.MAP', inputsOf(DEMO), ...args);
  test.each([
    [['wall', [[1]], 'wall', [[2]]], 'name two inputs'],
    [['wll', [[1]], 'seat', [[2]]], 'did you mean "wall"'],
    [['wall', [[1, 0, 2]], 'seat', [[2]]], 'x_values is blank at 2'],
    [['wall', [[1]], 'seat', [[null], ['']]], 'y_values'],
    [['wall', [Array.from({ length: 200 }, () => 1)], 'seat', Array.from({ length: 100 }, () => [2])], '20301 cells'],
    [
      [
        'wall',
        [
          [1, 2],
          [3, 4],
        ],
        'seat',
        [[2]],
      ],
      'one row or one column',
    ],
    [['wall', [[1]], 'seat', [[2]], 'wall'], 'not a name of a joint output'],
  ])('%j', (args, message) => expect(ask(...(args as unknown[]))).toContain(message));
});
