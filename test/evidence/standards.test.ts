// Values as the standards print them, through the functions: typed column by column from the collected reference, which says how each is
// held.
import { describe, expect } from 'vitest';
import { number, value } from '../kit/ask';
import { refereed } from '../kit/refereed';

const test = refereed('evidence/standards.test.ts');

const INCH = 25.4;
const near = (actual: unknown, printed: number): void => expect(actual).toBeCloseTo(printed, 9);
const list = (id: string, ...args: unknown[]): unknown[] => (value(id, ...args) as unknown[][]).flat();

/** size: P, d1 max, d1 min, d2 max, d2 min, y cone, y flat. */
const ISO_1478 = [
  ['ST1.5', 0.5, 1.52, 1.38, 0.91, 0.84, 1.4, 1.1],
  ['ST1.9', 0.6, 1.9, 1.76, 1.24, 1.17, 1.6, 1.2],
  ['ST2.2', 0.8, 2.24, 2.1, 1.63, 1.52, 2, 1.6],
  ['ST2.6', 0.9, 2.57, 2.43, 1.9, 1.8, 2.3, 1.8],
  ['ST2.9', 1.1, 2.9, 2.76, 2.18, 2.08, 2.6, 2.1],
  ['ST3.3', 1.3, 3.3, 3.12, 2.39, 2.29, 3, 2.5],
  ['ST3.5', 1.3, 3.53, 3.35, 2.64, 2.51, 3.2, 2.5],
  ['ST3.9', 1.3, 3.91, 3.73, 2.92, 2.77, 3.5, 2.7],
  ['ST4.2', 1.4, 4.22, 4.04, 3.1, 2.95, 3.7, 2.8],
  ['ST4.8', 1.6, 4.8, 4.62, 3.58, 3.43, 4.3, 3.2],
] as const;

describe('ISO 1478:1999, tapping screw threads (read in secondary copies; d2 min from memory)', () => {
  test.each(ISO_1478)(
    'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT and SCREW.POINT of %s',
    (size, pitch, majorMax, majorMin, rootMax, rootMin, cone, flat) => {
      near(number('SCREW.PITCH', size), pitch);
      near(number('SCREW.MAJOR', size), majorMax);
      near(number('SCREW.MAJOR', size, 'min'), majorMin);
      near(number('SCREW.ROOT', size), rootMax);
      near(number('SCREW.ROOT', size, 'min'), rootMin);
      near(number('SCREW.POINT', size), cone);
      near(number('SCREW.POINT', size, 'flat'), flat);
    },
  );
  test.each(ISO_1478)(
    'HOLE.PILOT and HOLE.THREAD.SHARE of %s: from d1 max at no share to d2 max at the whole',
    (size, _pitch, majorMax, _majorMin, rootMax) => {
      near(number('HOLE.PILOT', size, 1), rootMax);
      near(number('HOLE.PILOT', size, '0'), majorMax);
      near(number('HOLE.PILOT', size, 0.5), (majorMax + rootMax) / 2);
      near(number('HOLE.THREAD.SHARE', size, rootMax), 1);
      near(number('HOLE.THREAD.SHARE', size, majorMax), 0);
    },
  );
  test.each(ISO_1478)(
    'what is told by d1 max and d2 max of %s: HOLE.RELIEF, HOLE.TIGHT, ENGAGEMENT.RATIO, BOSS.OD.RULE, HOLE.FLOATING',
    (size, _pitch, majorMax, _majorMin, rootMax) => {
      near(number('HOLE.RELIEF', size), majorMax + 0.2);
      near(number('HOLE.TIGHT', size, 1.1 * rootMax, 0), 1.1);
      near(number('ENGAGEMENT.RATIO', 3 * majorMax, size), 3);
      near(number('BOSS.OD.RULE', size, 2), 2 * majorMax);
      near(number('HOLE.FLOATING', size, 0), majorMax);
    },
  );
});

describe('ISO 965-2 with ISO 261 and 724, 6g (read in secondary copies)', () => {
  test.each([
    ['M1.6', 0.35, 1.581, 1.496, 1.202, 1.075],
    ['M2', 0.4, 1.981, 1.886, 1.548, 1.408],
    ['M2.5', 0.45, 2.48, 2.38, 1.993, 1.84],
    ['M3', 0.5, 2.98, 2.874, 2.438, 2.272],
    ['M3.5', 0.6, 3.479, 3.354, 2.829, 2.634],
    ['M4', 0.7, 3.978, 3.838, 3.22, 3.002],
    ['M5', 0.8, 4.976, 4.826, 4.11, 3.868],
    ['M6', 1, 5.974, 5.794, 4.891, 4.596],
  ])(
    'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT, and d of ENGAGEMENT.RATIO and BOSS.OD.RULE, %s',
    (size, pitch, majorMax, majorMin, rootMax, rootMin) => {
      near(number('SCREW.PITCH', size), pitch);
      near(number('SCREW.MAJOR', size), majorMax);
      near(number('SCREW.MAJOR', size, 'min'), majorMin);
      near(number('SCREW.ROOT', size), rootMax);
      near(number('SCREW.ROOT', size, 'min'), rootMin);
      near(number('ENGAGEMENT.RATIO', Number(size.slice(1)), size), 1);
      near(number('BOSS.OD.RULE', size, 1), Number(size.slice(1)));
    },
  );
});

describe('ASME B18.6.3-2013 and B1.1, in inches (read in secondary copies)', () => {
  test.each([
    ['#2 B', 32, 0.088, 0.082, 0.064, 0.06],
    ['#4 B', 24, 0.114, 0.108, 0.086, 0.082],
    ['#4 AB', 24, 0.114, 0.108, 0.086, 0.082],
    ['#6 AB', 20, 0.139, 0.132, 0.104, 0.099],
    ['#8 B', 18, 0.166, 0.159, 0.122, 0.116],
    ['#10 B', 16, 0.189, 0.182, 0.141, 0.135],
    ['1/4 B', 14, 0.246, 0.237, 0.192, 0.185],
  ])('SCREW.PITCH, SCREW.MAJOR and SCREW.ROOT of %s', (size, threadsPerInch, majorMax, majorMin, rootMax, rootMin) => {
    near(number('SCREW.PITCH', size), INCH / threadsPerInch);
    near(number('SCREW.MAJOR', size), majorMax * INCH);
    near(number('SCREW.MAJOR', size, 'min'), majorMin * INCH);
    near(number('SCREW.ROOT', size), rootMax * INCH);
    near(number('SCREW.ROOT', size, 'min'), rootMin * INCH);
  });
  test.each([
    ['#2 B', 0.062],
    ['#4 B', 0.083],
    ['#6 B', 0.1],
    ['#10 B', 0.125],
  ])('SCREW.POINT, longest point taper of %s: %d', (size, taper) => {
    near(number('SCREW.POINT', size), taper * INCH);
  });
  test.each([
    ['#2-56', 0.086, 0.0854, 0.0813],
    ['#4-40', 0.112, 0.1112, 0.1061],
    ['#6-32', 0.138, 0.1372, 0.1312],
    ['#8-32', 0.164, 0.1631, 0.1571],
    ['1/4-20', 0.25, 0.2489, 0.2408],
  ])('SCREW.MAJOR of %s, class 2A', (size, basic, max, min) => {
    near(number('SCREW.MAJOR', size, 'nominal'), basic * INCH);
    near(number('SCREW.MAJOR', size), max * INCH);
    near(number('SCREW.MAJOR', size, 'min'), min * INCH);
  });
});

/** size: dk max, dk min, k max, k min. */
const ISO_7045 = [
  ['M1.6', 3.2, 2.9, 1.3, 1.16],
  ['M2', 4, 3.7, 1.6, 1.46],
  ['M2.5', 5, 4.7, 2.1, 1.96],
  ['M3', 5.6, 5.3, 2.4, 2.26],
  ['M3.5', 7, 6.64, 2.6, 2.46],
  ['M4', 8, 7.64, 3.1, 2.92],
  ['M5', 9.5, 9.14, 3.7, 3.52],
  ['M6', 12, 11.57, 4.6, 4.3],
] as const;
const ISO_7049 = [
  ['ST2.2', 4, 3.7, 1.6, 1.4],
  ['ST2.9', 5.6, 5.3, 2.4, 2.15],
  ['ST3.5', 7, 6.64, 2.6, 2.35],
  ['ST4.2', 8, 7.64, 3.1, 2.8],
  ['ST4.8', 9.5, 9.14, 3.7, 3.4],
] as const;

describe('heads, ISO 7045 and ISO 7049 (read in secondary copies)', () => {
  test.each([...ISO_7045, ...ISO_7049])(
    'SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s pan',
    (size, diaMax, diaMin, heightMax, heightMin) => {
      near(number('SCREW.HEAD.DIAMETER', size, 'pan'), diaMax);
      near(number('SCREW.HEAD.DIAMETER', size, 'pan', 'min'), diaMin);
      near(number('SCREW.HEAD.HEIGHT', size, 'pan'), heightMax);
      near(number('SCREW.HEAD.HEIGHT', size, 'pan', 'min'), heightMin);
    },
  );
  test.each([...ISO_7045, ...ISO_7049])(
    'RECESS.DIAMETER, RECESS.DEPTH.MIN and RECESS.FLUSH clear the largest head of %s pan',
    (size, diaMax, _diaMin, heightMax) => {
      near(number('RECESS.DIAMETER', `${size} pan`, 0), diaMax);
      near(number('RECESS.DEPTH.MIN', `${size} pan`, 0), heightMax);
      near(number('RECESS.FLUSH', heightMax + 0.3, `${size} pan`), 0.3);
    },
  );
  test.each([...ISO_7045, ...ISO_7049])(
    'BOARD.KEEPOUT takes the largest head of %s pan, PULLOUT.SEAT and BEARING the smallest',
    (size, diaMax, diaMin) => {
      near(number('BOARD.KEEPOUT', `${size} pan`, 1), diaMax);
      near(number('PULLOUT.SEAT', `${size} pan`, 1, Math.sqrt(3)) / Math.PI, diaMin);
      near(number('BEARING', Math.PI / 4, `${size} pan`, 1), 1 / (diaMin ** 2 - 1));
    },
  );
  test.each([
    ['M3 ISO 1580', 5.6, 1.8],
    ['M3 ISO 1207', 5.5, 2],
    ['M3 ISO 4762', 5.68, 3],
    ['M3 ISO 7380-1', 5.7, 1.65],
    ['M3 ISO 7046-2', 5.5, 1.65],
    ['ST2.9 DIN 7981', 5.6, 2.2],
    ['ST2.9 ISO 7050', 5.5, 1.7],
  ])('SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s: %d and %d', (text, dia, height) => {
    const [size = '', head = ''] = text.split(/ (.*)/);
    near(number('SCREW.HEAD.DIAMETER', size, head), dia);
    near(number('SCREW.HEAD.HEIGHT', size, head), height);
  });
  test.each([
    ['#2', 0.167, 0.155, 0.062],
    ['#4', 0.219, 0.205, 0.08],
    ['#6', 0.27, 0.256, 0.097],
    ['#10', 0.373, 0.357, 0.133],
  ])('SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s pan, ASME B18.6.3 in inches', (size, diaMax, diaMin, height) => {
    near(number('SCREW.HEAD.DIAMETER', size, 'pan'), diaMax * INCH);
    near(number('SCREW.HEAD.DIAMETER', size, 'pan', 'min'), diaMin * INCH);
    near(number('SCREW.HEAD.HEIGHT', size, 'pan'), height * INCH);
  });
  test('SCREW.CARD of ST2.9 pan shows them', () => {
    const rows = value('SCREW.CARD', 'ST2.9', 'pan') as unknown[][];
    const shown = (limit: string): unknown[] => rows.filter(row => row[3] === limit).map(row => row[1]);
    expect(shown('max')).toEqual(expect.arrayContaining([2.9, 2.18, 5.6, 2.4]));
    expect(shown('min')).toEqual(expect.arrayContaining([2.76, 2.08, 5.3, 2.15]));
    expect(rows.flat().join('\n')).toMatch(/ISO 1478:1999[^]*ISO 7049/);
  });
});

describe('clearance holes (read in secondary copies)', () => {
  test.each([
    ['M1.6', 1.7, 1.8, 2],
    ['M2', 2.2, 2.4, 2.6],
    ['M2.5', 2.7, 2.9, 3.1],
    ['M3', 3.2, 3.4, 3.6],
    ['M3.5', 3.7, 3.9, 4.2],
    ['M4', 4.3, 4.5, 4.8],
    ['M5', 5.3, 5.5, 5.8],
    ['M6', 6.4, 6.6, 7],
  ])('HOLE.CLEARANCE of %s, ISO 273:1979; BOARD.SLEEVE and HOLE.AT read the medium one', (size, fine, medium, coarse) => {
    near(number('HOLE.CLEARANCE', size, 'fine'), fine);
    near(number('HOLE.CLEARANCE', size), medium);
    near(number('HOLE.CLEARANCE', size, 'coarse'), coarse);
    near(number('BOARD.SLEEVE', `${size} medium`, medium - 0.4), 0.2);
    near(number('HOLE.AT', `${size} medium`, 0), medium);
  });
  test.each([
    ['#0', 0.104, 0.094],
    ['#2', 0.126, 0.116],
    ['#4', 0.156, 0.144],
    ['#6', 0.197, 0.185],
    ['1/4', 0.311, 0.297],
  ])('HOLE.CLEARANCE of %s, loose by ASME B18.2.8: %d to %d in', (size, max, min) => {
    near(number('HOLE.CLEARANCE', size, 'loose', 'max'), max * INCH);
    near(number('HOLE.CLEARANCE', size, 'loose', 'min'), min * INCH);
  });
  test.each([
    ['ST2.2', 2.4],
    ['ST2.9', 3.1],
    ['ST3.5', 3.7],
    ['ST4.8', 5.1],
  ])('HOLE.CLEARANCE of %s, DIN 74-1 form C (withdrawn): %d', (size, hole) => {
    near(number('HOLE.CLEARANCE', size, 'DIN 74-1'), hole);
  });
});

describe('nuts (read in secondary copies)', () => {
  // s max, m max and m min of ISO 4032; e max of ASME B18.2.4.1M, style 1, which has the same s and m, read in 1 copy
  test.each([
    ['M1.6', 3.2, 1.3, 1.05, 3.7],
    ['M2', 4, 1.6, 1.35, 4.62],
    ['M2.5', 5, 2, 1.75, 5.77],
    ['M3', 5.5, 2.4, 2.15, 6.35],
    ['M3.5', 6, 2.8, 2.55, 6.93],
    ['M4', 7, 3.2, 2.9, 8.08],
    ['M5', 8, 4.7, 4.4, 9.24],
    ['M6', 10, 5.2, 4.9, 11.55],
  ])('NUT.POCKET, NUT.POCKET.CORNER and NUT.HEIGHT of %s, ISO 4032 and ASME B18.2.4.1M', (size, flats, height, least, corners) => {
    near(number('NUT.POCKET', size, '0 mm'), flats);
    near(number('NUT.HEIGHT', size), height);
    near(number('NUT.HEIGHT', size, 'min'), least);
    expect(Math.abs(number('NUT.POCKET.CORNER', size, '0 mm') - corners)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});

const TAPPING_LENGTHS = [4.5, 6.5, 9.5, 13, 16, 19, 22, 25, 32, 38, 45, 50];

describe('lengths (read in secondary copies)', () => {
  test('SCREW.LENGTHS: ISO 7049 for tapping screws, the lengths of ISO 1207, 7046-2 and 7380 for machine screws', () => {
    expect(list('SCREW.LENGTHS', 'ST2.9')).toEqual(TAPPING_LENGTHS);
    expect(list('SCREW.LENGTHS', 'M3')).toEqual([2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60]);
  });
  test('SCREW.LENGTH.TABLE and SCREW.LENGTH.COMMON try the lengths of ISO 7049', () => {
    const tried = (id: string, ...args: unknown[]): unknown[] => (value(id, ...args) as unknown[][]).slice(1).map(row => row[0]);
    expect(tried('SCREW.LENGTH.TABLE', 'ST2.9', 4.1, 0.26, 2, 14.75, 1)).toEqual(TAPPING_LENGTHS);
    expect(tried('SCREW.LENGTH.COMMON', 'ST2.9', 4.1, 0.26, 14.75, 2, 1)).toEqual(TAPPING_LENGTHS);
  });
  test.each([
    [6, 0.24],
    [8, 0.29],
    [10, 0.29],
    [12, 0.35],
    [16, 0.35],
    [20, 0.42],
    [30, 0.42],
    [35, 0.5],
    [50, 0.5],
    [55, 0.6],
  ])('SCREW.LENGTH.TOL of M3 × %d, ISO 4759-1 grade A (js15): ±%d', (length, half) => {
    expect(list('SCREW.LENGTH.TOL', 'M3', length)).toEqual([-half, half]);
  });
  test.each([4.5, 6.5, 9.5, 13])('SCREW.LENGTH.TOL of ST2.9 × %d, ISO 7049: ±0.8 with a cone, +0/−0.8 flat', length => {
    expect(list('SCREW.LENGTH.TOL', 'ST2.9', length)).toEqual([-0.8, 0.8]);
    expect(list('SCREW.LENGTH.TOL', 'ST2.9', length, 'flat')).toEqual([-0.8, 0]);
  });
});
