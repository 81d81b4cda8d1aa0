// Numbers that others printed, through the functions. Each is typed from its source; half of its last digit is allowed.
import { describe, expect } from 'vitest';
import { parseSize } from '../../src/core/screw/size';
import { screwOf, type Screw } from '../../src/core/screw/thread';
import { CARDS } from '../../src/registry';
import { number, value } from '../kit/ask';
import { expectPrinted, expectText, halfDigit } from '../kit/near';
import { refereed } from '../kit/refereed';

const test = refereed('evidence/published.test.ts');

const INCH = 25.4;
const LBF = 4.4482216152605;
const inches = (mm: number): number => mm / INCH;
const column = (...cells: unknown[]): unknown[][] => cells.map(cell => [cell]);
const table = (id: string, ...args: unknown[]): unknown[][] => value(id, ...args) as unknown[][];

describe('draft chart for 1 inch of depth (read in 1 secondary copy), per side in inches', () => {
  const CHART = [
    ['0.5°', '.0087'],
    ['1°', '.0175'],
    ['2°', '.035'],
    ['3°', '.052'],
    ['4°', '.070'],
    ['5°', '.087'],
    ['6°', '.105'],
    ['7°', '.123'],
    ['8°', '.141'],
    ['9°', '.158'],
  ] as const;

  test.each(CHART)('DRAFT.OFFSET, %s: %s', (draft, printed) => {
    expectText(inches(number('DRAFT.OFFSET', '1 in', draft)), printed);
  });

  test.each(CHART)('DRAFT.ANGLE and DRAFT.HEIGHT, backwards from the printed offset, %s: %s', (draft, printed) => {
    const [least, most] = [-1, 1].map(side => `${Number(printed) + side * halfDigit(printed)} in`);
    const angle = Number.parseFloat(draft);
    expect(number('DRAFT.ANGLE', least, '1 in')).toBeLessThanOrEqual(angle);
    expect(number('DRAFT.ANGLE', most, '1 in')).toBeGreaterThanOrEqual(angle);
    expect(number('DRAFT.HEIGHT', least, draft)).toBeLessThanOrEqual(INCH);
    expect(number('DRAFT.HEIGHT', most, draft)).toBeGreaterThanOrEqual(INCH);
  });

  test.each([
    ['DRAFT.SIZE', ['2 in', '1 in', 'α', 'grows'], 2, 2],
    ['DRAFT.SIZE', ['2 in', '1 in', 'α', 'shrinks'], 2, -2],
    ['HOLE.AT', ['2 in', '1 in', 'α'], 2, -2],
    ['HOLE.MOUTH', ['2 in', '1 in', 'α'], 2, 2],
    ['BOSS.OD', ['1 in', '0.5 in', '1 in', 'α'], 2, 2],
    ['BOSS.WALL', ['2 in', '1 in', '1 in', 'α'], 0.5, 1],
    ['BOSS.WALL', ['2 in', '1 in', '1 in', 0, 'α'], 0.5, 1],
    ['BOSS.WALL', ['2 in', '1 in', '1 in', 'α', 'α'], 0.5, 2],
    ['BOSS.STEEL', ['1 in', '1 in', 'α', 0], 1, -1],
    ['BOSS.STEEL', ['1 in', '1 in', 'α', 'α'], 1, -2],
    ['RECESS.DIAMETER', ['1 in', 0, '1 in', 'α'], 1, 2],
    ['RIB.TIP', ['1 in', '1 in', 'α'], 1, -2],
    ['RIB.BASE', ['1 in', '1 in', 'α'], 1, 2],
    ['BOARD.GAP', ['1 in', 0, '2 in', 0, '1 in', 'α'], 0.5, 1],
  ] as const)('the term with draft of %s %j: without it %d in, and the chart %d times', (id, args, plain, times) => {
    for (const [draft, printed] of CHART)
      expectText(inches(number(id, ...args.map(arg => (arg === 'α' ? draft : arg)))) - plain, printed, times);
  });

  test.each(CHART)('BOSS.ENDS, the root of a boss 1 inch high, %s: %s', (draft, printed) => {
    const root = table('BOSS.ENDS', '2 in', '1 in', '1 in', draft, draft)[2] as number[];
    expectText(inches(root[1] as number) - 2, printed, 2);
    expectText(inches(root[2] as number) - 1, printed, -2);
    expectText(inches(root[3] as number) - 0.5, printed, 2);
  });
});

describe('Shigley’s Mechanical Engineering Design, 9th ed., Ex. 1–3, p. 20 (read in 1 secondary copy): w = a − b − c − d = .005 ± .010 in', () => {
  const [a, b, c, d] = ['1.750 in', '0.750 in', '0.120 in', '0.875 in'];
  const [ta, tb, tc, td] = ['0.003 in', '0.001 in', '0.005 in', '0.001 in'];
  const LIMITS = [-0.005, 0.005, 0.015];

  test('PENETRATION and ENGAGEMENT: a through b, c and d', () => {
    expectPrinted(inches(number('PENETRATION', a, column(b, c, d))), 0.005);
    expectPrinted(inches(number('ENGAGEMENT', a, column(b, c), d)), 0.005);
    expectPrinted(inches(number('ENGAGEMENT', a, b, c, d)), 0.005);
  });
  test('GRIP and GRIP.LIMITS: a less the stack b, c, d', () => {
    expectPrinted(1.75 - inches(number('GRIP', column(b, c, d))), 0.005);
    const [least, nominal, most] = (table('GRIP.LIMITS', column(b, c, d), column(tb, tc, td))[0] as number[]).map(inches) as [
      number,
      number,
      number,
    ];
    expectPrinted([1.747 - most, 1.75 - nominal, 1.753 - least], LIMITS);
  });
  test('ENGAGEMENT.LIMITS: worst min, nominal, worst max', () => {
    expectPrinted((table('ENGAGEMENT.LIMITS', a, ta, column(b, c, d), column(tb, tc, td))[0] as number[]).slice(0, 3).map(inches), LIMITS);
    expectPrinted((table('ENGAGEMENT.LIMITS', a, ta, column(b, c), column(tb, tc), d, td)[0] as number[]).slice(0, 3).map(inches), LIMITS);
  });
  test('SCREW.BOTTOM: the room b + c + d − a at its least is −.015 in', () => {
    expectPrinted(inches(number('SCREW.BOTTOM', b, tb, a, ta, column(c, d), column(tc, td))), -0.015);
  });
  test('RIM.GAP and RIM.GAP.LIMITS: stack a against stack b, c, d', () => {
    expectPrinted(inches(number('RIM.GAP', a, '1.745 in')), 0.005);
    expectPrinted((table('RIM.GAP.LIMITS', a, ta, column(b, c, d), column(tb, tc, td))[0] as number[]).slice(0, 3).map(inches), LIMITS);
  });
  test('BOARD.CLAMP: space a, what fills it 1.745 ± .007 in', () => {
    expectPrinted((table('BOARD.CLAMP', a, ta, '1.745 in', '0.007 in')[0] as number[]).map(inches), LIMITS);
  });
  test('STACK.TABLE: the row of the worst case', () => {
    const rows = table('STACK.TABLE', column('a', 'b', 'c', 'd'), column(a, b, c, d), column(ta, tb, tc, td), column(1, -1, -1, -1));
    const [, nominal, upper, lower] = rows.find(([link]) => link === 'total, worst case') as [string, number, number, number];
    expectPrinted([nominal, upper, lower].map(inches), [0.005, 0.01, -0.01]);
  });
});

describe('pages on stacks (each read in 1 copy)', () => {
  test('STACK.RSS: .005, .003, .002 give ±.00616, with a housing of ±.005 ±.00794', () => {
    expectPrinted(number('STACK.RSS', column(0.005, 0.003, 0.002)), '0.00616');
    expectPrinted(number('STACK.RSS', column(0.005, 0.003, 0.002, 0.005)), '0.00794');
  });
  test('STACK.TABLE: 4.020 − 2.000 − 1.500 − .500: worst case .005 to .035, root sum square .012 to .028', () => {
    const rows = table(
      'STACK.TABLE',
      column('housing', 'A', 'B', 'C'),
      column(4.02, 2, 1.5, 0.5),
      column(0.005, 0.005, 0.003, 0.002),
      column(1, -1, -1, -1),
    );
    const limits = (name: string): number[] => {
      const [, nominal, upper, lower] = rows.find(([link]) => link === name) as [string, number, number, number];
      return [nominal + lower, nominal + upper];
    };
    expectPrinted(limits('total, worst case'), [0.005, 0.035]);
    expectPrinted(limits('total, root sum square'), ['0.012', '0.028']);
  });
  test.each([
    [5, 0.5, '0.224'],
    [10, 1, '0.316'],
  ])('STACK.WORST and STACK.RSS: %d parts of ±0.1: ±%d and ±%s', (n, worst, rss) => {
    const tolerances = Array.from({ length: n }, () => [0.1]);
    expect(number('STACK.WORST', tolerances)).toBeCloseTo(worst, 12);
    expectPrinted(number('STACK.RSS', tolerances), rss);
  });
});

describe('fabricators of boards (read in 2 pages): 1.6 mm ± 10 % is 1.44 to 1.76 mm', () => {
  test('LIMITS', () => expectPrinted(value('LIMITS', '1.6 ±10%'), [[1.6, 1.44, 1.76]]));
});

/** A screw of this mean diameter and lead, for examples on other threads than those held here. */
const screwWith = (meanDiaMm: number, leadMm: number): Screw => ({
  ...screwOf(parseSize('ST2.9')),
  majorMaxMm: meanDiaMm,
  rootMaxMm: meanDiaMm,
  pitchMm: leadMm,
});

/** The formula of a function, past the reading of its arguments. */
const formula = (id: string): ((...args: unknown[]) => number) => CARDS.get(id)?.formula as unknown as (...args: unknown[]) => number;

describe('power screws', () => {
  const jack = screwWith(22.5, 5);
  test('TORQUE.STRIP: solutions to Shigley, problem 8-4 (read in 1 secondary copy): 6 kN, mean diameter 22.5, lead 5 mm, friction .08: 10.23 N·m', () => {
    expectPrinted(formula('TORQUE.STRIP')(6000, jack, 0.08), '10.23');
  });
  test('TORQUE.CLAMP: the same with a collar of 40 mm mean diameter, friction .05: 16.23 N·m', () => {
    expectPrinted(formula('TORQUE.CLAMP')(6000, jack, 0.08, 0.05, 50, 30, 0), '16.23');
  });
  test('TORQUE.STRIP: a book of statics (read in 1 copy): 10 000 lb, square thread, 2 to the inch, mean diameter 2 in, friction .2: 2840 in·lb', () => {
    const torqueInLb = (formula('TORQUE.STRIP')(10_000 * LBF, screwWith(2 * INCH, INCH / 2), 0.2) * 1000) / (LBF * INCH);
    expect(Math.abs(torqueInLb - 2840)).toBeLessThanOrEqual(5);
  });
  test('TORQUE.CLAMP: solutions to Shigley, problem 8-6 (read in 1 secondary copy): Acme 29°, 2500 lbf, 2.75 in, lead .5 in, friction .05: 377.6 lbf·in; with a collar of 5 in, .06: 753', () => {
    const press = screwWith(2.75 * INCH, 0.5 * INCH);
    const torqueLbfIn = (headFriction: number): number =>
      (formula('TORQUE.CLAMP')(2500 * LBF, press, 0.05, headFriction, 6 * INCH, 4 * INCH, 14.5) * 1000) / (LBF * INCH);
    expectPrinted(torqueLbfIn(0), '377.6');
    expectPrinted(torqueLbfIn(0.06), '753');
  });
  test('TORQUE.WINDOW: drive : tighten : strip = 1 : 2 or more : 3 or more (common practice, read in 1 secondary copy)', () => {
    expect(table('TORQUE.WINDOW', 1, 3, 3, '0 %')[1]?.slice(0, 3)).toEqual([3, 'pass', 2]);
    expect(table('TORQUE.WINDOW', 1, 2.99, 3, '0 %')[1]?.[1]).toBe('fail');
  });
});

describe('strength of materials', () => {
  test('PULLOUT.BOSS: Singer, problem 104 (read in 3 secondary copies; book from memory): bore 100 mm, 400 kN at 120 MPa: outside diameter 119.35 mm', () => {
    const tear = (odMm: number): number => formula('PULLOUT.BOSS')(odMm, screwWith(100, 1), 120, 1);
    expect(tear(119.345)).toBeLessThanOrEqual(400_000);
    expect(tear(119.355)).toBeGreaterThanOrEqual(400_000);
  });
  test('PULLOUT.SEAT: Singer, problem 115 (read in 1 secondary copy; book from memory): a punch of 20 mm through 25 mm at 350 MPa of shear: 549.8 kN', () => {
    expectPrinted(number('PULLOUT.SEAT', 20, 25, 350 * Math.sqrt(3)) / 1000, '549.8');
  });
  test('INSERT.PULLOUT: Singer, problem 115 (read in 1 secondary copy; book from memory): a punch of 20 mm through 25 mm at 350 MPa of shear: 549.8 kN', () => {
    expectPrinted(number('INSERT.PULLOUT', 20, 25, 350 * Math.sqrt(3), 1) / 1000, '549.8');
  });
  test('INSERT.STRAIN: Crawford, Plastics Engineering, p. 63 (read in 1 secondary copy): acetal 80 held by steel 11, 80 °C: 0.55 %', () => {
    expectPrinted(number('INSERT.STRAIN', 80, 11, 80) * 100, '0.55');
  });
  test('CLAMP.RELAX: a page on stress relaxation (read in 1 copy): polycarbonate held at 1.9 %, 36 MPa after an hour, 1579 MPa of modulus after 1000: 30 MPa', () => {
    expectPrinted(number('CLAMP.RELAX', 36, 36 / 0.019, 1579), '30');
  });
  test('HOLE.PROJECTED: ASME Y14.5M-1994, appendix B5 (numbers read in 1 secondary copy, the result from memory): 6.35, 0.2, 0.4, 12 on 8 deep: 8.15', () => {
    expectPrinted(number('HOLE.PROJECTED', 6.35, 0.4, 0.2, 12, 8), '8.15');
  });
  test('BEARING: a page of solved problems (read in 1 copy): 55 kN on a ring of 50 and 40 mm: 77.80 MPa, its last digit cut off', () => {
    expect(Math.floor(number('BEARING', '55 kN', 50, 40) * 100)).toBe(7780);
  });
  test('BOSS.TORSION: a course on mechanics of materials (read in 1 copy): 5 kN·m on 114 and 102 mm: 47.86 MPa; 430 N·m on 40 and 30 mm: 50 MPa', () => {
    expectPrinted(number('BOSS.TORSION', 5000, 114, 102), '47.86');
    expectPrinted(number('BOSS.TORSION', 430, 40, 30), '50');
  });
  test('RIB.SECTION: a page of solved problems (read in 1 copy): flange 150 × 50 on a web 50 × 150: centroid 125 mm above the foot of the web', () => {
    const section = new Map(table('RIB.SECTION', 150, 50, 50, 50, 150) as [string, number][]);
    expect(200 - (section.get('centroid from the outer face') ?? 0)).toBeCloseTo(125, 9);
    expect(section.get('area')).toBe(15_000);
  });
  test('RIB.SECTION: Hibbeler, Mechanics of Materials, examples A.1 and A.2 (from memory, recomputed): flange 8 × 3 in, web 2 × 10 in: 8.55 in above its foot, 646 in⁴', () => {
    const section = new Map(table('RIB.SECTION', '8 in', '3 in', '2 in', '2 in', '10 in') as [string, number][]);
    expectPrinted(13 - inches(section.get('centroid from the outer face') ?? 0), '8.55');
    expectPrinted((section.get('second moment of area') ?? 0) / INCH ** 4, '646');
  });
  test('HOOP.LIMIT: Crawford, Plastics Engineering, Ex. 2.7, p. 64–65 (read in 1 secondary copy), backwards: 18 MPa at the bore is .32 mm on the radius', () => {
    expectPrinted(number('HOOP.LIMIT', 18, 30, 50, 1000, 0.4) / 2, '0.32');
  });
  test('BOSS.MASS, the outside cone: a page of solved problems (read in 1 copy): frustum of 28 and 4 cm, 9 cm high: 684·π cm³', () => {
    const draft = `${((Math.atan(12 / 9) * 180) / Math.PI).toFixed(12)}°`;
    expect(number('BOSS.MASS', 40, 1e-6, 90, 1, draft) / (684 * Math.PI)).toBeCloseTo(1, 9);
  });
});

/** Both tables whole: of GF33 where GF30 is held; POM the copolymer; the diffusivity of PA66 could not be read. */
const CRAWFORD = {
  density: { ABS: 1.04, POM: 1.41, PMMA: 1.18, PA66: 1.14, 'PA66-GF30': 1.38, PC: 1.15, PP: 0.905, PS: 1.05, 'PE-HD': 0.95 },
  expansion: { ABS: 90, POM: 95, PMMA: 70, PA66: 90, 'PA66-GF30': 30, PC: 65, PP: 100, PS: 80, 'PE-HD': 120 },
  diffusivity: { ABS: 0.17, POM: 0.072, PMMA: 0.109, 'PA66-GF30': 0.133, PC: 0.147, PP: 0.065, PS: 0.06, 'PE-HD': 0.157 },
  strength: { ABS: 38, POM: 70, PMMA: 70, PA66: 70, 'PA66-GF30': 115 },
  modulus: { ABS: 2200, POM: 2600, PMMA: 2900, PA66: 2800, 'PA66-GF30': 5100 },
} as const;

describe('Crawford, Plastics Engineering, tables 1.5 and 1.8, p. 22 and 31 (read in 1 secondary copy)', () => {
  test('MATERIAL: 11 of the 36 values are the same, 25 differ', () => {
    const printed = Object.entries(CRAWFORD).flatMap(([quantity, column]) =>
      Object.entries(column).map(([material, size]) => [material, quantity, size] as const),
    );
    const same = printed.filter(([material, quantity, size]) => Math.abs(number('MATERIAL', material, quantity) - size) < 1e-9 * size);
    expect(same.map(([material, quantity]) => `${quantity} ${material}`)).toEqual([
      'density POM',
      'density PMMA',
      'density PA66',
      'density PP',
      'density PS',
      'expansion ABS',
      'expansion PMMA',
      'expansion PA66',
      'expansion PC',
      'diffusivity PP',
      'strength PMMA',
    ]);
    expect([same.length, printed.length]).toEqual([11, 36]);
  });
});
