import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

export const BOSS_WORDS: Readonly<Record<string, CardWords>> = {
  'WALL.FEATURE': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [2], result: 1.2 } },
  'BOSS.OD': { kind: 'geometry', sources: GEOMETRY, example: { args: ['0.167 in + 0.25 mm', 1.2], result: 6.8918 } },
  'BOSS.OD.RULE': {
    kind: 'common practice',
    sources: [...COMMON_PRACTICE, { title: 'start values by material', held: 'from memory' }],
    example: { args: ['ST2.9', 'ABS'], result: 6.38 },
  },
  'BOSS.WALL': { kind: 'geometry', sources: GEOMETRY, example: { args: [6, 2.394, 11.1, '0.5°', '0.25°'], result: 1.9483 } },
  'BOSS.ENDS': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: {
      args: [6.4, 2.4, 14, '0.5°'],
      result: [
        ['at', 'outside diameter (mm)', 'hole (mm)', 'wall (mm)'],
        ['free end', 6.4, 2.4, 2],
        ['root', 6.6444, 2.4, 2.1222],
      ],
    },
  },
  'BOSS.SLENDER': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [12, 6], result: 2 } },
  'BOSS.SINK': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [1.2, 2], result: 0.6 } },
  'BOSS.CIRCLE': { kind: 'geometry', sources: GEOMETRY, example: { args: [1.2, 2], result: 2.18 } },
  'BOSS.MASS': { kind: 'geometry', sources: GEOMETRY, example: { args: [6, 2.4, 12, 1.05], result: 0.29926 } },
  'BOSS.STEEL': { kind: 'geometry', sources: GEOMETRY, example: { args: [3, 12, '0.5°', '1°'], result: 2.686 } },
  'BOSS.CORNER': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [6, 4.5, 4.5, 6, 12, '0.5°', '1°'], result: 0.5645 },
    caution: 'For a corner radius that is drafted with its walls. A constant radius leaves less steel.',
  },
  'BOSS.FLAT': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.686, 0.5, 0.75], result: 1.436 } },
  'BOSS.CONFLICT': {
    kind: 'common practice',
    sources: [...COMMON_PRACTICE, { title: 'start values by material', held: 'from memory' }],
    example: {
      args: ['ST2.9', 2, 2.36],
      result: [
        [
          'outside diameter required by the screw (mm)',
          'outside diameter allowed by the wall (mm)',
          'wall that satisfies both (mm)',
          'state',
        ],
        [5.8, 4.76, 2.867, 'fail'],
      ],
    },
    caution:
      'Two rules of thumb that often contradict each other. Ways out: a smaller screw, a groove round ' +
      'the foot of the boss, ribs instead of a thicker boss, or a hidden face, where a sink mark may stay.',
  },
  'BOSS.GUSSET': {
    kind: 'common practice',
    sources: [
      {
        title: 'thickness 0.5 to 0.6 of the wall, height 0.67 to 0.95 and base 0.3 to 1 of the boss height, four at 90°',
        held: 'from memory',
      },
    ],
    example: {
      args: [12, 2.5],
      result: [
        ['thickness (mm)', 'height (mm)', 'base (mm)', 'count'],
        [1.25, 9.6, 6, 4],
      ],
    },
    caution: 'Start values from wide ranges; the sink marks behind the gussets decide.',
  },
  'BOSS.TORSION': {
    kind: 'handbook formula',
    sources: [{ title: 'torsion of a round tube, any strength of materials handbook', held: 'from memory' }],
    example: { args: ['600 N.mm', 6, 2.4], result: 14.52 },
    caution: 'An elastic estimate: the stress concentration at the root fillet and the hoop stress from the screw are left out.',
  },
};
