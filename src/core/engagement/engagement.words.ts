import { GEOMETRY, type CardWords } from '../card';

const ONE_WAY = { kind: 'geometry', sources: GEOMETRY } as const;
const D1_LAYERS = [[2.5], [1.6]];
const D1_TOLERANCES = [[0.1], [0.16]];

export const ENGAGEMENT_WORDS: Readonly<Record<string, CardWords>> = {
  GRIP: { ...ONE_WAY, example: { args: [D1_LAYERS], result: 4.1 } },
  'GRIP.LIMITS': { ...ONE_WAY, example: { args: [D1_LAYERS, D1_TOLERANCES], result: [[3.84, 4.1, 4.36]] } },
  PENETRATION: { ...ONE_WAY, example: { args: [13, D1_LAYERS], result: 8.9 } },
  ENGAGEMENT: { ...ONE_WAY, example: { args: [13, D1_LAYERS, 0.8, 'ST2.9 cone'], result: 5.5 } },
  'ENGAGEMENT.LIMITS': {
    ...ONE_WAY,
    example: { args: [13, 0.8, D1_LAYERS, D1_TOLERANCES, 0.8, 0.1, 2.6], result: [[4.34, 5.5, 6.66, 0.828]] },
    caution: 'The root-sum-square spread assumes independent tolerances; dimensions moulded in one tool are not independent.',
  },
  'ENGAGEMENT.RATIO': { ...ONE_WAY, example: { args: [7.34, 'ST2.9'], result: 2.531 } },
  'SCREW.BOTTOM': { ...ONE_WAY, example: { args: [14.75, 0, 16, 0.8, D1_LAYERS, D1_TOLERANCES], result: 1.79 } },
  'SCREW.LENGTH.TABLE': {
    ...ONE_WAY,
    example: { args: ['ST2.9', D1_LAYERS, D1_TOLERANCES, 2, 14.75, 1, 0.8, 0.1], row: 5, values: [16, 7.34, 2.531, 13.96, 'pass', '–'] },
  },
  'SCREW.LENGTH.PICK': {
    ...ONE_WAY,
    example: { args: ['ST2.9', D1_LAYERS, D1_TOLERANCES, 2, 14.75, 1, 0.8, 0.1], result: 16 },
  },
  'SCREW.LENGTH.COMMON': {
    ...ONE_WAY,
    example: { args: ['ST2.9', [[4.1], [7]], 0.26, 14.75, 2, 1, 0.8], row: 6, values: [19, 1, 2] },
  },
};
