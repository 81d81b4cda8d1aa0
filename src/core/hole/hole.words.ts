import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

const PERCENT_THREAD = [
  {
    title: 'ISO 1478 / ISO 965-2 / ASME B18.6.3 / B1.1 thread limits; per cent thread by definition',
    held: 'read in secondary copies; start values from memory',
  },
];

export const HOLE_WORDS: Readonly<Record<string, CardWords>> = {
  'HOLE.PILOT': {
    kind: 'common practice',
    sources: PERCENT_THREAD,
    example: { args: ['ST2.9', 'ABS'], result: 2.324 },
    caution: 'A start value: confirm it by drive and strip torque tests in your grade.',
  },
  'HOLE.THREAD.SHARE': { kind: 'geometry', sources: PERCENT_THREAD, example: { args: ['ST2.9', 2.54], result: 0.5 } },
  'HOLE.AT': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.4, 14.75, '0.5°'], result: 2.1426 } },
  'HOLE.MOUTH': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.36, 3.9, '0.25°'], result: 2.394 } },
  'HOLE.TIGHT': {
    kind: 'common practice',
    sources: PERCENT_THREAD,
    example: { args: ['ST2.9', 2.4, 12.96, '0.5°'], result: 0.9972 },
    caution: 'Below 0.97 the boss is likely to split (common practice).',
  },
  'HOLE.DEPTH': { kind: 'geometry', sources: GEOMETRY, example: { args: [10.46, 0.5, 0.1], result: 11.06 } },
  'HOLE.FLOOR': { kind: 'geometry', sources: GEOMETRY, example: { args: [2.5, 14, 14.75], result: 1.75 } },
  'HOLE.RELIEF': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: ['ST2.9'], result: 3.1 } },
};
