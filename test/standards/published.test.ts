// Single rows typed from the collected reference, only where two or more texts agree. The title says which, and in how many.
import { describe, expect, test } from 'vitest';
import { heldAs, printed, rowsOf, table } from './tables';

type Spot = readonly [standard: string, row: string, texts: number, table: string, values: Readonly<Record<string, number>>];

const SPOTS: readonly Spot[] = [
  ['ISO 1207', 'M3', 2, 'ISO_1207_CHEESE_HEADS', { dkMax: 5.5, kMax: 2 }],
  ['ISO 1207', 'M5', 2, 'ISO_1207_CHEESE_HEADS', { dkMax: 8.5, kMax: 3.3 }],
  ['ISO 4762', 'M3', 3, 'ISO_4762_SOCKET_HEADS', { dkPlainMax: 5.5, kMax: 3 }],
  ['ISO 4762', 'M3', 2, 'ISO_4762_SOCKET_HEADS', { dkMin: 5.32, kMin: 2.86 }],
  ['ISO 4762', 'M6', 2, 'ISO_4762_SOCKET_HEADS', { dkMax: 10.22, dkMin: 9.78, kMin: 5.7 }],
  ['ISO 7380-1', 'M3', 2, 'ISO_7380_1_BUTTON_HEADS', { dkMax: 5.7, kMax: 1.65 }],
  ['ISO 7046-2', 'M3', 2, 'ISO_7046_2_COUNTERSUNK_HEADS', { dkMax: 5.5, kMax: 1.65 }],
  ['ISO 7046-2', 'M4', 2, 'ISO_7046_2_COUNTERSUNK_HEADS', { dkMax: 8.4, kMax: 2.7 }],
  ['ISO 10642', 'M3', 3, 'ISO_10642_COUNTERSUNK_HEADS', { dkSharp: 6.72, kMax: 1.86 }],
  ['ISO 10642', 'M5', 3, 'ISO_10642_COUNTERSUNK_HEADS', { dkSharp: 11.2, kMax: 3.1 }],
  ['DIN 7991', 'M4', 2, 'DIN_7991_COUNTERSUNK_HEADS', { dkMax: 8, kMax: 2.3 }],
  ['ASME B18.6.3 flat', '#4', 3, 'ASME_B18_6_3_FLAT_HEADS', { dkMax: 0.212, dkMin: 0.191, kMax: 0.067 }],
  ['ASME B18.6.3 flat', '#8', 3, 'ASME_B18_6_3_FLAT_HEADS', { dkMax: 0.312, dkMin: 0.285, kMax: 0.1 }],
  ['ASME B18.6.3 flat', '#8', 2, 'ASME_B18_6_3_FLAT_HEADS', { kMin: 0.084 }],
  ['ASME B18.6.3 round', '#6', 2, 'ASME_B18_6_3_ROUND_HEADS', { dkMax: 0.26, dkMin: 0.24, kMax: 0.103, kMin: 0.091 }],
  [
    'ISO 261 and ISO 965-2',
    'M3',
    3,
    'ISO_965_2_METRIC_THREADS_6G',
    { pitch: 0.5, majorMax: 2.98, majorMin: 2.874, pitchDiaMax: 2.655, pitchDiaMin: 2.58 },
  ],
  ['ISO 724 and ISO 965', 'M3', 2, 'ISO_965_2_METRIC_THREADS_6G', { d1Basic: 2.459, rootMax: 2.438, rootMin: 2.272 }],
  [
    'ISO 261 and ISO 965-2',
    'M4',
    3,
    'ISO_965_2_METRIC_THREADS_6G',
    { pitch: 0.7, majorMax: 3.978, majorMin: 3.838, pitchDiaMax: 3.523, pitchDiaMin: 3.433 },
  ],
  ['ISO 1478', 'ST2.9', 3, 'ISO_1478_TAPPING_SCREW_THREADS', { pitch: 1.1, pointCone: 2.6, pointFlat: 2.1 }],
  ['ISO 1478', 'ST2.9', 2, 'ISO_1478_TAPPING_SCREW_THREADS', { majorMax: 2.9 }],
  ['ISO 1478', 'ST4.2', 3, 'ISO_1478_TAPPING_SCREW_THREADS', { pitch: 1.4, pointCone: 3.7, pointFlat: 2.8 }],
  ['ISO 1478', 'ST3.5', 2, 'ISO_1478_TAPPING_SCREW_THREADS', { majorMax: 3.53 }],
  [
    'ASME B18.6.3 type B',
    '#4',
    2,
    'ASME_B18_6_3_TYPE_B_THREADS',
    { tpi: 24, majorMax: 0.114, majorMin: 0.108, rootMax: 0.086, rootMin: 0.082 },
  ],
  [
    'ASME B18.6.3 type B',
    '#10',
    2,
    'ASME_B18_6_3_TYPE_B_THREADS',
    { tpi: 16, majorMax: 0.189, majorMin: 0.182, rootMax: 0.141, rootMin: 0.135 },
  ],
  [
    'ASME B18.6.3 type AB',
    '#6',
    2,
    'ASME_B18_6_3_TYPE_AB_THREADS',
    { tpi: 20, majorMax: 0.139, majorMin: 0.132, rootMax: 0.104, rootMin: 0.099 },
  ],
  [
    'ASME B1.1',
    '#2-56',
    2,
    'ASME_B1_1_UNIFIED_THREADS_2A',
    { majorMax: 0.0854, majorMin: 0.0813, pitchDiaMax: 0.0738, pitchDiaMin: 0.0717 },
  ],
  [
    'ASME B1.1',
    '#3-48',
    2,
    'ASME_B1_1_UNIFIED_THREADS_2A',
    { majorMax: 0.0983, majorMin: 0.0938, pitchDiaMax: 0.0848, pitchDiaMin: 0.0825 },
  ],
  ['ISO 273', 'M3', 3, 'ISO_273_CLEARANCE_HOLES', { fine: 3.2, medium: 3.4, coarse: 3.6 }],
  ['ISO 273', 'M5', 3, 'ISO_273_CLEARANCE_HOLES', { fine: 5.3, medium: 5.5, coarse: 5.8 }],
  ['ISO 273', 'M3.5', 2, 'ISO_273_CLEARANCE_HOLES', { fine: 3.7, medium: 3.9, coarse: 4.2 }],
  ['ISO 4032', 'M3', 4, 'ISO_4032_NUTS', { flatsMax: 5.5, flatsMin: 5.32, cornersMin: 6.01, heightMax: 2.4, heightMin: 2.15 }],
  ['ISO 4032', 'M4', 4, 'ISO_4032_NUTS', { flatsMax: 7, flatsMin: 6.78, cornersMin: 7.66, heightMax: 3.2, heightMin: 2.9 }],
  ['ISO 4032', 'M6', 4, 'ISO_4032_NUTS', { flatsMax: 10, flatsMin: 9.78, cornersMin: 11.05, heightMax: 5.2, heightMin: 4.9 }],
  ['ISO 4032', 'M2', 3, 'ISO_4032_NUTS', { flatsMax: 4, flatsMin: 3.82, cornersMin: 4.32, heightMax: 1.6, heightMin: 1.35 }],
  ['ISO 4032', 'M3.5', 2, 'ISO_4032_NUTS', { flatsMax: 6, flatsMin: 5.82, cornersMin: 6.58, heightMax: 2.8, heightMin: 2.55 }],
  ['ASME B18.2.8', '#0', 2, 'ASME_B18_2_8_CLEARANCE_HOLES', { normalMax: 0.082, normalMin: 0.076 }],
  ['ISO 7049 length', '9.5', 2, 'ISO_7049_TAPPING_SCREW_LENGTHS', { length: 9.5 }],
  ['ISO 4759-1', '25', 2, 'ISO_4759_1_LENGTH_LIMITS', { upper: 0.42, lower: -0.42 }],
  ['ISO 4759-1', '40', 2, 'ISO_4759_1_LENGTH_LIMITS', { upper: 0.5, lower: -0.5 }],
  ['ISO 286-1', '6-10', 2, 'ISO_286_1_IT_GRADES', { IT14: 360 }],
  ['ISO 286-1', '80-120', 2, 'ISO_286_1_IT_GRADES', { IT14: 870 }],
  ['ISO 2768-1', '6-30', 3, 'ISO_2768_1_LINEAR', { f: 0.1, m: 0.2, c: 0.5, v: 1 }],
  ['ISO 2768-1', '3-6', 2, 'ISO_2768_1_LINEAR', { c: 0.3 }],
  ['DIN 16742 TG6', '30-50', 2, 'DIN_16742_TG6', { across: 0.37 }],
  ['DIN 16742 TG6', '180-250', 2, 'DIN_16742_TG6', { across: 1.05 }],
  ['ISO 7721-1 head angle', 'all', 2, 'ISO_7721_1_HEAD_ANGLE', { angle: 90 }],
  ['ASME B18.6.3 head angle', 'all', 2, 'ASME_B18_6_3_HEAD_ANGLE', { angle: 82, angleMax: 82 }],
];

test.each(SPOTS)('%s %s, read in %d texts', (_, row, texts, name, values) => {
  for (const [key, value] of Object.entries(values)) {
    expect(printed(table(name), row, key), key).toBe(value);
    expect(heldAs(table(name), row, key), key).toBe(`read in ${texts} secondary copies`);
  }
});

test.each([
  ['M3', 5.5, 1.65],
  ['M3.5', 7.3, 2.35],
  ['M6', 11.3, 3.3],
])('ISO 2009 and ISO 7046-1 %s, read under two sister standards', (row, dkMax, kMax) => {
  for (const name of ['ISO_2009_COUNTERSUNK_HEADS', 'ISO_7046_1_COUNTERSUNK_HEADS']) {
    expect(printed(table(name), row, 'dkMax')).toBe(dkMax);
    expect(printed(table(name), row, 'kMax')).toBe(kMax);
    for (const key of ['dkMax', 'kMax']) expect(heldAs(table(name), row, key)).toBe('read under ISO 7047 and ISO 7046-2');
  }
});

test('DIN 16901 group 130 at 10 to 15 and 800 to 1000 mm, read in 3 texts, two of them related', () => {
  const group = table('DIN_16901_130');
  expect([printed(group, '10-15', 'across'), printed(group, '10-15', 'same')]).toEqual([0.23, 0.13]);
  expect([printed(group, '800-1000', 'across'), printed(group, '800-1000', 'same')]).toEqual([3, 2.9]);
  expect(heldAs(group, '10-15', 'across')).toBe('read in 3 secondary copies, two of them related');
});

describe('length lists', () => {
  test('ISO 888, read in the length lists of ISO 1207, ISO 7046-2 and ISO 7380', () => {
    expect(rowsOf(table('ISO_888_LENGTHS')).map(Number)).toEqual([2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60]);
    expect(heldAs(table('ISO_888_LENGTHS'), '16', 'length')).toBe('read under product standards in 3 secondary copies');
    expect(heldAs(table('ISO_888_LENGTHS'), '2', 'length')).toBe('read under product standards in 1 secondary copy');
  });

  test('ISO 7049 tapping screws', () => {
    expect(rowsOf(table('ISO_7049_TAPPING_SCREW_LENGTHS')).map(Number)).toEqual([4.5, 6.5, 9.5, 13, 16, 19, 22, 25, 32, 38, 45, 50]);
  });
});

describe('disagreements that a user is told', () => {
  const note = (name: string, key: string): string => table(name).columns.find(entry => entry.key === key)?.note ?? '';

  test.each([
    ['ISO_7045_PAN_HEADS', 'dkMax', 'DIN 7985'],
    ['ISO_7045_PAN_HEADS', 'kMax', '2.52'],
    ['ISO_7049_PAN_HEADS', 'dkMax', 'DIN 7981'],
    ['ISO_4032_NUTS', 'heightMax', 'another edition'],
    ['ISO_1207_CHEESE_HEADS', 'kMax', 'DIN 84'],
    ['ISO_4762_SOCKET_HEADS', 'dkMin', '5.2'],
    ['ISO_10642_COUNTERSUNK_HEADS', 'dkMin', '5.82'],
    ['ISO_10642_COUNTERSUNK_HEADS', 'dkSharp', 'DIN 7991'],
    ['DIN_7991_COUNTERSUNK_HEADS', 'dkMax', '6.72'],
    ['ISO_7047_RAISED_COUNTERSUNK_HEADS', 'dkMin', '10.9'],
    ['ISO_7046_2_COUNTERSUNK_HEADS', 'dkMin', '10.87'],
    ['ISO_1478_TAPPING_SCREW_THREADS', 'pitch', '1.4 for ST3.9'],
    ['ISO_1478_TAPPING_SCREW_THREADS', 'majorMax', '4.22'],
    ['ASME_B18_6_3_FLAT_HEADS', 'dkSharp', 'tan 40°'],
    ['ASME_B18_2_8_CLEARANCE_HOLES', 'closeMax', '0.144'],
    ['ISO_2768_1_LINEAR', 'c', 'DIN 7168'],
    ['DIN_16742_TG6', 'across', 'TG2'],
  ])('%s %s mentions %s', (name, key, text) => {
    expect(note(name, key)).toContain(text);
  });

  test('the unsettled #4 close hole of ASME B18.2.8 carries its own note', () => {
    const single = table('ASME_B18_2_8_CLEARANCE_HOLES').exceptions?.find(entry => entry.row === '#4' && entry.key === 'closeMax');
    expect(single?.note).toContain('0.125');
  });
});
