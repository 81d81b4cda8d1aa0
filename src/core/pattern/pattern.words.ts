import { GEOMETRY, type CardWords } from '../card';
import { SIMULATED } from '../tolerance/stack.words';

export const PATTERN_WORDS: Readonly<Record<string, CardWords>> = {
  'PATTERN.SLOT': {
    kind: 'geometry',
    sources: [...GEOMETRY, { title: 'linear thermal expansion', held: 'derived' }],
    example: { args: [3.2, 80, 0.15, 90, 15, -40], result: 3.98 },
    caution: 'The tolerance is that of both parts together. Shrinkage after moulding and uptake of moisture come on top.',
  },
  'PATTERN.TURN': { kind: 'geometry', sources: GEOMETRY, example: { args: [0.1, 0.3, 80], result: 0.14324 } },
  'PATTERN.FIT': {
    kind: 'handbook formula',
    sources: [{ title: 'smallest largest distance over shift and small turn', held: 'derived' }, ...SIMULATED],
    example: {
      args: [[[10], [90], [90], [10]], [[10], [10], [60], [60]], 0.2, 0.2, 0.4, 1000],
      row: 1,
      values: ['share that goes together', 1, '–'],
    },
    notLive: 'a simulation',
    caution:
      'An estimate: positions normal and independent, three standard deviations on the edge of their zone. Holes of one tool ' +
      'move together. Holes and screws have their size, squareness is not counted.',
  },
};
