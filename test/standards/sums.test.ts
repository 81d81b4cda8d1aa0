// Row counts and column sums, added up from the collected records in a second reading, not from the tables.
import { describe, expect, test } from 'vitest';
import { column, TABLES } from './tables';

const SUMS: Readonly<Record<string, readonly [rows: number, sums: Readonly<Record<string, number>>]>> = {
  ISO_7045_PAN_HEADS: [8, { dkMax: 54.3, dkMin: 51.59, kMax: 21.4, kMin: 20.04 }],
  ISO_14583_PAN_HEADS: [7, { dkMax: 51.1, dkMin: 48.69, kMax: 20.1, kMin: 18.88 }],
  ISO_1580_SLOTTED_PAN_HEADS: [7, { dkMax: 51.1, dkMin: 48.69, kMax: 15.7, kMin: 14.56 }],
  ISO_1207_CHEESE_HEADS: [8, { dkMax: 48.3, dkMin: 46.78, kMax: 18.5, kMin: 17.18 }],
  ISO_7047_RAISED_COUNTERSUNK_HEADS: [8, { dkSharp: 60.4, dkMax: 53.3, dkMin: 50.59, kMax: 16.4, fApprox: 6.6, rfApprox: 57.5 }],
  ISO_2009_COUNTERSUNK_HEADS: [8, { dkSharp: 60.4, dkMax: 53.3, dkMin: 50.59, kMax: 16.4 }],
  ISO_7046_1_COUNTERSUNK_HEADS: [8, { dkSharp: 60.4, dkMax: 53.3, dkMin: 50.59, kMax: 16.4 }],
  ISO_7046_2_COUNTERSUNK_HEADS: [7, { dkMax: 50.3, dkMin: 47.8, kMax: 15.4 }],
  ISO_4762_SOCKET_HEADS: [7, { dkMax: 43.64, dkPlainMax: 42.3, dkMin: 40.96, kMax: 24.1, kMin: 22.88 }],
  ISO_7380_1_BUTTON_HEADS: [4, { dkMax: 33.3, dkMin: 31.85, kMax: 9.9, kMin: 8.85 }],
  ISO_10642_COUNTERSUNK_HEADS: [4, { dkSharp: 40.32, dkMin: 33.84, kMax: 11.16 }],
  DIN_7991_COUNTERSUNK_HEADS: [4, { dkMax: 36, dkMin: 34.55, kMax: 10.1 }],
  ISO_7049_PAN_HEADS: [5, { dkMax: 34.1, dkMin: 32.42, kMax: 13.4, kMin: 12.1 }],
  ISO_14585_PAN_HEADS: [5, { dkMax: 34.1, dkMin: 32.42, kMax: 13.4, kMin: 12.1 }],
  DIN_7981_PAN_HEADS: [6, { dkMax: 41.9, dkMin: 39.86, kMax: 16, kMin: 14.4 }],
  ISO_7051_RAISED_COUNTERSUNK_HEADS: [5, { dkSharp: 38.7, dkMax: 34.3, dkMin: 32.5, kMax: 10.55 }],
  ISO_7050_COUNTERSUNK_HEADS: [5, { dkSharp: 38.7, dkMax: 34.3, dkMin: 32.5, kMax: 10.55 }],
  ASME_B18_6_3_PAN_HEADS: [10, { dkMax: 2.539, dkMin: 2.397, kMax: 0.919, kMin: 0.82 }],
  ASME_B18_6_3_SLOTTED_PAN_HEADS: [10, { dkMax: 2.539, dkMin: 2.397, kMax: 0.773, kMin: 0.674 }],
  ASME_B18_6_3_FLAT_HEADS: [10, { dkSharp: 2.152, dkMax: 2.46, dkMin: 2.231, kMax: 0.782, kMin: 0.645 }],
  ASME_B18_6_3_OVAL_HEADS: [10, { dkSharp: 2.152, dkMax: 2.46, dkMin: 2.231, kMax: 1.204, coneMax: 0.782 }],
  ASME_B18_6_3_FILLISTER_HEADS: [10, { dkMax: 2.126, dkMin: 1.948, kMax: 1.231, kMin: 1.043, sideMax: 0.904, sideMin: 0.805 }],
  ASME_B18_6_3_ROUND_HEADS: [10, { dkMax: 2.447, dkMin: 2.25, kMax: 0.977, kMin: 0.859 }],
  ISO_965_2_METRIC_THREADS_6G: [8, {
    nominal: 27.6, pitch: 4.8, majorMax: 27.429, majorMin: 26.448, pitchDiaMax: 24.31, pitchDiaMin: 23.652, rootMax: 22.231, rootMin: 20.695,
    pitchDiaBasic: 24.481, d1Basic: 22.403, d3Basic: 21.712,
  }],
  ISO_1478_TAPPING_SCREW_THREADS: [10, {
    pitch: 10.8, majorMax: 30.89, majorMin: 29.29, rootMax: 22.49, rootMin: 21.36, pointDiaMax: 20.55, pointDiaMin: 19.22, pointCone: 27.6, pointFlat: 21.5,
  }],
  ASME_B18_6_3_TYPE_AB_THREADS: [10, { tpi: 262, majorMax: 1.308, majorMin: 1.241, rootMax: 0.963, rootMin: 0.917 }],
  ASME_B18_6_3_TYPE_B_THREADS: [10, {
    tpi: 262, majorMax: 1.308, majorMin: 1.241, rootMax: 0.963, rootMin: 0.917, pointDiaMax: 0.883, pointDiaMin: 0.829, pointTaperMax: 0.885, pointTaperMin: 0.665,
  }],
  ASME_B1_1_UNIFIED_THREADS_2A: [19, {
    nominal: 2.534, tpi: 856, majorMax: 2.5194, majorMin: 2.4225, pitchDiaMax: 2.2068, pitchDiaMin: 2.1581, rootMax: 1.9458, stressArea: 0.20754,
  }],
  ISO_273_CLEARANCE_HOLES: [8, { fine: 29.5, medium: 31, coarse: 33.1, fineMax: 30.43, mediumMax: 32.36, coarseMax: 35.46 }],
  ASME_B18_2_8_CLEARANCE_HOLES: [10, {
    closeMax: 1.461, closeMin: 1.415, normalMax: 1.603, normalMin: 1.535, looseMax: 1.807, looseMin: 1.691, close: 35.85, normal: 38.95, loose: 42.9,
  }],
  DIN_74_1_FORM_C_HOLES: [6, { hole: 23, countersinkDia: 44.6, countersinkDepth: 12.9 }],
  ISO_888_LENGTHS: [19, { length: 440 }],
  ISO_7049_TAPPING_SCREW_LENGTHS: [12, { length: 280.5 }],
  ASME_B18_6_3_LENGTHS: [15, { length: 11.9375 }],
  ISO_4759_1_LENGTH_LIMITS: [19, { upper: 7.21, lower: -7.21 }],
  ISO_7049_LENGTH_TOLERANCES: [3, { upTo: 107, coneUpper: 3.6, coneLower: -3.6, flatUpper: 0, flatLower: -3.6 }],
  ASME_B18_6_3_LENGTH_TOLERANCES: [4, { over: 3.5, upTo: 3.5, upper: 0, lower: -0.2, upperLarge: 0, lowerLarge: -0.21 }],
  ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES: [3, { over: 2.25, upTo: 2.25, upper: 0.14, lower: -0.14 }],
  ISO_7721_1_HEAD_ANGLE: [1, { angle: 90, angleMax: 92, angleMin: 90 }],
  ASME_B18_6_3_HEAD_ANGLE: [1, { angle: 82, angleMax: 82, angleMin: 80 }],
  DIN_7982_HEAD_ANGLE: [1, { angle: 80 }],
  ISO_286_1_IT_GRADES: [13, {
    over: 1462, upTo: 1962, IT5: 184, IT6: 266, IT7: 424, IT8: 655, IT9: 1049, IT10: 1695, IT11: 2655, IT12: 4240, IT13: 6550, IT14: 10490, IT15: 16950, IT16: 26550,
  }],
  ISO_2768_1_LINEAR: [8, { over: 3559.5, upTo: 7559, f: 1.35, m: 5.2, c: 12, v: 23.5 }],
  DIN_16901_130: [21, { over: 3715, upTo: 4715, across: 17.2, same: 15.1 }],
  DIN_16742_TG6: [16, { over: 3393, upTo: 4392, same: 15.13, across: 18.16 }],
};

test('no table is without its sums', () => {
  expect(Object.keys(SUMS).sort()).toEqual(Object.keys(TABLES).sort());
});

describe.each(Object.entries(TABLES))('%s', (name, table) => {
  const [rows, sums] = SUMS[name] ?? [0, {}];

  test('has the rows of the record', () => {
    expect(table.rows).toHaveLength(rows);
    expect(Object.keys(sums).sort()).toEqual(table.columns.map(entry => entry.key).sort());
  });

  test.each(Object.entries(sums))('%s adds up to %d', (key, sum) => {
    expect(column(table, key).reduce<number>((total, value) => total + (value ?? 0), 0)).toBeCloseTo(sum, 8);
  });
});
