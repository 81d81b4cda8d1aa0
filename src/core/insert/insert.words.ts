import { GEOMETRY, type CardWords } from '../card';

export const INSERT_WORDS: Readonly<Record<string, CardWords>> = {
  'INSERT.BOSS.OD': {
    kind: 'common practice',
    sources: [{ title: 'two to three times the insert', held: 'common practice, read in 2 secondary copies' }],
    example: { args: [4.2], result: 8.4 },
    caution: 'A start value: the drawing of the insert and a test govern.',
  },
  'INSERT.HOLE.DEPTH': {
    kind: 'common practice',
    sources: [{ title: 'room under the insert for displaced plastic and the tip of the screw', held: 'common practice, from memory' }],
    example: { args: [5.8], result: 6.8 },
    caution: 'The least depth: where the screw reaches through the insert, check the room under its tip with SCREW.BOTTOM.',
  },
  'INSERT.ENGAGEMENT': { kind: 'geometry', sources: GEOMETRY, example: { args: [10, [[2.5], [1.6]], 5.8, 0.1, 'M3'], result: 4.8 } },
  'INSERT.LANDING': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [4.2, 3.4], result: 0.4 },
    caution: 'Negative: the screw draws the insert out through the hole. The insert must also lie flush, or the plastic touches first.',
  },
  'INSERT.STRAIN': {
    kind: 'handbook formula',
    sources: [{ title: 'shrinkage of the plastic, held back by a rigid insert', held: 'derived' }],
    example: { args: [90, 19, -60, '0.5 %'], result: 0.00926 },
    caution: 'An estimate without relaxation, weld line or notch. A lasting strain can crack a brittle plastic after months. Test it.',
  },
  'INSERT.PULLOUT': {
    kind: 'handbook formula',
    sources: [
      { title: 'shear yield σ/√3 (von Mises) on the cylinder round the insert', held: 'derived' },
      { title: 'half of the surface holds', held: 'common practice, from memory' },
    ],
    example: { args: [4.2, 5.8, 40], result: 883.68 },
    caution: 'A short-term estimate. Installation and torque-out are not computed. Confirm by test.',
  },
};
