// The tables against one another and against the geometry they come from.
import { describe, expect, test } from 'vitest';
import type { Table } from '../../src/standards/table';
import { column, printed, rowsOf, table } from './tables';

/** Compares every row that both tables have, and says how many there were. */
function shared(one: Table, other: Table, compare: (row: string) => void): number {
  const rows = rowsOf(one).filter(row => rowsOf(other).includes(row));
  rows.forEach(compare);
  return rows.length;
}

const metric = table('ISO_965_2_METRIC_THREADS_6G');
const tapping = table('ISO_1478_TAPPING_SCREW_THREADS');
const typeAB = table('ASME_B18_6_3_TYPE_AB_THREADS');
const typeB = table('ASME_B18_6_3_TYPE_B_THREADS');
const unified = table('ASME_B1_1_UNIFIED_THREADS_2A');
const grades = table('ISO_286_1_IT_GRADES');

const nominalMm = (row: string): number => Number(row.replace(/^(M|ST)/, ''));

/** IT width in mm of a size, by the bands over and up to. */
function widthMm(sizeMm: number, grade: string): number {
  const row = rowsOf(grades).find(band => sizeMm > printed(grades, band, 'over') && sizeMm <= printed(grades, band, 'upTo'));
  return printed(grades, row ?? '', grade) / 1000;
}

describe('countersunk heads', () => {
  test.each([
    'ISO_7047_RAISED_COUNTERSUNK_HEADS',
    'ISO_2009_COUNTERSUNK_HEADS',
    'ISO_7046_1_COUNTERSUNK_HEADS',
    'ISO_10642_COUNTERSUNK_HEADS',
    'ISO_7050_COUNTERSUNK_HEADS',
    'ISO_7051_RAISED_COUNTERSUNK_HEADS',
  ])('%s: half of theoretical dk − d is k, as 90° asks', name => {
    for (const row of rowsOf(table(name))) {
      expect((printed(table(name), row, 'dkSharp') - nominalMm(row)) / 2, row).toBeCloseTo(printed(table(name), row, 'kMax'), 6);
    }
  });

  test('ASME flat: the older sharp diameter gives H max at 80° within 0.001 in', () => {
    const flat = table('ASME_B18_6_3_FLAT_HEADS');
    const basicIn: Readonly<Record<string, number>> = {
      '#2': 0.086,
      '#4': 0.112,
      '#5': 0.125,
      '#6': 0.138,
      '#8': 0.164,
      '#10': 0.19,
      '1/4': 0.25,
    };
    for (const [row, d] of Object.entries(basicIn)) {
      const h = (printed(flat, row, 'dkSharp') - d) / (2 * Math.tan((40 * Math.PI) / 180));
      expect(Math.abs(h - printed(flat, row, 'kMax')), row).toBeLessThan(0.0011);
    }
  });

  test('ISO 7046-2 has the k max and dk max of ISO 7047', () => {
    const [one, other] = [table('ISO_7046_2_COUNTERSUNK_HEADS'), table('ISO_7047_RAISED_COUNTERSUNK_HEADS')];
    expect(
      shared(one, other, row => {
        for (const key of ['dkMax', 'kMax']) expect(printed(one, row, key), row).toBe(printed(other, row, key));
      }),
    ).toBe(7);
  });
});

describe('heads that share dimensions', () => {
  test.each([
    ['ISO_14583_PAN_HEADS', 'ISO_7045_PAN_HEADS', ['dkMax', 'dkMin', 'kMax', 'kMin'], 7],
    ['ISO_1580_SLOTTED_PAN_HEADS', 'ISO_7045_PAN_HEADS', ['dkMax', 'dkMin'], 7],
    ['ISO_14585_PAN_HEADS', 'ISO_7049_PAN_HEADS', ['dkMax', 'dkMin', 'kMax', 'kMin'], 5],
    ['ISO_7050_COUNTERSUNK_HEADS', 'ISO_7051_RAISED_COUNTERSUNK_HEADS', ['dkSharp', 'dkMax', 'dkMin', 'kMax'], 5],
    ['ASME_B18_6_3_SLOTTED_PAN_HEADS', 'ASME_B18_6_3_PAN_HEADS', ['dkMax', 'dkMin'], 10],
    ['ASME_B18_6_3_OVAL_HEADS', 'ASME_B18_6_3_FLAT_HEADS', ['dkMax', 'dkMin'], 10],
  ] as const)('%s as %s', (one, other, keys, rows) => {
    expect(
      shared(table(one), table(other), row => {
        for (const key of keys) expect(printed(table(one), row, key), `${row} ${key}`).toBe(printed(table(other), row, key));
      }),
    ).toBe(rows);
  });

  test('slotted heads are lower than recessed ones', () => {
    for (const [slotted, recessed] of [
      ['ISO_1580_SLOTTED_PAN_HEADS', 'ISO_7045_PAN_HEADS'],
      ['ASME_B18_6_3_SLOTTED_PAN_HEADS', 'ASME_B18_6_3_PAN_HEADS'],
    ] as const) {
      shared(table(slotted), table(recessed), row =>
        expect(printed(table(slotted), row, 'kMax'), row).toBeLessThan(printed(table(recessed), row, 'kMax')),
      );
    }
  });
});

describe('threads', () => {
  test.each([
    ['pitchDiaBasic', 0.649519],
    ['d1Basic', 1.082532],
    ['d3Basic', 1.226869],
  ])('metric %s is d − %d·P', (key, factor) => {
    for (const row of rowsOf(metric)) {
      expect(Math.abs(nominalMm(row) - factor * printed(metric, row, 'pitch') - printed(metric, row, key)), row).toBeLessThanOrEqual(
        0.00051,
      );
    }
  });

  const INCH_OF: Readonly<Record<string, string>> = {
    'ST1.5': '#0',
    'ST1.9': '#1',
    'ST2.2': '#2',
    'ST2.6': '#3',
    'ST2.9': '#4',
    'ST3.3': '#5',
    'ST3.5': '#6',
    'ST4.2': '#8',
    'ST4.8': '#10',
  };

  test.each(['majorMax', 'majorMin', 'rootMax', 'rootMin'])('ISO 1478 %s is the inch table × 25.4 within 0.02 mm', key => {
    for (const [st, inch] of Object.entries(INCH_OF)) {
      for (const other of [typeAB, typeB])
        expect(Math.abs(printed(tapping, st, key) - 25.4 * printed(other, inch, key)), st).toBeLessThanOrEqual(0.02);
    }
  });

  test.each(['pointDiaMax', 'pointDiaMin'])('ISO 1478 %s is type B × 25.4 within 0.02 mm', key => {
    for (const [st, inch] of Object.entries(INCH_OF))
      expect(Math.abs(printed(tapping, st, key) - 25.4 * printed(typeB, inch, key)), st).toBeLessThanOrEqual(0.02);
  });

  test('ISO 1478 pitch is 25.4 / threads per inch, rounded to 0.1', () => {
    for (const [st, inch] of Object.entries(INCH_OF))
      expect(Math.abs(printed(tapping, st, 'pitch') - 25.4 / printed(typeB, inch, 'tpi')), st).toBeLessThanOrEqual(0.05);
    expect(Math.abs(printed(tapping, 'ST3.9', 'pitch') - 25.4 / 19)).toBeLessThanOrEqual(0.05);
  });

  test('types AB and B share major and minor diameters', () => {
    for (const key of ['tpi', 'majorMax', 'majorMin', 'rootMax', 'rootMin']) expect(column(typeAB, key), key).toEqual(column(typeB, key));
  });

  test('class 2A limits follow from the formulas of ASME B1.1 within 0.0001 in', () => {
    for (const row of rowsOf(unified)) {
      const d = printed(unified, row, 'nominal');
      const p = 1 / printed(unified, row, 'tpi');
      expect(p, row).toBe(1 / Number(row.split('-')[1]));
      const pitchTolerance = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * Math.cbrt(p) ** 2;
      const majorMax = d - 0.3 * pitchTolerance;
      const pitchMax = majorMax - 0.649519 * p;
      const expected = {
        majorMax,
        majorMin: majorMax - 0.06 * Math.cbrt(p) ** 2,
        pitchDiaMax: pitchMax,
        pitchDiaMin: pitchMax - pitchTolerance,
      };
      for (const [key, value] of Object.entries(expected))
        expect(Math.abs(printed(unified, row, key) - value), `${row} ${key}`).toBeLessThanOrEqual(0.00011);
    }
  });

  test('UNR minor diameter is major max − 1.190786·P, stress area that of d − 0.9743·P', () => {
    for (const row of rowsOf(unified)) {
      const p = 1 / printed(unified, row, 'tpi');
      expect(Math.abs(printed(unified, row, 'majorMax') - 1.190786 * p - printed(unified, row, 'rootMax')), row).toBeLessThanOrEqual(
        0.00011,
      );
      const area = (Math.PI / 4) * (printed(unified, row, 'nominal') - 0.9743 * p) ** 2;
      expect(printed(unified, row, 'stressArea') / area, row).toBeCloseTo(1, 2);
    }
  });
});

describe('holes and lengths', () => {
  test.each([
    ['fine', 'IT12'],
    ['medium', 'IT13'],
    ['coarse', 'IT14'],
  ])('ISO 273 %s: upper limit is the hole and %s', (fit, grade) => {
    const holes = table('ISO_273_CLEARANCE_HOLES');
    for (const row of rowsOf(holes)) {
      const hole = printed(holes, row, fit);
      expect(hole + widthMm(hole, grade), row).toBeCloseTo(printed(holes, row, `${fit}Max`), 8);
    }
  });

  test.each([
    ['close', 'closeMin'],
    ['normal', 'normalMin'],
    ['loose', 'looseMin'],
  ])('ASME B18.2.8 %s: metric drill and inch minimum agree within 0.0025 in', (drill, minimum) => {
    const holes = table('ASME_B18_2_8_CLEARANCE_HOLES');
    for (const row of rowsOf(holes))
      expect(Math.abs(printed(holes, row, drill) / 25.4 - printed(holes, row, minimum)), row).toBeLessThanOrEqual(0.0025);
  });

  test('every hole clears its screw', () => {
    const pairs = [
      ['ISO_273_CLEARANCE_HOLES', 'fine', metric],
      ['DIN_74_1_FORM_C_HOLES', 'hole', tapping],
    ] as const;
    for (const [name, key, thread] of pairs) {
      expect(
        shared(table(name), thread, row => expect(printed(table(name), row, key), row).toBeGreaterThan(printed(thread, row, 'majorMax'))),
      ).toBeGreaterThan(5);
    }
  });

  test('ISO 4032, grade A: flats h13, height h14, corners at least 1.13 times the least flats (ISO 4759-1, from memory)', () => {
    const nuts = table('ISO_4032_NUTS');
    expect(rowsOf(nuts)).toHaveLength(8);
    for (const row of rowsOf(nuts)) {
      const [flats, height] = [printed(nuts, row, 'flatsMax'), printed(nuts, row, 'heightMax')];
      expect(flats - widthMm(flats, 'IT13'), row).toBeCloseTo(printed(nuts, row, 'flatsMin'), 8);
      expect(height - widthMm(height, 'IT14'), row).toBeCloseTo(printed(nuts, row, 'heightMin'), 8);
      expect(Math.abs(1.13 * printed(nuts, row, 'flatsMin') - printed(nuts, row, 'cornersMin')), row).toBeLessThanOrEqual(0.005);
    }
  });

  test('ISO 4759-1 deviations are js15: half of IT15, both ways', () => {
    const limits = table('ISO_4759_1_LENGTH_LIMITS');
    expect(rowsOf(limits)).toEqual(rowsOf(table('ISO_888_LENGTHS')));
    for (const row of rowsOf(limits)) {
      expect(printed(limits, row, 'upper'), row).toBeCloseTo(widthMm(Number(row), 'IT15') / 2, 8);
      expect(printed(limits, row, 'lower'), row).toBe(-printed(limits, row, 'upper'));
    }
  });

  test('a row of lengths has the length of its name', () => {
    for (const name of ['ISO_888_LENGTHS', 'ISO_7049_TAPPING_SCREW_LENGTHS']) {
      for (const row of rowsOf(table(name))) expect(printed(table(name), row, 'length')).toBe(Number(row));
    }
    for (const row of rowsOf(table('ASME_B18_6_3_LENGTHS'))) {
      const [, whole, over, under] = /^(?:(\d+) ?(?!\/))?(?:(\d+)\/(\d+))?$/.exec(row) ?? [];
      expect(printed(table('ASME_B18_6_3_LENGTHS'), row, 'length'), row).toBe(Number(whole ?? 0) + Number(over ?? 0) / Number(under ?? 1));
    }
  });

  test('every tapping screw length has a tolerance', () => {
    const limits = table('ISO_7049_LENGTH_TOLERANCES');
    const longest = Math.max(...(column(table('ISO_7049_TAPPING_SCREW_LENGTHS'), 'length') as number[]));
    expect(printed(limits, rowsOf(limits).at(-1) ?? '', 'upTo')).toBe(longest);
  });
});

describe('tolerances', () => {
  test.each([
    ['IT15', 'IT10'],
    ['IT16', 'IT11'],
  ])('%s is ten times %s', (wide, narrow) => {
    for (const row of rowsOf(grades)) expect(printed(grades, row, wide), row).toBe(10 * printed(grades, row, narrow));
  });

  test('IT grades above 3 mm follow i = 0.45·∛D + 0.001·D within 10 %', () => {
    const multiples: Readonly<Record<string, number>> = {
      IT5: 7,
      IT6: 10,
      IT7: 16,
      IT8: 25,
      IT9: 40,
      IT10: 64,
      IT11: 100,
      IT12: 160,
      IT13: 250,
      IT14: 400,
      IT15: 640,
      IT16: 1000,
    };
    for (const row of rowsOf(grades).slice(1)) {
      const d = Math.sqrt(printed(grades, row, 'over') * printed(grades, row, 'upTo'));
      for (const [grade, multiple] of Object.entries(multiples)) {
        const formula = multiple * (0.45 * Math.cbrt(d) + 0.001 * d);
        expect(Math.abs(printed(grades, row, grade) / formula - 1), `${row} ${grade}`).toBeLessThan(0.1);
      }
    }
  });

  test('DIN 16901 group 130: same tool part is 0.10 less in every band', () => {
    const group = table('DIN_16901_130');
    for (const row of rowsOf(group)) expect(printed(group, row, 'across') - printed(group, row, 'same'), row).toBeCloseTo(0.1, 8);
  });

  test('DIN 16742 TG6: across is same moved up one band', () => {
    const group = table('DIN_16742_TG6');
    expect(column(group, 'across').slice(0, -1)).toEqual(column(group, 'same').slice(1));
  });
});
