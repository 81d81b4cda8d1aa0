import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

const FLAT_PLATES = [
  ...GEOMETRY,
  {
    title: 'R. J. Crawford, Plastics Engineering, 3rd ed. 1998 (edition from memory), pp. 67 and 78: equivalent thickness',
    held: 'read in 1 secondary copy',
  },
];
const PLATE_COOLING = [
  { title: 'cooling of a plate, first term of the series, centre temperature', held: 'read in 1 secondary copy' },
  { title: 'the same for the mean temperature, 8/π²', held: 'from memory, compared with the full series' },
];
const SHRINKAGE = [
  { title: 'shrinkage referred to the cavity, ISO 294-4', held: 'base of the ratio from memory; read in 1 secondary copy on moulding' },
  { title: 'shrinkage of the materials', held: 'each row of MATERIAL.TABLE says how' },
];

export const MOULD_WORDS: Readonly<Record<string, CardWords>> = {
  'RIB.TIP': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [0.975, 10, '0.5°'], result: 0.8005 },
    caution: 'Negative: the flanks meet below that height.',
  },
  'RIB.BASE': { kind: 'geometry', sources: GEOMETRY, example: { args: [0.8, 10, '0.5°'], result: 0.975 } },
  'RIB.SECTION': {
    kind: 'geometry',
    sources: FLAT_PLATES,
    example: {
      args: [20, 2.5, 1.25, 1.25, 7.5],
      result: [
        ['quantity', 'value', 'unit'],
        ['area', 59.375, 'mm²'],
        ['centroid from the outer face', 2.039, 'mm'],
        ['second moment of area', 267.36, 'mm⁴'],
        ['section modulus at the tip', 33.59, 'mm³'],
        ['equivalent flat thickness', 5.434, 'mm'],
      ],
    },
  },
  'LIP.SKIN': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.5, 1, 0.15, 2], result: 1.2 } },
  'LIP.FIT': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [0.15, 0.03, 0.02, 0.08], result: [[0.02, 0.15, 0.28]] },
    caution: 'Negative: the lip does not enter its groove. A + in lip_tol makes the lip thicker, a + in groove_tol the groove wider.',
  },
  'RIM.GAP': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [25.3, 25.5], result: -0.2 },
    caution: 'Negative: the rim touches first and the boss hangs in tension.',
  },
  'RIM.GAP.LIMITS': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: {
      args: [
        [[13], [12]],
        [[0.1], [0.2]],
        [[12], [12.5]],
        [[0.1], ['+0.3/-0.1']],
      ],
      result: [[-0.2, 0.5, 1, 0.3162]],
    },
    caution:
      'Negative: the rim touches first. The half spread lies about the middle of the limits ' +
      'and assumes independent dimensions; those moulded in one tool are not independent.',
  },
  'JUNCTION.CIRCLE': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.5, 1.8, 0.625], result: 3.12 } },
  'JUNCTION.RATIO': { kind: 'common practice', sources: [...GEOMETRY, ...COMMON_PRACTICE], example: { args: [2.5, 1.5], result: 1.09 } },
  'COOLING.TIME': {
    kind: 'handbook formula',
    sources: PLATE_COOLING,
    example: { args: [2, 'ABS', 240, 60, 90], result: 9.695 },
    caution:
      'An estimate: published diffusivities of one material differ by a factor of up to 1.8, and the two criteria as much. ' +
      'Only the first term of a series is used: a time below 0.1·thickness² ÷ diffusivity comes out too long.',
  },
  'CAVITY.SIZE': {
    kind: 'handbook formula',
    sources: SHRINKAGE,
    example: { args: [100, '2 %'], result: 102.0408 },
    caution: 'Shrinkage varies with grade, wall thickness, flow direction and process; the moulder decides.',
  },
};
