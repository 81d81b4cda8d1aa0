// One row of each table through a public function, in mm: typed from the collected reference, inches times 25.4 by hand. A unit that is wrong shows here.
import { expect, test } from 'vitest';
import { number, refusal, value } from '../kit/ask';
import { TABLES } from './tables';

const ONE: readonly (readonly [table: string, id: string, args: readonly (string | number)[], mm: number | readonly number[]])[] = [
  ['ISO_7045_PAN_HEADS', 'SCREW.HEAD.HEIGHT', ['M4', 'pan'], 3.1],
  ['ISO_14583_PAN_HEADS', 'SCREW.HEAD.DIAMETER', ['M5', 'hexalobular pan', 'min'], 9.14],
  ['ISO_1580_SLOTTED_PAN_HEADS', 'SCREW.HEAD.HEIGHT', ['M3.5', 'slotted pan'], 2.1],
  ['ISO_1207_CHEESE_HEADS', 'SCREW.HEAD.DIAMETER', ['M6', 'cheese', 'min'], 9.78],
  ['ISO_7047_RAISED_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['M4', 'raised countersunk', 'sharp'], 9.4],
  ['ISO_2009_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['M5', 'ISO 2009', 'min'], 8.94],
  ['ISO_7046_1_COUNTERSUNK_HEADS', 'SCREW.HEAD.HEIGHT', ['M2.5', 'ISO 7046-1'], 1.5],
  ['ISO_7046_2_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['M6', 'ISO 7046-2', 'min'], 10.9],
  ['ISO_4762_SOCKET_HEADS', 'SCREW.HEAD.DIAMETER', ['M4', 'socket cap'], 7.22],
  ['ISO_7380_1_BUTTON_HEADS', 'SCREW.HEAD.HEIGHT', ['M5', 'button', 'min'], 2.5],
  ['ISO_10642_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['M4', 'ISO 10642', 'sharp'], 8.96],
  ['DIN_7991_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['M3', 'DIN 7991'], 6],
  ['ISO_7049_PAN_HEADS', 'SCREW.HEAD.HEIGHT', ['ST4.2', 'pan', 'min'], 2.8],
  ['ISO_14585_PAN_HEADS', 'SCREW.HEAD.DIAMETER', ['ST3.5', 'hexalobular pan', 'min'], 6.64],
  ['DIN_7981_PAN_HEADS', 'SCREW.HEAD.HEIGHT', ['ST4.2', 'DIN 7981'], 3.05],
  ['ISO_7050_COUNTERSUNK_HEADS', 'SCREW.HEAD.HEIGHT', ['ST3.5', 'countersunk'], 2.35],
  ['ISO_7051_RAISED_COUNTERSUNK_HEADS', 'SCREW.HEAD.DIAMETER', ['ST4.8', 'raised countersunk'], 9.3],
  ['ASME_B18_6_3_PAN_HEADS', 'SCREW.HEAD.DIAMETER', ['#8 B', 'pan'], 8.1788],
  ['ASME_B18_6_3_SLOTTED_PAN_HEADS', 'SCREW.HEAD.HEIGHT', ['#6 B', 'slotted pan'], 2.0828],
  ['ASME_B18_6_3_FILLISTER_HEADS', 'SCREW.HEAD.HEIGHT', ['#10 B', 'fillister'], 4.572],
  ['ASME_B18_6_3_ROUND_HEADS', 'SCREW.HEAD.DIAMETER', ['#4 B', 'round', 'min'], 4.9022],
  ['ASME_B18_6_3_FLAT_HEADS', 'SCREW.HEAD.DIAMETER', ['#8 B', 'countersunk', 'sharp'], 8.4328],
  ['ASME_B18_6_3_OVAL_HEADS', 'SCREW.HEAD.DIAMETER', ['#5 B', 'oval'], 6.0198],
  ['ISO_965_2_METRIC_THREADS_6G', 'SCREW.ROOT', ['M5', 'min'], 3.868],
  ['ISO_1478_TAPPING_SCREW_THREADS', 'SCREW.ROOT', ['ST3.9'], 2.92],
  ['ASME_B18_6_3_TYPE_AB_THREADS', 'SCREW.MAJOR', ['#8 AB', 'min'], 4.0386],
  ['ASME_B18_6_3_TYPE_B_THREADS', 'SCREW.ROOT', ['#6 B'], 2.6416],
  ['ASME_B1_1_UNIFIED_THREADS_2A', 'SCREW.MAJOR', ['#6-32'], 3.48488],
  ['ISO_273_CLEARANCE_HOLES', 'HOLE.CLEARANCE', ['M4', 'medium', 'max'], 4.68],
  ['ISO_4032_NUTS', 'NUT.HEIGHT', ['M4', 'min'], 2.9],
  ['ASME_B18_2_8_CLEARANCE_HOLES', 'HOLE.CLEARANCE', ['#6 B', 'close', 'max'], 4.0386],
  ['ASME_B18_2_8_CLEARANCE_HOLES', 'HOLE.CLEARANCE', ['#6 B', 'close'], 3.9],
  ['DIN_74_1_FORM_C_HOLES', 'HOLE.CLEARANCE', ['ST3.9', 'DIN 74-1'], 4.2],
  ['ISO_888_LENGTHS', 'SCREW.LENGTHS', ['M3'], [2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60]],
  ['ISO_7049_TAPPING_SCREW_LENGTHS', 'SCREW.LENGTHS', ['ST2.9'], [4.5, 6.5, 9.5, 13, 16, 19, 22, 25, 32, 38, 45, 50]],
  [
    'ASME_B18_6_3_LENGTHS',
    'SCREW.LENGTHS',
    ['#4 B'],
    [3.175, 4.7625, 6.35, 7.9375, 9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1, 44.45, 50.8],
  ],
  ['ISO_4759_1_LENGTH_LIMITS', 'SCREW.LENGTH.TOL', ['M3', 16], [-0.35, 0.35]],
  ['ISO_7049_LENGTH_TOLERANCES', 'SCREW.LENGTH.TOL', ['ST2.9', 25, 'flat'], [-1.3, 0]],
  ['ASME_B18_6_3_LENGTH_TOLERANCES', 'SCREW.LENGTH.TOL', ['#6-32', '1 1/2 in'], [-1.524, 0]],
  ['ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES', 'SCREW.LENGTH.TOL', ['#6 B', '1 in'], [-1.27, 1.27]],
  ['ISO_286_1_IT_GRADES', 'TOL.IT', [100, 'IT14'], 0.87],
  ['ISO_2768_1_LINEAR', 'TOL.GENERAL', [200, 'c'], 1.2],
  ['ISO_2768_1_LINEAR', 'TOL.GENERAL', [500, 'c'], 2],
  ['DIN_16901_130', 'TOL.MOULDED', [100, 'DIN 16901-130'], 0.51],
  ['DIN_16742_TG6', 'TOL.MOULDED', [100, 'DIN 16742-TG6'], 0.8],
];

test.each(ONE)('%s: %s(%j) is %j mm', (_, id, args, mm) => {
  const got = value(id, ...args) as number[][] | number;
  expect([got].flat(2)).toHaveLength([mm].flat().length);
  [got].flat(2).forEach((single, i) => expect(single).toBeCloseTo([mm].flat()[i] as number, 9));
});

const ANGLES: readonly (readonly [table: string, size: string, head: string, deg: number])[] = [
  ['ISO_7721_1_HEAD_ANGLE', 'M3', 'countersunk', 90],
  ['ASME_B18_6_3_HEAD_ANGLE', '#4 B', 'countersunk', 82],
];

test.each(ANGLES)('%s: SCREW.CARD of %s %s has its angle, %d°', (_, size, head, deg) => {
  const rows = value('SCREW.CARD', size, head) as readonly (readonly unknown[])[];
  expect(rows.find(([what]) => what === 'head angle (included)')?.slice(1, 3)).toEqual([deg, '°']);
});

test('DIN_7982_HEAD_ANGLE: 80°, told where the angle is asked for', () => {
  expect(refusal('RECESS.CONE', 'ST2.9 DIN 7982', 3.1)).toContain('the angle, 80');
});

test('no table is left out', () => {
  expect([...new Set([...ONE, ...ANGLES].map(([table]) => table)), 'DIN_7982_HEAD_ANGLE'].sort()).toEqual(Object.keys(TABLES).sort());
});

// Typed from the reference: a typical value of each quantity, in core units.
test.each([
  ['PC', 'density', 1.2],
  ['POM', 'shrinkage', 0.021],
  ['PA66', 'strength', 82],
  ['PC', 'modulus', 2400],
  ['ABS', 'strain', 0.025],
  ['PP', 'expansion', 110],
  ['PBT', 'diffusivity', 0.085],
  ['PS', 'melt', 220],
  ['PMMA', 'mould', 70],
  ['PA66-GF30', 'eject', 150],
  ['PC+ABS', 'thread share', 0.75],
  ['PC', 'od ratio', 2.5],
] as const)('MATERIAL of %s, %s: %d', (material, quantity, typ) => expect(number('MATERIAL', material, quantity)).toBe(typ));

// An own card takes each quantity in its unit, and in no other.
test.each([
  ['density', '1.05 g/cm³', 1.05],
  ['shrinkage', '0.6 %', 0.006],
  ['strength', '45 MPa', 45],
  ['modulus', '2.3 GPa', 2300],
  ['strain', '2.5 %', 0.025],
  ['expansion', '90 ppm/K', 90],
  ['diffusivity', '0.085 mm²/s', 0.085],
  ['melt', '240 °C', 240],
  ['mould', '60 °C', 60],
  ['eject', '90 °C', 90],
  ['thread share', '80 %', 0.8],
] as const)('MATERIAL of an own card, %s %s: %d', (quantity, text, core) =>
  expect(number('MATERIAL', `${quantity} ${text}`, quantity)).toBeCloseTo(core, 12),
);

test.each(['poisson', 'od ratio'])('MATERIAL of an own card: %s is a plain number', quantity => {
  expect(number('MATERIAL', `${quantity} 0.4`, quantity)).toBe(0.4);
  expect(refusal('MATERIAL', `${quantity} 40 %`, quantity)).toContain('not a number');
});
