import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

const PLANE = { kind: 'geometry', sources: GEOMETRY } as const;

export const BOARD_WORDS: Readonly<Record<string, CardWords>> = {
  'BOARD.GAP': { ...PLANE, example: { args: [60, 0.2, 61, 0.3], result: 0.25 } },
  'BOARD.CLAMP': { ...PLANE, example: { args: [1.8, 0.1, 1.6, 0.16], result: [[-0.06, 0.2, 0.46]] } },
  'BOARD.REACH': { ...PLANE, example: { args: [5.6, 3.5, 2.76, 0.1], result: 3.27 } },
  'BOARD.MARGIN': {
    ...PLANE,
    example: { args: [5, 3.27, 1], result: 0.73 },
    caution:
      'Subtraction, not an assessment. No electrical distance is supplied here: take the required one ' +
      'from the edition of the standard that applies to your product. That standard and a licensed reviewer decide.',
  },
  'BOARD.KEEPOUT': {
    kind: 'common practice',
    sources: [
      ...COMMON_PRACTICE,
      { title: '1.25 × the largest hardware diameter, quoted as practice under IPC-2221 in 2018', held: 'read in 1 secondary copy' },
    ],
    example: { args: [5.6], result: 7 },
    caution: 'A start value for the layout; it says nothing about electrical distances.',
  },
  'BOARD.SLEEVE': { ...PLANE, example: { args: [6, 5.6, 0.05], result: 0.15 } },
  'BOARD.HOLD': { ...PLANE, example: { args: [8, 6, 5.6, 0.05], result: 0.75 } },
  'THERMAL.GAP': {
    kind: 'handbook formula',
    sources: [{ title: 'linear thermal expansion', held: 'derived' }],
    example: { args: [150, 80, 15, -40], result: 0.39 },
    caution:
      'The total difference: half at each end where the parts are centred, all of it at the free ' +
      'end where they are fixed at the other. Swelling by moisture comes on top.',
  },
};
