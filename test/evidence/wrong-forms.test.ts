// The wrong forms that circulate, beside the right one: each test fails if the wrong form is put in its place.
import { describe, expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const row = (id: string, ...args: unknown[]): number[] => (value(id, ...args) as number[][])[0] as number[];
const rows = (id: string, ...args: unknown[]): unknown[][] => value(id, ...args) as unknown[][];

/** The right value by hand, and that the wrong one is another by more than its printed digits hide. */
function expectNot(actual: number, printed: number | string, wrong: number): void {
  expectPrinted(actual, printed);
  const right = Number(printed);
  expect(Math.abs(wrong - right)).toBeGreaterThan(0.02 * Math.abs(right));
  expect(Math.abs(actual - wrong)).toBeGreaterThan(0.01 * Math.abs(right));
}

const LAYERS = [[2.5], [1.6]];
const TOLERANCES = [[0.1], [0.16]];

describe('point and relief counted as engagement', () => {
  // ST2.9 × 13 through 4.1: 8.9 below the boss face; relief 0.8, cone point 2.6 (ISO 1478)
  test('ENGAGEMENT is 5.5, not the 8.9 below the boss face, nor 8.1 without the relief alone, nor 6.3 without the point alone', () => {
    const engagement = number('ENGAGEMENT', 13, LAYERS, 0.8, 'ST2.9 cone');
    for (const wrong of [8.9, 8.1, 6.3]) expectNot(engagement, 5.5, wrong);
    expectPrinted(number('PENETRATION', 13, LAYERS), 8.9);
  });
  test('ENGAGEMENT.LIMITS is 4.34 at worst, 1.497 d; with point and relief it would seem 2.67 d and pass', () => {
    const worst = row('ENGAGEMENT.LIMITS', 13, 'ST2.9 cone', LAYERS, TOLERANCES, 0.8, 0.1, 'ST2.9 cone')[0] as number;
    const counted = row('ENGAGEMENT.LIMITS', 13, 'ST2.9 cone', LAYERS, TOLERANCES, 0, 0, '0 mm')[0] as number;
    expectNot(worst, 4.34, counted);
    expectPrinted(number('ENGAGEMENT.RATIO', worst, 'ST2.9'), '1.497');
    expect(value('CHECK.MIN', number('ENGAGEMENT.RATIO', worst, 'ST2.9'), 2)).toBe('fail');
    expect(value('CHECK.MIN', number('ENGAGEMENT.RATIO', counted, 'ST2.9'), 2)).toBe('pass');
  });
  test('SCREW.LENGTH.PICK takes 16; with point and relief counted it would be 13', () => {
    expect(number('SCREW.LENGTH.PICK', 'ST2.9', LAYERS, TOLERANCES, 2, 14.75, 1, 0.8, 0.1)).toBe(16);
    const counted = row('ENGAGEMENT.LIMITS', 13, 'ST2.9 cone', LAYERS, TOLERANCES, 0, 0, '0 mm')[0] as number;
    expect(counted / 2.9).toBeGreaterThan(2);
  });
});

describe('the length tolerance of a tapping screw left out, or that of a machine screw in its place', () => {
  test('ENGAGEMENT.LIMITS: ±0.8 leaves 4.34; without it 5.14, with js15 (±0.35) 4.79', () => {
    const worst = (tolerance: unknown): number => row('ENGAGEMENT.LIMITS', 13, tolerance, LAYERS, TOLERANCES, 0.8, 0.1, 2.6)[0] as number;
    expectNot(worst('ST2.9 cone'), 4.34, 5.14);
    expectNot(worst('ST2.9 cone'), 4.34, 4.79);
    expectPrinted([worst(0), worst(0.35)], [5.14, 4.79]);
  });
  test('SCREW.BOTTOM: a hole of 14.2 leaves a screw of 16 1.24 mm at worst, not 2.04', () => {
    expectNot(
      number('SCREW.BOTTOM', 14.2, 0, 16, 'ST2.9 cone', LAYERS, TOLERANCES),
      1.24,
      number('SCREW.BOTTOM', 14.2, 0, 16, 0, LAYERS, TOLERANCES),
    );
  });
  test('SCREW.BOTTOM takes the thinnest layers, not the thickest: they let the screw deeper', () => {
    expectNot(number('SCREW.BOTTOM', 14.2, 0, 16, 0, LAYERS, TOLERANCES), 2.04, 14.2 - (16 - 4.36));
  });
});

describe('draft signs: outside and hole of one boss are opposed', () => {
  // free end 6.4 and 2.4; 14 further, 0.5° outside and 0.25° in the hole
  test('the outside grows away from the free end: DRAFT.SIZE and BOSS.ENDS 6.6444, not 6.1556', () => {
    expectNot(number('DRAFT.SIZE', 6.4, 14, '0.5°', 'grows'), '6.6444', 6.4 - 2 * 14 * tan(0.5));
    expectNot(rows('BOSS.ENDS', 6.4, 2.4, 14, '0.5°', '0.25°')[2]?.[1] as number, '6.6444', 6.1556);
    expectNot(number('BOSS.OD', 2.4, 2, 14, '0.5°'), '6.6444', 6.1556);
  });
  test('the hole shrinks away from its mouth: HOLE.AT and BOSS.ENDS 2.2778, not 2.5222', () => {
    expectNot(number('HOLE.AT', 2.4, 14, '0.25°'), '2.2778', 2.4 + 2 * 14 * tan(0.25));
    expectNot(rows('BOSS.ENDS', 6.4, 2.4, 14, '0.5°', '0.25°')[2]?.[2] as number, '2.2778', 2.5222);
    expectNot(number('HOLE.MOUTH', 2.2778, 14, '0.25°'), '2.40', 2.2778 - 2 * 14 * tan(0.25));
  });
  test('BOSS.WALL: both thicken the wall, 2.1833 at the root; opposed signs would leave 2.0611 or 1.9389', () => {
    const wall = number('BOSS.WALL', 6.4, 2.4, 14, '0.5°', '0.25°');
    for (const wrong of [2 + 14 * (tan(0.5) - tan(0.25)), 2 - 14 * (tan(0.5) - tan(0.25)), 2 - 14 * (tan(0.5) + tan(0.25))])
      expectNot(wall, '2.1833', wrong);
  });
  test('HOLE.TIGHT: the tip meets the narrow end, 0.9972; drafted the other way it would seem free, 1.205', () => {
    expectNot(number('HOLE.TIGHT', 'ST2.9', 2.4, 12.96, '0.5°'), '0.9972', (2.4 + 2 * 12.96 * tan(0.5)) / 2.18);
  });
  test('RECESS.DIAMETER: the recess opens from its floor, 6.3047, not 6.0953', () => {
    expectNot(number('RECESS.DIAMETER', 5.6, 0.6, 3, '1°'), '6.3047', 6.2 - 2 * 3 * tan(1));
  });
  test('RIB.TIP is thinner than the base, RIB.BASE thicker than the tip', () => {
    expectNot(number('RIB.TIP', 1.2, 10, '0.5°'), '1.0255', 1.2 + 2 * 10 * tan(0.5));
    expectNot(number('RIB.BASE', 1.2, 10, '0.5°'), '1.3745', 1.2 - 2 * 10 * tan(0.5));
  });
  test('BOARD.GAP: the pocket opens above its floor: 1.2444 beside a board 14 mm up, not 0.7556', () => {
    expectNot(number('BOARD.GAP', 68, 0, 70, 0, 14, '1°'), '1.2444', 1 - 14 * tan(1));
  });
  test('BOSS.STEEL: boss and wall both lean into the gap', () => {
    expectNot(number('BOSS.STEEL', 3, 12, '0.5°', '1°'), '2.686', 3 - 12 * (tan(0.5) - tan(1)));
  });
  test('the joint too: boss OD at its root, pilot at its bottom, mouth of the recess', () => {
    const names = [
      'screw',
      'head',
      'length',
      'wall',
      'board plane',
      'seat',
      'board',
      'hole',
      'relief',
      'pilot',
      'pilot held at',
      'boss OD',
      'boss height',
      'hole depth',
      'bottom gap',
      'allowance',
    ];
    const values = ['ST2.9', 'ISO 7049', 16, 2.5, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 'mouth', 6.4, 14, 14, 1, 0.6];
    const [root, bottom, mouth] = rows('JOINT.TABLE', [names, values], [['boss OD root', 'pilot bottom', 'recess mouth']])[1] as [
      number,
      number,
      number,
    ];
    expectNot(root, '6.6444', 6.1556);
    expectNot(bottom, '2.2778', 2.5222);
    expectNot(mouth, '6.3047', 6.0953);
  });
});

describe('degrees taken as radians', () => {
  test.each([
    ['DRAFT.OFFSET', [12, 1], '0.2095', 12 * Math.tan(1)],
    ['DRAFT.HEIGHT', [0.2095, 1], '12.002', 0.2095 / Math.tan(1)],
    ['DRAFT.ANGLE', [0.2095, 12], '1.0002', Math.atan(0.2095 / 12)],
    ['HOLE.AT', [6, 12, 1], '5.5811', 6 - 24 * Math.tan(1)],
    ['BOSS.OD', [3, 1, 12, 1], '5.4189', 5 + 24 * Math.tan(1)],
    ['BOSS.WALL', [6, 2, 12, 1], '2.2095', 2 + 12 * Math.tan(1)],
    ['RIB.TIP', [2, 12, 1], '1.5811', 2 - 24 * Math.tan(1)],
    ['RECESS.DIAMETER', [5, 1, 12, 1], '6.4189', 6 + 24 * Math.tan(1)],
    ['BOARD.GAP', [68, 0, 70, 0, 12, 1], '1.2095', 1 + 12 * Math.tan(1)],
    ['RECESS.CONE', [6.3, 3.4, 82], '1.668', 1.45 / Math.tan(41)],
    ['TORQUE.CLAMP', [200, 'ST2.9', 0.2, 0.25, 5.6, 3.4, 30], '0.20925', 0.0001],
  ] as const)('%s %j is %s', (id, args, right, wrong) => expectNot(number(id, ...args), right, wrong));

  test('RECESS.CONE: half the included angle, not the whole', () => {
    expectNot(number('RECESS.CONE', 6.3, 3.4, 90), 1.45, 1.45 / tan(89.9));
  });
});

describe('one standard in place of another', () => {
  test('SCREW.HEAD.DIAMETER: M3 countersunk of ISO 7046 is 5.5 (DIN 965 has 5.6), M3 pan of ISO 7045 5.6 (DIN 7985 has 6.0)', () => {
    expect(number('SCREW.HEAD.DIAMETER', 'M3', 'countersunk')).toBe(5.5);
    expect(number('SCREW.HEAD.DIAMETER', 'M3', 'pan')).toBe(5.6);
  });
  test('SCREW.HEAD.HEIGHT: M3 pan of ISO 7045 is 2.4, not 2.52 (DIN 7985) or 1.8 (ISO 1580); ST2.9 of ISO 7049 2.4, not 2.2 (DIN 7981)', () => {
    expect(number('SCREW.HEAD.HEIGHT', 'M3', 'pan')).toBe(2.4);
    expect(number('SCREW.HEAD.HEIGHT', 'M3', 'slotted pan')).toBe(1.8);
    expect(number('SCREW.HEAD.HEIGHT', 'ST2.9', 'pan')).toBe(2.4);
    expect(number('SCREW.HEAD.HEIGHT', 'ST2.9', 'DIN 7981')).toBe(2.2);
  });
  test('TOL.GENERAL: class c of ISO 2768-1 below 6 mm is 0.2 and 0.3, not the 0.15 and 0.2 of DIN 7168', () => {
    expect(number('TOL.GENERAL', 2, 'c')).toBe(0.2);
    expect(number('TOL.GENERAL', 5, 'c')).toBe(0.3);
  });
  test('TOL.IT: IT6 is 10 i, not 16 i as one page prints: 13 µm at 18 to 30 mm, not 21', () => {
    expectNot(1000 * number('TOL.IT', 25, 'IT6'), 13, 16 * 1.3074);
  });
  test('TOL.MOULDED: one tool half and across the parting line are not the same', () => {
    expectNot(number('TOL.MOULDED', 40, 'DIN 16742-TG6', 'same'), 0.31, number('TOL.MOULDED', 40, 'DIN 16742-TG6'));
  });
  test('d of a tapping screw is its largest thread, not the number of its name: ENGAGEMENT.RATIO of ST3.5 divides by 3.53', () => {
    expect(number('ENGAGEMENT.RATIO', 3.53, 'ST3.5')).toBe(1);
    expect(number('ENGAGEMENT.RATIO', 3.5, 'ST3.5')).toBeLessThan(1);
  });
  test('HOLE.PILOT: share of the thread depth on the largest diameters, not the per cent thread of drill charts, d − 0.75·1.299·P', () => {
    expectNot(number('HOLE.PILOT', 'M3', 0.75), 2.5735, 3 - 0.75 * 1.299 * 0.5);
  });
});

describe('height for diameter, radius for diameter, one side for both', () => {
  test('RECESS.DIAMETER reads the diameter of a head, RECESS.DEPTH.MIN its height', () => {
    expectNot(number('RECESS.DIAMETER', 'ST2.9 pan', 0.4), 6, number('RECESS.DEPTH.MIN', 'ST2.9 pan', 0.4));
  });
  test('POSITION.ZONE is a diameter: 0.283 for ±0.1, not 0.141', () => {
    expectNot(number('POSITION.ZONE', 0.1), '0.283', 0.1 * Math.SQRT2);
  });
  test('HOLE.FIXED needs both zones, HOLE.FLOATING one', () => {
    expectNot(number('HOLE.FIXED', 6, 0.3, 0.3), 6.6, number('HOLE.FLOATING', 6, 0.3));
  });
  test('BOARD.REACH counts half the play of the hole, RECESS.FLOAT the whole', () => {
    expectNot(number('BOARD.REACH', 5.6, 3.5, 2.76), 3.17, 5.6 / 2 + (3.5 - 2.76));
    expectNot(number('RECESS.FLOAT', 5.6, 3.5, 2.76, 0), 6.34, 5.6 + (3.5 - 2.76) / 2);
  });
  test('HOOP.STRESS takes the interference on diameter: a value on the radius gives half the stress', () => {
    expectNot(number('HOOP.STRESS', 0.643, 30, 50, 1000, 0.4), '18.04', number('HOOP.STRESS', 0.3215, 30, 50, 1000, 0.4));
  });
  test('BOSS.SINK compares walls, not diameters', () => {
    expectNot(number('BOSS.SINK', number('BOSS.WALL', 6, 2.4), 2.5), 0.72, 6 / 2.5);
  });
  test('BOSS.CONFLICT: OD = 2·d, not 2 × hole: 5.8 asked for ST2.9, not 4.8', () => {
    expectNot(rows('BOSS.CONFLICT', 'ST2.9', 2.5, 2.4)[1]?.[0] as number, 5.8, 4.8);
  });
  test('JUNCTION.CIRCLE is no √(T² + t²): 2.18 for 2 and 1.2, not 2.332', () => {
    expectNot(number('JUNCTION.CIRCLE', 2, 1.2), 2.18, Math.hypot(2, 1.2));
  });
  test('CAVITY.SIZE divides by 1 − S, where 1 + S is 0.04 mm short over 100 mm at 2 %', () => {
    expectPrinted(number('CAVITY.SIZE', 100, 0.02), '102.0408');
    expect(number('CAVITY.SIZE', 100, 0.02) - 102).toBeGreaterThan(0.04);
  });
  test('COOLING.TIME of the centre and of the mean differ by 4/π against 8/π²', () => {
    expectNot(number('COOLING.TIME', 2, 0.085, 240, 60, 90, 'mean'), '7.542', number('COOLING.TIME', 2, 0.085, 240, 60, 90));
  });
});

describe('stacks', () => {
  test('STACK.PPM counts both tails: 2699.8 at Cp 1, not 1349.9', () => {
    expectNot(number('STACK.PPM', 0, 1, -3, 3), '2699.8', number('STACK.PPM', 0, 1, 'none', 3));
  });
  test('STACK.RSS squares before it adds; STACK.WORST adds', () => {
    expectNot(number('STACK.RSS', [[0.3], [0.4]]), 0.5, number('STACK.WORST', [[0.3], [0.4]]));
  });
  test('STACK.WORST takes the size of a sensitivity: opposite signs do not cancel', () => {
    expectNot(number('STACK.WORST', [[0.1], [0.1]], [[1], [-1]]), 0.2, 0);
  });
  test('LIP.FIT and BOARD.CLAMP: both tolerances take from the least gap', () => {
    expectNot(row('LIP.FIT', 0.3, 0.1, 0.05)[0] as number, 0.15, 0.3 - 0.1 + 0.05);
    expectNot(row('BOARD.CLAMP', 2, 0.1, 1.6, 0.16)[0] as number, 0.14, 0.4 - 0.1 + 0.16);
  });
});

describe('what no form may give', () => {
  test('PULLOUT of a machine thread: the sheared cylinder would be 1.7 times too much, so it is refused', () => {
    expect(refusal('PULLOUT', 'M3', 6, 40)).toContain('machine thread');
  });
  test('SCREW.POINT of a flat end is no cone: 2.1, not 2.6', () => {
    expectNot(number('SCREW.POINT', 'ST2.9', 'flat'), 2.1, number('SCREW.POINT', 'ST2.9', 'cone'));
  });
});
