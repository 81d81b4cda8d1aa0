// The same answers by another way: lines that meet, every corner of the tolerances, slices added up, a search. Beside each the wrong forms
// that it would not let pass.
import { describe, expect } from 'vitest';
import { agree, type Case, cases, integral, root } from '../kit/another-way';
import { refusal, value } from '../kit/ask';
import { refereed } from '../kit/refereed';

const test = refereed('evidence/independent.test.ts');

const degrees = (size: number): string => `${size}°`;
const mm = (size: number): string => `${size} mm`;
const radians = (deg: number): number => (deg * Math.PI) / 180;

describe('lines in the plane that meet', () => {
  type Point = readonly [x: number, y: number];
  /** Where the line through p along u meets the line through q along v. */
  function meet([px, py]: Point, [ux, uy]: Point, [qx, qy]: Point, [vx, vy]: Point): Point {
    const t = ((qx - px) * vy - (qy - py) * vx) / (ux * vy - uy * vx);
    return [px + t * ux, py + t * uy];
  }
  /** The direction of pull, turned: positive leans away from the axis. */
  const leaning = (deg: number): Point => [Math.sin(radians(deg)), Math.cos(radians(deg))];
  /** Where a flank that starts at x is at this height. */
  const at = (x: number, deg: number, height: number): number => meet([x, 0], leaning(deg), [0, height], [1, 0])[0];

  const SIZES = { a: [6, 20], b: [1, 5], wall: [1, 4], height: [2, 20], out: [0.3, 4], in: [0.3, 3] } as const;
  const all = cases(SIZES, 100).filter(one => at((one['b'] as number) / 2, -(one['in'] as number), one['height'] as number) > 0.05);

  type Numbers = (one: Record<keyof typeof SIZES, number>) => readonly number[];
  /** s max of ISO 4032, read in secondary copies. */
  const NUTS = [
    ['M1.6', 3.2],
    ['M2', 4],
    ['M2.5', 5],
    ['M3', 5.5],
    ['M3.5', 6],
    ['M4', 7],
    ['M5', 8],
    ['M6', 10],
  ] as const;
  const nut = ({ a }: Readonly<{ a: number }>): (typeof NUTS)[number] => NUTS[Math.floor(a) % NUTS.length] as (typeof NUTS)[number];
  /** Where the line along a flat of a hexagon meets the line through p along u; the flats are numbered round. */
  const onFlat = (flat: number, fromMiddle: number, p: Point, u: Point): Point => {
    const [c, s] = [Math.cos(radians(60 * flat)), Math.sin(radians(60 * flat))];
    return meet(p, u, [fromMiddle * c, fromMiddle * s], [-s, c]);
  };
  const acrossFlats = (fromMiddle: number): number => onFlat(0, fromMiddle, [0, 0], [1, 0])[0] - onFlat(3, fromMiddle, [0, 0], [1, 0])[0];
  const acrossCorners = (fromMiddle: number): number => 2 * Math.hypot(...onFlat(1, fromMiddle, [fromMiddle, 0], [0, 1]));
  const FORMS: readonly (readonly [
    id: string,
    args: (one: Record<keyof typeof SIZES, number>) => readonly unknown[],
    other: Numbers,
    wrong: Readonly<Record<string, Numbers>>,
  ])[] = [
    [
      'DRAFT.OFFSET',
      o => [o.height, degrees(o.out)],
      o => [at(0, o.out, o.height)],
      { 'sine for tangent': o => [Math.sin(radians(o.out)) * o.height] },
    ],
    [
      'DRAFT.SIZE',
      o => [o.a, o.height, degrees(o.out), 'grows'],
      o => [2 * at(o.a / 2, o.out, o.height)],
      { 'one side': o => [o.a + at(0, o.out, o.height)], shrinks: o => [2 * at(o.a / 2, -o.out, o.height)] },
    ],
    [
      'HOLE.AT',
      o => [o.b, o.height, degrees(o.in)],
      o => [2 * at(o.b / 2, -o.in, o.height)],
      { grows: o => [2 * at(o.b / 2, o.in, o.height)], 'one side': o => [o.b - at(0, o.in, o.height)] },
    ],
    [
      'HOLE.MOUTH',
      o => [o.b, o.height, degrees(o.in)],
      o => [2 * at(o.b / 2, o.in, o.height)],
      { shrinks: o => [2 * at(o.b / 2, -o.in, o.height)] },
    ],
    [
      'BOSS.OD',
      o => [o.b, o.wall, o.height, degrees(o.out)],
      o => [2 * at(o.b / 2 + o.wall, o.out, o.height)],
      { shrinks: o => [2 * at(o.b / 2 + o.wall, -o.out, o.height)], 'one wall': o => [2 * at((o.b + o.wall) / 2, o.out, o.height)] },
    ],
    [
      'BOSS.WALL',
      o => [o.a, o.b, o.height, degrees(o.out), degrees(o.in)],
      o => [at(o.a / 2, o.out, o.height) - at(o.b / 2, -o.in, o.height)],
      {
        'hole grows': o => [at(o.a / 2, o.out, o.height) - at(o.b / 2, o.in, o.height)],
        'outside only': o => [at(o.a / 2, o.out, o.height) - o.b / 2],
      },
    ],
    [
      'BOSS.WALL',
      o => [o.a, o.b, o.height, degrees(o.out), degrees(o.in), o.height / 2],
      o => [2 * at(o.a / 2, o.out, o.height)],
      { 'as if the hole went on': o => [at(o.a / 2, o.out, o.height) - at(o.b / 2, -o.in, o.height)] },
    ],
    [
      'BOSS.ENDS',
      o => [o.a, o.b, o.height, degrees(o.out), degrees(o.in)],
      o =>
        [0, o.height].flatMap(y => [2 * at(o.a / 2, o.out, y), 2 * at(o.b / 2, -o.in, y), at(o.a / 2, o.out, y) - at(o.b / 2, -o.in, y)]),
      {
        'ends changed': o =>
          [o.height, 0].flatMap(y => [2 * at(o.a / 2, o.out, y), 2 * at(o.b / 2, -o.in, y), at(o.a / 2, o.out, y) - at(o.b / 2, -o.in, y)]),
      },
    ],
    [
      'BOSS.STEEL',
      o => [o.a, o.height, degrees(o.out), degrees(o.in)],
      o => [at(o.a, -o.in, o.height) - at(0, o.out, o.height)],
      { 'one leans away': o => [at(o.a, o.in, o.height) - at(0, o.out, o.height)] },
    ],
    [
      'RECESS.DIAMETER',
      o => [o.a, o.wall, o.height, degrees(o.out)],
      o => [2 * at((o.a + o.wall) / 2, o.out, o.height)],
      {
        shrinks: o => [2 * at((o.a + o.wall) / 2, -o.out, o.height)],
        'allowance per side': o => [2 * at(o.a / 2 + o.wall, o.out, o.height)],
      },
    ],
    [
      'RIB.TIP',
      o => [o.a, o.height, degrees(o.in)],
      o => [2 * at(o.a / 2, -o.in, o.height)],
      { 'one side': o => [o.a - at(0, o.in, o.height)] },
    ],
    [
      'RIB.BASE',
      o => [o.b, o.height, degrees(o.in)],
      o => [2 * at(o.b / 2, o.in, o.height)],
      { 'one side': o => [o.b + at(0, o.in, o.height)] },
    ],
    [
      'BOARD.GAP',
      o => [60, '+0.2/-0.1', 60 + o.a, '+0.05/-0.3', o.height, degrees(o.in)],
      o => [
        Math.min(
          ...[0.2, -0.1].flatMap(board => [0.05, -0.3].map(inside => at((60 + o.a + inside) / 2, o.in, o.height) - (60 + board) / 2)),
        ),
      ],
      {
        'the other side of a tolerance': o => [at((60 + o.a + 0.05) / 2, o.in, o.height) - 60.2 / 2],
        closes: o => [at((59.7 + o.a) / 2, -o.in, o.height) - 60.2 / 2],
      },
    ],
    [
      'NUT.POCKET',
      o => [nut(o)[0], mm(o.wall / 4)],
      o => [acrossFlats(nut(o)[1] / 2 + o.wall / 8)],
      { 'allowance on each side': o => [acrossFlats(nut(o)[1] / 2 + o.wall / 4)], 'no allowance': o => [acrossFlats(nut(o)[1] / 2)] },
    ],
    [
      'NUT.POCKET.CORNER',
      o => [nut(o)[0], mm(o.wall / 4)],
      o => [acrossCorners(nut(o)[1] / 2 + o.wall / 8)],
      {
        'allowance on each side': o => [acrossCorners(nut(o)[1] / 2 + o.wall / 4)],
        'allowance across the corners': o => [acrossCorners(nut(o)[1] / 2) + o.wall / 4],
        'across the flats': o => [acrossFlats(nut(o)[1] / 2 + o.wall / 8)],
      },
    ],
    // rays from one point: so many times as far, so many times as wide
    [
      'INSERT.BOSS.OD',
      o => [o.b, 1 + o.wall / 2],
      o => [meet([0, 0], [1, o.b], [1 + o.wall / 2, 0], [0, 1])[1]],
      { 'the ratio of the wall': o => [o.b + 2 * meet([0, 0], [1, o.b], [1 + o.wall / 2, 0], [0, 1])[1]] },
    ],
    // the flank of the cone meets the wall of the hole
    [
      'RECESS.CONE',
      o => [o.a, o.b, degrees(60 + 10 * o.out)],
      o => [meet([o.a / 2, 0], leaning(-(30 + 5 * o.out)), [o.b / 2, 0], [0, 1])[1]],
      { 'the whole angle': o => [meet([o.a / 2, 0], leaning(-(60 + 10 * o.out)), [o.b / 2, 0], [0, 1])[1]] },
    ],
  ];

  test.each(FORMS)('%s by lines', (id, args, other, wrong) => {
    expect(all.length).toBeGreaterThan(80);
    agree(
      all,
      one => {
        const answer = value(id, ...args(one as Parameters<typeof args>[0]));
        return id === 'BOSS.ENDS' ? (answer as unknown[][]).slice(1) : answer;
      },
      other as (one: Case) => readonly number[],
      wrong as Readonly<Record<string, (one: Case) => readonly number[]>>,
    );
  });
});

describe('every corner of the tolerances', () => {
  type Range = readonly [lower: number, upper: number];
  const corners = (ranges: readonly Range[]): number[][] =>
    ranges.reduce<number[][]>(
      (all, [lower, upper]) =>
        all.flatMap(corner => [
          [...corner, lower],
          [...corner, upper],
        ]),
      [[]],
    );
  const text = ([lower, upper]: Range): string => `+${upper}/${lower}`;
  const mean = (all: readonly number[]): number => all.reduce((total, x) => total + x, 0) / all.length;
  /**
   * Links at either end are as often up as down, and independent: their deviation over all corners is the root sum square of the half
   * widths.
   */
  const deviation = (all: readonly number[]): number => Math.sqrt(mean(all.map(x => (x - mean(all)) ** 2)));
  const limits = (all: readonly number[]): [number, number] => [Math.min(...all), Math.max(...all)];

  const SIZES = {
    length: [12, 30],
    first: [1, 3],
    second: [0.8, 2],
    depth: [5, 12],
    least: [0.01, 0.4],
    most: [0.01, 0.4],
    more: [0.01, 0.3],
    factor: [0.3, 2],
  } as const;
  type One = Record<keyof typeof SIZES, number>;
  const all = cases(SIZES, 60);
  /** Four different tolerances, one of them one-sided. */
  const ranges = ({ least, most, more }: One): [Range, Range, Range, Range] => [
    [-least, most],
    [-more, 2 * most],
    [0, more],
    [-2 * least, more / 2],
  ];

  const FORMS: readonly (readonly [
    id: string,
    args: (one: One) => readonly unknown[],
    other: (one: One) => readonly number[],
    wrong: Readonly<Record<string, (one: One) => readonly number[]>>,
  ])[] = [
    [
      'GRIP.LIMITS',
      o => [
        [[o.first], [o.second]],
        ranges(o)
          .slice(0, 2)
          .map(range => [text(range)]),
      ],
      o => {
        const [least, most] = limits(corners(ranges(o).slice(0, 2)).map(([a = 0, b = 0]) => o.first + a + o.second + b));
        return [least, o.first + o.second, most];
      },
      {
        'sides changed': o => [
          o.first + o.second - ranges(o)[0][1] - ranges(o)[1][1],
          o.first + o.second,
          o.first + o.second - ranges(o)[0][0] - ranges(o)[1][0],
        ],
      },
    ],
    [
      'ENGAGEMENT.LIMITS',
      o => [
        o.length,
        text(ranges(o)[0]),
        [[o.first], [o.second]],
        [[text(ranges(o)[1])], [text(ranges(o)[2])]],
        mm(o.factor),
        text(ranges(o)[3]),
        mm(2),
      ],
      o => {
        const found = corners(ranges(o)).map(
          ([length = 0, a = 0, b = 0, relief = 0]) => o.length + length - (o.first + a) - (o.second + b) - (o.factor + relief) - 2,
        );
        const [least, most] = limits(found);
        return [least, o.length - o.first - o.second - o.factor - 2, most, deviation(found)];
      },
      {
        'relief and point counted as engagement': o => {
          const found = corners(ranges(o)).map(([length = 0, a = 0, b = 0]) => o.length + length - (o.first + a) - (o.second + b));
          return [...limits(found), o.length - o.first - o.second, deviation(found)];
        },
        'layers at their thinnest': o => {
          const found = corners(ranges(o)).map(
            ([length = 0, a = 0, b = 0, relief = 0]) => o.length + length - (o.first - a) - (o.second - b) - (o.factor + relief) - 2,
          );
          const [least, most] = limits(found);
          return [least, o.length - o.first - o.second - o.factor - 2, most, deviation(found)];
        },
      },
    ],
    [
      'SCREW.BOTTOM',
      o => [
        o.length + o.depth,
        text(ranges(o)[0]),
        o.length,
        text(ranges(o)[1]),
        [[o.first], [o.second]],
        [[text(ranges(o)[2])], [text(ranges(o)[3])]],
      ],
      o => [
        limits(
          corners(ranges(o)).map(
            ([depth = 0, length = 0, a = 0, b = 0]) => o.length + o.depth + depth - (o.length + length - (o.first + a) - (o.second + b)),
          ),
        )[0],
      ],
      {
        'thickest layers': o => [o.depth + ranges(o)[0][0] - ranges(o)[1][1] + o.first + ranges(o)[2][1] + o.second + ranges(o)[3][1]],
        'shortest screw': o => [o.depth + ranges(o)[0][0] - ranges(o)[1][0] + o.first + ranges(o)[2][0] + o.second + ranges(o)[3][0]],
      },
    ],
    [
      'RIM.GAP.LIMITS',
      o => [
        [[o.length], [o.first]],
        [[text(ranges(o)[0])], [text(ranges(o)[1])]],
        [[o.depth], [o.second]],
        [[text(ranges(o)[2])], [text(ranges(o)[3])]],
      ],
      o => {
        const found = corners(ranges(o)).map(([a = 0, b = 0, c = 0, d = 0]) => o.length + a + o.first + b - (o.depth + c) - (o.second + d));
        const [least, most] = limits(found);
        return [least, o.length + o.first - o.depth - o.second, most, deviation(found)];
      },
      {
        'rim tolerances added': o => {
          const found = corners(ranges(o)).map(
            ([a = 0, b = 0, c = 0, d = 0]) => o.length + a + o.first + b - (o.depth - c) - (o.second - d),
          );
          const [least, most] = limits(found);
          return [least, o.length + o.first - o.depth - o.second, most, deviation(found)];
        },
      },
    ],
    [
      'BOARD.CLAMP',
      o => [o.first + o.second, text(ranges(o)[0]), o.first, text(ranges(o)[1])],
      o => {
        const [least, most] = limits(
          corners(ranges(o).slice(0, 2)).map(([space = 0, board = 0]) => o.first + o.second + space - (o.first + board)),
        );
        return [least, o.second, most];
      },
      { 'tolerances cancel': o => [o.second + ranges(o)[0][0] - ranges(o)[1][0], o.second, o.second + ranges(o)[0][1] - ranges(o)[1][1]] },
    ],
    [
      'LIP.FIT',
      o => [mm(o.first), text(ranges(o)[0]), text(ranges(o)[1]), mm(o.more)],
      o => {
        const [least, most] = limits(
          corners([...ranges(o).slice(0, 2), [-o.more, o.more]]).map(([lip = 0, groove = 0, shift = 0]) => o.first - lip + groove + shift),
        );
        return [least, o.first, most];
      },
      { 'mismatch forgotten': o => [o.first - ranges(o)[0][1] + ranges(o)[1][0], o.first, o.first - ranges(o)[0][0] + ranges(o)[1][1]] },
    ],
    ...(['STACK.WORST', 'STACK.RSS'] as const).map(id => {
      const sum = (o: One): number[] => corners(ranges(o)).map(([a = 0, b = 0, c = 0, d = 0]) => a - b + o.factor * c - o.factor * d);
      const half = (x: readonly number[]): number => (limits(x)[1] - limits(x)[0]) / 2;
      return [
        id,
        (o: One) => [ranges(o).map(range => [text(range)]), [[1], [-1], [o.factor], [-o.factor]]],
        (o: One) => [id === 'STACK.WORST' ? half(sum(o)) : deviation(sum(o))],
        {
          'the other sum': (o: One) => [id === 'STACK.WORST' ? deviation(sum(o)) : half(sum(o))],
          'sensitivities forgotten': (o: One) => [
            (id === 'STACK.WORST' ? half : deviation)(corners(ranges(o)).map(([a = 0, b = 0, c = 0, d = 0]) => a - b + 0.1 * c - 0.1 * d)),
          ],
        },
      ] as const;
    }),
    [
      'STACK.SHARE',
      o => [ranges(o).map(range => [text(range)]), [[1], [-1], [o.factor], [-o.factor]]],
      o => {
        const [a, b, c, d] = ranges(o).map((range, i) => deviation(corners([range]).map(([x = 0]) => x * (i < 2 ? 1 : o.factor))) ** 2) as [
          number,
          number,
          number,
          number,
        ];
        const whole = deviation(corners(ranges(o)).map(([p = 0, q = 0, r = 0, s = 0]) => p - q + o.factor * r - o.factor * s)) ** 2;
        return [a, b, c, d].map(x => x / whole);
      },
      {
        'shares of widths': o => {
          const widths = ranges(o).map(([lower, upper], i) => (upper - lower) * (i < 2 ? 1 : o.factor));
          return widths.map(width => width / widths.reduce((total, x) => total + x, 0));
        },
      },
    ],
  ];

  test.each(FORMS)('%s by corners', (id, args, other, wrong) => {
    expect(all.length).toBe(60);
    agree(
      all,
      one => value(id, ...args(one as One)),
      other as (one: Case) => readonly number[],
      wrong as Readonly<Record<string, (one: Case) => readonly number[]>>,
    );
  });
});

describe('slices added up', () => {
  test('BOSS.MASS: rings of the drafted boss, with the hole as far as it goes', () => {
    const all = cases({ od: [6, 12], hole: [2, 4], height: [5, 15], depth: [2, 18], density: [0.9, 1.6], out: [0.2, 2], in: [0.1, 1] }, 60);
    type One = Record<'od' | 'hole' | 'height' | 'depth' | 'density' | 'out' | 'in', number>;
    const mass = (o: One, lean: (deg: number) => number, holeLean: (deg: number) => number, depth: number): number[] => {
      const outside = integral(y => (Math.PI / 4) * (o.od + 2 * y * lean(o.out)) ** 2, 0, o.height);
      const hollow = integral(y => (Math.PI / 4) * (o.hole - 2 * y * holeLean(o.in)) ** 2, 0, depth);
      return [(o.density * (outside - hollow)) / 1000];
    };
    const tangent = (deg: number): number => Math.tan(radians(deg));
    const away = (deg: number): number => -Math.tan(radians(deg));
    agree(
      all,
      one => {
        const o = one as One;
        return value('BOSS.MASS', o.od, o.hole, o.height, o.density, degrees(o.out), degrees(o.in), o.depth);
      },
      o => mass(o as One, tangent, tangent, Math.min((o as One).depth, (o as One).height)),
      {
        'the outside narrows': o => mass(o as One, away, tangent, Math.min((o as One).depth, (o as One).height)),
        'the hole widens': o => mass(o as One, tangent, away, Math.min((o as One).depth, (o as One).height)),
        'no hole': o => mass(o as One, tangent, tangent, 0),
        'degrees as radians': o => mass(o as One, Math.tan, tangent, Math.min((o as One).depth, (o as One).height)),
      },
    );
  });

  test('RIB.SECTION: area, centroid, second moment, modulus and equivalent thickness of a tapered rib', () => {
    const all = cases({ width: [10, 30], wall: [1.5, 4], base: [1.2, 3], taper: [0.1, 0.9], height: [4, 15] }, 40);
    type One = Record<'width' | 'wall' | 'base' | 'taper' | 'height', number>;
    const section = (o: One, widthAt: (y: number) => number): { area: number; centroid: number; second: number } => {
      const over = (f: (y: number) => number): number =>
        integral(y => o.width * f(y), 0, o.wall) + integral(y => widthAt(y - o.wall) * f(y), o.wall, o.wall + o.height);
      const area = over(() => 1);
      const centroid = over(y => y) / area;
      return { area, centroid, second: over(y => (y - centroid) ** 2) };
    };
    const plate = (second: number, width: number): number => root(t => integral(y => width * y ** 2, -t / 2, t / 2, 2) - second, 0, 100);
    const by =
      (widthOf: (o: One) => (y: number) => number, modulusAt: (o: One, centroid: number) => number) =>
      (one: Case): number[] => {
        const o = one as One;
        const { area, centroid, second } = section(o, widthOf(o));
        return [area, centroid, second, second / modulusAt(o, centroid), plate(second, o.width)];
      };
    const tapered =
      (o: One) =>
      (y: number): number =>
        o.base * (1 - (o.taper * y) / o.height);
    const tip = (o: One, centroid: number): number => o.wall + o.height - centroid;
    agree(
      all,
      one => {
        const o = one as One;
        return value('RIB.SECTION', o.width, o.wall, o.base, o.base * (1 - o.taper), o.height);
      },
      by(tapered, tip),
      {
        'no taper': by(o => () => o.base, tip),
        'a web of the mean thickness': by(o => () => o.base * (1 - o.taper / 2), tip),
        'turned over': by(o => y => o.base * (1 - o.taper * (1 - y / o.height)), tip),
        'modulus of the outer face': by(tapered, (_, centroid) => centroid),
      },
    );
  });

  test('PIN.DEFLECTION: curvature of a cantilever added up twice, its section by strips', () => {
    const all = cases({ length: [5, 12], diameter: [2, 4], pressure: [1, 20], modulus: [100, 220] }, 30);
    type One = Record<'length' | 'diameter' | 'pressure' | 'modulus', number>;
    const bending = (o: One, load: number, moment: (x: number) => number): number[] => {
      const second = integral(angle => 2 * (o.diameter / 2) ** 4 * Math.sin(angle) ** 2 * Math.cos(angle) ** 2, -Math.PI / 2, Math.PI / 2);
      // what a bend at x moves the free end by
      return [integral(x => ((load * moment(x)) / (o.modulus * 1000 * second)) * (o.length - x), 0, o.length)];
    };
    agree(
      all,
      one => {
        const o = one as One;
        return value('PIN.DEFLECTION', o.length, o.diameter, o.pressure, `${o.modulus} GPa`);
      },
      o => bending(o as One, (o as One).pressure * (o as One).diameter, x => ((o as One).length - x) ** 2 / 2),
      {
        'the load at the tip': o =>
          bending(o as One, (o as One).pressure * (o as One).diameter * (o as One).length, x => (o as One).length - x),
        'half the circumference for the diameter': o =>
          bending(o as One, ((o as One).pressure * (o as One).diameter * Math.PI) / 2, x => ((o as One).length - x) ** 2 / 2),
      },
      1e-7,
    );
  });
});

describe('a search', () => {
  test('JUNCTION.CIRCLE and JUNCTION.RATIO: the largest circle on the axis of the rib that no point of the outline enters', () => {
    const all = cases({ wall: [1, 4], rib: [0.3, 1.8], fillet: [0.05, 1] }, 30);
    type One = Record<'wall' | 'rib' | 'fillet', number>;
    const circle = ({ wall, rib: share, fillet: part }: One): number => {
      const [rib, fillet] = [share * wall, part * wall];
      const arc = Array.from({ length: 401 }, (_, i) => (i * Math.PI) / 2 / 400).map(
        angle => [rib / 2 + fillet - fillet * Math.cos(angle), wall + fillet - fillet * Math.sin(angle)] as const,
      );
      const radius = (y: number): number => Math.min(y, ...arc.map(([px, py]) => Math.hypot(px, py - y)));
      // rises with the outer face, falls as the arcs come closer
      const middle = root(y => y - Math.min(...arc.map(([px, py]) => Math.hypot(px, py - y))), 0, wall + fillet);
      return 2 * Math.max(radius(middle), ...Array.from({ length: 50 }, (_, i) => radius(((i + 1) * (wall + fillet)) / 50)));
    };
    const wrong = {
      'the diagonal': (o: Case) => [Math.hypot((o as One).wall, (o as One).rib * (o as One).wall)],
      'no fillet': (o: Case) => [circle({ ...(o as One), fillet: 1e-9 })],
    };
    agree(
      all,
      o => value('JUNCTION.CIRCLE', (o as One).wall, (o as One).rib * (o as One).wall, (o as One).fillet * (o as One).wall),
      o => [circle(o as One)],
      wrong,
      5e-5,
    );
    agree(
      all,
      o => value('JUNCTION.RATIO', (o as One).wall, (o as One).rib * (o as One).wall, (o as One).fillet * (o as One).wall),
      o => [circle(o as One) / (o as One).wall],
      { squared: o => [(circle(o as One) / (o as One).wall) ** 2] },
      5e-5,
    );
  });

  test('BOSS.CIRCLE: of all circles that stand on the outer face, the largest that enters neither the foot outside nor the edge of the hole', () => {
    const all = cases({ wall: [2, 4], width: [0.5, 1], fillet: [0.1, 0.4], ring: [0.1, 0.4], floor: [0.5, 0.9] }, 30);
    type One = Record<'wall' | 'width' | 'fillet' | 'ring' | 'floor', number>;
    const sizes = (o: Case): One => {
      const { wall, width, fillet, ring, floor } = o as One;
      return { wall, width: width * wall, fillet: fillet * wall, ring: ring * wall, floor: floor * wall };
    };
    // x from the outside of the boss wall, y from the outer face; the fillet is an arc about a point in the air
    const circle = ({ wall, width, fillet, ring, floor }: One): number => {
      const foot = wall - ring;
      const isFree = (x: number, r: number): boolean =>
        Math.hypot(x + fillet, foot + fillet - r) >= r + fillet && Math.hypot(x - width, floor - r) >= r;
      const largestAt = (x: number): number => {
        let [free, caught] = [0, 10 * wall];
        for (let i = 0; i < 60; i++) {
          const r = (free + caught) / 2;
          if (isFree(x, r)) free = r;
          else caught = r;
        }
        return free;
      };
      const best = (low: number, high: number): number => {
        const xs = Array.from({ length: 201 }, (_, i) => low + (i / 200) * (high - low));
        const top = xs.reduce((a, b) => (largestAt(b) > largestAt(a) ? b : a));
        return high - low < 1e-7 ? 2 * largestAt(top) : best(top - (high - low) / 100, top + (high - low) / 100);
      };
      return best(0, width);
    };
    agree(
      all,
      o => {
        const { wall, width, fillet, ring, floor } = sizes(o);
        return value('BOSS.CIRCLE', width, wall, fillet, ring, floor);
      },
      o => [circle(sizes(o))],
      {
        'no fillet': o => [circle({ ...sizes(o), fillet: 1e-9 })],
        'no groove': o => [circle({ ...sizes(o), ring: 0 })],
        'a hole that ends at the inner face': o => [circle({ ...sizes(o), floor: sizes(o).wall })],
      },
      1e-6,
    );
  });

  test('TORQUE.WINDOW: every drive of a scattering driver is strong enough and none too strong', () => {
    const all = cases({ drive: [0.05, 0.3], ratio: [4.5, 9], scatter: [0.02, 0.12] }, 40);
    type One = Record<'drive' | 'ratio' | 'scatter', number>;
    const ends = ({ drive, ratio, scatter }: One, spread: (set: number, s: number) => readonly number[]): number[] => {
      const strip = ratio * drive;
      const drives = (set: number): readonly number[] => spread(set, scatter);
      const low = root(set => Math.min(...drives(set)) - Math.max(2 * drive, 0.5 * strip), 0, 9 * strip);
      const high = root(set => Math.max(...drives(set)) - 0.7 * strip, 0, 9 * strip);
      return [ratio, low, high];
    };
    const scattered = (set: number, s: number): readonly number[] => Array.from({ length: 21 }, (_, i) => set * (1 + (s * (i - 10)) / 10));
    agree(
      all,
      o => value('TORQUE.WINDOW', (o as One).drive, (o as One).ratio * (o as One).drive, 3, (o as One).scatter),
      o => ends(o as One, scattered),
      {
        'a driver that does not scatter': o => ends(o as One, set => [set]),
        'half of it': o => ends(o as One, (set, s) => scattered(set, s / 2)),
      },
      1e-6,
    );
  });

  test('SCREW.COUNT: screws are added until they carry the load', () => {
    const all = cases({ load: [100, 20_000], pullout: [200, 3000], safety: [1, 4] }, 60);
    type One = Record<'load' | 'pullout' | 'safety', number>;
    const count = (
      { load, pullout, safety }: One,
      enough: (carried: number) => boolean = carried => carried >= load * safety,
    ): number[] => {
      let screws = 0;
      while (!enough(screws * pullout)) screws++;
      return [screws];
    };
    agree(
      all,
      one => value('SCREW.COUNT', (one as One).load, (one as One).pullout, (one as One).safety),
      o => count(o as One),
      {
        'one too many': o => [1 + (count(o as One)[0] as number)],
        'rounded down': o => [(count(o as One)[0] as number) - 1],
      },
    );
  });

  // ISO 1478 and ISO 7049, read in secondary copies: d1 max 2.90, cone point 2.6, length ±0.8 (to 13 mm; from memory to 19)
  test('SCREW.LENGTH.PICK of ST2.9: each length of ISO 7049 in turn, at every corner of the tolerances', () => {
    const LENGTHS = [4.5, 6.5, 9.5, 13, 16];
    const all = cases({ grip: [1, 5], tolerance: [0.05, 0.3], ratio: [0.3, 2], room: [0.5, 6] }, 200);
    type One = Record<'grip' | 'tolerance' | 'ratio' | 'room', number>;
    /** The hole leaves more or less room under a screw of that length. */
    const holeDepth = (o: One): number => 16 - o.grip - 2 * o.room + 2;
    const picked = (o: One, lengthTol: number, point: number): number | undefined =>
      LENGTHS.find(length =>
        [-lengthTol, lengthTol].every(l =>
          [-o.tolerance, o.tolerance].every(g =>
            [-0.1, 0.1].every(
              r =>
                (length + l - (o.grip + g) - (0.8 + r) - point) / 2.9 >= o.ratio - 1e-9 &&
                length + l - (o.grip + g) + 0.5 <= holeDepth(o) + 1e-9,
            ),
          ),
        ),
      );
    const found = all.filter(one => picked(one as One, 0.8, 2.6) !== undefined);
    expect(found.length).toBeGreaterThanOrEqual(20);
    expect(new Set(found.map(one => picked(one as One, 0.8, 2.6))).size).toBeGreaterThanOrEqual(3);
    const asked = (one: Case): readonly unknown[] => {
      const o = one as One;
      return ['ST2.9', [[o.grip]], [[o.tolerance]], o.ratio, holeDepth(o), 0.5, 0.8, 0.1];
    };
    for (const one of found) expect(value('SCREW.LENGTH.PICK', ...asked(one)), JSON.stringify(one)).toBe(picked(one as One, 0.8, 2.6));
    // a longer one would bottom
    const refused = all.filter(one => !found.includes(one));
    expect(refused.length).toBeGreaterThanOrEqual(20);
    for (const one of refused)
      expect(refusal('SCREW.LENGTH.PICK', ...asked(one)), JSON.stringify(one)).toContain('no standard length of ST2.9 passes');
    for (const [tolerance, point] of [
      [0, 2.6],
      [0.8, 0],
    ] as const)
      expect(found.filter(one => picked(one as One, tolerance, point) !== picked(one as One, 0.8, 2.6)).length).toBeGreaterThanOrEqual(5);
  });
});

describe('inserts', () => {
  /** Thousandths, for sizes that are whole thousandths. */
  const whole = (size: number): number => Math.round(size * 1000);
  /** Slices of the axis that are inside of all pieces; where there is none, those from the end of the first to the start of the last, negative. */
  const common = (from: number, to: number): number => (to >= from ? slices(from, to) : -slices(to, from));
  const slices = (from: number, to: number): number => {
    let count = 0;
    for (let slice = Math.min(from, 0); slice < to; slice++) if (slice >= from) count++;
    return count / 1000;
  };
  const SIZES = {
    length: [6, 20],
    first: [1, 4],
    second: [0.5, 3],
    insert: [3, 8],
    below: [0.05, 0.6],
    point: [0.2, 2],
    margin: [0.2, 3],
    hole: [2, 9],
  } as const;
  type One = Record<keyof typeof SIZES, number>;
  const all = cases(SIZES, 60) as One[];
  const ours = (id: string, args: (one: One) => readonly unknown[]) => (one: Case) => value(id, ...args(one as One));
  const theirs = (form: (one: One) => number) => (one: Case) => [form(one as One)];
  const wrongs = (forms: Readonly<Record<string, (one: One) => number>>): Readonly<Record<string, (one: Case) => readonly number[]>> =>
    Object.fromEntries(Object.entries(forms).map(([name, form]) => [name, theirs(form)]));

  test('INSERT.ENGAGEMENT: slices of the axis that are in the insert and in the full thread', () => {
    const thread = ({ length, point }: One): number => whole(length) - whole(point);
    const top = ({ first, second, below }: One): number => whole(first) + whole(second) + whole(below);
    const end = (o: One): number => top(o) + whole(o.insert);
    const engaged = (o: One): number => common(top(o), Math.min(thread(o), end(o)));
    const args = (o: One): readonly unknown[] => [o.length, [[o.first], [o.second]], o.insert, mm(o.below), mm(o.point)];
    const [through, within] = [all.filter(o => thread(o) > end(o)), all.filter(o => thread(o) <= end(o))];
    expect(through.length).toBeGreaterThanOrEqual(15);
    expect(within.length).toBeGreaterThanOrEqual(15);
    expect(within.filter(o => engaged(o) < 0).length).toBeGreaterThanOrEqual(3);
    agree(through, ours('INSERT.ENGAGEMENT', args), theirs(engaged), wrongs({ 'as if it had no end': o => common(top(o), thread(o)) }));
    agree(
      within,
      ours('INSERT.ENGAGEMENT', args),
      theirs(engaged),
      wrongs({
        'the point counted': o => common(top(o), Math.min(whole(o.length), end(o))),
        'from the face': o => common(top(o) - whole(o.below), thread(o)),
      }),
    );
  });

  test('INSERT.HOLE.DEPTH: one thousandth deeper until the margin is free', () => {
    const depth = (free: (depth: number) => boolean): number => {
      let found = 0;
      while (!free(found)) found++;
      return found / 1000;
    };
    const under = ({ below, insert }: One, found: number): number => found - (whole(below) + whole(insert));
    agree(
      all,
      ours('INSERT.HOLE.DEPTH', o => [o.insert, mm(o.margin), mm(o.below)]),
      theirs(o => depth(found => under(o, found) >= whole(o.margin))),
      wrongs({
        'from the face': o => depth(found => under({ ...o, below: 0 }, found) >= whole(o.margin)),
        'no margin': o => depth(found => under(o, found) >= 0),
      }),
    );
  });

  test('INSERT.LANDING: half thousandths of a radius that are over the insert and beside the hole', () => {
    agree(
      all,
      ours('INSERT.LANDING', o => [o.insert, o.hole]),
      theirs(o => common(whole(o.hole), whole(o.insert)) / 2),
      wrongs({
        'on diameter': o => common(whole(o.hole), whole(o.insert)),
        'the other way round': o => common(whole(o.insert), whole(o.hole)) / 2,
      }),
    );
  });

  test('INSERT.STRAIN: an insert and a bore without it, cooled in a thousand steps', () => {
    const SHRINKING = { plastic: [60, 150], metal: [10, 25], change: [20, 100], shrinkage: [2, 20] } as const;
    type Shrinking = Record<keyof typeof SHRINKING, number>;
    const START = 10;
    const cooled = (ppm: number, change: number): number => {
      let size = START;
      for (let step = 0; step < 1000; step++) size -= START * ppm * 1e-6 * (change / 1000);
      return size;
    };
    const strain = ({ plastic, metal, change, shrinkage }: Shrinking): number =>
      (cooled(metal, change) - (cooled(plastic, change) - (START * shrinkage) / 1000)) / START;
    agree(
      cases(SHRINKING, 60),
      one => {
        const { plastic, metal, change, shrinkage } = one as Shrinking;
        return value('INSERT.STRAIN', plastic, metal, -change, shrinkage / 1000);
      },
      one => [strain(one as Shrinking)],
      {
        'the insert does not shrink': one => [strain({ ...(one as Shrinking), metal: 0 })],
        'no shrinkage of the mould': one => [strain({ ...(one as Shrinking), shrinkage: 0 })],
      },
    );
  });

  test('INSERT.PULLOUT: the many sides of a prism, each at the shear where pure shear yields', () => {
    const FORCE = { diameter: [3, 8], length: [3, 10], stress: [20, 80], share: [0.2, 1], safety: [1, 3] } as const;
    type Force = Record<keyof typeof FORCE, number>;
    const SIDES = 1_000_000;
    /** Von Mises from the principal stresses of pure shear: τ, −τ and 0. */
    const equivalent = (shear: number): number => Math.sqrt(((shear + shear) ** 2 + shear ** 2 + shear ** 2) / 2);
    const yieldShear = (stress: number): number => {
      let [low, high] = [0, stress];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (equivalent(middle) < stress) low = middle;
        else high = middle;
      }
      return low;
    };
    const side = (diameter: number): number => diameter * Math.sin(Math.PI / SIDES);
    const force = ({ diameter, length, stress, share, safety }: Force, shear = yieldShear(stress)): number =>
      (SIDES * side(diameter) * length * share * shear) / safety;
    agree(
      cases(FORCE, 60),
      one => {
        const { diameter, length, stress, share, safety } = one as Force;
        return value('INSERT.PULLOUT', diameter, length, stress, share, safety);
      },
      one => [force(one as Force)],
      {
        'half of the yield stress': one => [force(one as Force, (one as Force).stress / 2)],
        'all of the surface': one => [force({ ...(one as Force), share: 1 })],
        'a radius for the diameter': one => [force({ ...(one as Force), diameter: (one as Force).diameter / 2 })],
      },
    );
  });
});

describe('around the screw', () => {
  test('BOSS.CORNER: the nearest of many points on the outline of the corner, laid at the floor', () => {
    const SIZES = { od: [4, 8], x: [2.2, 9], y: [2.2, 9], radius: [1, 11], height: [5, 25], boss: [0.3, 2], wall: [0.3, 2] } as const;
    type One = Record<keyof typeof SIZES, number>;
    const tan = (deg: number): number => Math.tan(radians(deg));
    const POINTS = 20_000;
    /** Least distance from the middle of the boss to walls and arc, each a run of points; the arc round the middle (cx, cx). */
    const known = new Map<string, number>();
    const nearest = ({ x, y }: One, wall: number, r: number): number => {
      const key = [x, y, wall, r].join(' ');
      const end = wall + r;
      let least = known.get(key) ?? Infinity;
      for (let i = 0; i <= POINTS && !known.has(key); i++) {
        const along = end + (10 * i) / POINTS;
        const angle = (Math.PI / 2) * (i / POINTS);
        const onArc = Math.hypot(x - end + r * Math.cos(angle), y - end + r * Math.sin(angle));
        least = Math.min(least, Math.hypot(x - wall, y - along), Math.hypot(x - along, y - wall), onArc);
      }
      known.set(key, least);
      return least;
    };
    const top = (one: One): number => nearest(one, 0, one.radius) - one.od / 2;
    const inward = ({ height, wall }: One): number => height * tan(wall);
    const floor = (one: One, r = Math.max(0, one.radius - inward(one)), wall = inward(one)): number =>
      nearest(one, wall, r) - one.od / 2 - one.height * tan(one.boss);
    const isClear = (one: One): boolean => 2 * Math.min(one.x, one.y) > one.od && top(one) > 0;
    // a middle that the walls have passed is on their other side
    const all = (cases(SIZES, 200) as One[]).filter(one => isClear(one) && inward(one) < Math.min(one.x, one.y, one.radius));
    const inCorner = all.filter(one => Math.max(one.x, one.y) < one.radius);
    expect(all.length - inCorner.length).toBeGreaterThanOrEqual(30);
    expect(inCorner.length).toBeGreaterThanOrEqual(15);
    const ours = (one: Case): unknown => {
      const { od, x, y, radius, height, boss, wall } = one as One;
      return value('BOSS.CORNER', od, x, y, mm(radius), height, degrees(boss), degrees(wall));
    };
    const WRONG = {
      'at the free end': (one: Case) => [top(one as One)],
      'walls that lean away': (one: Case) => {
        const { wall, ...rest } = one as One;
        return [floor({ ...rest, wall: -wall })];
      },
      'a boss without draft': (one: Case) => [floor({ ...(one as One), boss: 0 })],
    };
    agree(all, ours, one => [floor(one as One)], WRONG, 2e-5);
    agree(inCorner, ours, one => [floor(one as One)], { 'a radius kept constant': one => [floor(one as One, (one as One).radius)] }, 2e-5);
    // where the draft has used the radius up, the corner is sharp
    expect(value('BOSS.CORNER', 6, 4, 4, 0.2, 20, 0, '1°')).toBeCloseTo(4 - 20 * tan(1) - 3, 12);
  });

  test('HOLE.PROJECTED: every axis that leans in its zone, at the top of the plate', () => {
    const SIZES = { screw: [2, 6], boss: [0.05, 0.6], hole: [0.05, 0.6], plate: [1, 12], thread: [3, 12] } as const;
    type One = Record<keyof typeof SIZES, number>;
    const STEPS = 200;
    /** Farthest from the true place, an axis through any two points of the ends of the zone. */
    const off = ({ boss, plate, thread }: One, heightMm = plate): number => {
      let most = 0;
      for (let i = 0; i <= STEPS; i++)
        for (let j = 0; j <= STEPS; j++) {
          const [mouth, bottom] = [boss * (i / STEPS - 0.5), boss * (j / STEPS - 0.5)];
          most = Math.max(most, Math.abs(mouth + ((mouth - bottom) / thread) * heightMm));
        }
      return most;
    };
    const smallest = (one: One, heightMm?: number): number => one.screw + 2 * (off(one, heightMm) + one.hole / 2);
    agree(
      cases(SIZES, 60),
      one => {
        const { screw, boss, hole, plate, thread } = one as One;
        return value('HOLE.PROJECTED', screw, boss, hole, plate, thread);
      },
      one => [smallest(one as One)],
      {
        'a projected zone': one => [smallest(one as One, 0)],
        'the zones changed over': one => {
          const { boss, hole, ...rest } = one as One;
          return [smallest({ ...rest, boss: hole, hole: boss })];
        },
        'half of the plate': one => [smallest(one as One, (one as One).plate / 2)],
      },
      1e-5,
    );
  });

  test('PATTERN.SLOT: everywhere the pin comes to, at both ends of tolerance and temperature', () => {
    const SIZES = {
      hole: [2, 6],
      distance: [30, 150],
      over: [0.02, 0.3],
      under: [0.02, 0.3],
      a: [10, 150],
      b: [10, 30],
      change: [20, 80],
    } as const;
    type One = Record<keyof typeof SIZES, number>;
    const longer = (lengthMm: number, ppm: number, kelvin: number): number => {
      let length = lengthMm;
      for (let step = 0; step < 1000; step++) length += lengthMm * ppm * 1e-6 * (kelvin / 1000);
      return length;
    };
    /** How far from the middle of the slot the pin may be; the slot reaches as far to both sides. */
    const reach = ({ distance, over, under, a, b, change }: One): number => {
      const places = [over, -under].flatMap(tolerance =>
        [change, -change, 0].map(kelvin => longer(distance, a, kelvin) - longer(distance, b, kelvin) + tolerance),
      );
      return Math.max(...places.map(Math.abs));
    };
    agree(
      cases(SIZES, 60),
      one => {
        const { hole, distance, over, under, a, b, change } = one as One;
        return value('PATTERN.SLOT', hole, distance, `+${over}/-${under}`, a, b, -change);
      },
      one => [(one as One).hole + 2 * reach(one as One)],
      {
        'to one side': one => [(one as One).hole + reach(one as One)],
        'both parts alike': one => [(one as One).hole + 2 * reach({ ...(one as One), b: (one as One).a })],
        'no tolerance': one => [(one as One).hole + 2 * reach({ ...(one as One), over: 0, under: 0 })],
      },
      1e-7,
    );
  });

  test('PATTERN.TURN: a board turned until one of its holes touches its pin', () => {
    const SIZES = { round: [0.05, 0.4], slot: [0.05, 0.6], distance: [40, 150] } as const;
    type One = Record<keyof typeof SIZES, number>;
    /** Whether there is a place: the middle of the round hole moves across, where that lets the board turn most. */
    const fits = ({ round, slot, distance }: One, angle: number): boolean => {
      const steps = 400;
      for (let i = 0; i <= steps; i++) {
        const across = round * (i / steps - 0.5);
        if (Math.abs(across - distance * Math.sin(angle)) <= slot / 2) return true;
      }
      return false;
    };
    const turn = (one: One): number => {
      let [low, high] = [0, 0.1];
      for (let i = 0; i < 50; i++) {
        const angle = (low + high) / 2;
        if (fits(one, angle)) low = angle;
        else high = angle;
      }
      return (low * 180) / Math.PI;
    };
    agree(
      cases(SIZES, 60),
      one => {
        const { round, slot, distance } = one as One;
        return value('PATTERN.TURN', mm(round), mm(slot), distance);
      },
      one => [turn(one as One)],
      {
        'plays per side': one => [2 * turn(one as One)],
        'the slot alone': one => [turn({ ...(one as One), round: 0 })],
        radians: one => [radians(turn(one as One))],
      },
      // the exact sine is the tangent to within a share of half the turn squared
      1e-4,
    );
  });
});
