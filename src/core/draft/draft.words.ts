import { GEOMETRY, type CardWords } from '../card';

const CHART = [...GEOMETRY, { title: 'draft chart for 1 inch of depth', held: 'read in 1 secondary copy' }];

export const DRAFT_WORDS: Readonly<Record<string, CardWords>> = {
  'DRAFT.OFFSET': { kind: 'geometry', sources: CHART, example: { args: ['1 in', '1°'], result: 0.4434 } },
  'DRAFT.ANGLE': { kind: 'geometry', sources: CHART, example: { args: [1, 1], result: 45 } },
  'DRAFT.HEIGHT': { kind: 'geometry', sources: CHART, example: { args: [0.1, '1°'], result: 5.729 } },
  'DRAFT.SIZE': { kind: 'geometry', sources: CHART, example: { args: [6, 12, '0.5°', 'grows'], result: 6.2094 } },
  'DRAFT.TEXTURE': {
    kind: 'common practice',
    sources: [
      { title: '1.5° for each 0.025 mm of depth', held: 'common practice, read in 3 guides; 2 others print 1.0°, 1 prints 1 to 1.5°' },
    ],
    example: { args: ['0°', 0.125], result: 7.5 },
    caution: 'A start value: guides print 1° to 1.5° for each step. Inner faces and low shrinkage need more; the texture supplier decides.',
  },
};
