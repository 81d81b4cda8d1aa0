import { GEOMETRY, type CardWords } from '../card';
import { SIMULATED } from '../tolerance/stack.words';

export const PATTERN_WORDS: Readonly<Record<string, CardWords>> = {
  'PATTERN.SLOT': {
    kind: 'geometry',
    sources: [...GEOMETRY, { title: 'linear thermal expansion', held: 'derived' }],
    example: { args: [3.2, 80, 0.15, 90, 15, -40], result: 3.98 },
    caution: 'The tolerance is that of both parts together. Post-moulding shrinkage and swelling by moisture come on top.',
  },
  'PATTERN.TURN': { kind: 'geometry', sources: GEOMETRY, example: { args: [0.1, 0.3, 80], result: 0.14324 } },
  'PATTERN.FIT': {
    kind: 'handbook formula',
    sources: [{ title: 'least possible largest distance over all shifts and small turns', held: 'derived' }, ...SIMULATED],
    example: {
      args: [[[10], [90], [90], [10]], [[10], [10], [60], [60]], 0.2, 0.2, 0.4, 1000],
      row: 1,
      values: ['share that goes together', 1, '–'],
    },
    notLive: 'a simulation',
    caution:
      'An estimate: positions are normal and independent, with three standard deviations at the edge of their zone; those moulded ' +
      'in one tool move together. Holes and screws have the sizes given; squareness is not counted.',
  },
};
