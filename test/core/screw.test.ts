import { describe, expect, test } from 'vitest';
import { leadingSize } from '../../src/core/screw/size';
import { number, refusal, value } from '../kit/ask';

const INCH = 25.4;
const rows = (id: string, ...args: unknown[]): unknown[][] => value(id, ...args) as unknown[][];

describe('sizes as people type them', () => {
  test.each([
    ['m3', 'M3'],
    [' M 3 ', 'M3'],
    ['M\u00a02,5', 'M2.5'],
    ['st 2.9', 'ST2.9'],
    ['#4  ab', '#4 AB'],
    ['#4AB', '#4 AB'],
    ['# 4 b', '#4 B'],
    ['#4 - 40', '#4-40'],
    ['1/4-20', '1/4-20'],
  ])('"%s" is %s', (typed, size) => {
    expect(rows('SCREW.CARD', typed, 'pan')[1]?.[1]).toBe(size);
  });

  test('where the thread does not matter a gauge is enough, 1/4 too', () => {
    expect(number('HOLE.CLEARANCE', '#4')).toBe(number('HOLE.CLEARANCE', '#4-40'));
    expect(number('HOLE.CLEARANCE', ' 1/4 ')).toBe(number('HOLE.CLEARANCE', '1/4-20'));
    expect(number('RECESS.DEPTH.MIN', '1/4 pan')).toBe(number('RECESS.DEPTH.MIN', '1/4-20 pan'));
  });

  test('where it matters those that are held are offered', () => {
    expect(refusal('SCREW.PITCH', '#4')).toBe('#VALUE! size: the thread matters here; say #4-40, #4-48, #4 AB or #4 B');
  });

  test.each(['M3x', 'x M3', 'M3 pan', 'M3.', 'M', '4-40', '#4-4', '#4 C', '1/4 in', '3', '#4 ABC', 'M300'])('"%s" is no size', typed => {
    expect(refusal('SCREW.PITCH', typed)).toMatch(/^#VALUE! size .*not a screw size; say M3, ST2.9, #4-40, #4 AB or #4 B/);
  });

  test('a size that no table has says which sizes there are', () => {
    expect(refusal('BOSS.OD.RULE', 'M7', 'ABS')).toMatch(/^#N\/A .*M7 is not in ISO 965-2 \(M1.6 to M6\)/);
  });
});

describe('heads as people type them', () => {
  test.each([
    ['M3', ' Pan  Head ', 'ISO 7045'],
    ['M3', 'panhead', 'ISO 7045'],
    ['M3', 'slotted\u00a0pan', 'ISO 1580'],
    ['M3', 'slotted  pan', 'ISO 1580'],
    ['M3', 'ISO 7380-1', 'ISO 7380-1'],
    ['M3', 'iso7045', 'ISO 7045'],
    ['ST2.9', 'DIN7981', 'DIN 7981'],
    ['ST2.9', 'flat', 'ISO 7050'],
    ['#4-40', 'oval head', 'ASME B18.6.3'],
    ['#4 AB', 'Round', 'ASME B18.6.3'],
  ])('%s with "%s" is %s', (size, head, standard) => {
    expect(String(rows('SCREW.CARD', size, head)[2]?.[4]).split(':')[0]).toBe(standard);
  });

  test('a head of another family is told from a word that is no head, and those of this one are offered', () => {
    const held = 'pan, slotted pan, fillister, round, countersunk, raised countersunk';
    expect(refusal('SCREW.HEAD.HEIGHT', '#4', 'cheese')).toBe(`#N/A head is "cheese": head "cheese" is not held for #4; held are ${held}`);
    expect(refusal('SCREW.HEAD.HEIGHT', '#4', 'ISO 7045')).toBe(
      `#N/A head is "ISO 7045": head "ISO 7045" is not held for #4; held are ${held}`,
    );
    expect(refusal('SCREW.HEAD.HEIGHT', '#4', 'header')).toBe(`#VALUE! head is "header": "header" is not a head for #4; say ${held}`);
    expect(refusal('SCREW.HEAD.HEIGHT', '#4', 'head pan')).toMatch(/^#VALUE! .*"head pan" is not a head for #4/);
    expect(refusal('SCREW.HEAD.HEIGHT', 'ST2.9', 'round')).toMatch(
      /held are pan, hexalobular pan, DIN 7981, countersunk, raised countersunk$/,
    );
  });

  test('a limit that the table has not, and those that it has', () => {
    expect(refusal('SCREW.HEAD.DIAMETER', 'M3', 'pan', 'sharp')).toBe(
      '#N/A size: ISO 7045 has no sharp head diameter here; held are max, min',
    );
    expect(refusal('SCREW.HEAD.HEIGHT', 'M3', 'raised countersunk', 'min')).toBe(
      '#N/A size: ISO 7047 has no min head height here; held are max',
    );
  });
});

describe('raised countersunk heads (read in 1 secondary copy)', () => {
  test('ISO 7047, M3: k 1.65 and f 0.7 make the whole height', () => {
    expect(number('SCREW.HEAD.HEIGHT', 'M3', 'raised countersunk')).toBeCloseTo(1.65 + 0.7, 12);
    expect(number('SCREW.HEAD.HEIGHT', 'M3', 'countersunk')).toBe(1.65);
  });

  test('ASME B18.6.3, #4: O 0.104 in has the raised part in it', () => {
    expect(number('SCREW.HEAD.HEIGHT', '#4', 'oval')).toBeCloseTo(0.104 * INCH, 12);
  });

  test('ISO 7051, ST3.5: the raised part is not held, so that there is no whole height', () => {
    expect(refusal('SCREW.HEAD.HEIGHT', 'ST3.5', 'raised countersunk')).toBe(
      '#N/A size: the raised part of the head is not held for ISO 7051; give the whole head height in mm',
    );
  });
});

describe('SCREW.CARD', () => {
  test('a countersunk head has its angle; inch values are in mm with their limit, what has no unit keeps none', () => {
    const shown = new Map(rows('SCREW.CARD', '#4-40', 'flat').map(([name, ...rest]) => [name, rest]));
    expect(shown.get('size')).toEqual(['#4-40', '–', '–', expect.stringMatching(/^ASME B1\.1:/), '–']);
    expect(shown.get('head')?.slice(0, 3)).toEqual(['countersunk', '–', '–']);
    expect(shown.get('head angle (included)')?.slice(0, 3)).toEqual([82, '°', 'nominal']);
    expect(shown.get('threads per inch')?.slice(0, 3)).toEqual([40, '1/in', 'nominal']);
    const maxima = rows('SCREW.CARD', '#4-40', 'flat').filter(row => row[0] === 'head diameter A' && row[3] === 'max');
    expect(maxima[0]?.[1]).toBeCloseTo(0.212 * INCH, 12);
    expect(maxima[0]?.[2]).toBe('mm');
  });

  test('a flat seat has no angle, and no row is a gap', () => {
    const table = rows('SCREW.CARD', 'M3', 'pan');
    expect(table.map(([name]) => name)).not.toContain('head angle (included)');
    for (const row of rows('SCREW.CARD', '#3-48', 'oval')) for (const cell of row) expect(cell === '' || cell === undefined).toBe(false);
    expect(table.find(([name]) => name === 'coarse pitch P (ISO 261 and ISO 262:1998)')?.slice(1, 3)).toEqual([0.5, 'mm']);
  });
});

describe('length tolerances: lower and upper', () => {
  test.each([
    ['#4-40', 0.5, -0.02],
    ['#4-40', 0.75, -0.03],
    ['#4-40', 1, -0.03],
    ['#4-40', 2, -0.06],
    ['#4-40', 3, -0.09],
    ['1/4-20', 0.5, -0.03],
    ['1/4-20', 2, -0.06],
  ])('ASME B18.6.3 (read in 1 secondary copy): %s × %s in: +0/%s in', (size, length, lower) => {
    const [[low, high]] = rows('SCREW.LENGTH.TOL', size, `${length} in`) as [[number, number]];
    expect(low).toBeCloseTo(lower * INCH, 12);
    expect(high).toBe(0);
  });

  test.each([
    [0.5, 0.03],
    [0.75, 0.03],
    [1, 0.05],
    [2, 0.06],
  ])('ASME B18.6.3, tapping screws (from memory): %s in: ±%s in', (length, half) => {
    for (const size of ['#4 AB', '1/4 B']) {
      const [[low, high]] = rows('SCREW.LENGTH.TOL', size, `${length} in`) as [[number, number]];
      expect(low).toBeCloseTo(-half * INCH, 12);
      expect(high).toBeCloseTo(half * INCH, 12);
    }
  });

  test.each([
    [6, 0.24],
    [10, 0.29],
    [16, 0.35],
    [30, 0.42],
    [50, 0.5],
  ])('ISO 4759-1 (read in 1 or 2 secondary copies): M3 × %s: ±%s', (length, half) => {
    const [[low, high]] = rows('SCREW.LENGTH.TOL', 'M3', length) as [[number, number]];
    expect(low).toBeCloseTo(-half, 12);
    expect(high).toBeCloseTo(half, 12);
  });

  test('a length that has none says where to look', () => {
    expect(refusal('SCREW.LENGTH.TOL', 'M3', 17)).toBe('#N/A size: 17 mm is not a nominal length of ISO 4759-1; see SCREW.LENGTHS');
    expect(refusal('SCREW.LENGTH.TOL', 'ST2.9', 400)).toMatch(/^#N\/A size: no length tolerance is held above \S+ \(ISO 7049\)/);
  });

  test('lengths of inch screws are multiples of 1/16 in, those of each family its own', () => {
    const lengths = (size: string): number[] => rows('SCREW.LENGTHS', size).flat() as number[];
    expect(lengths('#4-40')).not.toEqual(lengths('ST2.9'));
    for (const mm of lengths('#4-40')) expect(Math.abs((mm / INCH) * 16 - Math.round((mm / INCH) * 16))).toBeLessThan(1e-9);
  });
});

describe('points', () => {
  test('two pitches for machine screws (ISO 4753, from memory); none is held for type AB', () => {
    expect(number('SCREW.POINT', 'M3')).toBe(1);
    expect(number('SCREW.POINT', '#4-40')).toBeCloseTo((2 * INCH) / 40, 12);
    expect(refusal('SCREW.POINT', '#4 AB')).toMatch(/^#N\/A .*no point length is held for type AB \(ASME B18.6.3\); give the length in mm/);
  });
});

describe('clearance holes', () => {
  test('ASME B18.2.8, #4: nominal, largest and smallest of the close fit (from memory)', () => {
    expect(number('HOLE.CLEARANCE', '#4', 'close', 'max')).toBeCloseTo(0.124 * INCH, 12);
    expect(number('HOLE.CLEARANCE', '#4', 'close', 'min')).toBeCloseTo(0.12 * INCH, 12);
  });

  test('ISO 273: the upper limit of M3 medium is H13; the hole itself is the lower one', () => {
    expect(number('HOLE.CLEARANCE', 'M3', 'medium', 'max')).toBeCloseTo(3.58, 12);
    expect(number('HOLE.CLEARANCE', 'M3', 'medium', 'min')).toBe(3.4);
  });

  test('what no standard has', () => {
    expect(refusal('HOLE.CLEARANCE', 'M3', 'DIN 74-1', 'max')).toBe('#N/A size: DIN 74-1 has nominal holes only here');
    expect(refusal('HOLE.CLEARANCE', 'ST2.9')).toBe(
      '#N/A size: no standard clearance hole is available for ST2.9; say fit "DIN 74-1" for its form C through hole, or give the hole in mm',
    );
  });
});

describe('lengths against a joint', () => {
  const table = (...args: unknown[]): unknown[][] => rows('SCREW.LENGTH.TABLE', ...args).slice(1);

  // ST2.9 cone, grip 4.1 ± 0.26, 2 d of engagement, hole 14.75, gap 1
  const JOINT = ['ST2.9', 4.1, 0.26, 2, 14.75, 1];

  test('each length says why it does not pass, both reasons where there are two', () => {
    const verdict = new Map(table(...JOINT).map(row => [row[0], row.slice(4)]));
    expect(verdict.get(9.5)).toEqual([
      'fail',
      expect.stringMatching(/^too little full thread: needs engagement ratio at least 2, has 0\.\d+$/),
    ]);
    expect(verdict.get(16)).toEqual(['pass', '–']);
    expect(verdict.get(19)).toEqual(['fail', 'screw bottoms: needs a hole 16.96 mm deep, has 14.75 mm']);
    const shallow = new Map(table('ST2.9', 4.1, 0.26, 2, 2.125, 1).map(row => [row[0], row[5]]));
    expect(shallow.get(9.5)).toMatch(/^too little full thread: needs .*; screw bottoms: needs a hole \d\.\d+ mm deep, has 2\.125 mm$/);
  });

  test('the pick says which length would be the first to hold, or that none is long enough', () => {
    expect(value('SCREW.LENGTH.PICK', ...JOINT)).toBe(16);
    expect(refusal('SCREW.LENGTH.PICK', 'ST2.9', 4.1, 0.26, 2, 6, 1)).toMatch(
      /no standard length of ST2.9 passes: with 16 mm, the first that holds, screw bottoms: needs a hole 13\.96 mm deep, has 6 mm$/,
    );
    expect(refusal('SCREW.LENGTH.PICK', 'ST2.9', 60, 0.26, 2, 6, 1)).toMatch(
      /no standard length of ST2.9 passes: with 50 mm, the longest, too little full thread: needs engagement ratio at least 2, has -\d\.\d+$/,
    );
  });

  test('in common: each joint counts with its own grip, tolerance and hole', () => {
    const counts = (tolerances: unknown): unknown[] =>
      rows('SCREW.LENGTH.COMMON', 'ST2.9', [[4.1], [4.1]], tolerances, [[14.75], [14.75]], 2, 1).slice(1);
    const passes = (tolerance: number): boolean =>
      table('ST2.9', 4.1, tolerance, 2, 14.75, 1).find(([length]) => length === 16)?.[4] === 'pass';
    const wide = 1.5;
    expect([passes(0.26), passes(wide)]).toEqual([true, false]);
    expect(counts([[0.26], [0.26]])).toContainEqual([16, 2, 2]);
    expect(counts([[wide], [0.26]])).toContainEqual([16, 1, 2]);
    expect(counts([[0.26], [wide]])).toContainEqual([16, 1, 2]);
  });
});

describe('texts that were read before', () => {
  test('are told from those that begin alike', () => {
    for (const text of ['M3 pan', 'M3 pan', 'M3 ', 'M3', 'M3 medium', 'ST2.9 pan', 'ST2', 'ST2.9', 'M3 pan']) {
      const [, size, rest] = /^(\S+) ?(.*)$/.exec(text) ?? [];
      expect(leadingSize(text), text).toMatchObject({ size: { text: size }, rest });
    }
  });

  test('are as many as one likes', () => {
    const texts = Array.from({ length: 500 }, (_, i) => `M3 word ${i}`);
    for (const text of [...texts, ...texts]) expect(leadingSize(text)?.rest).toBe(text.slice(3));
  });
});
